import { type ScopeTestRow, scopeTests } from '../../../reference/scope.ts';
import { sourceNote } from '../finding.ts';
import { deckNames } from '../kind-names.ts';
import type { Budget, Finding, ScopeReport, ScopeWay } from '../report/types.ts';
import { listed } from '../report/words.ts';
import { isWood } from '../site/wood-deck.ts';
import { openedBy, woodAllowance } from '../takeoff/wood-allowance.ts';
import { evidenceOf, type ScopeInput } from './evidence.ts';
import { recoverWay } from './recover-way.ts';
import { repairsOf } from './repairs.ts';
import { scopeFindings } from './scope-findings.ts';
import { coatWay, hasToMend, repairWay, tearOffWay, waysWhenOff } from './ways.ts';

const tests: readonly ScopeTestRow[] = scopeTests;

/** The least way that nothing bars; null where that one still has to be looked into. */
function recommendedOf(ways: readonly ScopeWay[]): ScopeWay['id'] | null {
  const first = ways.find(({ standing }) => standing !== 'barred');
  return first?.standing === 'open' ? first.id : null;
}

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

type ComesTo = NonNullable<ScopeReport['comesTo']>;

const verbs: Readonly<Record<ComesTo, string>> = {
  upkeep: 'Keep it as it is.',
  repair: 'Repair it where it is.',
  coat: 'It may be coated.',
  're-cover': 'A new roof may go over the old one.',
  'tear-off': 'Tear it off to the deck.',
  off: 'Build the deck and lay the new roof on it.',
};

/** "cut cores or have the moisture scanned": either of the two tells. */
function askedWords(settle: readonly string[]): string {
  const words = tests.filter(({ test }) => settle.includes(test)).map(({ what }) => lower(what));
  const [cores, scan] = (['cores', 'scan'] as const).map((id) =>
    lower(tests.find(({ test }) => test === id)?.what ?? ''),
  );
  if (!words.includes(cores) || !words.includes(scan)) return listed(words);
  return listed(words.filter((each) => each !== scan).map((each) => (each === cores ? `${cores} or ${scan}` : each)));
}

type AnsweredBy = Pick<ScopeReport, 'ways' | 'recommended' | 'comesTo' | 'mends' | 'repairs'>;

function answerOf({ ways, recommended, comesTo, mends, repairs }: AnsweredBy): string {
  const barred = ways.filter(({ standing }) => standing === 'barred');
  if (comesTo !== null) {
    const way = ways.find(({ id }) => id === recommended);
    const told = repairs.filter(({ oftenWrong }) => oftenWrong);
    const stays = recommended === 'repair' || recommended === 'coat';
    const cure = stays ? told.map(({ title, lines }) => `${title}: ${lower(lines[0])}`) : [];
    const verb = comesTo === 'coat' && mends ? 'First mend what is broken, then it may be coated.' : verbs[comesTo];
    return [verb, way?.reasons[0]?.text ?? '', ...cure].filter((part) => part !== '').join(' ');
  }
  const first = ways.find(({ standing }) => standing === 'not-known');
  const out = barred.length === 0 ? '' : ` Ruled out already: ${listed(barred.map(({ title }) => lower(title)))}.`;
  return `Not decided until this is known: ${askedWords(first?.settle ?? [])}. ${first?.reasons[0]?.text ?? ''}${out}`;
}

/**
 * What to do with the old roof: each of the four ways with its reasons, and the least one that nothing bars. Where the
 * least way that is left still hangs on something, nothing is recommended, and the tests that settle it are named.
 * Source: reference/scope.ts. Correctness: tests/unit/scope.test.ts, tests/cases/scope.test.ts
 */
export function scopeOf(input: ScopeInput & { budgets: readonly Budget[] }): {
  report: ScopeReport;
  findings: readonly Finding[];
} {
  const { site, chosen, ruleSet, budgets } = input;
  const evidence = evidenceOf(input);
  const recover = recoverWay(evidence, {
    ruleSet,
    chosen,
    budgets,
    // What is planned to come off would stay.
    buildUpIn: site.given.removedIn,
    covering: site.roof.covering.kind,
  });
  const coat = coatWay(evidence);
  const ways = evidence.off ? waysWhenOff() : [repairWay(evidence, coat), coat, recover, tearOffWay(evidence, recover)];
  const recommended = recommendedOf(ways);
  const mends = hasToMend(evidence);
  const comesTo = evidence.off ? 'off' : recommended === 'repair' && !mends ? 'upkeep' : recommended;
  // The least way that is left decides; what the others ask comes into it only once that one falls.
  const settle = new Set(recommended === null ? ways.find(({ standing }) => standing === 'not-known')?.settle : []);
  const repairs = repairsOf(site);
  const report: ScopeReport = {
    answer: answerOf({ ways, recommended, comesTo, mends, repairs }),
    recommended,
    comesTo,
    mends,
    ways,
    tests: tests
      .filter(({ test }) => settle.has(test))
      .map((row) => ({ id: row.test, what: row.what, how: row.how, source: sourceNote(row) })),
    repairs: recommended === 'tear-off' ? [] : repairs,
    wood: woodAllowance(site, openedBy(chosen)),
    deck: { name: deckNames[site.given.deckKind], isWood: isWood(site.given.deckKind), soft: evidence.softDeck },
  };
  return { report, findings: scopeFindings(site, ways, repairs) };
}
