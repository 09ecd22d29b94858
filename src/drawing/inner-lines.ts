import { distanceFt, toSegment } from '../core/geometry/vector.ts';
import type { Point, Ring } from '../core/report/types.ts';

const SAME_FT = 1e-2;

const key = (a: Point, b: Point): string => {
  const [p, q] = [a, b].map(([x, y]) => `${x.toFixed(2)},${y.toFixed(2)}`);
  return p < q ? `${p} ${q}` : `${q} ${p}`;
};

function liesOn(a: Point, b: Point, walls: readonly (readonly [Point, Point])[]): boolean {
  return walls.some(([p, q]) => toSegment(a, p, q).distanceFt < SAME_FT && toSegment(b, p, q).distanceFt < SAME_FT);
}

export const sidesOf = (ring: Ring): [Point, Point][] => ring.map((a, i) => [a, ring[(i + 1) % ring.length]]);

/** Sides of areas that are not the outline or a curb, each once although two areas share it. */
export function innerLines(areas: readonly Ring[], walls: readonly Ring[]): [Point, Point][] {
  const wallSides = walls.flatMap(sidesOf);
  const found = new Map<string, [Point, Point]>();
  for (const [a, b] of areas.flatMap(sidesOf)) {
    if (distanceFt(a, b) < SAME_FT || found.has(key(a, b)) || liesOn(a, b, wallSides)) continue;
    found.set(key(a, b), [a, b]);
  }
  return [...found.values()];
}
