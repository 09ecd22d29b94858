import { offset, unite } from '../geometry/boolean.ts';
import { type Convex, cut, isSliver } from '../geometry/convex.ts';
import { direction, perimeterFt, signedAreaSqFt } from '../geometry/vector.ts';
import type { Ring } from '../roof.ts';

/** True where a convex ring keeps something when every side moves in by this much. */
function keepsConvex(ring: Convex, byFt: number): boolean {
  let rest: Convex = ring;
  for (let i = 0; i < ring.length && rest.length >= 3; i++) {
    const a = ring[i];
    const [dx, dy] = direction(a, ring[(i + 1) % ring.length]);
    rest = cut(rest, ([x, y]) => (y - a[1]) * dx - (x - a[0]) * dy - byFt);
  }
  return !isSliver(rest);
}

/**
 * True where no circle of this diameter lies in the outline.
 * A circle is between area / perimeter and twice that in radius on a convex outline; in between, the sides are moved in.
 */
export function isTooSmall(outline: Ring, diameterFt: number, convex: boolean): boolean {
  const radiusFt = diameterFt / 2;
  const areaSqFt = Math.abs(signedAreaSqFt(outline));
  const perRound = areaSqFt / Math.max(perimeterFt(outline), 1e-9);
  if (perRound >= radiusFt) return false;
  if (convex) return 2 * perRound < radiusFt || !keepsConvex(outline, radiusFt);
  return offset(outline, -radiusFt).length === 0;
}

/** Outlines of the parts of one board: parts that touch become one piece, but a board round a curb stays in its parts. */
export function outlinesOf(rings: readonly Convex[]): readonly Ring[] {
  if (rings.length === 1) return rings;
  const regions = unite(rings);
  return regions.some(({ holes }) => holes.length > 0) ? rings : regions.map(({ outer }) => outer);
}
