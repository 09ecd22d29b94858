/** A slope that was stated, beside the rise that was measured over a run. */
export interface SlopeCheck {
  /** Rise that the stated slope would give. */
  expectedIn: number;
  /** Slope that the measured rise gives. */
  measuredInPerFt: number;
  agrees: boolean;
}

/** A tape and a level differ by so much, or by so much of the rise. */
const TAPE_IN = 0.5;
const SHARE = 0.1;

/**
 * Whether a stated slope and a measured rise say the same: 24 ft "at 1/4" with a rise of 3 in is 1/8.
 * @param runFt over 0
 * Source: arithmetic; what may differ is common practice. Correctness: tests/published/taper-heat.test.ts, 53
 */
export function checkSlope(slopeInPerFt: number, riseIn: number, runFt: number): SlopeCheck {
  const expectedIn = slopeInPerFt * runFt;
  const agrees = Math.abs(expectedIn - riseIn) <= Math.max(TAPE_IN, SHARE * expectedIn) + 1e-9;
  return { expectedIn, measuredInPerFt: riseIn / runFt, agrees };
}
