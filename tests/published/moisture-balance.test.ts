import { describe, expect, it } from 'vitest';
import { winterClimates } from '../../reference/winter-climate.ts';
import { R_IP } from '../../src/core/heat/degrees.ts';
import { yearBalance } from '../../src/core/moisture/balance.ts';
import { stillAirOf, type VaporLayer, vaporProfile } from '../../src/core/moisture/glaser.ts';
import { saturationPa } from '../../src/core/moisture/psychrometrics.ts';
import { monthC, winterFor } from '../../src/core/moisture/winter.ts';
import { type CheckRow, checkRows } from './check-rows.ts';

const layer = (r: number, perm: number): VaporLayer => ({ r: r / R_IP, sdM: stillAirOf(perm) });

/** Sheet, cover board, R-30 of foam in slices, plywood, painted gypsum; with a retarder on the deck or without. */
const roof = (retarder: boolean): VaporLayer[] => [
  layer(0.04, 0.05),
  layer(0.5, 25),
  ...Array.from({ length: 12 }, () => layer(30 / 12, 0.3 * 12)),
  ...(retarder ? [layer(0.01, 0.05)] : []),
  layer(0.75, 0.8),
  layer(0.45, 5),
];

const winterOf = (city: string) => {
  const { winter } = winterFor({ city, state: null, climateZone: null });
  if (winter === null) throw new Error(`${city} is not listed`);
  return winter;
};

const ORDINARY = 540;
const DAMP = 1080;

/**
 * Computed elsewhere from the hours of the typical year; here every month is a point of one wave through January and the
 * mean of the year. So the figures agree in size and in what they mean, not to the digit, and stay on the wetter side.
 */
const worked = (
  [
    ['Chicago', false, ORDINARY, 52, 10],
    ['Minneapolis', false, ORDINARY, 65, 35],
    ['Atlanta', false, ORDINARY, 4, 4],
    ['Chicago', true, ORDINARY, 7, 2],
    ['Minneapolis', true, ORDINARY, 8, 10],
    ['Atlanta', true, ORDINARY, 0, 0.5],
    ['Chicago', false, DAMP, 135, 40],
    ['Minneapolis', false, DAMP, 252, 60],
  ] as const
).map(
  ([city, retarder, excess, printed, tol]): CheckRow => ({
    id: `${city}, ${excess} Pa${retarder ? ', retarder' : ''}`,
    of: 'most water under the covering, g/m2 (months as a wave: wide tolerance, as said above)',
    call: () => yearBalance(roof(retarder), winterOf(city), excess).peakGPerM2,
    expected: printed,
    tol,
    source: 'arithmetic',
    at: 'balance by the months of the typical year',
    grade: 'computed',
  }),
);

checkRows('balance of a year, worked cases', worked);

describe('balance of a year', () => {
  it.each(['Chicago', 'Minneapolis', 'Atlanta'])('%s: ordinary rooms are dry again by summer', (city) => {
    const { months, leftGPerM2 } = yearBalance(roof(false), winterOf(city), ORDINARY);
    expect(leftGPerM2).toBe(0);
    expect(months.find(({ month }) => month === 7)?.waterGPerM2).toBe(0);
  });

  it('very damp rooms in Minneapolis: it grows from year to year, and a retarder takes most of it away', () => {
    const winter = winterOf('Minneapolis');
    expect(yearBalance(roof(false), winter, DAMP).leftGPerM2).toBeGreaterThan(100);
    const [open, sealed] = [roof(false), roof(true)].map((layers) => yearBalance(layers, winter, DAMP));
    expect(sealed.peakGPerM2).toBeLessThan(open.peakGPerM2 / 4);
  });

  it('no month makes water: what gathers is never more than what can come in from both sides', () => {
    const layers = roof(false);
    const sd = layers.reduce((sum, { sdM }) => sum + sdM, 0) - layers[0].sdM;
    for (const { city, state } of winterClimates.slice(0, 40)) {
      const { winter } = winterFor({ city, state, climateZone: null });
      if (winter === null) continue;
      const { months } = yearBalance(layers, winter, ORDINARY);
      months.slice(1).forEach(({ waterGPerM2, insidePa, outsideC }, i) => {
        const most = (1000 * 2e-10 * Math.max(0, insidePa - 0.5 * saturationPa(outsideC)) * (365 / 12) * 86_400) / sd;
        expect(waterGPerM2 - months[i].waterGPerM2).toBeLessThan(most + 1);
      });
    }
  });

  it('a profile never passes saturation and never gathers where it is dry', () => {
    const layers = roof(false);
    for (const outsideC of [-20, -5, 5, 15, 28]) {
      const state = {
        outsideC,
        insideC: 21,
        outsidePa: 0.8 * saturationPa(outsideC),
        insidePa: 1000,
        outsideFilm: 0.04,
        insideFilm: 0.1,
      };
      for (const { vaporPa, saturatedPa, gathers } of vaporProfile(layers, state, saturationPa).slice(1, -1)) {
        expect(vaporPa).toBeLessThanOrEqual(saturatedPa + 1e-6);
        expect(gathers).toBeGreaterThanOrEqual(-1e-18);
        if (vaporPa < saturatedPa - 1e-6) expect(Math.abs(gathers)).toBe(0);
      }
    }
  });

  it('the wave of the year meets the mean of the three coldest months to 6 F at every listed place', () => {
    for (const row of winterClimates) {
      if (row.threeColdestF === null) continue;
      const { winter } = winterFor({ city: row.city, state: row.state, climateZone: null });
      if (winter === null) throw new Error(row.city);
      const three = [11, 0, 1].reduce((sum, month) => sum + 1.8 * monthC(winter, month) + 32, 0) / 3;
      expect(Math.abs(three - row.threeColdestF), row.city).toBeLessThan(6);
    }
  });
});
