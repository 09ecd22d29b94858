import { clearSkyEmittance, designDayFractions } from '../../../reference/heat.ts';
import { type SkyDepths, skyLight } from './clear-sky.ts';
import { kOfC } from './degrees.ts';
import { type Spot, sunSine } from './sun.ts';

const shares: readonly number[] = designDayFractions.shares;

/**
 * Air temperature over a design day, straight between whole hours.
 * @param clockH standard time, 0 to 24
 * @param hotC highest of the day
 * @param rangeK mean daily range
 */
export function designAirC(clockH: number, hotC: number, rangeK: number): number {
  const hour = Math.floor(clockH);
  const part = clockH - hour;
  const share = shares[hour % 24] * (1 - part) + shares[(hour + 1) % 24] * part;
  return hotC - share * rangeK;
}

/** Temperature of the clear sky as a radiator, K. Source: Clark and Allen 1978. */
export const skyK = (airC: number, dewC: number): number =>
  kOfC(airC) * (clearSkyEmittance.a + clearSkyEmittance.b * Math.log(kOfC(Math.min(dewC, airC)) / 273.15)) ** 0.25;

/** One clear day outside, repeated. */
export interface DayOutside {
  spot: Spot;
  dayOfYear: number;
  depths: SkyDepths;
  hotC: number;
  rangeK: number;
  dewC: number;
}

/** What the surface meets, step by step through the day; entry 0 is midnight, the last is midnight again. */
export interface Outside {
  stepS: number;
  sunWPerM2: Float64Array;
  airC: Float64Array;
  skyK: Float64Array;
}

const DAY_S = 86_400;

/** @param steps of the day, a whole number of them in each hour so that the design temperatures are met */
export function outsideOver(day: DayOutside, steps: number): Outside {
  const sunWPerM2 = new Float64Array(steps + 1);
  const air = new Float64Array(steps + 1);
  const sky = new Float64Array(steps + 1);
  for (let i = 0; i <= steps; i++) {
    const clockH = (24 * i) / steps;
    sunWPerM2[i] = skyLight(sunSine(day.spot, day.dayOfYear, clockH), day.dayOfYear, day.depths).total;
    air[i] = designAirC(clockH % 24, day.hotC, day.rangeK);
    sky[i] = skyK(air[i], day.dewC);
  }
  return { stepS: DAY_S / steps, sunWPerM2, airC: air, skyK: sky };
}
