import { describe, expect, it } from 'vitest';
import { coolRoofRules, sriConditions } from '../../reference/membranes/heat.ts';
import {
  agedReflectance,
  initialReflectanceFor,
  solarReflectanceIndex,
  surfaceTemperatureK,
} from '../../src/core/membrane/sri.ts';

/**
 * Solar reflectance index, the pairs that membrane-sri.test.ts does not hold. `listed`: index and rise over air (F, standard
 * sun) as tabulated beside a laboratory's list of cool roofing materials (found); `exact`: from the definition of
 * ASTM E1980 (computed). Rounding of reflectance and emittance to 0.01 alone moves the index by 0.7.
 */
const pairs = [
  { of: 'gray EPDM', reflectance: 0.23, emittance: 0.87, listed: 21, exact: 21.39, regression: 21.66, riseF: 68 },
  { of: 'gray shingle', reflectance: 0.22, emittance: 0.91, listed: 22, exact: 21.99, regression: 22.31, riseF: 67 },
  { of: 'bare cement tile', reflectance: 0.25, emittance: 0.9, listed: 25, exact: 25.39, regression: 25.68, riseF: 65 },
  {
    of: 'white-granule cap',
    reflectance: 0.26,
    emittance: 0.92,
    listed: 28,
    exact: 27.57,
    regression: 27.89,
    riseF: 63,
  },
  { of: 'light gravel', reflectance: 0.34, emittance: 0.9, listed: 37, exact: 37.1, regression: 37.34, riseF: 57 },
  {
    of: 'aluminum coating',
    reflectance: 0.61,
    emittance: 0.25,
    listed: 50,
    exact: 49.54,
    regression: 48.68,
    riseF: 48,
  },
  {
    of: 'white-coated gravel',
    reflectance: 0.65,
    emittance: 0.9,
    listed: 79,
    exact: 78.92,
    regression: 78.71,
    riseF: 28,
  },
  { of: 'white EPDM', reflectance: 0.69, emittance: 0.87, listed: 84, exact: 83.8, regression: 83.52, riseF: 25 },
  {
    of: 'white coating, 8 mil',
    reflectance: 0.8,
    emittance: 0.91,
    listed: 100,
    exact: 100.17,
    regression: 99.57,
    riseF: 14,
  },
  { of: 'white PVC', reflectance: 0.83, emittance: 0.92, listed: 104, exact: 104.59, regression: 103.87, riseF: 11 },
  {
    of: 'white coating, 20 mil',
    reflectance: 0.85,
    emittance: 0.91,
    listed: 107,
    exact: 107.3,
    regression: 106.53,
    riseF: 9,
  },
  { of: 'black EPDM', reflectance: 0.06, emittance: 0.86, listed: -1, exact: -1, regression: -0.7, riseF: null },
];

const riseF = (reflectance: number, emittance: number): number =>
  (surfaceTemperatureK(reflectance, emittance) - sriConditions.airK) * 1.8;

/** Equation 4 of ASTM E1980-11: x found, the polynomial from memory and confirmed by a fit. */
function regression(reflectance: number, emittance: number): number {
  const x = ((1 - reflectance - 0.029 * emittance) * (8.797 + 12)) / (9.5205 * emittance + 12);
  return 123.97 - 141.35 * x + 9.655 * x * x;
}

describe('solar reflectance index of listed surfaces', () => {
  it.each(pairs)(
    '$of: listed $listed, exact $exact',
    ({ reflectance, emittance, listed, exact, riseF: rise, ...row }) => {
      const index = solarReflectanceIndex(reflectance, emittance);
      expect(Math.abs(index - exact)).toBeLessThan(0.1);
      expect(Math.abs(index - listed)).toBeLessThan(0.7);
      expect(Math.abs(regression(reflectance, emittance) - row.regression)).toBeLessThan(0.01);
      if (rise !== null) expect(Math.abs(riseF(reflectance, emittance) - rise)).toBeLessThan(0.71);
    },
  );

  it('white coating on metal is listed at 82 and comes to 80.5: taken as a fault of rounding in the list', () => {
    expect(Math.abs(solarReflectanceIndex(0.67, 0.85) - 80.49)).toBeLessThan(0.1);
    expect(Math.abs(solarReflectanceIndex(0.67, 0.85) - 82)).toBeGreaterThan(0.7);
  });

  // Test of a public building-energy repository, medium wind (found): 36.354.
  it('.35 and .85 come to 36.354 within 0.02', () => {
    expect(Math.abs(solarReflectanceIndex(0.35, 0.85) - 36.354)).toBeLessThan(0.02);
  });

  it('the references come to 0 and 100, at 82.46 and 44.61 C', () => {
    expect(Math.abs(solarReflectanceIndex(0.05, 0.9))).toBeLessThan(0.01);
    expect(Math.abs(solarReflectanceIndex(0.8, 0.9) - 100)).toBeLessThan(0.01);
    expect(Math.abs(surfaceTemperatureK(0.05, 0.9) - 273.15 - 82.46)).toBeLessThan(0.02);
    expect(Math.abs(surfaceTemperatureK(0.8, 0.9) - 273.15 - 44.61)).toBeLessThan(0.02);
  });

  it.each([
    [0.63, 0.9, 75.99],
    [0.55, 0.75, 60.29],
    [0.8, 0.9, 99.41],
  ])('regression at %f and %f: %f', (reflectance, emittance, index) => {
    expect(Math.abs(regression(reflectance, emittance) - index)).toBeLessThan(0.01);
  });

  // Reflectance that an index takes, by emittance: the pair and the index are two different doors.
  it.each([
    [64, 0.75, 0.575],
    [64, 0.85, 0.553],
    [64, 0.9, 0.541],
    [75, 0.75, 0.65],
    [75, 0.9, 0.622],
    [78, 0.9, 0.643],
    [82, 0.75, 0.698],
  ])('index %i at emittance %f takes a reflectance of %f', (index, emittance, reflectance) => {
    expect(Math.abs(solarReflectanceIndex(reflectance, emittance) - index)).toBeLessThan(0.1);
  });

  it('.55 with .75 fails the index of the model code and meets its pair', () => {
    const [rule] = coolRoofRules;
    expect(Math.abs(solarReflectanceIndex(0.55, 0.75) - 60.37)).toBeLessThan(0.1);
    expect(solarReflectanceIndex(0.55, 0.75)).toBeLessThan(rule.agedSri);
    expect(rule.agedReflectance).toBeLessThanOrEqual(0.55);
    expect(rule.emittance).toBeLessThanOrEqual(0.75);
  });

  // Rating council on the California estimate (found).
  it('aged from .80: .620 as a membrane, .590 as a coating; .63 aged takes .815 and .862', () => {
    expect(Math.abs(agedReflectance(0.8, 0.7) - 0.62)).toBeLessThan(0.0005);
    expect(Math.abs(agedReflectance(0.8, 0.65) - 0.59)).toBeLessThan(0.0005);
    expect(Math.abs(agedReflectance(0.83, 0.7) - 0.641)).toBeLessThan(0.0005);
    expect(Math.abs(initialReflectanceFor(0.63, 0.7) - 0.815)).toBeLessThan(0.001);
    expect(Math.abs(initialReflectanceFor(0.63, 0.65) - 0.862)).toBeLessThan(0.001);
  });
});
