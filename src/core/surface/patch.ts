import { type Convex, intersectConvex, split } from '../geometry/convex.ts';
import { addPlanes, heightIn, type Plane } from '../geometry/plane.ts';
import { type Box, boxesOverlap, boxOf } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';

/** A convex piece of a surface with its plane. A list of them that partitions the section is a surface. */
export interface Patch {
  ring: Convex;
  plane: Plane;
  /** Id of the outlet that governs it; '' for a deck. */
  outlet: string;
}

/** Two heights nearer than this are the same height. */
export const SAME_HEIGHT_IN = 1e-6;

/** Signed distance in ft from the line where two planes meet: positive where `a` is the higher. */
export function higherSide(a: Plane, b: Plane): (p: Point) => number {
  const gx = a.gx - b.gx;
  const gy = a.gy - b.gy;
  const steep = Math.max(Math.hypot(gx, gy), 1e-12);
  const at = a.atOriginIn - b.atOriginIn;
  return (p) => (at + gx * p[0] + gy * p[1]) / steep;
}

/** True where the two planes are one over this ring. */
export function samePlaneOver(ring: Convex, a: Plane, b: Plane): boolean {
  return ring.every((p) => Math.abs(heightIn(a, p) - heightIn(b, p)) < SAME_HEIGHT_IN);
}

/** Pairs of pieces whose boxes overlap, found by sweeping along x. */
function* overlapping(a: readonly Patch[], b: readonly Patch[]): Generator<[Patch, Patch]> {
  const byX = b.map((patch) => ({ patch, box: boxOf(patch.ring) })).sort((p, q) => p.box.minX - q.box.minX);
  const widest = byX.reduce((w, { box }) => Math.max(w, box.maxX - box.minX), 0);
  const firstFrom = (x: number): number => {
    let [lo, hi] = [0, byX.length];
    while (lo < hi) {
      const m = (lo + hi) >> 1;
      if (byX[m].box.minX < x) lo = m + 1;
      else hi = m;
    }
    return lo;
  };
  for (const patch of a) {
    const box: Box = boxOf(patch.ring);
    for (let i = firstFrom(box.minX - widest); i < byX.length && byX[i].box.minX < box.maxX; i++) {
      if (boxesOverlap(box, byX[i].box)) yield [patch, byX[i].patch];
    }
  }
}

/**
 * The lower of two surfaces; where they are equal the first keeps its piece.
 * A part of the section that only one of them reaches is left as it is.
 */
export function lowerOf(a: readonly Patch[], b: readonly Patch[]): Patch[] {
  const out: Patch[] = [];
  const met = new Set<Patch>();
  for (const [p, q] of overlapping(a, b)) {
    const both = intersectConvex(p.ring, q.ring);
    if (both.length === 0) continue;
    met.add(p).add(q);
    if (samePlaneOver(both, p.plane, q.plane)) {
      out.push({ ...p, ring: both });
      continue;
    }
    const [pHigher, pLower] = split(both, higherSide(p.plane, q.plane));
    if (pHigher.length > 0) out.push({ ...q, ring: pHigher });
    if (pLower.length > 0) out.push({ ...p, ring: pLower });
  }
  for (const patch of [...a, ...b]) if (!met.has(patch)) out.push(patch);
  return out;
}

/** Boards on a deck: heights add, the boards' outlets stay. */
export function laidOn(deck: readonly Patch[], boards: readonly Patch[]): Patch[] {
  const out: Patch[] = [];
  for (const [p, q] of overlapping(boards, deck)) {
    const both = intersectConvex(p.ring, q.ring);
    if (both.length > 0) out.push({ ring: both, plane: addPlanes(p.plane, q.plane), outlet: p.outlet });
  }
  return out;
}

/** The same surface, raised everywhere. */
export function raisedBy(patches: readonly Patch[], byIn: number): Patch[] {
  return patches.map((patch) => ({ ...patch, plane: { ...patch.plane, atOriginIn: patch.plane.atOriginIn + byIn } }));
}
