import { type CoatBase, coatBases } from '../../../reference/coating-base.ts';
import { sourceNote } from '../finding.ts';
import type { ScopeReason, ScopeWay } from '../report/types.ts';
import { anyBears } from './bearing.ts';
import type { ScopeEvidence } from './evidence.ts';
import { agesWords, askWood, percent, reason, seenDryNote, Weighing } from './weighing.ts';

const bases: readonly CoatBase[] = coatBases;

const baseOf = ({ covering }: ScopeEvidence): CoatBase =>
  bases.find((row) => row.covering === covering) ?? bases.find((row) => row.covering === 'other')!;

const baseReason = (base: CoatBase): ScopeReason => ({ text: base.text, source: sourceNote(base) });

/** Something is broken, wet or rotten: there is a place to mend. */
export const hasToMend = ({ local, inside, wet, softDeck, edgeWood }: ScopeEvidence): boolean =>
  local.length > 0 || inside || wet === true || softDeck || edgeWood;

/** What is mended in its place, the reason that carries it first. */
function mendNotes(out: Weighing, evidence: ScopeEvidence): void {
  const { wet, wetShare, local, inside, worn } = evidence;
  if (wet && wetShare !== null) out.note(reason('wet-cut-out', `Here: ${percent(wetShare)}.`));
  if (local.length > 0) out.note(reason('local-repair'));
  else if (inside) out.note(reason('leak-search'));
  if (evidence.findings.length > 0 && !hasToMend(evidence)) out.note(reason(worn ? 'worn-kept' : 'upkeep'));
}

/** What is not known of the base of a coat. */
function askBase(out: Weighing, evidence: ScopeEvidence): void {
  if (evidence.layers === null)
    out.ask(reason('coat-second-layer', 'How many lie there is not known.'), 'count-layers');
  const base = baseOf(evidence);
  if (base.takes === null) out.ask(baseReason(base), 'inspection');
}

/** @param coat the coating, which is what helps a worn surface, alone or once what is broken in it is mended */
export function repairWay(evidence: ScopeEvidence, coat: ScopeWay): ScopeWay {
  const { ponds, wet, wetShare, wetOverLimit, pastService, old, local, surface, inside } = evidence;
  const onlyWorn = evidence.worn && !hasToMend(evidence);
  const out = new Weighing();
  if (ponds) out.bar(reason('pond-not-patched'));
  if (pastService) out.bar(reason('past-service', agesWords(evidence)));
  if (wetOverLimit) out.bar(reason('wet-over-quarter', `Here: ${percent(wetShare ?? 1)}.`));
  if (evidence.rotAndLeak === 'ground') out.bar(reason('rot-and-leak'));
  if (evidence.worn && coat.standing === 'open') out.bar(reason(onlyWorn ? 'worn-not-patched' : 'worn-and-broken'));
  if (wet && wetShare === null) out.ask(reason('wet-removed', 'How far it reaches is not known.'), 'scan');
  if (wet === null && (inside || surface)) out.ask(reason('moisture-not-known'), 'cores', 'scan');
  if (evidence.findings.length === 0) out.ask(reason('nothing-noted'), 'inspection');
  // What is broken is mended whether or not water stays; the pond then has a cure of its own.
  if (ponds === null && local.length === 0) out.ask(reason('pond-not-known'), 'look-after-rain');
  if (onlyWorn && coat.standing === 'not-known') askBase(out, evidence);
  askWood(out, evidence);
  mendNotes(out, evidence);
  seenDryNote(out, evidence);
  if (ponds === null && local.length > 0) out.note(reason('pond-not-known'));
  if (wet === null && local.length > 0)
    out.note(reason('moisture-not-known', 'Press beside every repair, and cut a core where it is soft.'));
  if (old && !pastService) out.note(reason('old-not-past', agesWords(evidence)));
  return out.way('repair');
}

export function coatWay(evidence: ScopeEvidence): ScopeWay {
  const { ponds, wet, layers, pastService, old, softDeck, worn } = evidence;
  const base = baseOf(evidence);
  const out = new Weighing();
  if (ponds) out.bar(reason('pond-not-coated'));
  if (wet) out.bar(reason('wet-removed'));
  if (layers !== null && layers > 1) out.bar(reason('coat-second-layer'));
  if (base.takes === false) out.bar(baseReason(base));
  if (pastService) out.bar(reason('past-service', agesWords(evidence)));
  if (softDeck) out.bar(reason('rot-not-covered'));
  if (wet === null) out.ask(reason('moisture-not-known'), 'cores', 'scan');
  askWood(out, evidence);
  askBase(out, evidence);
  if (ponds === null) out.ask(reason('pond-not-known'), 'look-after-rain');
  if (worn) out.note(reason(hasToMend(evidence) ? 'mend-then-coat' : 'coat-worn'));
  out.note(reason('coat-allowed'));
  if (base.takes) out.note(baseReason(base));
  if (anyBears(evidence.findings, 'bare')) out.note(reason('coat-bare'));
  if (old && !pastService) out.note(reason('old-not-past', agesWords(evidence)));
  seenDryNote(out, evidence);
  return out.way('coat');
}

/** The four ways where no old roof is left: a new one on the deck, whatever the old one was like. */
export function waysWhenOff(): ScopeWay[] {
  const nothingLeft = (id: ScopeWay['id']): ScopeWay => {
    const out = new Weighing();
    out.bar(reason('roof-off'));
    return out.way(id);
  };
  const out = new Weighing();
  out.note(reason('roof-off'));
  return [
    nothingLeft('repair'),
    nothingLeft('coat'),
    nothingLeft('re-cover'),
    out.way('tear-off', 'New roof on a new deck'),
  ];
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
