import { describe, expect, it } from 'vitest';
import { dryingSeasons, leftAfter48hIn } from '../../../src/core/drainage/drying.ts';

describe('what is left of a pond after 48 h', () => {
  it('dry zones by the desert station, all others as humid', () => {
    expect(dryingSeasons('3B').warm.id).toBe('arid-summer');
    expect(dryingSeasons('4A').warm.id).toBe('humid-summer');
    expect(dryingSeasons(null).cool.id).toBe('cool-season');
  });

  it('1 in, humid: 0.23 x 0.7 x 2 in dry at most, 0.02 x 0.7 x 2 in at least (from memory)', () => {
    const [warm, cool] = leftAfter48hIn(1, '4A');
    expect(warm).toBeCloseTo(1 - 0.322, 9);
    expect(cool).toBeCloseTo(1 - 0.028, 9);
  });

  it('never below nothing', () => {
    expect(leftAfter48hIn(0.01, '2B')).toEqual([0, 0]);
  });
});
