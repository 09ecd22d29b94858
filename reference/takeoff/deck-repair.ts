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

/** How badly it was found makes more or fewer sheets bad: the same planning guess, no published rate. */
export const severityFactors = [
  { severity: 'slight', factor: 0.5, source: 'practice', at: 'planning guess, severity', grade: 'practice' },
  { severity: 'plain', factor: 1, source: 'practice', at: 'planning guess, severity', grade: 'practice' },
  { severity: 'severe', factor: 2.25, source: 'practice', at: 'planning guess, severity', grade: 'practice' },
] as const satisfies readonly (Cited & { severity: string; factor: number })[];

/** Rot runs on behind the metal past what is seen, at each end of the marked part. A planning guess. */
export const rotRunsOn = {
  oneInTenFt: 8,
  source: 'practice',
  at: 'planning guess, rot beyond what is seen',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/** Lumber for fascia and edges is ordered in lengths. */
export const edgeLumber = {
  lengthFt: 12,
  tailSpacingIn: 24,
  source: 'practice',
  at: 'usual length of fascia stock; rafters 24 in apart where nobody measured',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;
