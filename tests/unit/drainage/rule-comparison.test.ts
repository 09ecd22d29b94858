import { describe, expect, it } from 'vitest';
import { buildingRules, plumbingRules } from '../../../reference/rule-sets.ts';
import type { RuleComparison } from '../../../src/core/report/types.ts';
import { caseRoof } from '../../cases/case-roof.ts';
import { demo } from '../drawing-fixture.ts';

function comparisonOf(answer: { ruleComparison?: RuleComparison }): RuleComparison {
  if (answer.ruleComparison === undefined) throw new Error('nothing was compared');
  return answer.ruleComparison;
}

describe('a roof of 1:60 under all rule sets (case C42)', () => {
  const { answer } = caseRoof('c42');
  const comparison = comparisonOf(answer);

  it('holds every code once, and marks the two that the file names', () => {
    expect(comparison.buildings.map(({ id }) => id)).toEqual(buildingRules.map(({ id }) => id));
    expect(comparison.plumbings.map(({ id }) => id)).toEqual(plumbingRules.map(({ id }) => id));
    expect(comparison.buildings.filter(({ own }) => own).map(({ id }) => id)).toEqual(['ibc-2021']);
    expect(comparison.plumbings.filter(({ own }) => own).map(({ id }) => id)).toEqual(['ipc-2021']);
  });

  it('is 0.05 in/ft short of 1/4 (IBC 1507.12.1, IRC R905.13.1), 0.10 short of 1:40, and 0.05 over 1:80 (BS 6229:2018)', () => {
    expect(comparison.todayInPerFt).toBeCloseTo(0.2, 9);
    for (const { id, slopes } of comparison.buildings) {
      const margins = slopes.map(({ stage, todayMarginInPerFt }) => [stage, Number(todayMarginInPerFt?.toFixed(6))]);
      expect([id, margins]).toEqual([
        id,
        id === 'bs6229-2018'
          ? [
              ['design', -0.1],
              ['finished', 0.05],
            ]
          : [['new', -0.05]],
      ]);
    }
  });

  it('cites the section of each edition', () => {
    const sectionOf = (id: string) => comparison.buildings.find((row) => row.id === id)?.slopeSource.text;
    expect(sectionOf('ibc-2018')).toContain('1507.13.1');
    expect(sectionOf('ibc-2021')).toContain('1507.12.1');
    expect(sectionOf('irc-2018')).toContain('R905.13.1');
  });

  it('gives the verdict of each code: finished falls pass in the UK, nothing is shown in America', () => {
    const verdictOf = (id: string) => comparison.buildings.find((row) => row.id === id)?.verdict;
    expect(verdictOf('bs6229-2018')).toBe('meets-minimum');
    expect(verdictOf('ibc-2021')).toBe(answer.existing.verdict);
    expect(verdictOf('ibc-2021')).not.toBe('meets-minimum');
  });
});

describe('a roof that ponds', () => {
  const answer = demo('back-section');
  const comparison = comparisonOf(answer);

  it('has lost the exception wherever there is one', () => {
    for (const { id, verdict, slopeException } of comparison.buildings) {
      expect([id, verdict, slopeException.applies]).toEqual([id, 'ponds', false]);
      expect(slopeException.why).toMatch(id === 'bs6229-2018' ? /no such exception/ : /lost the exception/);
    }
  });

  it('counts walls and pipes by each plumbing code, and agrees with the answer under its own', () => {
    const own = comparison.plumbings.find((row) => row.own)!;
    const primary = answer.existing.outlets.filter(({ role }) => role === 'primary');
    expect(own.flowGpm).toBeCloseTo(
      primary.reduce((sum, { flowGpm }) => sum + (flowGpm ?? 0), 0),
      9,
    );
    expect(own.carrying + own.short + own.notKnown).toBe(primary.length);
    expect(own.short).toBe(primary.filter(({ adequate }) => adequate === false).length);
  });
});

describe('readings of "three times the size" (check value 48 of the drainage note: computed)', () => {
  it('stand side by side for the largest drain: 4 in gives 9.42 by area, 12 by diameter, 12.57 by circumference', () => {
    const text = JSON.stringify({
      version: 1,
      outline: [
        [0, 0],
        [20, 0],
        [20, 20],
        [0, 20],
      ],
      outlets: [{ id: 'D1', kind: 'drain', at: [10, 10], sizeIn: 4, role: 'primary' }],
      existing: { surface: 'level' },
    });
    const readings = comparisonOf(caseRoof('one drain', text).answer).scupperReadings!;
    expect(readings.threeAreasIn).toBeCloseTo(9.42, 2);
    expect(readings.threeDiametersIn).toBe(12);
    expect(readings.circumferenceIn).toBeCloseTo(12.57, 2);
  });
});
