import { cOfF, fOfC } from '../heat/degrees.ts';
import type { MoistureReport } from '../report/types.ts';
import { monthPressures } from './balance.ts';
import { faceTemperatures, vaporProfile } from './glaser.ts';
import { type RoofLayer, vaporLayers } from './layers.ts';
import type { Place } from './lining.ts';
import { dewPointOf, saturationPa } from './psychrometrics.ts';
import { ROOM_F } from './room.ts';

const FILMS = { outsideFilm: 0.03, insideFilm: 0.107 } as const;

/** January by the layers: temperature and dew point at every inner face. */
export function januaryProfile(layers: readonly RoofLayer[], { winter, room }: Place): MoistureReport['profile'] {
  const air = monthPressures(winter, 0, room.excessPa);
  const coarse = vaporLayers(layers, false);
  const state = { ...air, insideC: cOfF(ROOM_F), ...FILMS };
  const points = vaporProfile(coarse, state, saturationPa);
  return faceTemperatures(coarse, state)
    .slice(1)
    .map((airC, i) => ({
      face: layers[i].face,
      airF: fOfC(airC),
      dewPointF: fOfC(dewPointOf(Math.max(1, points[i + 1].vaporPa))),
    }));
}
