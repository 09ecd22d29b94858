import { convert } from './convert.ts';
import { fields, type LengthField } from './fields.ts';
import { type NumberToken, readNumber } from './number.ts';
import { feetInches, inches, plainNumber } from './print.ts';
import { accept, ask, type Proposal, type Reading, reject } from './reading.ts';

interface Item extends NumberToken {
  /** Unit as mathjs names it; null = none written. */
  unit: string | null;
  /** A dash stood before it: "8-9 in". */
  dash: boolean;
}

/** Spellings of each unit of length, longest first. */
const unitSpellings: readonly (readonly [spelling: RegExp, unit: string])[] = [
  [/^(?:feet|foot|ft|')(?![a-z])\.?/, 'ft'],
  [/^(?:inches|inch|ins|in|")(?![a-z])\.?/, 'in'],
  [/^(?:millimet(?:er|re)s?|mm)(?![a-z])\.?/, 'mm'],
  [/^(?:centimet(?:er|re)s?|cm)(?![a-z])\.?/, 'cm'],
  [/^(?:met(?:er|re)s?|m)(?![a-z])\.?/, 'm'],
  [/^(?:yards?|yds?)(?![a-z])\.?/, 'yd'],
];

/** Words that say which way a length runs and change nothing. */
const direction = /^(?:deep|wide|high|tall|thick|long|across)\b/;

function faultIn(rest: string): string {
  if (rest === '') return 'something is missing after the dash';
  return /^(?:x|by) ?\d/.test(rest) ? 'two sizes in one box' : `"${rest}" is not a measurement`;
}

type Items = { items: Item[] } | { fault: string };

function readItems(text: string): Items {
  const items: Item[] = [];
  let rest = text;
  while (rest !== '') {
    const gap = /^(?: |,|-|and )+/.exec(rest);
    if (gap && items.length > 0) rest = rest.slice(gap[0].length);
    if (rest === '' && !gap?.[0].includes('-')) break;
    if (direction.test(rest)) {
      rest = rest.replace(direction, '').trim();
      continue;
    }
    const number = readNumber(rest);
    if (number === null) return { fault: faultIn(rest) };
    if ('fault' in number) return number;
    rest = rest.slice(number.length).trimStart();
    const spelling = unitSpellings.find(([pattern]) => pattern.test(rest));
    if (spelling) rest = rest.replace(spelling[0], '');
    items.push({ ...number, unit: spelling?.[1] ?? null, dash: gap?.[0].includes('-') ?? false });
  }
  return { items };
}

/** Text of a value in the field's unit that would be accepted as it stands. */
export function printLength(value: number, field: LengthField): string {
  return fields[field].unit === 'ft' ? feetInches(value) : inches(value);
}

const proposal = (value: number, field: LengthField, text?: string): Proposal => ({
  value,
  unit: fields[field].unit,
  text: text ?? printLength(value, field),
});

const measured = (item: Item, field: LengthField, unit: string): number =>
  convert(item.value, unit, fields[field].unit);

function feetAndInches(feet: number, inchPart: number, field: LengthField): number {
  return convert(feet * 12 + inchPart, 'in', fields[field].unit);
}

function oneNumber(item: Item, field: LengthField): Reading {
  const { unit } = fields[field];
  const { value } = item;
  if (item.decimalComma) {
    const meant = item.unit ?? unit;
    return ask('a comma between digits may be a decimal point', [
      proposal(measured(item, field, meant), field, `${value} ${meant}`),
    ]);
  }
  if (item.thousands && item.unit === 'm') {
    return ask('the comma may part thousands or be a decimal point', [
      proposal(measured({ ...item, value: value / 1000 }, field, 'm'), field, `${value / 1000} m`),
      proposal(measured(item, field, 'm'), field, `${value} m`),
    ]);
  }
  if (item.unit) return accept(measured(item, field, item.unit), unit);
  if (!item.fraction) return accept(value, unit);
  const inInches = proposal(measured(item, field, 'in'), field, inches(value));
  if (unit === 'in') return ask('no unit: inches?', [inInches]);
  return ask('no unit: feet or inches?', [proposal(value, field, `${plainNumber(value, 4)} ft`), inInches]);
}

/** "24 6.5", "24-6", `24 6"`, "8-9 in": two numbers where a unit is missing on the first. */
function firstWithoutUnit(a: Item, b: Item, field: LengthField): Reading {
  const proposals: Proposal[] = [];
  const plausible = a.whole && b.value < 12 && (b.unit === null || b.unit === 'in');
  if (plausible) {
    const total = feetAndInches(a.value, b.value, field);
    proposals.push(proposal(total, field, feetInches(a.value + b.value / 12)));
  }
  if (b.dash || !plausible) {
    const meant = b.unit ?? fields[field].unit;
    for (const item of [a, b]) {
      proposals.push(proposal(measured(item, field, meant), field, `${plainNumber(item.value, 4)} ${meant}`));
    }
  }
  return ask(b.dash ? 'two numbers with a dash: feet and inches, or a range?' : 'two numbers, no unit', proposals);
}

function feetThenInches(a: Item, b: Item, field: LengthField): Reading {
  const total = feetAndInches(a.value, b.value, field);
  const written = feetInches(convert(total, fields[field].unit, 'ft'));
  if (b.value >= 12) {
    return reject(
      'the inches after feet must be under 12',
      `${written} if that is the sum, or the feet and inches again`,
    );
  }
  if (!a.whole) {
    return ask('feet with a fraction, and inches as well', [proposal(total, field, written)]);
  }
  const note = b.unit === null ? `"${plainNumber(b.value, 4)}" after the feet read as inches` : null;
  return accept(total, fields[field].unit, note);
}

const metricOrder = ['m', 'cm', 'mm'];

function severalNumbers(items: Item[], field: LengthField): Reading {
  const [a, b] = items;
  const { unit, example } = fields[field];
  if (items.some((item) => item.decimalComma)) return reject('a comma between digits', example);
  const order = items.map((item) => metricOrder.indexOf(item.unit ?? ''));
  const metric = order.every((at, i) => at >= 0 && (i === 0 || at > order[i - 1]));
  if (metric)
    return accept(
      items.map((item) => measured(item, field, item.unit!)).reduce((s, v) => s + v, 0),
      unit,
    );
  if (items.length > 2) return reject(`${items.length} numbers in one measurement`, example);
  if (a.unit === null) return firstWithoutUnit(a, b, field);
  if (a.unit === 'ft' && (b.unit === 'in' || b.unit === null)) return feetThenInches(a, b, field);
  if (a.unit === 'in' && b.fraction && b.value < 1) {
    const total = measured({ ...a, value: a.value + b.value }, field, 'in');
    return ask('a fraction after the inch mark', [proposal(total, field)]);
  }
  return reject('two measurements in one box', example);
}

/**
 * A length, thickness or height from tidied text without sign.
 * Bare whole and decimal numbers have the field's unit; a bare fraction or two bare numbers are asked about.
 */
export function parseLength(text: string, field: LengthField): Reading {
  const read = readItems(text);
  if ('fault' in read) return reject(read.fault, fields[field].example);
  const { items } = read;
  if (items.length === 0) return reject('no number in it', fields[field].example);
  return items.length === 1 ? oneNumber(items[0], field) : severalNumbers(items, field);
}
