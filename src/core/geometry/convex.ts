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
  const n = ring.length;
  const values = new Array<number>(n);
  let anyIn = false;
  let anyOut = false;
  for (let i = 0; i < n; i++) {
    const raw = side(ring[i]);
    const v = Math.abs(raw) < ON_LINE_FT ? 0 : raw;
    values[i] = v;
    if (v > 0) anyIn = true;
    if (v < 0) anyOut = true;
  }
  if (!anyOut) return ring;
  if (!anyIn) return [];
  const kept: Point[] = [];
  for (let i = 0; i < n; i++) {
    const j = (i + 1) % n;
    const [vi, vj] = [values[i], values[j]];
    if (vi >= 0) kept.push(ring[i]);
    if ((vi > 0 && vj < 0) || (vi < 0 && vj > 0)) kept.push(between(ring[i], ring[j], vi / (vi - vj)));
  }
  return kept.length < 3 ? [] : kept;
}

/** Signed distance in ft to the left of the line a -> b. */
export function leftOf(a: Point, b: Point): (p: Point) => number {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const length = Math.hypot(dx, dy);
  return (p) => ((p[1] - a[1]) * dx - (p[0] - a[0]) * dy) / length;
}

const negate =
  (side: (p: Point) => number): ((p: Point) => number) =>
  (p) =>
    -side(p);

export function intersectConvex(a: Convex, b: Convex): Convex {
  let out: Convex = a;
  for (let i = 0; i < b.length && out.length >= 3; i++) {
    const q = b[(i + 1) % b.length];
    if (distanceFt(b[i], q) < ON_LINE_FT) continue;
    out = cut(out, leftOf(b[i], q));
  }
  return isSliver(out) ? [] : out;
}

/** What is left of a when b is taken away: convex pieces, slivers dropped. */
export function subtractConvex(a: Convex, b: Convex): Convex[] {
  const left: Convex[] = [];
  let rest: Convex = a;
  for (let i = 0; i < b.length; i++) {
    const q = b[(i + 1) % b.length];
    if (distanceFt(b[i], q) < ON_LINE_FT) continue;
    const side = leftOf(b[i], q);
    const outside = cut(rest, negate(side));
    if (!isSliver(outside)) left.push(outside);
    rest = cut(rest, side);
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
