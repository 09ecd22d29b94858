import { type Criterion, type CriterionId, criteria } from '../../../../reference/membranes/criteria.ts';
import type { MembraneReport } from '../types.ts';
import { keepsOldRoof, type Situation, waterStands } from './situation.ts';
import { type OwnerStatement, say, standingOn, type Taker, takerOf } from './statement.ts';

const rows: readonly Criterion[] = criteria;

/** Told elsewhere on the page, or no promise of ours. */
const NOT_HERE: ReadonlySet<CriterionId> = new Set(['heat', 'life', 'cost']);
const STRONG = 7;
const WEAK = 5;
const COUNTS = 0.05;
const MOST_REASONS = 2;

type Weighed = { i: number; weight: number; score: number };

/** Reasons that an owner can use, by their number in the report. */
const reasonsOf = ({ reasons }: MembraneReport): Weighed[] =>
  reasons.flatMap(({ criterion, weight, score, text }, i) => {
    const id = rows.find(({ title }) => title === criterion)?.id;
    return id === undefined || NOT_HERE.has(id) || /\d/.test(text) ? [] : [{ i, weight, score }];
  });

const startsSmall = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

const coatings: ReadonlySet<string> = new Set(['acrylic', 'silicone']);

/** The covering that was asked for and does not come out first, by its number; null = none. */
export function askedCovering({
  assessment: { findings, membranes },
}: Situation): { at: number; coat: boolean } | null {
  const asked = findings.find(({ id }) => id === 'asked-membrane');
  const at = membranes.findIndex(({ name }) => asked?.message.startsWith(`${name} was asked for`));
  return at < 0 ? null : { at, coat: coatings.has(membranes[at].id) };
}

export const firstSentence = (text: string): string => text.split(/(?<=[.])\s/)[0];

/** What it is, its two strongest sides and its weakest. */
function sides(report: MembraneReport, at: string, take: Taker): OwnerStatement[] {
  const weighed = reasonsOf(report);
  const reason = ({ i }: Weighed, part?: (text: string) => string) =>
    take.quote('answer-covering', report.reasons[i].criterion, `${at}.reasons.${i}.text`, part);
  const strong = weighed
    .filter(({ score }) => score >= STRONG)
    .sort((a, b) => b.weight * b.score - a.weight * a.score)
    .slice(0, MOST_REASONS);
  const weak = weighed
    .filter(({ score, weight }) => score <= WEAK && weight >= COUNTS)
    .sort((a, b) => b.weight * (10 - b.score) - a.weight * (10 - a.score))[0];
  return [
    ...strong.map((side) => say`${reason(side)}`),
    ...(weak === undefined ? [] : [say`Its weak side: ${reason(weak, startsSmall)}`]),
  ];
}

/** Why this covering. */
export function coveringStatements({ assessment, call, plan }: Situation): OwnerStatement[] {
  const take = takerOf(assessment);
  const i = assessment.membranes.findIndex(({ id }) => id === assessment.chosenMembrane);
  if (i < 0)
    return [standingOn(say`No covering can be named yet.`, take.quote('answer-covering', 'Why', 'whyNotTheSame'))];
  const at = `membranes.${i}`;
  const name = take.quote('answer-covering', 'Covering that comes out first', `${at}.name`);
  const what = take.quote('answer-covering', 'What it is', `${at}.plain`, firstSentence);
  const lead =
    keepsOldRoof(call) || plan === 'edge-first' || plan === 'wishes-clash'
      ? say`If a new roof is laid one day, this covering suits it best: ${name}.`
      : plan === 'none'
        ? say`When a plan fits, this covering suits the roof best: ${name}.`
        : say`This covering suits the roof best: ${name}.`;
  return [lead, say`${what}`, ...sides(assessment.membranes[i], at, take)];
}

/** What the rest of the page says already, or says in points out of ten. */
const leftOut = (text: string): boolean => /would win only if|Water stood on the old roof/.test(text);

/** Why the old covering is not laid again. */
export function sameAgainStatements({ assessment, today }: Situation): OwnerStatement[] {
  const take = takerOf(assessment);
  const why = (part: string) => take.quote('answer-covering', 'Why not the same again', 'whyNotTheSame', () => part);
  const sentences = assessment.whyNotTheSame.split(/(?<=[.!?])\s+(?=[A-Z])/).filter((text) => !leftOut(text));
  const quoted = sentences.map((text) => say`${why(text)}`);
  if (!waterStands(today)) return quoted;
  const verdict = take.quote('answer-water', 'Verdict on the roof as it is', 'existing.why');
  return [
    standingOn(say`Water stood on the old roof, and no covering mends that. Only a slope does.`, verdict),
    ...quoted,
  ];
}
