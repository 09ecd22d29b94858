import type { Cited } from '../sources.ts';

export interface WorkRate extends Cited {
  work: 'tear-off' | 'tear-off-gravel' | 'boards' | 'single-ply' | 'single-ply-small' | 'two-ply-self-adhered';
  /** Squares of 100 sq ft that the crew does in a day, least and most. */
  squaresPerDay: readonly [number, number];
}

/** Planning bands for one story with one way up. Common practice, no source: hours by crew are hardly published. */
export const workRates = [
  {
    work: 'tear-off',
    squaresPerDay: [8, 15],
    source: 'practice',
    at: 'planning band, one layer torn off, crew of four',
    grade: 'practice',
  },
  {
    work: 'tear-off-gravel',
    squaresPerDay: [4, 8],
    source: 'practice',
    at: 'planning band, gravelled built-up roof torn off, crew of four',
    grade: 'practice',
  },
  {
    work: 'boards',
    squaresPerDay: [15, 25],
    source: 'practice',
    at: 'planning band, one layer of boards, crew of four',
    grade: 'practice',
  },
  {
    work: 'single-ply',
    squaresPerDay: [8, 15],
    source: 'practice',
    at: 'planning band, adhered single-ply, crew of four',
    grade: 'practice',
  },
  {
    work: 'single-ply-small',
    squaresPerDay: [4, 8],
    source: 'practice',
    at: 'planning band, adhered single-ply on less than ten squares, crew of four',
    grade: 'practice',
  },
  {
    work: 'two-ply-self-adhered',
    squaresPerDay: [6, 10],
    source: 'practice',
    at: 'planning band, self-adhered base and cap, crew of four',
    grade: 'practice',
  },
] as const satisfies readonly WorkRate[];

/** Details on top of the field, for two people; the crew does two at a time. Common practice, no source. */
export const detailRates = {
  hoursPerPipe: [0.5, 0.5],
  hoursPerCurb: [2, 3],
  tieInFtPerHour: [4, 6],
  edgeFtPerHour: [15, 25],
  source: 'practice',
  at: 'planning bands of details, two workers',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/** Crew, hours of a day and the size under which a section is slow. Common practice, no source. */
export const workCrew = { people: 4, pairs: 2, hoursADay: 8, smallUnderSquares: 10 } as const;
