import { nextSlot, twinSlot } from '../../src/core/geometry/triangulation.ts';
import type { Point } from '../../src/core/roof.ts';
import type { Offer } from '../../src/core/surface/flood.ts';
import type { SurfaceMesh } from '../../src/core/surface/mesh.ts';

type Way = { kind: 'plane'; triangle: number } | { kind: 'edge'; vertex: number };

/**
 * A drop followed by itself: down each plane, along what both sides feed and along closed walls, at a vertex the
 * steepest way, out of a full pond over its lowest rim. Independent of the drainage areas: it knows the mesh alone.
 */
export class Drop {
  readonly #mesh: SurfaceMesh;
  readonly #offers: readonly Offer[];
  readonly #openAt: (slot: number) => string | null;
  readonly #slotsOf: number[][];

  constructor(mesh: SurfaceMesh, offers: readonly Offer[], openAt: (slot: number) => string | null) {
    this.#mesh = mesh;
    this.#offers = offers;
    this.#openAt = openAt;
    this.#slotsOf = mesh.points.map(() => []);
    mesh.corners.forEach((v, slot) => {
      this.#slotsOf[v].push(slot);
    });
  }

  /** The outlet that a drop in a triangle comes to; null where it finds none. */
  from(triangle: number, start: Point, full = new Set<number>()): string | null {
    let [t, p] = [triangle, start];
    for (let step = 0; step < 1000; step++) {
      const { slot, at } = this.#exit(t, p);
      const twin = twinSlot(this.#mesh, slot);
      if (twin < 0) return this.#openAt(slot) ?? this.#fromVertex(this.#lowerEnd(slot), full);
      if (this.#runsAgainst(twin)) return this.#fromVertex(this.#lowerEnd(slot), full);
      [t, p] = [Math.floor(twin / 3), at];
    }
    return null;
  }

  #ends(slot: number): [number, number] {
    return [this.#mesh.corners[slot], this.#mesh.corners[nextSlot(slot)]];
  }

  #lowerEnd(slot: number): number {
    const [a, b] = this.#ends(slot);
    return this.#mesh.z[a] < this.#mesh.z[b] ? a : b;
  }

  /** Where a drop leaves a triangle straight down its plane. */
  #exit(t: number, p: Point): { slot: number; at: Point } {
    const { gx, gy } = this.#mesh.patch[t].plane;
    let best = { u: Number.POSITIVE_INFINITY, slot: 3 * t };
    for (let slot = 3 * t; slot < 3 * t + 3; slot++) {
      const [a, b] = this.#ends(slot).map((v) => this.#mesh.points[v]);
      const n: Point = [b[1] - a[1], a[0] - b[0]];
      const speed = -gx * n[0] - gy * n[1];
      if (speed <= 1e-12) continue;
      const u = Math.max(0, ((a[0] - p[0]) * n[0] + (a[1] - p[1]) * n[1]) / speed);
      if (u < best.u) best = { u, slot };
    }
    return { slot: best.slot, at: [p[0] - gx * best.u, p[1] - gy * best.u] };
  }

  /** The plane of a slot's own triangle falls towards the slot's edge. */
  #runsAgainst(slot: number): boolean {
    const [a, b] = this.#ends(slot).map((v) => this.#mesh.points[v]);
    const { gx, gy } = this.#mesh.patch[Math.floor(slot / 3)].plane;
    // Water that runs just along an edge stays on it.
    return -gx * (b[1] - a[1]) - gy * (a[0] - b[0]) > -1e-9;
  }

  #offerAt(v: number, levelIn: number): string | null {
    return this.#offers.find((offer) => offer.vertex === v && offer.levelIn <= levelIn + 1e-9)?.outlet ?? null;
  }

  #fromVertex(start: number, full = new Set<number>()): string | null {
    let v = start;
    for (let step = 0; step < 1000; step++) {
      const out = this.#offerAt(v, this.#mesh.z[v]);
      if (out !== null) return out;
      const way = full.has(v) ? null : this.#steepest(v, () => true);
      if (way === null) {
        const rim = this.#spill(v, full);
        if (rim === null || rim.outlet !== null) return rim?.outlet ?? null;
        for (const u of rim.pond) full.add(u);
        const over = this.#steepest(rim.vertex, (u) => !full.has(u));
        if (over === null) return null;
        if (over.kind === 'plane') return this.from(over.triangle, this.#mesh.points[rim.vertex], full);
        v = over.vertex;
        continue;
      }
      if (way.kind === 'plane') return this.from(way.triangle, this.#mesh.points[v], full);
      v = way.vertex;
    }
    return null;
  }

  /** The steepest way down from a vertex: into a plane or along an edge. */
  #steepest(v: number, allowed: (u: number) => boolean): Way | null {
    const { points, z, patch } = this.#mesh;
    let best = 0;
    let way: Way | null = null;
    for (const slot of this.#slotsOf[v]) {
      const [next, last] = [this.#mesh.corners[nextSlot(slot)], this.#mesh.corners[nextSlot(nextSlot(slot))]];
      for (const u of [next, last]) {
        const slope = (z[v] - z[u]) / Math.hypot(points[u][0] - points[v][0], points[u][1] - points[v][1]);
        if (slope <= best || !allowed(u)) continue;
        best = slope;
        way = { kind: 'edge', vertex: u };
      }
      const triangle = Math.floor(slot / 3);
      const { gx, gy } = patch[triangle].plane;
      const within = (u: number): number => -gx * (points[u][1] - points[v][1]) + gy * (points[u][0] - points[v][0]);
      // Straight down lies between the two edges: to the left of the first and to the right of the last.
      const inside = -within(next) > 0 && within(last) > 0;
      const slope = Math.hypot(gx, gy);
      if (!inside || slope <= best || !allowed(z[next] < z[last] ? next : last)) continue;
      best = slope;
      way = { kind: 'plane', triangle };
    }
    return way;
  }

  /**
   * Fills the hollow about a lowest vertex until water goes over its rim, or reaches a way out.
   * @param full vertices of ponds that this drop has filled already: water that comes back to them joins the two
   */
  #spill(pit: number, full: Set<number>): { vertex: number; pond: Set<number>; outlet: string | null } | null {
    const { z } = this.#mesh;
    const pond = new Set<number>();
    const rim = new Map([[pit, z[pit]]]);
    let level = z[pit];
    while (rim.size > 0) {
      const [v, height] = [...rim].reduce((a, b) => (b[1] < a[1] ? b : a));
      const ready = this.#offers.filter((offer) => pond.has(offer.vertex) && offer.levelIn <= height);
      if (ready.length > 0) {
        const first = ready.reduce((a, b) => (b.levelIn < a.levelIn ? b : a));
        return { vertex: first.vertex, pond, outlet: first.outlet };
      }
      if (height < level && !full.has(v)) {
        // The way down is from the vertex that let the water through.
        return { vertex: this.#last, pond, outlet: null };
      }
      level = height;
      rim.delete(v);
      pond.add(v);
      this.#last = v;
      const here = this.#offerAt(v, level);
      if (here !== null) return { vertex: v, pond, outlet: here };
      for (const slot of this.#slotsOf[v]) {
        for (const u of [this.#mesh.corners[nextSlot(slot)], this.#mesh.corners[nextSlot(nextSlot(slot))]])
          if (!pond.has(u)) rim.set(u, z[u]);
      }
    }
    const inside = this.#offers.filter(({ vertex }) => pond.has(vertex));
    if (inside.length === 0) return null;
    const first = inside.reduce((a, b) => (b.levelIn < a.levelIn ? b : a));
    return { vertex: first.vertex, pond, outlet: first.outlet };
  }

  #last = -1;
}
