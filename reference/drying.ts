import type { Cited } from './sources.ts';

export interface PanRow extends Cited {
  id: 'arid-summer' | 'arid-winter' | 'humid-summer' | 'cool-season';
  /** In words for a page. */
  name: string;
  /** Class A pan evaporation, least and greatest. */
  panInPerDay: readonly [number, number];
}

/**
 * How fast open water dries. Monthly figures: 13 in (June) and 4 in (January) in southeastern Arizona; 5 to 7 in a month in a
 * humid summer (from memory). No code or trade body gives a depth; the claims of 1/8 or 1/4 in carry no standard.
 */
export const panRates = [
  {
    id: 'arid-summer',
    name: 'hot and dry summer',
    panInPerDay: [0.43, 0.43],
    source: 'ars-tombstone',
    at: 'June, 13 in a month',
    grade: 'found',
  },
  {
    id: 'arid-winter',
    name: 'dry winter',
    panInPerDay: [0.13, 0.13],
    source: 'ars-tombstone',
    at: 'January, 4 in a month',
    grade: 'found',
  },
  {
    id: 'humid-summer',
    name: 'humid summer',
    panInPerDay: [0.16, 0.23],
    source: 'memory',
    at: 'pan 5 to 7 in a month',
    grade: 'memory',
  },
  {
    id: 'cool-season',
    name: 'cool season in the north',
    panInPerDay: [0.02, 0.05],
    source: 'memory',
    at: 'northern cool season',
    grade: 'memory',
  },
] as const satisfies readonly PanRow[];

export interface PanCoefficient extends Cited {
  coefficient: number;
}

/** Open water loses this share of what a Class A pan loses. */
export const panCoefficient = {
  coefficient: 0.7,
  source: 'memory',
  at: 'free water against a Class A pan',
  grade: 'memory',
} as const satisfies PanCoefficient;

export interface PondLimit extends Cited {
  watchIn: number;
  failIn: number;
  /** Shallower water is not listed. */
  listIn: number;
  /** Water over more than this is flagged, however shallow. */
  flagSqFt: number;
}

/**
 * Depth still standing after 48 h: over `failIn` fails, between it and `watchIn` is watched. Settings, not code values; nobody
 * prints an area, and others list any water that can be seen.
 */
export const pondLimit = {
  watchIn: 0.125,
  failIn: 0.25,
  listIn: 0.0625,
  flagSqFt: 10,
  source: 'practice',
  at: 'pond depth at 48 h',
  grade: 'practice',
} as const satisfies PondLimit;
