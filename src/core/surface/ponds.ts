import { cut, isSliver } from '../geometry/convex.ts';
import { heightIn, planeOfTriangle } from '../geometry/plane.ts';
import type { Point, Ring } from '../roof.ts';
import type { Flood } from './flood.ts';
import type { SurfaceMesh } from './mesh.ts';

/** Standing water: everything that shares one level and hangs together. */
export interface Pond {
  /** Triangles of the surface that it covers, wholly or in part. */
  triangles: Int32Array;
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

/** The vertex at a triangle's lowest corner. */
function lowestCorner({ corners, z }: SurfaceMesh, t: number): number {
  const [a, b, c] = [corners[3 * t], corners[3 * t + 1], corners[3 * t + 2]];
  const ab = z[b] < z[a] ? b : a;
  return z[c] < z[ab] ? c : ab;
}

/** Sums over one pond while its triangles are gone through. */
class Sums {
  count = 0;
  areaSqFt = 0;
  volumeSqFtIn = 0;
  greatestDepthIn = 0;
  deepest = -1;
  filled = 0;
  triangles = new Int32Array(0);

  /** A triangle with depths at its corners, below zero where dry, and the vertex of its lowest corner. */
  add(areaSqFt: number, a: number, b: number, c: number, lowest: number): void {
    const deep = Math.max(a, b, c);
    const shallow = Math.min(a, b, c);
    const { share, meanIn } = wetShare(deep, a + b + c - deep - shallow, shallow);
    this.areaSqFt += areaSqFt * share;
    this.volumeSqFtIn += areaSqFt * meanIn;
    if (deep <= this.greatestDepthIn) return;
    this.greatestDepthIn = deep;
    this.deepest = lowest;
  }
}

/**
 * The ponds of a flooded surface: connected sets where the water level lies above the surface.
 * A triangle holds at most one, that of its lowest corner.
 */
export function pondsOf(mesh: SurfaceMesh, { levelIn, pond }: Flood): Ponding {
  const { corners, points, z } = mesh;
  const count = corners.length / 3;
  const pondOf = new Int32Array(count).fill(-1);
  const byPond = new Map<number, Sums>();
  let trappedSqFt = 0;
  let [last, sums] = [-1, new Sums()];
  for (let t = 0; t < count; t++) {
    const lowest = lowestCorner(mesh, t);
    const level = levelIn[lowest];
    if (level === Number.POSITIVE_INFINITY) trappedSqFt += triangleArea(mesh, t);
    const id = pond[lowest];
    if (id < 0) continue;
    // Neighbours in the list mostly lie in the same pond.
    if (id !== last) {
      last = id;
      sums = byPond.get(id) ?? new Sums();
      byPond.set(id, sums);
    }
    pondOf[t] = id;
    sums.count++;
    const [a, b, c] = [corners[3 * t], corners[3 * t + 1], corners[3 * t + 2]];
    sums.add(triangleArea(mesh, t), level - z[a], level - z[b], level - z[c], lowest);
  }
  for (const one of byPond.values()) one.triangles = new Int32Array(one.count);
  for (let t = 0; t < count; t++) {
    if (pondOf[t] < 0) continue;
    if (pondOf[t] !== last) {
      last = pondOf[t];
      sums = byPond.get(last) ?? sums;
    }
    sums.triangles[sums.filled++] = t;
  }
  const ponds = [...byPond.values()].map(
    ({ triangles, areaSqFt, volumeSqFtIn, greatestDepthIn, deepest }): Pond => ({
      triangles,
      levelIn: levelIn[deepest],
      areaSqFt,
      greatestDepthIn,
      deepestAt: points[deepest],
      volumeSqFtIn,
    }),
  );
  return { ponds: ponds.sort((a, b) => b.volumeSqFtIn - a.volumeSqFtIn), trappedSqFt };
}

/** The wet parts of a pond's triangles, for whoever draws its outline. */
export function pondRings({ corners, points, z }: SurfaceMesh, { triangles, levelIn }: Pond): Ring[] {
  return Array.from(triangles).flatMap((t) => {
    const [a, b, c] = [corners[3 * t], corners[3 * t + 1], corners[3 * t + 2]];
    const corner = [points[a], points[b], points[c]];
    const plane = planeOfTriangle(corner[0], corner[1], corner[2], z[a], z[b], z[c]);
    const steep = Math.max(Math.hypot(plane.gx, plane.gy), 1e-12);
    const ring = cut(corner, (p) => (levelIn - heightIn(plane, p)) / steep);
    return isSliver(ring) ? [] : [ring];
  });
}
