import { wetAlarm } from '../../../reference/vapor.ts';
import { inches, plainNumber, rValue } from '../../units/print.ts';
import type { MoistureCure, MoistureReport, RetarderKind, StatedConstraint } from '../report/types.ts';
import { rBelowFor } from './condensing-plane.ts';
import { DRIEST_PCT } from './cure.ts';
import { retarderName } from './deck-sheet.ts';
import { ROOM_F } from './room.ts';

export interface CureWordsInput {
  cure: MoistureCure;
  above: MoistureReport['above'];
  below: MoistureReport['below'];
  coldF: number;
  constraints: readonly StatedConstraint[];
  /** The board that is planned meets the code's table for batts below the deck. */
  meetsTable: boolean;
}

/** Rounded up to what a tape reads: what is short must not be told as less. */
const short = (valueIn: number): string => inches(Math.ceil(8 * valueIn - 1e-6) / 8);

/** Rounded down: what is left must not be told as more. */
const left = (valueIn: number): string => inches(Math.floor(8 * Math.max(0, valueIn) + 1e-6) / 8);

const MOST_NAMED = 3;

function named(parts: readonly string[]): string {
  const more = parts.length - MOST_NAMED;
  return more > 0 ? `${parts.slice(0, MOST_NAMED).join('; ')}; and ${more} more` : parts.join('; ');
}

/** Whether the heights bear the board, at the tightest place. */
function fitWords({ fits, tightest, raised, notMeasured, moreIn, slows }: MoistureCure): string[] {
  const lift =
    raised.length === 0
      ? ''
      : ` Raise with it: ${named(raised.map(({ where, byIn }) => `${where} by ${short(byIn)}`))}.`;
  if (fits === null)
    return notMeasured.length === 0
      ? []
      : [`Measure first whether the heights bear that: ${named(notMeasured)}.${lift}`];
  if (!fits && tightest !== null)
    return [
      `The heights do not bear that: ${left(tightest.leftIn)} is left at the ${tightest.where}, and ${inches(moreIn ?? slows?.moreIn ?? 0)} is needed.`,
    ];
  return [
    tightest === null
      ? `No height here limits it.${lift}`
      : `That fits: ${left(tightest.leftIn)} is left at the tightest place, the ${tightest.where}.${lift}`,
  ];
}

/** What gives where the board does not fit, or there is none that would do. */
function insteadWords({ cure, above, below, coldF, constraints, meetsTable }: CureWordsInput): string[] {
  const out: string[] = [];
  if (cure.broken.length > 0)
    out.push(
      `What gives first: raise ${named(cure.broken.map(({ where, shortIn }) => `the ${where} by ${short(shortIn)}`))}.`,
    );
  if (below.kind === 'batts') {
    const most = meetsTable ? Math.floor(rBelowFor(coldF, above.winterR) ?? 0) : 0;
    out.push(
      most > 0
        ? `Or take batts out below the deck: over the board that is planned, ${rValue(most)} of them at most stays dry.`
        : 'Or take the batts out below the deck: over the board that is planned, none may stay.',
    );
    if (!constraints.some(({ id }) => id === 'no-spray-foam'))
      out.push('Or have closed-cell foam sprayed against the deck in place of the batts.');
  }
  return out;
}

const over = (kind: RetarderKind): string => (kind === 'none' ? '' : `, over ${retarderName[kind]}`);

/** The board that it takes, or that nothing is enough. */
function boardWords({ moreIn, retarder, aboveR, slows, drierRoom }: MoistureCure): string[] {
  if (moreIn !== null)
    return [
      `Lay ${inches(moreIn)} more board above the deck, everywhere${over(retarder)}: ${rValue(aboveR ?? 0)} at its thinnest in winter, cover board counted.`,
    ];
  const none = `${drierRoom === null ? `No board, no retarder and no rooms down to ${DRIEST_PCT} % humidity make` : 'No board and no retarder makes'} it dry out within a year here.`;
  if (slows === null) return [none];
  const board = slows.moreIn === 0 ? '' : ` and ${inches(slows.moreIn)} more board`;
  return [
    `${none} Slowest is a foil-faced retarder${board}: ${plainNumber(slows.leftGPerM2)} g per sq m gather in two years, more than ${wetAlarm.gPerM2} in about ${plainNumber(slows.years)} years. No sun on the roof is counted in that.`,
  ];
}

/** What to do against damp, the board and its heights first. Empty where a retarder alone cures it. */
export function cureWords(input: CureWordsInput): string[] {
  const { cure } = input;
  const { moreIn, drierRoom, fits } = cure;
  if (moreIn === 0) return [];
  const sure = moreIn !== null && fits === true;
  const dry =
    drierRoom === null
      ? []
      : [
          `Or keep the rooms at ${drierRoom.mostPct} % humidity or less all winter, at ${ROOM_F} F and by a meter${over(drierRoom.retarder)}.`,
        ];
  return [
    ...boardWords(cure),
    ...((moreIn ?? cure.slows?.moreIn ?? 0) === 0 ? [] : fitWords(cure)),
    ...(sure ? [] : insteadWords(input)),
    ...dry,
    ...(sure
      ? []
      : [
          `${moreIn === null && drierRoom === null ? 'A' : 'If that cannot be done, a'} building-science professional must decide before anything is ordered.`,
        ]),
  ];
}
