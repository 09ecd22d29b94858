import type { Cited } from './sources.ts';

export interface FrequencyLayout extends Cited {
  durationsMin: readonly number[];
  /** Columns of the partial-duration and of the annual-maximum series: mixing them is off by one. */
  returnYears: { pds: readonly number[]; ams: readonly number[] };
}

const HOUR = 60;
const DAY = 24 * HOUR;

/** Rows and columns of a point answer of the public precipitation-frequency service, as used in public code (second hand). */
export const frequencyLayout = {
  durationsMin: [
    5,
    10,
    15,
    30,
    60,
    2 * HOUR,
    3 * HOUR,
    6 * HOUR,
    12 * HOUR,
    DAY,
    2 * DAY,
    3 * DAY,
    4 * DAY,
    7 * DAY,
    10 * DAY,
    20 * DAY,
    30 * DAY,
    45 * DAY,
    60 * DAY,
  ],
  returnYears: {
    pds: [1, 2, 5, 10, 25, 50, 100, 200, 500, 1000],
    ams: [2, 5, 10, 25, 50, 100, 200, 500, 1000],
  },
  source: 'noaa-atlas-14',
  at: 'rows and columns of a point answer',
  grade: 'found',
} as const satisfies FrequencyLayout;

export interface RainRatio extends Cited {
  ratio: number;
}

/** 15-minute over hourly rate where only hourly maps exist; the code allows twice the hourly value. Birmingham: 7.2 / 3.75 = 1.92. */
export const quarterHourRatio = {
  ratio: 2,
  source: 'ibc-1611-rain',
  at: '1611.1, twice the hourly value',
  grade: 'found',
} as const satisfies RainRatio;

/** i15 = 4 x 0.72 x P30: the rate of 15 minutes over the rate of 30 minutes (rate of 30 minutes = 2 P30). */
export const quarterOverHalfHourRatio = {
  ratio: 1.44,
  source: 'nspc-2015',
  at: 'Appendix A, i15 = 4 x 0.72 x P30',
  grade: 'found',
} as const satisfies RainRatio;

/**
 * Five-minute rate of 10 years over the hourly rate of 100 years, for gutters: one published city only (Baltimore, 7.1 over 3.2;
 * its 100-year five-minute rate is 9.7).
 */
export const gutterRainRatio = {
  ratio: 7.1 / 3.2,
  source: 'gutter-rain-list',
  at: 'Baltimore, 10 years, over its hourly rate from memory',
  grade: 'memory',
} as const satisfies RainRatio;

export interface RainEventRow extends Cited {
  size: 'small' | 'medium' | 'large' | 'very-large';
  returnYears: number;
  primaryMin: number;
  secondaryMin: number;
}

/** Disaster-resilience option, not a minimum. An earlier text gave 60 / 15 minutes for all sizes. */
export const rainEvents = [
  {
    size: 'small',
    returnYears: 25,
    primaryMin: 60,
    secondaryMin: 15,
    source: 'icc-performance',
    at: 'Table 501.3.4',
    grade: 'found',
  },
  {
    size: 'medium',
    returnYears: 50,
    primaryMin: 60,
    secondaryMin: 15,
    source: 'icc-performance',
    at: 'Table 501.3.4',
    grade: 'found',
  },
  {
    size: 'large',
    returnYears: 100,
    primaryMin: 60,
    secondaryMin: 15,
    source: 'icc-performance',
    at: 'Table 501.3.4',
    grade: 'found',
  },
  {
    size: 'very-large',
    returnYears: 100,
    primaryMin: 30,
    secondaryMin: 10,
    source: 'icc-performance',
    at: 'Table 501.3.4',
    grade: 'found',
  },
] as const satisfies readonly RainEventRow[];
