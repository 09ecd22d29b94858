import { z } from 'zod';
import { type Field, fields } from '../units/fields.ts';

/**
 * Strict group of keys. The error text carries the known keys, so that a mistyped one can be answered with the
 * nearest that exists (see zod-problems.ts).
 */
export function group<T extends z.core.$ZodLooseShape>(shape: T) {
  return z.strictObject(shape, {
    error: (issue) => (issue.code === 'unrecognized_keys' ? Object.keys(shape).join('|') : undefined),
  });
}

/** One word of a list of words. */
export function choice<T extends string>(words: Readonly<Record<T, string>>) {
  const meaning = Object.entries(words).map(([word, text]) => `${word}: ${text}`);
  return z.enum(Object.keys(words) as T[]).describe(meaning.join('; '));
}

function measureSchema(field: Field) {
  const { words, example } = fields[field];
  return z
    .union([z.number(), z.string()], { error: `a number in ${words}, or text such as ${example}` })
    .meta({ id: field, description: `A number in ${words}, or text as people write it: ${example}.` });
}

const sizePair = (field: 'pair' | 'plan') => {
  const { words, example } = fields[field];
  const single = measures[field === 'pair' ? 'thickness' : 'length'];
  return z
    .union([z.tuple([single, single]), z.string()], {
      error: `two sizes in ${words}: [8, 4], or text such as ${example}`,
    })
    .meta({ id: field, description: `Two sizes in ${words}: [first, second], or text: ${example}.` });
};

type Single = Exclude<Field, 'pair' | 'plan'>;

/** One schema per kind of measurement: structure only; the text is read in read-measures.ts. */
export const measures = Object.fromEntries(
  (Object.keys(fields) as Field[])
    .filter((field) => field !== 'pair' && field !== 'plan')
    .map((field) => [field, measureSchema(field)]),
) as Record<Single, ReturnType<typeof measureSchema>>;

export const pairSchema = sizePair('pair');
export const planSchema = sizePair('plan');

const place = 'a place is two lengths in feet, east and north of the origin: [12, 7.5]';

export const pointSchema = z
  .tuple([measures.coordinate, measures.coordinate], { error: place })
  .meta({ id: 'point', description: 'A place in plan: [x east, y north].' });

export const ringSchema = z
  .array(pointSchema, { error: 'a list of corners in order: [[0, 0], [30, 0], [30, 24], [0, 24]]' })
  .meta({ id: 'ring', description: 'Corners in order; the first is not repeated at the end.' });

/** Height at both ends of an edge entry: one value, or [start, end]. */
export const endHeightsSchema = z
  .union([measures.height, z.tuple([measures.height, measures.height])], {
    error: 'a height in inches, or the heights at the two ends: [10, 12]',
  })
  .meta({ id: 'endHeights', description: 'Height along the edge entry: one value, or [start, end].' });

export const sideSchema = z
  .int({ error: 'a side number: 0 runs from the first corner to the second' })
  .min(0)
  .meta({ id: 'side', description: 'Side i runs from corner i to corner i + 1, counted from 0.' });
