import { wetAlarm } from '../../../reference/vapor.ts';
import { inches, plainNumber, rValue } from '../../units/print.ts';
import type { Lining, MoistureCure, MoistureReport, StatedConstraint } from '../report/types.ts';
import { DRIEST_PCT, MOST_IN } from './cure.ts';
import { DECK } from './deck-sheet.ts';
import { liningWords } from './lining.ts';
import { ROOM_F } from './room.ts';

export interface CureWordsInput {
  cure: MoistureCure;
  below: MoistureReport['below'];
  constraints: readonly StatedConstraint[];
  /** Nothing fails but a table of the code. */
  codeAlone: boolean;
  /** "the deck" */
  ground: string;
  /** Of the rooms as they are: no drier ones are tried where they are the driest. */
  humidityPct: number;
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
function fitWords({ fits, tightest, raised, notMeasured, moreIn, slows, planned }: MoistureCure): string[] {
  const lift =
    raised.length === 0
      ? ''
      : ` Raise with it: ${named(raised.map(({ where, byIn }) => `${where} by ${short(byIn)}`))}.`;
  const needed = inches(moreIn ?? slows?.moreIn ?? 0);
  if (fits === null) {
    if (notMeasured.length > 0) return [`Measure first whether the heights bear that: ${named(notMeasured)}.${lift}`];
    if (planned || tightest === null) return [];
    return [`There is room for ${left(tightest.leftIn)} at the ${tightest.where}, and the taper comes on top.`];
  }
  if (!fits && tightest !== null)
    return [
      `The heights do not bear that: ${planned ? `${left(tightest.leftIn)} is left` : `there is room for ${left(tightest.leftIn)}`} at the ${tightest.where}, and ${needed} is needed.`,
    ];
  return [
    tightest === null
      ? `No height here limits it.${lift}`
      : `That fits: ${left(tightest.leftIn)} is left at the tightest place, the ${tightest.where}.${lift}`,
  ];
}

const over = (lining: Lining, ground: string): string => {
  const words = liningWords(lining, ground);
  return words === null ? '' : `, with ${words}`;
};

/** Whether fewer batts would do. */
function fewerWords({ cure: { fewerBatts, planned }, ground }: CureWordsInput, enough: string): string {
  if (fewerBatts === null)
    return `Taking batts out does not cure it: ${planned ? 'the board that is planned' : 'no board at all'} is too little even without them.`;
  const { mostR } = fewerBatts;
  const what = mostR > 0 ? `batts out below the deck until ${rValue(mostR)} is left` : 'all batts out below the deck';
  return `Or take ${what}: ${enough}${over(fewerBatts, ground)}.`;
}

const enoughWords = (planned: boolean): string =>
  planned ? 'the board that is planned is enough then' : 'no board is needed then';

/** The old roof off down to the deck, where that takes less board than to let it stay. */
function tornWords({ moreIn: staying, tornOff, planned }: MoistureCure): string[] {
  if (tornOff === null || (staying !== null && staying <= tornOff.moreIn)) return [];
  const { moreIn } = tornOff;
  const board = `it takes ${inches(moreIn)} ${planned ? 'more board' : 'of board'} then`;
  return [
    `Or take the old roof off down to the deck: ${moreIn === 0 ? enoughWords(planned) : board}${over(tornOff, DECK)}. Plan that roof before the order: the heights are others then.`,
  ];
}

/** What gives where the board does not fit, or there is none that would do. */
function insteadWords(input: CureWordsInput): string[] {
  const { cure, below, constraints, ground } = input;
  const { broken, sprayed, planned } = cure;
  const enough = enoughWords(planned);
  return [
    ...(broken.length === 0
      ? []
      : [`What gives first: raise ${named(broken.map(({ where, shortIn }) => `the ${where} by ${short(shortIn)}`))}.`]),
    ...tornWords(cure),
    ...(below.kind === 'batts' ? [fewerWords(input, enough)] : []),
    ...(sprayed === null || constraints.some(({ id }) => id === 'no-spray-foam')
      ? []
      : [
          `Or have closed-cell foam sprayed against the deck in place of the batts until the space is full: ${enough}${over(sprayed, ground)}.`,
        ]),
  ];
}

/** The board that it takes, or that nothing is enough. */
function boardWords({ cure, ground, codeAlone, humidityPct }: CureWordsInput): string[] {
  const { moreIn, aboveR, slows, drierRoom, planned } = cure;
  if (moreIn !== null) {
    const counted = ground === DECK ? '' : ' and old boards';
    const r = `${rValue(aboveR ?? 0)} at its thinnest in winter${planned ? `, cover board${counted} counted` : ''}`;
    const lay = planned
      ? `Lay ${inches(moreIn)} more board above the deck, everywhere`
      : `No board is planned above the deck. It takes ${inches(moreIn)} of it, everywhere`;
    return [
      `${codeAlone ? `For the table: ${lay.charAt(0).toLowerCase()}${lay.slice(1)}` : lay}${over(cure, ground)}: ${r}.`,
    ];
  }
  const tried = `No board up to ${inches(MOST_IN)}, with or without a vapor retarder on ${ground},`;
  const drier = drierRoom === null && humidityPct > DRIEST_PCT;
  const none = drier
    ? `${tried} and no rooms down to ${DRIEST_PCT} % humidity make it stay dry here.`
    : `${tried} makes it stay dry here.`;
  if (slows === null) return [none];
  const board = slows.moreIn === 0 ? '' : ` and ${inches(slows.moreIn)} ${planned ? 'more board' : 'of board'}`;
  return [
    `${none} Slowest is ${liningWords(slows, ground) ?? 'the roof as it is'}${board}: ${plainNumber(slows.leftGPerM2)} g per sq m gather in two years, more than ${wetAlarm.gPerM2} in about ${plainNumber(Math.floor(slows.years))} years. No sun on the roof is counted in that.`,
  ];
}

const NOTE_B =
  'Or show the building office the winter temperature of the deck below: note b of Table R806.5 takes it in place of the table.';

/** What to do against damp, the board and its heights first. Empty where a lining alone cures it. */
export function cureWords(input: CureWordsInput): string[] {
  const { cure, codeAlone, ground } = input;
  const { moreIn, drierRoom, fits } = cure;
  if (moreIn === 0) return [];
  const told = [...boardWords(input), ...((moreIn ?? cure.slows?.moreIn ?? 0) === 0 ? [] : fitWords(cure))];
  if (codeAlone) return [...told, NOTE_B];
  if (moreIn !== null && fits === true) return drierOf(drierRoom, [...told, ...tornWords(cure)], ground);
  return [
    ...drierOf(drierRoom, [...told, ...insteadWords(input)], ground),
    `${moreIn === null && drierRoom === null && cure.tornOff === null ? 'A' : 'If that cannot be done, a'} building-science professional must decide before anything is ordered.`,
  ];
}

const drierOf = (room: MoistureCure['drierRoom'], told: readonly string[], ground: string): string[] =>
  room === null
    ? [...told]
    : [
        ...told,
        `Or keep the rooms at ${room.mostPct} % humidity or less all winter, at ${ROOM_F} F and by a meter${over(room, ground)}.`,
      ];
