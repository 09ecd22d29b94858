import { type Triangulation, triangulate } from '../../src/core/geometry/triangulation.ts';
import type { Point } from '../../src/core/roof.ts';
import { LevelHeap, type Neighbours, neighboursOf, type Offer } from '../../src/core/surface/flood.ts';
import type { SurfaceMesh } from '../../src/core/surface/mesh.ts';
import type { Patch } from '../../src/core/surface/patch.ts';

const noPatch: Patch = { ring: [], plane: { atOriginIn: 0, gx: 0, gy: 0 }, outlet: '' };

/** A number between 0 and 1 that only depends on its place. */
const noise = (i: number, j: number): number => {
  const h = Math.imul(i * 374761393 + j * 668265263, 1274126177);
  return ((h ^ (h >>> 15)) >>> 0) / 4294967296;
};

/** Hollows a few feet wide, rough by a quarter inch, on a roof that falls to its south-west corner. */
export function roughHeights(side: number): Float64Array {
  const z = new Float64Array(side * side);
  for (let j = 0; j < side; j++) {
    for (let i = 0; i < side; i++)
      z[j * side + i] = (i + j) / 200 + 2 * Math.sin(i / 9) * Math.cos(j / 7) + noise(i, j) / 4;
  }
  return z;
}

/** A surface of side x side vertices in rows, each square of it cut in two triangles. */
export function gridMesh(side: number, z: Float64Array): SurfaceMesh {
  const cells = (side - 1) * (side - 1);
  const corners = new Int32Array(6 * cells);
  const across = new Int32Array(6 * cells);
  const points: Point[] = Array.from(z, (_, v): Point => [v % side, Math.floor(v / side)]);
  for (let c = 0; c < cells; c++) {
    const [i, j] = [c % (side - 1), Math.floor(c / (side - 1))];
    const a = j * side + i;
    corners.set([a, a + 1, a + side + 1, a, a + side + 1, a + side], 6 * c);
    const below = j > 0 ? 2 * (c - (side - 1)) + 1 : -1;
    const right = i < side - 2 ? 2 * (c + 1) + 1 : -1;
    const above = j < side - 2 ? 2 * (c + side - 1) : -1;
    const left = i > 0 ? 2 * (c - 1) : -1;
    across.set([below, right, 2 * c + 1, 2 * c, above, left], 6 * c);
  }
  return { points, z, corners, across, patch: new Array<Patch>(2 * cells).fill(noPatch) };
}

export const cornerOffer: readonly Offer[] = [{ vertex: 0, levelIn: Number.NEGATIVE_INFINITY, outlet: 'D1' }];

/** Plain priority flood over square cells and their eight neighbours, with the same heap: the measure. */
export function gridFlood(side: number, z: Float64Array): Float64Array {
  const level = new Float64Array(z.length).fill(Number.POSITIVE_INFINITY);
  const done = new Uint8Array(z.length);
  const heap = new LevelHeap(z.length);
  level[0] = z[0];
  heap.push(z[0], 0);
  while (heap.size > 0) {
    const at = heap.pop();
    if (done[at]) continue;
    done[at] = 1;
    const x = at % side;
    const y = (at - x) / side;
    const here = level[at];
    for (let dy = y > 0 ? -1 : 0; dy <= (y < side - 1 ? 1 : 0); dy++) {
      for (let dx = x > 0 ? -1 : 0; dx <= (x < side - 1 ? 1 : 0); dx++) {
        const next = at + dy * side + dx;
        if (done[next]) continue;
        const raised = Math.max(z[next], here);
        if (raised >= level[next]) continue;
        level[next] = raised;
        heap.push(raised, next);
      }
    }
  }
  return level;
}

export const adjacency = (mesh: SurfaceMesh): Neighbours => neighboursOf(mesh);

/** The same number of points, off the square so that no four lie on a circle. */
export function triangulated(side: number): Triangulation {
  const points = Array.from({ length: side * side }, (_, v): Point => {
    const [i, j] = [v % side, Math.floor(v / side)];
    const rim = i === 0 || j === 0 || i === side - 1 || j === side - 1;
    return rim ? [i, j] : [i + 0.3 * noise(i, j), j + 0.3 * noise(j, i)];
  });
  const rim = points.filter(([x, y]) => x === 0 || y === 0 || x === side - 1 || y === side - 1);
  const angle = ([x, y]: Point): number => Math.atan2(y - (side - 1) / 2, x - (side - 1) / 2);
  return triangulate([[...rim].sort((p, q) => angle(p) - angle(q))], points);
}
