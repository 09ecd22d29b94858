import { expect, test } from 'vitest';
import { orderOfWork } from '../../src/core/report/page-crew.ts';
import { fillRows } from '../../src/core/report/page-materials.ts';
import { assessed, roofOf } from './takeoff-roofs.ts';

const answer = assessed(
  roofOf({
    version: 1,
    label: 'Invented parapets',
    building: { heightFt: 12, below: 'attic' },
    deck: { kind: 'plywood', thicknessIn: 0.625 },
    outline: [
      [0, 0],
      [24, 0],
      [24, 16],
      [0, 16],
    ],
    edges: [
      { side: 0, kind: 'parapet', topIn: 24, mayDrain: 'yes' },
      ...[1, 2, 3].map((side) => ({ side, kind: 'parapet', topIn: 24, mayDrain: 'no' })),
    ],
    outlets: [
      { id: 'D1', kind: 'drain', at: [12, 8], role: 'primary' },
      { id: 'S1', kind: 'scupper', role: 'overflow', side: 0, alongFt: 12, widthIn: 8, heightIn: 4, inletIn: 2 },
    ],
    existing: { surface: 'level', readOn: 'deck' },
  }),
);
const layout = answer.layouts.find(({ id }) => id === 'existing-outlets')!;

test('an overflow is raised once: over the surface beside it and two inches over the low point, on every paper', () => {
  // Boards of 1/2 in at the drain 8 ft away, 1/4 in per ft, 1/2 in of cover board: 3 in at the inlet, 1 in at the drain.
  const inlet = layout.newHeights!.raised.find(({ kind }) => kind === 'overflow')!;
  expect(inlet.raiseIn).toBeCloseTo(1, 6);
  expect(inlet.neededIn).toBeCloseTo(3, 6);
  const advice = answer.findings.find(({ id }) => id === 'overflow-buried');
  expect(advice?.message).toContain('raise its inlet by 1 in,');
  const step = orderOfWork(answer, layout).find(({ title }) => title === 'Raise what stands in the way')!;
  expect(step.lines).toEqual(['inlet of overflow S1: raise it 1″']);
});

test('a parapet that is opened to a gutter is no parapet any more, and shows metal', () => {
  const opened = answer.layouts.find(({ id }) => id.startsWith('open-side-0'))!;
  expect(opened.newHeights!.parapets).toHaveLength(3);
  expect(opened.newHeights!.faces.map(({ edge }) => edge)).toEqual(['parapet on the S side, 24′-0″']);
});

test('flat fill is ordered alike wherever it is listed', () => {
  fillRows(layout).forEach(({ order }, i) => {
    const line = answer.materials.find(({ id }) => id === `fill-${layout.fill[i].thicknessIn}`)!;
    expect(Number(order)).toBe(line.orderQuantity);
    expect(line.orderQuantity).toBeGreaterThanOrEqual(layout.fill[i].boards);
  });
  expect(layout.fill.length).toBeGreaterThan(0);
});

test('a layout without a valley does not have the steepest one', () => {
  for (const { leastValleySlopeInPerFt, why } of answer.layouts)
    if (leastValleySlopeInPerFt === null) expect(why).not.toContain('steepest valleys');
});
