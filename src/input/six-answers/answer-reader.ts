import type { Field, ValueOf } from '../../units/fields.ts';
import { parseMeasure, printMeasure } from '../../units/parse-measure.ts';
import type { Reading } from '../../units/reading.ts';
import { type InputProblem, measureProblem, shown } from '../problems.ts';
import type { AnswerField, Question, SixAnswers, Supposed, Understood } from './answers.ts';
import {
  belowChoices,
  leavesNowChoices,
  lowestKindChoices,
  mayOpenChoices,
  pondLastsChoices,
  pondPlaceChoices,
  sideChoices,
  sideKindChoices,
} from './choices.ts';

const choicesOf: Partial<Record<AnswerField, readonly [Question, Readonly<Record<string, string>>]>> = {
  leavesNow: [2, leavesNowChoices],
  scupperSide: [2, sideChoices],
  lowSideKind: [2, sideKindChoices],
  rightSideKind: [2, sideKindChoices],
  backSideKind: [2, sideKindChoices],
  leftSideKind: [2, sideKindChoices],
  lowSideMayOpen: [2, mayOpenChoices],
  rightSideMayOpen: [2, mayOpenChoices],
  backSideMayOpen: [2, mayOpenChoices],
  leftSideMayOpen: [2, mayOpenChoices],
  pondWhere: [3, pondPlaceChoices],
  pondLasts: [3, pondLastsChoices],
  lowestKind: [4, lowestKindChoices],
  lowestSide: [4, sideChoices],
  below: [5, belowChoices],
  deckSeen: [5, mayOpenChoices],
};

/** Reads the answers one question at a time; keeps what was understood, supposed and wrong. */
export class AnswerReader {
  readonly understood: Understood[] = [];
  readonly supposed: Supposed[] = [];
  readonly problems: (InputProblem & { question: Question })[] = [];
  readonly answers: SixAnswers;

  constructor(answers: SixAnswers) {
    this.answers = answers;
  }

  say(question: Question, field: AnswerField, text: string): void {
    this.understood.push({ question, field, typed: this.answers[field], text });
  }

  suppose(question: Question, field: AnswerField, text: string, findOut: string): void {
    this.supposed.push({ question, field, text, findOut });
  }

  problem(
    question: Question,
    path: AnswerField,
    code: InputProblem['code'],
    message: string,
    more: Partial<InputProblem>,
  ): void {
    this.problems.push({ question, path, code, message, ...more });
  }

  /** A typed measurement; null for "not known", for nothing typed, and for what cannot be used (then with a problem). */
  measure<F extends Field>(question: Question, field: AnswerField, kind: F): ValueOf<F> | null {
    const typed = this.answers[field].trim();
    if (typed === '') return null;
    const reading: Reading<ValueOf<F>> = parseMeasure(typed, kind);
    if (reading.action === 'unknown') {
      this.say(question, field, 'not known');
      return null;
    }
    if (reading.action !== 'accept') {
      this.problems.push({ question, ...measureProblem(reading, shown(typed), field) });
      return null;
    }
    const printed = printMeasure(reading.value, kind);
    this.say(question, field, reading.approximate ? `about ${printed}` : printed);
    return reading.value;
  }

  /** A problem for every answer that is none of its choices. */
  checkChoices(): void {
    for (const [field, [question, choices]] of Object.entries(choicesOf) as [
      AnswerField,
      [Question, Record<string, string>],
    ][]) {
      if (Object.hasOwn(choices, this.answers[field])) continue;
      const instead = `one of ${Object.keys(choices).join(', ')}`;
      this.problem(question, field, 'choice', `"${this.answers[field]}" is not a choice here.`, {
        got: this.answers[field],
        instead,
      });
    }
  }
}
