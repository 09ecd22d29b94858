import { direction, distanceFt, dot, signedAreaSqFt } from '../geometry/vector.ts';
import type { Point, Ring } from '../roof.ts';

/** The longest side: rows run along it, and the tape lies on it. */
export interface BaseLine {
  side: number;
  start: Point;
  lengthFt: number;
  /** Unit vectors along it, from its first corner, and square off it into the section. */
  along: Point;
  inward: Point;
}

export function baseLineOf(outline: Ring): BaseLine {
  const turn = signedAreaSqFt(outline) > 0 ? 1 : -1;
  const lines = outline.map((start, side): BaseLine => {
    const end = outline[(side + 1) % outline.length];
    const along = direction(start, end);
    return { side, start, lengthFt: distanceFt(start, end), along, inward: [-turn * along[1], turn * along[0]] };
  });
  // A side that is longer by a hair only is no reason to turn the rows: the first of the longest is taken.
  return lines.reduce((longest, line) => (line.lengthFt > longest.lengthFt + 1e-6 ? line : longest));
}

/** Where a spot lies on the base line, and how far off it. */
export function offBase({ start, along, inward }: BaseLine, p: Point): { alongFt: number; inFt: number } {
  const off: Point = [p[0] - start[0], p[1] - start[1]];
  return { alongFt: dot(off, along), inFt: dot(off, inward) };
}

export const fromBase = ({ start, along, inward }: BaseLine, alongFt: number, inFt: number): Point => [
  start[0] + along[0] * alongFt + inward[0] * inFt,
  start[1] + along[1] * alongFt + inward[1] * inFt,
];

/** Spacings that a tape lays out without thinking; a survey asks for 4 to 8 ft (common practice). */
const SPACINGS_FT = [4, 5, 6, 8] as const;
const WANTED = 60;
const MOST = 150;

/** The closest spacing that leaves a number of spots that is walked in an hour or two; wider than 8 ft on large roofs only. */
export function gridSpacingFt(outline: Ring): number {
  const areaSqFt = Math.abs(signedAreaSqFt(outline));
  const close = SPACINGS_FT.find((ft) => areaSqFt / (ft * ft) <= WANTED) ?? 8;
  return Math.max(close, Math.ceil(Math.sqrt(areaSqFt / MOST)));
}
