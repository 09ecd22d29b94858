import { unite } from '../geometry/boolean.ts';
import { cut, isSliver } from '../geometry/convex.ts';
import { heightIn, planeOfTriangle } from '../geometry/plane.ts';
import { centroid, signedAreaSqFt } from '../geometry/vector.ts';
import type { Point, Ring } from '../roof.ts';
import type { Flood } from './flood.ts';
import type { SurfaceMesh } from './mesh.ts';

/** Water shallower than this is rounding, not a pond. */
export const DRY_IN = 0.001;

/** Standing water: everything that shares one level and hangs together. */
export interface Pond {
  /** Outlines with their holes; one pond may touch itself in a point. */
  regions: readonly { outer: Ring; holes: readonly Ring[] }[];
  levelIn: number;
  areaSqFt: number;
  greatestDepthIn: number;
  deepestAt: Point;
  /** Depth times area. */
  volumeSqFtIn: number;
}

export interface Ponding {
  ponds: readonly Pond[];
  /** Area from which no way out exists at all. */
  trappedSqFt: number;
}

interface Wet {
  level: number;
  rings: Ring[];
  areaSqFt: number;
  volumeSqFtIn: number;
  depth: number;
  at: Point;
}

/** Exact depth integral over a convex ring of a plane of depths. */
function depthIntegral(ring: Ring, depthAt: (p: Point) => number): number {
  let sum = 0;
  for (let i = 1; i + 1 < ring.length; i++) {
    const triangle = [ring[0], ring[i], ring[i + 1]];
    sum += signedAreaSqFt(triangle) * depthAt(centroid(triangle));
  }
  return sum;
}

/**
 * The ponds of a flooded surface: connected sets where the water level lies above the surface.
 * A triangle holds at most one, at the level of its lowest corner; it is clipped there.
 */
export function pondsOf(mesh: SurfaceMesh, water: Flood): Ponding {
  const { corners, points, z } = mesh;
  const count = corners.length / 3;
  const parent = new Int32Array(count).map((_, i) => i);
  const root = (i: number): number => {
    let r = i;
    while (parent[r] !== r) r = parent[r] = parent[parent[r]];
    return r;
  };
  const wet = new Map<number, Wet>();
  let trappedSqFt = 0;
  for (let t = 0; t < count; t++) {
    const ids = [corners[3 * t], corners[3 * t + 1], corners[3 * t + 2]];
    const lowest = ids.reduce((a, b) => (z[b] < z[a] ? b : a));
    const level = water.levelIn[lowest];
    if (!Number.isFinite(level)) {
      trappedSqFt += signedAreaSqFt(ids.map((id) => points[id]));
      continue;
    }
    if (level - z[lowest] <= DRY_IN) continue;
    const corner = ids.map((id) => points[id]);
    const plane = planeOfTriangle(corner[0], corner[1], corner[2], z[ids[0]], z[ids[1]], z[ids[2]]);
    const steep = Math.max(Math.hypot(plane.gx, plane.gy), 1e-12);
    const ring = cut(corner, (p) => (level - heightIn(plane, p)) / steep);
    if (isSliver(ring)) continue;
    const volumeSqFtIn = depthIntegral(ring, (p) => level - heightIn(plane, p));
    const areaSqFt = signedAreaSqFt(ring);
    wet.set(t, { level, rings: [ring], areaSqFt, volumeSqFtIn, depth: level - z[lowest], at: points[lowest] });
  }
  for (const [t, own] of wet) {
    for (let k = 0; k < 3; k++) {
      const other = mesh.across[3 * t + k];
      const beside = wet.get(other);
      if (beside === undefined || Math.abs(beside.level - own.level) > DRY_IN) continue;
      // Joined only through water: one end of the shared edge lies below the level.
      const ends = [corners[3 * t + k], corners[3 * t + ((k + 1) % 3)]];
      if (ends.some((id) => z[id] < own.level)) parent[root(t)] = root(other);
    }
  }
  const groups = new Map<number, Wet>();
  for (const [t, own] of wet) {
    const r = root(t);
    const group = groups.get(r);
    if (group === undefined) {
      groups.set(r, { ...own, rings: [...own.rings] });
      continue;
    }
    group.rings.push(...own.rings);
    group.areaSqFt += own.areaSqFt;
    group.volumeSqFtIn += own.volumeSqFtIn;
    if (own.depth > group.depth) Object.assign(group, { depth: own.depth, at: own.at });
  }
  const ponds = [...groups.values()].map(
    (group): Pond => ({
      regions: unite(group.rings),
      levelIn: group.level,
      areaSqFt: group.areaSqFt,
      greatestDepthIn: group.depth,
      deepestAt: group.at,
      volumeSqFtIn: group.volumeSqFtIn,
    }),
  );
  ponds.sort((a, b) => b.volumeSqFtIn - a.volumeSqFtIn);
  return { ponds, trappedSqFt };
}
