import { dewPointOf, saturationPa } from '../moisture/psychrometrics.ts';

/** Air pressure at a height above the sea, Pa. Source: standard atmosphere. */
export const pressurePa = (elevationFt: number): number => 101_325 * (1 - 2.25577e-5 * elevationFt * 0.3048) ** 5.25588;

/** Water vapour against dry air by weight, per unit of the ratio of their pressures. */
const VAPOUR_WEIGHT = 0.621945;

/**
 * Dew point, C, from dry and wet bulb at an air pressure [Pa].
 * Source: ASHRAE Handbook, Fundamentals, psychrometrics, from memory. Correctness: tests/published/heat-sky.test.ts
 */
export function wetBulbDewPointC(airC: number, wetBulbC: number, pressure: number): number {
  const full = saturationPa(wetBulbC);
  const fullRatio = (VAPOUR_WEIGHT * full) / (pressure - full);
  const ratio =
    ((2501 - 2.326 * wetBulbC) * fullRatio - 1.006 * (airC - wetBulbC)) / (2501 + 1.86 * airC - 4.186 * wetBulbC);
  return dewPointOf(Math.max((pressure * ratio) / (VAPOUR_WEIGHT + ratio), 1));
}
