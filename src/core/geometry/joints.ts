import type { Point } from '../roof.ts';
import { distanceFt } from './vector.ts';

/** Points nearer than this are one point; a point nearer than this to an edge lies on it. */
export const JOIN_FT = 1e-5;

/** Points joined within JOIN_FT and found again by place. */
export class Joints {
  readonly points: Point[] = [];
  readonly #cells = new Map<string, number[]>();
  readonly #size: number;

  constructor(size: number) {
    this.#size = size;
  }

  #cell(x: number, y: number): string {
    return `${Math.floor(x / this.#size)},${Math.floor(y / this.#size)}`;
  }

  add(p: Point): number {
    for (const dx of [0, -JOIN_FT, JOIN_FT]) {
      for (const dy of [0, -JOIN_FT, JOIN_FT]) {
        for (const id of this.#cells.get(this.#cell(p[0] + dx, p[1] + dy)) ?? []) {
          if (distanceFt(p, this.points[id]) < JOIN_FT) return id;
        }
      }
    }
    const cell = this.#cell(p[0], p[1]);
    const list = this.#cells.get(cell);
    if (list) list.push(this.points.length);
    else this.#cells.set(cell, [this.points.length]);
    this.points.push(p);
    return this.points.length - 1;
  }

  /** Points on the open segment a-b, in order from a. */
  on(a: number, b: number): number[] {
    const [p, q] = [this.points[a], this.points[b]];
    const length = distanceFt(p, q);
    const found: { id: number; t: number }[] = [];
    const done = new Set<string>();
    const steps = Math.ceil(length / this.#size) + 1;
    for (let i = 0; i <= steps; i++) {
      const x = p[0] + ((q[0] - p[0]) * i) / steps;
      const y = p[1] + ((q[1] - p[1]) * i) / steps;
      for (const dx of [0, -this.#size, this.#size]) {
        for (const dy of [0, -this.#size, this.#size]) {
          const cell = this.#cell(x + dx, y + dy);
          if (done.has(cell)) continue;
          done.add(cell);
          for (const id of this.#cells.get(cell) ?? []) {
            if (id === a || id === b) continue;
            const r = this.points[id];
            const t = ((r[0] - p[0]) * (q[0] - p[0]) + (r[1] - p[1]) * (q[1] - p[1])) / (length * length);
            if (t <= 0 || t >= 1) continue;
            const off = Math.abs((r[0] - p[0]) * (q[1] - p[1]) - (r[1] - p[1]) * (q[0] - p[0])) / length;
            if (off < JOIN_FT) found.push({ id, t });
          }
        }
      }
    }
    return found.sort((m, n) => m.t - n.t).map(({ id }) => id);
  }
}
