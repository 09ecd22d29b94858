import { findFans } from '../geometry/fans.ts';
import { JOIN_FT, Joints } from '../geometry/joints.ts';
import { heightIn } from '../geometry/plane.ts';
import { distanceFt, perimeterFt, signedAreaSqFt } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';
import type { Patch } from './patch.ts';

/**
 * A surface as triangles that meet edge to edge. Triangle t has corners `corners[3t..3t+2]`, counter-clockwise;
 * `across[3t + k]` is the triangle beyond the edge from corner k to k + 1, or -1 at the boundary of the section.
 */
export interface SurfaceMesh {
  points: readonly Point[];
  /** Heights of the vertices: the least of the planes that meet there, in. */
  z: Float64Array;
  corners: Int32Array;
  across: Int32Array;
  /** The patch each triangle is a part of: its plane is exact even where the triangle is thin. */
  patch: readonly Patch[];
}

/** Takes out the there-and-back steps that arise where a ring is thinner than the joining distance. */
function withoutSpikes(ids: readonly number[]): number[] {
  const ring = [...ids];
  for (let i = 0; i < ring.length && ring.length > 2; ) {
    const n = ring.length;
    if (ring[i] === ring[(i + 1) % n]) ring.splice(i, 1);
    else if (ring[(i + n - 1) % n] === ring[(i + 1) % n]) ring.splice(i, 1);
    else {
      i++;
      continue;
    }
    i = Math.max(0, i - 2);
  }
  return ring.length > 2 ? ring : [];
}

function withoutFlattest(ring: readonly number[], points: readonly Point[]): number[] {
  const n = ring.length;
  const areaAt = (i: number): number =>
    Math.abs(signedAreaSqFt([points[ring[(i + n - 1) % n]], points[ring[i]], points[ring[(i + 1) % n]]]));
  const flattest = ring.reduce((best, _, i) => (areaAt(i) < areaAt(best) ? i : best), 0);
  return ring.filter((_, i) => i !== flattest);
}

/** The fullest ear whose rest keeps at least so much area; -1 where there is none. */
function fullestEar(ring: readonly number[], points: readonly Point[], leastRestSqFt: number): number {
  const n = ring.length;
  const whole = signedAreaSqFt(ring.map((id) => points[id]));
  let best = -1;
  let bestFullness = 0;
  for (let i = 0; i < n; i++) {
    const [p, q, r] = [points[ring[(i + n - 1) % n]], points[ring[i]], points[ring[(i + 1) % n]]];
    const area = signedAreaSqFt([p, q, r]);
    if (area <= 0 || whole - area < leastRestSqFt) continue;
    const longest = Math.max(distanceFt(p, q), distanceFt(q, r), distanceFt(r, p));
    const fullness = area / (longest * longest);
    if (fullness > bestFullness) {
      bestFullness = fullness;
      best = i;
    }
  }
  return best;
}

/** Triangles of a convex ring that may have further vertices on its sides: the fullest ear first. */
function ears(ids: readonly number[], points: readonly Point[]): [number, number, number][] {
  const out: [number, number, number][] = [];
  let ring = [...ids];
  while (ring.length > 3) {
    const round = perimeterFt(ring.map((id) => points[id]));
    // An ear must not leave a rest that has lost its width: its points would lie on a line and be cut off.
    const wide = fullestEar(ring, points, (round * JOIN_FT) / 4);
    const best = wide >= 0 ? wide : fullestEar(ring, points, 0);
    // Nothing but points on one line is left at every ear: the flattest point carries no area.
    if (best < 0) {
      ring = withoutFlattest(ring, points);
      continue;
    }
    const n = ring.length;
    out.push([ring[(best + n - 1) % n], ring[best], ring[(best + 1) % n]]);
    ring = ring.filter((_, i) => i !== best);
  }
  if (ring.length === 3 && signedAreaSqFt(ring.map((id) => points[id])) > 0) out.push([ring[0], ring[1], ring[2]]);
  return out;
}

/**
 * Joins the patches of one surface into triangles that meet edge to edge.
 * @param patches convex pieces that partition the section, up to slivers thinner than the grid
 * @param extra further points to become vertices (outlets, check points)
 */
export function meshOf(patches: readonly Patch[], extra: readonly Point[] = []): SurfaceMesh {
  const count = patches.reduce((n, { ring }) => n + ring.length, 0);
  const area = patches.reduce((sum, { ring }) => sum + signedAreaSqFt(ring), 0);
  const joints = new Joints(Math.max(1e-3, Math.sqrt((2 * area) / Math.max(count, 1))));
  const rings = patches.map(({ ring }) => ring.map((p) => joints.add(p)));
  for (const p of extra) joints.add(p);
  const split = new Map<string, number[]>();
  const between = (a: number, b: number): number[] => {
    const known = split.get(`${b},${a}`);
    if (known) return [...known].reverse();
    const found = joints.on(a, b);
    split.set(`${a},${b}`, found);
    return found;
  };
  const triangles: [number, number, number][] = [];
  const patch: Patch[] = [];
  rings.forEach((ring, i) => {
    const clean = ring.filter((id, k) => id !== ring[(k + 1) % ring.length]);
    if (clean.length < 3) return;
    const full = clean.flatMap((id, k) => [id, ...between(id, clean[(k + 1) % clean.length])]);
    for (const triangle of withInner(ears(withoutSpikes(full), joints.points), joints, extra)) {
      triangles.push(triangle);
      patch.push(patches[i]);
    }
  });
  return assemble(joints.points, triangles, patch);
}

/** Extra points inside a triangle split it in three, on one of its sides in two. */
function withInner(
  triangles: [number, number, number][],
  joints: Joints,
  extra: readonly Point[],
): [number, number, number][] {
  let out = triangles;
  for (const p of extra) {
    const id = joints.add(p);
    out = out.flatMap((t): [number, number, number][] => (t.includes(id) ? [t] : splitAt(t, id, joints.points)));
  }
  return out;
}

function splitAt(t: [number, number, number], id: number, points: readonly Point[]): [number, number, number][] {
  const [a, b, c] = t;
  const share = (x: number, y: number): number => signedAreaSqFt([points[x], points[y], points[id]]);
  const whole = signedAreaSqFt([points[a], points[b], points[c]]);
  const sides: [number, number][] = [
    [a, b],
    [b, c],
    [c, a],
  ];
  const shares = sides.map(([x, y]) => share(x, y) / whole);
  if (shares.some((s) => s < -1e-9)) return [t];
  return sides.flatMap(([x, y], k): [number, number, number][] => (shares[k] > 1e-9 ? [[x, y, id]] : []));
}

function assemble(
  points: readonly Point[],
  triangles: readonly [number, number, number][],
  patch: readonly Patch[],
): SurfaceMesh {
  const corners = new Int32Array(triangles.flat());
  const across = new Int32Array(corners.length).fill(-1);
  const open = new Map<number, number>();
  const n = points.length;
  for (let slot = 0; slot < corners.length; slot++) {
    const a = corners[slot];
    const b = corners[slot - (slot % 3) + (((slot % 3) + 1) % 3)];
    const twin = open.get(b * n + a);
    if (twin === undefined) open.set(a * n + b, slot);
    else {
      across[slot] = Math.floor(twin / 3);
      across[twin] = Math.floor(slot / 3);
      open.delete(b * n + a);
    }
  }
  return withHeights(apart(points, corners, across), corners, across, patch);
}

/**
 * Vertices where two pieces of the section only touch become one vertex each: no water passes there, and the two
 * sides may lie at different heights. Rewrites the corners in place.
 */
function apart(points: readonly Point[], corners: Int32Array, across: Int32Array): Point[] {
  const out = [...points];
  const { fans, ofVertex } = findFans({ points, corners, across });
  for (const ids of ofVertex) {
    for (const id of ids.slice(1)) {
      for (const slot of fans[id].slots) corners[slot] = out.length;
      out.push(fans[id].at);
    }
  }
  return out;
}

function withHeights(
  points: readonly Point[],
  corners: Int32Array,
  across: Int32Array,
  patch: readonly Patch[],
): SurfaceMesh {
  const z = new Float64Array(points.length).fill(Number.POSITIVE_INFINITY);
  for (let slot = 0; slot < corners.length; slot++) {
    const id = corners[slot];
    z[id] = Math.min(z[id], heightIn(patch[Math.floor(slot / 3)].plane, points[id]));
  }
  return { points, z, corners, across, patch };
}
