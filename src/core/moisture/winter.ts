import { indoorClasses } from '../../../reference/vapor.ts';
import { type WinterClimateRow, winterClimates } from '../../../reference/winter-climate.ts';
import { cOfF } from '../heat/degrees.ts';
import type { Assumption } from '../report/types.ts';
import type { Roof } from '../roof.ts';
import { findTown } from '../site/town.ts';
import { saturationPa } from './psychrometrics.ts';

/** The winter that a roof is judged by. */
export interface Winter {
  climateZone: string | null;
  januaryF: number;
  /** Mean of the three coldest months. */
  coldF: number;
  /** Mean of the year. */
  yearF: number;
  /** Outdoor humidity that makes the room's humidity of the table, percent. */
  outdoorRhPct: number;
  /** The place whose figures are taken. */
  place: string;
  /** It stands in for a place that is not in the table. */
  standsIn: boolean;
  row: WinterClimateRow;
}

export interface WinterReading {
  /** null = neither a listed town nor a zone is known. */
  winter: Winter | null;
  climateZone: string | null;
  assumed: readonly Assumption[];
}

const rows: readonly WinterClimateRow[] = winterClimates;
const ROOM_F = 70;
const HUMID_PCT = 75;

const [, ordinary] = indoorClasses;

/** Share of the indoor excess that is left at an outdoor temperature: all at 0 C and below, nothing from 20 C on. */
export const excessShare = (outdoorC: number): number => Math.min(1, Math.max(0, 1 - outdoorC / 20));

const meanOfYearF = ({ heatingDays, coolingDays }: WinterClimateRow): number => 65 + (coolingDays - heatingDays) / 365;

/** Outdoor humidity behind the room humidity of the table. */
function outdoorRhPct({ indoorRhPct, januaryF }: WinterClimateRow): number {
  if (indoorRhPct === null) return HUMID_PCT;
  const januaryC = cOfF(januaryF);
  const indoorPa = (indoorRhPct / 100) * saturationPa(cOfF(ROOM_F));
  const outdoorPa = indoorPa - ordinary.excessPa * excessShare(januaryC);
  return Math.min(95, Math.max(20, (100 * outdoorPa) / saturationPa(januaryC)));
}

const winterOf = (row: WinterClimateRow, climateZone: string | null, standsIn: boolean): Winter => ({
  climateZone: climateZone ?? row.zone,
  januaryF: row.januaryF,
  coldF: row.threeColdestF ?? row.januaryF,
  yearF: meanOfYearF(row),
  outdoorRhPct: outdoorRhPct(row),
  place: `${row.city}, ${row.state}`,
  standsIn,
  row,
});

const coldOf = ({ threeColdestF, januaryF }: WinterClimateRow): number => threeColdestF ?? januaryF;

const sameZone = (row: WinterClimateRow, climateZone: string): boolean =>
  row.zone === climateZone || (climateZone.length === 1 && row.zone.startsWith(climateZone) && row.zone !== '4C');

/**
 * The winter of a roof's place: of its town where it is listed, else of the coldest listed place of its climate zone.
 */
export function winterFor({
  city,
  state,
  climateZone,
}: Pick<Roof['place'], 'city' | 'state' | 'climateZone'>): WinterReading {
  const zone = climateZone?.trim().toUpperCase() ?? null;
  const match = findTown(rows, city, state);
  if (match.kind === 'listed') {
    const { row } = match;
    const assumed: Assumption[] =
      zone === null
        ? [
            {
              path: 'place.climateZone',
              value: row.zone,
              because: `the zone of ${row.city}, ${row.state} on the map before 2021; about one county in ten has moved`,
              findOut: 'ask the building office',
            },
          ]
        : [];
    return { winter: winterOf(row, zone, false), climateZone: zone ?? row.zone, assumed };
  }
  if (zone === null) return { winter: null, climateZone: null, assumed: [] };
  const inZone = rows.filter((row) => sameZone(row, zone));
  if (inZone.length === 0) return { winter: null, climateZone: zone, assumed: [] };
  const coldest = inZone.reduce((cold, row) => (coldOf(row) < coldOf(cold) ? row : cold));
  return {
    winter: winterOf(coldest, zone, true),
    climateZone: zone,
    assumed: [
      {
        path: 'place.city',
        value: `the winter of ${coldest.city}, ${coldest.state}`,
        because: `the town is not in the table of winters: the coldest listed place of zone ${zone} is taken, which is the careful side`,
        findOut: 'give the nearest larger town',
      },
    ],
  };
}

/** Mean air of a month, C, from January and the mean of the year: a wave over the year, coldest in January. */
export function monthC({ januaryF, yearF }: Winter, month: number): number {
  return cOfF(yearF - (yearF - januaryF) * Math.cos((2 * Math.PI * month) / 12));
}
