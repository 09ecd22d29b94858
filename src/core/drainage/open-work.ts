import { rainLoadPsf, waterWeightLb } from './rain-load.ts';

/** 231 cu in to the gallon: one sq ft an inch deep is 144/231 gal. */
const GAL_PER_SQ_FT_IN = 144 / 231;

export interface OpenWorkLoad {
  loadPsf: number;
  volumeGal: number;
  weightLb: number;
}

/**
 * What stands on a section when it rains while every way out is shut (drains capped, overflows not yet cut).
 * @param depthIn rain that falls in that time [in]
 * @param areaSqFt area that holds it [sq ft]
 * Mean load over the section; a hollow takes more. 5.2 psf per inch, IBC 1611.1. Correctness: tests/cases/blocked-outlets.test.ts
 */
export const openWorkLoad = (depthIn: number, areaSqFt: number): OpenWorkLoad => ({
  loadPsf: rainLoadPsf(depthIn, 0),
  volumeGal: areaSqFt * depthIn * GAL_PER_SQ_FT_IN,
  weightLb: waterWeightLb(areaSqFt, depthIn),
});
