import type { InputProblem } from '../../input/problems.ts';
import { problemSentence } from './problems.ts';
import type { FieldSpec } from './spec.ts';

/** Where a problem stands on a form. */
export interface FormPlace {
  /** Its box; null = a whole group or entry. */
  box: FieldSpec | null;
  /** What the box holds. */
  text: string;
  /** Names on the form of the file's keys that its message may speak of. */
  labels: ReadonlyMap<string, string>;
}

/** Codes whose message repeats what was typed: nothing in it is taken for a key of the file. */
const repeats: ReadonlySet<InputProblem['code']> = new Set(['measure', 'ask', 'choice', 'type', 'range']);

const lists: ReadonlySet<FieldSpec['kind']> = new Set(['choice', 'side', 'yes-no']);

/** Lists and groups of the file as boxes hold them: "12, 7.5" for [12, 7.5], "side 0" for { "side": 0 }. */
const asTyped = (text: string): string =>
  text
    .replace(/\{ ([^{}]*) \}/g, (_, inner: string) => inner.replace(/"(\w+)": /g, '$1 '))
    .replace(/\[\[(.*?)\]\]/g, (_, inner: string) => inner.split('], [').join('; '))
    .replace(/\[([^[\]]*)\]/g, '$1');

/** Keys of the file in quotes, or of several words run together, as the boxes are called. */
const asLabelled = (text: string, labels: FormPlace['labels']): string =>
  text.replace(/"(\w+)"|\b([a-z]+[A-Z]\w*)\b/g, (whole, quoted?: string, bare?: string) => {
    const label = labels.get(quoted ?? bare ?? '');
    return label === undefined ? whole : `“${label}”`;
  });

/** The last key of a path, and its name on the form without the unit. */
export const labelled = (path: string, label: string): [string, string] => [
  path.slice(path.lastIndexOf('.') + 1),
  label.replace(/ \([^()]*\)$/, ''),
];

/** A problem in the words of the form where it stands: its boxes by their labels, and no brackets of the file. */
export function formSentence(problem: InputProblem, { box, text, labels }: FormPlace): string {
  if (box !== null && problem.code === 'unknown-key') {
    return problemSentence({
      ...problem,
      message: 'it does not go with what was chosen for this entry.',
      instead: 'nothing in this box',
    });
  }
  const { code, message, instead, proposals } = problem;
  const fits = (words: string): string => asLabelled(asTyped(words), labels);
  return problemSentence({
    ...problem,
    message:
      code === 'type' && box !== null
        ? `"${text}" does not fit here.`
        : repeats.has(code)
          ? message
          : asLabelled(message, labels),
    instead:
      instead === undefined ? undefined : box !== null && lists.has(box.kind) ? 'one of the list' : fits(instead),
    proposals: proposals?.map((offer) => ({ ...offer, text: asTyped(offer.text) })),
  });
}
