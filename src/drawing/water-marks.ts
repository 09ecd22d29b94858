import { intersect, unite } from '../core/geometry/boolean.ts';
import { type Convex, cut } from '../core/geometry/convex.ts';
import { heightIn, planeOfTriangle } from '../core/geometry/plane.ts';
import { centroid, distanceFt, signedAreaSqFt } from '../core/geometry/vector.ts';
import { depthFigure } from '../core/report/page-figures.ts';
import type {
  ExistingReport,
  FlatReport,
  PlanReport,
  PondReport,
  Ring,
  SurfaceTriangle,
} from '../core/report/types.ts';
import { hatchLines } from './crossings.ts';
import { line, type Mark, placed, polygon } from './draw-list.ts';
import { around } from './fixtures.ts';
import type { FreeRoom } from './free-room.ts';
import { type Fill, waterDepthsIn } from './pens.ts';

/** The part of the surface that lies at least so far under a water level. */
function deeperThan(surface: readonly SurfaceTriangle[], levelIn: number, depthIn: number): Ring[] {
  return surface.flatMap(({ a, b, c, z }): Ring[] => {
    if (Math.min(...z) > levelIn - depthIn) return [];
    const plane = planeOfTriangle(a, b, c, ...z);
    const ring: Convex = signedAreaSqFt([a, b, c]) > 0 ? [a, b, c] : [a, c, b];
    const under = cut(ring, (p) => levelIn - depthIn - heightIn(plane, p));
    return under.length < 3 ? [] : [under];
  });
}

/** A pond in blue, darker where it is deeper, by the same steps on every drawing. */
function shading(pond: PondReport, surface: readonly SurfaceTriangle[]): Mark[] {
  const shore = polygon(pond.outline, 'water-0', 'shore', pond.holes);
  const lowIn = groundAt(pond, surface);
  if (lowIn === null) return [shore];
  const levelIn = lowIn + pond.greatestDepthIn;
  const steps = waterDepthsIn.flatMap((depthIn, i): Mark[] => {
    if (depthIn === 0 || depthIn >= pond.greatestDepthIn - 1e-6) return [];
    const rings = deeperThan(surface, levelIn, depthIn);
    if (rings.length === 0) return [];
    // Other low ground lies as deep without being this pond.
    const own = unite(rings).flatMap(({ outer, holes }) =>
      intersect([outer], [pond.outline]).map((region) => ({ outer: region.outer, holes: [...region.holes, ...holes] })),
    );
    return own.map(({ outer, holes }) => polygon(outer, `water-${i}` as Fill, null, holes));
  });
  return [shore, ...steps];
}

/** Height of the ground at a pond's deepest point, a vertex of the surface. */
function groundAt({ deepestAt }: PondReport, surface: readonly SurfaceTriangle[]): number | null {
  for (const { a, b, c, z } of surface) {
    const at = [a, b, c].findIndex((p) => distanceFt(p, deepestAt) < 1e-3);
    if (at >= 0) return z[at];
  }
  return null;
}

export const pondMarks = (ponds: readonly PondReport[], surface: readonly SurfaceTriangle[]): Mark[] =>
  ponds.flatMap((pond, i) => placed(`pond-${i + 1}`, shading(pond, surface)));

/** The depth at the deepest point of every pond that has the room. */
export function pondDepths(ponds: readonly PondReport[], letterFt: number, room: FreeRoom): Mark[] {
  return ponds.flatMap((pond, i) => {
    const text = `${depthFigure(pond.greatestDepthIn)} deep`;
    const spot: Mark = { kind: 'circle', at: pond.deepestAt, radiusFt: 0.12 * letterFt, pen: null, fill: 'ink' };
    const words = around(pond.deepestAt, text, letterFt, { tone: 'water', bold: true });
    return placed(`pond-${i + 1}`, [spot, ...room.place(words)]);
  });
}

/** Water that was seen but that no reading shows: blue where it was drawn, a spot where only the place is known. */
export function seenMarks({ seenPonds }: PlanReport, letterFt: number, room: FreeRoom): Mark[] {
  return seenPonds.flatMap(({ at, outline, depthIn }): Mark[] => {
    const middle = at ?? (outline === null ? null : centroid(outline));
    if (middle === null) return [];
    const shape: Mark =
      outline === null
        ? { kind: 'circle', at: middle, radiusFt: 0.9 * letterFt, pen: 'shore', fill: 'water-0' }
        : polygon(outline, 'water-0', 'shore');
    const text = depthIn === null ? 'water seen' : `seen ${depthFigure(depthIn)} deep`;
    return [shape, ...room.place(around(middle, text, letterFt, { tone: 'water', bold: true }))];
  });
}

/** Level ground hatched, level valleys and walls as a broken line. */
export function flatMarks(flats: readonly FlatReport[], letterFt: number): Mark[] {
  return flats.flatMap(({ outline, line: along }): Mark[] => [
    ...(outline === null ? [] : hatchLines([outline], 0.55 * letterFt).map(([a, b]) => line(a, b, 'hatch'))),
    ...(along === null ? [] : [line(along[0], along[1], 'flat')]),
  ]);
}

export function flatWords(existing: ExistingReport, letterFt: number, room: FreeRoom): Mark[] {
  const largest = [...existing.flats].sort((a, b) => (b.areaSqFt ?? 0) - (a.areaSqFt ?? 0))[0];
  if (largest?.outline == null || (largest.areaSqFt ?? 0) < 4 * letterFt ** 2) return [];
  return room.place(around(centroid(largest.outline), 'level', letterFt, { size: 'small' }));
}
