import type { Cited } from '../sources.ts';
import type { CriterionId } from './criteria.ts';

export type SituationId = 'hot-occupied' | 'cool-shade-debris' | 'tight-budget' | 'residual-ponding';

export interface SituationWeights extends Cited {
  id: SituationId;
  title: string;
  /** Sum 1. */
  weights: Readonly<Record<CriterionId, number>>;
}

/** Default weights by situation: judgement from common practice, editable. Several situations at once are averaged. */
export const situationWeights = [
  {
    id: 'hot-occupied',
    title: 'living space below, hot or mixed climate',
    weights: {
      ignition: 0.18,
      ponding: 0.1,
      heat: 0.18,
      puncture: 0.06,
      detail: 0.12,
      redundancy: 0.08,
      residue: 0.08,
      repair: 0.06,
      life: 0.08,
      cost: 0.06,
    },
    source: 'practice',
    at: 'default weights',
    grade: 'practice',
  },
  {
    id: 'cool-shade-debris',
    title: 'cool climate, shade, debris or foot traffic',
    weights: {
      ignition: 0.12,
      ponding: 0.12,
      heat: 0.02,
      puncture: 0.16,
      detail: 0.12,
      redundancy: 0.16,
      residue: 0.08,
      repair: 0.08,
      life: 0.08,
      cost: 0.06,
    },
    source: 'practice',
    at: 'default weights',
    grade: 'practice',
  },
  {
    id: 'tight-budget',
    title: 'tight budget',
    weights: {
      ignition: 0.15,
      ponding: 0.08,
      heat: 0.15,
      puncture: 0.05,
      detail: 0.1,
      redundancy: 0.05,
      residue: 0.07,
      repair: 0.05,
      life: 0.08,
      cost: 0.22,
    },
    source: 'practice',
    at: 'default weights',
    grade: 'practice',
  },
  {
    id: 'residual-ponding',
    title: 'some water still stands after the design',
    weights: {
      ignition: 0.14,
      ponding: 0.24,
      heat: 0.1,
      puncture: 0.06,
      detail: 0.14,
      redundancy: 0.1,
      residue: 0.06,
      repair: 0.06,
      life: 0.06,
      cost: 0.04,
    },
    source: 'practice',
    at: 'default weights',
    grade: 'practice',
  },
] as const satisfies readonly SituationWeights[];

/** Facts of the job that make one criterion count more or less; the core says when each holds. */
export type ShiftCondition =
  | 'stood-water'
  | 'grease'
  | 'no-flame-site'
  | 'residue-stays'
  | 'residue-gone'
  | 'residue-never';

export interface WeightShift extends Cited {
  when: ShiftCondition;
  criterion: CriterionId;
  /** The weight is multiplied by this; all weights are then brought back to a sum of 1. */
  times: number;
  /** "water stood on the old roof": the fact, in the middle of a sentence. */
  because: string;
}

/**
 * What moves a weight inside its situation: judgement from common practice, editable.
 * A fact that rules a covering out is a veto and no weight; these count for what is left.
 */
export const weightShifts = [
  {
    when: 'stood-water',
    criterion: 'ponding',
    times: 1.5,
    because: 'water stood on the old roof',
    source: 'practice',
    at: 'weight shifts: ponding history',
    grade: 'practice',
  },
  {
    when: 'grease',
    criterion: 'puncture',
    times: 1.5,
    because: 'a kitchen exhaust is cleaned and serviced from the roof',
    source: 'practice',
    at: 'weight shifts: grease',
    grade: 'practice',
  },
  {
    when: 'no-flame-site',
    criterion: 'ignition',
    times: 1.5,
    because: 'open flame is barred here, so what still burns while it is put on counts more',
    source: 'practice',
    at: 'weight shifts: no-flame site',
    grade: 'practice',
  },
  {
    when: 'residue-stays',
    criterion: 'residue',
    times: 1.5,
    because: 'old asphalt stays in place',
    source: 'practice',
    at: 'weight shifts: bitumen residue',
    grade: 'practice',
  },
  {
    when: 'residue-gone',
    criterion: 'residue',
    times: 0.5,
    because: 'no old asphalt is left to touch',
    source: 'practice',
    at: 'weight shifts: bitumen residue',
    grade: 'practice',
  },
  {
    when: 'residue-never',
    criterion: 'residue',
    times: 0,
    because: 'the old roof has none',
    source: 'practice',
    at: 'weight shifts: bitumen residue',
    grade: 'practice',
  },
] as const satisfies readonly WeightShift[];

export interface ParentCap extends Cited {
  criteria: readonly CriterionId[];
  mostTogether: number;
}

/** Criteria that rise together (several layers also take more traffic) share one allowance, or they count twice. */
export const parentCap = {
  criteria: ['puncture', 'redundancy'],
  mostTogether: 0.2,
  source: 'practice',
  at: 'correlated criteria',
  grade: 'practice',
} as const satisfies ParentCap;

export interface FirstCoolZone extends Cited {
  zone: number;
}

/** Climate zones from this number up are weighed as cool; energy codes ask for reflective roofs in zones 1 to 3. */
export const firstCoolZone = {
  zone: 5,
  source: 'practice',
  at: 'IECC zones 1 to 4 hot or mixed, 5 to 8 cool',
  grade: 'practice',
} as const satisfies FirstCoolZone;

export interface NearTie extends Cited {
  weightMargin: number;
}

/** A winner that a change of one weight by this much would unseat is called a near tie. */
export const nearTie = {
  weightMargin: 0.05,
  source: 'practice',
  at: 'sensitivity',
  grade: 'practice',
} as const satisfies NearTie;
