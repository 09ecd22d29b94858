import { roomAir } from '../../../reference/heat.ts';
import { filmsR } from '../../../reference/insulation.ts';
import type { HeatInWinter } from '../report/types.ts';
import { winterRun } from './days.ts';
import { R_IP } from './degrees.ts';
import { dayBtuPerSqFt } from './measured.ts';
import type { TownWeather } from './place-weather.ts';
import type { HeatRoof } from './roof-day.ts';
import { type Layer, resistanceOf } from './slab.ts';

const HOURS = 24;

/** U with the films of winter, Btu/(h ft2 F). */
const uOf = (layers: readonly Layer[]): number => 1 / (resistanceOf(layers) * R_IP + filmsR.value);

/**
 * What the change costs and saves in the cold: a clear January day for the color, degree-days for the insulation.
 * Clouds and snow make the color matter less, so its penalty is on the high side.
 */
export function inWinter(town: TownWeather, old: HeatRoof, next: HeatRoof): HeatInWinter {
  const run = winterRun(town);
  const loss = (roof: HeatRoof): number => -dayBtuPerSqFt(roof, run);
  const newLoss = loss(next);
  return {
    januaryF: town.winter.januaryF,
    roomF: roomAir.winterF,
    oldLossBtuPerSqFt: loss(old),
    newLossBtuPerSqFt: newLoss,
    colorPenaltyBtuPerSqFt: newLoss - loss({ layers: next.layers, surface: old.surface }),
    degreeDays: town.winter.heatingDays,
    insulationSavesBtuPerSqFtYear: HOURS * town.winter.heatingDays * (uOf(old.layers) - uOf(next.layers)),
  };
}
