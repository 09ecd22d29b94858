import { buildSection } from '../src/core/geometry/section.ts';
import type { Point, Ring } from '../src/core/roof.ts';
import { envelope } from '../src/core/taper/envelope.ts';
import { slopePattern } from '../src/core/taper/pattern.ts';

/** 40 x 40 ft less its upper right quarter: the plainest outline with an inside corner. */
export const lShape: Ring = [
  [0, 0],
  [40, 0],
  [40, 20],
  [20, 20],
  [20, 40],
  [0, 40],
];

/** 60 x 40 ft less the upper middle: two arms that do not see each other. */
export const uShape: Ring = [
  [0, 0],
  [60, 0],
  [60, 40],
  [40, 40],
  [40, 15],
  [20, 15],
  [20, 40],
  [0, 40],
];

/** Distance to one point, by the lowest surface of a 96-sided cone: short by at most 0.05 %. */
export function distanceTo(outline: Ring, at: Point, to: Point): number {
  const section = buildSection(outline, [], [at, to]);
  const pattern = slopePattern(Array.from({ length: 96 }, (_, i) => ({ bearingDeg: (360 * i) / 96, riseInPerFt: 1 })));
  const patches = envelope(section, [{ id: 'D', kind: 'point', at, levelIn: 0, pattern }]);
  const near = patches.flatMap(({ ring, plane }) =>
    ring
      .filter(([x, y]) => Math.hypot(x - to[0], y - to[1]) < 1e-4)
      .map(([x, y]) => plane.atOriginIn + plane.gx * x + plane.gy * y),
  );
  return Math.min(...near);
}
