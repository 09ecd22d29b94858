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
}

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
export function neighboursOf({ points, corners, across }: SurfaceMesh): { starts: Int32Array; list: Int32Array } {
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

/**
 * Water level over a surface: at each vertex the least, over all ways to an offer, of the highest point on the way.
 * Exact on a piecewise-linear surface because its critical points are vertices.
 * Source: priority flood, Barnes, Lehman and Mulla, Computers & Geosciences 62 (2014), on vertices and triangle edges.
 * @param offers ways out; equal levels go to the earlier one in the list
 * @returns level in in per vertex, with the way the water leaves
 */
export function flood(mesh: SurfaceMesh, offers: readonly Offer[]): Flood {
  const n = mesh.points.length;
  const { starts, list } = neighboursOf(mesh);
  const levelIn = new Float64Array(n).fill(Number.POSITIVE_INFINITY);
  const toward = new Int32Array(n).fill(-1);
  const offer = new Int32Array(n).fill(-1);
  const done = new Uint8Array(n);
  const heap = new LevelHeap(n + offers.length);
  offers.forEach(({ vertex, levelIn: level }, i) => {
    const start = Math.max(mesh.z[vertex], level);
    if (start >= levelIn[vertex] - SAME_LEVEL_IN) return;
    levelIn[vertex] = start;
    offer[vertex] = i;
    heap.push(start, vertex);
  });
  while (heap.size > 0) {
    const v = heap.pop();
    if (done[v]) continue;
    done[v] = 1;
    for (let k = starts[v]; k < starts[v + 1]; k++) {
      const u = list[k];
      if (done[u]) continue;
      const level = Math.max(mesh.z[u], levelIn[v]);
      if (level >= levelIn[u] - SAME_LEVEL_IN) continue;
      levelIn[u] = level;
      toward[u] = v;
      offer[u] = offer[v];
      heap.push(level, u);
    }
  }
  return { levelIn, toward, offer };
}
