import type { Point, Ring } from '../roof.ts';
import { between, distanceFt, signedAreaSqFt } from './vector.ts';

/** A convex counter-clockwise ring. Everything in this file takes and gives convex rings only. */
export type Convex = Ring;

/** Thinner than this is nothing: it would vanish on the grid. */
const THIN_FT = 1e-6;
/** Points nearer to a cutting line than this are on it. */
const ON_LINE_FT = 1e-9;

/** True for rings too thin to hold a triangle on the grid. */
export function isSliver(ring: Ring): boolean {
  if (ring.length < 3) return true;
  let round = 0;
  for (let i = 0; i < ring.length; i++) round += distanceFt(ring[i], ring[(i + 1) % ring.length]);
  return (4 * Math.abs(signedAreaSqFt(ring))) / round < THIN_FT;
}

/**
 * The part of a convex ring where a linear function is not negative.
 * @param side the function's value at a point, in ft from its zero line
 */
export function cut(ring: Convex, side: (p: Point) => number): Convex {
  const values = new Float64Array(ring.length);
  for (let i = 0; i < ring.length; i++) values[i] = side(ring[i]);
  return cutBy(ring, values);
}

/** Cuts by the values of a linear function at the corners; they are rounded to the line in place. */
function cutBy(ring: Convex, values: Float64Array): Convex {
  const n = ring.length;
  let anyIn = false;
  let anyOut = false;
  for (let i = 0; i < n; i++) {
    if (Math.abs(values[i]) < ON_LINE_FT) values[i] = 0;
    else if (values[i] > 0) anyIn = true;
    else anyOut = true;
  }
  if (!anyOut) return ring;
  if (!anyIn) return [];
  const kept: Point[] = [];
  for (let i = 0; i < n; i++) {
    const j = i + 1 === n ? 0 : i + 1;
    const [vi, vj] = [values[i], values[j]];
    if (vi >= 0) kept.push(ring[i]);
    if ((vi > 0 && vj < 0) || (vi < 0 && vj > 0)) kept.push(between(ring[i], ring[j], vi / (vi - vj)));
  }
  return kept.length < 3 ? [] : kept;
}

/** Signed distances in ft of a ring's corners to the left of the line a -> b; null where a and b coincide. */
function leftOf(ring: Convex, a: Point, b: Point): Float64Array | null {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const length = Math.hypot(dx, dy);
  if (length < ON_LINE_FT) return null;
  const values = new Float64Array(ring.length);
  for (let i = 0; i < ring.length; i++) {
    const p = ring[i];
    values[i] = ((p[1] - a[1]) * dx - (p[0] - a[0]) * dy) / length;
  }
  return values;
}

const negate =
  (side: (p: Point) => number): ((p: Point) => number) =>
  (p) =>
    -side(p);

/** True when one edge of b has all of a on its outer side: most pairs that only look near part here. */
function parted(a: Convex, b: Convex): boolean {
  for (let i = 0; i < b.length; i++) {
    const p = b[i];
    const q = b[i + 1 === b.length ? 0 : i + 1];
    const dx = q[0] - p[0];
    const dy = q[1] - p[1];
    const slack = ON_LINE_FT * (Math.abs(dx) + Math.abs(dy));
    let outside = dx !== 0 || dy !== 0;
    for (let k = 0; k < a.length && outside; k++) outside = (a[k][1] - p[1]) * dx - (a[k][0] - p[0]) * dy <= slack;
    if (outside) return true;
  }
  return false;
}

export function intersectConvex(a: Convex, b: Convex): Convex {
  if (parted(a, b) || parted(b, a)) return [];
  let out: Convex = a;
  for (let i = 0; i < b.length && out.length >= 3; i++) {
    const values = leftOf(out, b[i], b[(i + 1) % b.length]);
    if (values !== null) out = cutBy(out, values);
  }
  return isSliver(out) ? [] : out;
}

/** What is left of a when b is taken away: convex pieces, slivers dropped. */
export function subtractConvex(a: Convex, b: Convex): Convex[] {
  const left: Convex[] = [];
  let rest: Convex = a;
  for (let i = 0; i < b.length; i++) {
    const values = leftOf(rest, b[i], b[(i + 1) % b.length]);
    if (values === null) continue;
    const outside = cutBy(
      rest,
      values.map((v) => -v),
    );
    if (!isSliver(outside)) left.push(outside);
    rest = cutBy(rest, values);
    if (isSliver(rest)) return left;
  }
  return left;
}

/** Both halves of a ring at a line. */
export function split(ring: Convex, side: (p: Point) => number): [positive: Convex, negative: Convex] {
  const positive = cut(ring, side);
  const negative = cut(ring, negate(side));
  return [isSliver(positive) ? [] : positive, isSliver(negative) ? [] : negative];
}
