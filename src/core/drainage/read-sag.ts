import { heightIn } from '../geometry/plane.ts';
import type { Point } from '../roof.ts';
import { fittedPlane } from '../site/fitted-plane.ts';
import type { Reading } from '../site/readings.ts';

/** How far a surface that was read hangs below the straight line between its high places. */
export interface ReadSag {
  sagIn: number;
  at: Point;
}

/**
 * Depth [in] of the deepest reading under the plane of least squares that is raised until no reading stands above it.
 * Readings hold today's sag and whatever the deck was built to; the two cannot be told apart from above.
 * @returns null where the readings span no plane
 */
export function readSag(readings: readonly Reading[]): ReadSag | null {
  const plane = fittedPlane(readings);
  if (plane === null) return null;
  const over = readings.map(({ at, zIn }) => ({ at, overIn: zIn - heightIn(plane, at) }));
  const top = Math.max(...over.map(({ overIn }) => overIn));
  const low = over.reduce((a, b) => (b.overIn < a.overIn ? b : a));
  return { sagIn: top - low.overIn, at: low.at };
}
