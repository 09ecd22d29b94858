import type { OutletRating } from './rating.ts';
import { type DrainInput, sizeDrain } from './size-drain.ts';
import { type EdgeInput, sizeEdge } from './size-edge.ts';
import { type ScupperInput, sizeScupper } from './size-scupper.ts';

/** One outlet to be rated and sized. */
export type OutletInput = DrainInput | ScupperInput | EdgeInput;

/**
 * Rates one outlet as it is and says what it takes to carry its share of the design rain.
 * Sizes are rounded up, areas never down; a size that is not known gives no capacity and no verdict.
 * Correctness: tests/unit/outlets/sizing.test.ts, tests/unit/outlets/gutter.test.ts
 */
export function sizeOutlet(input: OutletInput): OutletRating {
  if (input.kind === 'drain') return sizeDrain(input);
  return input.kind === 'scupper' ? sizeScupper(input) : sizeEdge(input);
}
