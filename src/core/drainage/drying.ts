import { type PanRow, panCoefficient, panRates } from '../../../reference/drying.ts';

/** Class A pan rate [in/day] of a monthly sum [in] over the days of that month. */
export const panInPerDay = (monthSumIn: number, daysInMonth = 30): number => monthSumIn / daysInMonth;

/**
 * Depth of open water [in] that dries in the given time: rate x coefficient x time.
 * @param panRateInPerDay Class A pan evaporation [in/day]
 * @param hours time since the rain stopped
 * A pond is judged by what is left after it. Source: reference/drying.ts (coefficient from memory).
 * Correctness: tests/published/drainage-load.test.ts
 */
export function dryingDepthIn(panRateInPerDay: number, hours = 48): number {
  return panRateInPerDay * panCoefficient.coefficient * (hours / 24);
}

const rates: readonly PanRow[] = panRates;

/** Seasons of a place that dry most and least, by the letter of its climate zone (B = dry); an unknown place is taken as humid. */
export function dryingSeasons(climateZone: string | null): { warm: PanRow; cool: PanRow } {
  const arid = /^\d*B/i.test(climateZone?.trim() ?? '');
  const row = (id: PanRow['id']): PanRow => rates.find((each) => each.id === id)!;
  return arid
    ? { warm: row('arid-summer'), cool: row('arid-winter') }
    : { warm: row('humid-summer'), cool: row('cool-season') };
}

/**
 * Depth [in] left of a pond after 48 h: in the warm season at its greatest rate, in the cool season at its least.
 * Correctness: tests/unit/drainage/drying.test.ts
 */
export function leftAfter48hIn(depthIn: number, climateZone: string | null): readonly [warmIn: number, coolIn: number] {
  const { warm, cool } = dryingSeasons(climateZone);
  const left = (panInPerDay: number): number => Math.max(0, depthIn - dryingDepthIn(panInPerDay));
  return [left(warm.panInPerDay[1]), left(cool.panInPerDay[0])];
}
