import type { Point } from '../roof.ts';

/** z = atOriginIn + gx x + gy y: height in inches over plan feet. */
export interface Plane {
  atOriginIn: number;
  gx: number;
  gy: number;
}

export const LEVEL: Plane = { atOriginIn: 0, gx: 0, gy: 0 };

export function heightIn(plane: Plane, p: Point): number {
  return plane.atOriginIn + plane.gx * p[0] + plane.gy * p[1];
}

/** Slope of the plane itself, in per ft. */
export function slopeInPerFt(plane: Plane): number {
  return Math.hypot(plane.gx, plane.gy);
}

/** The plane with this gradient that passes through a point at a height. */
export function planeThrough(p: Point, zIn: number, gx: number, gy: number): Plane {
  return { atOriginIn: zIn - gx * p[0] - gy * p[1], gx, gy };
}

export function addPlanes(a: Plane, b: Plane): Plane {
  return { atOriginIn: a.atOriginIn + b.atOriginIn, gx: a.gx + b.gx, gy: a.gy + b.gy };
}

/** Plane through three points with heights; the points must not lie on one line. */
export function planeOfTriangle(a: Point, b: Point, c: Point, za: number, zb: number, zc: number): Plane {
  const [ux, uy, uz] = [b[0] - a[0], b[1] - a[1], zb - za];
  const [vx, vy, vz] = [c[0] - a[0], c[1] - a[1], zc - za];
  const twice = ux * vy - uy * vx;
  const gx = (uz * vy - vz * uy) / twice;
  const gy = (vz * ux - uz * vx) / twice;
  return planeThrough(a, za, gx, gy);
}

/**
 * Slope of the line along which two planes meet: |g1 x g2| / |g1 - g2|, in per ft.
 * Source: plane geometry; the tapered-insulation note, section 3.2. Null where the planes are parallel.
 */
export function creaseSlopeInPerFt(a: Plane, b: Plane): number | null {
  const apart = Math.hypot(a.gx - b.gx, a.gy - b.gy);
  if (apart < 1e-12) return null;
  return Math.abs(a.gx * b.gy - a.gy * b.gx) / apart;
}
