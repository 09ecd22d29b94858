import { stationWeather, type WeatherRow } from '../../../reference/weather.ts';
import { type WinterClimateRow, winterClimates } from '../../../reference/winter-climate.ts';
import type { Assumption } from '../report/types.ts';
import type { Roof } from '../roof.ts';
import { findTown } from '../site/town.ts';

/** Summer and winter of one listed town. */
export interface TownWeather extends WeatherRow {
  winter: WinterClimateRow;
}

export interface PlaceWeather {
  row: TownWeather;
  /** Empty where the place itself is in the table. */
  assumed: readonly Assumption[];
}

const winters: readonly WinterClimateRow[] = winterClimates;

/** Every town that has a summer and a winter. */
export const townWeathers: readonly TownWeather[] = stationWeather.flatMap((row) =>
  winters.filter(({ city, state }) => city === row.city && state === row.state).map((winter) => ({ ...row, winter })),
);

/** Middle of the map, hot in summer and cold in winter: taken where nothing is known of the place. */
const ANYWHERE = townWeathers.find(({ city }) => city === 'St Louis')!;

const hottest = (some: readonly TownWeather[]): TownWeather | null =>
  some.reduce<TownWeather | null>((most, row) => (most === null || row.hotF > most.hotF ? row : most), null);

/** "4A" is in zone "4A"; "4" holds both; a zone of the job that names no regime is matched by its number. */
const inZone = (zone: string): readonly TownWeather[] => {
  const wanted = zone.trim().toUpperCase();
  const exact = townWeathers.filter((row) => row.winter.zone === wanted);
  return exact.length > 0 ? exact : townWeathers.filter((row) => row.winter.zone.charAt(0) === wanted.charAt(0));
};

const named = ({ city, state }: TownWeather): string => `${city}, ${state}`;

function standIn(
  row: TownWeather,
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
 * Source: reference/weather.ts, reference/winter-climate.ts. Correctness: tests/unit/heat/place-weather.test.ts
 */
export function weatherFor({
  city,
  state,
  climateZone,
}: Pick<Roof['place'], 'city' | 'state' | 'climateZone'>): PlaceWeather {
  const match = findTown(townWeathers, city, state);
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
