import type { Cited } from './sources.ts';

/** Tapered boards of one slope: a group that repeats on flat fill. Boards run 4 ft along the slope. */
export interface TaperGroup extends Cited {
  slopeInPerFt: number;
  runFt: number;
  widthFt: number;
  /** Low edges of the boards of the group; each rises slope x run. */
  lowEdgesIn: readonly number[];
  /** Fill that one repeat of the group adds. */
  fillStepIn: number;
}

/**
 * The groups that are common to the trade, polyisocyanurate, 4 x 4 ft. Makers differ: some run three boards at
 * 1/4 in per ft on 3 in of fill. A job may replace these rows by its supplier's list.
 */
export const taperGroups = [
  {
    slopeInPerFt: 0.0625,
    runFt: 4,
    widthFt: 4,
    lowEdgesIn: [0.5, 0.75, 1, 1.25],
    fillStepIn: 1,
    source: 'practice',
    at: 'stock tapered boards',
    grade: 'practice',
  },
  {
    slopeInPerFt: 0.125,
    runFt: 4,
    widthFt: 4,
    lowEdgesIn: [0.5, 1, 1.5, 2],
    fillStepIn: 2,
    source: 'practice',
    at: 'stock tapered boards',
    grade: 'practice',
  },
  {
    slopeInPerFt: 0.1875,
    runFt: 4,
    widthFt: 4,
    lowEdgesIn: [0.5, 1.25, 2, 2.75],
    fillStepIn: 3,
    source: 'practice',
    at: 'stock tapered boards',
    grade: 'practice',
  },
  {
    slopeInPerFt: 0.25,
    runFt: 4,
    widthFt: 4,
    lowEdgesIn: [0.5, 1.5],
    fillStepIn: 2,
    source: 'practice',
    at: 'stock tapered boards',
    grade: 'practice',
  },
  {
    slopeInPerFt: 0.375,
    runFt: 4,
    widthFt: 4,
    lowEdgesIn: [0.5, 2],
    fillStepIn: 3,
    source: 'practice',
    at: 'stock tapered boards',
    grade: 'practice',
  },
  {
    slopeInPerFt: 0.5,
    runFt: 4,
    widthFt: 4,
    lowEdgesIn: [0.5],
    fillStepIn: 2,
    source: 'practice',
    at: 'stock tapered boards',
    grade: 'practice',
  },
] as const satisfies readonly TaperGroup[];

export interface FlatStock extends Cited {
  thicknessIn: number;
  lengthFt: number;
  widthFt: number;
}

/** Flat boards for fill and base layers; thicker fill is laid in two layers so that joints stagger. */
export const flatStock = [0.5, 1, 1.5, 2, 2.5, 3, 3.5, 4].map(
  (thicknessIn) =>
    ({ thicknessIn, lengthFt: 8, widthFt: 4, source: 'practice', at: 'stock flat boards', grade: 'practice' }) as const,
) satisfies readonly FlatStock[];

/** A single layer of fill is not laid thicker than this: two layers stagger their joints. */
export const thickestFillLayerIn = 2.5;

/** One spare of each tapered board per so many. */
export const boardsPerSpare = 10;
