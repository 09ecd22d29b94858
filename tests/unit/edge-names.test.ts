import { expect, test } from 'vitest';
import type { Assessment } from '../../src/core/report/types.ts';
import { assessed, roofOf } from './takeoff-roofs.ts';

const answerOf = (parts: object): Assessment =>
  assessed(roofOf({ version: 1, label: 'Invented', existing: { surface: 'level', readOn: 'deck' }, ...parts }));
const door = { kind: 'door', fromFt: 3, toFt: 6, heightIn: 14 };
const drain = { id: 'D1', kind: 'drain', at: [10, 5], role: 'primary', leaderRoute: 'yes' };

test('two doors and two parapets of one length are told apart by the side they face', () => {
  const { budgets, plan } = answerOf({
    outline: [
      [0, 0],
      [20, 0],
      [20, 10],
      [0, 10],
    ],
    edges: [0, 1, 2, 3].map((side) =>
      side % 2 === 0
        ? { side, kind: 'wall', mayDrain: 'no', openings: [door] }
        : { side, kind: 'parapet', mayDrain: 'no', topIn: 30 },
    ),
    outlets: [drain],
  });
  const names = budgets.map(({ where }) => where);
  expect(new Set(names).size).toBe(names.length);
  expect(names).toContain('door on the wall on the S side, 3′-0″ to 6′-0″');
  expect(names).toContain('top of the parapet on the W side, 10′-0″');
  // Along its own side an edge needs no compass.
  expect(plan.edges.map(({ what }) => what)).toEqual(['wall', 'parapet', 'wall', 'parapet']);
});

test('edges that face one way are numbered, and an edge that is the only one of its kind has the plain name', () => {
  const { plan } = answerOf({
    // A comb: the two teeth look west and east alike.
    outline: [
      [0, 0],
      [30, 0],
      [30, 20],
      [20, 20],
      [20, 10],
      [10, 10],
      [10, 20],
      [0, 20],
    ],
    edges: [
      { side: 0, kind: 'gutter', mayDrain: 'yes' },
      ...[1, 2, 3, 4, 5, 6, 7].map((side) => ({ side, kind: 'wall', mayDrain: 'no' })),
    ],
    outlets: [],
  });
  const labels = plan.edges.map(({ label }) => label);
  expect(new Set(labels.map((label) => label.split(',')[0])).size).toBe(8);
  expect(labels[0]).toBe('gutter side, 30′-0″');
  expect(labels[2]).toBe('wall on the N side (side 2), 10′-0″');
});
