import { expect, test } from 'vitest';
import { parseRoofObject } from '../../../src/input/parse-roof.ts';

const walk = (text: string) => parseRoofObject({ version: 1, outline: { walk: text }, existing: { readOn: 'deck' } });

function corners(text: string) {
  const parsed = walk(text);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return parsed;
}

const rectangle = [
  [0, 0],
  [30, 0],
  [30, 24],
  [0, 24],
];

test.each([
  "30' ahead, left, 24', left, 30', left, 24'",
  "30' along the gutter, turn left, 24'-0\" to the wall; turn left; 30', then left, then 24'",
  '30 ft left 24 ft left 30 ft left 24 ft',
  '30 ft\nleft\n24 ft\nleft\n30 ft\nleft\n24 ft\nleft',
  "30', left 90, 24', left 90 degrees, 30', left, 24'",
])('a square walk: %j', (text) => {
  const { roof, notes } = corners(text);
  expect(roof.outline).toEqual(rectangle);
  expect(notes).toEqual([]);
});

test('right turns go round clockwise', () => {
  const { roof, notes } = corners("30', right, 24', right, 30', right, 24'");
  expect(roof.outline).toEqual([
    [0, 0],
    [30, 0],
    [30, -24],
    [0, -24],
  ]);
  expect(notes.map(({ code }) => code)).toEqual(['clockwise']);
});

test('turns of 45 degrees close an octagon', () => {
  const { roof, notes } = corners(Array.from({ length: 8 }, () => "10', turn left 45").join(', '));
  expect(roof.outline).toHaveLength(8);
  expect(roof.outline[2][0]).toBeCloseTo(10 + 10 * Math.SQRT1_2, 9);
  expect(notes).toEqual([]);
});

test('a gap of 1/4 in is spread, square corners stay square, and the gap is said', () => {
  const { roof, notes } = corners("30', left, 24', left, 29'-11 3/4\", left, 24'");
  const wide = 30 - (0.25 / 12) * (30 / (60 - 0.25 / 12));
  expect(roof.outline.map(([x]) => x)).toEqual([0, expect.closeTo(wide, 8), expect.closeTo(wide, 8), 0]);
  expect(roof.outline.map(([, y]) => y)).toEqual([0, 0, 24, 24]);
  expect(notes).toEqual([
    expect.objectContaining({ code: 'closing', message: expect.stringMatching(/closes to 0.25 in \(1 part in 5,183/) }),
  ]);
});

test('the tolerance is 1/2 in or 1 part in 500 of the perimeter, whichever is more', () => {
  expect(walk("10', left, 10', left, 9'-11 1/2\", left, 10'").ok).toBe(true);
  expect(walk("10', left, 10', left, 9'-11\", left, 10'").ok).toBe(false);
  expect(walk("200', left, 100', left, 199', left, 100'").ok).toBe(true);
  expect(walk("200', left, 100', left, 198'-6\", left, 100'").ok).toBe(false);
});

test('a last side that is left out is closed where the walk turns to its start, and offered where it does not', () => {
  const { roof, notes } = corners("30', left, 24', left, 30', left");
  expect(roof.outline).toEqual(rectangle);
  expect(notes).toEqual([expect.objectContaining({ code: 'closing', value: 24 })]);
  const open = walk("30', left, 24', left, 30'");
  expect(open.ok).toBe(false);
  if (!open.ok)
    expect(open.problems[0].proposals).toEqual([
      { value: 24, unit: 'ft', text: 'left, 24′-0″ as one more side at the end' },
    ]);
});

test('an unclear or impossible leg is told with the others', () => {
  const parsed = walk('24 6, left, 8\'-15", lft, about 30 ft');
  expect(parsed.ok).toBe(false);
  if (parsed.ok) return;
  expect(parsed.problems.map(({ code, got }) => `${code} ${got}`)).toEqual([
    'ask "24 6"',
    `measure "8'-15\\""`,
    'walk lft',
  ]);
});

test('a walk over its own tracks is a crossed outline', () => {
  const parsed = walk("20', left, 20', left, 10', left, 30', right, 10', right, 10'");
  expect(parsed.ok ? [] : parsed.problems.map(({ path, code }) => `${path} ${code}`)).toEqual(['outline crossed']);
});

test('a walk without sides, or far too long to be one', () => {
  for (const [text, code] of [
    ['', 'walk'],
    ['left, left', 'walk'],
    ['x'.repeat(200_000), 'too-large'],
  ]) {
    const parsed = walk(text);
    expect(parsed.ok ? [] : parsed.problems.map((problem) => problem.code)).toEqual([code]);
  }
});
