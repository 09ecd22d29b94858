import type { Cited } from './sources.ts';

export interface StrainerRow extends Cited {
  kind: 'dome' | 'flat';
  /** Free area of the openings over the area of the pipe below, at least. */
  timesPipeArea: number;
  /** Height of a dome above the roof, at least; null = not asked for. */
  leastHeightIn: number | null;
}

/**
 * Strainers of roof drains: what their openings must have together, as a city code prints it (the plumbing code to 2012 had the
 * same text). Later codes leave it to the tested drain.
 */
export const strainers = [
  {
    kind: 'dome',
    timesPipeArea: 1.5,
    leastHeightIn: 4,
    source: 'chicago-18-29',
    at: '18-29-1105, dome strainers',
    grade: 'found',
  },
  {
    kind: 'flat',
    timesPipeArea: 2,
    leastHeightIn: null,
    source: 'chicago-18-29',
    at: '18-29-1105, flat grates on decks',
    grade: 'found',
  },
] as const satisfies readonly StrainerRow[];

/** An open pipe takes leaves, gravel and birds down with the water and plugs where nobody sees it. */
export const openPipe = {
  source: 'practice',
  at: 'a strainer in every roof drain',
  grade: 'practice',
} as const satisfies Cited;

/** A smaller pipe inside a pipe: what passes is what the smaller one passes. */
export const insertRule = {
  source: 'practice',
  at: 'a drain is rated by the narrowest bore in it',
  grade: 'practice',
} as const satisfies Cited;
