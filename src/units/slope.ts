import { convert } from './convert.ts';
import { fields } from './fields.ts';
import { parseLength } from './length.ts';
import { readNumber } from './number.ts';
import { plainNumber, slopeInWords } from './print.ts';
import { accept, ask, type Proposal, type Reading, reject } from './reading.ts';

const unit = fields.slope.unit;
const PER_FT = 12;

/** Value of a text that is one plain number and nothing else; null otherwise. */
function wholeNumberText(text: string): number | null {
  const number = readNumber(text);
  if (number === null || 'fault' in number || number.decimalComma) return null;
  return number.length === text.length ? number.value : null;
}

const percentOf = (value: number): string => `${plainNumber((value / PER_FT) * 100, 2)} %`;

/** Bare denominators of the inch fractions: "1:4" and "1/4" are often meant as 1/4 in per ft. */
const inchDenominators = [2, 4, 8, 16, 32];

const asInchFraction = (over: number, under: number): Proposal => ({
  value: over / under,
  unit,
  text: slopeInWords(over / under),
});

const asRatio = (over: number, under: number): Proposal => {
  const value = (over / under) * PER_FT;
  return { value, unit, text: percentOf(value) };
};

/** "1:60", "1 in 70", "3:100", "1/4:12": bare numbers on both sides. */
function ratio(over: number, under: number): Reading {
  if (under === 0) return reject('a ratio cannot end in 0', fields.slope.example);
  if (under === 12) return accept(over, unit);
  const { value } = asRatio(over, under);
  if (Number.isInteger(over) && over > 0 && over < under && inchDenominators.includes(under)) {
    const why = `${over}:${under} is ${percentOf(value!)}; many mean ${slopeInWords(over / under)}`;
    return ask(why, [asRatio(over, under), asInchFraction(over, under)]);
  }
  return accept(value!, unit);
}

function bareNumber(text: string): Reading | null {
  const number = readNumber(text);
  if (number === null || 'fault' in number || number.length !== text.length) return null;
  const { value } = number;
  const inPerFt: Proposal = { value, unit, text: slopeInWords(value) };
  const percent: Proposal = { value: (value / 100) * PER_FT, unit, text: `${plainNumber(value, 4)} %` };
  if (number.decimalComma) return ask('a comma between digits may be a decimal point', [inPerFt, percent]);
  if (number.fraction) return ask('no unit: inches per foot?', [inPerFt, asRatio(value, 1)]);
  if (value > 1) return ask('no unit: inches per foot or percent?', [inPerFt, percent]);
  return accept(value, unit, value === 0 ? null : 'no unit: read as inches per foot');
}

const runUnits: Record<string, string> = {
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  "'": 'ft',
  m: 'm',
  meter: 'm',
  metre: 'm',
};

/** Horizontal run in feet: "ft", "12 in", "20'". */
function runFt(text: string): number | null {
  const one = runUnits[text];
  if (one) return convert(1, one, 'ft');
  if (!/[a-z'"]/.test(text)) return null;
  const read = parseLength(text, 'length');
  return read.action === 'accept' && read.value > 0 ? read.value : null;
}

/** `1/4"/ft`, "1/4 in per ft", "18 mm/m", `3" in 20 ft`: a rise over a run. */
function riseOverRun(text: string): Reading | null {
  const separators = [...text.matchAll(/ ?(?:\bper\b|\bto the\b|\bto\b|\bover\b|\bin\b|\ba\b|\/|:) ?/g)];
  for (const at of separators.reverse()) {
    const rise = text.slice(0, at.index).trim();
    const run = runFt(text.slice(at.index + at[0].length).trim());
    if (run === null || rise === '') continue;
    const bare = wholeNumberText(rise);
    if (bare !== null && at[0].includes('/') && run !== 1) continue;
    if (bare !== null) return accept(bare / run, unit, 'rise read as inches');
    const read = parseLength(rise, 'thickness');
    if (read.action === 'accept') return accept(read.value / run, unit);
  }
  return null;
}

function splitRatio(text: string): Reading | null {
  const parts =
    /^(.+?) ?(?::|\bin\b|\bto\b|\bon\b|\bover\b) ?(.+)$/.exec(text) ?? /^(\d+(?:\.\d+)?) ?(\/) ?12$/.exec(text);
  if (!parts) return null;
  const over = wholeNumberText(parts[1]);
  const under = parts[2] === '/' ? 12 : wholeNumberText(parts[2]);
  return over === null || under === null ? null : ratio(over, under);
}

function percentOrDegrees(text: string): Reading | null {
  const parts = /^(.+?) ?(%|percent|per cent|pct|deg(?:rees?)?)\.?$/.exec(text);
  const value = parts ? wholeNumberText(parts[1]) : null;
  if (!parts || value === null) return null;
  if (!parts[2].startsWith('deg')) return accept((value / 100) * PER_FT, unit);
  if (value >= 90) return reject('90 degrees and more is a wall', fields.slope.example);
  return accept(Math.tan(convert(value, 'deg', 'rad')) * PER_FT, unit);
}

function levelWords(text: string): Reading | null {
  if (!/^(?:dead )?(?:flat|level)$/.test(text)) return null;
  return ask('measured and found level, or not measured?', [
    { value: 0, unit, text: '0 in per ft' },
    { value: null, unit, text: 'not known' },
  ]);
}

/** A slope from tidied text without sign, in inches per foot. */
export function parseSlope(text: string): Reading {
  return (
    levelWords(text) ??
    percentOrDegrees(text) ??
    splitRatio(text) ??
    riseOverRun(text) ??
    bareNumber(text) ??
    reject('it does not read as a slope', fields.slope.example)
  );
}

/** Pitch of a shingled roof: a bare number is the rise in 12. */
export function parsePitch(text: string): Reading {
  const bare = wholeNumberText(text);
  return bare !== null && !text.includes('/') ? accept(bare, fields.pitch.unit) : parseSlope(text);
}
