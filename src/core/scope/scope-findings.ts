import { scopeRules } from '../../../reference/scope.ts';
import { sourceNote } from '../finding.ts';
import { deckNames } from '../kind-names.ts';
import { finding } from '../report/part-finding.ts';
import type { Finding, ScopeReport, ScopeWay } from '../report/types.ts';
import type { Site } from '../site/site.ts';
import { isWood } from '../site/wood-deck.ts';
import { inspectionOf } from './inspection.ts';

const coatings: ReadonlySet<string> = new Set(['acrylic', 'silicone']);

/** A deck that gives and is not of wood: no carpenter replaces a sheet of it, and what it still carries is not judged here. */
function engineerFindings(site: Site): Finding[] {
  if (isWood(site.given.deckKind)) return [];
  return inspectionOf(site).flatMap(({ kind, where }) =>
    kind === 'soft-deck'
      ? [
          finding({
            id: 'engineer-deck',
            level: 'stop',
            where,
            message: `The deck (${deckNames[site.given.deckKind]}) was found soft: a structural engineer looks at it before anybody works on it. What it still carries, how far it is lost and whether it holds a screw are not judged here. Nothing is fastened into it, and nobody stands on it until then.`,
            source: sourceNote(scopeRules['deck-engineer']),
          }),
        ]
      : [],
  );
}

/** What somebody must act on: a soft deck that is not of wood, a coating that was asked for where it cannot help, and seams that were never welded. */
export function scopeFindings(site: Site, ways: readonly ScopeWay[], repairs: ScopeReport['repairs']): Finding[] {
  const asked = site.roof.preferences.membrane;
  const coat = ways.find(({ id }) => id === 'coat');
  const wantsCoat = asked !== null && coatings.has(asked);
  const pond = coat?.reasons.find(({ text }) => text.startsWith(scopeRules['pond-not-coated'].text));
  const seams = repairs.find((work) => work.finding === 'failed-weld');
  const unknown = site.roof.findings.every(({ kind }) => kind !== 'wet-insulation' && kind !== 'dry-insulation');
  const where = 'what to do with the old roof';
  return [
    ...engineerFindings(site),
    ...(wantsCoat && pond !== undefined
      ? [finding({ id: 'coating-on-pond', level: 'stop', where, message: pond.text, source: pond.source })]
      : []),
    ...(wantsCoat && unknown
      ? [
          finding({
            id: 'moisture-not-known',
            level: 'stop',
            where,
            message: 'Nothing is laid over the old roof before its moisture is known: cut a core at the lowest spot.',
            source: sourceNote(scopeRules['moisture-not-known']),
          }),
        ]
      : []),
    ...(seams === undefined
      ? []
      : [
          finding({
            id: 'seam-probe',
            level: 'fix',
            where: 'all seams',
            message: seams.lines.join(' '),
            source: seams.source,
          }),
        ]),
  ];
}
