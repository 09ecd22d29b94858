import { expect, test } from 'vitest';
import { assessReady, readRoofText } from '../../src/answer.ts';
import { layoutRows } from '../../src/core/report/page-layouts.ts';
import type { Assessment } from '../../src/core/report/types.ts';

/** 60 x 20 ft that drains over one long side and may be opened at the other. */
function answerWith(prices: object): Assessment {
  const ready = readRoofText(
    JSON.stringify({
      version: 1,
      label: 'Invented strip',
      outline: [
        [0, 0],
        [60, 0],
        [60, 20],
        [0, 20],
      ],
      edges: [
        { side: 0, kind: 'gutter', mayDrain: 'yes' },
        { side: 2, kind: 'rake', mayDrain: 'yes' },
      ],
      existing: { surface: 'level', readOn: 'deck' },
      prices,
    }),
  );
  if (!ready.ok) throw new Error(ready.problems.map(({ message }) => message).join('; '));
  return assessReady(ready);
}

const lead = ({ layouts, chosenLayout }: Assessment) => layouts.find(({ id }) => id === chosenLayout)!;

test('dear boards open the other side, a dear gutter keeps it shut', () => {
  const dearBoards = lead(answerWith({ boardFt: 5, edgeFt: 1 }));
  const dearGutter = lead(answerWith({ boardFt: 1, edgeFt: 500 }));
  expect(dearBoards.newOutlets).toBe(1);
  expect(dearGutter.newOutlets).toBe(0);
});

test('the cost is told part by part and adds up', () => {
  const answer = answerWith({ boardFt: 5, edgeFt: 1 });
  const { cost, volumeBoardFt } = lead(answer);
  expect(cost!.own).toBe(true);
  expect(cost!.amount).toBeCloseTo(volumeBoardFt * 5 + 60, 6);
  expect(layoutRows(answer)[0].cost).toContain('new gutters 60 ft at 1');
});

test('without prices nothing is said of money', () => {
  const answer = answerWith({});
  expect(lead(answer).cost!.own).toBe(false);
  expect(layoutRows(answer)[0].cost).toBeNull();
});

test('other prices without that of the boards are asked about', () => {
  const ready = readRoofText('{"version":1,"outline":[[0,0],[9,0],[9,9],[0,9]],"prices":{"drain":900}}');
  expect(ready.ok ? null : ready.problems[0].path).toBe('prices.boardFt');
});
