import { expect, test } from 'vitest';
import type { Assessment } from '../../src/core/report/types.ts';
import { assessed, roofOf } from './takeoff-roofs.ts';

/** 30 x 24 ft, level, with parts of its own. */
const answerOf = (parts: object): Assessment =>
  assessed(
    roofOf({
      version: 1,
      label: 'Invented room',
      outline: [
        [0, 0],
        [30, 0],
        [30, 24],
        [0, 24],
      ],
      existing: { surface: 'level', readOn: 'deck' },
      ...parts,
    }),
  );
const round = (edge: object) => [0, 1, 2, 3].map((side) => ({ side, ...edge }));
const drain = { id: 'D1', kind: 'drain', at: [15, 12], role: 'primary', leaderRoute: 'yes' };
const stopOf = ({ findings }: Assessment) => findings.find(({ id }) => id === 'nothing-fits')?.message;

test('where no edge may drain, the permission that would let a layout fit is named, and what it opens', () => {
  const answer = answerOf({
    building: { below: 'living-exposed-deck' },
    edges: round({ kind: 'rake', mayDrain: 'no' }),
  });
  expect(answer.chosenLayout).toBeNull();
  expect(answer.relax).toMatch(/^(Ask whether water may leave over the rake|Find a way down for the pipe)/);
  expect(answer.relax).toMatch(/Then this fits: /);
  expect(stopOf(answer)).toContain(answer.relax);
  for (const { rejected } of answer.layouts) expect(rejected?.relax).toBeTruthy();
});

test('with a permission that keeps no height the height is what has to give', () => {
  const answer = answerOf({
    building: { below: 'living-exposed-deck' },
    edges: round({ kind: 'parapet', mayDrain: 'no', topIn: 7 }),
  });
  expect(answer.chosenLayout).toBeNull();
  expect(answer.search!.barred.every(({ fits }) => !fits)).toBe(true);
  expect(answer.relax).not.toContain('Then this fits');
});

test('a flat layer that is not in stock: what is, and the nearest that can be made', () => {
  const answer = answerOf({ outlets: [drain], insulation: { baseIn: '50 mm' } });
  expect(answer.chosenLayout).toBeNull();
  expect(answer.relax).toMatch(
    /^The list has flat boards of .*: add flat boards that make 1\.97 in, or take 2″, which they make\.$/,
  );
  expect(stopOf(answer)).toContain('or take 2″');
});

test('a supplier without boards of the rule is told which slopes there are and which is asked for', () => {
  const answer = answerOf({
    outlets: [drain],
    boards: { groups: [{ slopeInPerFt: 0.1875, runFt: 4, widthFt: 4, lowEdgesIn: [0.5, 1.25], fillStepIn: 1.5 }] },
  });
  expect(answer.chosenLayout).toBeNull();
  expect(answer.relax).toMatch(/^The list has tapered boards of 3\/16 in per ft: add boards of 1\/4 in per ft/);
});
