import { describe, expect, it } from 'vitest';
import { coolRoofRules, sriConditions } from '../../reference/membranes/heat.ts';
import {
  agedReflectance,
  initialReflectanceFor,
  solarReflectanceIndex,
  surfaceTemperatureK,
} from '../../src/core/membrane/sri.ts';
import { passesCoolRoof } from '../../src/core/membrane/vetoes.ts';

/**
 * Solar reflectance index against values outside the project.
 * `listed` rows: index printed beside measured reflectance and emittance in laboratory and rating lists (grade found).
 * The closed form is the one printed in ASTM E1980 for the same standard conditions, as carried by a federal
 * laboratory's building-energy code (found); it is written here, not in the product, so it checks the solver.
 */
const listed = [
  {
    of: 'standard black',
    reflectance: 0.05,
    emittance: 0.9,
    index: 0,
    tol: 0.01,
    source: 'ASTM E1980, definition',
    grade: 'found',
  },
  {
    of: 'standard white',
    reflectance: 0.8,
    emittance: 0.9,
    index: 100,
    tol: 0.01,
    source: 'ASTM E1980, definition',
    grade: 'found',
  },
  {
    of: 'black EPDM',
    reflectance: 0.06,
    emittance: 0.86,
    index: -1,
    tol: 0.5,
    source: 'Lawrence Berkeley National Laboratory material list',
    grade: 'found',
  },
  {
    of: 'white granule',
    reflectance: 0.26,
    emittance: 0.92,
    index: 28,
    tol: 1,
    source: 'Lawrence Berkeley National Laboratory material list',
    grade: 'found',
  },
  {
    of: 'light gravel',
    reflectance: 0.34,
    emittance: 0.9,
    index: 37,
    tol: 0.5,
    source: 'Lawrence Berkeley National Laboratory material list',
    grade: 'found',
  },
  {
    of: 'white single-ply',
    reflectance: 0.83,
    emittance: 0.92,
    index: 104,
    tol: 0.7,
    source: 'Lawrence Berkeley National Laboratory material list',
    grade: 'found',
  },
  {
    of: 'white metal',
    reflectance: 0.67,
    emittance: 0.85,
    index: 82,
    tol: 0.5,
    source: 'Lawrence Berkeley National Laboratory material list',
    grade: 'found',
    reproduces: false,
    ours: 80.5,
    reason: 'rounded or older inputs behind the printed index',
  },
  {
    of: 'coated membrane',
    reflectance: 0.87,
    emittance: 0.95,
    index: 108,
    tol: 0.5,
    source: 'Lawrence Berkeley National Laboratory material list',
    grade: 'found',
    reproduces: false,
    ours: 110.7,
    reason: 'rounded or older inputs behind the printed index',
  },
];

const computed = [
  { reflectance: 0.55, emittance: 0.75, index: 60.4 },
  { reflectance: 0.63, emittance: 0.75, index: 72.0 },
  { reflectance: 0.55, emittance: 0.87, index: 64.3 },
  { reflectance: 0.63, emittance: 0.87, index: 75.4 },
];

/** ASTM E1980 closed form: x = (a - 0.029 e)(8.797 + hc)/(9.5205 e + hc), SRI = 123.97 - 141.35 x + 9.655 x^2. */
function closedForm(reflectance: number, emittance: number, square: number): number {
  const hc = 12;
  const x = ((1 - reflectance - 0.029 * emittance) * (8.797 + hc)) / (9.5205 * emittance + hc);
  return 123.97 - 141.35 * x + square * x * x;
}

describe('solar reflectance index (ASTM E1980)', () => {
  it.each(listed.filter((row) => row.reproduces !== false))('$of is listed at $index', (row) => {
    expect(Math.abs(solarReflectanceIndex(row.reflectance, row.emittance) - row.index)).toBeLessThanOrEqual(row.tol);
  });

  it.each(listed.filter((row) => row.reproduces === false))('$of does not reproduce: $reason', (row) => {
    const ours = solarReflectanceIndex(row.reflectance, row.emittance);
    expect(ours).toBeCloseTo(row.ours!, 1);
    expect(Math.abs(ours - row.index)).toBeGreaterThan(row.tol);
  });

  it.each(computed)('($reflectance, $emittance) gives $index', (row) => {
    expect(solarReflectanceIndex(row.reflectance, row.emittance)).toBeCloseTo(row.index, 1);
  });

  // Beyond the white standard's reach (.87 with .95) the two part by 0.92.
  it.each([...listed.filter((row) => row.reflectance < 0.85), ...computed])(
    'agrees with the closed form of the standard within 0.9 at ($reflectance, $emittance)',
    (row) => {
      const solved = solarReflectanceIndex(row.reflectance, row.emittance);
      expect(Math.abs(solved - closedForm(row.reflectance, row.emittance, 9.655))).toBeLessThan(0.9);
      expect(
        Math.abs(
          closedForm(row.reflectance, row.emittance, 9.655) - closedForm(row.reflectance, row.emittance, 9.6555),
        ),
      ).toBeLessThan(0.01);
    },
  );

  // Standard black and white at the three wind cases of ASTM E1980 (5, 12, 30 W/m2K); arithmetic, solver temperatures from memory.
  it.each([
    { wind: 'low', black: 103.7, white: 49.3 },
    { wind: 'medium', black: 82.5, white: 44.6 },
    { wind: 'high', black: 61.1, white: 40.8 },
  ] as const)('$wind wind: black $black C, white $white C', ({ wind, black, white }) => {
    const hc = sriConditions.windWPerM2K[wind];
    expect(surfaceTemperatureK(0.05, 0.9, hc) - 273.15).toBeCloseTo(black, 1);
    expect(surfaceTemperatureK(0.8, 0.9, hc) - 273.15).toBeCloseTo(white, 1);
  });
});

describe('aged reflectance (California Title 24, found)', () => {
  it.each([
    { beta: 0.7, initial: 0.8, aged: 0.62 },
    { beta: 0.65, initial: 0.8, aged: 0.59 },
    { beta: 0.7, initial: 0.85, aged: 0.655 },
    { beta: 0.65, initial: 0.85, aged: 0.6225 },
  ])('beta $beta: $initial ages to $aged', ({ beta, initial, aged }) => {
    expect(agedReflectance(initial, beta)).toBeCloseTo(aged, 10);
  });

  it.each([
    { aged: 0.63, beta: 0.7, initial: 0.8143 },
    { aged: 0.63, beta: 0.65, initial: 0.8615 },
    { aged: 0.55, beta: 0.7, initial: 0.7 },
    { aged: 0.55, beta: 0.65, initial: 0.7385 },
  ])('to reach $aged with beta $beta it starts at $initial', ({ aged, beta, initial }) => {
    expect(initialReflectanceFor(aged, beta)).toBeCloseTo(initial, 4);
    expect(agedReflectance(initialReflectanceFor(aged, beta), beta)).toBeCloseTo(aged, 12);
  });

  // A 25 percent loss was measured on coatings (Oak Ridge test stand, found); initial values from memory.
  it.each([
    { initial: 0.83, aged: 0.62, emittance: 0.88, index: 74.2 },
    { initial: 0.55, aged: 0.41, emittance: 0.5, index: 28.3 },
  ])('$initial less a quarter is $aged, index $index', ({ initial, aged, emittance, index }) => {
    expect(Math.abs(initial * 0.75 - aged)).toBeLessThan(0.006);
    expect(solarReflectanceIndex(aged, emittance)).toBeCloseTo(index, 1);
  });
});

describe('energy rules pass by the pair or by the index', () => {
  const iecc = coolRoofRules.find((rule) => rule.id === 'iecc-zones-1-3')!;
  const passes = (reflectance: number, emittance: number) =>
    passesCoolRoof(reflectance, emittance, solarReflectanceIndex(reflectance, emittance), iecc);

  it('.55/.75 fails the index (60.4 < 64) and passes by the pair', () => {
    expect(solarReflectanceIndex(0.55, 0.75)).toBeLessThan(iecc.agedSri);
    expect(passes(0.55, 0.75)).toBe(true);
  });

  it('.54/.75 fails both', () => expect(passes(0.54, 0.75)).toBe(false));

  it('.54/.92 fails the pair and passes by the index (64.4)', () => {
    expect(solarReflectanceIndex(0.54, 0.92)).toBeCloseTo(64.4, 1);
    expect(passes(0.54, 0.92)).toBe(true);
  });
});
