/** Saturation over ice under this, over water above it. */
const TRIPLE_C = 0.01;

/**
 * Saturation pressure of water vapor, Pa. Source: Hyland and Wexler as in the ASHRAE Handbook.
 * Correctness: tests/published/moisture-vapor.test.ts, 21
 */
export function saturationPa(airC: number): number {
  const t = airC + 273.15;
  if (airC < TRIPLE_C)
    return Math.exp(
      -5674.5359 / t +
        6.3925247 -
        9.677843e-3 * t +
        6.2215701e-7 * t ** 2 +
        2.0747825e-9 * t ** 3 -
        9.484024e-13 * t ** 4 +
        4.1635019 * Math.log(t),
    );
  return Math.exp(
    -5800.2206 / t +
      1.3914993 -
      4.8640239e-2 * t +
      4.1764768e-5 * t ** 2 -
      1.4452093e-8 * t ** 3 +
      6.5459673 * Math.log(t),
  );
}

/** Saturation pressure by ISO 13788, Pa: 0.1 % under the handbook's at 20 C. Correctness: moisture-vapor.test.ts, 24 */
export const isoSaturationPa = (airC: number): number =>
  airC >= 0 ? 610.5 * Math.exp((17.269 * airC) / (237.3 + airC)) : 610.5 * Math.exp((21.875 * airC) / (265.5 + airC));

/** Temperature at which a vapor pressure saturates, C, between -60 and 80 C. Both laws rise, so halving finds it. */
export function dewPointOf(vaporPa: number, law: (airC: number) => number = saturationPa): number {
  let [low, high] = [-60, 80];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (law(middle) > vaporPa) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}
