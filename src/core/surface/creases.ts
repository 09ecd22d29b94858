import { creaseSlopeInPerFt, heightIn, slopeInPerFt } from '../geometry/plane.ts';
import { nextSlot, twinSlot } from '../geometry/triangulation.ts';
import { distanceFt } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';
import type { SurfaceMesh } from './mesh.ts';

export type CreaseKind = 'valley' | 'ridge' | 'wall';

/** A straight line where two planes meet, or where a plane meets a closed wall that holds its water. */
export interface Crease {
  kind: CreaseKind;
  from: Point;
  to: Point;
  lengthFt: number;
  slopeInPerFt: number;
}

/** Gradients nearer than this are one plane; slopes under it are level. */
export const LEVEL_IN_PER_FT = 1e-6;
/** Creases shorter than this are joints of the drawing, not of the roof. */
const SHORT_FT = 0.01;

/** How strongly a triangle's water runs against one of its edges: positive = towards it. */
export function runsAgainst(mesh: SurfaceMesh, slot: number): number {
  const a = mesh.points[mesh.corners[slot]];
  const b = mesh.points[mesh.corners[nextSlot(slot)]];
  const { gx, gy } = mesh.patch[Math.floor(slot / 3)].plane;
  const length = distanceFt(a, b);
  // Outward normal of a counter-clockwise edge is (dy, -dx).
  return (-gx * (b[1] - a[1]) + gy * (b[0] - a[0])) / length;
}

/**
 * Valleys, ridges and wall lines of a surface, edge by edge, joined where they go straight on.
 * @param isOpen boundary edges over which water leaves (gutter, drip edge): no wall line there
 */
export function creasesOf(mesh: SurfaceMesh, isOpen: (slot: number) => boolean): Crease[] {
  const found: Crease[] = [];
  for (let slot = 0; slot < mesh.corners.length; slot++) {
    const from = mesh.points[mesh.corners[slot]];
    const to = mesh.points[mesh.corners[nextSlot(slot)]];
    const lengthFt = distanceFt(from, to);
    const plane = mesh.patch[Math.floor(slot / 3)].plane;
    const twin = twinSlot(mesh, slot);
    if (twin < 0) {
      if (isOpen(slot) || runsAgainst(mesh, slot) <= LEVEL_IN_PER_FT) continue;
      const along = (plane.gx * (to[0] - from[0]) + plane.gy * (to[1] - from[1])) / lengthFt;
      found.push({ kind: 'wall', from, to, lengthFt, slopeInPerFt: Math.abs(along) });
      continue;
    }
    if (twin < slot) continue;
    const other = mesh.patch[Math.floor(twin / 3)].plane;
    const apart = Math.hypot(plane.gx - other.gx, plane.gy - other.gy);
    // A step between the planes (touching pieces) is no crease.
    if (apart < LEVEL_IN_PER_FT || Math.abs(heightIn(plane, from) - heightIn(other, from)) > 0.01) continue;
    const here = runsAgainst(mesh, slot);
    const there = runsAgainst(mesh, twin);
    const both = here > LEVEL_IN_PER_FT && there > LEVEL_IN_PER_FT;
    const neither = here < -LEVEL_IN_PER_FT && there < -LEVEL_IN_PER_FT;
    if (!both && !neither) continue;
    found.push({
      kind: both ? 'valley' : 'ridge',
      from,
      to,
      lengthFt,
      slopeInPerFt: creaseSlopeInPerFt(plane, other) ?? 0,
    });
  }
  return joined(found).filter(({ lengthFt }) => lengthFt > SHORT_FT);
}

/** Joins pieces of one kind and slope that go straight on into one line. */
function joined(creases: readonly Crease[]): Crease[] {
  const key = (p: Point): string => `${p[0].toFixed(4)},${p[1].toFixed(4)}`;
  const open = [...creases];
  const byEnd = new Map<string, Set<number>>();
  const note = (i: number): void => {
    for (const p of [open[i].from, open[i].to]) {
      const k = key(p);
      const set = byEnd.get(k) ?? new Set<number>();
      byEnd.set(k, set.add(i));
    }
  };
  const forget = (i: number): void => {
    for (const p of [open[i].from, open[i].to]) byEnd.get(key(p))?.delete(i);
  };
  const gone = new Set<number>();
  open.forEach((_, i) => {
    note(i);
  });
  for (let i = 0; i < open.length; i++) {
    for (;;) {
      if (gone.has(i)) break;
      const match = [open[i].from, open[i].to]
        .flatMap((p) => [...(byEnd.get(key(p)) ?? [])].map((j) => ({ j, p })))
        .find(({ j, p }) => j !== i && goesOn(open[i], open[j], p));
      if (match === undefined) break;
      const farOf = (c: Crease): Point => (key(c.from) === key(match.p) ? c.to : c.from);
      const [a, b] = [farOf(open[i]), farOf(open[match.j])];
      forget(i);
      forget(match.j);
      gone.add(match.j);
      open[i] = { ...open[i], from: a, to: b, lengthFt: open[i].lengthFt + open[match.j].lengthFt };
      note(i);
    }
  }
  return open.filter((_, i) => !gone.has(i));
}

function goesOn(a: Crease, b: Crease, at: Point): boolean {
  if (a.kind !== b.kind || Math.abs(a.slopeInPerFt - b.slopeInPerFt) > 1e-4) return false;
  const near = (p: Point): boolean => distanceFt(p, at) < 1e-3;
  const p = near(a.from) ? a.to : a.from;
  const q = near(b.from) ? b.to : b.from;
  const off =
    Math.abs((at[0] - p[0]) * (q[1] - p[1]) - (at[1] - p[1]) * (q[0] - p[0])) / Math.max(distanceFt(p, q), 1e-9);
  const ahead = (at[0] - p[0]) * (q[0] - at[0]) + (at[1] - p[1]) * (q[1] - at[1]) > 0;
  return ahead && off < 1e-3;
}

/** Least slope over all planes of a surface that are more than specks. */
export function leastFaceSlopeInPerFt(mesh: SurfaceMesh): number | null {
  let least: number | null = null;
  for (let t = 0; t < mesh.corners.length / 3; t++) {
    const [a, b, c] = [0, 1, 2].map((k) => mesh.points[mesh.corners[3 * t + k]]);
    const twice = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
    if (twice < 1e-3) continue;
    const slope = slopeInPerFt(mesh.patch[t].plane);
    if (least === null || slope < least) least = slope;
  }
  return least;
}
