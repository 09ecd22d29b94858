import { areaByOutlet } from '../drainage/areas.ts';
import { depthForLoadIn } from '../drainage/rain-load.ts';
import type { Outlet } from '../roof.ts';
import type { RuleSet } from '../rule-set.ts';
import { outletPoint, type Site } from '../site/site.ts';
import type { SurfaceMesh } from '../surface/mesh.ts';
import { addedAreas } from './added-areas.ts';
import { liveLoadOf } from './live-load.ts';
import type { OpenWays } from './spill-places.ts';
import { inletLevelIn, type ShutSurface, shutAreas, shutSurface, vertexAt } from './when-shut.ts';

/** Levels nearer than this are one level. */
const SAME_LEVEL_IN = 1e-6;

/** What the surface does with its main outlets shut. */
export interface MainsShut {
  overflows: ReadonlyMap<string, OverflowSetting>;
  /** Depth over a main outlet before an overflow takes water, not more than the roof bears; null = no overflow takes it. */
  headOver: (outlet: Outlet) => number | null;
}

export interface OverflowSetting {
  areaSqFt: number;
  addedSqFt: number;
  /** null = the height of its inlet is not known. */
  inletAboveLowIn: number | null;
  inletAboveSurfaceIn: number | null;
}

/** Floods a surface with its main outlets shut: what runs to each overflow, and the head over each main outlet by then. */
export function mainsShut(site: Site, mesh: SurfaceMesh, ways: OpenWays, ruleSet: RuleSet): MainsShut {
  const relief = ways.outlets.filter(({ role, working }) => role === 'overflow' && working);
  if (relief.length === 0) return { overflows: new Map(), headOver: () => null };
  const shut = shutSurface(site, mesh, ways, ({ role }) => role === 'primary');
  const pieces = shutAreas(shut);
  const added = addedAreas(site, pieces, ruleSet);
  const areas = areaByOutlet(pieces);
  const bearsIn = depthForLoadIn(liveLoadOf(site.roof.deck.liveLoadPsf).psf);
  const byId = new Set(relief.map(({ id }) => id));
  return {
    overflows: new Map(
      relief.map((outlet) => [
        outlet.id,
        {
          areaSqFt: areas.get(outlet.id) ?? 0,
          addedSqFt: added.get(outlet.id) ?? 0,
          ...overflowHeights(site, mesh, shut, outlet),
        },
      ]),
    ),
    headOver: (outlet) => {
      const vertex = vertexAt(mesh, outletPoint(site.roof, outlet));
      const inletIn = inletLevelIn(site, mesh, outlet);
      if (vertex === null || inletIn === null || shut.water.offer[vertex] < 0) return null;
      if (!byId.has(shut.offers[shut.water.offer[vertex]].outlet)) return null;
      const headIn = shut.water.levelIn[vertex] - inletIn;
      return headIn > SAME_LEVEL_IN ? Math.min(headIn, bearsIn) : null;
    },
  };
}

/** Where an overflow's inlet stands: over the low point of what runs to it, and over the surface at its own spot. */
function overflowHeights(site: Site, mesh: SurfaceMesh, shut: ShutSurface, outlet: Outlet) {
  const at = outletPoint(site.roof, outlet);
  const vertex = vertexAt(mesh, at);
  if (vertex === null || outlet.inletIn === null) return { inletAboveLowIn: null, inletAboveSurfaceIn: null };
  const floorIn = site.measured.at(at) + outlet.inletIn;
  const own = mesh.z.filter(
    (_, v) => shut.water.offer[v] >= 0 && shut.offers[shut.water.offer[v]].outlet === outlet.id,
  );
  const lowPointIn = own.length === 0 ? mesh.z[vertex] : Math.min(...own);
  return { inletAboveLowIn: floorIn - lowPointIn, inletAboveSurfaceIn: floorIn - mesh.z[vertex] };
}
