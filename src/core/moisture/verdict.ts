import { rValue } from '../../units/print.ts';
import type { Below } from '../roof.ts';
import type { Judged, VerdictInput } from './judged.ts';
import { allAbove } from './verdict-above.ts';
import { batts } from './verdict-batts.ts';
import { sprayed } from './verdict-foam.ts';

const LOOK = 'Take down a ceiling lamp, or cut a small hole, and look what lies between ceiling and deck.';

function noRoom(room: Below): Judged {
  const answer =
    room === 'attic'
      ? 'An attic lies below: its own insulation and vents decide, not this roof.'
      : 'Nobody heats the space below, so no damp room air rises into this roof.';
  return { verdict: 'not-asked', answer, reasons: [], todo: [], notKnown: [] };
}

function nothingKnown({ mostBelowR, built, tests, sheetTodo }: VerdictInput): Judged {
  const { above } = built;
  const most =
    mostBelowR === null
      ? ''
      : mostBelowR === 0
        ? ` By our figures ${above.what} is not enough over any batts.`
        : ` By our figures ${above.what} is enough over ${rValue(mostBelowR)} of batts at most.`;
  const table = tests.find(({ id }) => id === 'table-foam');
  return {
    verdict: 'not-known',
    answer: `What lies between the ceiling and the deck is not known, and it decides.${most}`,
    reasons:
      table === undefined || table.asked === 'not known'
        ? []
        : [`If batts lie there without vents, the table of the code asks for ${table.asked} of board above the deck.`],
    todo: [LOOK, ...sheetTodo],
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
