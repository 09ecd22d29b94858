import { findFans } from '../geometry/fans.ts';
import type { Section } from '../geometry/section.ts';
import type { Triangulation } from '../geometry/triangulation.ts';
import { boxOf } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';
import { fused } from '../surface/fuse.ts';
import { lowerOf, type Patch } from '../surface/patch.ts';
import { Front, type Seed } from './front.ts';
import { lowestOf } from './lowest.ts';
import { piecesOf } from './pieces.ts';
import { edgeSlots, spread, type TaperOutlet } from './sources.ts';

const ON_VERTEX_FT = 3e-5;

function seedsOf(mesh: Triangulation, outlets: readonly TaperOutlet[]): Seed[] {
  return outlets.flatMap((start, outlet): Seed[] => {
    const { levelIn } = start;
    if (start.kind === 'edge')
      return edgeSlots(mesh, start.from, start.to).map((slot) => ({ kind: 'side', slot, levelIn, outlet }));
    const [x, y] = start.at;
    const vertex = mesh.points.findIndex((p) => Math.abs(p[0] - x) < ON_VERTEX_FT && Math.abs(p[1] - y) < ON_VERTEX_FT);
    return vertex < 0 ? [] : [{ kind: 'corner', vertex, levelIn, outlet }];
  });
}

/** Least heights under a convex pattern: a front that spreads from triangle to triangle. */
function byFront(mesh: Triangulation, outlets: readonly TaperOutlet[], middle: Point): Patch[] {
  const front = new Front(mesh, outlets[0].pattern, seedsOf(mesh, outlets));
  const parts: Patch[] = [];
  for (let triangle = 0; triangle < mesh.corners.length / 3; triangle++) {
    const shares = front.sharesOf(triangle);
    const pieces = shares.map(({ ring, reach }) => ({ ring, plane: reach.plane, outlet: outlets[reach.outlet].id }));
    parts.push(...lowestOf(pieces, middle));
  }
  return fused(parts);
}

/** Heights under a pattern with ridges of its own: every source offers what it sees, by straight rays. */
function bySight(mesh: Triangulation, outlets: readonly TaperOutlet[], middle: Point): Patch[] {
  const sources = spread({ mesh, fans: findFans(mesh) }, outlets);
  return lowestOf(sources.flatMap(piecesOf), middle);
}

/**
 * Thickness (or finished height) as the least, over all outlets and all ways from them, of level + rise.
 * @param section with every outlet point and edge end as a vertex
 * @returns convex patches that partition all of the section that some outlet reaches
 * Source: design of the taper; continuous because rise adds up along a way, falling because the way back never rises.
 */
export function envelope(section: Section, outlets: readonly TaperOutlet[]): Patch[] {
  if (outlets.length === 0) return [];
  const mesh = section.triangulation;
  const { minX, maxX, minY, maxY } = boxOf(section.rings.flat());
  const middle: Point = [(minX + maxX) / 2, (minY + maxY) / 2];
  const byPattern = new Map<string, TaperOutlet[]>();
  for (const outlet of outlets) {
    const same = byPattern.get(outlet.pattern.name);
    if (same) same.push(outlet);
    else byPattern.set(outlet.pattern.name, [outlet]);
  }
  const surfaces = [...byPattern.values()].map((same) =>
    same[0].pattern.convex ? byFront(mesh, same, middle) : bySight(mesh, same, middle),
  );
  return surfaces.reduce((a, b) => lowerOf(a, b));
}
