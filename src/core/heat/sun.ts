const DEG = Math.PI / 180;

/** Where on earth, and which clock. */
export interface Spot {
  latDeg: number;
  /** East is positive. */
  lonDeg: number;
  /** Of standard time. */
  utcOffsetH: number;
}

const dayAngle = (day: number): number => (2 * Math.PI * (day - 1)) / 365;

/**
 * Declination of the sun, rad, on a day of the year (1 = 1 January).
 * Source: Spencer 1971, to 0.3 degrees. Correctness: tests/published/heat-sun.test.ts
 */
export function declinationRad(day: number): number {
  const b = dayAngle(day);
  return (
    0.006918 -
    0.399912 * Math.cos(b) +
    0.070257 * Math.sin(b) -
    0.006758 * Math.cos(2 * b) +
    0.000907 * Math.sin(2 * b) -
    0.002697 * Math.cos(3 * b) +
    0.00148 * Math.sin(3 * b)
  );
}

/** Time of the sundial less time of the clock at the middle of its zone, min. Source: Spencer 1971, as corrected by him. */
export function equationOfTimeMin(day: number): number {
  const b = dayAngle(day);
  return (
    229.18 *
    (0.0000075 +
      0.001868 * Math.cos(b) -
      0.032077 * Math.sin(b) -
      0.014615 * Math.cos(2 * b) -
      0.040849 * Math.sin(2 * b))
  );
}

/** Hours by the sun at an hour of standard time. */
export const solarHour = ({ lonDeg, utcOffsetH }: Spot, day: number, clockH: number): number =>
  clockH + (equationOfTimeMin(day) + 4 * (lonDeg - 15 * utcOffsetH)) / 60;

/**
 * Sine of the sun's height over the horizon at an hour of standard time; negative at night.
 * Correctness: tests/published/heat-sun.test.ts
 */
export function sunSine(spot: Spot, day: number, clockH: number): number {
  const hourAngle = 15 * DEG * (solarHour(spot, day, clockH) - 12);
  const [lat, decl] = [spot.latDeg * DEG, declinationRad(day)];
  return Math.sin(lat) * Math.sin(decl) + Math.cos(lat) * Math.cos(decl) * Math.cos(hourAngle);
}
