/** Saturation over water, Pa, by the WMO's form of Magnus: to 0.3 percent from 0 to 50 C. */
const saturationPa = (airC: number): number => 611.2 * Math.exp((17.62 * airC) / (243.12 + airC));

/** Air pressure at a height above the sea, Pa. Source: standard atmosphere. */
export const pressurePa = (elevationFt: number): number => 101_325 * (1 - 2.25577e-5 * elevationFt * 0.3048) ** 5.25588;

/** Water vapour against dry air by weight, per unit of the ratio of their pressures. */
const VAPOUR_WEIGHT = 0.621945;

/**
 * Dew point, C, from dry and wet bulb at an air pressure [Pa].
 * Source: ASHRAE Handbook, Fundamentals, psychrometrics, from memory. Correctness: tests/published/heat-sky.test.ts
 * @returns never above the wet bulb
 */
export function dewPointC(airC: number, wetBulbC: number, pressure: number): number {
  const full = saturationPa(wetBulbC);
  const fullRatio = (VAPOUR_WEIGHT * full) / (pressure - full);
  const ratio =
    ((2501 - 2.326 * wetBulbC) * fullRatio - 1.006 * (airC - wetBulbC)) / (2501 + 1.86 * airC - 4.186 * wetBulbC);
  const vapour = Math.max((pressure * ratio) / (VAPOUR_WEIGHT + ratio), 1);
  const log = Math.log(vapour / 611.2);
  return Math.min((243.12 * log) / (17.62 - log), wetBulbC);
}
