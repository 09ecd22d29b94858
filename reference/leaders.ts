import type { Cited } from './sources.ts';

export interface GpmLeaderRow extends Cited {
  /** One number is a diameter, two are the sides of a rectangle. */
  sizeIn: readonly [number] | readonly [number, number];
  gpm: number;
}

/**
 * IPC 2015 and later, Table 1106.3: vertical leaders fed by gutters and scuppers. Round sizes were read in a second-hand
 * copy labelled IPC 2021; 2-1/2 in and every rectangle are from memory. The values are the old area table at 1 in/h
 * divided by 96. A size that is not listed takes the next smaller listed row (common practice).
 */
export const gpmLeaders = [
  { sizeIn: [2], gpm: 30, source: 'leader-table-copy', at: 'Table 1106.3', grade: 'found' },
  { sizeIn: [2.5], gpm: 54, source: 'ipc-2021', at: 'Table 1106.3', grade: 'memory' },
  { sizeIn: [3], gpm: 92, source: 'leader-table-copy', at: 'Table 1106.3', grade: 'found' },
  { sizeIn: [4], gpm: 192, source: 'leader-table-copy', at: 'Table 1106.3', grade: 'found' },
  { sizeIn: [5], gpm: 360, source: 'leader-table-copy', at: 'Table 1106.3', grade: 'found' },
  { sizeIn: [6], gpm: 563, source: 'leader-table-copy', at: 'Table 1106.3', grade: 'found' },
  { sizeIn: [8], gpm: 1208, source: 'leader-table-copy', at: 'Table 1106.3', grade: 'found' },
  { sizeIn: [1.5, 2.5], gpm: 30, source: 'ipc-2021', at: 'Table 1106.3', grade: 'memory' },
  { sizeIn: [2, 2], gpm: 30, source: 'ipc-2021', at: 'Table 1106.3', grade: 'memory' },
  { sizeIn: [2.5, 2.5], gpm: 54, source: 'ipc-2021', at: 'Table 1106.3', grade: 'memory' },
  { sizeIn: [2, 4], gpm: 92, source: 'ipc-2021', at: 'Table 1106.3', grade: 'memory' },
  { sizeIn: [2.5, 3], gpm: 92, source: 'ipc-2021', at: 'Table 1106.3', grade: 'memory' },
  { sizeIn: [3, 4.25], gpm: 192, source: 'ipc-2021', at: 'Table 1106.3', grade: 'memory' },
  { sizeIn: [3.5, 4], gpm: 192, source: 'ipc-2021', at: 'Table 1106.3', grade: 'memory' },
  { sizeIn: [4, 5], gpm: 360, source: 'ipc-2021', at: 'Table 1106.3', grade: 'memory' },
  { sizeIn: [4.5, 4.5], gpm: 360, source: 'ipc-2021', at: 'Table 1106.3', grade: 'memory' },
  { sizeIn: [5, 6], gpm: 563, source: 'ipc-2021', at: 'Table 1106.3', grade: 'memory' },
  { sizeIn: [5.5, 5.5], gpm: 563, source: 'ipc-2021', at: 'Table 1106.3', grade: 'memory' },
  { sizeIn: [6, 8], gpm: 1208, source: 'ipc-2021', at: 'Table 1106.3', grade: 'memory' },
] as const satisfies readonly GpmLeaderRow[];

export interface AreaLeaderRow extends Cited {
  diameterIn: number;
  /** Roof area at 1 in/h; divide by the local rate. */
  areaSqFt: number;
}

/**
 * IPC to 2012, Table 1106.2: leaders as roof area at 1 in/h. Read in a reprint whose 1-in/h cell for 3 in says 8,880 while its
 * other rates are 8,800 / rate; a published question (1,470 sq ft at 6 in/h) also gives 8,800. These leaders run about 0.35 full.
 */
export const areaLeaders = [
  { diameterIn: 2, areaSqFt: 2880, source: 'leader-reprint', at: 'Table 1106.2', grade: 'found' },
  { diameterIn: 3, areaSqFt: 8800, source: 'leader-reprint', at: 'Table 1106.2', grade: 'found' },
  { diameterIn: 4, areaSqFt: 18400, source: 'leader-reprint', at: 'Table 1106.2', grade: 'found' },
  { diameterIn: 5, areaSqFt: 34600, source: 'leader-reprint', at: 'Table 1106.2', grade: 'found' },
  { diameterIn: 6, areaSqFt: 54000, source: 'leader-reprint', at: 'Table 1106.2', grade: 'found' },
  { diameterIn: 8, areaSqFt: 116000, source: 'leader-reprint', at: 'Table 1106.2', grade: 'found' },
] as const satisfies readonly AreaLeaderRow[];

export interface SevenTwentyFourthsRow extends Cited {
  diameterIn: number;
  gpm: number;
  /** Roof area at 1 in/h as two prints give it. */
  areaSqFt: readonly [number, number];
}

/** UPC and NSPC leaders, 7/24 full: Q = 27.8 r^(5/3) D^(8/3) with r = 7/24 gives the gpm column within 0.4 gpm. */
export const sevenTwentyFourthsLeaders = [
  { diameterIn: 2, gpm: 23, areaSqFt: [2176, 2180], source: 'nspc-2006', at: 'Table 13.6.1', grade: 'found' },
  { diameterIn: 3, gpm: 67, areaSqFt: [6426, 6440], source: 'nspc-2006', at: 'Table 13.6.1', grade: 'found' },
  { diameterIn: 4, gpm: 144, areaSqFt: [13840, 13840], source: 'nspc-2006', at: 'Table 13.6.1', grade: 'found' },
  { diameterIn: 5, gpm: 261, areaSqFt: [25094, 25120], source: 'nspc-2006', at: 'Table 13.6.1', grade: 'found' },
  { diameterIn: 6, gpm: 424, areaSqFt: [40800, 40805], source: 'nspc-2006', at: 'Table 13.6.1', grade: 'found' },
  { diameterIn: 8, gpm: 913, areaSqFt: [87878, 88000], source: 'nspc-2006', at: 'Table 13.6.1', grade: 'found' },
] as const satisfies readonly SevenTwentyFourthsRow[];
