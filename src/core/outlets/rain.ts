import { gutterRainRatio, quarterHourRatio } from '../../../reference/precipitation-frequency.ts';
import type { RainCityRow } from '../../../reference/rain-cities.ts';
import { usStates } from '../../../reference/us-states.ts';
import { plainNumber } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { Assumption, Finding, RainReport, SourceNote } from '../report/types.ts';
import type { Roof } from '../roof.ts';
import type { RuleSet } from '../rule-set.ts';
import { type OwnRates, ownRates } from './own-rain.ts';
import { type CityMatch, findCity, wettest } from './rain-city.ts';

/** Rain rates of one job. */
export interface DesignRain extends RainReport {
  /** Five-minute rate for gutters. */
  gutterInPerHr: number;
  gutterBasis: string;
  /** Set when that rate was not given; counts only where there is a gutter. */
  gutterAssumed: Assumption | null;
  assumed: readonly Assumption[];
  findings: readonly Finding[];
}

interface Primary {
  inPerHr: number;
  basis: string;
  source: SourceNote;
  assumed: readonly Assumption[];
}

const given: SourceNote = { id: 'arithmetic', text: 'given in the roof file', grade: 'computed' };
const local: SourceNote = { id: 'arithmetic', text: 'local amendment given in the roof file', grade: 'computed' };
const FIND_OUT =
  'Look the place up at the public precipitation-frequency service (100 years, 60 minutes), or ask the building office.';

/**
 * Design rain of a place under a rule set: hourly rate for primary outlets, the overflow's rate (hourly, or 15 minutes where
 * building or plumbing code asks for it, else twice the hourly rate), five-minute rate for gutters.
 * A local amendment wins over the own entry, that over the city table; an unlisted town takes the greatest listed rate of its
 * state, an unplaced one the greatest of the mainland, both listed as assumed.
 * Source: reference/rain-cities.ts, reference/precipitation-frequency.ts. Correctness: tests/unit/outlets/rain.test.ts
 */
export function rainFor(place: Roof['place'], ruleSet: RuleSet): DesignRain {
  const own = ownRates(place.rain);
  const primary = primaryRain(place, own, ruleSet);
  const overflow = overflowRain(primary.inPerHr, own, ruleSet);
  const gutterInPerHr = Math.max(own.fiveMinuteInPerHr ?? gutterRainRatio.ratio * primary.inPerHr, primary.inPerHr);
  return {
    primaryInPerHr: primary.inPerHr,
    primaryBasis: primary.basis,
    overflowInPerHr: overflow.inPerHr,
    overflowBasis: overflow.basis,
    source: primary.source,
    gutterInPerHr,
    gutterBasis:
      own.fiveMinuteInPerHr === null
        ? `${gutterRainRatio.ratio.toFixed(2)} times the hourly rate, from one published city`
        : 'five-minute rate as given',
    gutterAssumed: own.fiveMinuteInPerHr === null ? assumedGutterRate(gutterInPerHr) : null,
    assumed: [...primary.assumed, ...own.assumed],
    findings: own.findings,
  };
}

function primaryRain(place: Roof['place'], own: OwnRates, ruleSet: RuleSet): Primary {
  const { rainInPerHr } = ruleSet.local;
  if (rainInPerHr !== null) {
    return { inPerHr: rainInPerHr, basis: 'rate fixed by local amendment', source: local, assumed: [] };
  }
  if (own.hourlyInPerHr !== null) {
    return { inPerHr: own.hourlyInPerHr, basis: '100 years, 60 minutes, as given', source: given, assumed: [] };
  }
  const match = findCity(place.city, place.state);
  if (match.kind === 'listed') return fromCity(match.row);
  if (own.atLeastHourlyInPerHr !== null) {
    const because = 'Only a rate of less than an hour was given; the hourly rate is not more than that.';
    const inPerHr = own.atLeastHourlyInPerHr;
    return {
      inPerHr,
      basis: 'short rain as given, safe side',
      source: given,
      assumed: [assumedRate(inPerHr, because)],
    };
  }
  const row = wettest(match.kind === 'none' ? match.rows.filter(isMainland) : match.rows);
  const city = fromCity(row);
  return {
    ...city,
    basis: `${city.basis}; assumed, it stands in for a place that is ${match.kind === 'none' ? 'not known' : 'not in the table'}`,
    assumed: [assumedRate(row.inPerHr, whyGreatest(match, row))],
  };
}

function whyGreatest(match: Exclude<CityMatch, { kind: 'listed' }>, { city, state, inPerHr }: RainCityRow): string {
  const taken = `${city}, ${state}, ${inPerHr} in/h`;
  if (match.kind === 'several')
    return `That town's name stands in several states; the greatest rate is used (${taken}).`;
  if (match.kind === 'none') {
    return `No town was given that could be placed; the greatest listed rate of the mainland is used (${taken}).`;
  }
  return `"${match.town}" is not in the rain table; the greatest listed rate of ${usStates[match.state]} is used (${taken}).`;
}

const isMainland = (row: RainCityRow): boolean => row.state !== 'HI' && row.state !== 'AK';

function fromCity(row: RainCityRow): Primary {
  const basis = `100 years, 60 minutes, ${row.city}, ${row.state}`;
  return { inPerHr: row.inPerHr, basis, source: sourceNote(row), assumed: [] };
}

const assumedRate = (inPerHr: number, because: string): Assumption => ({
  path: 'place.rain',
  value: `${inPerHr} in/h`,
  because,
  findOut: FIND_OUT,
});

const assumedGutterRate = (inPerHr: number): Assumption => ({
  path: 'place.rain.fiveMinute',
  value: `${plainNumber(inPerHr, 1)} in/h`,
  because: 'No five-minute rate was given for the gutters; the hourly rate is raised as in one published city.',
  findOut: 'Look up 10 years, 5 minutes at the public precipitation-frequency service.',
});

function overflowRain(primaryInPerHr: number, own: OwnRates, ruleSet: RuleSet): { inPerHr: number; basis: string } {
  const byBuilding = ruleSet.building.rainLoad.duration === '15-min';
  if (!byBuilding && ruleSet.plumbing.overflowRain.duration === '60-min') {
    return { inPerHr: primaryInPerHr, basis: 'same hourly rate, primary outlets blocked' };
  }
  const which = sourceNote(byBuilding ? ruleSet.building.rainLoad : ruleSet.plumbing.overflowRain).text;
  const quarter = own.quarterHourInPerHr;
  if (quarter !== null) {
    return { inPerHr: Math.max(quarter, primaryInPerHr), basis: `15-minute rate from the rain given (${which})` };
  }
  return { inPerHr: quarterHourRatio.ratio * primaryInPerHr, basis: `twice the hourly rate (${which})` };
}
