import { type Region, unite } from '../geometry/boolean.ts';
import { cross, direction, distanceFt } from '../geometry/vector.ts';
import type { Point, Ring } from '../roof.ts';

/** A stretch of the section's boundary, the section on its left, and how far the sheet goes past it. */
export interface PastEdge {
  from: Point;
  to: Point;
  pastFt: number;
}

const move = (p: Point, by: Point, ft: number): Point => [p[0] + by[0] * ft, p[1] + by[1] * ft];

/** Where the sheets beyond two neighbouring edges meet; null where the corner turns in or not at all. */
function cornerPiece(a: PastEdge, b: PastEdge): Ring | null {
  const [da, db] = [direction(a.from, a.to), direction(b.from, b.to)];
  const turn = cross(da, db);
  if (turn < 1e-6) return null;
  const [na, nb]: [Point, Point] = [
    [da[1], -da[0]],
    [db[1], -db[0]],
  ];
  const miter: Point = [
    a.to[0] + (a.pastFt * nb[1] - b.pastFt * na[1]) / turn,
    a.to[1] + (b.pastFt * na[0] - a.pastFt * nb[0]) / turn,
  ];
  return [a.to, move(a.to, na, a.pastFt), miter, move(a.to, nb, b.pastFt)];
}

/**
 * What the sheet covers, laid out flat: the section and the strips beyond its edges (turned down, turned up, run up).
 * @param outline counter-clockwise
 */
export function coveredRegion(outline: Ring, edges: readonly PastEdge[]): Region[] {
  const strips = edges
    .filter(({ pastFt }) => pastFt > 0)
    .map(({ from, to, pastFt }): Ring => {
      const d = direction(from, to);
      const n: Point = [d[1], -d[0]];
      return [from, move(from, n, pastFt), move(to, n, pastFt), to];
    });
  const corners = edges.flatMap((edge) => {
    const next = edges.find(({ from }) => distanceFt(edge.to, from) < 1e-6);
    const piece = next === undefined ? null : cornerPiece(edge, next);
    return piece === null ? [] : [piece];
  });
  return unite([outline, ...strips, ...corners]);
}
