import type { Cited } from './sources.ts';

export interface WeirForm extends Cited {
  id: 'francis' | 'channel';
  /** Q [gpm] = factor (b - contraction H) H^1.5 with b and H in inches. */
  factor: number;
  contraction: number;
}

/**
 * Two forms of the same weir. Francis with two end contractions, 3.33 (L - 0.2 H) H^1.5 in cubic feet per second and feet, is
 * 2.9962 (b - 0.2 H) H^1.5 in gpm and inches and reproduces the plumbing tables; the load standard's channel scupper is
 * 2.9 b H^1.5, within 4 % of its printed table at 1 in and 2 % above. Francis holds for a width of at least three heads.
 */
export const weirForms = [
  {
    id: 'francis',
    factor: 2.9962,
    contraction: 0.2,
    source: 'weir-table',
    at: 'two end contractions',
    grade: 'found',
  },
  {
    id: 'channel',
    factor: 2.9,
    contraction: 0,
    source: 'asce-7-05-c8',
    at: 'Table C8-1, channel scuppers',
    grade: 'memory',
  },
] as const satisfies readonly WeirForm[];

export interface OrificeRow extends Cited {
  /** Q [gpm] = factor b h sqrt(H - h / 2) with b, h, H in inches; 0.60 as coefficient of discharge. */
  factor: number;
}

/** A scupper whose opening is under water. Gives 179 gpm for 6 x 4 in at 5 in of head where the table prints 177. */
export const scupperOrifice = {
  factor: 4.3,
  source: 'asce-7-05-c8',
  at: 'closed scuppers, formula from memory',
  grade: 'memory',
} as const satisfies OrificeRow;

export interface StockScuppers extends Cited {
  widthsIn: readonly number[];
}

/** Widths of the plumbing code's scupper table; any other width can be bent to order. */
export const stockScuppers = {
  widthsIn: [4, 6, 8, 12, 18, 24, 30, 36],
  source: 'upc-app-d',
  at: 'Table D-2, columns',
  grade: 'memory',
} as const satisfies StockScuppers;

export interface ScupperFreeboard extends Cited {
  freeboardIn: number;
}

/** Head kept below the top of the opening, so that the weir does not turn into an orifice in the design storm. */
export const scupperFreeboard = {
  freeboardIn: 1,
  source: 'practice',
  at: 'head at most the opening less 1 in',
  grade: 'practice',
} as const satisfies ScupperFreeboard;
