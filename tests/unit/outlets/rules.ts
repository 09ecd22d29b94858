import { noLocalRules, type RuleSet, ruleSetFor } from '../../../src/core/rule-set.ts';

/** Rule set by its ids, for tests. */
export function rules(building: string, plumbing: string, local: Partial<RuleSet['local']> = {}): RuleSet {
  const found = ruleSetFor(building, plumbing, { ...noLocalRules, ...local });
  if (!found.ok) throw new Error(found.problems[0].message);
  return found.ruleSet;
}
