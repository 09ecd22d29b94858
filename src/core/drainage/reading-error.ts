import Delaunator from 'delaunator';
import { planeOfTriangle } from '../geometry/plane.ts';
import { centroid, distanceFt } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';
import type { Reading } from '../site/readings.ts';

/** Two independent readings of one error: their difference has the root of two times it. */
const TWO_READINGS = Math.SQRT2;

/** Error [in] of a difference of two heights, each read to within `errorIn`. Independent errors, root of the sum of squares. */
export const differenceErrorIn = (errorIn: number): number => TWO_READINGS * errorIn;

/** Run [ft] over which two readings tell a slope to within `slopeInPerFt`. */
export const runToDecideFt = (errorIn: number, slopeInPerFt: number): number =>
  differenceErrorIn(errorIn) / Math.abs(slopeInPerFt);

function slopeError(a: Reading, b: Reading, c: Reading, errorIn: number): number {
  const [p, q, r] = [a.at, b.at, c.at];
  const plane = planeOfTriangle(p, q, r, a.zIn, b.zIn, c.zIn);
  const steep = Math.hypot(plane.gx, plane.gy);
  const shares = [
    planeOfTriangle(p, q, r, 1, 0, 0),
    planeOfTriangle(p, q, r, 0, 1, 0),
    planeOfTriangle(p, q, r, 0, 0, 1),
  ];
  // Along the fall; a level triangle has none, there the error of the whole gradient counts.
  const along = shares.map(({ gx, gy }) =>
    steep < 1e-9 ? Math.hypot(gx, gy) : (gx * plane.gx + gy * plane.gy) / steep,
  );
  return errorIn * Math.hypot(...along);
}

/**
 * Error [in/ft] of the slope of the readings' own triangle at a place, when each reading is good to `errorIn`.
 * @returns null where the readings span no triangle
 * Source: propagation of independent errors. Correctness: tests/unit/drainage/reading-error.test.ts
 */
export function slopeErrorInPerFt(readings: readonly Reading[], at: Point, errorIn: number): number | null {
  const { triangles } = Delaunator.from(readings.map((reading) => [reading.at[0], reading.at[1]] as [number, number]));
  let best: { ft: number; error: number } | null = null;
  for (let i = 0; i < triangles.length; i += 3) {
    const [a, b, c] = [readings[triangles[i]], readings[triangles[i + 1]], readings[triangles[i + 2]]];
    const ft = distanceFt(centroid([a.at, b.at, c.at]), at);
    if (best === null || ft < best.ft) best = { ft, error: slopeError(a, b, c, errorIn) };
  }
  return best?.error ?? null;
}
