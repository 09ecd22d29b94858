import { expect, test } from 'vitest';
import { convert } from '../../src/units/convert.ts';
import type { Field } from '../../src/units/fields.ts';
import { parseMeasure } from '../../src/units/parse-measure.ts';
import type { Reading } from '../../src/units/reading.ts';

/**
 * Case P01, measurement strings as people have written them in public, with the right answer for each.
 * Values in the unit that the case states; they are computed from the definitions of the units.
 */
interface Row {
  text: string;
  field: Field;
  action: 'accept' | 'ask' | 'reject';
  value: number | readonly [number, number] | null;
  unit: 'ft' | 'in' | 'm' | '%' | 'R' | 'sf' | 'in/h' | null;
  says?: RegExp;
}

const rows: readonly Row[] = [
  { text: `14'-7 1/2"`, field: 'length', action: 'accept', value: 14.625, unit: 'ft' },
  { text: `31'8-3/4"`, field: 'length', action: 'accept', value: 31.72917, unit: 'ft' },
  { text: '42 ft 9 in', field: 'length', action: 'accept', value: 42.75, unit: 'ft' },
  { text: '120’-0”', field: 'length', action: 'accept', value: 120, unit: 'ft' },
  { text: '54"', field: 'length', action: 'accept', value: 4.5, unit: 'ft' },
  { text: '9-5/8"', field: 'thickness', action: 'accept', value: 9.625, unit: 'in' },
  { text: '4½ in', field: 'thickness', action: 'accept', value: 4.5, unit: 'in' },
  { text: `16'3.25"`, field: 'length', action: 'accept', value: 16.27083, unit: 'ft' },
  { text: '12 8 1/4', field: 'length', action: 'ask', value: 12.6875, unit: 'ft', says: /12′-8 1\/4″/ },
  { text: `8'-15"`, field: 'length', action: 'reject', value: null, unit: null, says: /under 12.*9′-3″/ },
  { text: '4200 mm', field: 'length', action: 'accept', value: 4.2, unit: 'm' },
  { text: `2'6" (762 mm)`, field: 'length', action: 'accept', value: 2.5, unit: 'ft' },
  { text: 'about 18 ft', field: 'length', action: 'accept', value: 18, unit: 'ft' },
  { text: '36x22', field: 'plan', action: 'ask', value: null, unit: null, says: /no unit/ },
  { text: '-3"', field: 'length', action: 'reject', value: null, unit: null, says: /negative.*height/ },
  { text: '', field: 'length', action: 'reject', value: null, unit: null, says: /not known/ },
  { text: '1 1/2', field: 'thickness', action: 'ask', value: 1.5, unit: 'in', says: /1 1\/2″/ },
  { text: '1/4:12', field: 'slope', action: 'accept', value: 2.08333, unit: '%' },
  { text: 'quarter inch per foot', field: 'slope', action: 'accept', value: 2.08333, unit: '%' },
  { text: '1 in 70', field: 'slope', action: 'accept', value: 1.42857, unit: '%' },
  { text: '0.9 deg', field: 'slope', action: 'accept', value: 1.57093, unit: '%' },
  { text: '3:100', field: 'slope', action: 'accept', value: 3, unit: '%' },
  { text: '1:4', field: 'slope', action: 'ask', value: 25, unit: '%', says: /25 %.*1\/4 in per ft/ },
  { text: '18 mm/m', field: 'slope', action: 'accept', value: 1.8, unit: '%' },
  { text: '-1/8"/ft', field: 'slope', action: 'accept', value: -1.04167, unit: '%', says: /minus/ },
  { text: 'flat', field: 'slope', action: 'ask', value: 0, unit: '%', says: /not measured.*not known/ },
  { text: 'R30ci', field: 'rValue', action: 'accept', value: 30, unit: 'R' },
  { text: '3,150 sq ft', field: 'area', action: 'accept', value: 3150, unit: 'sf' },
  { text: '110 mm/h', field: 'rain', action: 'accept', value: 4.33071, unit: 'in/h' },
  { text: '6 x 4 scupper', field: 'pair', action: 'ask', value: [6, 4], unit: 'in', says: /width x height.*6″ x 4″/ },
];

/** The field's value in the unit that the case states. */
function inCaseUnit(value: number, unit: Row['unit']): number {
  if (unit === 'm') return convert(value, 'ft', 'm');
  return unit === '%' ? (value / 12) * 100 : value;
}

/** Everything that a person is told about the reading, in the order in which it is shown. */
function words(reading: Reading<number | readonly [number, number]>): string {
  if (reading.action === 'accept') return reading.note ?? '';
  if (reading.action === 'reject') return `${reading.why}; ${reading.instead}`;
  return reading.action === 'ask' ? `${reading.why} ${reading.proposals.map(({ text }) => text).join(', ')}` : '';
}

test.each(rows)('P01 $field "$text": $action', ({ text, field, action, value, unit, says }) => {
  const reading = parseMeasure(text, field);
  expect(reading.action).toBe(action);
  if (says) expect(words(reading)).toMatch(says);
  if (reading.action === 'reject') expect(reading.instead).not.toBe('');
  if (value === null) return;
  const read =
    reading.action === 'accept' ? reading.value : reading.action === 'ask' ? reading.proposals[0].value : null;
  if (typeof value === 'number') expect(inCaseUnit(read as number, unit)).toBeCloseTo(value, 5);
  else expect(read).toEqual(value);
});

test('P01: "about" is kept as approximate, and nothing else is', () => {
  for (const { text, field } of rows) {
    const reading = parseMeasure(text, field);
    if (reading.action === 'accept') expect([text, reading.approximate]).toEqual([text, text === 'about 18 ft']);
  }
});

test('P01: every question offers something that is accepted when it is written', () => {
  for (const { text, field } of rows) {
    const reading = parseMeasure(text, field);
    if (reading.action !== 'ask') continue;
    expect(reading.proposals.length).toBeGreaterThan(0);
    for (const offer of reading.proposals) {
      const again = parseMeasure(offer.text, field);
      expect([text, offer.text, again.action]).toEqual([text, offer.text, offer.value === null ? 'unknown' : 'accept']);
      if (again.action === 'accept') expect([again.value].flat()[0]).toBeCloseTo([offer.value].flat()[0] as number, 3);
    }
  }
});
