import type { Cited } from '../sources.ts';
import type { MembraneId } from './options.ts';

export interface MembraneLife extends Cited {
  membrane: MembraneId;
  /** A band, never a point. */
  years: readonly [number, number];
  usualFailure: string;
}

/**
 * Service life as a band. No independent list gives modern lives; a survey of 1975-1996 roofs averaged 16.8 to 18.4 years
 * for most systems (13.6 for asphalt built-up). Ponding, no maintenance, thin sheet, foot traffic and heat shorten every one.
 */
export const membraneLife = [
  {
    membrane: 'tpo',
    years: [20, 25],
    usualFailure: 'thin weather layer, cold welds, unsealed cut edges',
    source: 'practice',
    at: 'service life',
    grade: 'practice',
  },
  {
    membrane: 'pvc',
    years: [20, 30],
    usualFailure: 'loss of plasticizer, shrinkage',
    source: 'practice',
    at: 'service life',
    grade: 'practice',
  },
  {
    membrane: 'epdm-white',
    years: [20, 25],
    usualFailure: 'seams and flashings, shrinkage',
    source: 'practice',
    at: 'service life; black is the more durable',
    grade: 'practice',
  },
  {
    membrane: 'epdm-black',
    years: [20, 30],
    usualFailure: 'seams and flashings, shrinkage',
    source: 'practice',
    at: 'service life',
    grade: 'practice',
  },
  {
    membrane: 'sbs-self-adhered',
    years: [15, 25],
    usualFailure: 'laps, blisters, loss of granules',
    source: 'practice',
    at: 'service life',
    grade: 'practice',
  },
  {
    membrane: 'sbs-self-adhered-cool',
    years: [15, 25],
    usualFailure: 'laps, blisters, loss of granules',
    source: 'practice',
    at: 'service life',
    grade: 'practice',
  },
  {
    membrane: 'sbs-cold',
    years: [15, 25],
    usualFailure: 'laps, blisters, loss of granules',
    source: 'practice',
    at: 'service life',
    grade: 'practice',
  },
  {
    membrane: 'sbs-torch',
    years: [15, 25],
    usualFailure: 'laps, blisters, loss of granules',
    source: 'practice',
    at: 'service life',
    grade: 'practice',
  },
  {
    membrane: 'app-torch',
    years: [15, 20],
    usualFailure: 'cracking, laps',
    source: 'practice',
    at: 'service life',
    grade: 'practice',
  },
  {
    membrane: 'bur-hot',
    years: [15, 25],
    usualFailure: 'splits, blisters, leaks hidden under gravel',
    source: 'practice',
    at: 'service life',
    grade: 'practice',
  },
  {
    membrane: 'pmma',
    years: [20, 25],
    usualFailure: 'primer failure, pinholes',
    source: 'practice',
    at: 'service life',
    grade: 'practice',
  },
  {
    membrane: 'silicone',
    years: [10, 15],
    usualFailure: 'wet roof trapped below, loss of bond',
    source: 'practice',
    at: 'per coat',
    grade: 'practice',
  },
  {
    membrane: 'acrylic',
    years: [10, 15],
    usualFailure: 'standing water, wet roof trapped below',
    source: 'practice',
    at: 'per coat',
    grade: 'practice',
  },
  {
    membrane: 'roll-roofing',
    years: [5, 10],
    usualFailure: 'exposed nails, cracking',
    source: 'practice',
    at: 'service life',
    grade: 'practice',
  },
] as const satisfies readonly MembraneLife[];

export interface LifeValue extends Cited {
  /** Years that are worth nothing, and points for every year beyond them. */
  noneAtYears: number;
  pointsPerYear: number;
}

/**
 * Value of a life in years: 0 at 5, 10 at 30, straight between. Only the ends of a band are valued by it, so that a
 * judged score has its low and its high; every judged score lies inside its band.
 */
export const lifeValue = {
  noneAtYears: 5,
  pointsPerYear: 0.4,
  source: 'practice',
  at: 'value of expected life',
  grade: 'practice',
} as const satisfies LifeValue;

export interface CostIndex extends Cited {
  membrane: MembraneId;
  /** Installed on a small residential section; adhered 60-mil TPO = 1.00. */
  index: readonly [number, number];
}

/**
 * An index, low confidence: regional bids override it. Published price ranges overlap too far to rank anything.
 * Coatings leave the old roof in place, so their index leaves out tear-off.
 */
export const costIndex = [
  { membrane: 'tpo', index: [1, 1], source: 'practice', at: 'cost index', grade: 'practice' },
  { membrane: 'pvc', index: [1.15, 1.4], source: 'practice', at: 'cost index', grade: 'practice' },
  {
    membrane: 'epdm-white',
    index: [0.95, 1.15],
    source: 'practice',
    at: 'cost index, white somewhat above black',
    grade: 'practice',
  },
  { membrane: 'epdm-black', index: [0.85, 1.05], source: 'practice', at: 'cost index', grade: 'practice' },
  { membrane: 'sbs-self-adhered', index: [1, 1.3], source: 'practice', at: 'cost index', grade: 'practice' },
  {
    membrane: 'sbs-self-adhered-cool',
    index: [1.15, 1.4],
    source: 'practice',
    at: 'cost index, cool cap above standard',
    grade: 'practice',
  },
  { membrane: 'sbs-cold', index: [1.15, 1.4], source: 'practice', at: 'cost index', grade: 'practice' },
  { membrane: 'sbs-torch', index: [0.95, 1.2], source: 'practice', at: 'cost index', grade: 'practice' },
  { membrane: 'app-torch', index: [0.9, 1.1], source: 'practice', at: 'cost index', grade: 'practice' },
  { membrane: 'bur-hot', index: [1.1, 1.5], source: 'practice', at: 'cost index', grade: 'practice' },
  { membrane: 'pmma', index: [2, 3], source: 'practice', at: 'cost index', grade: 'practice' },
  { membrane: 'silicone', index: [0.4, 0.7], source: 'practice', at: 'cost index, no tear-off', grade: 'practice' },
  { membrane: 'acrylic', index: [0.4, 0.7], source: 'practice', at: 'cost index, no tear-off', grade: 'practice' },
  { membrane: 'roll-roofing', index: [0.45, 0.6], source: 'practice', at: 'cost index', grade: 'practice' },
] as const satisfies readonly CostIndex[];

export interface CurvePoint extends Cited {
  index: number;
  score: number;
}

/** Value function of first cost: straight between these points, flat beyond them. Reproduces the judged scores of the seven common options. */
export const costCurve = [
  { index: 0.5, score: 10, source: 'practice', at: 'value of first cost', grade: 'practice' },
  { index: 0.95, score: 8, source: 'practice', at: 'value of first cost', grade: 'practice' },
  { index: 1, score: 7, source: 'practice', at: 'value of first cost', grade: 'practice' },
  { index: 1.15, score: 6, source: 'practice', at: 'value of first cost', grade: 'practice' },
  { index: 1.275, score: 5, source: 'practice', at: 'value of first cost', grade: 'practice' },
  { index: 2.5, score: 1, source: 'practice', at: 'value of first cost', grade: 'practice' },
] as const satisfies readonly CurvePoint[];
