import type { Judged, VerdictInput } from './judged.ts';
import { failed, linedWords, sentences, yearReasons } from './judged.ts';

/** All insulation above the deck, or none at all. */
export function allAbove(input: VerdictInput): Judged {
  const { tests, built, cure, sheetTodo } = input;
  const fails = failed(tests);
  if (fails.length > 0 && cure?.moreIn !== 0) {
    const wet = fails.some(({ id }) => id === 'deck-plane');
    return {
      verdict: 'at-risk',
      answer: wet
        ? `In winter the underside of the deck gets cold enough for room air to turn to water on it: ${built.above.what} is too little.`
        : `More water passes into the roof in winter than it should hold, and no sheet alone cures it: ${built.above.what} is too little for the rooms below.`,
      reasons: [...sentences(fails), ...yearReasons(input)],
      todo: [...input.cureTodo, ...sheetTodo],
      notKnown: [],
    };
  }
  if (tests.some(({ id, state }) => id === 'deck-plane' && state === 'not-known'))
    return {
      verdict: 'not-known',
      answer: 'All insulation lies above the deck, which is the safe place; the winter here is not known yet.',
      reasons: [],
      todo: sheetTodo,
      notKnown: ['Town or climate zone: the winter is not known without it.'],
    };
  return {
    verdict: fails.length > 0 || built.kept !== null ? 'safe-if' : 'safe',
    answer: `The deck stays about as warm as the room, because all insulation lies above it${cure === null ? '' : linedWords(cure)}.`,
    reasons: [
      'There is no hidden space below the deck where water could gather, and a leak would show.',
      ...yearReasons(input),
    ],
    todo: sheetTodo,
    notKnown: [],
  };
}
