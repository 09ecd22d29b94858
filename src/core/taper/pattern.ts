import { bearingVector, cross, dot } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';

/** A crease of a pattern: the surface rises along it by so much per foot from the outlet. */
export interface CreaseRay {
  bearingDeg: number;
  riseInPerFt: number;
}

interface Sector {
  /** Unit vectors of its two creases, counter-clockwise. */
  from: Point;
  to: Point;
  /** Gradient of the plane between them. */
  gx: number;
  gy: number;
}

/**
 * How the surface rises about an outlet: planes between crease rays, zero at the outlet, rising along every ray.
 * Build one with `slopePattern` only: that is what makes the rise certain.
 */
export interface SlopePattern {
  /** Patterns with the same name are the same function. */
  name: string;
  sectors: readonly Sector[];
  /** No way round is ever lower than the straight way. */
  convex: boolean;
  leastRiseInPerFt: number;
  greatestRiseInPerFt: number;
}

/**
 * A pattern from a full circle of crease rays.
 * @throws RangeError when a rise is not positive or two neighbours are 180 degrees or more apart
 */
export function slopePattern(rays: readonly CreaseRay[]): SlopePattern {
  // Counter-clockwise order is falling bearing.
  const norm = (deg: number): number => ((deg % 360) + 360) % 360;
  const sorted = rays
    .map((ray) => ({ ...ray, bearingDeg: norm(ray.bearingDeg) }))
    .sort((a, b) => b.bearingDeg - a.bearingDeg);
  const sectors = sorted.map((ray, i): Sector => {
    const next = sorted[(i + 1) % sorted.length];
    if (!(ray.riseInPerFt > 0))
      throw new RangeError(`crease at ${ray.bearingDeg} degrees must rise, not ${ray.riseInPerFt}`);
    const from = bearingVector(ray.bearingDeg);
    const to = bearingVector(next.bearingDeg);
    const turn = cross(from, to);
    if (!(turn > 1e-9)) throw new RangeError(`creases after ${ray.bearingDeg} degrees are 180 degrees or more apart`);
    return {
      from,
      to,
      gx: (ray.riseInPerFt * to[1] - next.riseInPerFt * from[1]) / turn,
      gy: (next.riseInPerFt * from[0] - ray.riseInPerFt * to[0]) / turn,
    };
  });
  const convex = sectors.every((sector, i) => {
    const next = sectors[(i + 1) % sectors.length];
    return cross(sector.to, [next.gx - sector.gx, next.gy - sector.gy]) > -1e-9;
  });
  // A plane between two creases is steepest along its own gradient, or along the steeper crease.
  const steepest = (s: Sector): number => Math.hypot(s.gx, s.gy);
  return {
    name: sorted.map((ray) => `${ray.bearingDeg.toFixed(6)}:${ray.riseInPerFt.toFixed(9)}`).join(' '),
    sectors,
    convex,
    leastRiseInPerFt: Math.min(...sorted.map((ray) => ray.riseInPerFt)),
    greatestRiseInPerFt: Math.max(...sectors.map(steepest)),
  };
}

/**
 * Four planes of one slope, creases at 45 degrees between them.
 * @param turnDeg bearing of one of the four plane directions (0 = square to the building's axes)
 */
export function fourWay(slopeInPerFt: number, turnDeg = 0): SlopePattern {
  return slopePattern(
    [45, 135, 225, 315].map((deg) => ({ bearingDeg: deg + turnDeg, riseInPerFt: slopeInPerFt / Math.SQRT2 })),
  );
}

/** Rise from the outlet to a point at this offset, in inches. */
export function riseIn(pattern: SlopePattern, by: Point): number {
  if (by[0] === 0 && by[1] === 0) return 0;
  for (const sector of pattern.sectors) {
    if (cross(sector.from, by) >= 0 && cross(by, sector.to) >= 0) return sector.gx * by[0] + sector.gy * by[1];
  }
  // Rounding on a crease: the nearest sector holds.
  const best = pattern.sectors.reduce((a, b) => (dot(mid(a), by) > dot(mid(b), by) ? a : b));
  return best.gx * by[0] + best.gy * by[1];
}

const mid = (s: Sector): Point => [s.from[0] + s.to[0], s.from[1] + s.to[1]];
