import type { Plane } from '../geometry/plane.ts';
import type { Point } from '../roof.ts';
import type { Sump } from '../taper/sump.ts';
import type { Built } from './build.ts';
import type { Catalogue } from './catalogue.ts';
import { layersOfPlane } from './layers.ts';
import { flatUnderSump } from './sumps.ts';
import { type TileJob, type Tiling, tile } from './tiling.ts';

/** What tiling has to know of where a taper starts. */
export function startsForTiling(starts: Built['starts']): Pick<TileJob, 'axisOf' | 'layersAt'> {
  const byId = new Map(starts.map((start) => [start.id, start]));
  return {
    axisOf: (outlet): Point => {
      const start = byId.get(outlet);
      return start === undefined ? [0, 0] : start.kind === 'point' ? start.at : start.from;
    },
    layersAt: (outlet, plane: Plane) => {
      const start = byId.get(outlet);
      return start === undefined ? [[plane.gx, plane.gy]] : layersOfPlane(start.pattern, plane);
    },
  };
}

/** The boards of a built plan. */
export const boardsOf = ({ thickness, starts, sumps, baseIn }: Built, catalogue: Catalogue): Tiling =>
  tile({
    patches: thickness,
    catalogue,
    baseIn,
    ...startsForTiling(starts),
    underIn: underSumps(sumps, catalogue, baseIn),
  });

/** Flat stock under a plane: the base, or what a sump leaves of it. */
function underSumps(sumps: readonly Sump[], catalogue: Catalogue, baseIn: number): TileJob['underIn'] {
  const byOutlet = new Map(sumps.map((sump) => [sump.outlet, sump]));
  return (outlet, { gx, gy }) => {
    const sump = byOutlet.get(outlet);
    if (sump === undefined || Math.abs(Math.hypot(gx, gy) - sump.riseInPerFt) > 1e-6) return baseIn;
    return flatUnderSump(catalogue, sump.riseInPerFt, sump.levelIn, baseIn) ?? baseIn;
  };
}
