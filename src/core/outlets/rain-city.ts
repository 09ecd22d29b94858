import { type RainCityRow, rainCities } from '../../../reference/rain-cities.ts';
import { findTown, type TownMatch } from '../site/town.ts';

const rows: readonly RainCityRow[] = rainCities;

/** What is known of the rain at a town. */
export type CityMatch = TownMatch<RainCityRow>;

/** Finds a town in the rain table. Correctness: tests/unit/outlets/rain.test.ts */
export const findCity = (city: string | null, state: string | null): CityMatch => findTown(rows, city, state);

/** The row with the greatest rain. */
export const wettest = (some: readonly RainCityRow[]): RainCityRow =>
  some.reduce((most, row) => (row.inPerHr > most.inPerHr ? row : most));
