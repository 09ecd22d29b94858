import { ordinaryRoofLiveLoad } from '../../../reference/deflection.ts';
import { sourceNote } from '../finding.ts';
import type { Assumption, Finding, SourceNote } from '../report/types.ts';
import { inch } from './rating.ts';

export interface LiveLoad {
  psf: number;
  source: SourceNote;
  assumed: readonly Assumption[];
}

/** The roof live load of the file, or 20 psf of an ordinary flat roof, listed as assumed. */
export function liveLoadOf(givenPsf: number | null): LiveLoad {
  const source = sourceNote(ordinaryRoofLiveLoad);
  if (givenPsf !== null) return { psf: givenPsf, source, assumed: [] };
  const because = 'The roof live load is not known; that of an ordinary flat roof is taken.';
  const findOut = 'Read it from the structural drawings, or ask an engineer who has seen the joists.';
  const value = `${ordinaryRoofLiveLoad.psf} psf`;
  return { psf: ordinaryRoofLiveLoad.psf, source, assumed: [{ path: 'deck.liveLoadPsf', value, because, findOut }] };
}

/** Loads are compared to this; 0.01 psf is a fiftieth of a millimetre of water. */
export const SAME_LOAD_PSF = 0.01;

/** Water weighs more than the roof is known to bear: everything waits for an engineer. */
export function engineerFirst(
  where: string,
  depthIn: number,
  loadPsf: number,
  live: LiveLoad,
  source: SourceNote,
  /** What the water waits for: "before it runs over the parapet". */
  reason: string | null = null,
): Finding {
  return {
    id: 'engineer-first',
    level: 'stop',
    where,
    message:
      `Engineer first: ${inch(depthIn)} of water would stand at the low point of ${where}${reason === null ? '' : ` ${reason}`}, ${loadPsf.toFixed(1)} psf, more than the ` +
      `roof live load of ${live.psf} psf. Nobody goes on the roof in that state, and a structural engineer decides.`,
    value: `${loadPsf.toFixed(1)} psf`,
    limit: `${live.psf} psf`,
    source,
  };
}
