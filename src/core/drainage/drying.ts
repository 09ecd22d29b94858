import { panCoefficient } from '../../../reference/drying.ts';

/** Class A pan rate [in/day] of a monthly sum [in] over the days of that month. */
export const panInPerDay = (monthSumIn: number, daysInMonth = 30): number => monthSumIn / daysInMonth;

/**
 * Depth of open water [in] that dries in the given time: rate x coefficient x time.
 * @param panRateInPerDay Class A pan evaporation [in/day]
 * @param hours time since the rain stopped
 * A pond is judged by what is left after it. Source: reference/drying.ts (coefficient from memory).
 * Correctness: tests/published/drainage-load.test.ts
 */
export function dryingDepthIn(panRateInPerDay: number, hours = 48): number {
  return panRateInPerDay * panCoefficient.coefficient * (hours / 24);
}
