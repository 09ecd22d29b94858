import type { Cited } from './sources.ts';

export interface SnowFactor extends Cited {
  value: number;
}

/**
 * ASCE 7-16, chapter 7, as far as it is needed to tell whether snow governs; exposure, thermal and importance factors are taken as 1.
 * The example and its figures were read; the rows marked memory were not. ASCE 7-22 gives ground loads of another return period and
 * another drift formula: its ground loads must not be put into these. Nothing here is a design.
 */
export const flatRoofSnow = {
  value: 0.7,
  source: 'drift-example',
  at: 'pf = 0.7 pg with all factors 1 (ASCE 7-16, 7.3)',
  grade: 'found',
} as const satisfies SnowFactor;

export const snowDensity = {
  perPsf: 0.13,
  basePcf: 14,
  mostPcf: 30,
  source: 'drift-example',
  at: '0.13 pg + 14 (ASCE 7-16, 7.7.1; its cap of 30 from memory)',
  grade: 'found',
} as const satisfies Cited & { perPsf: number; basePcf: number; mostPcf: number };

export const snowDrift = {
  factor: 0.43,
  plusPsf: 10,
  lessFt: 1.5,
  source: 'drift-example',
  at: 'hd = 0.43 lu^(1/3) (pg + 10)^(1/4) - 1.5 (ASCE 7-16, 7.7.1)',
  grade: 'found',
} as const satisfies Cited & { factor: number; plusPsf: number; lessFt: number };

/** A drift that the wind builds against a wall from the lower roof has three quarters of the height; short roofs count as 20 ft. */
export const windwardDrift = {
  share: 0.75,
  leastFetchFt: 20,
  /** Room above the even snow, in its own depth, from which drifts count. */
  leastRoom: 0.2,
  source: 'asce-7-16-snow',
  at: '7.7.1, windward drifts',
  grade: 'memory',
} as const satisfies Cited & { share: number; leastFetchFt: number; leastRoom: number };

export const slidingSnow = {
  share: 0.4,
  widthFt: 15,
  /** Slopes of shingles steeper than this shed. */
  overPitchIn12: 2,
  source: 'asce-7-16-snow',
  at: '7.9, 0.4 pf W over 15 ft',
  grade: 'memory',
} as const satisfies Cited & { share: number; widthFt: number; overPitchIn12: number };

export const rainOnSnow = {
  psf: 5,
  upToGroundPsf: 20,
  /** Counts where the slope in degrees is under the eave-to-ridge distance in ft over this number. */
  feetPerDegree: 50,
  source: 'asce-7-16-snow',
  at: '7.10, rain-on-snow surcharge',
  grade: 'memory',
} as const satisfies Cited & { psf: number; upToGroundPsf: number; feetPerDegree: number };

/** Where ice is known to form along eaves, an ice barrier runs from the eave to 24 in inside the warm wall. */
export const iceBarrier = {
  source: 'irc-2021',
  at: 'R905.1.2, ice barriers',
  grade: 'memory',
} as const satisfies Cited;
