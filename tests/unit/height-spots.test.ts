import { expect, test } from 'vitest';
import { assessReady, readRoofText } from '../../src/answer.ts';
import type { Assessment } from '../../src/core/report/types.ts';

function answerOf(roof: object): Assessment {
  const ready = readRoofText(JSON.stringify({ version: 1, label: 'Invented', ...roof }));
  if (!ready.ok) throw new Error(ready.problems.map(({ message }) => message).join('; '));
  return assessReady(ready);
}
const drain = (id: string, x: number) => ({ id, kind: 'drain', at: [x, 10], role: 'primary', leaderRoute: 'yes' });
const long = [
  [0, 0],
  [120, 0],
  [120, 20],
  [0, 20],
];

test('a ridge that meets a parapet between its ends decides there', () => {
  // Four-way at 1/4: ridges halfway between drains, 17.5 ft from them, at 0.5 + 4.375 + 0.5 in over the deck.
  const { layouts } = answerOf({
    outline: long,
    edges: [0, 1, 2, 3].map((side) => ({ side, kind: 'parapet', topIn: 13.2, mayDrain: 'no' })),
    outlets: [10, 45, 80, 115].map((x, i) => drain(`D${i + 1}`, x)),
    existing: { surface: 'level', readOn: 'deck' },
  });
  const plain = layouts.find(({ id }) => id === 'existing-outlets')!;
  const tightest = Math.min(...plain.budgets.map(({ leftIn }) => leftIn));
  expect(tightest).toBeCloseTo(13.2 - 8 - 5.375, 6);
  expect(plain.rejected).not.toBeNull();
  for (const { rejected, budgets } of layouts)
    if (rejected === null) for (const { leftIn } of budgets) expect(leftIn).toBeGreaterThan(-1e-6);
});

test('a ridge along the side of a curb decides how high the curb must stand', () => {
  const { layouts } = answerOf({
    outline: [
      [0, 0],
      [60, 0],
      [60, 40],
      [0, 40],
    ],
    outlets: [
      { ...drain('D1', 10), at: [10, 10] },
      { ...drain('D2', 50), at: [50, 10] },
    ],
    curbs: [
      {
        id: 'unit',
        kind: 'equipment',
        outline: [
          [15, 18],
          [45, 18],
          [45, 22],
          [15, 22],
        ],
        heightIn: 13.5,
      },
    ],
    existing: { surface: 'level', readOn: 'deck' },
  });
  const plain = layouts.find(({ id }) => id === 'existing-outlets')!;
  const needed = plain.newHeights!.raised.find(({ id }) => id === 'curb-unit')!.neededIn;
  const beside = Math.max(
    ...plain.facets.flatMap(({ outline, plane }) =>
      outline.flatMap(([x, y]) =>
        x > 15 - 1e-6 && x < 45 + 1e-6 && y > 18 - 1e-6 && y < 22 + 1e-6
          ? [plane.atOriginIn + plane.gx * x + plane.gy * y]
          : [],
      ),
    ),
  );
  // Heights of planes are over the bare deck here, the cover board among them.
  expect(needed).toBeCloseTo(beside + 8, 4);
  expect(beside).toBeGreaterThan(5);
});

test('what has to give names every height that is broken, rounded up', () => {
  const { search, chosenLayout } = answerOf({
    outline: [
      [0, 0],
      [50, 0],
      [50, 40],
      [0, 40],
    ],
    edges: [0, 1, 2, 3].map((side) => ({ side, kind: 'parapet', topIn: 10, mayDrain: 'no' })),
    outlets: [{ ...drain('D1', 25), at: [25, 20] }],
    existing: { surface: 'level', readOn: 'deck' },
  });
  expect(chosenLayout).toBeNull();
  expect(search!.relaxation!.text.match(/more at/g)!.length).toBeGreaterThan(1);
});
