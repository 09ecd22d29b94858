import type { Cited } from './sources.ts';

/** Tapered boards of one slope: a group that repeats on flat fill. */
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

/** Boards that start at nothing, for crickets and for layers that lie on other boards. Cut to order by some makers. */
export const zeroEdgeGroups = [
  {
    slopeInPerFt: 0.5,
    runFt: 4,
    widthFt: 4,
    lowEdgesIn: [0],
    fillStepIn: 2,
    source: 'practice',
    at: 'stock cricket boards',
    grade: 'practice',
  },
] as const satisfies readonly TaperGroup[];

/** A tapered strip that brings a low edge down to nothing. */
export interface EdgeStrip extends Cited {
  lowIn: number;
  highIn: number;
  /** From its thin to its thick edge. */
  runIn: number;
  lengthFt: number;
}

/** Perlite or fibre, 12 to 24 in wide. Strips that start at 1/8 in are left out: they would leave a lip. */
export const edgeStrips = [
  [0.5, 12],
  [0.5, 16],
  [0.5, 24],
  [0.75, 18],
  [0.75, 24],
  [1, 24],
  [1.5, 24],
].map(
  ([highIn, runIn]) =>
    ({
      lowIn: 0,
      highIn,
      runIn,
      lengthFt: 4,
      source: 'practice',
      at: 'tapered edge strips',
      grade: 'practice',
    }) as const,
) satisfies readonly EdgeStrip[];

/** A piece that holds no circle of this diameter is not laid as a board of its own. */
export const leastPiece = {
  diameterIn: 4,
  source: 'practice',
  at: 'smallest piece that is fastened',
  grade: 'practice',
} as const satisfies Cited & { diameterIn: number };

/** A sump at a drain: how large, how steep against its field, and what is left at the drain. */
export const sumpRule = {
  sideFt: 4,
  timesField: 2,
  leastAtDrainIn: 1,
  source: 'practice',
  at: 'tapered sumps at drains; an inch at the low point as energy codes ask',
  grade: 'practice',
} as const satisfies Cited & { sideFt: number; timesField: number; leastAtDrainIn: number };

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
