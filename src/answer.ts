import { assess, assessInSteps, assessToday } from './core/assess.ts';
import type { Assessment, RoofToday, SearchProgress } from './core/report/types.ts';
import type { Roof } from './core/roof.ts';
import { type RuleSet, ruleSetFor } from './core/rule-set.ts';
import { type ParsedRoof, parseRoofText } from './input/parse-roof.ts';
import type { InputNote, InputProblem } from './input/problems.ts';

/** A roof that can be assessed: the file was read and its codes are known. */
export interface ReadyRoof {
  ok: true;
  roof: Roof;
  ruleSet: RuleSet;
  notes: readonly InputNote[];
}

export type RoofReading = ReadyRoof | { ok: false; problems: readonly InputProblem[] };

function withRuleSet(parsed: ParsedRoof): RoofReading {
  if (!parsed.ok) return { ok: false, problems: parsed.problems };
  const { roof, notes } = parsed;
  const rules = ruleSetFor(roof.ruleSet.building, roof.ruleSet.plumbing, roof.ruleSet.local);
  if (rules.ok) return { ok: true, roof, ruleSet: rules.ruleSet, notes };
  return { ok: false, problems: rules.problems.map((problem) => ({ ...problem, code: 'choice' })) };
}

/** A roof file as text, ready to be assessed, or every problem that stands in the way. */
export const readRoofText = (text: string): RoofReading => withRuleSet(parseRoofText(text));

export const assessReady = ({ roof, ruleSet }: ReadyRoof): Assessment => assess(roof, ruleSet);

/** The same answer, with how far it is after every step. */
export const assessReadyInSteps = ({ roof, ruleSet }: ReadyRoof): Generator<SearchProgress, Assessment> =>
  assessInSteps(roof, ruleSet);

/** The roof as it is, without layouts. */
export const todayOfReady = ({ roof, ruleSet }: ReadyRoof): RoofToday => assessToday(roof, ruleSet);
