import { expect, test } from 'vitest';
import { zoneConflict } from '../../../src/core/energy/zone-conflict.ts';
import { readClimateZone } from '../../../src/input/climate-zone.ts';
import { InputLog } from '../../../src/input/problems.ts';

const nowhere = { city: null, state: null };

function read(text: string, place: { city: string | null; state: string | null } = nowhere) {
  const log = new InputLog();
  return { zone: readClimateZone(text, place, 'place.climateZone', log), problems: log.problems, notes: log.notes };
}

test.each([
  ['5A', '5A'],
  ['5a', '5A'],
  ['zone 5a', '5A'],
  ['Zone 5', '5'],
  ['CZ 5A', '5A'],
  ['cz5a', '5A'],
  ['IECC climate zone 5-A', '5A'],
  ['Climate Zone: 3', '3'],
  ['Marine 4', '4C'],
  ['4 (marine)', '4C'],
  ['5 dry', '5B'],
  ['7A', '7'],
  [' 8 ', '8'],
  ['0b', '0B'],
])('%j is read as %s, and said where it was written otherwise', (text, zone) => {
  const got = read(text);
  expect([got.zone, got.problems]).toEqual([zone, []]);
  expect(got.notes.map(({ path, value }) => [path, value])).toEqual(text === zone ? [] : [['place.climateZone', zone]]);
});

test.each(['9Z', '9', '6C', '5D', 'north', '55A', 'marine 4A', 'A5', '-5A5'])(
  '%j is a problem that says what to write',
  (text) => {
    const { zone, problems } = read(text);
    expect(zone).toBeNull();
    expect(problems).toEqual([
      expect.objectContaining({ path: 'place.climateZone', code: 'choice', got: JSON.stringify(text) }),
    ]);
    expect(problems[0].instead).toMatch(/"5A"|californiaZone/);
  },
);

test('a zone of California goes into its own field', () => {
  expect(read('CZ 12').problems[0].instead).toContain('"californiaZone": 12');
});

test('zone 4 is asked for its letter, unless the town tells it', () => {
  const { zone, problems } = read('zone 4');
  expect(zone).toBeNull();
  expect(problems).toEqual([expect.objectContaining({ path: 'place.climateZone', code: 'ask' })]);
  expect(problems[0].proposals?.map(({ value }) => value)).toEqual(['4A', '4B', '4C']);
  expect(read('4', { city: 'Seattle', state: 'WA' }).zone).toBe('4C');
  expect(read('4', { city: 'Nashville', state: 'TN' }).zone).toBe('4A');
  expect(read('4', { city: 'Phoenix', state: 'AZ' }).problems).toHaveLength(1);
});

const at = (city: string, state: string, climateZone: string | null) =>
  zoneConflict({ city, state, climateZone, rain: null, groundSnowPsf: null, californiaZone: null });

test('a zone that is not that of the named town is asked about, the more the farther off', () => {
  expect(at('Phoenix', 'AZ', '6A')).toEqual([
    expect.objectContaining({
      level: 'fix',
      value: '6A',
      limit: '2B',
      message: expect.stringContaining('Phoenix, AZ lies in 2B'),
    }),
  ]);
  expect(at('Chicago', 'IL', '4A')).toEqual([expect.objectContaining({ level: 'note' })]);
  for (const same of ['2B', '2', null]) expect(at('Phoenix', 'AZ', same)).toEqual([]);
  expect(at('Smallville', 'KS', '6A')).toEqual([]);
});
