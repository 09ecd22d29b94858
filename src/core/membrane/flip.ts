import { type CriterionId, criteria } from '../../../reference/membranes/criteria.ts';
import { type Scores, weightedScore } from './scores.ts';
import type { Weights } from './weights.ts';

export interface Candidate<Id extends string = string> {
  id: Id;
  scores: Scores;
}

/** One weight, moved so far that two options tie; beyond it `winner` leads. */
export interface Flip<Id extends string = string> {
  criterion: CriterionId;
  from: number;
  to: number;
  winner: Id;
}

const ids = criteria.map((criterion) => criterion.id);
const EDGE = 1e-9;

/**
 * Weight of one criterion at which two options tie, the other weights rescaled in proportion.
 * With d_i = a_i - b_i and R = sum over i != k of w_i d_i / (1 - w_k), the gap is w d_k + (1 - w) R, so w* = R / (R - d_k).
 * null where no weight between 0 and 1 (ends left out: there only one criterion counts, or it does not count) ties them.
 * Correctness: tests/published/membrane-choice.test.ts
 */
export function tieWeight(a: Scores, b: Scores, weights: Weights, criterion: CriterionId): number | null {
  const own = weights[criterion];
  if (own >= 1) return null;
  const rest = ids
    .filter((id) => id !== criterion)
    .reduce((sum, id) => sum + (weights[id] * (a[id] - b[id])) / (1 - own), 0);
  const turn = rest - (a[criterion] - b[criterion]);
  if (Math.abs(turn) < EDGE) return null;
  const tie = rest / turn;
  return tie > EDGE && tie < 1 - EDGE ? tie : null;
}

/** Weights with one criterion set and the others rescaled in proportion. */
export function withWeight(weights: Weights, criterion: CriterionId, weight: number): Weights {
  const scale = (1 - weight) / (1 - weights[criterion]);
  return Object.fromEntries(ids.map((id) => [id, id === criterion ? weight : weights[id] * scale])) as Weights;
}

/** Every single weight change that hands the lead from `winner` straight to `rival`, nearest first. */
export function flipsTo<Id extends string>(
  winner: Candidate<Id>,
  rival: Candidate<Id>,
  all: readonly Candidate<Id>[],
  weights: Weights,
): readonly Flip<Id>[] {
  const flips = ids.flatMap((criterion) => {
    // What counts nothing here, by the job or by its owner, is no question.
    if (weights[criterion] === 0) return [];
    const to = tieWeight(winner.scores, rival.scores, weights, criterion);
    if (to === null) return [];
    const moved = withWeight(weights, criterion, to);
    const lead = weightedScore(rival.scores, moved);
    const leads = all.every((other) => weightedScore(other.scores, moved) <= lead + EDGE);
    return leads ? [{ criterion, from: weights[criterion], to, winner: rival.id }] : [];
  });
  return flips.sort((a, b) => Math.abs(a.to - a.from) - Math.abs(b.to - b.from));
}

/** True when `a` is at least as good on every criterion and better on one: no weights can put `b` ahead. */
export function dominates(a: Scores, b: Scores): boolean {
  return ids.every((id) => a[id] >= b[id]) && ids.some((id) => a[id] > b[id]);
}
