import { bearingVector, direction } from '../geometry/vector.ts';
import type { Patch } from '../surface/patch.ts';
import { type SlopePattern, slopePattern } from '../taper/pattern.ts';
import type { TaperOutlet } from '../taper/sources.ts';

/** Board feet of the least surface, and how far from the true value they may be. */
export interface LeastBoards {
  boardFt: number;
  errorBoardFt: number;
}

/** Rays of the coarser of the two many-sided cones that stand for the round one; the other has twice as many. */
const RAYS = 24;
/** With many outlets the error of each is smaller against the whole, and the time counts. */
const MANY_STARTS = 8;
const FEWER_RAYS = 12;

/** Slope of the deck itself under the boards. */
export type Gradient = Pick<Patch['plane'], 'gx' | 'gy'>;
export const LEVEL_GRADIENT: Gradient = { gx: 0, gy: 0 };

/** Rises by the slope along the way, less what the deck rises itself. */
function manySided(slopeInPerFt: number, { gx, gy }: Gradient, count: number, turnDeg: number): SlopePattern {
  const rays = Array.from({ length: count }, (_, i) => {
    const bearingDeg = turnDeg + (360 * i) / count;
    const [x, y] = bearingVector(bearingDeg);
    return { bearingDeg, riseInPerFt: slopeInPerFt - gx * x - gy * y };
  });
  return slopePattern(rays);
}

/** Bearing of the first edge: a ray square to it makes the planes along an edge exact. */
function turnOf(starts: readonly TaperOutlet[]): number {
  const edge = starts.find((start) => start.kind === 'edge');
  if (edge?.kind !== 'edge') return 0;
  const [x, y] = direction(edge.from, edge.to);
  return (Math.atan2(x, y) * 180) / Math.PI;
}

/**
 * A measure of the round cone from those of two many-sided ones.
 * A cone with n planes lies over the round one by a share that goes as 1/n^2: two of them give the round one, and how
 * far the extrapolation reaches is the error stated.
 */
export function extrapolated(
  measure: (pattern: SlopePattern) => number,
  slope: number,
  deck: Gradient,
  starts: readonly TaperOutlet[],
): LeastBoards {
  const rays = starts.length > MANY_STARTS ? FEWER_RAYS : RAYS;
  const turnDeg = turnOf(starts);
  const few = measure(manySided(slope, deck, rays, turnDeg));
  const more = measure(manySided(slope, deck, 2 * rays, turnDeg));
  const boardFt = (4 * more - few) / 3;
  return { boardFt, errorBoardFt: Math.abs(boardFt - more) };
}
