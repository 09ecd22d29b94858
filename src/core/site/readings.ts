import Delaunator from 'delaunator';
import { distanceFt, GRID_FT, orient, between as pointBetween, toSegment } from '../geometry/vector.ts';
import type { ExistingSurface, Point, Roof, StringLine } from '../roof.ts';

export interface Reading {
  at: Point;
  zIn: number;
}

type Readings = Extract<ExistingSurface, { kind: 'readings' }>;

/**
 * Heights [in] under a string: its own height there, less how far it hangs, less the gap under it. A string hangs as a
 * parabola, deepest at its middle. Two ends without heights are level at height zero.
 */
export function underString({ from, to, fromIn, toIn, sagIn, readings }: StringLine): Reading[] {
  const [startIn, endIn] = [fromIn ?? 0, toIn ?? 0];
  const lengthFt = distanceFt(from, to);
  return readings.map(([alongFt, gapIn]) => {
    const t = alongFt / lengthFt;
    const hangsIn = 4 * (sagIn ?? 0) * t * (1 - t);
    return { at: pointBetween(from, to, t), zIn: startIn + (endIn - startIn) * t - hangsIn - gapIn };
  });
}

/** Readings at spots as heights: a longer rod or a higher mark on the tube is a lower spot. */
function atSpots({ readings, sense, referenceIn }: Readings): Reading[] {
  const zeroIn = sense === 'rod' ? Math.max(...readings.map(([, , value]) => value)) : (referenceIn ?? 0);
  return readings.map(([x, y, value]) => ({ at: [x, y], zIn: sense === 'height' ? value : zeroIn - value }));
}

/** One height at each spot: the mean of several, which the input let pass as one. */
function onePerSpot(readings: readonly Reading[]): Reading[] {
  const spots = new Map<string, Reading[]>();
  for (const reading of readings) {
    const key = spotKey(reading.at);
    spots.set(key, [...(spots.get(key) ?? []), reading]);
  }
  return [...spots.values()].map((spot) => ({
    at: spot[0].at,
    zIn: spot.reduce((sum, { zIn }) => sum + zIn, 0) / spot.length,
  }));
}

/** Name of a spot on the plan grid: two readings with one name were taken at one spot. */
export const spotKey = ([x, y]: Point): string => `${Math.round(x / GRID_FT)} ${Math.round(y / GRID_FT)}`;

/**
 * All readings of a surface as heights [in], whichever instrument read them; none for a surface that was not read.
 * Correctness: tests/unit/survey/instruments.test.ts (one plane, read three ways)
 */
export function heightsRead(surface: ExistingSurface): Reading[] {
  if (surface.kind !== 'readings') return [];
  return onePerSpot([...atSpots(surface), ...surface.strings.flatMap(underString)]);
}

export const readingsOf = (roof: Roof): Reading[] => heightsRead(roof.existing.surface);

/**
 * Height between readings: straight within the triangles of the readings; outside their hull the value of its
 * nearest point, said by `inside: false`.
 * @param readings at least one, no two at one spot
 */
export function between(readings: readonly Reading[]): (p: Point) => { zIn: number; inside: boolean } {
  const points = readings.map(({ at }) => at);
  const flat = Delaunator.from(points as [number, number][]);
  const triangles: number[][] = [];
  for (let i = 0; i < flat.triangles.length; i += 3) triangles.push([...flat.triangles.slice(i, i + 3)]);
  const hull = triangles.length > 0 ? [...flat.hull] : order(points);
  const segments = hull.map((a, i) => [a, hull[(i + 1) % hull.length]]);
  return (p) => {
    for (const [a, b, c] of triangles) {
      const whole = orient(points[a], points[b], points[c]);
      const parts = [orient(points[b], points[c], p), orient(points[c], points[a], p), orient(points[a], points[b], p)];
      const shares = parts.map((part) => part / whole);
      if (shares.some((share) => share < -1e-9)) continue;
      const zIn = [a, b, c].reduce((sum, id, k) => sum + shares[k] * readings[id].zIn, 0);
      return { zIn, inside: true };
    }
    let best = { zIn: readings[0].zIn, distanceFt: Number.POSITIVE_INFINITY };
    for (const [a, b] of segments) {
      const near = toSegment(p, points[a], points[b]);
      const zIn = readings[a].zIn + (readings[b].zIn - readings[a].zIn) * near.t;
      if (near.distanceFt < best.distanceFt) best = { zIn, distanceFt: near.distanceFt };
    }
    return { zIn: best.zIn, inside: best.distanceFt < 1e-6 };
  };
}

/** Readings on one line have no triangles: take them in order along it. */
function order(points: readonly Point[]): number[] {
  return points.map((_, i) => i).sort((i, j) => points[i][0] - points[j][0] || points[i][1] - points[j][1]);
}
