import { fields, type PairField } from './fields.ts';
import { parseLength } from './length.ts';
import { pair, plan } from './print.ts';
import { accept, ask, type Reading, reject } from './reading.ts';

type Pair = readonly [number, number];

/** Names of the thing itself, which add nothing to its size. */
const things = /\b(?:scupper|opening|hole|downspout|leader|section|roof|area)s?\b/g;
const heightWord = /\b(?:high|height|tall|h)\b\.?/;
const widthWord = /\b(?:wide|width|w|long|deep)\b\.?/;

const trailingUnit = /(feet|foot|ft|'|inches|inch|in|"|mm|cm|m)\.?$/;

/** Two sizes: width x height of an opening (inches) or length x depth of a plan (feet), from tidied text. */
export function parsePair(text: string, field: PairField): Reading<Pair> {
  const { unit, example } = fields[field];
  const single = field === 'pair' ? 'thickness' : 'length';
  const print = field === 'pair' ? pair : plan;
  const parts = text.replace(things, '').split(/ ?(?:x|\bby\b|\*) ?/);
  if (parts.length !== 2) return reject('it needs two sizes with "x" between them', example);
  const swapped = heightWord.test(parts[0]) || widthWord.test(parts[1]);
  const bare = parts.map((part) => part.replace(heightWord, '').replace(widthWord, '').trim());
  const units = bare.map((part) => trailingUnit.exec(part)?.[1] ?? null);
  const readings = bare.map((part, i) => {
    const lent = units[i] ?? units[1 - i];
    return parseLength(units[i] || !lent ? part : `${part} ${lent}`, single);
  });
  const values: number[] = [];
  for (const reading of readings) {
    if (reading.action === 'reject') return reject(reading.why, example);
    if (reading.action === 'unknown') return reading;
    const first = reading.action === 'ask' ? reading.proposals[0]?.value : reading.value;
    if (first === null || first === undefined) return reject('one of the two sizes is missing', example);
    values.push(first);
  }
  const value: Pair = swapped ? [values[1], values[0]] : [values[0], values[1]];
  const unclear = readings.some((reading) => reading.action === 'ask');
  if (unclear || units.every((written) => written === null)) {
    return ask(`two sizes, no unit: ${field === 'pair' ? 'width x height in inches' : 'length x depth in feet'}?`, [
      { value, unit, text: print(value) },
    ]);
  }
  return accept(value, unit, field === 'pair' && !swapped ? 'read as width x height' : null);
}

/** Product of a length x depth text in square feet; null where it is not one. */
export function areaOfPlan(text: string): number | null {
  const read = parsePair(text, 'plan');
  if (read.action === 'accept') return read.value[0] * read.value[1];
  const offered = read.action === 'ask' ? read.proposals[0]?.value : null;
  return offered ? offered[0] * offered[1] : null;
}
