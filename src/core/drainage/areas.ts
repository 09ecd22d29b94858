import { type Convex, cut, isSliver } from '../geometry/convex.ts';
import { slopeInPerFt } from '../geometry/plane.ts';
import { nextSlot, twinSlot } from '../geometry/triangulation.ts';
import { cross, distanceFt, signedAreaSqFt } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';
import { LEVEL_IN_PER_FT, runsAgainst } from '../surface/creases.ts';
import type { Flood, Offer } from '../surface/flood.ts';
import type { SurfaceMesh } from '../surface/mesh.ts';

/** Water that no outlet takes. */
export const NOWHERE = '';

export interface AreaPiece {
  ring: Convex;
  outlet: string;
}

interface Setting {
  mesh: SurfaceMesh;
  water: Flood;
  offers: readonly Offer[];
  /** Outlet over which water leaves at a boundary edge, or null where the edge is closed. */
  openAt: (slot: number) => string | null;
}

/** Where a drop can go from a vertex: along an edge to its other end, or down into a triangle. */
type Way = { vertex: number } | { slot: number };

/** Slopes nearer than this are one slope. */
const SAME_SLOPE = 1e-9;

const MAX_STEPS = 10_000;

/** Follows a drop: down the plane, along valleys and walls, at a vertex the steepest way out. */
class Trickle {
  readonly #s: Setting;
  readonly #memo = new Map<number, string>();
  readonly #slots: number[][];
  readonly #openVertex = new Map<number, string>();

  constructor(setting: Setting) {
    this.#s = setting;
    const { mesh } = setting;
    this.#slots = mesh.points.map(() => []);
    for (let slot = 0; slot < mesh.corners.length; slot++) {
      this.#slots[mesh.corners[slot]].push(slot);
      const outlet = mesh.across[slot] < 0 ? setting.openAt(slot) : null;
      if (outlet === null) continue;
      this.#openVertex.set(mesh.corners[slot], outlet);
      this.#openVertex.set(mesh.corners[nextSlot(slot)], outlet);
    }
  }

  /** Outlet by which the lowest way out of a vertex leaves. */
  byFlood(v: number): string {
    const i = this.#s.water.offer[v];
    return i < 0 ? NOWHERE : this.#s.offers[i].outlet;
  }

  fromVertex(v: number): string {
    const path: number[] = [];
    let at = v;
    let label: string | null = null;
    for (let step = 0; step < MAX_STEPS && label === null; step++) {
      const known = this.#memo.get(at);
      if (known !== undefined) {
        label = known;
        break;
      }
      path.push(at);
      const next = this.#leave(at);
      if (typeof next === 'string') label = next;
      else at = next;
    }
    const found = label ?? this.byFlood(v);
    for (const p of path) this.#memo.set(p, found);
    return found;
  }

  /** The outlet at a vertex, or the vertex that a drop comes to next. */
  #leave(v: number): string | number {
    const { mesh, water, offers } = this.#s;
    const open = this.#openVertex.get(v);
    const root = water.toward[v] < 0 && water.offer[v] >= 0;
    const flush = root && offers[water.offer[v]].levelIn <= mesh.z[v] + 1e-6;
    if (flush) return offers[water.offer[v]].outlet;
    if (open !== undefined) return open;
    const ways = this.#steepestWays(v, () => true);
    if (ways.length === 0) return root ? offers[water.offer[v]].outlet : this.#spill(v);
    return this.#go(ways);
  }

  #go(ways: readonly Way[]): string | number {
    if (ways.length === 1) return this.#follow(ways[0]);
    // Equally steep ways: the water of the earlier outlet in the file.
    const outlets = ways.map((way) => {
      const next = this.#follow(way);
      return typeof next === 'string' ? next : this.fromVertex(next);
    });
    return outlets.reduce((a, b) => (this.#order(b) < this.#order(a) ? b : a));
  }

  #order(outlet: string): number {
    const at = this.#s.offers.findIndex((offer) => offer.outlet === outlet);
    return at < 0 ? Number.POSITIVE_INFINITY : at;
  }

  #follow(way: Way): string | number {
    return 'vertex' in way ? way.vertex : this.#across(way.slot);
  }

  /**
   * Down an edge or down into a triangle: whichever falls most, and all that fall as much.
   * @param allowed which vertices a way may lead to; a way into a triangle leads to its lower far corner
   */
  #steepestWays(v: number, allowed: (vertex: number) => boolean): Way[] {
    const { mesh } = this.#s;
    const ways = new Map<string, { way: Way; slope: number }>();
    for (const slot of this.#slots[v]) {
      const [a, b] = [mesh.corners[nextSlot(slot)], mesh.corners[nextSlot(nextSlot(slot))]];
      for (const vertex of [a, b]) {
        if (!allowed(vertex)) continue;
        const slope = (mesh.z[v] - mesh.z[vertex]) / distanceFt(mesh.points[v], mesh.points[vertex]);
        ways.set(`v${vertex}`, { way: { vertex }, slope });
      }
      if (this.#fallsInto(slot) && allowed(mesh.z[a] < mesh.z[b] ? a : b))
        ways.set(`s${slot}`, { way: { slot }, slope: slopeInPerFt(mesh.patch[Math.floor(slot / 3)].plane) });
    }
    const steepest = Math.max(...[...ways.values()].map(({ slope }) => slope));
    if (steepest <= LEVEL_IN_PER_FT) return [];
    return [...ways.values()].filter(({ slope }) => slope > steepest - SAME_SLOPE).map(({ way }) => way);
  }

  /** The plane falls from this corner into its own triangle. */
  #fallsInto(slot: number): boolean {
    const { points, corners, patch } = this.#s.mesh;
    const [p, a, b] = [corners[slot], corners[nextSlot(slot)], corners[nextSlot(nextSlot(slot))]].map((i) => points[i]);
    const { gx, gy } = patch[Math.floor(slot / 3)].plane;
    const down: Point = [-gx, -gy];
    return cross([a[0] - p[0], a[1] - p[1]], down) > 1e-9 && cross(down, [b[0] - p[0], b[1] - p[1]]) > 1e-9;
  }

  /** A filled pond leaves by its spill vertex, the steepest way that does not lead back into it. */
  #spill(v: number): string | number {
    const { mesh, water } = this.#s;
    const level = water.levelIn[v];
    let at = v;
    while (water.toward[at] >= 0 && mesh.z[water.toward[at]] >= level - 1e-9) at = water.toward[at];
    const next = water.toward[at];
    if (next < 0 || at === v || water.levelIn[next] >= level - 1e-9) return this.byFlood(v);
    const ways = this.#steepestWays(at, (vertex) => water.levelIn[vertex] < level - 1e-9);
    return ways.length === 0 ? next : this.#go(ways);
  }

  /** From a corner straight down its triangle to the far edge, and on. */
  #across(slot: number): string | number {
    const { mesh } = this.#s;
    return this.downFrom(mesh.points[mesh.corners[slot]], nextSlot(slot));
  }

  /** From a point down its plane through the edge at `exit`, until a valley, a wall or a vertex takes the drop. */
  downFrom(start: Point, exit: number): string | number {
    const { mesh, openAt } = this.#s;
    let p = start;
    let slot = exit;
    for (let step = 0; step < MAX_STEPS; step++) {
      const q = hitOf(mesh, p, slot);
      const twin = twinSlot(mesh, slot);
      if (twin < 0) return openAt(slot) ?? this.lowEnd(slot);
      if (runsAgainst(mesh, twin) > -LEVEL_IN_PER_FT) return this.lowEnd(slot);
      p = q;
      slot = exitOf(mesh, q, twin);
    }
    return NOWHERE;
  }

  /** Where a drop on an edge that holds it goes: the lower end, on a level edge the one that leaves lower. */
  lowEnd(slot: number): number {
    const { mesh, water } = this.#s;
    const [a, b] = [mesh.corners[slot], mesh.corners[nextSlot(slot)]];
    if (Math.abs(mesh.z[a] - mesh.z[b]) > 1e-9) return mesh.z[a] < mesh.z[b] ? a : b;
    return water.levelIn[a] <= water.levelIn[b] ? a : b;
  }

  /** What an edge takes: as one, or, where it runs level between two outlets, each half to the nearer one. */
  beamsOf(slot: number): Beam[] {
    const { mesh, openAt } = this.#s;
    const [a, b] = [mesh.corners[slot], mesh.corners[nextSlot(slot)]];
    const level =
      Math.abs(mesh.z[a] - mesh.z[b]) <= 1e-9 && Math.abs(this.#s.water.levelIn[a] - this.#s.water.levelIn[b]) <= 1e-9;
    const open = mesh.across[slot] < 0 && openAt(slot) !== null;
    if (open || !level) return [{ slot, from: 0, to: 1, outlet: this.ofEdge(slot) }];
    return [
      { slot, from: 0, to: 0.5, outlet: this.fromVertex(a) },
      { slot, from: 0.5, to: 1, outlet: this.fromVertex(b) },
    ];
  }

  /** The outlet of whatever water reaches this edge and cannot go through it. */
  ofEdge(slot: number): string {
    const open = this.#s.mesh.across[slot] < 0 ? this.#s.openAt(slot) : null;
    return open ?? this.fromVertex(this.lowEnd(slot));
  }
}

function hitOf(mesh: SurfaceMesh, p: Point, slot: number): Point {
  const a = mesh.points[mesh.corners[slot]];
  const b = mesh.points[mesh.corners[nextSlot(slot)]];
  const { gx, gy } = mesh.patch[Math.floor(slot / 3)].plane;
  const e: Point = [b[0] - a[0], b[1] - a[1]];
  const t = cross([a[0] - p[0], a[1] - p[1]], e) / cross([-gx, -gy], e);
  return [p[0] - gx * t, p[1] - gy * t];
}

/** The edge through which a drop that came in at q through `entry` leaves the triangle. */
function exitOf(mesh: SurfaceMesh, q: Point, entry: number): number {
  const [one, two] = [nextSlot(entry), nextSlot(nextSlot(entry))];
  if (runsAgainst(mesh, one) <= LEVEL_IN_PER_FT) return two;
  if (runsAgainst(mesh, two) <= LEVEL_IN_PER_FT) return one;
  const apex = mesh.points[mesh.corners[two]];
  const { gx, gy } = mesh.patch[Math.floor(entry / 3)].plane;
  // The apex parts the drops: to the right of its flow line they leave through the first edge.
  return cross([-gx, -gy], [apex[0] - q[0], apex[1] - q[1]]) > 0 ? one : two;
}

interface Beam {
  slot: number;
  /** Stretch of the edge, 0 at the slot's corner, 1 at the next. */
  from: number;
  to: number;
  outlet: string;
}

/**
 * Which outlet drains each spot of a surface, as pieces that partition it.
 * Water is followed upstream from every edge that takes it (valley, wall, gutter) in beams that part at vertices, so
 * the borders are exact on any surface. Level planes go by the lowest way out.
 */
export function drainagePieces(setting: Setting): AreaPiece[] {
  const { mesh } = setting;
  const trickle = new Trickle(setting);
  const out: AreaPiece[] = [];
  const beams: Beam[] = [];
  for (let t = 0; t < mesh.corners.length / 3; t++) {
    if (slopeInPerFt(mesh.patch[t].plane) > LEVEL_IN_PER_FT) continue;
    const ids = [0, 1, 2].map((k) => mesh.corners[3 * t + k]);
    out.push({ ring: ids.map((id) => mesh.points[id]), outlet: trickle.byFlood(ids[0]) });
  }
  for (let slot = 0; slot < mesh.corners.length; slot++) {
    if (runsAgainst(mesh, slot) <= LEVEL_IN_PER_FT) continue;
    const twin = twinSlot(mesh, slot);
    if (twin >= 0 && runsAgainst(mesh, twin) < -LEVEL_IN_PER_FT) continue;
    beams.push(...trickle.beamsOf(slot));
  }
  for (let beam = beams.pop(); beam !== undefined; beam = beams.pop()) upstream(mesh, beam, out, beams);
  return out;
}

/** The part of a beam's triangle that feeds it, and the beams that go on from there. */
function upstream(mesh: SurfaceMesh, beam: Beam, out: AreaPiece[], beams: Beam[]): void {
  const { points, corners, patch } = mesh;
  const t = Math.floor(beam.slot / 3);
  const { gx, gy } = patch[t].plane;
  const steep = Math.hypot(gx, gy);
  // Drops keep their place across the flow: one number per flow line.
  const place = (p: Point): number => (gx * p[1] - gy * p[0]) / steep;
  const a = place(points[corners[beam.slot]]);
  const b = place(points[corners[nextSlot(beam.slot)]]);
  const ends = [a + (b - a) * beam.from, a + (b - a) * beam.to];
  const lo = Math.min(...ends);
  const hi = Math.max(...ends);
  const triangle = [0, 1, 2].map((k) => points[corners[3 * t + k]]);
  const strip = cut(
    cut(triangle, (p) => place(p) - lo),
    (p) => hi - place(p),
  );
  // A thin triangle adds no area of its own, but what lies behind it does.
  if (!isSliver(strip)) out.push({ ring: strip, outlet: beam.outlet });
  for (const slot of [nextSlot(beam.slot), nextSlot(nextSlot(beam.slot))]) {
    const twin = twinSlot(mesh, slot);
    if (twin < 0 || runsAgainst(mesh, slot) >= -LEVEL_IN_PER_FT || runsAgainst(mesh, twin) <= LEVEL_IN_PER_FT) continue;
    const from = place(points[corners[slot]]);
    const to = place(points[corners[nextSlot(slot)]]);
    if (Math.abs(to - from) < 1e-9) continue;
    const params = [(lo - from) / (to - from), (hi - from) / (to - from)].map((u) => Math.min(1, Math.max(0, u)));
    const [u0, u1] = [Math.min(...params), Math.max(...params)];
    if (u1 - u0 < 1e-9) continue;
    beams.push({ slot: twin, from: 1 - u1, to: 1 - u0, outlet: beam.outlet });
  }
}

/** Area per outlet, sq ft; water that reaches none under NOWHERE. */
export function areaByOutlet(pieces: readonly AreaPiece[]): Map<string, number> {
  const sums = new Map<string, number>();
  for (const { ring, outlet } of pieces) sums.set(outlet, (sums.get(outlet) ?? 0) + signedAreaSqFt(ring));
  return sums;
}
