import { expect, test } from 'vitest';
import { assessReady, readRoofText } from '../../src/answer.ts';
import type { Assessment } from '../../src/core/report/types.ts';

/** 30 x 24 ft between walls; the drain in its middle is only wished for. */
function answerWith(outlets: readonly object[], below = 'living-exposed-deck'): Assessment {
  const ready = readRoofText(
    JSON.stringify({
      version: 1,
      label: 'Invented room',
      building: { below },
      outline: [
        [0, 0],
        [30, 0],
        [30, 24],
        [0, 24],
      ],
      edges: [0, 1, 2, 3].map((side) => ({ side, kind: 'wall', mayDrain: 'no' })),
      outlets,
      existing: { surface: 'level', readOn: 'deck' },
    }),
  );
  if (!ready.ok) throw new Error(ready.problems.map(({ message }) => message).join('; '));
  return assessReady(ready);
}

const wish = { id: 'D1', kind: 'drain', at: [15, 12], sizeIn: 3, role: 'primary', status: 'proposed' };

test('a drain that is wished for takes no water today', () => {
  const { existing } = answerWith([wish]);
  expect(existing.outlets).toEqual([]);
  expect(existing.undrainedAreaSqFt).toBeCloseTo(720, 6);
});

test('over an exposed deck it is barred until a route for its leader is marked, and is never called what is there', () => {
  const barred = answerWith([wish]);
  const layout = barred.layouts.find(({ id }) => id === 'existing-outlets')!;
  expect(layout.title).toContain('wished for');
  expect(layout.rejected?.why).toContain('route');
  const routed = answerWith([{ ...wish, leaderRoute: 'yes' }]);
  expect(routed.layouts.find(({ id }) => id === routed.chosenLayout)?.title).toContain('wished for');
  expect(answerWith([wish], 'attic').chosenLayout).not.toBeNull();
});

test('ground that is level and has no way out is counted once', () => {
  const { existing } = answerWith([]);
  expect(existing.undrainedAreaSqFt).toBeCloseTo(720, 6);
});
