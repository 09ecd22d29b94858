import { describe, expect, it } from 'vitest';
import { declinationRad, equationOfTimeMin, sunSine } from '../../src/core/heat/sun.ts';
import { centuryOf, noaaPosition, noaaRiseAndSet, noaaSun } from './noaa-sun.ts';

const DEG = Math.PI / 180;
const golden = { latDeg: 39.742476, lonDeg: -105.1786, utcOffsetH: -7 };
const zenithDeg = (sine: number): number => Math.acos(sine) / DEG;
const clock = (h: number, m: number, s: number): number => 3600 * h + 60 * m + s;

describe('sun: equations of the weather service, held to published positions', () => {
  // Solar position algorithm, worked example (National Renewable Energy Laboratory, 2008): found.
  it('Golden, Colorado, 17 October 2003, 12:30:30: zenith 50.128, azimuth 194.340 deg', () => {
    const at = noaaPosition({ year: 2003, month: 10, day: 17, clockH: 12.5 + 30 / 3600, ...golden });
    expect(Math.abs(at.zenithDeg - (90 - 39.872046))).toBeLessThan(0.01);
    expect(Math.abs(at.azimuthDeg - 194.340241)).toBeLessThan(0.01);
  });

  // Sunrise, transit and sunset of the same algorithm, 2 January 2015: found. Its sunset of 2 August 2015 is left out: it
  // stands more than a minute off the almanac of the US naval observatory.
  it('Golden, 2 January 2015: rises 07:21:55, noon 12:04:45, sets 16:47:43 (15 s)', () => {
    const { riseS, noonS, setS } = noaaRiseAndSet({ year: 2015, month: 1, day: 2, ...golden });
    expect(Math.abs(riseS - clock(7, 21, 55))).toBeLessThan(15);
    expect(Math.abs(noonS - clock(12, 4, 45))).toBeLessThan(15);
    expect(Math.abs(setS - clock(16, 47, 43))).toBeLessThan(15);
  });

  it('Golden, 2 August 2015: rises 05:00:27 (15 s)', () => {
    const { riseS } = noaaRiseAndSet({ year: 2015, month: 8, day: 2, ...golden });
    expect(Math.abs(riseS - clock(5, 0, 27))).toBeLessThan(15);
  });
});

describe('sun: the shorter series of the product (Spencer 1971)', () => {
  it('Golden, 17 October, 12:30:30: zenith 50.128 within 0.4 deg (published position, found)', () => {
    expect(Math.abs(zenithDeg(sunSine(golden, 290, 12.5 + 30 / 3600)) - 50.128)).toBeLessThan(0.4);
  });

  // Values of the series itself, computed from its printed coefficients.
  it.each([
    { day: 202, of: '21 July', decl: 20.637, equation: -6.36 },
    { day: 294, of: '21 October', decl: -10.416, equation: 15.49 },
  ])('$of: declination $decl deg, equation of time $equation min', ({ day, decl, equation }) => {
    expect(Math.abs(declinationRad(day) / DEG - decl)).toBeLessThan(0.005);
    expect(Math.abs(equationOfTimeMin(day) - equation)).toBeLessThan(0.01);
  });

  // Twelve 21sts of the month, computed from the printed coefficients: equation of time min, declination deg.
  it.each([
    [21, -10.61, -20.09],
    [52, -13.97, -10.84],
    [80, -7.87, -0.07],
    [111, 1.2, 11.58],
    [141, 3.72, 20.02],
    [172, -1.34, 23.45],
    [233, -3.58, 12.38],
    [264, 6.89, 1.03],
    [325, 13.81, -19.76],
    [355, 2.16, -23.42],
  ])('day %i: %f min, %f deg', (day, equation, decl) => {
    expect(Math.abs(equationOfTimeMin(day) - equation)).toBeLessThan(0.006);
    expect(Math.abs(declinationRad(day) / DEG - decl)).toBeLessThan(0.006);
  });

  it('stays within 0.5 deg and 1 min of the weather service on every day of two years', () => {
    for (const year of [2023, 2024]) {
      for (let day = 1; day <= 365; day++) {
        const date = new Date(Date.UTC(year, 0, day));
        const exact = noaaSun(centuryOf(year, date.getUTCMonth() + 1, date.getUTCDate(), 12));
        expect(Math.abs(declinationRad(day) / DEG - exact.declinationDeg), `${year} ${day}`).toBeLessThan(0.5);
        expect(Math.abs(equationOfTimeMin(day) - exact.equationMin), `${year} ${day}`).toBeLessThan(1);
      }
    }
  });

  // Noon heights of 21 July printed in the headers of public weather files' summaries (found); latitudes are
  // printed to 0.01 deg.
  it.each([
    ['Memphis', 35.07, 75.57],
    ['Miami', 25.82, 84.82],
    ['Duluth', 46.83, 63.82],
  ])('noon height at %s', (_, latDeg, height) => {
    const spot = { latDeg, lonDeg: 0, utcOffsetH: 0 };
    const noon = 12 - equationOfTimeMin(202) / 60;
    expect(Math.abs(90 - zenithDeg(sunSine(spot, 202, noon)) - height)).toBeLessThan(0.02);
  });
});
