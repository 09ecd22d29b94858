import type { Cited } from '../sources.ts';

export interface OldCovering extends Cited {
  covering: string;
  /** One layer, dry, least and most. */
  psf: readonly [number, number];
  cubicYdPerSq: number;
}

/**
 * Weight of one old layer, dry. Water adds 5.2 psf for every inch held, so a soaked roof can weigh double.
 * Smooth built-up, coatings on a base, and metal vary most; the heavier end is ordered.
 */
export const oldCoverings = [
  {
    covering: 'sbs-granule',
    psf: [2, 2.5],
    cubicYdPerSq: 0.75,
    source: 'practice',
    at: 'tear-off weights, one layer',
    grade: 'practice',
  },
  {
    covering: 'app',
    psf: [2, 2.5],
    cubicYdPerSq: 0.75,
    source: 'practice',
    at: 'tear-off weights, one layer',
    grade: 'practice',
  },
  {
    covering: 'bur-gravel',
    psf: [5.5, 6],
    cubicYdPerSq: 1,
    source: 'practice',
    at: 'tear-off weights, gravel',
    grade: 'practice',
  },
  {
    covering: 'bur-smooth',
    psf: [2, 2.5],
    cubicYdPerSq: 0.75,
    source: 'memory',
    at: 'tear-off weight as for bitumen sheets',
    grade: 'memory',
  },
  {
    covering: 'tpo',
    psf: [0.3, 0.4],
    cubicYdPerSq: 0.75,
    source: 'practice',
    at: 'tear-off weights, single-ply',
    grade: 'practice',
  },
  {
    covering: 'pvc',
    psf: [0.3, 0.4],
    cubicYdPerSq: 0.75,
    source: 'practice',
    at: 'tear-off weights, single-ply',
    grade: 'practice',
  },
  {
    covering: 'epdm',
    psf: [0.3, 0.4],
    cubicYdPerSq: 0.75,
    source: 'practice',
    at: 'tear-off weights, single-ply',
    grade: 'practice',
  },
  {
    covering: 'roll-roofing',
    psf: [0.9, 1],
    cubicYdPerSq: 0.75,
    source: 'roll-roofing-guide',
    at: 'about 90 lb per square',
    grade: 'found',
  },
  {
    covering: 'coating',
    psf: [2, 2.5],
    cubicYdPerSq: 0.75,
    source: 'practice',
    at: 'the coated sheet comes off with the coat',
    grade: 'practice',
  },
  {
    covering: 'spray-foam',
    psf: [0.5, 0.8],
    cubicYdPerSq: 0.75,
    source: 'memory',
    at: 'foam of 1 1/2 in with its coat',
    grade: 'memory',
  },
  {
    covering: 'metal',
    psf: [1, 1.5],
    cubicYdPerSq: 0.75,
    source: 'memory',
    at: 'sheet metal roofing',
    grade: 'memory',
  },
  {
    covering: 'other',
    psf: [2, 2.5],
    cubicYdPerSq: 0.75,
    source: 'practice',
    at: 'taken as a bitumen sheet until a core is cut',
    grade: 'practice',
  },
] as const satisfies readonly OldCovering[];

/** What comes off with it. */
export const shingles = {
  psf: 2.4,
  cubicYdPerSq: 1,
  source: 'practice',
  at: 'shingles, one layer',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

export const sheathing = {
  sheetSqFt: 32,
  psf: 1.4,
  source: 'memory',
  at: '15/32 in plywood',
  grade: 'memory',
} as const satisfies Cited & Record<string, unknown>;

export const looseWood = {
  lbPerCubicYd: 400,
  source: 'state-debris-factors',
  at: 'loose wood',
  grade: 'found',
} as const satisfies Cited & Record<string, unknown>;

/** Weight fills a box before volume does. */
export const debrisBox = {
  cubicYd: 10,
  ton: 2,
  source: 'practice',
  at: '10 yd box, about 2 ton on the road',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/** How far past the line of a wet part an old roof that stays is cut out; the farther end is counted. */
export const cutOutPast = {
  leastFt: 1,
  mostFt: 2,
  source: 'practice',
  at: 'partial replacement',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;
