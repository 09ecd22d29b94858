import { type AreaPiece, drainagePieces } from '../drainage/areas.ts';
import { distanceFt } from '../geometry/vector.ts';
import type { Outlet, Point } from '../roof.ts';
import { waysOut } from '../site/offers.ts';
import { outletPoint, type Site } from '../site/site.ts';
import { type Flood, flood, neighboursOf, type Offer } from '../surface/flood.ts';
import type { SurfaceMesh } from '../surface/mesh.ts';
import type { OpenWays } from './spill-places.ts';

/** A surface with some of its outlets plugged. */
export interface ShutSurface {
  mesh: SurfaceMesh;
  water: Flood;
  /** Ways out that are still open. */
  offers: readonly Offer[];
  openAt: (slot: number) => string | null;
}

/** Floods a surface again with the outlets plugged that `isShut` names; edges cannot be plugged. */
export function shutSurface(
  site: Site,
  mesh: SurfaceMesh,
  ways: OpenWays,
  isShut: (outlet: Outlet) => boolean,
): ShutSurface {
  const { offers, openAt } = waysOut(site, mesh, { ...ways, outlets: ways.outlets.filter((each) => !isShut(each)) });
  return { mesh, water: flood(mesh, offers), offers, openAt };
}

/** Which area runs to which of the ways out that are still open. */
export const shutAreas = ({ mesh, water, offers, openAt }: ShutSurface): AreaPiece[] =>
  drainagePieces({ mesh, water, offers, openAt });

/** Index of the mesh vertex at a place; null where there is none. */
export function vertexAt(mesh: SurfaceMesh, at: Point): number | null {
  const found = mesh.points.findIndex((p) => distanceFt(p, at) < 1e-3);
  return found < 0 ? null : found;
}

/** Height [in] at which an outlet takes water: its floor, or the surface that lies over it. */
export function inletLevelIn(site: Site, mesh: SurfaceMesh, outlet: Outlet): number | null {
  const at = outletPoint(site.roof, outlet);
  const vertex = vertexAt(mesh, at);
  if (vertex === null) return null;
  const floorIn = outlet.inletIn === null ? Number.NEGATIVE_INFINITY : site.measured.at(at) + outlet.inletIn;
  return Math.max(mesh.z[vertex], floorIn);
}

/** One body of water that stands when outlets are plugged. */
export interface Standing {
  /** Level to which it rises before it leaves; null = nothing is known that lets it out. */
  levelIn: number | null;
  lowPointIn: number;
  /** Id of the way by which it then leaves; null with the level. */
  leavesBy: string | null;
  vertices: ReadonlySet<number>;
}

/** The water that stands over a vertex once it cannot leave there. */
export function standingAt({ mesh, water, offers }: ShutSurface, vertex: number): Standing {
  const level = water.levelIn[vertex];
  const { starts, list } = neighboursOf(mesh);
  const vertices = new Set([vertex]);
  const queue = [vertex];
  let lowPointIn = mesh.z[vertex];
  for (let v = queue.pop(); v !== undefined; v = queue.pop()) {
    lowPointIn = Math.min(lowPointIn, mesh.z[v]);
    for (let k = starts[v]; k < starts[v + 1]; k++) {
      const u = list[k];
      if (vertices.has(u) || mesh.z[u] > level) continue;
      vertices.add(u);
      queue.push(u);
    }
  }
  const offer = water.offer[vertex];
  if (offer < 0) return { levelIn: null, lowPointIn, leavesBy: null, vertices };
  return { levelIn: level, lowPointIn, leavesBy: offers[offer].outlet, vertices };
}
