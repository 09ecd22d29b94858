/**
 * Heat index, F, by the regression of the National Weather Service with its two adjustments; below about 80 F its simple
 * form. Grade memory for the coefficients. Correctness: tests/published/safety-site.test.ts
 */
export function heatIndexF(temperatureF: number, humidityPercent: number): number {
  const t = temperatureF;
  const r = humidityPercent;
  const simple = 0.5 * (t + 61 + (t - 68) * 1.2 + r * 0.094);
  if ((simple + t) / 2 < 80) return simple;
  const full =
    -42.379 +
    2.04901523 * t +
    10.14333127 * r -
    0.22475541 * t * r -
    0.00683783 * t * t -
    0.05481717 * r * r +
    0.00122874 * t * t * r +
    0.00085282 * t * r * r -
    0.00000199 * t * t * r * r;
  if (r < 13 && t >= 80 && t <= 112) return full - ((13 - r) / 4) * Math.sqrt((17 - Math.abs(t - 95)) / 17);
  if (r > 85 && t >= 80 && t <= 87) return full + ((r - 85) / 10) * ((87 - t) / 5);
  return full;
}

/** Wind chill, F, by the 2001 formula (valid to 50 F and from 3 mph; otherwise the air temperature itself). */
export function windChillF(temperatureF: number, windMph: number): number {
  if (temperatureF > 50 || windMph < 3) return temperatureF;
  const v = windMph ** 0.16;
  return 35.74 + 0.6215 * temperatureF - 35.75 * v + 0.4275 * temperatureF * v;
}

/** Force of the wind on a board held across it, lb, with a coefficient of 1: 0.00256 V^2 times the area. */
export function windForceLb(windMph: number, areaSqFt: number): number {
  return 0.00256 * windMph ** 2 * areaSqFt;
}
