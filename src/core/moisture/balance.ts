import { wetAlarm, wetGrowth } from '../../../reference/vapor.ts';
import { cOfF } from '../heat/degrees.ts';
import { type VaporLayer, type VaporState, vaporProfile } from './glaser.ts';
import { saturationPa } from './psychrometrics.ts';
import { excessShare, monthC, type Winter } from './winter.ts';

const ROOM_C = cOfF(70);
const MONTH_S = (365 / 12) * 86_400;
/** Cooled or aired rooms do not get damper than this in summer. */
const MOST_INDOOR_RH = 0.7;
const FILMS = { outsideFilm: 0.04, insideFilm: 0.1 } as const;
/** Years of the balance. */
export const YEARS = 2;
/** Left after two years: less is none. */
export const NOTHING_G = 1;

export interface Month {
  /** 0 = January. */
  month: number;
  outsideC: number;
  outsidePa: number;
  insidePa: number;
  /** Water in the roof at its end, g/m2. */
  waterGPerM2: number;
}

export interface YearBalance {
  /** The second year, October to September. */
  months: readonly Month[];
  /** Most water at one time, and what is left after two years, g/m2. */
  peakGPerM2: number;
  leftGPerM2: number;
  /** Face where most of it gathers at the peak, counted from outside; null = none gathers. */
  wettestFace: number | null;
}

/** Vapor pressures of a month, Pa. @param excessPa indoors over outdoors in frost */
export function monthPressures(winter: Winter, month: number, excessPa: number): Omit<Month, 'waterGPerM2'> {
  const outsideC = monthC(winter, month);
  const outsidePa = (winter.outdoorRhPct / 100) * saturationPa(outsideC);
  const most = MOST_INDOOR_RH * saturationPa(ROOM_C);
  return { month, outsideC, outsidePa, insidePa: Math.min(most, outsidePa + excessPa * excessShare(outsideC)) };
}

const DRY_G = 1e-6;

/** One month with constant air: a face that dries out in it is let go at that moment, so that no water is made. */
function passMonth(layers: readonly VaporLayer[], state: VaporState, water: Map<number, number>): void {
  let leftS = MONTH_S;
  while (leftS > 1) {
    const points = vaporProfile(layers, state, saturationPa, new Set(water.keys()));
    const rates = points.map(({ gathers }) => 1000 * gathers);
    const driesS = [...water].map(([face, g]) => (rates[face] < 0 ? -g / rates[face] : Number.POSITIVE_INFINITY));
    const stepS = Math.min(leftS, ...driesS);
    rates.forEach((rate, face) => {
      const next = (water.get(face) ?? 0) + rate * stepS;
      if (next > DRY_G) water.set(face, next);
      else water.delete(face);
    });
    leftS -= Math.max(stepS, 1);
  }
}

/**
 * Month by month what gathers in a roof in winter and dries in summer, two years from a dry October on. Source: the method of
 * ISO 13788, with means of months; no sun on the roof, so drying is on the careful side.
 * Correctness: tests/published/moisture-balance.test.ts
 * @param layers outside first, thick insulation in slices
 */
export function yearBalance(layers: readonly VaporLayer[], winter: Winter, excessPa: number): YearBalance {
  const water = new Map<number, number>();
  const months: Month[] = [];
  let wettestFace: number | null = null;
  let peakGPerM2 = 0;
  let total = 0;
  for (let step = 0; step < 12 * YEARS; step++) {
    const air = monthPressures(winter, (step + 9) % 12, excessPa);
    passMonth(layers, { ...air, insideC: ROOM_C, ...FILMS }, water);
    total = [...water.values()].reduce((sum, g) => sum + g, 0);
    if (total > peakGPerM2) {
      peakGPerM2 = total;
      wettestFace = [...water].reduce((most, one) => (one[1] > most[1] ? one : most))[0];
    }
    if (step >= 12) months.push({ ...air, waterGPerM2: total });
  }
  return { months, peakGPerM2, leftGPerM2: total, wettestFace };
}

export type Water = Pick<YearBalance, 'peakGPerM2' | 'leftGPerM2'>;

/**
 * Years until it holds more than is let pass: 0 = at once, infinite = never. What is left at the end of the balance gathers
 * on at that pace, and the swing of the seasons comes on top of it. Source: `wetAlarm`
 */
export function yearsToAlarm({ peakGPerM2, leftGPerM2 }: Water): number {
  const roomG = wetAlarm.gPerM2 - (peakGPerM2 - leftGPerM2);
  if (roomG < 0) return 0;
  return leftGPerM2 <= 0 ? Number.POSITIVE_INFINITY : (YEARS * roomG) / leftGPerM2;
}

/** Whether it holds no more water than is let pass, for as long as a covering lasts. Source: `wetAlarm`, `wetGrowth` */
export const yearHolds = (water: Water): boolean => yearsToAlarm(water) >= wetGrowth.years;
