import { type RecoverSection, recoverSections, type ScopeTestId } from '../../../reference/scope.ts';
import { inches } from '../../units/print.ts';
import { mayRecover } from '../drainage/recover.ts';
import { sourceNote } from '../finding.ts';
import type { Budget, Layout, ScopeReason, ScopeWay } from '../report/types.ts';
import type { RuleSet } from '../rule-set.ts';
import type { ScopeEvidence } from './evidence.ts';
import { askWood, percent, reason, seenDryNote, Weighing } from './weighing.ts';

const sections: readonly RecoverSection[] = recoverSections;

/** The bars of the code that is in force, where its section is held. */
function recoverSource(ruleSet: RuleSet, otherwise: ScopeReason['source']): ScopeReason['source'] {
  const row = sections.find(({ codes }) => codes.includes(ruleSet.building.id));
  return row === undefined ? otherwise : sourceNote(row);
}

/** Height that a re-cover takes at the tightest place, beyond what is there; null = it fits or is not known. */
function tooHigh(chosen: Layout, budgets: readonly Budget[], buildUpIn: number): string | null {
  const hard = new Set(budgets.filter(({ hardness }) => hardness === 'stop').map(({ id }) => id));
  const tight = chosen.budgets.filter(({ id }) => hard.has(id)).sort((a, b) => a.leftIn - b.leftIn)[0];
  if (tight === undefined || tight.leftIn >= buildUpIn) return null;
  return `With the old ${inches(buildUpIn)} left under the taper it stands ${inches(buildUpIn - tight.leftIn)} too high: ${tight.where}.`;
}

export interface RecoverFacts {
  ruleSet: RuleSet;
  chosen: Layout | null;
  budgets: readonly Budget[];
  buildUpIn: number;
  /** The old covering's kind in the code's words. */
  covering: string | null;
}

export function recoverWay(evidence: ScopeEvidence, facts: RecoverFacts): ScopeWay {
  const { ponds, wet, wetShare, wetOverLimit, layers, rotAndLeak } = evidence;
  const { chosen } = facts;
  const out = new Weighing();
  const soaked = wet === null ? null : wet && (wetShare === null || wetOverLimit);
  const answer = mayRecover(layers, wet && wetShare === null ? null : soaked, facts.covering);
  const source = recoverSource(facts.ruleSet, answer.source);
  if (answer.allowed === false) out.bar({ text: answer.why, source });
  if (rotAndLeak === 'ground') out.bar(reason('rot-and-leak'));
  if (ponds && chosen === null) out.bar(reason('pond-needs-fall', 'No taper fits under the heights of this roof.'));
  const high = ponds && chosen !== null ? tooHigh(chosen, facts.budgets, facts.buildUpIn) : null;
  if (high !== null) out.bar(reason('pond-needs-fall', high));
  if (answer.allowed === null) {
    const unknown = wet && wetShare === null;
    const tests: ScopeTestId[] = unknown ? ['scan'] : wet === null ? ['cores', 'scan'] : [];
    const why = unknown ? reason('wet-removed', 'How far it reaches is not known.') : { text: answer.why, source };
    out.ask(why, ...(layers === null ? (['count-layers'] as const) : []), ...tests);
  }
  askWood(out, evidence);
  if (wet && wetShare !== null) out.note(reason('wet-cut-out', `Here: ${percent(wetShare)}.`));
  if (answer.allowed) out.note({ text: wet ? 'One covering, dry beside that part.' : answer.why, source });
  if (ponds) out.note(reason('pond-needs-fall'));
  seenDryNote(out, evidence);
  return out.way('re-cover');
}
