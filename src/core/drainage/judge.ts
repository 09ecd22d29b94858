import { slopeInPerFt } from '../geometry/plane.ts';
import { signedAreaSqFt } from '../geometry/vector.ts';
import type { Point, Ring } from '../roof.ts';
import { type Crease, creasesOf, leastFaceSlopeInPerFt } from '../surface/creases.ts';
import { DRY_IN, type Flood, flood, type Offer } from '../surface/flood.ts';
import type { SurfaceMesh } from '../surface/mesh.ts';
import { type Pond, pondsOf } from '../surface/ponds.ts';
import { type AreaPiece, areaByOutlet, drainagePieces, NOWHERE } from './areas.ts';

/** Flatter than this is level: water has no way to choose. */
const LEVEL_IN_PER_FT = 1e-4;

export interface Flats {
  /** Level planes. */
  rings: readonly Ring[];
  areaSqFt: number;
  /** Level valleys and level wall lines that water runs against. */
  lines: readonly (readonly [Point, Point])[];
  lengthFt: number;
}

/** What water does on one surface: the same judgement for the old roof, every layout and the roof as built. */
export interface Judgement {
  mesh: SurfaceMesh;
  water: Flood;
  ponds: readonly Pond[];
  /** Area from which no way out is reached at all. */
  trappedSqFt: number;
  /** Level planes and trapped ground together, each place once. */
  undrainedSqFt: number;
  flats: Flats;
  creases: readonly Crease[];
  leastFaceSlopeInPerFt: number | null;
  /** Least slope of valleys and wall lines; null where there are none. */
  leastValleySlopeInPerFt: number | null;
  areas: readonly AreaPiece[];
  areaSqFt: ReadonlyMap<string, number>;
  /** No pond, no flat, and a falling way to an outlet from everywhere. */
  drained: boolean;
}

function flatsOf(mesh: SurfaceMesh, creases: readonly Crease[]): Flats {
  const rings: Ring[] = [];
  for (let t = 0; t < mesh.corners.length / 3; t++) {
    if (isLevel(mesh, t)) rings.push(cornersOf(mesh, t));
  }
  const level = creases.filter(({ kind, slopeInPerFt: s }) => kind !== 'ridge' && s < LEVEL_IN_PER_FT);
  return {
    rings,
    areaSqFt: rings.reduce((sum, ring) => sum + signedAreaSqFt(ring), 0),
    lines: level.map(({ from, to }) => [from, to] as const),
    lengthFt: level.reduce((sum, { lengthFt }) => sum + lengthFt, 0),
  };
}

const isLevel = ({ patch }: SurfaceMesh, t: number): boolean => slopeInPerFt(patch[t].plane) < LEVEL_IN_PER_FT;

const cornersOf = ({ points, corners }: SurfaceMesh, t: number): Ring =>
  [0, 1, 2].map((k) => points[corners[3 * t + k]]);

/** Level planes from which a way out is reached; ground from which none is counts as trapped. */
function levelReachedSqFt(mesh: SurfaceMesh, { levelIn }: Flood): number {
  let sum = 0;
  for (let t = 0; t < mesh.corners.length / 3; t++)
    if (isLevel(mesh, t) && Number.isFinite(levelIn[mesh.corners[3 * t]])) sum += signedAreaSqFt(cornersOf(mesh, t));
  return sum;
}

/**
 * Floods a surface from its ways out and says where water stays, how it runs and which outlet takes it.
 * @param offers vertices by which water can leave, in the order of the outlets in the file
 * @param openAt outlet over which a boundary edge drains, or null where it is closed
 */
export function judge(mesh: SurfaceMesh, offers: readonly Offer[], openAt: (slot: number) => string | null): Judgement {
  const water = flood(mesh, offers);
  const { ponds, trappedSqFt } = pondsOf(mesh, water);
  const creases = creasesOf(mesh, (slot) => openAt(slot) !== null);
  const flats = flatsOf(mesh, creases);
  const slopes = creases.filter(({ kind }) => kind !== 'ridge').map((crease) => crease.slopeInPerFt);
  const areas = drainagePieces({ mesh, water, offers, openAt });
  const areaSqFt = areaByOutlet(areas);
  const wet = ponds.some(({ greatestDepthIn }) => greatestDepthIn > DRY_IN);
  const lost = areaSqFt.get(NOWHERE) ?? 0;
  return {
    mesh,
    water,
    ponds,
    trappedSqFt,
    undrainedSqFt: trappedSqFt + levelReachedSqFt(mesh, water),
    flats,
    creases,
    leastFaceSlopeInPerFt: leastFaceSlopeInPerFt(mesh),
    leastValleySlopeInPerFt: slopes.length === 0 ? null : Math.min(...slopes),
    areas,
    areaSqFt,
    drained: !wet && trappedSqFt < 1e-3 && lost < 1e-3 && flats.areaSqFt < 1e-3 && flats.lengthFt < 1e-2,
  };
}
