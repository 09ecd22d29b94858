import { inches, plainNumber } from '../../units/print.ts';
import { boardFeet } from './page-figures.ts';
import type { SearchProgress, SearchReport } from './types.ts';

const many = (count: number, one: string): string => `${plainNumber(count)} ${one}${count === 1 ? '' : 's'}`;

/** A miss that no tape shows is still a miss. */
const shortBy = (leastShortIn: number): string => (leastShortIn < 1 / 32 ? 'less than 1/16″' : inches(leastShortIn));

/** What was looked at before the layouts were chosen, in sentences: how many, what stopped the others, what would help. */
export function searchLines({ tried, complete, fitting, barred, rejected, relaxation }: SearchReport): string[] {
  const looked = `${many(tried, 'combination')} of outlets, forms, slopes and base layers looked at; ${plainNumber(fitting)} keep every hard height.`;
  return [
    complete ? looked : `${looked} The list was longer; the search stopped at its budget.`,
    ...rejected.map(
      ({ count, where, leastShortIn, nearest }) =>
        `${many(count, 'combination')} come${count === 1 ? 's' : ''} up too high at ${where}. The nearest is ${shortBy(leastShortIn)} short: ${nearest}.`,
    ),
    ...barred.map(
      ({ count, why, fits, nearest, boardFt }) =>
        `${many(count, 'combination')} left out: ${why} ${fits ? `Lifting that would buy at best ${boardFeet(boardFt)}: ${nearest}.` : 'None of them keeps the heights.'}`,
    ),
    ...(relaxation === null ? [] : [`What has to give least: ${relaxation.text}`]),
  ];
}

/** How far a search is, for whoever waits for it: what it does now, and what it has behind it. */
export function progressLines({ tried, budget, doing, told, toTell }: SearchProgress): string[] {
  const looked = `${many(tried, 'combination')} of outlets, forms, slopes and base layers looked at, of ${plainNumber(budget)} at most.`;
  const now: Record<SearchProgress['doing'], string> = {
    plans: 'Laying out the plainest taper for every way out of the water.',
    sketches: 'Comparing forms, slopes and base layers.',
    proofs: 'Flooding the best of them, to see that they drain.',
    reports: `Counting boards and heights: ${plainNumber(told)} of ${many(toTell, 'layout')}.`,
  };
  return tried === 0 ? [now[doing]] : [now[doing], looked];
}
