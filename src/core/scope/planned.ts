import { finding } from '../report/part-finding.ts';
import type { Finding, PlannedReport, ScopeReport, ScopeWay } from '../report/types.ts';
import { groundNames, isStripped, type PlannedWork, plannedWork } from '../site/planned-work.ts';
import type { Site } from '../site/site.ts';

const figuresOf: Readonly<Record<PlannedWork, string>> = {
  'tear-off': 'Heights, boards, materials and steps here are those of a tear-off to the deck',
  partly:
    'Heights, boards, materials and steps here are those of a roof from which only a part of the old one is taken',
  're-cover': 'Heights, boards, materials and steps here are those of a new roof over the old one',
};

const lessThan: Readonly<Record<'upkeep' | 'repair' | 'coat' | 're-cover', string>> = {
  upkeep:
    'what was found asks for no work but upkeep. They tell what a new roof would be; nothing of it is ordered for that.',
  repair:
    'what was found asks for repairs alone. They tell what a new roof would be; nothing of it is ordered for a repair.',
  coat: 'what was found allows a coating. They tell what a new roof would be; nothing of it is ordered for a coating.',
  're-cover':
    'what was found allows less: a new roof over the old one. To plan that, enter 0 as the build-up that is torn off.',
};

/** The plan against what was found; null where the two agree. */
function noteOf(
  work: PlannedWork,
  onDeck: boolean,
  { recommended, comesTo }: ScopeReport,
  own: ScopeWay | undefined,
): string | null {
  const figures = figuresOf[work];
  if (work !== 'tear-off' && own?.standing === 'barred')
    return `${figures}. What was found rules that out: ${own.reasons[0].text}`;
  // Heights that were read on the deck say that the old roof is off already.
  if (recommended === null && onDeck) return null;
  if (recommended === null || comesTo === null)
    return `${figures}. Whether it comes to that is not decided: see what to do with the old roof.`;
  if (recommended === own?.id) return work === 'tear-off' ? null : `${figures}.`;
  if (comesTo === 'tear-off' || comesTo === 'off') return `${figures}; what was found asks for a tear-off to the deck.`;
  return `${figures}; ${lessThan[comesTo]}`;
}

/** What stops a plan that leaves the old roof: something forbids it, or nobody knows yet. */
function keptFindings({ standing, reasons: [first] }: ScopeWay): Finding[] {
  const where = 'the old roof';
  if (standing === 'barred')
    return [
      finding({
        id: 're-cover-barred',
        level: 'stop',
        where,
        message: `It is planned to stay, at least in part, and may not: ${first.text} Plan a tear-off: enter all of the build-up as torn off.`,
        source: first.source,
      }),
    ];
  if (standing === 'not-known')
    return [
      finding({
        id: 're-cover-not-known',
        level: 'stop',
        where,
        message: `It is planned to stay, at least in part. Nothing is laid over it before this is settled: ${first.text}`,
        source: first.source,
      }),
    ];
  return [];
}

const DECK_APART =
  'Heights, boards, materials and days here are those of the roof over a new deck. The deck itself is in none of them.';

const deckToBuild = finding({
  id: 'deck-to-build',
  level: 'fix',
  where: 'the deck',
  message:
    'The deck is off, down to the joists. The new one (its kind, thickness, fastening, sheets and days) is in no list here: have it laid out first. What the joists carry is an engineer’s question.',
});

/**
 * The work for which heights, boards and materials are counted, set against the work that the findings ask for. The
 * papers print the note wherever the two are not the same.
 */
export function plannedReport(site: Site, scope: ScopeReport): { report: PlannedReport; findings: readonly Finding[] } {
  const work = plannedWork(site);
  const way = scope.ways.find(({ id }) => id === (work === 'tear-off' ? 'tear-off' : 're-cover'));
  const stripped = isStripped(site);
  const note = stripped ? DECK_APART : noteOf(work, site.roof.existing.readOn === 'deck', scope, way);
  const kept = work === 'tear-off' ? undefined : way;
  return {
    report: {
      work,
      ground: stripped ? 'the new deck' : groundNames[work],
      stripped,
      assumed: site.roof.removedIn === null,
      note,
    },
    findings: [...(stripped ? [deckToBuild] : []), ...(kept === undefined ? [] : keptFindings(kept))],
  };
}
