import { addPlanes, type Plane, planeOfTriangle, slopeInPerFt } from '../geometry/plane.ts';
import { nextSlot, twinSlot } from '../geometry/triangulation.ts';
import { distanceFt, signedAreaSqFt } from '../geometry/vector.ts';
import type { Point, Ring } from '../roof.ts';
import { runsAgainst } from './creases.ts';
import { neighboursOf, type Offer } from './flood.ts';
import { leastPathHeights, type WayNet } from './least-path.ts';
import type { SurfaceMesh } from './mesh.ts';
import type { Patch } from './patch.ts';

/** What lifts a surface so that every way on it falls. */
export interface SurfaceFill {
  /** The surface with the fill on it. */
  surface: SurfaceMesh;
  /** Thickness of the fill over every triangle of the surface; 0 where nothing is raised. */
  thickness: readonly Patch[];
  boardFt: number;
  greatestIn: number;
  greatestAt: Point;
  areaSqFt: number;
  /** Triangles that are raised. */
  rings: readonly Ring[];
}

/** Least slope of ways, valleys and wall lines, and of planes. */
export interface FillRule {
  wayInPerFt: number;
  faceInPerFt: number;
}

interface Ways {
  offers: readonly Offer[];
  /** Boundary edges over which water leaves. */
  isOpen: (slot: number) => boolean;
}

/** Raising a crease can flatten the next one: so many rounds, then the surface is judged as it stands. */
const MOST_ROUNDS = 40;
const RAISED_IN = 1e-7;
const SAME_SLOPE = 1e-9;
/** Triangles thinner than this carry no area and no slope of their own. */
const THIN = 1e-7;
/** Steeper than this a fill is a step, as where two corners nearly coincide. */
const STEP_IN_PER_FT = 3;
/** Creases shorter than this are joints of the drawing. */
const SHORT_FT = 0.01;

/** The edges of a surface as ways. */
export function meshNet(mesh: SurfaceMesh): WayNet {
  const { starts, list } = neighboursOf(mesh);
  const lengthFt = new Float64Array(list.length);
  for (let v = 0; v < mesh.points.length; v++)
    for (let k = starts[v]; k < starts[v + 1]; k++) lengthFt[k] = distanceFt(mesh.points[v], mesh.points[list[k]]);
  return { starts, list, lengthFt };
}

const cornersOf = ({ corners }: SurfaceMesh, t: number): readonly [number, number, number] => [
  corners[3 * t],
  corners[3 * t + 1],
  corners[3 * t + 2],
];

const isThin = (ring: Ring): boolean => {
  const longest = Math.max(...ring.map((p, i) => distanceFt(p, ring[(i + 1) % 3])));
  return 2 * signedAreaSqFt(ring) < Math.max(THIN, 1e-5 * longest);
};

function raisedPlane(mesh: SurfaceMesh, t: number, z: Float64Array): Plane | null {
  const ids = cornersOf(mesh, t);
  const by = ids.map((id) => z[id] - mesh.z[id]);
  if (by.every((rise) => rise < RAISED_IN)) return null;
  const [a, b, c] = ids.map((id) => mesh.points[id]);
  // The plane of a thin triangle would be all rounding: it is lifted as it lies.
  if (isThin([a, b, c])) return { atOriginIn: Math.max(...by), gx: 0, gy: 0 };
  return planeOfTriangle(a, b, c, by[0], by[1], by[2]);
}

/** The same surface with other heights; planes that are not raised stay as they are. */
function withHeights(mesh: SurfaceMesh, z: Float64Array): { surface: SurfaceMesh; raised: (Plane | null)[] } {
  const raised = mesh.patch.map((_, t) => raisedPlane(mesh, t, z));
  const patch = mesh.patch.map(({ plane, outlet }, t): Patch => {
    const by = raised[t];
    const ring = cornersOf(mesh, t).map((id) => mesh.points[id]);
    return { ring, plane: by === null ? plane : addPlanes(plane, by), outlet };
  });
  return { surface: { ...mesh, z, patch }, raised };
}

/** Raises the high ends of planes, valleys and wall lines that are flatter than asked; false where none is. */
function steepened(surface: SurfaceMesh, ways: Ways, { wayInPerFt, faceInPerFt }: FillRule): boolean {
  const { z, points, corners } = surface;
  const lowest = Float64Array.from(z);
  let changed = false;
  const lift = (low: number, high: number, slope: number): void => {
    const wanted = lowest[low] + slope * distanceFt(points[low], points[high]);
    if (z[high] >= wanted - 1e-9) return;
    z[high] = wanted;
    changed = true;
  };
  surface.patch.forEach(({ plane }, t) => {
    if (slopeInPerFt(plane) >= faceInPerFt - SAME_SLOPE || isThin(cornersOf(surface, t).map((id) => points[id])))
      return;
    const ids = [...cornersOf(surface, t)].sort((a, b) => lowest[a] - lowest[b]);
    lift(ids[0], ids[2], faceInPerFt);
  });
  for (let slot = 0; slot < corners.length; slot++) {
    const twin = twinSlot(surface, slot);
    if (twin < 0 ? ways.isOpen(slot) : twin < slot) continue;
    const [a, b] = [corners[slot], corners[nextSlot(slot)]];
    const lengthFt = distanceFt(points[a], points[b]);
    if (lengthFt < SHORT_FT || Math.abs(lowest[a] - lowest[b]) >= (wayInPerFt - SAME_SLOPE) * lengthFt) continue;
    const gathers = runsAgainst(surface, slot) > 1e-6 && (twin < 0 || runsAgainst(surface, twin) > 1e-6);
    if (gathers) lift(...(lowest[a] <= lowest[b] ? ([a, b] as const) : ([b, a] as const)), wayInPerFt);
  }
  return changed;
}

/**
 * Fill by the least-path rule: a surface raised only where needed, so that every way to an outlet falls at least a slope,
 * every valley and wall line too, and every plane at least another.
 * @param ways outlets (never the spills over walls) and the open edges
 * @returns null where some part reaches no outlet, nothing needs to be raised, or what is raised would end in a step
 * Source: as `leastPathHeights`; ways run along the edges of the surface, so the fill is never too little.
 */
export function leastPathFill(mesh: SurfaceMesh, ways: Ways, rule: FillRule): SurfaceFill | null {
  const net = meshNet(mesh);
  const starts = ways.offers.map(({ vertex, levelIn }) => ({ place: vertex, levelIn }));
  let z = leastPathHeights(net, mesh.z, starts, rule.wayInPerFt);
  if (z.some((height) => height === Number.POSITIVE_INFINITY)) return null;
  let filled = withHeights(mesh, z);
  for (let round = 0; round < MOST_ROUNDS && steepened(filled.surface, ways, rule); round++) {
    z = leastPathHeights(net, filled.surface.z, starts, rule.wayInPerFt);
    filled = withHeights(mesh, z);
  }
  // A step beside a corner that is nearly another is no fill that could be laid.
  if (filled.raised.some((by) => by !== null && slopeInPerFt(by) > STEP_IN_PER_FT)) return null;
  return summed(mesh, filled);
}

function summed(
  mesh: SurfaceMesh,
  { surface, raised }: { surface: SurfaceMesh; raised: readonly (Plane | null)[] },
): SurfaceFill | null {
  const fill = { boardFt: 0, greatestIn: 0, greatestAt: mesh.points[0], areaSqFt: 0, rings: [] as Ring[] };
  const thickness = raised.map((by, t): Patch => {
    const ids = cornersOf(mesh, t);
    const ring = ids.map((id) => mesh.points[id]);
    if (by === null) return { ring, plane: { atOriginIn: 0, gx: 0, gy: 0 }, outlet: '' };
    const areaSqFt = Math.max(0, signedAreaSqFt(ring));
    fill.areaSqFt += areaSqFt;
    fill.rings.push(ring);
    for (const id of ids) {
      const by = surface.z[id] - mesh.z[id];
      fill.boardFt += (areaSqFt * by) / 3;
      if (by > fill.greatestIn) Object.assign(fill, { greatestIn: by, greatestAt: mesh.points[id] });
    }
    return { ring, plane: by, outlet: '' };
  });
  return fill.greatestIn < RAISED_IN ? null : { ...fill, surface, thickness };
}
