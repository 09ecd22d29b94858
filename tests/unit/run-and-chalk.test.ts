import { expect, test } from 'vitest';
import { chalkLines } from '../../src/drawing/chalk.ts';
import { uShape } from '../shapes.ts';
import { assessed, roofOf } from './takeoff-roofs.ts';

test('the run to a limit is that of the supplier’s boards: 2 % boards from 20 mm', () => {
  const { budgets } = assessed(
    roofOf({
      version: 1,
      label: 'Invented',
      building: { below: 'attic' },
      outline: [
        [0, 0],
        [20, 0],
        [20, 20],
        [0, 20],
      ],
      edges: [0, 1, 2, 3].map((side) => ({ side, kind: 'parapet', topIn: 13, mayDrain: 'no' })),
      outlets: [{ id: 'D1', kind: 'drain', at: [10, 10], role: 'primary' }],
      boards: {
        groups: [
          { slopeInPerFt: 0.24, runFt: 4, widthFt: 4, lowEdgesIn: ['20 mm', '44.384 mm'], fillStepIn: '48.768 mm' },
        ],
      },
      existing: { surface: 'level', readOn: 'deck' },
    }),
  );
  // 13 in less 8 of flashing and 1/2 of cover board leaves 4.5 in of boards: (4.5 - 0.787) / 0.24.
  expect(budgets[0].run?.runFt).toBeCloseTo((4.5 - 20 / 25.4) / 0.24, 6);
});

test('a chalk line is measured from the way out that the boards there fall to', () => {
  const { layouts, plan } = assessed(
    roofOf({
      version: 1,
      label: 'Invented U',
      building: { below: 'attic' },
      outline: uShape,
      edges: Array.from({ length: 8 }, (_, side) => ({ side, kind: 'parapet', topIn: 30, mayDrain: 'no' })),
      outlets: [
        { id: 'S1', kind: 'scupper', role: 'primary', side: 0, alongFt: 30 },
        { id: 'S2', kind: 'scupper', role: 'primary', side: 2, alongFt: 10 },
      ],
      existing: { surface: 'level', readOn: 'deck' },
    }),
  );
  const layout = layouts.find(({ id }) => id === 'existing-outlets')!;
  const lower = chalkLines(layout, plan.edges).filter(
    ({ from, to }) => Math.abs(from[0] - to[0]) < 1e-6 && Math.min(from[1], to[1]) < 1 && from[0] > 32,
  );
  expect(lower.length).toBeGreaterThan(1);
  for (const { from, start, offFt } of lower) {
    expect(start).toBe('scupper S1');
    expect(offFt).toBeCloseTo(from[0] - 30, 6);
  }
});
