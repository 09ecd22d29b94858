import { stationWeather, type WeatherRow } from '../../../reference/weather.ts';
import { findTown } from '../outlets/rain-city.ts';
import type { Assumption } from '../report/types.ts';
import type { Roof } from '../roof.ts';

export interface PlaceWeather {
  row: WeatherRow;
  /** Empty where the place itself is in the table. */
  assumed: readonly Assumption[];
}

const rows: readonly WeatherRow[] = stationWeather;

/** Middle of the map, hot in summer and cold in winter: taken where nothing is known of the place. */
const ANYWHERE = rows.find(({ city }) => city === 'St Louis')!;

const hottest = (some: readonly WeatherRow[]): WeatherRow | null =>
  some.reduce<WeatherRow | null>((most, row) => (most === null || row.hotF > most.hotF ? row : most), null);

/** "4A" is in zone "4A"; "4" holds both; a zone of the job that names no regime is matched by its number. */
const inZone = (zone: string): readonly WeatherRow[] => {
  const wanted = zone.trim().toUpperCase();
  const exact = rows.filter((row) => row.zone === wanted);
  return exact.length > 0 ? exact : rows.filter((row) => row.zone.charAt(0) === wanted.charAt(0));
};

const named = ({ city, state }: WeatherRow): string => `${city}, ${state}`;

function standIn(
  row: WeatherRow,
  place: string | null,
  because: string,
  path: 'place.city' | 'place.climateZone',
): PlaceWeather {
  const where = place === null ? 'the place was not given' : `${place} is not in the table of design weather`;
  return {
    row,
    assumed: [
      {
        path,
        value: `weather of ${named(row)}`,
        because: `${where}; ${because}`,
        findOut: 'ask the building office for its design temperatures, and name the nearest listed city',
      },
    ],
  };
}

/**
 * Design weather of a roof's place: the town itself, else the hottest listed town of its climate zone (those of its own
 * state first), else of its state, else a town in the middle of the map. What stands in is listed as assumed.
 * Source: reference/weather.ts. Correctness: tests/unit/heat/place-weather.test.ts
 */
export function weatherFor({
  city,
  state,
  climateZone,
}: Pick<Roof['place'], 'city' | 'state' | 'climateZone'>): PlaceWeather {
  const match = findTown(rows, city, state);
  if (match.kind === 'listed') return { row: match.row, assumed: [] };
  const place = [city, state].filter((part) => part !== null).join(', ') || null;
  const ofZone = climateZone === null ? [] : inZone(climateZone);
  const near = match.kind === 'none' ? [] : match.rows;
  const both = hottest(ofZone.filter((row) => near.includes(row)));
  if (both !== null) return standIn(both, place, `nearest in state and climate zone ${climateZone}`, 'place.city');
  const zone = hottest(ofZone);
  if (zone !== null)
    return standIn(zone, place, `the hottest listed town of climate zone ${climateZone}`, 'place.city');
  const ofState = hottest(near);
  if (ofState !== null) return standIn(ofState, place, 'the hottest listed town of its state', 'place.climateZone');
  return standIn(ANYWHERE, place, 'no state and no climate zone tell where it is', 'place.city');
}
