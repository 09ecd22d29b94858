/**
 * Position of the sun by the equations of a public spreadsheet of the US weather service (after Meeus), written apart from
 * the product: itself held to published positions, then used to hold the product's shorter series.
 */
const DEG = Math.PI / 180;

/** Julian century of a moment given in universal time. */
export const centuryOf = (year: number, month: number, day: number, utcH: number): number =>
  (Date.UTC(year, month - 1, day) / 86_400_000 + 2_440_587.5 + utcH / 24 - 2_451_545) / 36_525;

/** Declination [deg] and equation of time [min]. */
export function noaaSun(t: number): { declinationDeg: number; equationMin: number } {
  const meanLong = (280.46646 + t * (36_000.76983 + t * 0.0003032)) % 360;
  const anomaly = 357.52911 + t * (35_999.05029 - 0.0001537 * t);
  const ecc = 0.016708634 - t * (0.000042037 + 0.0000001267 * t);
  const center =
    Math.sin(anomaly * DEG) * (1.914602 - t * (0.004817 + 0.000014 * t)) +
    Math.sin(2 * anomaly * DEG) * (0.019993 - 0.000101 * t) +
    Math.sin(3 * anomaly * DEG) * 0.000289;
  const apparent = meanLong + center - 0.00569 - 0.00478 * Math.sin((125.04 - 1934.136 * t) * DEG);
  const mean = 23 + (26 + (21.448 - t * (46.815 + t * (0.00059 - t * 0.001813))) / 60) / 60;
  const obliquity = mean + 0.00256 * Math.cos((125.04 - 1934.136 * t) * DEG);
  const y = Math.tan((obliquity / 2) * DEG) ** 2;
  const equation =
    y * Math.sin(2 * meanLong * DEG) -
    2 * ecc * Math.sin(anomaly * DEG) +
    4 * ecc * y * Math.sin(anomaly * DEG) * Math.cos(2 * meanLong * DEG) -
    0.5 * y * y * Math.sin(4 * meanLong * DEG) -
    1.25 * ecc * ecc * Math.sin(2 * anomaly * DEG);
  return {
    declinationDeg: Math.asin(Math.sin(obliquity * DEG) * Math.sin(apparent * DEG)) / DEG,
    equationMin: (4 * equation) / DEG,
  };
}

export interface Moment {
  year: number;
  month: number;
  day: number;
  clockH: number;
  utcOffsetH: number;
  latDeg: number;
  lonDeg: number;
}

/** Zenith distance without refraction, and azimuth from north, deg. */
export function noaaPosition({ year, month, day, clockH, utcOffsetH, latDeg, lonDeg }: Moment) {
  const { declinationDeg, equationMin } = noaaSun(centuryOf(year, month, day, clockH - utcOffsetH));
  const hour = (((clockH * 60 + equationMin + 4 * lonDeg - 60 * utcOffsetH) % 1440) / 4 - 180) * DEG;
  const [lat, decl] = [latDeg * DEG, declinationDeg * DEG];
  const sine = Math.sin(lat) * Math.sin(decl) + Math.cos(lat) * Math.cos(decl) * Math.cos(hour);
  const azimuth = Math.atan2(Math.sin(hour), Math.cos(hour) * Math.sin(lat) - Math.tan(decl) * Math.cos(lat)) / DEG;
  return { zenithDeg: Math.acos(sine) / DEG, azimuthDeg: azimuth + 180 };
}

/** Sunrise, noon and sunset in seconds of the clock; the sun's upper edge on the horizon (90.833 deg), each at its own moment. */
export function noaaRiseAndSet({ year, month, day, utcOffsetH, latDeg, lonDeg }: Omit<Moment, 'clockH'>) {
  const at = (side: -1 | 0 | 1): number => {
    let clockH = 12 + 6 * side;
    for (let i = 0; i < 3; i++) {
      const { declinationDeg, equationMin } = noaaSun(centuryOf(year, month, day, clockH - utcOffsetH));
      const [lat, decl] = [latDeg * DEG, declinationDeg * DEG];
      const half = Math.acos(
        Math.cos(90.833 * DEG) / (Math.cos(lat) * Math.cos(decl)) - Math.tan(lat) * Math.tan(decl),
      );
      clockH = 12 + (-4 * lonDeg - equationMin + 60 * utcOffsetH + (side * 4 * half) / DEG) / 60;
    }
    return 3600 * clockH;
  };
  return { riseS: at(-1), noonS: at(0), setS: at(1) };
}
