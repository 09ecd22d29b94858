import { type Convex, cut, isSliver } from '../geometry/convex.ts';
import { heightIn, type Plane } from '../geometry/plane.ts';
import { bearingVector, boxOf, dot } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';
import type { Patch } from '../surface/patch.ts';

/** Four steeper planes about a drain, sunk into the taper: a second source at the same point. */
export interface Sump {
  outlet: string;
  at: Point;
  /** Thickness at the drain. */
  levelIn: number;
  riseInPerFt: number;
  /** From the drain to the rim, square to a side. */
  halfFt: number;
  /** Bearing of one of the four planes. */
  turnDeg: number;
}

const SAME_IN = 1e-6;

/** The four planes of a sump, with the directions in which they rise. */
const planesOf = ({ at, levelIn, riseInPerFt, turnDeg }: Sump): { out: Point; plane: Plane }[] =>
  [0, 90, 180, 270].map((deg) => {
    const out = bearingVector(turnDeg + deg);
    const [gx, gy] = [out[0] * riseInPerFt, out[1] * riseInPerFt];
    return { out, plane: { atOriginIn: levelIn - gx * at[0] - gy * at[1], gx, gy } };
  });

/** The part of a ring in one quarter of a sump, and whether it reaches the rim. */
function quarterOf(ring: Convex, { at, halfFt }: Sump, out: Point): Convex {
  const by = (p: Point): Point => [p[0] - at[0], p[1] - at[1]];
  const right: Point = [out[1], -out[0]];
  const limits = [
    (p: Point) => halfFt - dot(by(p), out),
    (p: Point) => dot(by(p), [out[0] - right[0], out[1] - right[1]]) * Math.SQRT1_2,
    (p: Point) => dot(by(p), [out[0] + right[0], out[1] + right[1]]) * Math.SQRT1_2,
  ];
  return limits.reduce((rest: Convex, limit) => (rest.length < 3 ? rest : cut(rest, limit)), ring);
}

/** What of a ring lies outside a sump's square, in convex pieces. */
function outside(ring: Convex, { at, halfFt }: Sump, outs: readonly Point[]): Convex[] {
  const pieces: Convex[] = [];
  let rest = ring;
  for (const out of outs) {
    if (rest.length < 3) break;
    const beyond = (p: Point): number => dot([p[0] - at[0], p[1] - at[1]], out) - halfFt;
    pieces.push(cut(rest, beyond));
    rest = cut(rest, (p) => -beyond(p));
  }
  return pieces.filter((piece) => !isSliver(piece));
}

/** One sump put into the patches near it; null where the taper stands over its rim, so that it would end in a step. */
function withOne(patches: readonly Patch[], sump: Sump): Patch[] | null {
  const planes = planesOf(sump);
  const outs = planes.map(({ out }) => out);
  const result: Patch[] = [];
  for (const patch of patches) {
    result.push(...outside(patch.ring, sump, outs).map((ring) => ({ ...patch, ring })));
    for (const { out, plane } of planes) {
      const quarter = quarterOf(patch.ring, sump, out);
      if (isSliver(quarter)) continue;
      const over = (p: Point): number => heightIn(patch.plane, p) - heightIn(plane, p);
      const atRim = (p: Point): boolean => dot([p[0] - sump.at[0], p[1] - sump.at[1]], out) > sump.halfFt - 1e-6;
      if (quarter.some((p) => atRim(p) && over(p) > SAME_IN)) return null;
      const steep = Math.hypot(patch.plane.gx - plane.gx, patch.plane.gy - plane.gy);
      if (steep < SAME_IN) {
        // Of two planes alike, as of sumps that overlap, the lower holds.
        const lower = over(quarter[0]) > SAME_IN;
        result.push(lower ? { ring: quarter, plane, outlet: sump.outlet } : { ...patch, ring: quarter });
        continue;
      }
      const [sunk, left] = [cut(quarter, (p) => over(p) / steep), cut(quarter, (p) => -over(p) / steep)];
      if (!isSliver(sunk)) result.push({ ring: sunk, plane, outlet: sump.outlet });
      if (!isSliver(left)) result.push({ ...patch, ring: left });
    }
  }
  return result;
}

/**
 * A thickness with sumps at its drains: the lower of the two everywhere, so that it stays continuous.
 * @returns the patches, and the sumps that could be made; one over whose rim the taper stands is left out
 * Correctness: tests/unit/sump.test.ts
 */
export function withSumps(
  patches: readonly Patch[],
  sumps: readonly Sump[],
): { patches: readonly Patch[]; made: Sump[] } {
  let all = [...patches];
  const made: Sump[] = [];
  for (const sump of sumps) {
    const reach = sump.halfFt * Math.SQRT2 + 1e-3;
    const isNear = ({ ring }: Patch): boolean => {
      const { minX, maxX, minY, maxY } = boxOf(ring);
      const [x, y] = sump.at;
      return minX < x + reach && maxX > x - reach && minY < y + reach && maxY > y - reach;
    };
    const sunk = withOne(all.filter(isNear), sump);
    if (sunk === null) continue;
    made.push(sump);
    all = [...all.filter((patch) => !isNear(patch)), ...sunk];
  }
  return { patches: all, made };
}
