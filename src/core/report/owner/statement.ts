import { plainNumber } from '../../../units/print.ts';
import type { Assessment } from '../types.ts';

/** Places of the result page that a statement leads to: id of the heading and its words. */
export const answerPlaces = {
  'answer-stops': 'Answer',
  'answer-scope': 'What to do with the old roof',
  'answer-found': 'What was found',
  'answer-water': 'Standing water',
  'answer-heights': 'Heights decide first',
  'answer-layouts': 'Layouts',
  'answer-insulation': 'Insulation',
  'answer-outlets': 'Ways out for the water',
  'answer-covering': 'Covering',
  'answer-heat': 'A hot day on this roof',
  'answer-damp': 'Damp inside the roof',
  'answer-energy': 'Energy and cool-roof rules',
  'answer-to-do': 'To do and to know',
  'answer-materials': 'Materials',
  'answer-cautions': 'Cautions',
  'answer-assumed': 'What was assumed',
} as const;

export type AnswerPlace = keyof typeof answerPlaces;

/** How one value comes out of the values at its paths. */
export type How = 'is' | 'sum' | 'greatest' | 'least' | 'count';

/** The computed value behind a statement: where it stands in the answer, and how it is printed. */
export interface Because {
  label: string;
  how: How;
  /** Dotted paths from the answer: `existing.ponds.0.greatestDepthIn`. */
  paths: readonly string[];
  /** As the words print it. */
  shown: string;
  place: AnswerPlace;
}

/** A statement of the owner's papers with every value that it stands on; none = it says nothing about this roof. */
export interface OwnerStatement {
  text: string;
  because: readonly Because[];
}

/** What stands at a dotted path of the answer; undefined where the path leads nowhere. */
export const valueAt = (assessment: Assessment, path: string): unknown =>
  path
    .split('.')
    .reduce<unknown>(
      (value, key) =>
        typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>)[key] : undefined,
      assessment,
    );

const folds: Readonly<Record<Exclude<How, 'count'>, (values: readonly number[]) => number>> = {
  is: ([only]) => only,
  sum: (values) => values.reduce((total, value) => total + value, 0),
  greatest: (values) => Math.max(...values),
  least: (values) => Math.min(...values),
};

/** Takes values out of an answer by their paths, so that no figure in the words can be anything else. */
export interface Taker {
  /** A number, printed. */
  figure: (
    place: AnswerPlace,
    label: string,
    how: Exclude<How, 'count'>,
    paths: readonly string[],
    print: (value: number) => string,
  ) => Because;
  /** How many there are. */
  count: (place: AnswerPlace, label: string, paths: readonly string[]) => Because;
  /** Words of the answer, whole or a part of them. */
  quote: (place: AnswerPlace, label: string, path: string, part?: (text: string) => string) => Because;
}

export function takerOf(assessment: Assessment): Taker {
  return {
    figure: (place, label, how, paths, print) => {
      const values = paths.map((path) => Number(valueAt(assessment, path)));
      return { place, label, how, paths, shown: print(folds[how](values)) };
    },
    count: (place, label, paths) => ({ place, label, how: 'count', paths, shown: plainNumber(paths.length) }),
    quote: (place, label, path, part = (text) => text) => ({
      place,
      label,
      how: 'is',
      paths: [path],
      shown: part(String(valueAt(assessment, path))),
    }),
  };
}

/** A statement as a template; every value in it brings where it comes from. */
export function say(words: TemplateStringsArray, ...values: readonly (Because | string)[]): OwnerStatement {
  const text = words.reduce((said, word, i) => {
    const value = values[i - 1];
    return `${said}${typeof value === 'string' ? value : (value?.shown ?? '')}${word}`;
  });
  return { text, because: values.filter((value) => typeof value !== 'string') };
}

/** The same statement, standing on values that its words do not print. */
export const standingOn = (statement: OwnerStatement, ...because: readonly Because[]): OwnerStatement => ({
  text: statement.text,
  because: [...statement.because, ...because],
});

/** Two statements as one. */
export const alsoSaying = (first: OwnerStatement, second: OwnerStatement): OwnerStatement => ({
  text: `${first.text}${second.text}`,
  because: [...first.because, ...second.because],
});

export const noun = ({ paths }: Because, one: string, many = `${one}s`): string => (paths.length === 1 ? one : many);
