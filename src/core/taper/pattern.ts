import { bearingVector, cross, dot } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';

/** A crease of a pattern: the surface rises along it by so much per foot from the outlet. */
export interface CreaseRay {
  bearingDeg: number;
  riseInPerFt: number;
}

export interface Sector {
  /** Unit vectors of its two creases, counter-clockwise. */
  from: Point;
  to: Point;
  /** Gradient of the plane between them. */
  gx: number;
  gy: number;
  /** Gradients of the board layers that make the plane, bottom first: they add up to its own. */
  layers: readonly Point[];
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
    const gx = (ray.riseInPerFt * to[1] - next.riseInPerFt * from[1]) / turn;
    const gy = (next.riseInPerFt * from[0] - ray.riseInPerFt * to[0]) / turn;
    return { from, to, gx, gy, layers: [[gx, gy]] };
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

/**
 * Four planes with one slope along an axis and another across it: a rectangular pyramid.
 * Source: planes in pairs, creases where both rise alike; the tapered-insulation note, section 3.1 (level perimeter).
 * @param axisDeg bearing of the axis
 */
export function pyramid(alongInPerFt: number, acrossInPerFt: number, axisDeg = 0): SlopePattern {
  const offDeg = (Math.atan2(alongInPerFt, acrossInPerFt) * 180) / Math.PI;
  const riseInPerFt = alongInPerFt * Math.cos((offDeg * Math.PI) / 180);
  return slopePattern(
    [offDeg, -offDeg, 180 + offDeg, 180 - offDeg].map((deg) => ({ bearingDeg: axisDeg + deg, riseInPerFt })),
  );
}

/**
 * Faces on both sides of a valley that is itself sloped to the outlet: boards across under boards along.
 * Source: planes add; the tapered-insulation note, section 3.1.
 * @param axisDeg bearing of the valley
 */
export function slopedValley(valleyInPerFt: number, fieldInPerFt: number, axisDeg = 0): SlopePattern {
  const along = bearingVector(axisDeg);
  const pattern = slopePattern(
    [0, 90, 180, 270].map((deg) => ({
      bearingDeg: axisDeg + deg,
      riseInPerFt: deg % 180 === 0 ? valleyInPerFt : fieldInPerFt,
    })),
  );
  return inLayers(pattern, ({ gx, gy }) => {
    const rise = dot([gx, gy], along);
    return [rise * along[0], rise * along[1]];
  });
}

/** Crickets along a drain line: boards laid on the field from each cricket's edge to its ridge. */
export interface CricketShape {
  fieldInPerFt: number;
  boardInPerFt: number;
  /** Width over length of a full diamond: 0.5 for 1:2. */
  widthToLength: number;
}

/**
 * Slopes that follow from a cricket's shape.
 * Source: the tapered-insulation note, section 3.3. The face is never flatter than the field when the boards have at
 * least `leastBoardInPerFt`.
 */
export function cricketSlopes({ fieldInPerFt, boardInPerFt, widthToLength }: CricketShape): {
  valleyInPerFt: number;
  faceInPerFt: number;
  ridgeInPerFt: number;
  leastBoardInPerFt: number;
} {
  const angle = Math.atan(widthToLength);
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  return {
    valleyInPerFt: fieldInPerFt * sin,
    faceInPerFt: Math.hypot(boardInPerFt * sin, fieldInPerFt - boardInPerFt * cos),
    ridgeInPerFt: boardInPerFt * sin,
    leastBoardInPerFt: 2 * fieldInPerFt * cos,
  };
}

/**
 * Two fields that fall to a drain line, with crickets along the line on both sides of the outlet.
 * @param axisDeg bearing of the drain line
 * @throws RangeError where the boards are so flat that a cricket's ridge would not shed to its valleys
 */
export function twoWayWithCrickets(shape: CricketShape, axisDeg = 0): SlopePattern {
  const { valleyInPerFt, ridgeInPerFt, leastBoardInPerFt } = cricketSlopes(shape);
  if (shape.boardInPerFt * 2 <= leastBoardInPerFt)
    throw new RangeError(
      `cricket boards of ${shape.boardInPerFt} in/ft do not shed on a field of ${shape.fieldInPerFt}`,
    );
  const edgeDeg = (Math.atan(shape.widthToLength) * 180) / Math.PI;
  const across = bearingVector(axisDeg + 90);
  const pattern = slopePattern(
    [0, 180].flatMap((deg) => [
      { bearingDeg: axisDeg + deg, riseInPerFt: ridgeInPerFt },
      { bearingDeg: axisDeg + deg + edgeDeg, riseInPerFt: valleyInPerFt },
      { bearingDeg: axisDeg + deg - edgeDeg, riseInPerFt: valleyInPerFt },
    ]),
  );
  return inLayers(pattern, ({ from, to, gx, gy }) => {
    const side = dot([from[0] + to[0], from[1] + to[1]], across);
    const field: Point = [
      Math.sign(side) * shape.fieldInPerFt * across[0],
      Math.sign(side) * shape.fieldInPerFt * across[1],
    ];
    // The fields themselves are one layer; their middle looks square away from the drain line.
    return Math.hypot(gx - field[0], gy - field[1]) < 1e-9 ? null : field;
  });
}

/** The same pattern with every plane made of two layers: the first given, the second what is left. */
function inLayers(pattern: SlopePattern, bottomOf: (sector: Sector) => Point | null): SlopePattern {
  const sectors = pattern.sectors.map((sector): Sector => {
    const bottom = bottomOf(sector);
    if (bottom === null) return sector;
    return { ...sector, layers: [bottom, [sector.gx - bottom[0], sector.gy - bottom[1]]] };
  });
  return { ...pattern, sectors };
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
