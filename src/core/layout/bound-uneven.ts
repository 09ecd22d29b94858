import { split } from '../geometry/convex.ts';
import { heightIn, slopeInPerFt as slopeOf } from '../geometry/plane.ts';
import type { Section } from '../geometry/section.ts';
import { between, boxOf, centroid, distanceFt, orient, signedAreaSqFt, toSegment } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';
import { cellsNear, gridNet } from '../surface/grid-net.ts';
import { leastPathHeights } from '../surface/least-path.ts';
import type { Patch } from '../surface/patch.ts';
import type { TaperOutlet } from '../taper/sources.ts';

function heightAt(patches: readonly Patch[], p: Point): number {
  let least = Number.POSITIVE_INFINITY;
  for (const { ring, plane } of patches)
    if (ring.every((a, i) => orient(a, ring[(i + 1) % ring.length], p) >= -1e-4))
      least = Math.min(least, heightIn(plane, p));
  return least;
}

/** Stretches of an edge over uneven ground are no longer than this: the lower end stands for each. */
const STRETCH_FT = 3;

/** Starts at the heights of the finished boards; an edge in stretches, each at its lower end. */
export function finishedStarts(
  section: Section,
  ground: readonly Patch[],
  starts: readonly TaperOutlet[],
): TaperOutlet[] {
  return starts.flatMap((start): TaperOutlet[] => {
    const { levelIn } = start;
    if (start.kind === 'point') return [{ ...start, levelIn: levelIn + heightAt(ground, start.at) }];
    const on = (p: Point): boolean => toSegment(p, start.from, start.to).distanceFt < 1e-4;
    const at = (p: Point): number => toSegment(p, start.from, start.to).t;
    const knots = section.triangulation.points.filter(on).sort((a, b) => at(a) - at(b));
    const stops = knots.flatMap((p, i): Point[] => {
      if (i + 1 === knots.length) return [p];
      const parts = Math.max(1, Math.ceil(distanceFt(p, knots[i + 1]) / STRETCH_FT));
      return Array.from({ length: parts }, (_, k) => between(p, knots[i + 1], k / parts));
    });
    return stops.slice(1).map((to, i) => {
      const from = stops[i];
      return { ...start, from, to, levelIn: levelIn + Math.min(heightAt(ground, from), heightAt(ground, to)) };
    });
  });
}

/** Board feet between a deck and a surface over it, nowhere thinner than the thinnest board. */
export function atLeast(over: readonly Patch[], leastIn: number): number {
  return over.reduce((sum, { ring, plane }) => {
    const steep = Math.max(slopeOf(plane), 1e-12);
    const [thick, thin] = split(ring, (p) => (heightIn(plane, p) - leastIn) / steep);
    const part = thick.length === 0 ? 0 : signedAreaSqFt(thick) * heightIn(plane, centroid(thick));
    return sum + part + (thin.length === 0 ? 0 : signedAreaSqFt(thin) * leastIn);
  }, 0);
}

/** Cells of the grid on which the least-path rule is followed. */
const GRID_CELLS = 1600;

/** The least-path rule on a grid of 16 neighbours: its ways are too long by up to 2.8 %, so it comes out too thick. */
export function onGrid(
  section: Section,
  base: readonly Patch[],
  starts: readonly TaperOutlet[],
  slope: number,
  leastIn: number,
): number {
  const stepFt = Math.sqrt(section.areaSqFt / GRID_CELLS);
  const net = gridNet(section.rings, stepFt, 16);
  const deck = new Float64Array(net.points.length).fill(Number.POSITIVE_INFINITY);
  for (const patch of base) {
    const inside = net.within(boxOf(patch.ring));
    for (const place of inside) deck[place] = Math.min(deck[place], heightAt([patch], net.points[place]));
  }
  const from = starts.flatMap((start) => {
    if (start.kind === 'point')
      return cellsNear(net, section.rings, start.at).map(({ place, lengthFt }) => ({
        place,
        levelIn: start.levelIn + slope * lengthFt,
      }));
    return net.points.flatMap((p, place) => {
      const { distanceFt } = toSegment(p, start.from, start.to);
      return distanceFt > stepFt ? [] : [{ place, levelIn: start.levelIn + slope * distanceFt }];
    });
  });
  const least = deck.map((z) => z + leastIn);
  const heights = leastPathHeights(net, least, from, slope);
  let sum = 0;
  let reached = 0;
  heights.forEach((z, i) => {
    if (z === Number.POSITIVE_INFINITY || !Number.isFinite(deck[i])) return;
    sum += z - deck[i];
    reached++;
  });
  return reached === 0 ? 0 : (sum / reached) * section.areaSqFt;
}
