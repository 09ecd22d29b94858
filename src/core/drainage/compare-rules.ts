import { buildingRules } from '../../../reference/rule-sets.ts';
import type { CoveringClass } from '../../../reference/slope-minimums.ts';
import type { RuleStanding } from '../report/types.ts';
import type { RuleSet } from '../rule-set.ts';
import { judgeSlope, type SlopeMinimum, slopeMinimum } from './slope-rule.ts';

/** A design value and a finished value are asked apart only where a rule set has two. */
function stagesOf({
  designInPerFt,
  finishedInPerFt,
}: SlopeMinimum): readonly (readonly ['new' | 'design' | 'finished', number])[] {
  if (designInPerFt === finishedInPerFt) return [['new', designInPerFt]];
  return [
    ['design', designInPerFt],
    ['finished', finishedInPerFt],
  ];
}

/**
 * One slope [in/ft] of a new covering under every rule set that is held as data, without the re-roof exceptions.
 * @param covering class of the new covering; null takes the 1/4 in/ft that all the sheets share
 * @param strict refuses the printed percentage
 * Source: reference/rule-sets.ts, reference/slope-minimums.ts. Correctness: tests/cases/curbs-and-slopes.test.ts
 */
export function compareRuleSets(
  slopeInPerFt: number,
  covering: CoveringClass | null,
  strict: boolean,
  ruleSet: RuleSet,
): RuleStanding[] {
  return buildingRules.flatMap((building) => {
    const minimum = slopeMinimum({ ...ruleSet, building }, covering);
    return stagesOf(minimum).map(([stage, limitInPerFt]): RuleStanding => {
      const { standing, shortInPerFt } = judgeSlope(slopeInPerFt, limitInPerFt, minimum.printedPercent, strict);
      const { source } = minimum;
      return {
        id: building.id,
        title: building.title,
        stage,
        limitInPerFt,
        passes: standing !== 'below',
        shortInPerFt,
        source,
      };
    });
  });
}
