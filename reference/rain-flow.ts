import type { Cited } from './sources.ts';

export interface RainFlowFactor extends Cited {
  gpmPerSqFtInPerHr: number;
}

/** Q [gpm] = 0.0104 A [sq ft] i [in/h] as printed; from the definitions it is 1 / 96.25 = 0.0103896, 0.1 % less. */
export const rainFlowFactor = {
  gpmPerSqFtInPerHr: 0.0104,
  source: 'asce-7-05-c8',
  at: 'Q = 0.0104 A i',
  grade: 'found',
} as const satisfies RainFlowFactor;

/** Water that leaves over a whole free edge needs no head worth counting. */
export const freeEdgeHead = {
  headIn: 0,
  source: 'asce-7-05-c8',
  at: 'free overflow along the roof edge',
  grade: 'found',
} as const satisfies Cited & { headIn: number };
