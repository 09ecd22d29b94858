import { designDayFractions, designDays, roomAir } from '../../../reference/heat.ts';
import { sriConditions } from '../../../reference/membranes/heat.ts';
import { cOfF } from './degrees.ts';
import { type DayOutside, outsideOver } from './design-day.ts';
import { pressurePa, wetBulbDewPointC } from './humid-air.ts';
import type { TownWeather } from './place-weather.ts';
import type { DesignDayRun } from './roof-day.ts';

/** Steps of ten minutes: of the result at five minutes they miss less than 0.05 F. */
const STEPS = 144;

const kOfRange = (rangeF: number): number => rangeF / 1.8;

/**
 * The hot day of a town: 1 percent design temperature, clear sky of 21 July. Where the height above the sea is not known
 * the sea's own is taken: at 4,000 ft the dew point is then up to 6 F low and a surface 0.3 F cool.
 */
export function hotDay(town: TownWeather): DayOutside {
  const hotC = cOfF(town.hotF);
  return {
    spot: town,
    dayOfYear: designDays.hot,
    depths: town.julyTau,
    hotC,
    rangeK: kOfRange(town.dailyRangeF),
    dewC: wetBulbDewPointC(hotC, cOfF(town.hotWetBulbF), pressurePa(town.elevationFt ?? 0)),
  };
}

const shares: readonly number[] = designDayFractions.shares;
const meanShare = shares.reduce((sum, each) => sum + each, 0) / shares.length;

/** A clear January day: the month's mean air with the range of summer, dew point at the coldest of the night. */
export function winterDay(town: TownWeather): DayOutside {
  const rangeK = kOfRange(town.dailyRangeF);
  const hotC = cOfF(town.winter.januaryF) + meanShare * rangeK;
  return { spot: town, dayOfYear: designDays.cold, depths: null, hotC, rangeK, dewC: hotC - rangeK };
}

/** @param cooled whether a system holds the air below the roof */
export const hotRun = (town: TownWeather, cooled: boolean): DesignDayRun => ({
  outside: outsideOver(hotDay(town), STEPS),
  room: { airC: cooled ? cOfF(roomAir.summerF) : null, heatGoes: 'down' },
  windWPerM2K: sriConditions.windWPerM2K.medium,
});

export const winterRun = (town: TownWeather): DesignDayRun => ({
  outside: outsideOver(winterDay(town), STEPS),
  room: { airC: cOfF(roomAir.winterF), heatGoes: 'up' },
  windWPerM2K: sriConditions.windWPerM2K.medium,
});
