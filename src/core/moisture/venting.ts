import { lowSlopeVenting, ventedOrNot } from '../../../reference/vapor.ts';
import { plainNumber } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { MoistureReport } from '../report/types.ts';
import type { Site } from '../site/site.ts';

/** Whether a vented space below the deck would do anything. @param riseFt between low and high end */
export function ventingOf(riseFt: number, kind: MoistureReport['below']['kind']): MoistureReport['venting'] {
  if (kind === 'closed-cell' || kind === 'open-cell')
    return {
      text: 'There is nothing to vent: the foam lies against the deck, and no air passes between them.',
      source: sourceNote(ventedOrNot),
    };
  const low =
    riseFt < lowSlopeVenting.heightFt
      ? `Do not vent this flat part: between its low and its high end there is ${plainNumber(12 * riseFt)} in of height, and without about ${lowSlopeVenting.heightFt} ft air moves by wind alone.`
      : 'There is height enough for air to move through a vented space; it still needs a clear inch over the insulation and openings at both ends.';
  return kind === 'none'
    ? { text: `There is nothing to vent: all insulation lies above the deck. ${low}`, source: sourceNote(ventedOrNot) }
    : { text: low, source: sourceNote(lowSlopeVenting) };
}

/** Height between the lowest and the highest corner of the deck, ft. */
export function riseOf({ measured, outline }: Site): number {
  const heights = outline
    .map((corner) => measured.at(corner))
    .filter((z): z is number => z !== null && Number.isFinite(z));
  return heights.length === 0 ? 0 : (Math.max(...heights) - Math.min(...heights)) / 12;
}
