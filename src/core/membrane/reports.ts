import { type Criterion, criteria } from '../../../reference/membranes/criteria.ts';
import { sourceNote } from '../finding.ts';
import type { MembraneEvidence, MembraneReport, MembraneStanding, MembraneWeighing } from '../report/types.ts';
import { listed } from '../safety/figure.ts';
import type { AttachmentChoice } from './attachment.ts';
import type { MembraneFacts } from './facts.ts';
import { type Candidate, dominates, type Flip, flipsTo } from './flip.ts';
import { flipWords, sentenceStart, winsOnlyIf } from './flip-words.ts';
import type { Membrane, MembraneId } from './options.ts';
import { chosenPlain, otherPlain, vetoedPlain } from './plain.ts';
import { type CriterionScore, scoreMembrane, scoresById, weightedScore } from './scores.ts';
import { dominatesOverRanges, standings } from './standing.ts';
import type { Veto } from './vetoes.ts';
import type { WeighedSituation } from './weights.ts';

/** A covering that nothing rules out, with its scores. */
export interface Ranked extends Candidate<MembraneId> {
  membrane: Membrane;
  reasons: readonly CriterionScore[];
  score: number;
}

const criterionTable: readonly Criterion[] = criteria;

/** Ways to unseat the winner that are told, nearest first. */
const MOST_FLIPS = 4;

/** How far a flip moves its weight. */
export const flipDistance = (flip: Flip): number => Math.abs(flip.to - flip.from);

/** Open coverings by their weighted sum, best first; ties keep the order of the table. */
export function rank(open: readonly Membrane[], { weights }: WeighedSituation): readonly Ranked[] {
  return open
    .map((membrane) => {
      const reasons = scoreMembrane(membrane.id);
      const scores = scoresById(reasons);
      return { id: membrane.id, membrane, reasons, scores, score: weightedScore(scores, weights) };
    })
    .sort((a, b) => b.score - a.score);
}

const evidenceOf = (reasons: readonly CriterionScore[]): MembraneEvidence[] =>
  reasons.map(({ criterion, title, figure, low, score, high, source }) => {
    return { criterion, title, figure, low, likely: score, high, source };
  });

/** The covering that is at least as good on every count: one that is so over all ranges before one at the likely values. */
function dominatedBy(entry: Ranked, ranked: readonly Ranked[]): NonNullable<MembraneReport['dominatedBy']> | null {
  const above = ranked.filter((other) => dominates(other.scores, entry.scores));
  const surely = above.find((other) => dominatesOverRanges(other, entry));
  const named = surely ?? above[0];
  if (named === undefined) return null;
  return { id: named.id, name: named.membrane.shortName, whateverTheRanges: surely !== undefined };
}

/** What would unseat the winner, or what would make another win. */
function flipSentences(entry: Ranked, ranked: readonly Ranked[], { weights, own }: WeighedSituation): string[] {
  const winner = ranked[0]!;
  const by = own ? 'given' : 'assumed';
  if (entry !== winner) {
    const flips = flipsTo(winner, entry, ranked, weights);
    return [winsOnlyIf(entry.membrane.shortName, flips, by)];
  }
  const nearest = ranked
    .slice(1)
    .flatMap((rival) => flipsTo(winner, rival, ranked, weights).map((flip) => ({ flip, rival })))
    .sort((a, b) => flipDistance(a.flip) - flipDistance(b.flip))
    .slice(0, MOST_FLIPS);
  return [...new Set(nearest.map(({ rival }) => rival))].map((rival) => {
    const ways = nearest.filter((each) => each.rival === rival).map(({ flip }) => flipWords(flip, by));
    return `${sentenceStart(rival.membrane.shortName)} would take over if ${listed(ways, 'or')}.`;
  });
}

/** The counts on which a covering loses most against the winner, in words. */
function behindOn(entry: Ranked, winner: Ranked, { weights }: WeighedSituation): string {
  const lost = criterionTable
    .map(({ id, plain }) => ({ plain, points: weights[id] * (winner.scores[id] - entry.scores[id]) }))
    .filter(({ points }) => points > 0)
    .sort((a, b) => b.points - a.points)
    .slice(0, 2);
  return lost.length === 0 ? 'Level with the first' : `Behind mostly on ${listed(lost.map(({ plain }) => plain))}`;
}

/** What a table has room for: why a covering is not the first, and the nearest way in which it would be. */
function shortWords(entry: Ranked, { ranked, weighed }: Place): string {
  const winner = ranked[0]!;
  const above = dominatedBy(entry, ranked);
  if (above !== null)
    return `${sentenceStart(above.name)} is at least as good on every count, ${above.whateverTheRanges ? 'whatever the ranges' : 'at the likely values'}.`;
  const [nearest] = flipsTo(winner, entry, ranked, weighed.weights);
  const behind = behindOn(entry, winner, weighed);
  if (nearest === undefined) return `${behind}; no single weight makes it win.`;
  return `${behind}; wins only if ${flipWords(nearest, weighed.own ? 'given' : 'assumed')}.`;
}

interface Place {
  ranked: readonly Ranked[];
  weighed: WeighedSituation;
  attachment: AttachmentChoice | null;
}

function reportOf(entry: Ranked, standing: MembraneStanding, { ranked, weighed, attachment }: Place): MembraneReport {
  const winner = ranked[0]!;
  const { weights } = weighed;
  const above = dominatedBy(entry, ranked);
  return {
    id: entry.id,
    name: entry.membrane.name,
    score: entry.score,
    veto: null,
    reasons: entry.reasons
      .map(({ criterion, title, score, text }) => ({ criterion: title, weight: weights[criterion], score, text }))
      .sort((a, b) => b.weight - a.weight),
    flips:
      above === null || entry === winner
        ? flipSentences(entry, ranked, weighed)
        : [`No weights make it win: ${above.name} is at least as good on every count.`],
    plain: entry === winner ? chosenPlain(entry, weights, attachment) : otherPlain(entry, winner, weights),
    evidence: evidenceOf(entry.reasons),
    standing,
    dominatedBy: above,
    short: entry === winner ? standing.words : shortWords(entry, { ranked, weighed, attachment }),
  };
}

/** The reports of the coverings that may be used, best first. */
export function rankedReports(
  ranked: readonly Ranked[],
  weighed: WeighedSituation,
  attachment: AttachmentChoice | null,
): readonly MembraneReport[] {
  const places = standings(ranked, weighed.weights);
  return ranked.map((entry, i) => reportOf(entry, places[i]!, { ranked, weighed, attachment }));
}

/** The report of a covering that is out: no points in sum and no place, its evidence all the same. */
export function vetoedReport(membrane: Membrane, vetoes: readonly Veto[]): MembraneReport {
  return {
    id: membrane.id,
    name: membrane.name,
    score: null,
    veto: { why: vetoes.map((veto) => veto.why).join(' Also: '), source: vetoes[0]!.source },
    reasons: [],
    flips: [],
    plain: vetoedPlain(membrane, vetoes),
    evidence: evidenceOf(scoreMembrane(membrane.id)),
    standing: null,
    dominatedBy: null,
  };
}

/** How the coverings were weighed, for people. */
export function weighingReport(weighed: WeighedSituation, own: MembraneFacts['ownWeights']): MembraneWeighing {
  const { situations, shifts, weights, usual, why } = weighed;
  const titleOf = (id: string) => criterionTable.find((row) => row.id === id)?.title ?? id;
  return {
    why,
    own: weighed.own,
    weights: criterionTable
      .map(({ id, title }) => ({
        criterion: id,
        title,
        weight: weights[id],
        usual: usual[id],
        given: weighed.own && own?.[id] !== undefined,
      }))
      .sort((a, b) => b.weight - a.weight),
    situations: situations.map((row) => ({ title: row.title, source: sourceNote(row) })),
    shifts: shifts.map((row) => ({
      title: titleOf(row.criterion),
      times: row.times,
      because: row.because,
      source: sourceNote(row),
    })),
  };
}
