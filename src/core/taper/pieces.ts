import { type Convex, isSliver } from '../geometry/convex.ts';
import { planeThrough } from '../geometry/plane.ts';
import type { Glimpse } from '../geometry/sight.ts';
import { cross, distanceFt, dot } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';
import type { Patch } from '../surface/patch.ts';
import { riseIn, type SlopePattern } from './pattern.ts';
import type { Source } from './sources.ts';

const JOIN_FT = 1e-7;

const crossAt = (a: Point, b: Point, c: Point): number => cross([b[0] - a[0], b[1] - a[1]], [c[0] - b[0], c[1] - b[1]]);

/** Chains of seen boundary, each convex as it is seen from the source. */
function convexChains(glimpses: readonly Glimpse[]): Point[][] {
  const chains: Point[][] = [];
  let chain: Point[] = [];
  for (const { right, left } of glimpses) {
    const end = chain[chain.length - 1];
    const before = chain[chain.length - 2];
    const joins = end !== undefined && distanceFt(end, right) < JOIN_FT;
    const bend =
      joins && before !== undefined ? crossAt(before, end, left) / Math.max(distanceFt(before, end), 1e-12) : 0;
    if (!joins || bend < -1e-9) {
      chain = [right, left];
      chains.push(chain);
    } else if (before !== undefined && Math.abs(bend) <= 1e-9) {
      chain[chain.length - 1] = left;
    } else {
      chain.push(left);
    }
  }
  return chains;
}

/** Where the ray from `at` in direction d meets the chord right-left of a glimpse. */
function alongRay(at: Point, d: Point, { right, left }: Glimpse): Point {
  const e: Point = [left[0] - right[0], left[1] - right[1]];
  const t = cross([right[0] - at[0], right[1] - at[1]], e) / cross(d, e);
  return [at[0] + d[0] * t, at[1] + d[1] * t];
}

/** Glimpses cut at the creases of the pattern and sorted by its sectors. */
function bySector(at: Point, pattern: SlopePattern, glimpses: readonly Glimpse[]): Glimpse[][] {
  const toward = (p: Point): Point => [p[0] - at[0], p[1] - at[1]];
  return pattern.sectors.map(({ from, to }) =>
    glimpses.flatMap((glimpse) => {
      const [r, l] = [toward(glimpse.right), toward(glimpse.left)];
      if (cross(r, l) <= 0) return [];
      // A glimpse is seen under less than 180 degrees, and so is a sector.
      const rightIn = cross(from, r) >= 0 && cross(r, to) > 0;
      const leftIn = cross(from, l) > 0 && cross(l, to) >= 0;
      const holds = (d: Point): boolean => cross(r, d) > 0 && cross(d, l) > 0;
      const right = rightIn ? glimpse.right : holds(from) ? alongRay(at, from, glimpse) : null;
      const left = leftIn ? glimpse.left : holds(to) ? alongRay(at, to, glimpse) : null;
      return right !== null && left !== null ? [{ right, left }] : [];
    }),
  );
}

/** All that a source offers: convex pieces of what it sees, each with the plane that rises from it. */
export function piecesOf(source: Source): Patch[] {
  const { at, line, levelIn, outlet, sight, pattern } = source;
  const out: Patch[] = [];
  const keep = (ring: Convex, gx: number, gy: number): void => {
    if (!isSliver(ring)) out.push({ ring, plane: planeThrough(at, levelIn, gx, gy), outlet });
  };
  if (line !== null) {
    const n: Point = [-line.along[1], line.along[0]];
    const rise = riseIn(pattern, n);
    const foot = (p: Point): Point => {
      const t = dot([p[0] - at[0], p[1] - at[1]], line.along);
      return [at[0] + line.along[0] * t, at[1] + line.along[1] * t];
    };
    for (const chain of convexChains(sight.glimpses)) {
      keep([foot(chain[chain.length - 1]), foot(chain[0]), ...chain], n[0] * rise, n[1] * rise);
    }
    return out;
  }
  bySector(at, pattern, sight.glimpses).forEach((glimpses, i) => {
    const { gx, gy } = pattern.sectors[i];
    for (const chain of convexChains(glimpses)) keep([at, ...chain], gx, gy);
  });
  return out;
}
