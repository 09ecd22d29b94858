import { rValue } from '../../units/print.ts';
import type { Draft, Facts } from './draft.ts';

const OUTSIDE_AIR =
  'Outside air passes over what lies below the deck: until the vents are closed, the board above it keeps little heat in.';
const AIR_NOT_KNOWN =
  'The board above the deck counts only where no outside air passes over what lies below it, and that is not known.';
const AIR =
  'whether outside air passes over what lies below the deck: look for vents at the eaves, in the walls and on this flat part';

const withoutBelow = (facts: Facts): Facts => ({ ...facts, totalR: facts.aboveR, framing: null });
const withoutAbove = (facts: Facts): Facts => ({ ...facts, totalR: facts.totalR - facts.aboveR, aboveR: 0, laidR: 0 });

/** What of a pass the answer on damp does not let stand; null = nothing. */
function stopOf({ damp, below, aboveR }: Facts): string | null {
  if (damp !== 'at-risk' || (below.r ?? 0) <= 0) return null;
  return `It counts ${below.what} below the deck, and with that this roof is at risk of damp: it holds only once what the answer on damp asks for is done, and ${rValue(aboveR)} is left where that comes out.`;
}

/**
 * The rules with what they rest on: insulation that the answer on damp (`moisture.verdict`) does not let stand, or board
 * over which outside air passes. A rule rests on a part where it does not pass without it; one that rests on board of which
 * nobody knows whether it counts is not known.
 */
export function dampNoted(
  facts: Facts,
  draftsOf: (facts: Facts) => Draft[],
): { drafts: Draft[]; stopped: string | null } {
  const stop = stopOf(facts);
  const [bare, flat] = [draftsOf(withoutBelow(facts)), draftsOf(withoutAbove(facts))];
  const passes = ({ binds, passes }: Draft): boolean => binds === true && passes === true;
  const restsBelow = (draft: Draft, i: number): boolean => passes(draft) && !passes(bare[i]);
  const open = (draft: Draft, i: number): boolean =>
    facts.outsideAir === 'unknown' && passes(draft) && !passes(flat[i]);
  const notesOf = (draft: Draft, i: number): string[] => {
    if (draft.binds !== true) return [];
    if (facts.outsideAir === 'yes') return [OUTSIDE_AIR];
    return [...(stop !== null && restsBelow(draft, i) ? [stop] : []), ...(open(draft, i) ? [AIR_NOT_KNOWN] : [])];
  };
  const drafts = draftsOf(facts);
  return {
    drafts: drafts.map((draft, i) => {
      const why = [draft.why, ...notesOf(draft, i)].join(' ');
      return open(draft, i) ? { ...draft, why, passes: null, settledBy: AIR } : { ...draft, why };
    }),
    stopped: drafts.some(restsBelow) ? stop : null,
  };
}
