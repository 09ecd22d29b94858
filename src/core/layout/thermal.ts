import { coverBoard, filmsR, insulationBases, labelRFit } from '../../../reference/insulation.ts';
import { heightIn } from '../geometry/plane.ts';
import { centroid, signedAreaSqFt } from '../geometry/vector.ts';
import type { Patch } from '../surface/patch.ts';

/** R of boards of this thickness with the cover board, label basis. */
export const rOf = (boardsIn: number): number => boardsIn * insulationBases[0].rPerIn + coverBoard.r;

/** Label R of one board of a thickness, h ft2 F/Btu. Source: fit to the programme values since 2014. */
export const labelR = (thicknessIn: number): number =>
  labelRFit.perIn * thicknessIn + labelRFit.perIn2 * thicknessIn ** 2;

export interface Moments {
  areaSqFt: number;
  /** Area times mean thickness: board feet. */
  boardFt: number;
  leastIn: number;
  greatestIn: number;
}

/** Exact moments of a thickness over its patches. */
export function momentsOf(patches: readonly Patch[]): Moments {
  const m = { areaSqFt: 0, boardFt: 0, leastIn: Number.POSITIVE_INFINITY, greatestIn: Number.NEGATIVE_INFINITY };
  for (const { ring, plane } of patches) {
    const areaSqFt = signedAreaSqFt(ring);
    m.areaSqFt += areaSqFt;
    m.boardFt += areaSqFt * heightIn(plane, centroid(ring));
    for (const p of ring) {
      const t = heightIn(plane, p);
      if (t < m.leastIn) m.leastIn = t;
      if (t > m.greatestIn) m.greatestIn = t;
    }
  }
  return m;
}

/**
 * Mean of 1/R over a triangle on which R is linear with corner values a, b, c.
 * Closed form of the divided difference of R ln R - R; equal corners by their limits.
 * Source: integral over a triangle; checked against the tapered-roof U table of a state energy code.
 */
export function meanU(a: number, b: number, c: number): number {
  const [lo, mid, hi] = [a, b, c].sort((p, q) => p - q);
  const spread = hi - lo;
  if (spread < 1e-4 * hi) {
    const mean = (a + b + c) / 3;
    return 1 / mean;
  }
  const g = (x: number): number => x * Math.log(x);
  const slope = (p: number, q: number): number =>
    Math.abs(p - q) < 1e-6 * q ? Math.log((p + q) / 2) + 1 : (g(p) - g(q)) / (p - q);
  return (2 * (slope(mid, hi) - slope(lo, mid))) / spread;
}

/** R of the roof as heat sees it: films and boards, from the area-weighted U (never from the mean thickness). */
export function effectiveR(patches: readonly Patch[]): number {
  let u = 0;
  let areaSqFt = 0;
  for (const { ring, plane } of patches) {
    for (let i = 1; i + 1 < ring.length; i++) {
      const triangle = [ring[0], ring[i], ring[i + 1]];
      const part = signedAreaSqFt(triangle);
      const [a, b, c] = triangle.map((p) => filmsR.value + rOf(heightIn(plane, p)));
      u += part * meanU(a, b, c);
      areaSqFt += part;
    }
  }
  return areaSqFt / u - filmsR.value;
}
