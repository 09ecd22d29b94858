import type { Judged, VerdictInput } from './judged.ts';
import { codeAlone, failed, linedWords, openNotes, sentences, yearReasons } from './judged.ts';

const LEAKS = 'Fix leaks at once: under foam a leak shows late.';
const CLOSE = 'Close the vents: over foam that touches the deck there is nothing to vent.';
const TOUCHES = 'Whether the foam touches the deck everywhere, without gaps or shrinkage.';

/** Foam against the underside of the deck: no air reaches the cold side, vapor may. */
export function sprayed(input: VerdictInput): Judged {
  const { built, tests, cure, sheetTodo } = input;
  const { below } = built;
  const fails = failed(tests);
  const open = below.vented === 'yes';
  const todo = [...sheetTodo, ...(open ? [CLOSE] : []), LEAKS];
  const notKnown = [...openNotes(tests), TOUCHES];
  if (openNotes(tests).length > 0)
    return {
      verdict: 'not-known',
      answer: `No room air gets past ${below.what} against the deck; how much vapor does cannot be said before the winter here is known.`,
      reasons: sentences(fails),
      todo,
      notKnown,
    };
  if (fails.length > 0 && cure?.moreIn !== 0)
    return {
      verdict: 'at-risk',
      answer: `No room air gets past ${below.what} against the deck, but more vapor does in a year than the roof should hold under ${built.above.what}.`,
      reasons: [...sentences(fails), ...yearReasons(input)],
      todo: [...input.cureTodo, ...todo],
      notKnown,
    };
  const vapor = codeAlone(tests)
    ? ' and by our figures little vapor, but in so cold a place the code asks it to be tighter'
    : fails.length === 0
      ? ' and little vapor'
      : '';
  return {
    verdict: fails.length > 0 || open || built.kept !== null ? 'safe-if' : 'safe',
    answer: `No room air gets past ${below.what} against the deck${vapor === '' ? '' : `,${vapor}`}${cure === null ? '' : linedWords(cure)}.`,
    reasons: [
      'The code allows foam that stops air, in direct contact with the underside of the deck, without board above.',
      ...sentences(fails),
      ...yearReasons(input),
    ],
    todo,
    notKnown,
  };
}
