import type { Section } from '../geometry/section.ts';
import { envelope } from '../taper/envelope.ts';
import { slopePattern } from '../taper/pattern.ts';
import type { TaperOutlet } from '../taper/sources.ts';
import { momentsOf } from './thermal.ts';

/** Rays of the two many-sided cones that stand for the round one. */
const FEW_RAYS = 24;
const MORE_RAYS = 48;

function manySided(section: Section, starts: readonly TaperOutlet[], slopeInPerFt: number, count: number): number {
  const rays = Array.from({ length: count }, (_, i) => ({ bearingDeg: (360 * i) / count, riseInPerFt: slopeInPerFt }));
  const pattern = slopePattern(rays);
  return momentsOf(
    envelope(
      section,
      starts.map((start) => ({ ...start, pattern })),
    ),
  ).boardFt;
}

/**
 * Board feet of the lowest surface that falls at `slope` along every water path to the same outlets at the same levels.
 * A cone with n planes lies under the round one by a share that goes as 1/n^2: two of them give the round one, and how
 * far the extrapolation reaches is the error stated.
 * Source: eikonal lower bound; geodesic distance by the same corners as the taper itself.
 */
export function coneBoardFt(
  section: Section,
  starts: readonly TaperOutlet[],
  slopeInPerFt: number,
): { boardFt: number; errorBoardFt: number } {
  const few = manySided(section, starts, slopeInPerFt, FEW_RAYS);
  const more = manySided(section, starts, slopeInPerFt, MORE_RAYS);
  const boardFt = (4 * more - few) / 3;
  return { boardFt, errorBoardFt: Math.abs(boardFt - more) };
}
