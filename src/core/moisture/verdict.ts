import { plainNumber, rValue } from '../../units/print.ts';
import type { MoistureCure, MoistureReport, MoistureTest } from '../report/types.ts';
import type { Below } from '../roof.ts';
import type { BuildUp } from './build-up.ts';
import { waterWords } from './tests.ts';

export interface VerdictInput {
  built: BuildUp;
  room: Below;
  tests: readonly MoistureTest[];
  balance: NonNullable<MoistureReport['balance']> | null;
  mostBelowR: number | null;
  climateZone: string | null;
  cure: MoistureCure | null;
  /** What cures it, in words. */
  cureTodo: readonly string[];
  /** What goes on the deck under the boards, in words. */
  sheetTodo: readonly string[];
}

export type Judged = Pick<MoistureReport, 'verdict' | 'answer' | 'reasons' | 'todo' | 'notKnown'>;

const LOOK = 'Take down a ceiling lamp, or cut a small hole, and look what lies between ceiling and deck.';
const CLOSE = 'Close every vent of this flat part: with open vents the board above the deck loses its use.';

const failed = (tests: readonly MoistureTest[]): readonly MoistureTest[] =>
  tests.filter(({ state }) => state === 'fails');

const sentenceOf = ({ title, asked, found }: MoistureTest): string => `${title}: ${asked} asked for, ${found} there.`;

function noRoom(room: Below): Judged {
  const answer =
    room === 'attic'
      ? 'An attic lies below: its own insulation and vents decide, not this roof.'
      : 'Nobody heats the space below, so no damp room air rises into this roof.';
  return { verdict: 'not-asked', answer, reasons: [], todo: [], notKnown: [] };
}

/** What passes through in a year, and what a retarder makes of it. */
function yearReasons({ balance, cure }: VerdictInput): string[] {
  if (balance === null || balance.peakGPerM2 < 1) return [];
  const { withRetarder } = balance;
  return [
    `What passes through in winter, ${plainNumber(balance.peakGPerM2)} g per sq m at most, ${balance.leftGPerM2 > 1 ? 'does not dry out in a summer' : 'dries out again in summer'}.`,
    ...(cure === null ? [] : [`Computed again with a vapor retarder on the deck: ${waterWords(withRetarder)}.`]),
  ];
}

/** All insulation above the deck, or none at all. */
function allAbove(input: VerdictInput): Judged {
  const { tests, built, cure } = input;
  const fails = failed(tests);
  if (fails.length > 0 && cure?.moreIn !== 0) {
    const wet = fails.some(({ id }) => id === 'deck-plane');
    return {
      verdict: 'at-risk',
      answer: wet
        ? `In winter the underside of the deck gets cold enough for room air to turn to water on it: ${built.above.what} is too little.`
        : `More water passes into the roof in winter than it should hold, and a vapor retarder alone does not cure it: ${built.above.what} is too little for rooms so damp.`,
      reasons: [...fails.map(sentenceOf), ...yearReasons(input)],
      todo: [...input.cureTodo, ...input.sheetTodo],
      notKnown: [],
    };
  }
  if (tests.some(({ id, state }) => id === 'deck-plane' && state === 'not-known'))
    return {
      verdict: 'not-known',
      answer: 'All insulation lies above the deck, which is the safe place; the winter here is not known yet.',
      reasons: [],
      todo: input.sheetTodo,
      notKnown: ['Town or climate zone: the winter is not known without it.'],
    };
  const retarder = fails.length > 0;
  return {
    verdict: retarder ? 'safe-if' : 'safe',
    answer: `The deck stays about as warm as the room, because all insulation lies above it${retarder ? '; a vapor retarder on the deck keeps room damp out of the boards' : ''}.`,
    reasons: [
      'There is no hidden space below the deck where water could gather, and a leak would show.',
      ...yearReasons(input),
    ],
    todo: input.sheetTodo,
    notKnown: [],
  };
}

function sprayed({ built, climateZone }: VerdictInput): Judged {
  const closed = built.below.kind === 'closed-cell';
  const cold = climateZone === null || /^[5678]/.test(climateZone);
  const open = built.below.vented === 'yes';
  const base = closed
    ? 'Closed-cell foam lies against the deck, so no room air reaches the cold side.'
    : 'Open-cell foam stops air but lets vapor through.';
  const todo = [
    ...(closed || !cold ? [] : ['Coat the foam on its room side as a vapor retarder of class II.']),
    ...(open ? ['Close the vents: over foam that touches the deck there is nothing to vent.'] : []),
    'Fix leaks at once: under foam a leak shows late.',
  ];
  return {
    verdict: (closed || !cold) && !open ? 'safe' : 'safe-if',
    answer: `${base}${closed ? ' Room damp is kept off the deck.' : ' In a cold place it needs a coating on the room side.'}`,
    reasons: [
      'The code allows foam that stops air, in direct contact with the underside of the deck, without board above.',
    ],
    todo,
    notKnown: closed ? ['Whether the foam touches the deck everywhere, without gaps or shrinkage.'] : [],
  };
}

function batts(input: VerdictInput): Judged {
  const { built, tests, cure, sheetTodo } = input;
  const fails = failed(tests);
  const { vented } = built.below;
  const unknown = tests.filter(({ state }) => state === 'not-known');
  const notKnown = vented === 'unknown' ? ['Whether outside air passes over the insulation.'] : [];
  const close = vented === 'no' ? [] : [CLOSE];
  if (fails.length > 0 && cure?.moreIn !== 0)
    return {
      verdict: 'at-risk',
      answer: `Room air passes through ${built.below.what} and can turn to water on the cold deck: ${built.above.what} is not enough.`,
      reasons: fails.map(sentenceOf),
      todo: [...input.cureTodo, ...close, ...sheetTodo],
      notKnown,
    };
  if (unknown.length > 0)
    return {
      verdict: 'not-known',
      answer: 'Whether the deck stays warm enough over the insulation below it cannot be said yet.',
      reasons: [],
      todo: sheetTodo,
      notKnown: unknown.map(({ note }) => note).filter((note, i, all) => all.indexOf(note) === i),
    };
  return {
    verdict: vented === 'no' && fails.length === 0 ? 'safe' : 'safe-if',
    answer: `The board above the deck keeps it warm enough over ${built.below.what}${vented === 'no' ? '' : ', once no outside air passes over that'}${fails.length === 0 ? '' : '; a vapor retarder on the deck keeps room damp out of the boards'}.`,
    reasons: [...tests.map(sentenceOf), ...(fails.length === 0 ? [] : yearReasons(input))],
    todo: [...close, ...sheetTodo, 'No vapor retarder of class I on the ceiling side: the roof must dry that way.'],
    notKnown,
  };
}

function nothingKnown({ mostBelowR, built, tests }: VerdictInput): Judged {
  const most =
    mostBelowR === null
      ? ''
      : ` ${built.above.what.charAt(0).toUpperCase()}${built.above.what.slice(1)} keeps the deck warm enough over at most ${rValue(Math.floor(mostBelowR))} below it.`;
  const table = tests.find(({ id }) => id === 'table-foam');
  return {
    verdict: 'not-known',
    answer: `What lies between the ceiling and the deck is not known, and it decides.${most}`,
    reasons:
      table === undefined || table.asked === 'not known'
        ? []
        : [`If batts lie there, the code asks for ${table.asked} of board above the deck.`],
    todo: [LOOK],
    notKnown: ['Kind and thickness of the insulation below the deck, and whether it is vented.'],
  };
}

/** What the tests come to, in plain words. */
export function moistureVerdict(input: VerdictInput): Judged {
  if (!input.room.startsWith('living')) return noRoom(input.room);
  switch (input.built.below.kind) {
    case null:
      return nothingKnown(input);
    case 'none':
      return allAbove(input);
    case 'batts':
      return batts(input);
    default:
      return sprayed(input);
  }
}
