import type { Section } from '../geometry/section.ts';
import { envelope } from '../taper/envelope.ts';
import { slopePattern } from '../taper/pattern.ts';
import type { TaperOutlet } from '../taper/sources.ts';
import { momentsOf } from './thermal.ts';

/** Rays of the many-sided cone that stands for the round one. */
const RAYS = 48;

/**
 * Board feet of the lowest surface that falls at `slope` along every water path to the same outlets at the same levels.
 * A cone with many planes lies under the round one by at most 1 - cos(180 / rays): that is the error stated.
 * Source: eikonal lower bound; geodesic distance by the same corners as the taper itself.
 */
export function coneBoardFt(
  section: Section,
  starts: readonly TaperOutlet[],
  slopeInPerFt: number,
): { boardFt: number; errorBoardFt: number } {
  const rays = Array.from({ length: RAYS }, (_, i) => ({ bearingDeg: (360 * i) / RAYS, riseInPerFt: slopeInPerFt }));
  const pattern = slopePattern(rays);
  const moments = momentsOf(
    envelope(
      section,
      starts.map((start) => ({ ...start, pattern })),
    ),
  );
  const level = Math.min(...starts.map(({ levelIn }) => levelIn));
  const rising = moments.boardFt - level * moments.areaSqFt;
  return { boardFt: moments.boardFt, errorBoardFt: rising * (1 / Math.cos(Math.PI / RAYS) - 1) };
}
