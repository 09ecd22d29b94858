import { nextSlot } from '../geometry/triangulation.ts';
import type { SurfaceMesh } from './mesh.ts';

/** A way out at a vertex: water leaves once it stands at this level there. */
export interface Offer {
  vertex: number;
  levelIn: number;
  outlet: string;
}

export interface Flood {
  /** Level to which water can rise at each vertex before it leaves; Infinity where no way out is reached. */
  levelIn: Float64Array;
  /** The next vertex on the lowest way out; -1 at an outlet or where there is none. */
  toward: Int32Array;
  /** Index of the offer by which the water leaves; -1 where there is none. */
  offer: Int32Array;
  /** A vertex that stands for the pond over each vertex; -1 where it is dry or no way out is reached. */
  pond: Int32Array;
}

export interface Neighbours {
  starts: Int32Array;
  list: Int32Array;
}

/** Water shallower than this is rounding, not a pond. */
export const DRY_IN = 0.001;

/** Levels nearer than this are one level: what came first keeps the water. */
const SAME_LEVEL_IN = 1e-9;

/** Binary heap of vertices by level, then by age, so that equal levels leave in the order they came. */
export class LevelHeap {
  #keys: Float64Array;
  #items: Int32Array;
  #size = 0;

  constructor(capacity: number) {
    this.#keys = new Float64Array(capacity + 1);
    this.#items = new Int32Array(capacity + 1);
  }

  get size(): number {
    return this.#size;
  }

  push(key: number, item: number): void {
    if (this.#size === this.#keys.length) this.#grow();
    let i = this.#size++;
    while (i > 0) {
      const up = (i - 1) >> 1;
      if (this.#keys[up] <= key) break;
      this.#keys[i] = this.#keys[up];
      this.#items[i] = this.#items[up];
      i = up;
    }
    this.#keys[i] = key;
    this.#items[i] = item;
  }

  #grow(): void {
    const keys = new Float64Array(this.#keys.length * 2);
    const items = new Int32Array(keys.length);
    keys.set(this.#keys);
    items.set(this.#items);
    this.#keys = keys;
    this.#items = items;
  }

  pop(): number {
    const top = this.#items[0];
    const key = this.#keys[--this.#size];
    const item = this.#items[this.#size];
    let i = 0;
    for (;;) {
      let down = 2 * i + 1;
      if (down >= this.#size) break;
      if (down + 1 < this.#size && this.#keys[down + 1] < this.#keys[down]) down++;
      if (this.#keys[down] >= key) break;
      this.#keys[i] = this.#keys[down];
      this.#items[i] = this.#items[down];
      i = down;
    }
    this.#keys[i] = key;
    this.#items[i] = item;
    return top;
  }
}

/**
 * Neighbouring vertices of every vertex, as one list with starts. An inner edge is met once from each of its two
 * triangles, once in each direction; a boundary edge has one triangle only and is noted both ways from there.
 */
export function neighboursOf({ points, corners, across }: SurfaceMesh): Neighbours {
  const starts = new Int32Array(points.length + 1);
  for (let slot = 0; slot < corners.length; slot++) {
    starts[corners[slot] + 1]++;
    if (across[slot] < 0) starts[corners[nextSlot(slot)] + 1]++;
  }
  for (let i = 0; i < points.length; i++) starts[i + 1] += starts[i];
  const fill = starts.slice(0, points.length);
  const list = new Int32Array(starts[points.length]);
  for (let slot = 0; slot < corners.length; slot++) {
    const a = corners[slot];
    const b = corners[nextSlot(slot)];
    list[fill[a]++] = b;
    if (across[slot] < 0) list[fill[b]++] = a;
  }
  return { starts, list };
}

/** Vertices of one pond, joined as they are found under water. */
class PondSets {
  readonly parent: Int32Array;

  constructor(count: number) {
    this.parent = new Int32Array(count).fill(-1);
  }

  root(v: number): number {
    const { parent } = this;
    let r = v;
    while (parent[r] !== r) r = parent[r] = parent[parent[r]];
    return r;
  }

  /** A vertex under water: in the pond of the vertex that it drains to, or the first of its own. */
  wet(v: number, toward: number): void {
    this.parent[v] = toward >= 0 && this.parent[toward] >= 0 ? this.parent[toward] : v;
  }

  /** Two ends of an edge; one of them may be dry. */
  join(a: number, b: number): void {
    const { parent } = this;
    if (parent[a] < 0 || parent[a] === parent[b]) return;
    const [p, q] = [this.root(a), this.root(b)];
    if (p !== q) parent[q] = p;
  }
}

/**
 * Water level over a surface: at each vertex the least, over all ways to an offer, of the highest point on the way.
 * Exact on a piecewise-linear surface because its critical points are vertices. Wet vertices that a wet edge joins are
 * one pond: they share a level, since between them nothing stands proud.
 * Source: priority flood, Barnes, Lehman and Mulla, Computers & Geosciences 62 (2014), on vertices and triangle edges.
 * @param offers ways out; equal levels go to the earlier one in the list
 * @returns level in in per vertex, with the way the water leaves
 */
export function flood(
  mesh: SurfaceMesh,
  offers: readonly Offer[],
  { starts, list }: Neighbours = neighboursOf(mesh),
): Flood {
  const { z } = mesh;
  const n = mesh.points.length;
  const levelIn = new Float64Array(n).fill(Number.POSITIVE_INFINITY);
  const toward = new Int32Array(n).fill(-1);
  const offer = new Int32Array(n).fill(-1);
  const done = new Uint8Array(n);
  const sets = new PondSets(n);
  const heap = new LevelHeap(n + offers.length);
  offers.forEach(({ vertex, levelIn: level }, i) => {
    const start = Math.max(z[vertex], level);
    if (start >= levelIn[vertex] - SAME_LEVEL_IN) return;
    levelIn[vertex] = start;
    offer[vertex] = i;
    heap.push(start, vertex);
  });
  // What lies under water has its level at once: it need not wait in the heap.
  const sunk = new Int32Array(n);
  let [first, last] = [0, 0];
  while (first < last || heap.size > 0) {
    const v = first < last ? sunk[first++] : heap.pop();
    if (first === last) first = last = 0;
    if (done[v]) continue;
    done[v] = 1;
    const here = levelIn[v];
    const wet = here - z[v] > DRY_IN;
    if (wet) sets.wet(v, toward[v]);
    for (let k = starts[v]; k < starts[v + 1]; k++) {
      const u = list[k];
      if (done[u]) {
        if (wet) sets.join(u, v);
        continue;
      }
      const level = Math.max(z[u], here);
      if (level >= levelIn[u] - SAME_LEVEL_IN) continue;
      levelIn[u] = level;
      toward[u] = v;
      offer[u] = offer[v];
      if (z[u] < here) sunk[last++] = u;
      else heap.push(level, u);
    }
  }
  const pond = sets.parent;
  for (let v = 0; v < n; v++) if (pond[v] >= 0) pond[v] = sets.root(v);
  return { levelIn, toward, offer, pond };
}
