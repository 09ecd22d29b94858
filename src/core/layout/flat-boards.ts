import { exposedDeckLimit } from '../../../reference/membranes/limits.ts';
import { inches, rValue, slopeInWords } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import { aboveDeck } from '../moisture/build-up.ts';
import type { ExistingReport, FlatBoardsReport } from '../report/types.ts';
import type { Roof } from '../roof.ts';
import type { Site } from '../site/site.ts';

const BOARD_SQ_FT = 32;

/** Flat boards are asked for, and the deck falls enough and holds no water: no taper is laid out then. */
export const keepsItsSlope = (roof: Roof, existing: ExistingReport): boolean =>
  roof.insulation.flatIn !== null && existing.verdict === 'meets-minimum';

/**
 * Longest screw through boards into a deck that is seen from below, in: its point stays 1/4 in inside the wood.
 * @returns null where the deck is too thin to be screwed at all. Correctness: tests/cases/damp.test.ts, C48
 */
export function longestHiddenScrewIn(aboveIn: number, deckIn: number): number | null {
  return deckIn < exposedDeckLimit.leastThicknessIn ? null : aboveIn + deckIn - exposedDeckLimit.pointCoverIn;
}

/** Flat boards as they are asked for; null where none are. */
export function flatBoards(site: Site, existing: ExistingReport): FlatBoardsReport | null {
  const { flatIn } = site.roof.insulation;
  if (flatIn === null) return null;
  const { deckThicknessIn, below } = site.given;
  const exposed = below === 'living-exposed-deck' || below === 'outdoors';
  const used = keepsItsSlope(site.roof, existing);
  const { labelR } = aboveDeck(site, null);
  const longestScrewIn = exposed ? longestHiddenScrewIn(flatIn, deckThicknessIn) : null;
  const slope = existing.leastFaceSlopeInPerFt;
  const screw = !exposed
    ? ''
    : longestScrewIn === null
      ? ` No screw goes into the ${inches(deckThicknessIn)} deck: its point would show in the room.`
      : ` No screw longer than ${inches(longestScrewIn)} through the boards: its point must not come through the ceiling.`;
  return {
    thicknessIn: flatIn,
    labelR,
    areaSqFt: site.section.areaSqFt,
    boardsPerLayer: Math.ceil(site.section.areaSqFt / BOARD_SQ_FT - 1e-9),
    longestScrewIn,
    used,
    text: used
      ? `${inches(flatIn)} of flat board, ${rValue(labelR)} by label, keep the fall of the deck${slope === null ? '' : ` (${slopeInWords(slope)})`}: no tapered board is laid.${screw}`
      : `Flat boards would keep today's surface, which does not drain as it must: the taper is laid out instead.`,
    source: sourceNote(exposedDeckLimit),
  };
}
