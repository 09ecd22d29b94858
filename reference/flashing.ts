import type { Cited } from './sources.ts';

export interface FlashingRow extends Cited {
  heightIn: number;
}

/**
 * Base flashing above the finished surface at walls, curbs, sills and parapets. Some associations accept less at
 * parapets where water can only spill out; a local rule may set another minimum.
 */
export const leastFlashing = {
  heightIn: 8,
  source: 'practice',
  at: 'trade association curb and wall details',
  grade: 'practice',
} as const satisfies FlashingRow;

/** How far the sheet runs up under the shingles beyond what the new roof buries; more where ice is expected. */
export const shingleRunUp = {
  heightIn: 18,
  source: 'practice',
  at: 'tie-in under shingles',
  grade: 'practice',
} as const satisfies FlashingRow;
