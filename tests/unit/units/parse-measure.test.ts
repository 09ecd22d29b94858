import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Field, fields, type SingleField } from '../../../src/units/fields.ts';
import { parseMeasure, printMeasure, readMeasure } from '../../../src/units/parse-measure.ts';

/** Expected values follow from the definitions of the units (foot 0.3048 m, inch 25.4 mm); computed by hand. */
type Row = readonly [field: SingleField, text: string, value: number];

const accepted: readonly Row[] = [
  ['length', `24'-6 1/2"`, 24 + 6.5 / 12],
  ['length', '24′-6½″', 24 + 6.5 / 12],
  ['length', '24’ 6”', 24.5],
  ['length', "24' 6", 24.5],
  ['length', '24.54', 24.54],
  ['length', '7.47 m', 7.47 / 0.3048],
  ['length', '3 m 20 cm', 3.2 / 0.3048],
  ['length', '1,234 ft', 1234],
  ['length', '12 ft. 6 in.', 12.5],
  ['length', '10 yd', 30],
  ['length', 'two and a half feet', 2.5],
  ['length', 'half an inch', 0.5 / 12],
  ['length', 'a foot', 1],
  ['length', '2 ft (600 mm)', 2],
  ['coordinate', `-12'-6"`, -12.5],
  ['height', '-3"', -3],
  ['height', '-2 ft', -24],
  ['height', '4.32 ft', 51.84],
  ['thickness', '3 1/2 in deep', 3.5],
  ['thickness', '6', 6],
  ['slope', '3/16"/ft', 0.1875],
  ['slope', '1/4 in per ft', 0.25],
  ['slope', '1/4 per foot', 0.25],
  ['slope', '1:60', 0.2],
  ['slope', '1:48', 0.25],
  ['slope', '2 %', 0.24],
  ['slope', '1 in 70', 12 / 70],
  ['slope', '3 in 12', 3],
  ['slope', '3" in 20 ft', 0.15],
  ['slope', '1/4" in 12"', 0.25],
  ['slope', '25 mm in 1 m', 0.3],
  ['slope', 'three eighths inch to the foot', 0.375],
  ['slope', '0.25', 0.25],
  ['pitch', '4', 4],
  ['pitch', '4/12', 4],
  ['area', '7.2 squares', 720],
  ['area', '67 m²', 67 / 0.3048 ** 2],
  ['rain', '3.2"/hr', 3.2],
  ['rain', '81.28 mm/h', 3.2],
  ['rValue', 'R-30', 30],
  ['rValue', 'RSI 5.3', 5.3 * 5.678263341113486],
  ['rValue', 'U-0.05', 20],
  ['bearing', 'NE', 45],
  ['bearing', 'south-west', 225],
  ['bearing', 'S 30 W', 210],
  ['bearing', '135°', 135],
  ['temperature', '38 °F', 38],
  ['temperature', '3 C', 37.4],
  ['speed', '10 m/s', 22.36936292],
  ['load', '1 kPa', 20.88543423],
  ['hours', '2 days', 48],
  ['minutes', '1 h', 60],
  ['years', '100-yr', 100],
];

test.each(accepted)('%s "%s" is accepted', (field, text, value) => {
  const reading = parseMeasure(text, field);
  expect(reading).toMatchObject({ action: 'accept', unit: fields[field].unit, approximate: false });
  if (reading.action === 'accept') expect(reading.value).toBeCloseTo(value, 7);
});

type Question = readonly [field: SingleField, text: string, offers: readonly number[]];

const asked: readonly Question[] = [
  ['length', '24 6.5', [24 + 6.5 / 12]],
  ['length', '24 6"', [24.5]],
  ['length', '24-6', [24.5, 24, 6]],
  ['length', '1/2', [0.5, 0.5 / 12]],
  ['length', '24,5', [24.5]],
  ['length', '3,150 m', [3.15 / 0.3048]],
  ['length', `5.5' 3"`, [5.75]],
  ['thickness', '8-9 in', [105, 8, 9]],
  ['height', '-1/8', [-0.125]],
  ['slope', '1/4', [0.25, 3]],
  ['slope', '3:8', [4.5, 0.375]],
  ['slope', '2', [2, 0.24]],
  ['area', '24 x 30 ft', [720]],
];

test.each(asked)('%s "%s" is asked about', (field, text, offers) => {
  const reading = parseMeasure(text, field);
  expect(reading.action).toBe('ask');
  if (reading.action !== 'ask') return;
  expect(reading.proposals.map(({ value }) => Number(value?.toFixed(9)))).toEqual(
    offers.map((v) => Number(v.toFixed(9))),
  );
  for (const { value, text: offer } of reading.proposals) {
    const again = parseMeasure(offer, field);
    expect([offer, again.action]).toEqual([offer, 'accept']);
    if (again.action === 'accept') expect(again.value).toBeCloseTo(value!, 3);
  }
});

const rejected: readonly (readonly [field: Field, text: string, why: RegExp])[] = [
  ['length', '36x22', /two sizes/],
  ['length', '1'.repeat(201), /too long/],
  ['length', `24'-12"`, /under 12/],
  ['length', '1/0 ft', /below the line/],
  ['length', '1 3/2 in', /one or more/],
  ['length', 'NaN', /not a measurement/],
  ['length', 'Infinity', /not a measurement/],
  ['length', '1e3', /not a measurement/],
  ['length', '6000 ft', /more than 5,000 ft/],
  ['length', '2 ft (500 mm)', /inconsistent/],
  ['length', `5'-`, /missing/],
  ['height', '700', /more than 600 in/],
  ['slope', '20 in/ft', /more than 12/],
  ['slope', '1:0', /cannot end in 0/],
  ['slope', '95 deg', /wall/],
  ['slope', 'steep', /does not read/],
  ['area', '-5', /negative/],
  ['rValue', 'plenty', /does not read/],
  ['bearing', 'uphill', /compass/],
  ['temperature', '-500 F', /^-500 F is less than -250 F$/],
  ['temperature', '500 F', /^500 F is more than 250 F$/],
  ['height', '-700', /less than -600 in/],
  ['age', '400 yr', /^400 years is more than 120 years$/],
  ['age', '-4', /negative/],
  ['pair', '6', /two sizes/],
  ['pair', '-6 x 4', /not a measurement/],
];

test.each(rejected)('%s "%s" is rejected with what to write instead', (field, text, why) => {
  const reading = parseMeasure(text, field);
  expect(reading.action).toBe('reject');
  if (reading.action !== 'reject') return;
  expect(reading.why).toMatch(why);
  expect(reading.instead).toMatch(/\d/);
});

test('a negative age is told in the words that people write ages in', () => {
  expect(parseMeasure('-4', 'age')).toMatchObject({ action: 'reject', instead: '4 years' });
  expect(parseMeasure('120 yr', 'age')).toMatchObject({ action: 'accept', value: 120 });
});

describe('two statements of one size (case C28)', () => {
  test('2 ft is 609.6 mm: 500 mm contradicts it, 600 mm is within 2 %', () => {
    expect(parseMeasure('2 ft (500 mm)', 'height').action).toBe('reject');
    expect(parseMeasure('2 ft (600 mm)', 'height')).toMatchObject({ action: 'accept', value: 24 });
    expect(parseMeasure('2 ft = 610 mm', 'height')).toMatchObject({ action: 'accept', value: 24 });
  });

  test('2 % is not 1/4 in per ft', () => {
    expect(parseMeasure('1/4 in/ft (2 %)', 'slope').action).toBe('reject');
    expect(parseMeasure('1/4 in/ft (2.08 %)', 'slope')).toMatchObject({ action: 'accept', value: 0.25 });
  });
});

test.each(['not known', 'Unknown', '?', "don't know", 'not measured'])('"%s" is an answer in every box', (text) => {
  for (const field of Object.keys(fields) as Field[]) expect(parseMeasure(text, field)).toEqual({ action: 'unknown' });
});

test.each(['about 18 ft', '~18 ft', '18 ft +/- 1 in', '18 ft or so', '18 ft (approx)'])(
  '"%s" is approximate',
  (text) => {
    expect(parseMeasure(text, 'length')).toMatchObject({ action: 'accept', value: 18, approximate: true });
  },
);

test('width and height are told apart by their words', () => {
  expect(parseMeasure('4 in high x 6 in wide', 'pair')).toMatchObject({ action: 'accept', value: [6, 4] });
  expect(parseMeasure('6" x 4"', 'pair')).toMatchObject({
    action: 'accept',
    value: [6, 4],
    note: 'read as width x height',
  });
  expect(parseMeasure('36 x 22 ft', 'plan')).toMatchObject({ action: 'accept', value: [36, 22] });
});

test('a number of a file is in the field unit and within its limits', () => {
  expect(readMeasure(24.5, 'length')).toMatchObject({ action: 'accept', value: 24.5 });
  for (const value of [Number.NaN, Infinity, -1, 5001]) expect(readMeasure(value, 'length').action).toBe('reject');
  expect(readMeasure(-1, 'height')).toMatchObject({ action: 'accept', value: -1 });
});

describe('laws', () => {
  test('reading what was printed gives the same sixteenths: lengths', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 5_000 * 192 }), (count) => {
        const valueFt = count / 16 / 12;
        expect(parseMeasure(printMeasure(valueFt, 'length'), 'length')).toMatchObject({
          action: 'accept',
          value: valueFt,
        });
      }),
      { numRuns: 2_000 },
    );
  });

  test('reading what was printed gives the same sixteenths: heights, thicknesses, coordinates, slopes', () => {
    const fieldsInSixteenths: readonly [SingleField, number, number][] = [
      ['height', -600 * 16, 600 * 16],
      ['thickness', 0, 600 * 16],
      ['slope', -16 * 12, 16 * 12],
      ['coordinate', -100_000 * 192, 100_000 * 192],
    ];
    for (const [field, min, max] of fieldsInSixteenths) {
      fc.assert(
        fc.property(fc.integer({ min, max }), (count) => {
          const value = field === 'coordinate' ? count / 16 / 12 : count / 16;
          const reading = parseMeasure(printMeasure(value, field), field);
          expect(reading.action).toBe('accept');
          if (reading.action === 'accept') expect(reading.value + 0).toBe(value + 0);
        }),
        { numRuns: 500 },
      );
    }
  });

  test('no text makes it throw, and no accepted value is outside its box', () => {
    const pieces = fc.constantFrom(
      '-',
      '1',
      '12',
      '3/4',
      '.',
      ',',
      "'",
      '"',
      ' ',
      'ft',
      'in',
      'm',
      'per',
      ':',
      '%',
      'x',
      '(',
      ')',
      '=',
      'about',
      '½',
      '0',
    );
    fc.assert(
      fc.property(
        fc.array(pieces, { maxLength: 9 }),
        fc.constantFrom(...(Object.keys(fields) as Field[])),
        (parts, field) => {
          const reading = parseMeasure(parts.join(''), field);
          if (reading.action === 'reject') expect(reading.instead).not.toBe('');
          if (reading.action === 'ask') expect(reading.proposals.length).toBeGreaterThan(0);
          if (reading.action !== 'accept') return;
          for (const value of [reading.value].flat() as number[]) {
            expect(Number.isFinite(value)).toBe(true);
            expect(Math.abs(value)).toBeLessThanOrEqual(fields[field].limit);
            if (!fields[field].mayBeNegative) expect(value).toBeGreaterThanOrEqual(0);
          }
        },
      ),
      { numRuns: 20_000 },
    );
  });
});
