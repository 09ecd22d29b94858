import { intersect } from '../geometry/boolean.ts';
import { type Convex, intersectConvex } from '../geometry/convex.ts';
import { heightIn, LEVEL, type Plane, planeOfTriangle, planeThrough } from '../geometry/plane.ts';
import type { Section } from '../geometry/section.ts';
import { type Triangulation, triangulate } from '../geometry/triangulation.ts';
import { bearingVector, dot, isInside, orient, signedAreaSqFt } from '../geometry/vector.ts';
import type { Assumption } from '../report/types.ts';
import type { DeckPlane, Point, Ring, Roof } from '../roof.ts';
import type { Patch } from '../surface/patch.ts';
import { sagAtIn, sagged, sagShape } from './joist-sag.ts';
import { between, type Reading, readingsOf } from './readings.ts';

/** The surface as it was measured (heights above the file's height zero). */
export interface MeasuredSurface {
  patches: Patch[];
  /** Height at any point of it; in. */
  at: (p: Point) => number;
  readings: readonly Reading[];
  /** Square grids of readings: pairs of triangles whose common diagonal is a free choice. */
  choices: readonly { centre: Point; otherDiagonal: readonly Patch[]; patches: readonly Patch[] }[];
  /** Sag of the joists that the file adds to its planes: how deep and where, and the surface without it. */
  sag?: { sagIn: number; at: Point; straight: readonly Patch[]; straightAt: (p: Point) => number };
  assumed: Assumption[];
}

const trianglesOf = ({ points, corners }: Triangulation): Convex[] => {
  const out: Convex[] = [];
  for (let i = 0; i < corners.length; i += 3)
    out.push([points[corners[i]], points[corners[i + 1]], points[corners[i + 2]]]);
  return out;
};

const findPatch = (patches: readonly Patch[]): ((p: Point) => number) => {
  return (p) => {
    const hit = patches.find(({ ring }) => ring.every((a, i) => orient(a, ring[(i + 1) % ring.length], p) >= -1e-7));
    return hit === undefined ? 0 : heightIn(hit.plane, p);
  };
};

/** The measured surface over the section. Unknown is taken as level, and listed. */
export function measuredSurface(roof: Roof, section: Section): MeasuredSurface {
  const { surface } = roof.existing;
  if (surface.kind === 'planes') return planesSurface(surface.planes, roof, section);
  const readings = readingsOf(roof);
  if (readings.length > 0) return readingsSurface(readings, section);
  const assumed: Assumption[] =
    surface.kind === 'unknown'
      ? [
          {
            path: 'existing',
            value: 'level',
            because: 'the surface was not measured',
            findOut: 'a laser or a string line over a 4 to 8 ft grid',
          },
        ]
      : [];
  const patches = trianglesOf(section.triangulation).map((ring) => ({ ring, plane: LEVEL, outlet: '' }));
  return { patches, at: () => 0, readings: [], choices: [], assumed };
}

/** The same surface with the sag of the file's joists in it. Readings hold theirs already. */
export function withSag(measured: MeasuredSurface, roof: Roof, outline: Ring): MeasuredSurface {
  const { sag, surface } = roof.existing;
  if (sag === null || surface.kind === 'readings') return measured;
  const shape = sagShape(sag, roof.deck.joists, outline);
  const patches = sagged(measured.patches, shape);
  const lowest = patches
    .flatMap(({ ring }) => ring)
    .reduce((a, b) => (sagAtIn(shape, b) < sagAtIn(shape, a) - 1e-9 ? b : a));
  return {
    ...measured,
    patches,
    at: (p) => measured.at(p) + sagAtIn(shape, p),
    sag: { sagIn: shape.depthIn, at: lowest, straight: measured.patches, straightAt: measured.at },
    assumed: [...measured.assumed, ...shape.assumed],
  };
}

function fallDirection(plane: DeckPlane, outline: Ring): Point {
  if ('bearingDeg' in plane.fallsToward) return bearingVector(plane.fallsToward.bearingDeg);
  const { side } = plane.fallsToward;
  const [a, b] = [outline[side], outline[(side + 1) % outline.length]];
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const n: Point = [(b[1] - a[1]) / length, (a[0] - b[0]) / length];
  // Out of the section: the side's outer normal, whichever way the outline was walked.
  const mid: Point = [(a[0] + b[0]) / 2 + n[0] * 1e-3, (a[1] + b[1]) / 2 + n[1] * 1e-3];
  return isInside(mid, [outline]) ? [-n[0], -n[1]] : n;
}

/** A plane of the roof file as heights over the section; without a known point its lowest corner is height zero. */
export function deckPlane(plane: DeckPlane, outline: Ring): Plane {
  const down = fallDirection(plane, outline);
  const [gx, gy] = [-down[0] * plane.slopeInPerFt, -down[1] * plane.slopeInPerFt];
  if (plane.through !== null) return planeThrough([plane.through[0], plane.through[1]], plane.through[2], gx, gy);
  const lowest = [...(plane.where ?? outline)].sort((p, q) => dot(q, down) - dot(p, down))[0];
  return planeThrough(lowest, 0, gx, gy);
}

function planesSurface(planes: readonly DeckPlane[], roof: Roof, section: Section): MeasuredSurface {
  const cells = trianglesOf(section.triangulation);
  const patches: Patch[] = [];
  for (const given of planes) {
    const plane = deckPlane(given, roof.outline);
    if (given.where === null) {
      patches.push(...cells.map((ring) => ({ ring, plane, outlet: '' })));
      continue;
    }
    const where = signedAreaSqFt(given.where) > 0 ? given.where : [...given.where].reverse();
    const zones = intersect([where], section.rings.slice(0, 1)).length > 0 ? trianglesOf(triangulate([where])) : [];
    for (const zone of zones) {
      for (const cell of cells) {
        const ring = intersectConvex(cell, zone);
        if (ring.length > 0) patches.push({ ring, plane, outlet: '' });
      }
    }
  }
  return { patches, at: findPatch(patches), readings: [], choices: [], assumed: [] };
}

function readingsSurface(readings: readonly Reading[], section: Section): MeasuredSurface {
  const at = between(readings);
  const { points } = section.triangulation;
  const heights = points.map((p) => at(p));
  const outside = section.rings.flat().filter((p) => !at(p).inside);
  const assumed: Assumption[] =
    outside.length === 0
      ? []
      : [
          {
            path: 'existing.readings',
            value: `nearest reading at ${outside.length} corner${outside.length === 1 ? '' : 's'}`,
            because: 'no reading was taken there',
            findOut: 'a reading at every corner',
          },
        ];
  const z = heights.map(({ zIn }) => zIn);
  const { mesh, quads } = withHighDiagonals(section.triangulation, z);
  const patchOf = (ids: readonly number[]): Patch => {
    const ring = ids.map((id) => mesh.points[id]);
    return { ring, plane: planeOfTriangle(ring[0], ring[1], ring[2], z[ids[0]], z[ids[1]], z[ids[2]]), outlet: '' };
  };
  const triangle = (t: number): number[] => [0, 1, 2].map((k) => mesh.corners[3 * t + k]);
  const patches = Array.from({ length: mesh.corners.length / 3 }, (_, t) => patchOf(triangle(t)));
  const choices = quads.map(({ t, u, ring }) => ({
    centre: [
      ring.reduce((s, id) => s + mesh.points[id][0], 0) / 4,
      ring.reduce((s, id) => s + mesh.points[id][1], 0) / 4,
    ] as Point,
    patches: [patches[t], patches[u]],
    otherDiagonal: [patchOf([ring[0], ring[1], ring[3]]), patchOf([ring[1], ring[2], ring[3]])],
  }));
  return { patches, at: (p) => at(p).zIn, readings, choices, assumed };
}

interface Quad {
  t: number;
  u: number;
  /** Corners counter-clockwise; the diagonal in use joins the first and the third. */
  ring: number[];
}

/**
 * Four readings on one circle have no preferred diagonal. The higher one is taken: it dams, so it never hides a pond.
 */
function withHighDiagonals(mesh: Triangulation, z: readonly number[]): { mesh: Triangulation; quads: Quad[] } {
  const corners = mesh.corners.slice();
  const across = mesh.across.slice();
  const edges = (t: number): [number, number, number] => [corners[3 * t], corners[3 * t + 1], corners[3 * t + 2]];
  const quadAt = (slot: number): Quad | null => {
    const t = Math.floor(slot / 3);
    const u = across[slot];
    if (u < 0) return null;
    const a = corners[slot];
    const b = corners[3 * t + ((slot + 1) % 3)];
    const c = corners[3 * t + ((slot + 2) % 3)];
    const d = edges(u).find((id) => id !== a && id !== b);
    if (d === undefined) return null;
    const ring = [a, d, b, c];
    const p = ring.map((id) => mesh.points[id]);
    const convex = p.every((_, i) => orient(p[i], p[(i + 1) % 4], p[(i + 2) % 4]) > 0);
    return convex && onOneCircle(p) ? { t, u, ring } : null;
  };
  const relink = ({ t, u, ring: [a, d, b, c] }: Quad): void => {
    const outer = new Map<string, number>();
    for (const x of [t, u])
      for (let k = 0; k < 3; k++)
        outer.set(`${corners[3 * x + k]},${corners[3 * x + ((k + 1) % 3)]}`, across[3 * x + k]);
    const set = (x: number, ids: number[], other: number): void => {
      ids.forEach((id, k) => {
        corners[3 * x + k] = id;
        const next = ids[(k + 1) % 3];
        const neighbour = outer.get(`${id},${next}`);
        across[3 * x + k] = neighbour ?? other;
        if (neighbour === undefined || neighbour < 0) return;
        for (let m = 0; m < 3; m++) {
          if (corners[3 * neighbour + m] === next && corners[3 * neighbour + ((m + 1) % 3)] === id)
            across[3 * neighbour + m] = x;
        }
      });
    };
    set(t, [d, b, c], u);
    set(u, [c, a, d], t);
  };
  for (let pass = 0; pass < 8; pass++) {
    let changed = false;
    for (let slot = 0; slot < corners.length; slot++) {
      const quad = quadAt(slot);
      if (quad === null) continue;
      const [a, d, b, c] = quad.ring;
      if (z[c] + z[d] > z[a] + z[b] + 1e-9) {
        relink(quad);
        changed = true;
      }
    }
    if (!changed) break;
  }
  const quads: Quad[] = [];
  for (let slot = 0; slot < corners.length; slot++) {
    const quad = quadAt(slot);
    if (quad === null || quad.t > quad.u) continue;
    const [a, d, b, c] = quad.ring;
    if (Math.abs(z[c] + z[d] - z[a] - z[b]) > 1e-9) quads.push(quad);
  }
  return { mesh: { points: mesh.points, corners, across }, quads };
}

function onOneCircle(p: readonly Point[]): boolean {
  const [ax, ay] = [p[0][0] - p[3][0], p[0][1] - p[3][1]];
  const [bx, by] = [p[1][0] - p[3][0], p[1][1] - p[3][1]];
  const [cx, cy] = [p[2][0] - p[3][0], p[2][1] - p[3][1]];
  const det =
    (ax * ax + ay * ay) * (bx * cy - cx * by) -
    (bx * bx + by * by) * (ax * cy - cx * ay) +
    (cx * cx + cy * cy) * (ax * by - bx * ay);
  const size = Math.max(ax * ax + ay * ay, bx * bx + by * by, cx * cx + cy * cy);
  return Math.abs(det) < 1e-9 * size * size;
}
