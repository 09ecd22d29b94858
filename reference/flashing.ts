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
