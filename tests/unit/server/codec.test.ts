import fc from 'fast-check';
import { expect, test } from 'vitest';
import { applySection, fileText } from '../../../src/server/forms/apply.ts';
import { fileValue, textOf } from '../../../src/server/forms/codec.ts';
import { nearestOf, valueAt, withValueAt } from '../../../src/server/forms/paths.ts';
import { sectionOf, sections } from '../../../src/server/forms/sections.ts';
import type { FieldKind } from '../../../src/server/forms/spec.ts';
import { demoText } from '../../../src/store/demo-roofs.ts';

const kinds = {
  outline: { kind: 'outline' },
  ring: { kind: 'ring' },
  readings: { kind: 'readings' },
  ends: { kind: 'ends' },
  pair: { kind: 'pair' },
  point: { kind: 'point' },
  toward: { kind: 'toward' },
  distances: { kind: 'distances' },
  height: { kind: 'measure', field: 'height' },
  yesNo: { kind: 'yes-no' },
} as const satisfies Record<string, FieldKind>;

test.each([
  [kinds.outline, `30' ahead, left, 24', left, 30', left, 24'`, { walk: `30' ahead, left, 24', left, 30', left, 24'` }],
  [
    kinds.outline,
    '0, 0\n30, 0\n30, 24',
    [
      [0, 0],
      [30, 0],
      [30, 24],
    ],
  ],
  [
    kinds.outline,
    `0 0\n24'-6", 0\n30 24`,
    [
      [0, 0],
      [`24'-6"`, 0],
      [30, 24],
    ],
  ],
  [
    kinds.ring,
    '4 x 3 at 9, 13',
    [
      [9, 13],
      [13, 13],
      [13, 16],
      [9, 16],
    ],
  ],
  [
    kinds.ring,
    `4' x 3' at 9', 13`,
    [
      [9, 13],
      [13, 13],
      [13, 16],
      [9, 16],
    ],
  ],
  [
    kinds.ring,
    '0,0; 4,0; 0,4',
    [
      [0, 0],
      [4, 0],
      [0, 4],
    ],
  ],
  [
    kinds.readings,
    '0 0 -0.5\n10; 0; 3/8"',
    [
      [0, 0, -0.5],
      [10, 0, '3/8"'],
    ],
  ],
  [kinds.ends, '14', 14],
  [kinds.ends, '14, 16', [14, 16]],
  [kinds.pair, '52 x 34', [52, 34]],
  [kinds.pair, `52' x 34'`, `52' x 34'`],
  [kinds.toward, 'side 2', { side: 2 }],
  [kinds.toward, 'NE', 'NE'],
  [kinds.distances, 'none', []],
  [kinds.distances, '1, 29', [1, 29]],
  [kinds.height, '7', 7],
  [kinds.height, '6 apples', '6 apples'],
  [kinds.height, 'not known', 'not known'],
  [kinds.yesNo, 'no', false],
  [kinds.height, '  ', undefined],
])('%j: "%s" goes into the file as %j', (kind, typed, value) => {
  expect(fileValue(kind, typed)).toEqual(value);
});

const feet = fc.integer({ min: -9999, max: 9999 }).map((n) => n / 100);
const point = fc.tuple(feet, feet);
const values: readonly [FieldKind, fc.Arbitrary<unknown>][] = [
  [kinds.outline, fc.array(point, { minLength: 1 })],
  [kinds.ring, fc.array(point, { minLength: 2 })],
  [kinds.readings, fc.array(fc.tuple(feet, feet, feet), { minLength: 1 })],
  [kinds.ends, fc.oneof(feet, point)],
  [kinds.pair, point.map(([a, b]) => [Math.abs(a), Math.abs(b)])],
  [kinds.point, point],
  [kinds.distances, fc.array(feet)],
  [kinds.height, feet],
  [kinds.yesNo, fc.boolean()],
];

test.each(values)('%j: what a box shows reads back as the very same value', (kind, arbitrary) => {
  fc.assert(
    fc.property(arbitrary, (value) => {
      expect(fileValue(kind, textOf(kind, value))).toEqual(value);
    }),
  );
});

test('a place in sixteenths of an inch is shown as it is said, and means the same', () => {
  const value = [
    [0, 0],
    [24 + 6.5 / 12, 0],
  ];
  expect(textOf(kinds.outline, value)).toBe(`0, 0\n24'-6 1/2", 0`);
});

test('places: read, set and taken away without touching the rest', () => {
  const file = { edges: [{ side: 0 }, { side: 1, openings: [{ heightIn: 4 }] }] };
  expect(valueAt(file, 'edges[1].openings[0].heightIn')).toBe(4);
  expect(valueAt(file, 'edges[7].openings[0].heightIn')).toBeUndefined();
  const changed = withValueAt(file, 'edges[1].openings[0].heightIn', 5);
  expect(changed).toEqual({ edges: [{ side: 0 }, { side: 1, openings: [{ heightIn: 5 }] }] });
  expect(withValueAt(changed, 'edges[0].gutter.sizeIn', undefined)).toEqual(changed);
  expect(file.edges[1].openings![0].heightIn).toBe(4);
  const known = new Set(['edges[1].openings[0]', 'edges']);
  expect(nearestOf('edges[1].openings[0].heightIn', known)).toBe('edges[1].openings[0]');
  expect(nearestOf('edges[3].kind', known)).toBe('edges');
  expect(nearestOf('outline[2][0]', known)).toBeNull();
});

test('a form that holds only some of the boxes leaves all others as they are', () => {
  const file = JSON.parse(demoText('back-section')) as unknown;
  for (const section of sections) expect(applySection(section, file, {})).toEqual(file);
  const wishes = sectionOf('wishes')!;
  const after = applySection(wishes, file, { 'preferences.grease': 'yes' });
  expect(after).toEqual({ ...(file as object), preferences: { noFlame: true, grease: true } });
});

test('the text of a file reads back as the file, with places on one line', () => {
  for (const name of ['back-section', 'corner-drain', 'twenty-drains'] as const) {
    const file = JSON.parse(demoText(name)) as unknown;
    expect(JSON.parse(fileText(file))).toEqual(file);
  }
  expect(
    fileText({
      outline: [
        [0, 0],
        [30, 0],
      ],
    }),
  ).toBe('{\n  "outline": [\n    [0, 0],\n    [30, 0]\n  ]\n}\n');
  const tricky = { note: 'a [ b, c ]', list: ['x', '[\n]'] };
  expect(JSON.parse(fileText(tricky))).toEqual(tricky);
});
