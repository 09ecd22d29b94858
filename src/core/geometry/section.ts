import type { Point, Ring } from '../roof.ts';
import { type Region, subtract } from './boolean.ts';
import { Joints } from './joints.ts';
import { type Triangulation, triangulate } from './triangulation.ts';
import { isInside, signedAreaSqFt, snap } from './vector.ts';

/**
 * The section as water sees it: outline minus curbs, triangulated.
 * Regions that touch in a point only are apart: water does not pass through a point.
 */
export interface Section {
  regions: readonly Region[];
  rings: readonly Ring[];
  triangulation: Triangulation;
  areaSqFt: number;
}

/** Rings whose points are joined and whose edges carry every point that lies on them. */
function noded(rings: readonly Ring[], extra: readonly Point[]): { rings: Ring[]; extra: Point[] } {
  const joints = new Joints(1);
  const loops = rings.map((ring) => ring.map((p) => joints.add(p)));
  const onRings = joints.points.length;
  const ids = extra.map((p) => joints.add(p));
  const used = new Set<number>();
  const full = loops.map((loop) => {
    const clean = loop.filter((id, i) => id !== loop[(i + 1) % loop.length]);
    const all = clean.flatMap((id, i) => [id, ...joints.on(id, clean[(i + 1) % clean.length])]);
    for (const id of all) used.add(id);
    return all.map((id) => joints.points[id]);
  });
  const loose = [...new Set(ids)].filter((id) => id >= onRings && !used.has(id));
  return { rings: full.filter((ring) => ring.length >= 3), extra: loose.map((id) => joints.points[id]) };
}

/**
 * Outline minus curbs on the 1e-6 ft grid, with the given points as corners or inner points.
 * @param points outlets, ends of edge outlets, readings: each becomes a vertex where it lies in or on the section
 */
export function buildSection(outline: Ring, curbs: readonly Ring[], points: readonly Point[] = []): Section {
  const regions = subtract(
    [outline.map(snap)],
    curbs.map((curb) => curb.map(snap)),
  );
  const bare = regions.flatMap((region) => [region.outer, ...region.holes]).map((ring) => ring.map(snap));
  const { rings, extra } = noded(bare, points.map(snap));
  const inner = extra.filter((p) => isInside(p, rings));
  const areaSqFt = rings.reduce((sum, ring) => sum + signedAreaSqFt(ring), 0);
  return { regions, rings, triangulation: triangulate(rings, inner), areaSqFt };
}
