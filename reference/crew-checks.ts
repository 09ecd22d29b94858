import type { Cited } from './sources.ts';

export interface CrewCheckRow extends Cited {
  check: 'spot-level' | 'board-thickness' | 'joint-step' | 'joint-gap';
  /** Largest difference that is let pass, in. */
  withinIn: number;
}

/**
 * What a crew can hold and read with a level. Board thickness is the making tolerance of polyisocyanurate; the rest is
 * common practice without a document. A job's own specification goes before these.
 */
export const crewChecks = [
  { check: 'spot-level', withinIn: 0.25, source: 'practice', at: 'spot levels as built', grade: 'practice' },
  { check: 'board-thickness', withinIn: 0.125, source: 'practice', at: 'board thickness tolerance', grade: 'practice' },
  { check: 'joint-step', withinIn: 0.125, source: 'practice', at: 'step between boards', grade: 'practice' },
  { check: 'joint-gap', withinIn: 0.25, source: 'practice', at: 'gap between boards', grade: 'practice' },
] as const satisfies readonly CrewCheckRow[];
