import { boxOf, cross, dot } from '../core/geometry/vector.ts';
import type { Point, Ring } from '../core/report/types.ts';

/** A straight line over the plan: a point on it and its unit direction. */
export interface Ray {
  at: Point;
  toward: Point;
}

export const alongRay = ({ at, toward }: Ray, t: number): Point => [at[0] + toward[0] * t, at[1] + toward[1] * t];

/** Stretches of a line inside a polygon (even-odd over all its rings), as distances from the line's point. */
export function stretchesInside(ray: Ray, rings: readonly Ring[]): [from: number, to: number][] {
  const hits: number[] = [];
  for (const ring of rings) {
    ring.forEach((a, i) => {
      const b = ring[(i + 1) % ring.length];
      const [pa, pb] = [a, b].map((p): Point => [p[0] - ray.at[0], p[1] - ray.at[1]]);
      const [sa, sb] = [cross(ray.toward, pa), cross(ray.toward, pb)];
      if (sa > 0 === sb > 0) return;
      const t = sa / (sa - sb);
      hits.push(dot(ray.toward, [pa[0] + (pb[0] - pa[0]) * t, pa[1] + (pb[1] - pa[1]) * t]));
    });
  }
  hits.sort((a, b) => a - b);
  const out: [number, number][] = [];
  for (let i = 0; i + 1 < hits.length; i += 2) if (hits[i + 1] - hits[i] > 1e-6) out.push([hits[i], hits[i + 1]]);
  return out;
}

const SLANT: Point = [Math.SQRT1_2, Math.SQRT1_2];

/** Lines of one direction that fill a polygon, slanting unless said otherwise. */
export function hatchLines(rings: readonly Ring[], spacingFt: number, toward: Point = SLANT): [Point, Point][] {
  if (rings.length === 0 || rings[0].length < 3) return [];
  const box = boxOf(rings[0]);
  const normal: Point = [-toward[1], toward[0]];
  const corners: Point[] = [
    [box.minX, box.minY],
    [box.maxX, box.minY],
    [box.minX, box.maxY],
    [box.maxX, box.maxY],
  ];
  const offs = corners.map((p) => dot(normal, p));
  const out: [Point, Point][] = [];
  for (let k = Math.ceil(Math.min(...offs) / spacingFt); k * spacingFt <= Math.max(...offs); k++) {
    const ray: Ray = { at: [normal[0] * k * spacingFt, normal[1] * k * spacingFt], toward };
    for (const [from, to] of stretchesInside(ray, rings)) out.push([alongRay(ray, from), alongRay(ray, to)]);
  }
  return out;
}
