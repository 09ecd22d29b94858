import { type ScopeRuleId, type ScopeTestId, scopeRules, scopeWays } from '../../../reference/scope.ts';
import { plainNumber } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { ScopeReason, ScopeWay } from '../report/types.ts';
import type { ScopeEvidence } from './evidence.ts';

/** What speaks against a way, what has to be found out first, and what goes with it. */
export class Weighing {
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
  way(id: ScopeWay['id'], title: string = scopeWays.find(({ way }) => way === id)?.title ?? id): ScopeWay {
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

export const percent = (share: number): string => `${plainNumber(share * 100)} % of the area`;

export function agesWords({ ageYears, life }: ScopeEvidence): string {
  if (ageYears === null) return '';
  const band = life === null ? '' : `, such a covering lasts ${life[0]} to ${life[1]}`;
  return `(${plainNumber(ageYears)} years${band}.)`;
}

/** Soft deck and rotten eaves are opened before anything is decided over them; neither bars a repair. */
export function askWood(out: Weighing, { softDeck, woodDeck, edgeWood, wet }: ScopeEvidence): void {
  if (softDeck && !woodDeck) out.ask(reason('deck-engineer'), 'engineer', 'open-wood');
  if (softDeck && woodDeck) out.ask(reason('rot-not-covered'), 'open-wood');
  if (edgeWood) out.ask(reason('edge-wood'), 'open-wood', ...(wet === null ? (['cores'] as const) : []));
}

export function seenDryNote(out: Weighing, { seenDry }: ScopeEvidence): void {
  if (seenDry === null) return;
  const doubt = seenDry.against
    ? 'Other signs speak of water that stands: look once more in the cool season, with the ways out clear.'
    : '';
  out.note(reason('seen-dry', `It was seen dry ${plainNumber(seenDry.hours)} h after rain. ${doubt}`.trim()));
}
