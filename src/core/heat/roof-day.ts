import { insideFilms, solAirFilm } from '../../../reference/heat.ts';
import type { Outside } from './design-day.ts';
import { type PeriodicDay, periodicDay } from './periodic-day.ts';
import { roofFace, type Surface, solAirC } from './roof-face.ts';
import { type Layer, slabOf, steadyTemperatures } from './slab.ts';

/** One roof as heat sees it. */
export interface HeatRoof {
  layers: readonly Layer[];
  surface: Surface;
}

/** The air under it: held by a system, or as warm as the air outside. */
export interface RoomAir {
  /** null = as outside. */
  airC: number | null;
  heatGoes: 'down' | 'up';
}

export interface DesignDayRun {
  outside: Outside;
  room: RoomAir;
  windWPerM2K: number;
}

const mean = (values: Float64Array): number => values.reduce((sum, each) => sum + each, 0) / values.length;

/** Temperatures of the steady state under the day's mean sun and air. */
function startC(
  { conductance }: { conductance: Float64Array },
  { surface }: HeatRoof,
  run: DesignDayRun,
  filmR: number,
) {
  const { outside, room } = run;
  const { wPerM2K, skyLossK } = solAirFilm;
  const air = mean(outside.airC);
  const outer = solAirC(air, mean(outside.sunWPerM2), 1 - surface.reflectance, wPerM2K, skyLossK);
  const r = Array.from(conductance, (g) => 1 / g);
  return Float64Array.from(steadyTemperatures(r, 1 / wPerM2K, filmR, outer, room.airC ?? air));
}

/**
 * One roof through a clear day that is repeated until it ends as it began.
 * Correctness: tests/published/heat-roof.test.ts, tests/laws/heat.test.ts
 */
export function roofDay(roof: HeatRoof, run: DesignDayRun): PeriodicDay {
  const { outside, room, windWPerM2K } = run;
  const slab = slabOf(roof.layers);
  const { wPerM2K: filmWPerM2K } = insideFilms.find(({ heatGoes }) => heatGoes === room.heatGoes)!;
  const airC = room.airC === null ? outside.airC : new Float64Array(outside.airC.length).fill(room.airC);
  return periodicDay({
    slab,
    outer: roofFace(roof.surface, outside, windWPerM2K),
    inner: { filmWPerM2K, airC },
    stepS: outside.stepS,
    startC: startC(slab, roof, run, 1 / filmWPerM2K),
  });
}
