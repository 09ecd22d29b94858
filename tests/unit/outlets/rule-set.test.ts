import { describe, expect, it } from 'vitest';
import { buildingRules, plumbingRules } from '../../../reference/rule-sets.ts';
import {
  coveringClassOf,
  judgeSlope,
  reRoofOverflowException,
  reRoofSlopeException,
  slopeMinimum,
} from '../../../src/core/drainage/slope-rule.ts';
import { noLocalRules, ruleSetFor } from '../../../src/core/rule-set.ts';
import { rules } from './rules.ts';

describe('rule set of a job', () => {
  it('takes the default where none is named, and says so', () => {
    const found = ruleSetFor(null, null, noLocalRules);
    if (!found.ok) throw new Error('default rule set is missing');
    expect(found.ruleSet.building.id).toBe('irc-2021');
    expect(found.ruleSet.plumbing.id).toBe('ipc-2021');
    expect(found.assumed.map((each) => each.path)).toEqual(['ruleSet.building', 'ruleSet.plumbing']);
  });

  it('assumes nothing where both are named, in any combination', () => {
    for (const building of buildingRules) {
      for (const plumbing of plumbingRules) {
        const found = ruleSetFor(building.id, plumbing.id, noLocalRules);
        expect(found.ok && found.assumed).toEqual([]);
      }
    }
  });

  it('names every bad id with the valid ones', () => {
    const found = ruleSetFor('ibc-1999', 'upc', noLocalRules);
    expect(found.ok).toBe(false);
    if (found.ok) return;
    expect(found.problems.map((problem) => problem.path)).toEqual(['ruleSet.building', 'ruleSet.plumbing']);
    expect(found.problems[0].validIds).toContain('ibc-2024');
    expect(found.problems[1].message).toBe(
      '"upc" names no rule set: write one of ipc-2012, ipc-2015, ipc-2018, ipc-2021, upc-2000, upc-2021.',
    );
  });

  it('prints local amendments, and the limits of standing water follow them', () => {
    const set = rules('ibc-2021', 'ipc-2021', { rainInPerHr: 6, birdBathIn: 0.125, birdBathSqFt: 25 });
    expect(set.localNotes).toHaveLength(3);
    expect([set.birdBathIn, set.birdBathSqFt]).toEqual([0.125, 25]);
    const { birdBathIn, birdBathSqFt } = rules('ibc-2021', 'ipc-2021');
    expect([birdBathIn, birdBathSqFt]).toEqual([0.25, 10]);
  });
});

describe('least slope', () => {
  it('shares 1/4 between sheets and an unknown covering, and refuses a percentage when strict', () => {
    const set = rules('irc-2018', 'ipc-2018');
    expect(slopeMinimum(set, null).designInPerFt).toBe(0.25);
    expect(coveringClassOf('epdm')).toBe('thermoset');
    expect(coveringClassOf('other')).toBeNull();
    expect(judgeSlope(0.25, 0.25, 2, true)).toEqual({ standing: 'meets', shortInPerFt: 0 });
    expect(judgeSlope(0.2399, 0.25, 2, false).standing).toBe('below');
    expect(judgeSlope(0.24, 0.25, null, false).standing).toBe('below');
  });

  it('one 1:60 roof (case C42): fails new American work, is above the UK finished fall and below its design fall', () => {
    const american = slopeMinimum(rules('ibc-2021', 'ipc-2021'), 'thermoplastic');
    const british = slopeMinimum(rules('bs6229-2018', 'ipc-2021'), 'thermoplastic');
    expect(judgeSlope(0.2, american.designInPerFt, american.printedPercent, false).standing).toBe('below');
    expect(judgeSlope(0.2, british.finishedInPerFt, null, false).standing).toBe('meets');
    expect(judgeSlope(0.2, british.designInPerFt, null, false).standing).toBe('below');
  });
});

describe('re-roof exceptions', () => {
  const set = rules('ibc-2018', 'ipc-2018');

  it('need a positive finding of drainage', () => {
    expect(reRoofSlopeException(set, true, 'drains').applies).toBe(true);
    expect(reRoofSlopeException(set, true, 'not-shown').applies).toBe(false);
    expect(reRoofSlopeException(set, true, 'ponds').why).toContain('lost the exception');
    expect(reRoofSlopeException(set, false, 'drains').applies).toBe(false);
    expect(reRoofSlopeException(set, true, 'drains').source?.text).toContain('1511.1 exception 1');
  });

  it('bring the structure with them on the existing-building path, and do not exist in the UK standard', () => {
    expect(reRoofSlopeException(rules('iebc-2018', 'ipc-2018'), true, 'drains').why).toContain('1608.3');
    const uk = reRoofOverflowException(rules('bs6229-2018', 'ipc-2018'), true, 'drains');
    expect(uk.applies).toBe(false);
    expect(uk.source).toBeNull();
  });
});
