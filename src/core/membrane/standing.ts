import type { MembraneStanding } from '../report/types.ts';
import type { CriterionScore } from './scores.ts';
import type { Weights } from './weights.ts';

/** One option with its scores as ranges. */
export interface RangedOption {
  id: string;
  reasons: readonly Pick<CriterionScore, 'criterion' | 'low' | 'score' | 'high'>[];
}

interface Totals {
  low: number;
  likely: number;
  high: number;
  /** The total for every combination of low, likely and high, ascending. */
  every: readonly number[];
}

const EDGE = 1e-9;

function totalsOf({ reasons }: RangedOption, weights: Weights): Totals {
  const sum = (pick: (reason: RangedOption['reasons'][number]) => number) =>
    reasons.reduce((total, reason) => total + weights[reason.criterion] * pick(reason), 0);
  const likely = sum(({ score }) => score);
  const every = reasons
    .filter(({ low, high }) => low < high)
    .reduce(
      (totals, { criterion, low, score, high }) =>
        totals.flatMap((total) => [low, score, high].map((value) => total + weights[criterion] * (value - score))),
      [likely],
    )
    .sort((a, b) => a - b);
  return { low: sum(({ low }) => low), likely, high: sum(({ high }) => high), every };
}

/** How many of ascending numbers are no more than a value. */
function upTo(ascending: readonly number[], value: number): number {
  let from = 0;
  let to = ascending.length;
  while (from < to) {
    const middle = (from + to) >> 1;
    if (ascending[middle]! <= value + EDGE) from = middle + 1;
    else to = middle;
  }
  return from;
}

/** Share of the combinations in which nothing stands before the option: every other total is no more than its own. */
function shareFirst(own: Totals, others: readonly Totals[]): number {
  const shares = own.every.map((total) =>
    others.reduce((share, { every }) => share * (upTo(every, total) / every.length), 1),
  );
  return shares.reduce((sum, share) => sum + share, 0) / shares.length;
}

const inHundred = (share: number): string => {
  const count = Math.round(share * 100);
  if (count === 0) return 'fewer than 1 of 100';
  return count === 100 ? 'more than 99 of 100' : `${count} of 100`;
};

function wordsFor({ place, bestPlace, worstPlace, firstShare }: Omit<MembraneStanding, 'words'>): string {
  if (worstPlace === 1) return 'First whatever the ranges.';
  const share = `${inHundred(firstShare)} combinations of the ranges`;
  if (place === 1) return `First at the likely values and in ${share}; at worst place ${worstPlace}.`;
  if (bestPlace === 1)
    return `Place ${place} at the likely values; it comes first in ${share}, and at worst is place ${worstPlace}.`;
  const span = bestPlace === worstPlace ? `place ${place}` : `place ${bestPlace} to ${worstPlace}`;
  return `Never first over the ranges: ${span}.`;
}

/**
 * Where every option stands when the ranges of its evidence go from end to end, each option's by itself: so what holds
 * here also holds where evidence is shared. Best and worst places are exact for the whole ranges, not only their ends:
 * the total rises with every score. Points that were judged without a figure are held fixed.
 * @param options in the order of their likely totals, best first
 * Correctness: tests/unit/membrane-standing.test.ts
 */
export function standings(options: readonly RangedOption[], weights: Weights): readonly MembraneStanding[] {
  const totals = options.map((option) => totalsOf(option, weights));
  return totals.map((own, i) => {
    const others = totals.filter((_, j) => j !== i);
    const standing = {
      place: i + 1,
      bestPlace: 1 + others.filter(({ low }) => low > own.high + EDGE).length,
      worstPlace: 1 + others.filter(({ high }) => high > own.low + EDGE).length,
      lowScore: own.low,
      highScore: own.high,
      firstShare: shareFirst(own, others),
    };
    return { ...standing, words: wordsFor(standing) };
  });
}

/** True when the worst of `a` is at least the best of `b` on every count: no value inside the ranges puts `b` ahead. */
export function dominatesOverRanges(a: RangedOption, b: RangedOption): boolean {
  return a.reasons.every((reason) => {
    const other = b.reasons.find(({ criterion }) => criterion === reason.criterion);
    return other !== undefined && reason.low >= other.high;
  });
}
