import { heightIn } from '../geometry/plane.ts';
import { boxOf, distanceFt, orient } from '../geometry/vector.ts';
import type { CheckPoint } from '../report/types.ts';
import { placeWords } from '../report/words.ts';
import type { Point } from '../roof.ts';
import type { Site } from '../site/site.ts';
import type { Built } from './build.ts';
import { buildUpAt } from './check.ts';

/** No more marks than a crew will read. */
const MOST_POINTS = 60;
const NEAR_FT = 2;

/** A square grid over the section, coarse enough for its size. */
function gridOf(site: Site): Point[] {
  const { minX, minY, maxX, maxY } = boxOf(site.outline);
  const stepFt = Math.max(6, Math.ceil(Math.sqrt(site.section.areaSqFt / 24)));
  const out: Point[] = [];
  for (let y = minY; y <= maxY + 1e-9; y += stepFt) for (let x = minX; x <= maxX + 1e-9; x += stepFt) out.push([x, y]);
  return out;
}

const onGround = (built: Built): ((p: Point) => number | null) => {
  const patches = built.ground.patches;
  return (p) => {
    const hit = patches.find(({ ring }) => ring.every((a, i) => orient(a, ring[(i + 1) % ring.length], p) >= -1e-4));
    return hit === undefined ? null : heightIn(hit.plane, p);
  };
};

/** Marks to check with a level: outlets, corners, ends of valleys and ridges, and a grid between them. */
export function checkPointsOf(site: Site, built: Built): CheckPoint[] {
  const buildUp = buildUpAt(built.thickness);
  const ground = onGround(built);
  const { mesh, creases } = built.judgement;
  const zeroIn = Math.min(...mesh.z);
  const spots: Point[] = [];
  const add = (p: Point): void => {
    if (spots.length < MOST_POINTS && !spots.some((q) => distanceFt(p, q) < NEAR_FT)) spots.push(p);
  };
  for (const start of built.starts) if (start.kind === 'point') add(start.at);
  for (const p of site.outline) add(p);
  for (const { from, to, lengthFt } of [...creases].sort((a, b) => b.lengthFt - a.lengthFt)) {
    if (lengthFt < 2) continue;
    add(from);
    add(to);
  }
  for (const p of gridOf(site)) add(p);
  return spots
    .flatMap((at) => {
      const [used, under] = [buildUp(at), ground(at)];
      return used === null || under === null ? [] : [{ at, used, heightIn: used + under - zeroIn }];
    })
    .map(({ at, used, heightIn: z }, i) => ({
      id: String(i + 1),
      at,
      where: placeWords(site.edges, at),
      heightIn: Math.abs(z) < 1e-9 ? 0 : z,
      thicknessIn: used,
    }));
}
