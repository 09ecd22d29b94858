import type { Cited } from './sources.ts';

/**
 * Storm pipe tables exist in three generations that do not agree: the same 4-in pipe at 1/8 in/ft is 78 gpm in one and
 * 115 gpm in another. A rule set names one generation; rows of two tables are never mixed.
 */
export type PipeGeneration = 'ipc-area' | 'ipc-gpm' | 'seven-twenty-fourths';

export interface GpmPipeRow extends Cited {
  sizeIn: number;
  verticalGpm: number;
  /** At the slopes of `gpmPipeSlopesInPerFt`, in that order. */
  slopedGpm: readonly [number, number, number, number];
}

/** Columns of the gpm table. */
export const gpmPipeSlopesInPerFt = [1 / 16, 1 / 8, 1 / 4, 1 / 2] as const;

/**
 * IPC 2015 to 2021, Table 1106.2. Full-pipe Manning with n = 0.010 gives the sloped columns within 6.5 % for 3, 4 and 6 to 12 in;
 * the 5-in row is printed about 20 % low, 2 in about 20 % high, 15 in 8 % low. The print stands.
 * "Vertical" is close to a leader one third full. By this text a pipe is sized on what the roof drain passes (maker's curve).
 */
export const gpmPipes = [
  {
    sizeIn: 2,
    verticalGpm: 34,
    slopedGpm: [15, 22, 31, 44],
    source: 'ipc-2018',
    at: 'Table 1106.2',
    grade: 'found',
  },
  {
    sizeIn: 3,
    verticalGpm: 87,
    slopedGpm: [39, 55, 79, 111],
    source: 'ipc-2018',
    at: 'Table 1106.2',
    grade: 'found',
  },
  {
    sizeIn: 4,
    verticalGpm: 180,
    slopedGpm: [81, 115, 163, 231],
    source: 'ipc-2018',
    at: 'Table 1106.2',
    grade: 'found',
  },
  {
    sizeIn: 5,
    verticalGpm: 311,
    slopedGpm: [117, 165, 234, 331],
    source: 'ipc-2018',
    at: 'Table 1106.2',
    grade: 'found',
  },
  {
    sizeIn: 6,
    verticalGpm: 538,
    slopedGpm: [243, 344, 487, 689],
    source: 'ipc-2018',
    at: 'Table 1106.2',
    grade: 'found',
  },
  {
    sizeIn: 8,
    verticalGpm: 1117,
    slopedGpm: [505, 714, 1010, 1429],
    source: 'ipc-2018',
    at: 'Table 1106.2',
    grade: 'found',
  },
  {
    sizeIn: 10,
    verticalGpm: 2050,
    slopedGpm: [927, 1311, 1855, 2623],
    source: 'ipc-2018',
    at: 'Table 1106.2',
    grade: 'found',
  },
  {
    sizeIn: 12,
    verticalGpm: 3272,
    slopedGpm: [1480, 2093, 2960, 4187],
    source: 'ipc-2018',
    at: 'Table 1106.2',
    grade: 'found',
  },
  {
    sizeIn: 15,
    verticalGpm: 5543,
    slopedGpm: [2508, 3546, 5016, 7093],
    source: 'ipc-2018',
    at: 'Table 1106.2',
    grade: 'found',
  },
] as const satisfies readonly GpmPipeRow[];

export interface AreaPipeRow extends Cited {
  sizeIn: number;
  /** Roof area at 1 in/h at the slopes of `areaPipeSlopesInPerFt`; divide by the local rate. */
  areaSqFt: readonly [number, number, number];
}

/** Columns of the area table. */
export const areaPipeSlopesInPerFt = [1 / 8, 1 / 4, 1 / 2] as const;

/**
 * Horizontal storm pipe as roof area at 1 in/h: IPC to 2012, older UPC and SPC. From memory, confirmed in print at single cells:
 * 4 in at 1/8 (2,506 sq ft at 3 in/h), 6 in at 1/8 (21,400), and 4, 5, 6, 8 in at 1/4 (at 4 in/h).
 * A third rounding in gpm circulates 2 to 6 % higher; it is not used.
 */
export const areaPipes = [
  { sizeIn: 3, areaSqFt: [3290, 4640, 6576], source: 'ipc-2012', at: 'Table 1106.3', grade: 'memory' },
  { sizeIn: 4, areaSqFt: [7520, 10600, 15040], source: 'ipc-2012', at: 'Table 1106.3', grade: 'memory' },
  { sizeIn: 5, areaSqFt: [13360, 18880, 26720], source: 'ipc-2012', at: 'Table 1106.3', grade: 'memory' },
  { sizeIn: 6, areaSqFt: [21400, 30200, 42800], source: 'ipc-2012', at: 'Table 1106.3', grade: 'memory' },
  { sizeIn: 8, areaSqFt: [46000, 65200, 92000], source: 'ipc-2012', at: 'Table 1106.3', grade: 'memory' },
] as const satisfies readonly AreaPipeRow[];
