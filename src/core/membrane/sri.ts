import { sriConditions } from '../../../reference/membranes/heat.ts';

const STEFAN_BOLTZMANN = 5.67e-8;

/**
 * Steady surface temperature [K] of an insulated flat surface under the standard sun and sky.
 * @param reflectance solar reflectance 0..1
 * @param emittance thermal emittance 0..1
 * @param windWPerM2K convection coefficient [W/m2K]; 12 = medium wind
 * Solves a I = e sigma (Ts^4 - Tsky^4) + hc (Ts - Ta) by Newton's method; the left side falls and the right side rises, so one root.
 * Source: ASTM E1980. Correctness: tests/published/membrane-sri.test.ts
 */
export function surfaceTemperatureK(
  reflectance: number,
  emittance: number,
  windWPerM2K: number = sriConditions.windWPerM2K.medium,
): number {
  const { sunWPerM2, airK, skyK } = sriConditions;
  const gain = (1 - reflectance) * sunWPerM2;
  let surfaceK: number = airK;
  for (let step = 0; step < 50; step += 1) {
    const excess = emittance * STEFAN_BOLTZMANN * (surfaceK ** 4 - skyK ** 4) + windWPerM2K * (surfaceK - airK) - gain;
    const change = excess / (4 * emittance * STEFAN_BOLTZMANN * surfaceK ** 3 + windWPerM2K);
    surfaceK -= change;
    if (Math.abs(change) < 1e-9) break;
  }
  return surfaceK;
}

/**
 * Solar reflectance index: 0 for the standard black surface, 100 for the standard white one.
 * Source: ASTM E1980. Correctness: tests/published/membrane-sri.test.ts
 */
export function solarReflectanceIndex(
  reflectance: number,
  emittance: number,
  windWPerM2K: number = sriConditions.windWPerM2K.medium,
): number {
  const { black, white } = sriConditions;
  const blackK = surfaceTemperatureK(black.reflectance, black.emittance, windWPerM2K);
  const whiteK = surfaceTemperatureK(white.reflectance, white.emittance, windWPerM2K);
  return (100 * (blackK - surfaceTemperatureK(reflectance, emittance, windWPerM2K))) / (blackK - whiteK);
}

/** Surface temperature in degrees Fahrenheit, see surfaceTemperatureK. */
export function surfaceTemperatureF(reflectance: number, emittance: number): number {
  return (surfaceTemperatureK(reflectance, emittance) - 273.15) * 1.8 + 32;
}

/**
 * Reflectance after three years estimated from the initial one: 0.2 + beta (initial - 0.2).
 * @param beta 0.65 field-applied coating, 0.70 otherwise. Source: California Title 24.
 */
export function agedReflectance(initial: number, beta: number): number {
  return 0.2 + beta * (initial - 0.2);
}

/** Initial reflectance that a product needs to reach an aged value by the same estimate. */
export function initialReflectanceFor(aged: number, beta: number): number {
  return 0.2 + (aged - 0.2) / beta;
}
