import { plainNumber } from '../../units/print.ts';
import type { WorkDays } from './types.ts';

/** "3 to 5 working days", "1 working day". */
export function daysWords({ leastDays, mostDays }: Pick<WorkDays, 'leastDays' | 'mostDays'>): string {
  const span = leastDays === mostDays ? plainNumber(mostDays) : `${plainNumber(leastDays)} to ${plainNumber(mostDays)}`;
  return `${span} working day${mostDays === 1 ? '' : 's'}`;
}

export interface WorkDaysRow {
  what: string;
  days: string;
  basis: string;
}

export const workDaysRows = ({ parts }: WorkDays): WorkDaysRow[] =>
  parts.map(({ what, leastDays, mostDays, basis }) => ({
    what,
    days: `${plainNumber(leastDays, 1)} to ${plainNumber(mostDays, 1)}`,
    basis,
  }));

/** The whole, whom it is for, and what comes on top. */
export const workDaysSentence = (work: WorkDays): string =>
  `${daysWords(work)} for a crew of ${work.people} in dry weather, by planning figures. ${work.notCounted}`;
