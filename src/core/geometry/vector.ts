import { orient2d } from 'robust-predicates';
import type { Point, Ring } from '../roof.ts';

/** The grid to which every plan coordinate is snapped, in ft. */
export const GRID_FT = 1e-6;

/**
 * Which side of the line a -> b the point c lies on, exactly: positive = left (counter-clockwise, y up).
 * The predicate library takes y downward, so its sign is turned here and nowhere else.
 */
export function orient(a: Point, b: Point, c: Point): number {
  return -orient2d(a[0], a[1], b[0], b[1], c[0], c[1]);
}

/** Nearest point of the grid. */
export function snap(p: Point): Point {
  return [Math.round(p[0] / GRID_FT) * GRID_FT, Math.round(p[1] / GRID_FT) * GRID_FT];
}

export function distanceFt(a: Point, b: Point): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}

export function between(a: Point, b: Point, t: number): Point {
  return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
}

/** Unit vector from a to b; [0, 0] where they coincide. */
export function direction(a: Point, b: Point): Point {
  const length = distanceFt(a, b);
  return length === 0 ? [0, 0] : [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
}

export function cross(a: Point, b: Point): number {
  return a[0] * b[1] - a[1] * b[0];
}

export function dot(a: Point, b: Point): number {
  return a[0] * b[0] + a[1] * b[1];
}

/** Unit vector of a bearing in degrees clockwise from north. */
export function bearingVector(bearingDeg: number): Point {
  const angle = (bearingDeg * Math.PI) / 180;
  return [Math.sin(angle), Math.cos(angle)];
}

/** Signed area in sq ft: positive for counter-clockwise rings. */
export function signedAreaSqFt(ring: Ring): number {
  if (ring.length < 3) return 0;
  const [ox, oy] = ring[0];
  let twice = 0;
  for (let i = 1; i < ring.length - 1; i++) {
    const p = ring[i];
    const q = ring[i + 1];
    twice += (p[0] - ox) * (q[1] - oy) - (q[0] - ox) * (p[1] - oy);
  }
  return twice / 2;
}

export function perimeterFt(ring: Ring): number {
  return ring.reduce((sum, p, i) => sum + distanceFt(p, ring[(i + 1) % ring.length]), 0);
}

/** Area centroid; the plain mean of the corners where the ring has no area. */
export function centroid(ring: Ring): Point {
  const [ox, oy] = ring[0];
  let twice = 0;
  let x = 0;
  let y = 0;
  for (let i = 1; i < ring.length - 1; i++) {
    const [px, py] = [ring[i][0] - ox, ring[i][1] - oy];
    const [qx, qy] = [ring[i + 1][0] - ox, ring[i + 1][1] - oy];
    const w = px * qy - qx * py;
    twice += w;
    x += (px + qx) * w;
    y += (py + qy) * w;
  }
  if (Math.abs(twice) < 1e-12) {
    const mean = (k: 0 | 1) => ring.reduce((sum, p) => sum + p[k], 0) / ring.length;
    return [mean(0), mean(1)];
  }
  return [ox + x / (3 * twice), oy + y / (3 * twice)];
}

export interface Box {
  minX: number;
  minY: number;
  maxX: number;
  maxY: number;
}

export function boxOf(ring: Ring): Box {
  const box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  for (const [x, y] of ring) {
    if (x < box.minX) box.minX = x;
    if (x > box.maxX) box.maxX = x;
    if (y < box.minY) box.minY = y;
    if (y > box.maxY) box.maxY = y;
  }
  return box;
}

export const grown = ({ minX, maxX, minY, maxY }: Box, byFt: number): Box => ({
  minX: minX - byFt,
  maxX: maxX + byFt,
  minY: minY - byFt,
  maxY: maxY + byFt,
});

export function boxesOverlap(a: Box, b: Box): boolean {
  return a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
}

/** Even-odd test; points on the boundary may fall either way. */
export function isInside(p: Point, rings: readonly Ring[]): boolean {
  let inside = false;
  for (const ring of rings) {
    for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
      const a = ring[i];
      const b = ring[j];
      if (a[1] > p[1] !== b[1] > p[1] && p[0] < ((b[0] - a[0]) * (p[1] - a[1])) / (b[1] - a[1]) + a[0])
        inside = !inside;
    }
  }
  return inside;
}

/** Distance from p to the segment a-b, and where along it (0..1) the nearest point lies. */
export function toSegment(p: Point, a: Point, b: Point): { distanceFt: number; t: number } {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const lengthSq = dx * dx + dy * dy;
  const raw = lengthSq === 0 ? 0 : ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / lengthSq;
  const t = Math.min(1, Math.max(0, raw));
  return { distanceFt: Math.hypot(a[0] + dx * t - p[0], a[1] + dy * t - p[1]), t };
}
