import type { Cited } from './sources.ts';

/** Net free vent area of an attic: so much of the vented floor. The same ratios in the building code, from memory. */
export const ventRatios = {
  usual: 1 / 150,
  reduced: 1 / 300,
  source: 'irc-r806-2015',
  at: 'R806.2',
  grade: 'found',
} as const satisfies Cited & Record<string, unknown>;

export interface ReducedVentRule extends Cited {
  /** Editions from this one on. */
  from: number;
  /** Both conditions, or one of them. */
  needs: 'both' | 'one';
  /** Share of the area that must be high. */
  highFrom: number;
  highTo: number;
  highWords: string;
  /** Zones in which the retarder condition bites; null = everywhere. */
  retarderZones: readonly string[] | null;
  /** Weakest class of retarder that counts. */
  retarder: string;
}

/**
 * When the smaller area is allowed. Editions disagree: until 2012 one condition was enough, from 2015 on both are asked for,
 * and the retarder only in zones 6 to 8. Editions after 2015 are from memory of the same words.
 */
export const reducedVentRules = [
  {
    from: 2006,
    needs: 'one',
    highFrom: 0.5,
    highTo: 0.8,
    highWords: 'in the upper part, at least 3 ft above the eave vents',
    retarderZones: null,
    retarder: '1 perm or less',
    source: 'irc-r806-2006',
    at: 'R806.2',
    grade: 'found',
  },
  {
    from: 2012,
    needs: 'one',
    highFrom: 0.4,
    highTo: 0.5,
    highWords: 'within 3 ft of the highest point',
    retarderZones: ['6', '7', '8'],
    retarder: 'class I or II',
    source: 'irc-r806-2012',
    at: 'R806.2 exception',
    grade: 'found',
  },
  {
    from: 2015,
    needs: 'both',
    highFrom: 0.4,
    highTo: 0.5,
    highWords: 'within 3 ft of the highest point',
    retarderZones: ['6', '7', '8'],
    retarder: 'class I or II',
    source: 'irc-r806-2015',
    at: 'R806.2 exception',
    grade: 'found',
  },
] as const satisfies readonly ReducedVentRule[];

export interface VentRow extends Cited {
  kind: string;
  /** "ridge vent, ft" */
  name: string;
  /** Net free area of one piece, foot or square foot. */
  eachSqIn: number;
  unit: 'each' | 'ft' | 'sq ft';
  high: boolean;
  /** Lets air out; the others let it in. */
  exhaust: boolean;
}

/** Usual net free areas where no label is read; products differ by half and more. */
const usual = { source: 'practice', grade: 'practice' } as const;
export const usualVents = [
  {
    kind: 'ridge',
    name: 'ridge vent',
    eachSqIn: 12,
    unit: 'ft',
    high: true,
    exhaust: true,
    at: 'shingle-over ridge vent, 9 to 18 a foot',
    ...usual,
  },
  {
    kind: 'soffit-strip',
    name: 'soffit strip',
    eachSqIn: 9,
    unit: 'ft',
    high: false,
    exhaust: false,
    at: 'continuous soffit strip',
    ...usual,
  },
  {
    kind: 'perforated-soffit',
    name: 'perforated soffit',
    eachSqIn: 4,
    unit: 'sq ft',
    high: false,
    exhaust: false,
    at: 'perforated soffit, 4 to 8 a square foot',
    ...usual,
  },
  {
    kind: 'under-eave',
    name: 'grille under the eave',
    eachSqIn: 28,
    unit: 'each',
    high: false,
    exhaust: false,
    at: '16 x 8 in grille',
    ...usual,
  },
  {
    kind: 'box',
    name: 'box vent',
    eachSqIn: 50,
    unit: 'each',
    high: true,
    exhaust: true,
    at: 'square roof vent',
    ...usual,
  },
  {
    kind: 'gable',
    name: 'gable louver',
    eachSqIn: 60,
    unit: 'each',
    high: false,
    exhaust: true,
    at: '12 x 18 in louver, 60 to 80',
    ...usual,
  },
  {
    kind: 'turbine',
    name: 'turbine',
    eachSqIn: 110,
    unit: 'each',
    high: true,
    exhaust: true,
    at: '12 in turbine',
    ...usual,
  },
  {
    kind: 'power-fan',
    name: 'powered fan',
    eachSqIn: 0,
    unit: 'each',
    high: true,
    exhaust: true,
    at: 'a fan has no free area to count',
    ...usual,
  },
  {
    kind: 'other',
    name: 'other vent',
    eachSqIn: 0,
    unit: 'each',
    high: false,
    exhaust: false,
    at: 'not known, nothing counted',
    ...usual,
  },
] as const satisfies readonly VentRow[];

/** Why one kind of outlet only. */
export const oneExhaust = {
  source: 'practice',
  at: 'one type of exhaust vent for each attic space',
  grade: 'practice',
} as const satisfies Cited;

/** Air enters low at least as freely as it leaves high. */
export const intakeRule = {
  source: 'practice',
  at: 'intake at least as large as exhaust',
  grade: 'practice',
} as const satisfies Cited;
