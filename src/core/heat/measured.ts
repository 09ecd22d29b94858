import { solarReflectanceIndex } from '../membrane/sri.ts';
import type { HeatOfRoof } from '../report/types.ts';
import { BTU_FT2, BTU_H_FT2, fOfC, R_IP } from './degrees.ts';
import { type DesignDayRun, type HeatRoof, roofDay } from './roof-day.ts';
import { resistanceOf } from './slab.ts';

/** A roof with the words that name it. */
export interface NamedRoof extends HeatRoof {
  id: string;
  title: string;
  membrane: string | null;
  foamIn: number | null;
}

/** Greatest value of a day and the hour at which it is met. */
function peak(values: Float64Array): { value: number; atH: number } {
  const at = values.reduce((most, each, i) => (each > values[most] ? i : most), 0);
  return { value: values[at], atH: (24 * at) / (values.length - 1) };
}

/** A series at the whole hours, 0 to 24. */
export const hourly = (values: Float64Array): number[] =>
  Array.from({ length: 25 }, (_, h) => values[(h * (values.length - 1)) / 24]);

/** One roof through one day, as people read it. */
export function heatOf(roof: NamedRoof, run: DesignDayRun, areaSqFt: number): HeatOfRoof {
  const day = roofDay(roof, run);
  const surface = peak(day.faceC);
  const heat = peak(day.roomWPerM2);
  const { reflectance, emittance } = roof.surface;
  return {
    id: roof.id,
    title: roof.title,
    membrane: roof.membrane,
    foamIn: roof.foamIn,
    layersR: resistanceOf(roof.layers) * R_IP,
    reflectance,
    emittance,
    sri: solarReflectanceIndex(reflectance, emittance),
    surfaceF: hourly(day.faceC).map(fOfC),
    peakSurfaceF: fOfC(surface.value),
    peakSurfaceAtH: surface.atH,
    peakBtuPerHrSqFt: heat.value * BTU_H_FT2,
    peakHeatAtH: heat.atH,
    dayBtuPerSqFt: day.leftJ * BTU_FT2,
    peakBtuPerHr: heat.value * BTU_H_FT2 * areaSqFt,
    dayBtu: day.leftJ * BTU_FT2 * areaSqFt,
  };
}

/** Heat into the room over a day alone, Btu per sq ft. */
export const dayBtuPerSqFt = (roof: HeatRoof, run: DesignDayRun): number => roofDay(roof, run).leftJ * BTU_FT2;

/** Highest surface of a day alone, F, in another wind. */
export const peakSurfaceF = (roof: HeatRoof, run: DesignDayRun, windWPerM2K: number): number =>
  fOfC(peak(roofDay(roof, { ...run, windWPerM2K }).faceC).value);
