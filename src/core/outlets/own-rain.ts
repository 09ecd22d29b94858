import { quarterOverHalfHourRatio } from '../../../reference/precipitation-frequency.ts';
import type { Assumption, Finding } from '../report/types.ts';
import type { Rain } from '../roof.ts';

/** What an own rain entry settles; null where it says nothing about that duration. */
export interface OwnRates {
  /** Rate of 60 minutes. */
  hourlyInPerHr: number | null;
  /** A rate of less than an hour: not less than the hourly one. */
  atLeastHourlyInPerHr: number | null;
  quarterHourInPerHr: number | null;
  fiveMinuteInPerHr: number | null;
  assumed: readonly Assumption[];
  findings: readonly Finding[];
}

const HOUR_MIN = 60;
const RETURN_YEARS = 100;

const nothing: OwnRates = {
  hourlyInPerHr: null,
  atLeastHourlyInPerHr: null,
  quarterHourInPerHr: null,
  fiveMinuteInPerHr: null,
  assumed: [],
  findings: [],
};

/**
 * Reads a rain entry by its duration. A bare number is taken as the hourly rate of 100 years, and that is listed as assumed.
 * A short rain stands for longer ones on the safe side, as rates fall with duration; a rain of more than an hour is of no use here.
 * Correctness: tests/unit/outlets/rain.test.ts
 */
export function ownRates(rain: Rain | null): OwnRates {
  if (rain === null) return nothing;
  const { inPerHr, durationMin } = rain;
  const told = { ...nothing, assumed: assumedOf(rain), findings: findingsOf(rain) };
  if (durationMin === null || durationMin === HOUR_MIN) return { ...told, hourlyInPerHr: inPerHr };
  if (durationMin > HOUR_MIN) return told;
  return {
    ...told,
    atLeastHourlyInPerHr: inPerHr,
    quarterHourInPerHr: quarterHour(inPerHr, durationMin),
    fiveMinuteInPerHr: durationMin <= 5 ? inPerHr : null,
  };
}

function quarterHour(inPerHr: number, durationMin: number): number | null {
  if (durationMin <= 15) return inPerHr;
  return durationMin === 30 ? quarterOverHalfHourRatio.ratio * inPerHr : null;
}

function assumedOf({ inPerHr, durationMin, returnYears }: Rain): Assumption[] {
  const findOut = 'Look the place up at the public precipitation-frequency service: 100 years, 60 and 15 minutes.';
  const assumed: Assumption[] = [];
  if (durationMin === null) {
    const because = `${inPerHr} in/h was given without a duration.`;
    assumed.push({ path: 'place.rain.durationMin', value: `${HOUR_MIN} minutes`, because, findOut });
  }
  if (returnYears === null) {
    const because = `${inPerHr} in/h was given without a return period.`;
    assumed.push({ path: 'place.rain.returnYears', value: `${RETURN_YEARS} years`, because, findOut });
  }
  return assumed;
}

function findingsOf({ inPerHr, durationMin, returnYears }: Rain): Finding[] {
  const base = { level: 'fix', where: 'design rain', source: null } as const;
  const findings: Finding[] = [];
  if (durationMin !== null && durationMin > HOUR_MIN) {
    findings.push({
      ...base,
      id: 'rain-duration-too-long',
      message: `The rain given is the mean of ${durationMin} minutes, too long for a roof: give the rate of 60 or 15 minutes. It is not used.`,
      value: `${durationMin} minutes`,
      limit: `${HOUR_MIN} minutes`,
    });
  }
  // Gutters are sized by short rains of 10 years, so a 5-minute entry may be of a shorter return.
  if (returnYears !== null && returnYears < (durationMin !== null && durationMin <= 5 ? 10 : RETURN_YEARS)) {
    findings.push({
      ...base,
      id: 'rain-return-too-short',
      message: `${inPerHr} in/h is a rain of ${returnYears} years: roof outlets are sized for ${RETURN_YEARS} years. Give that rate.`,
      value: `${returnYears} years`,
      limit: `${RETURN_YEARS} years`,
    });
  }
  return findings;
}
