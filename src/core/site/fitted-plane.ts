import { math } from '../../units/mathjs.ts';
import type { Plane } from '../geometry/plane.ts';
import type { Reading } from './readings.ts';

/**
 * Plane of least squares through readings, in over ft.
 * @returns null where the readings do not span a plane (fewer than three, or all on one line)
 * Source: normal equations, solved by the mathematics library.
 */
export function fittedPlane(readings: readonly Reading[]): Plane | null {
  const n = readings.length;
  if (n < 3) return null;
  const mean = (f: (r: Reading) => number): number => readings.reduce((sum, r) => sum + f(r), 0) / n;
  const [mx, my, mz] = [mean((r) => r.at[0]), mean((r) => r.at[1]), mean((r) => r.zIn)];
  const sum = (f: (x: number, y: number, z: number) => number): number =>
    readings.reduce((s, { at, zIn }) => s + f(at[0] - mx, at[1] - my, zIn - mz), 0);
  const [xx, xy, yy] = [sum((x) => x * x), sum((x, y) => x * y), sum((_, y) => y * y)];
  if (xx * yy - xy * xy < 1e-9 * Math.max(xx * yy, 1e-9)) return null;
  const solved = math.lusolve(
    [
      [xx, xy],
      [xy, yy],
    ],
    [sum((x, _, z) => x * z), sum((_, y, z) => y * z)],
  ) as number[][];
  const [gx, gy] = [solved[0][0], solved[1][0]];
  return { atOriginIn: mz - gx * mx - gy * my, gx, gy };
}
