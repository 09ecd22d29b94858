import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/assess.ts';
import { ruleSetFor } from '../../../src/core/rule-set.ts';
import { roofOf } from '../takeoff-roofs.ts';

/** 10 x 20 ft, gutter at y = 0, read along three lines: heights at y = 0, 2, 20. Invented. */
function answerOf([edge, hollow, far]: readonly [number, number, number]) {
  const roof = roofOf({
    version: 1,
    invented: true,
    outline: [
      [0, 0],
      [10, 0],
      [10, 20],
      [0, 20],
    ],
    edges: [{ side: 0, kind: 'gutter', mayDrain: 'yes' }],
    existing: {
      readings: [0, 5, 10].flatMap((x) => [
        [x, 0, edge],
        [x, 2, hollow],
        [x, 20, far],
      ]),
      sense: 'height',
      readOn: 'covering',
    },
  });
  const found = ruleSetFor(null, null, roof.ruleSet.local);
  if (!found.ok) throw new Error('no rule set');
  return assess(roof, found.ruleSet);
}

const backfall = (heights: readonly [number, number, number]) =>
  answerOf(heights).findings.find(({ id }) => id === 'backfall');

describe('backfall at an edge', () => {
  it('a roof that falls to its edge has none', () => {
    expect(backfall([0, 0.5, 5])).toBeUndefined();
  });

  it('1 in proud over 2 ft: 0.5 in/ft away, and the edge comes down by 1 + 2 x 0.25 in', () => {
    const answer = answerOf([1, 0, 4.5]);
    expect(answer.existing.edgeFirst).toContain('lowered by 1 1/2″, the roof runs to it at 1/4 in per ft');
    expect(backfall([1, 0, 4.5])).toMatchObject({
      level: 'stop',
      value: '0.500 in/ft away',
      limit: '0.250 in/ft toward',
    });
  });

  it('where the rest is nearly level, lowering the edge is not enough and is not said to be', () => {
    const answer = answerOf([1, 0, 0.9]);
    expect(answer.existing.edgeFirst).toBeNull();
    expect(backfall([1, 0, 0.9])?.level).toBe('fix');
    expect(answer.headline).toContain('taper');
  });
});
