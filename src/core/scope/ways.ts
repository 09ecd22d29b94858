import {
  type RecoverSection,
  recoverSections,
  type ScopeRuleId,
  type ScopeTestId,
  scopeRules,
  scopeWays,
} from '../../../reference/scope.ts';
import { inches, plainNumber } from '../../units/print.ts';
import { mayRecover } from '../drainage/recover.ts';
import { sourceNote } from '../finding.ts';
import type { Budget, Layout, ScopeReason, ScopeWay } from '../report/types.ts';
import type { RuleSet } from '../rule-set.ts';
import type { ScopeEvidence } from './evidence.ts';

/** What speaks against a way, what has to be found out first, and what goes with it. */
class Weighing {
  readonly #bars: ScopeReason[] = [];
  readonly #opens: ScopeReason[] = [];
  readonly #notes: ScopeReason[] = [];
  readonly #settle = new Set<ScopeTestId>();

  bar(reason: ScopeReason): void {
    this.#bars.push(reason);
  }

  ask(reason: ScopeReason, ...tests: readonly ScopeTestId[]): void {
    this.#opens.push(reason);
    for (const test of tests) this.#settle.add(test);
  }

  note(reason: ScopeReason): void {
    this.#notes.push(reason);
  }

  /** A bar ends it; what is open after that needs no test. */
  way(id: ScopeWay['id']): ScopeWay {
    const title = scopeWays.find(({ way }) => way === id)?.title ?? id;
    if (this.#bars.length > 0) return { id, title, standing: 'barred', reasons: this.#bars, settle: [] };
    if (this.#opens.length > 0) {
      const reasons = [...this.#opens, ...this.#notes];
      return { id, title, standing: 'not-known', reasons, settle: [...this.#settle] };
    }
    return { id, title, standing: 'open', reasons: this.#notes, settle: [] };
  }
}

export function reason(rule: ScopeRuleId, more = ''): ScopeReason {
  const row = scopeRules[rule];
  return { text: `${row.text}${more === '' ? '' : ` ${more}`}`, source: sourceNote(row) };
}

const percent = (share: number): string => `${plainNumber(share * 100)} % of the area`;

function agesWords({ ageYears, life }: ScopeEvidence): string {
  if (ageYears === null) return '';
  const band = life === null ? '' : `, such a covering lasts ${life[0]} to ${life[1]}`;
  return `(${plainNumber(ageYears)} years${band}.)`;
}

/** Soft deck and rotten eaves are opened before anything is decided over them; neither bars a repair. */
function askWood(out: Weighing, { softDeck, edgeWood, wet }: ScopeEvidence): void {
  if (softDeck) out.ask(reason('rot-not-covered'), 'open-wood');
  if (edgeWood) out.ask(reason('edge-wood'), 'open-wood', ...(wet === null ? (['cores'] as const) : []));
}

function seenDryNote(out: Weighing, { seenDry }: ScopeEvidence): void {
  if (seenDry === null) return;
  const doubt = seenDry.against
    ? 'Other signs speak of water that stands: look once more in the cool season, with the ways out clear.'
    : '';
  out.note(reason('seen-dry', `It was seen dry ${plainNumber(seenDry.hours)} h after rain. ${doubt}`.trim()));
}

export function repairWay(evidence: ScopeEvidence): ScopeWay {
  const { ponds, wet, wetShare, wetOverLimit, pastService, old, local, surface, inside } = evidence;
  const rot = evidence.softDeck || evidence.edgeWood;
  const out = new Weighing();
  if (ponds) out.bar(reason('pond-not-patched'));
  if (pastService) out.bar(reason('past-service', agesWords(evidence)));
  if (wetOverLimit) out.bar(reason('wet-over-quarter', `Here: ${percent(wetShare ?? 1)}.`));
  if (evidence.rotAndLeak === 'ground') out.bar(reason('rot-and-leak'));
  if (wet && wetShare === null) out.ask(reason('wet-removed', 'How far it reaches is not known.'), 'scan');
  if (wet === null && (inside || surface)) out.ask(reason('moisture-not-known'), 'cores', 'scan');
  if (evidence.findings.length === 0) out.ask(reason('nothing-noted'), 'inspection');
  // What is broken is mended whether or not water stays; the pond then has a cure of its own.
  if (ponds === null && local.length === 0) out.ask(reason('pond-not-known'), 'look-after-rain');
  askWood(out, evidence);
  if (local.length > 0) out.note(reason('local-repair'));
  else if (evidence.findings.length > 0 && !surface && !inside && !rot && !wet) out.note(reason('upkeep'));
  seenDryNote(out, evidence);
  if (ponds === null && local.length > 0) out.note(reason('pond-not-known'));
  if (wet === null && local.length > 0)
    out.note(reason('moisture-not-known', 'Press beside every repair, and cut a core where it is soft.'));
  if (wet && wetShare !== null) out.note(reason('wet-cut-out', `Here: ${percent(wetShare)}.`));
  if (old && !pastService) out.note(reason('old-not-past', agesWords(evidence)));
  return out.way('repair');
}

export function coatWay(evidence: ScopeEvidence): ScopeWay {
  const { ponds, wet, layers, pastService, softDeck } = evidence;
  const out = new Weighing();
  if (ponds) out.bar(reason('pond-not-coated'));
  if (wet) out.bar(reason('wet-removed'));
  if (layers !== null && layers > 1) out.bar(reason('coat-second-layer'));
  if (pastService) out.bar(reason('past-service', agesWords(evidence)));
  if (softDeck) out.bar(reason('rot-not-covered'));
  if (wet === null) out.ask(reason('moisture-not-known'), 'cores', 'scan');
  askWood(out, evidence);
  if (layers === null) out.ask(reason('coat-second-layer', 'How many lie there is not known.'), 'count-layers');
  if (ponds === null) out.ask(reason('pond-not-known'), 'look-after-rain');
  out.note(reason('coat-allowed'));
  seenDryNote(out, evidence);
  return out.way('coat');
}

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
    const tests: ScopeTestId[] = wet && wetShare === null ? ['scan'] : ['cores', 'scan'];
    out.ask({ text: answer.why, source }, ...(layers === null ? (['count-layers'] as const) : []), ...tests);
  }
  askWood(out, evidence);
  if (answer.allowed) out.note({ text: answer.why, source });
  if (wet && wetShare !== null) out.note(reason('wet-cut-out', `Here: ${percent(wetShare)}.`));
  if (ponds) out.note(reason('pond-needs-fall'));
  seenDryNote(out, evidence);
  return out.way('re-cover');
}

/** Never on looks alone: it is open where the code, the moisture or the wood asks for it, or everything has been looked at. */
export function tearOffWay(evidence: ScopeEvidence, recover: ScopeWay): ScopeWay {
  const { wet, wetShare, wetOverLimit, rotAndLeak, pastService, layers } = evidence;
  const out = new Weighing();
  const grounds: ScopeReason[] = [
    ...(layers !== null && layers > 1 ? recover.reasons.slice(0, 1) : []),
    ...(wetOverLimit ? [reason('wet-over-quarter', `Here: ${percent(wetShare ?? 1)}.`)] : []),
    ...(rotAndLeak === 'ground' ? [reason('rot-and-leak')] : []),
    ...(pastService ? [reason('past-service', agesWords(evidence))] : []),
  ];
  for (const ground of grounds) out.note(ground);
  if (grounds.length > 0) {
    out.note(reason('shows-the-deck'));
    return out.way('tear-off');
  }
  if (rotAndLeak !== null && rotAndLeak !== 'ground')
    out.ask(reason('rot-and-leak-open', rotAndLeak.lacks.join(' ')), 'open-wood');
  if (evidence.findings.length === 0 && evidence.ponds !== true) out.ask(reason('nothing-noted'), 'inspection');
  else if (wet === null) out.ask(reason('looks-alone'), 'cores', 'scan');
  if (wet && wetShare === null) out.ask(reason('wet-removed', 'How far it reaches is not known.'), 'scan');
  if (evidence.findings.length > 0) out.note(reason('nothing-asks'));
  if (evidence.old) out.note(reason('old-not-past', agesWords(evidence)));
  return out.way('tear-off');
}
