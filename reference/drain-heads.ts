import type { Cited } from './sources.ts';

export interface DrainHeadRow extends Cited {
  sizeIn: number;
  /** Head over the drain and the flow it passes, rising; the curve starts at no head, no flow. */
  curve: readonly (readonly [headIn: number, flowGpm: number])[];
}

/**
 * ASCE 7-05 and 7-10, Table C8-1: what a roof drain passes at a head. All from memory.
 * ASCE 7-16 replaced these rows with tested drains, whose numbers were not found; a maker's own curve is better.
 * The rows end where the print ends and are not carried on.
 */
export const drainHeads = [
  {
    sizeIn: 4,
    curve: [
      [1, 80],
      [2, 170],
      [2.5, 180],
    ],
    source: 'asce-7-05-c8',
    at: 'Table C8-1',
    grade: 'memory',
  },
  {
    sizeIn: 6,
    curve: [
      [1, 100],
      [2, 190],
      [2.5, 270],
      [3, 380],
      [3.5, 540],
    ],
    source: 'asce-7-05-c8',
    at: 'Table C8-1',
    grade: 'memory',
  },
  {
    sizeIn: 8,
    curve: [
      [1, 125],
      [2, 230],
      [2.5, 340],
      [3, 560],
      [3.5, 850],
      [4, 1100],
      [4.5, 1170],
    ],
    source: 'asce-7-05-c8',
    at: 'Table C8-1',
    grade: 'memory',
  },
] as const satisfies readonly DrainHeadRow[];
