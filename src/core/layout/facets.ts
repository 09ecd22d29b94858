import { heightIn, type Plane } from '../geometry/plane.ts';
import { nextSlot } from '../geometry/triangulation.ts';
import { centroid, distanceFt, isInside, signedAreaSqFt } from '../geometry/vector.ts';
import type { Point, Ring } from '../roof.ts';
import type { SurfaceMesh } from '../surface/mesh.ts';

/** One plane of a surface with its outline: triangles of one outlet and one plane that hang together. */
export interface Facet {
  outlet: string;
  plane: Plane;
  outer: Ring;
  holes: readonly Ring[];
  areaSqFt: number;
  labelAt: Point;
}

const samePlane = (a: Plane, b: Plane, at: Point): boolean =>
  Math.abs(a.gx - b.gx) < 1e-7 && Math.abs(a.gy - b.gy) < 1e-7 && Math.abs(heightIn(a, at) - heightIn(b, at)) < 1e-5;

/** Groups the triangles of a surface into its planes. Their outlines partition the section. */
export function facetsOf(mesh: SurfaceMesh): Facet[] {
  const count = mesh.corners.length / 3;
  const group = new Int32Array(count).fill(-1);
  const members: number[][] = [];
  for (let t = 0; t < count; t++) {
    if (group[t] >= 0) continue;
    const own: number[] = [];
    const stack = [t];
    group[t] = members.length;
    while (stack.length > 0) {
      const u = stack.pop()!;
      own.push(u);
      for (let k = 0; k < 3; k++) {
        const v = mesh.across[3 * u + k];
        if (v < 0 || group[v] >= 0 || mesh.patch[v].outlet !== mesh.patch[t].outlet) continue;
        if (!samePlane(mesh.patch[v].plane, mesh.patch[t].plane, mesh.points[mesh.corners[3 * u + k]])) continue;
        group[v] = members.length;
        stack.push(v);
      }
    }
    members.push(own);
  }
  return members.map((own, id) => facetOf(mesh, own, group, id));
}

function facetOf(mesh: SurfaceMesh, own: readonly number[], group: Int32Array, id: number): Facet {
  const next = new Map<number, number[]>();
  let areaSqFt = 0;
  let largest = { areaSqFt: -1, at: [0, 0] as Point };
  for (const t of own) {
    const ring = [0, 1, 2].map((k) => mesh.points[mesh.corners[3 * t + k]]);
    const part = signedAreaSqFt(ring);
    areaSqFt += part;
    if (part > largest.areaSqFt) largest = { areaSqFt: part, at: centroid(ring) };
    for (let k = 0; k < 3; k++) {
      const slot = 3 * t + k;
      const other = mesh.across[slot];
      if (other >= 0 && group[other] === id) continue;
      const a = mesh.corners[slot];
      next.set(a, [...(next.get(a) ?? []), mesh.corners[nextSlot(slot)]]);
    }
  }
  const rings = loops(mesh, next).sort((a, b) => signedAreaSqFt(b) - signedAreaSqFt(a));
  const outer = rings[0] ?? [];
  const middle = outer.length > 0 ? centroid(outer) : largest.at;
  const plane = mesh.patch[own[0]].plane;
  const labelAt = outer.length > 0 && isInside(middle, rings) ? middle : largest.at;
  return { outlet: mesh.patch[own[0]].outlet, plane, outer, holes: rings.slice(1), areaSqFt, labelAt };
}

/** Boundary edges joined into rings, straight corners left out. */
function loops(mesh: SurfaceMesh, next: Map<number, number[]>): Ring[] {
  const rings: Ring[] = [];
  for (const start of next.keys()) {
    for (let exit = next.get(start)?.pop(); exit !== undefined; exit = next.get(start)?.pop()) {
      const ids = [start];
      let at = exit;
      while (at !== start) {
        ids.push(at);
        const to = next.get(at)?.pop();
        if (to === undefined) break;
        at = to;
      }
      const ring = straightened(ids.map((id) => mesh.points[id]));
      if (ring.length >= 3) rings.push(ring);
    }
  }
  return rings;
}

function straightened(ring: readonly Point[]): Ring {
  return ring.filter((p, i) => {
    const a = ring[(i + ring.length - 1) % ring.length];
    const b = ring[(i + 1) % ring.length];
    const off =
      Math.abs((p[0] - a[0]) * (b[1] - a[1]) - (p[1] - a[1]) * (b[0] - a[0])) / Math.max(distanceFt(a, b), 1e-9);
    return off > 1e-5;
  });
}
