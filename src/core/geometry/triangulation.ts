import Constrainautor from '@kninnug/constrainautor';
import Delaunator from 'delaunator';
import type { Point, Ring } from '../roof.ts';
import { isInside, orient } from './vector.ts';

/**
 * Triangles over a region with holes. Corners of triangle t are `corners[3t..3t+2]`, counter-clockwise;
 * `across[3t + k]` is the triangle on the other side of the edge from corner k to corner k + 1, or -1 at the boundary.
 */
export interface Triangulation {
  points: readonly Point[];
  corners: Int32Array;
  across: Int32Array;
}

const key = (p: Point): string => `${Math.round(p[0] * 1e6)},${Math.round(p[1] * 1e6)}`;

/** Points made unique on the grid, with the index of any point. */
export class PointIndex {
  readonly points: Point[] = [];
  readonly #ids = new Map<string, number>();

  add(p: Point): number {
    const k = key(p);
    const known = this.#ids.get(k);
    if (known !== undefined) return known;
    this.#ids.set(k, this.points.length);
    this.points.push(p);
    return this.points.length - 1;
  }

  find(p: Point): number | undefined {
    return this.#ids.get(key(p));
  }
}

/**
 * Constrained Delaunay triangulation of a region.
 * @param rings outer ring and holes, any direction, corners on the grid
 * @param extra further points inside or on the boundary; those on a ring's edge must be corners of that ring
 * @throws Error when the rings cross each other (the input has been checked before)
 */
export function triangulate(rings: readonly Ring[], extra: readonly Point[] = []): Triangulation {
  const index = new PointIndex();
  const loops = rings.map((ring) => ring.map((p) => index.add(p)));
  for (const p of extra) index.add(p);
  const points = index.points;
  const delaunay = Delaunator.from(points as [number, number][]);
  const constrain = new Constrainautor(delaunay);
  for (const loop of loops) {
    for (let i = 0; i < loop.length; i++) {
      const [a, b] = [loop[i], loop[(i + 1) % loop.length]];
      if (a !== b) constrain.constrainOne(a, b);
    }
  }
  return keepInside(points, delaunay, rings, loops);
}

/**
 * Which triangles lie inside the rings. Between the rings' edges all are alike, so one of them is asked for all that
 * hang together; flat triangles belong nowhere.
 */
function insideOf(
  points: readonly Point[],
  { triangles, halfedges }: Delaunay,
  rings: readonly Ring[],
  loops: readonly (readonly number[])[],
): Uint8Array {
  const closed = new Set<number>();
  const side = (a: number, b: number): number => Math.min(a, b) * points.length + Math.max(a, b);
  for (const loop of loops)
    for (let i = 0; i < loop.length; i++) closed.add(side(loop[i], loop[(i + 1) % loop.length]));
  const count = triangles.length / 3;
  const corner = (slot: number): Point => points[triangles[slot]];
  const flat = (t: number): boolean => orient(corner(3 * t), corner(3 * t + 1), corner(3 * t + 2)) === 0;
  const inside = new Uint8Array(count);
  const seen = new Uint8Array(count);
  for (let first = 0; first < count; first++) {
    if (seen[first] || flat(first)) continue;
    seen[first] = 1;
    const [a, b, c] = [corner(3 * first), corner(3 * first + 1), corner(3 * first + 2)];
    const within = isInside([(a[0] + b[0] + c[0]) / 3, (a[1] + b[1] + c[1]) / 3], rings) ? 1 : 0;
    const open = [first];
    for (let t = open.pop(); t !== undefined; t = open.pop()) {
      inside[t] = within;
      for (let slot = 3 * t; slot < 3 * t + 3; slot++) {
        const twin = halfedges[slot];
        if (twin < 0 || closed.has(side(triangles[slot], triangles[nextSlot(slot)]))) continue;
        const next = Math.floor(twin / 3);
        if (seen[next] || flat(next)) continue;
        seen[next] = 1;
        open.push(next);
      }
    }
  }
  return inside;
}

interface Delaunay {
  triangles: ArrayLike<number>;
  halfedges: ArrayLike<number>;
}

function keepInside(
  points: readonly Point[],
  delaunay: Delaunay,
  rings: readonly Ring[],
  loops: readonly (readonly number[])[],
): Triangulation {
  const { triangles, halfedges } = delaunay;
  const count = triangles.length / 3;
  const inside = insideOf(points, delaunay, rings, loops);
  const kept = new Int32Array(count).fill(-1);
  let n = 0;
  for (let t = 0; t < count; t++) if (inside[t]) kept[t] = n++;
  const corners = new Int32Array(3 * n);
  const across = new Int32Array(3 * n).fill(-1);
  for (let t = 0; t < count; t++) {
    if (kept[t] < 0) continue;
    const ids = [0, 1, 2].map((k) => triangles[3 * t + k]);
    const twins = [0, 1, 2].map((k) => halfedges[3 * t + k]);
    const turned = orient(points[ids[0]], points[ids[1]], points[ids[2]]) < 0;
    for (let k = 0; k < 3; k++) {
      // Turned triangles run 0, 2, 1: edge k then goes from corner order[k] to order[k + 1].
      const corner = turned ? (3 - k) % 3 : k;
      const edge = turned ? [2, 1, 0][k] : k;
      corners[3 * kept[t] + k] = ids[corner];
      across[3 * kept[t] + k] = twins[edge] < 0 ? -1 : kept[Math.floor(twins[edge] / 3)];
    }
  }
  return { points, corners, across };
}

/** The edge slot that starts at a slot's corner ends at this slot's corner. */
export const nextSlot = (slot: number): number => (slot % 3 === 2 ? slot - 2 : slot + 1);

/** The slot of the same edge in the neighbouring triangle, or -1 at the boundary. */
export function twinSlot(mesh: Triangulation, slot: number): number {
  const other = mesh.across[slot];
  if (other < 0) return -1;
  const end = mesh.corners[nextSlot(slot)];
  for (let k = 0; k < 3; k++) {
    const candidate = 3 * other + k;
    if (mesh.corners[candidate] === end && mesh.corners[nextSlot(candidate)] === mesh.corners[slot]) return candidate;
  }
  return -1;
}
