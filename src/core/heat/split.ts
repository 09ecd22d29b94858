import type { HeatSplit } from '../report/types.ts';

/** Less than this saved in a day is not shared out, Btu per sq ft. */
const LEAST_SAVED = 0.5;

/** Heat of a day at the four corners, Btu per sq ft: old or new insulation with old or new color. */
export interface Corners {
  old: number;
  insulationOnly: number;
  colorOnly: number;
  both: number;
}

/**
 * What each of two changes saves. One alone saves more than the same after the other, so the shares are the mean of both
 * orders (the fair division of two), and the overlap is said.
 * Correctness: tests/unit/heat/split.test.ts
 */
export function splitOf({ old, insulationOnly, colorOnly, both }: Corners): HeatSplit {
  const saved = old - both;
  const insulationAlone = old - insulationOnly;
  const colorAlone = old - colorOnly;
  const insulation = (insulationAlone + colorOnly - both) / 2;
  const shares = saved > LEAST_SAVED;
  return {
    oldBtu: old,
    insulationOnlyBtu: insulationOnly,
    colorOnlyBtu: colorOnly,
    bothBtu: both,
    savedBtu: saved,
    insulationAloneBtu: insulationAlone,
    colorAloneBtu: colorAlone,
    overlapBtu: insulationAlone + colorAlone - saved,
    insulationShare: shares ? insulation / saved : null,
    colorShare: shares ? 1 - insulation / saved : null,
  };
}
