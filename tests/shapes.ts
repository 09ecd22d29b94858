import type { Ring } from '../src/core/roof.ts';

/** 40 x 40 ft less its upper right quarter: the plainest outline with an inside corner. */
export const lShape: Ring = [
  [0, 0],
  [40, 0],
  [40, 20],
  [20, 20],
  [20, 40],
  [0, 40],
];
