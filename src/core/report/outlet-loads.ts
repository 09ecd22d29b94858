import { rainLoadPsf } from '../drainage/rain-load.ts';
import type { OutletRating } from '../outlets/rating.ts';
import type { OutletReport } from './types.ts';

/**
 * Outlets with the depth [in] and load [psf] of water on the roof at each while it carries its design flow.
 * @param inletOf height of an outlet's inlet above the roof there [in]; null = not known, then so is the load
 */
export function withLoads(
  outlets: readonly OutletReport[],
  ratings: ReadonlyMap<string, OutletRating>,
  inletOf: (outlet: OutletReport) => number | null,
): OutletReport[] {
  return outlets.map((outlet) => {
    const headIn = ratings.get(outlet.id)?.headIn ?? null;
    const inletIn = inletOf(outlet);
    const loadPsf = headIn === null || inletIn === null ? null : rainLoadPsf(Math.max(0, inletIn), headIn);
    return { ...outlet, headIn, loadPsf };
  });
}
