import { cut, isSliver } from '../geometry/convex.ts';
import { heightIn, planeOfTriangle } from '../geometry/plane.ts';
import type { Point, Ring } from '../roof.ts';
import type { Flood } from './flood.ts';
import type { SurfaceMesh } from './mesh.ts';

/** Water shallower than this is rounding, not a pond. */
export const DRY_IN = 0.001;

/** Standing water: everything that shares one level and hangs together. */
export interface Pond {
  /** Triangles of the surface that it covers, wholly or in part. */
  triangles: readonly number[];
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

function triangleArea({ points, corners }: SurfaceMesh, t: number): number {
  const [a, b, c] = [points[corners[3 * t]], points[corners[3 * t + 1]], points[corners[3 * t + 2]]];
  return ((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])) / 2;
}

/**
 * Share of a triangle under water, and its mean depth over the whole triangle.
 * @param d0 depths at the corners, greatest first; below zero where the corner is dry; d0 > 0
 * Exact: the wet part is the triangle, its deep corner, or the triangle less its dry corner.
 */
function wetShare(d0: number, d1: number, d2: number): { share: number; meanIn: number } {
  if (d2 >= 0) return { share: 1, meanIn: (d0 + d1 + d2) / 3 };
  if (d1 <= 0) {
    const share = (d0 / (d0 - d1)) * (d0 / (d0 - d2));
    return { share, meanIn: (share * d0) / 3 };
  }
  const dry = (d2 / (d2 - d0)) * (d2 / (d2 - d1));
  return { share: 1 - dry, meanIn: (d0 + d1 + d2) / 3 - (dry * d2) / 3 };
}

/** Level of the pond that a triangle can hold: that of its lowest corner. Infinite where no way out is reached. */
function lowestCorner({ corners, z }: SurfaceMesh, t: number): number {
  const [a, b, c] = [corners[3 * t], corners[3 * t + 1], corners[3 * t + 2]];
  const ab = z[b] < z[a] ? b : a;
  return z[c] < z[ab] ? c : ab;
}

/** Wet triangles joined where water stands over their common edge: the first triangle of each one's pond, -1 = dry. */
function joinedWater(mesh: SurfaceMesh, level: Float64Array): Int32Array {
  const { corners, across, z } = mesh;
  const parent = new Int32Array(level.length).fill(-1);
  for (let t = 0; t < level.length; t++) if (level[t] > Number.NEGATIVE_INFINITY) parent[t] = t;
  const root = (i: number): number => {
    let r = i;
    while (parent[r] !== r) r = parent[r] = parent[parent[r]];
    return r;
  };
  for (let slot = 0; slot < corners.length; slot++) {
    const t = Math.floor(slot / 3);
    const u = across[slot];
    if (u < t || parent[t] < 0 || parent[u] < 0 || Math.abs(level[t] - level[u]) > DRY_IN) continue;
    const end = slot % 3 === 2 ? slot - 2 : slot + 1;
    if (Math.min(z[corners[slot]], z[corners[end]]) < level[t]) parent[root(t)] = root(u);
  }
  for (let t = 0; t < level.length; t++) if (parent[t] >= 0) parent[t] = root(t);
  return parent;
}

/**
 * The ponds of a flooded surface: connected sets where the water level lies above the surface.
 * A triangle holds at most one, at the level of its lowest corner.
 */
export function pondsOf(mesh: SurfaceMesh, water: Flood): Ponding {
  const { corners, points, z } = mesh;
  const count = corners.length / 3;
  const level = new Float64Array(count).fill(Number.NEGATIVE_INFINITY);
  let trappedSqFt = 0;
  for (let t = 0; t < count; t++) {
    const lowest = lowestCorner(mesh, t);
    const own = water.levelIn[lowest];
    if (own === Number.POSITIVE_INFINITY) trappedSqFt += triangleArea(mesh, t);
    else if (own - z[lowest] > DRY_IN) level[t] = own;
  }
  const pondOf = joinedWater(mesh, level);
  const ponds = new Map<number, Pond & { triangles: number[] }>();
  const depths = new Float64Array(3);
  for (let t = 0; t < count; t++) {
    if (pondOf[t] < 0) continue;
    for (let k = 0; k < 3; k++) depths[k] = level[t] - z[corners[3 * t + k]];
    depths.sort();
    const { share, meanIn } = wetShare(depths[2], depths[1], depths[0]);
    const areaSqFt = triangleArea(mesh, t);
    let pond = ponds.get(pondOf[t]);
    if (pond === undefined) {
      pond = {
        triangles: [],
        levelIn: level[t],
        areaSqFt: 0,
        greatestDepthIn: 0,
        deepestAt: points[corners[3 * t]],
        volumeSqFtIn: 0,
      };
      ponds.set(pondOf[t], pond);
    }
    pond.triangles.push(t);
    pond.areaSqFt += areaSqFt * share;
    pond.volumeSqFtIn += areaSqFt * meanIn;
    if (depths[2] > pond.greatestDepthIn) {
      pond.greatestDepthIn = depths[2];
      pond.deepestAt = points[lowestCorner(mesh, t)];
    }
  }
  return { ponds: [...ponds.values()].sort((a, b) => b.volumeSqFtIn - a.volumeSqFtIn), trappedSqFt };
}

/** The wet parts of a pond's triangles, for whoever draws its outline. */
export function pondRings({ corners, points, z }: SurfaceMesh, { triangles, levelIn }: Pond): Ring[] {
  return triangles.flatMap((t) => {
    const [a, b, c] = [corners[3 * t], corners[3 * t + 1], corners[3 * t + 2]];
    const corner = [points[a], points[b], points[c]];
    const plane = planeOfTriangle(corner[0], corner[1], corner[2], z[a], z[b], z[c]);
    const steep = Math.max(Math.hypot(plane.gx, plane.gy), 1e-12);
    const ring = cut(corner, (p) => (levelIn - heightIn(plane, p)) / steep);
    return isSliver(ring) ? [] : [ring];
  });
}
