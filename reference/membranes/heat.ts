import type { Cited } from '../sources.ts';
import type { MembraneId } from './options.ts';

export interface MembraneHeat extends Cited {
  membrane: MembraneId;
  /** Solar reflectance after three years, and the range in which products and dirt put it. */
  agedReflectance: number;
  agedRange: readonly [number, number];
  emittance: number;
}

/**
 * Three-year solar reflectance and emittance; the SRI is computed from them, never stored.
 * Losses differ by climate (hot and humid two to three times hot and dry), so the range is shown too.
 * Where only a measured value without age was read (granules, gravel) it is used as aged: dark surfaces hardly change.
 * The PMMA row is for a white finish and is from memory.
 */
export const membraneHeat = [
  {
    membrane: 'tpo',
    agedReflectance: 0.7,
    agedRange: [0.62, 0.73],
    emittance: 0.86,
    source: 'memory',
    at: 'white TPO, three years',
    grade: 'memory',
  },
  {
    membrane: 'pvc',
    agedReflectance: 0.68,
    agedRange: [0.58, 0.75],
    emittance: 0.86,
    source: 'memory',
    at: 'white PVC, three years',
    grade: 'memory',
  },
  {
    membrane: 'epdm-white',
    agedReflectance: 0.62,
    agedRange: [0.5, 0.65],
    emittance: 0.87,
    source: 'memory',
    at: 'white EPDM, three years',
    grade: 'memory',
  },
  {
    membrane: 'epdm-black',
    agedReflectance: 0.08,
    agedRange: [0.06, 0.1],
    emittance: 0.88,
    source: 'memory',
    at: 'black EPDM, three years',
    grade: 'memory',
  },
  {
    membrane: 'sbs-self-adhered',
    agedReflectance: 0.26,
    agedRange: [0.24, 0.28],
    emittance: 0.92,
    source: 'lbnl-materials',
    at: 'white mineral granule',
    grade: 'found',
  },
  {
    membrane: 'sbs-self-adhered-cool',
    agedReflectance: 0.64,
    agedRange: [0.55, 0.7],
    emittance: 0.88,
    source: 'memory',
    at: 'high-reflectance cap, three years',
    grade: 'memory',
  },
  {
    membrane: 'sbs-cold',
    agedReflectance: 0.26,
    agedRange: [0.24, 0.28],
    emittance: 0.92,
    source: 'lbnl-materials',
    at: 'white mineral granule',
    grade: 'found',
  },
  {
    membrane: 'sbs-torch',
    agedReflectance: 0.26,
    agedRange: [0.24, 0.28],
    emittance: 0.92,
    source: 'lbnl-materials',
    at: 'white mineral granule',
    grade: 'found',
  },
  {
    membrane: 'app-torch',
    agedReflectance: 0.26,
    agedRange: [0.06, 0.28],
    emittance: 0.92,
    source: 'lbnl-materials',
    at: 'white mineral granule; smooth sheet as low as .06',
    grade: 'found',
  },
  {
    membrane: 'bur-hot',
    agedReflectance: 0.34,
    agedRange: [0.26, 0.34],
    emittance: 0.9,
    source: 'lbnl-materials',
    at: 'light gravel',
    grade: 'found',
  },
  {
    membrane: 'pmma',
    agedReflectance: 0.63,
    agedRange: [0.55, 0.7],
    emittance: 0.86,
    source: 'memory',
    at: 'white finish, three years',
    grade: 'memory',
  },
  {
    membrane: 'silicone',
    agedReflectance: 0.65,
    agedRange: [0.5, 0.7],
    emittance: 0.88,
    source: 'memory',
    at: 'white silicone, three years',
    grade: 'memory',
  },
  {
    membrane: 'acrylic',
    agedReflectance: 0.62,
    agedRange: [0.42, 0.7],
    emittance: 0.88,
    source: 'ornl-coatings',
    at: 'initial .83 (from memory) less the 25 percent loss that was measured',
    grade: 'found',
  },
  {
    membrane: 'roll-roofing',
    agedReflectance: 0.26,
    agedRange: [0.2, 0.28],
    emittance: 0.92,
    source: 'lbnl-materials',
    at: 'white mineral granule',
    grade: 'found',
  },
] as const satisfies readonly MembraneHeat[];

export interface SkyAndSun extends Cited {
  sunWPerM2: number;
  airK: number;
  skyK: number;
  windWPerM2K: Readonly<Record<'low' | 'medium' | 'high', number>>;
  black: { reflectance: number; emittance: number };
  white: { reflectance: number; emittance: number };
}

/** The standard conditions and the two reference surfaces of the index. Convection 12 was read; the temperatures are from memory. */
export const sriConditions = {
  sunWPerM2: 1000,
  airK: 310,
  skyK: 300,
  windWPerM2K: { low: 5, medium: 12, high: 30 },
  black: { reflectance: 0.05, emittance: 0.9 },
  white: { reflectance: 0.8, emittance: 0.9 },
  source: 'astm-e1980',
  at: 'standard conditions',
  grade: 'memory',
} as const satisfies SkyAndSun;

export interface AgingRow extends Cited {
  surface: 'field-coating' | 'other';
  beta: number;
}

/** Aged reflectance where no three-year value exists: 0.2 + beta (initial - 0.2). */
export const agingFactors = [
  { surface: 'field-coating', beta: 0.65, source: 'ca-title-24', at: 'aged solar reflectance', grade: 'found' },
  { surface: 'other', beta: 0.7, source: 'ca-title-24', at: 'aged solar reflectance', grade: 'found' },
] as const satisfies readonly AgingRow[];

export interface CoolRoofRule extends Cited {
  id: string;
  title: string;
  /** A product passes by the pair or by the index; the two routes are not equivalent. */
  agedReflectance: number;
  emittance: number;
  agedSri: number;
}

/** Energy rules for low slopes that can rule a covering out. Which one holds is a fact of the job, not of the place alone. */
export const coolRoofRules = [
  {
    id: 'iecc-zones-1-3',
    title: 'IECC, commercial, climate zones 1 to 3',
    agedReflectance: 0.55,
    emittance: 0.75,
    agedSri: 64,
    source: 'iecc-c402-3',
    at: 'Table C402.3',
    grade: 'found',
  },
  {
    id: 'ca-title-24',
    title: 'California Title 24, low slope',
    agedReflectance: 0.63,
    emittance: 0.75,
    agedSri: 75,
    source: 'ca-title-24',
    at: 'low-slope prescriptive values',
    grade: 'found',
  },
] as const satisfies readonly CoolRoofRule[];

export type CoolRoofRuleId = (typeof coolRoofRules)[number]['id'];
