import { expect, test } from 'vitest';
import { assessed, roofOf } from './takeoff-roofs.ts';

const walls = (count: number, edge: object) => Array.from({ length: count }, (_, side) => ({ side, ...edge }));

test('scuppers that hold the taper up make one layout of all bases below their floors', () => {
  const { layouts } = assessed(
    roofOf({
      version: 1,
      label: 'Invented U',
      outline: [
        [0, 0],
        [40, 0],
        [40, 30],
        [28, 30],
        [28, 12],
        [12, 12],
        [12, 30],
        [0, 30],
      ],
      edges: walls(8, { kind: 'parapet', topIn: 16, mayDrain: 'no' }),
      outlets: [
        { id: 'S1', kind: 'scupper', role: 'primary', side: 2, alongFt: 6, inletIn: 0 },
        { id: 'S2', kind: 'scupper', role: 'primary', side: 6, alongFt: 6, inletIn: 1 },
      ],
      existing: { surface: 'level', readOn: 'covering', buildUpIn: 2 },
    }),
  );
  expect(new Set(layouts.map(({ id }) => id)).size).toBe(layouts.length);
  const offered = layouts.filter(({ rejected }) => rejected === null);
  expect(offered.length).toBeGreaterThan(0);
  expect(new Set(offered.map(({ title }) => title)).size).toBe(offered.length);
});

test('two new drains have a name each, and an old roof of unknown thickness dams water as deep as it is thick', () => {
  const { layouts, chosenLayout, findings } = assessed(
    roofOf({
      version: 1,
      label: 'Invented L',
      building: { below: 'attic' },
      outline: [
        [0, 0],
        [36, 0],
        [36, 16],
        [16, 16],
        [16, 30],
        [0, 30],
      ],
      edges: walls(6, { kind: 'wall', mayDrain: 'no', clearIn: 13 }),
      outlets: [{ id: 'D1', kind: 'drain', at: [8, 8], role: 'primary' }],
      existing: { surface: 'level', readOn: 'deck' },
    }),
  );
  const chosen = layouts.find(({ id }) => id === chosenLayout)!;
  expect(chosen.outlets.map(({ label }) => label).sort()).toEqual(['drain D1', 'new drain 1', 'new drain 2']);
  const dam = findings.find(({ id }) => id === 'open-part-one-way-out');
  for (const name of ['new drain 1', 'new drain 2', 'drain D1']) expect(dam?.where).toContain(name);
  expect(dam?.message).toContain('as deep as the old roof beside it is thick');
});
