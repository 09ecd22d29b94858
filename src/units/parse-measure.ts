import {
  type Field,
  fields,
  isLengthField,
  isPairField,
  type LengthField,
  type SingleField,
  type ValueOf,
} from './fields.ts';
import { parseLength, printLength } from './length.ts';
import { areaOfPlan, parsePair } from './pair.ts';
import { area, pair, plainNumber, plan, rain, rValue, slopeInWords } from './print.ts';
import { parseBearing, parseQuantity, parseRValue } from './quantity.ts';
import { ask, type Reading, type Rejected, reject } from './reading.ts';
import { parsePitch, parseSlope } from './slope.ts';
import { numerals, saysNotKnown, tidy, withoutApproximation } from './tidy.ts';

/** Two statements of one size may differ by rounding of the second unit, not by more. */
const PAIR_AGREES = 0.02;
const LONGEST_TEXT = 200;

/** A value in its field's unit as a reader would write it; `parseMeasure` accepts this text again. */
export function printMeasure<F extends Field>(value: ValueOf<F>, field: F): string {
  if (isPairField(field)) return (field === 'pair' ? pair : plan)(value as ValueOf<'pair'>);
  const single = value as number;
  if (isLengthField(field)) return printLength(single, field);
  switch (field as Exclude<SingleField, LengthField>) {
    case 'slope':
      return slopeInWords(single);
    case 'area':
      return area(single);
    case 'rain':
      return rain(single);
    case 'rValue':
      return rValue(single);
    case 'pitch':
      return `${plainNumber(single, 4)}:12`;
    default:
      return `${plainNumber(single, 4)} ${fields[field].unit}`;
  }
}

function parseUnsigned(text: string, field: SingleField): Reading {
  if (isLengthField(field)) return parseLength(text, field);
  if (field === 'slope') return parseSlope(text);
  if (field === 'pitch') return parsePitch(text);
  if (field === 'rValue') return parseRValue(text);
  if (field === 'bearing') return parseBearing(text);
  if (field === 'area') {
    const product = areaOfPlan(text);
    if (product !== null) {
      return ask('length x depth in place of an area', [{ value: product, unit: 'sq ft', text: area(product) }]);
    }
  }
  return parseQuantity(text, field);
}

/** Numbers too large for the box, or below zero where that cannot be, become a rejection. */
function withinLimits(value: number, field: Field): Rejected | null {
  const { unit, words, mayBeNegative, limit, example } = fields[field];
  if (!Number.isFinite(value))
    return reject('it is not a finite number', `the measured value in ${words}, or "not known"`);
  if (value < 0 && !mayBeNegative) {
    const positive = isPairField(field) ? example : printMeasure(-value as ValueOf<typeof field>, field);
    const elevation = isLengthField(field) ? ' (only a height above or below the surface may be negative)' : '';
    return reject(`it cannot be negative${elevation}`, positive);
  }
  if (Math.abs(value) > limit) {
    const most = `${plainNumber(limit)} ${unit}`;
    const wrong = `${plainNumber(value, 2)} ${unit} is`;
    const unitToo = `with the unit where it is not ${words}: ${example}`;
    if (value < 0) return reject(`${wrong} less than -${most}`, `at least -${most}, ${unitToo}`);
    return reject(`${wrong} more than ${most}`, `at most ${most}, ${unitToo}`);
  }
  return null;
}

function signed(reading: Reading, negative: boolean): Reading {
  if (!negative) return reading;
  if (reading.action === 'accept') return { ...reading, value: -reading.value };
  if (reading.action !== 'ask') return reading;
  const proposals = reading.proposals.map((offer) =>
    offer.value === null ? offer : { ...offer, value: -offer.value, text: `-${offer.text}` },
  );
  return { ...reading, proposals };
}

function parseSingle(text: string, field: SingleField): Reading {
  const negative = /^- ?(?=[\d.])/.test(text);
  const reading = signed(parseUnsigned(negative ? text.replace(/^- ?/, '') : text, field), negative);
  if (reading.action === 'ask') {
    const sensible = reading.proposals.filter(({ value }) => value === null || withinLimits(value, field) === null);
    return sensible.length > 0 ? { ...reading, proposals: sensible } : reject(reading.why, fields[field].example);
  }
  if (reading.action !== 'accept') return reading;
  const fault = withinLimits(reading.value, field);
  if (fault) return fault;
  if (field === 'slope' && reading.value < 0) {
    return { ...reading, note: 'minus: it falls the other way, back from the outlet' };
  }
  return reading;
}

/** "2'6" (762 mm)", "18 mm/m = 1.8 %": the same size said twice. */
function statedTwice(text: string): readonly [string, string] | null {
  const parts = /^([^()=]+?) ?\(([^()]*\d[^()]*)\)$/.exec(text) ?? /^([^()=]+?) ?= ?([^()=]*\d[^()=]*)$/.exec(text);
  return parts ? [parts[1], parts[2].trim()] : null;
}

function bothStatements(first: string, second: string, field: SingleField): Reading {
  const a = parseSingle(first, field);
  const b = parseSingle(second, field);
  if (a.action !== 'accept') return a;
  if (b.action !== 'accept') return reject(`"${second}" in brackets was not understood`, `${first} alone`);
  const apart = Math.abs(a.value - b.value);
  if (apart <= PAIR_AGREES * Math.max(Math.abs(a.value), Math.abs(b.value))) return a;
  const [one, other] = [a.value, b.value].map((value) => printMeasure<SingleField>(value, field));
  return reject(
    `inconsistent: "${first}" is ${one} and "${second}" is ${other}`,
    `the one that was measured, alone: ${first}, or ${second}`,
  );
}

/**
 * A measurement as a person wrote it.
 * @param text anything typed: `24'-6 1/2"`, "7.47 m", "1:60", "about 18 ft", "not known"
 * @param field the box it stands in, which gives the unit of a bare number
 * @returns accept (value in the field's unit), ask (readings to choose from), reject (what to write instead), or unknown
 */
export function parseMeasure<F extends Field>(text: string, field: F): Reading<ValueOf<F>>;
export function parseMeasure(text: string, field: Field): Reading | Reading<readonly [number, number]> {
  if (text.length > LONGEST_TEXT) return reject('it is too long for a measurement', fields[field].example);
  const clean = tidy(text);
  if (clean === '') return reject('nothing is written', `${fields[field].example}, or "not known"`);
  if (saysNotKnown(clean)) return { action: 'unknown' };
  const { text: bare, approximate } = withoutApproximation(numerals(clean));
  if (isPairField(field)) {
    const reading = parsePair(bare, field);
    if (reading.action !== 'accept') return reading;
    const fault = withinLimits(Math.max(...reading.value), field);
    return fault ?? { ...reading, approximate };
  }
  const twice = statedTwice(bare);
  const reading = twice ? bothStatements(twice[0], twice[1], field) : parseSingle(bare, field);
  return reading.action === 'accept' ? { ...reading, approximate } : reading;
}

/** The same for a value that is a number already (a roof file's number is in the field's unit). */
export function readMeasure<F extends SingleField>(value: number | string, field: F): Reading;
export function readMeasure(value: number | string, field: SingleField): Reading {
  if (typeof value === 'string') return parseMeasure(value, field) as Reading;
  return (
    withinLimits(value, field) ?? { action: 'accept', value, unit: fields[field].unit, approximate: false, note: null }
  );
}
