import type { Cited } from '../sources.ts';

export interface DamageZone extends Cited {
  zone: 'open-edge' | 'tie-in' | 'penetrations' | 'rest';
  words: string;
  /** Chance that one sheet of the zone is bad. */
  chance: number;
}

/**
 * Shares of bad sheathing by place. No published rate for low-slope houses was found: these are a planning guess, to
 * be replaced by a company's own counts. They order the places right (edge row first), not the job.
 */
export const damageZones = [
  {
    zone: 'open-edge',
    words: 'row along the gutter or open edge',
    chance: 0.35,
    source: 'practice',
    at: 'planning guess, no published rate',
    grade: 'practice',
  },
  {
    zone: 'tie-in',
    words: 'row along the tie-in',
    chance: 0.25,
    source: 'practice',
    at: 'planning guess, no published rate',
    grade: 'practice',
  },
  {
    zone: 'penetrations',
    words: 'at pipes and curbs',
    chance: 0.25,
    source: 'practice',
    at: 'planning guess, no published rate',
    grade: 'practice',
  },
  {
    zone: 'rest',
    words: 'elsewhere',
    chance: 0.05,
    source: 'practice',
    at: 'planning guess, no published rate',
    grade: 'practice',
  },
] as const satisfies readonly DamageZone[];

/** Rot clusters: sheets of one zone go bad together. */
export const damageTogether = {
  correlation: 0.2,
  source: 'practice',
  at: 'planning guess, correlation inside a zone',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;
