import { lowSlopeVenting } from '../../../reference/vapor.ts';
import type { Judged, VerdictInput } from './judged.ts';
import { codeAlone, failed, linedWords, openNotes, sentences, yearReasons } from './judged.ts';

const CLOSE = 'Close every vent of this flat part: with open vents the board above the deck loses its use.';
const CEILING = 'No vapor retarder of class I on the ceiling side: the roof must dry that way.';
const LEAVE =
  'Or leave the vents as they are, with a clear inch over the batts and openings at both ends: the table does not bind such a roof, and the board above then counts for little.';
const NO_AIR = `Air through the vents is not counted: without ${lowSlopeVenting.heightFt} ft between low and high end it moves by wind alone.`;

/** By our figures dry, by a table of the code short of board: told apart. */
function shortOfTable(input: VerdictInput, notKnown: readonly string[]): Judged {
  const { built, tests, cureTodo, sheetTodo } = input;
  const vented = built.below.vented === 'yes';
  const [table] = failed(tests);
  const binds = vented ? 'It binds once the vents are closed' : 'It is for roofs without vents';
  return {
    verdict: 'safe-if',
    answer: `By our figures the deck stays warm and dry over ${built.below.what}. The table of the code asks for ${table.asked} of board above it, and ${table.found} is there. ${binds}.`,
    reasons: [...sentences(tests), ...yearReasons(input)],
    todo: [
      ...(vented ? [`${CLOSE} The table binds then.`, LEAVE] : built.below.vented === 'no' ? [] : [CLOSE]),
      ...cureTodo,
      ...sheetTodo,
      CEILING,
    ],
    notKnown,
  };
}

/** Batts below the deck, which air passes through. */
export function batts(input: VerdictInput): Judged {
  const { built, tests, cure, sheetTodo } = input;
  const fails = failed(tests);
  const { vented } = built.below;
  const unknown = openNotes(tests);
  const notKnown = vented === 'unknown' ? ['Whether outside air passes over the insulation.'] : [];
  const close = vented === 'no' ? [] : [CLOSE];
  const code = codeAlone(tests);
  if (code && cure !== null && cure.moreIn !== 0) return shortOfTable(input, notKnown);
  if (fails.length > 0 && !code && cure?.moreIn !== 0)
    return {
      verdict: 'at-risk',
      answer: `Room air passes through ${built.below.what} and can turn to water on the cold deck: ${built.above.what} is not enough.`,
      reasons: [...sentences(fails), ...(vented === 'yes' ? [NO_AIR] : [])],
      todo: [...input.cureTodo, ...close, ...sheetTodo],
      notKnown,
    };
  if (unknown.length > 0)
    return {
      verdict: 'not-known',
      answer: 'Whether the deck stays warm enough over the insulation below it cannot be said yet.',
      reasons: sentences(fails),
      todo: sheetTodo,
      notKnown: unknown,
    };
  const sure = vented === 'no' && fails.length === 0 && built.kept === null;
  return {
    verdict: sure ? 'safe' : 'safe-if',
    answer: `The board above the deck keeps it warm enough over ${built.below.what}${vented === 'no' ? '' : ', once no outside air passes over that'}${cure === null ? '' : linedWords(cure)}.`,
    reasons: [...sentences(tests), ...(fails.length === 0 ? [] : yearReasons(input))],
    todo: [...close, ...sheetTodo, CEILING],
    notKnown,
  };
}
