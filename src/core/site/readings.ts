import Delaunator from 'delaunator';
import { orient, toSegment } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';

export interface Reading {
  at: Point;
  zIn: number;
}

/**
 * Height between readings: straight within the triangles of the readings; outside their hull the value of its
 * nearest point, said by `inside: false`.
 * @param readings at least one, no two at one spot
 */
export function between(readings: readonly Reading[]): (p: Point) => { zIn: number; inside: boolean } {
  const points = readings.map(({ at }) => at);
  const flat = Delaunator.from(points as [number, number][]);
  const triangles: number[][] = [];
  for (let i = 0; i < flat.triangles.length; i += 3) triangles.push([...flat.triangles.slice(i, i + 3)]);
  const hull = triangles.length > 0 ? [...flat.hull] : order(points);
  const segments = hull.map((a, i) => [a, hull[(i + 1) % hull.length]]);
  return (p) => {
    for (const [a, b, c] of triangles) {
      const whole = orient(points[a], points[b], points[c]);
      const parts = [orient(points[b], points[c], p), orient(points[c], points[a], p), orient(points[a], points[b], p)];
      const shares = parts.map((part) => part / whole);
      if (shares.some((share) => share < -1e-9)) continue;
      const zIn = [a, b, c].reduce((sum, id, k) => sum + shares[k] * readings[id].zIn, 0);
      return { zIn, inside: true };
    }
    let best = { zIn: readings[0].zIn, distanceFt: Number.POSITIVE_INFINITY };
    for (const [a, b] of segments) {
      const near = toSegment(p, points[a], points[b]);
      const zIn = readings[a].zIn + (readings[b].zIn - readings[a].zIn) * near.t;
      if (near.distanceFt < best.distanceFt) best = { zIn, distanceFt: near.distanceFt };
    }
    return { zIn: best.zIn, inside: best.distanceFt < 1e-6 };
  };
}

/** Readings on one line have no triangles: take them in order along it. */
function order(points: readonly Point[]): number[] {
  return points.map((_, i) => i).sort((i, j) => points[i][0] - points[j][0] || points[i][1] - points[j][1]);
}
