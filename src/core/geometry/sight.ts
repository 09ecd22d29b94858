import type { Point } from '../roof.ts';
import type { Fan, Fans } from './fans.ts';
import type { Triangulation } from './triangulation.ts';
import { type Box, dot, orient } from './vector.ts';

/**
 * What can be seen from a place, by walking outward through the triangles with a narrowing cone.
 * An eye is a point, or a whole straight edge that looks square across (its rays are parallel).
 */
interface Eye {
  /** Positive when x lies to the left of the ray through `limit`. */
  left(limit: Point, x: Point): number;
  /** Where the ray through `limit` meets the line a-b. */
  hit(limit: Point, a: Point, b: Point): Point;
}

/** A stretch of seen boundary between two rays, right end first. */
export interface Glimpse {
  right: Point;
  left: Point;
}

export interface Sight {
  glimpses: readonly Glimpse[];
  /** Fans of the corners that are seen, each as seen through one of its triangles. */
  seen: readonly number[];
}

const onSegment = (a: Point, b: Point, sa: number, sb: number): Point => {
  if (sa === 0) return a;
  if (sb === 0) return b;
  const t = sa / (sa - sb);
  return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
};

function pointEye(at: Point): Eye {
  return {
    left: (limit, x) => orient(at, limit, x),
    hit: (limit, a, b) => onSegment(a, b, orient(at, limit, a), orient(at, limit, b)),
  };
}

/** Looks to the left of the direction `along`; right of it means further along. */
function edgeEye(along: Point): Eye {
  const left = (limit: Point, x: Point): number => dot(limit, along) - dot(x, along);
  return { left, hit: (limit, a, b) => onSegment(a, b, left(limit, a), left(limit, b)) };
}

/** Nothing of the segment lies in the box, and nothing beyond it can. */
const beyond = (a: Point, b: Point, box: Box): boolean =>
  (a[0] > box.maxX && b[0] > box.maxX) ||
  (a[0] < box.minX && b[0] < box.minX) ||
  (a[1] > box.maxY && b[1] > box.maxY) ||
  (a[1] < box.minY && b[1] < box.minY);

class Look {
  readonly glimpses: Glimpse[] = [];
  readonly seen: number[] = [];
  readonly #mesh: Triangulation;
  readonly #fans: Fans;
  readonly #eye: Eye;
  readonly #box: Box | null;

  constructor(mesh: Triangulation, fans: Fans, eye: Eye, box: Box | null) {
    this.#mesh = mesh;
    this.#fans = fans;
    this.#eye = eye;
    this.#box = box;
  }

  see(slot: number): void {
    this.seen.push(this.#fans.ofSlot[slot]);
  }

  /** Go through the edge that starts at a corner slot; a is its right end as seen from the eye. */
  through(slot: number, right: Point, left: Point): void {
    const { points, corners, across } = this.#mesh;
    const a = points[corners[slot]];
    const b = points[corners[slot - (slot % 3) + (((slot % 3) + 1) % 3)]];
    const neighbour = across[slot];
    if (neighbour < 0 || (this.#box !== null && beyond(a, b, this.#box))) {
      this.glimpses.push({ right: this.#eye.hit(right, a, b), left: this.#eye.hit(left, a, b) });
      return;
    }
    const here = Math.floor(slot / 3);
    let back = 0;
    while (across[3 * neighbour + back] !== here || corners[3 * neighbour + ((back + 1) % 3)] !== corners[slot]) back++;
    // In the neighbour the shared edge runs b -> a, so the next edges are a -> c (right) and c -> b (left).
    const rightEdge = 3 * neighbour + ((back + 1) % 3);
    const leftEdge = 3 * neighbour + ((back + 2) % 3);
    const c = points[corners[leftEdge]];
    const toLeft = this.#eye.left(left, c);
    const toRight = this.#eye.left(right, c);
    if (toLeft > 0) this.through(rightEdge, right, left);
    else if (toRight < 0) this.through(leftEdge, right, left);
    else {
      this.see(leftEdge);
      if (toRight > 0) this.through(rightEdge, right, c);
      if (toLeft < 0) this.through(leftEdge, c, left);
    }
  }
}

/** Directions from a corner, less than 180 degrees apart, right one first. */
export interface Wedge {
  right: Point;
  left: Point;
}

/** The part of the cone a..b about v that lies in the wedge, or null. */
function narrow(v: Point, a: Point, b: Point, wedge: Wedge): [right: Point, left: Point] | null {
  const wr: Point = [v[0] + wedge.right[0], v[1] + wedge.right[1]];
  const wl: Point = [v[0] + wedge.left[0], v[1] + wedge.left[1]];
  const within = (r: Point, l: Point, x: Point): boolean => orient(v, r, x) >= 0 && orient(v, x, l) >= 0;
  const right = within(wr, wl, a) ? a : within(a, b, wr) ? wr : null;
  const left = within(wr, wl, b) ? b : within(a, b, wl) ? wl : null;
  return right !== null && left !== null && orient(v, right, left) > 0 ? [right, left] : null;
}

/**
 * All that a corner sees, in counter-clockwise order.
 * @param wedge look only between these directions (null = all round)
 * @param box what lies outside this box may be left out (null = look to the end)
 */
export function lookFrom(mesh: Triangulation, fans: Fans, fan: Fan, wedge: Wedge | null, box: Box | null): Sight {
  const { points, corners } = mesh;
  const look = new Look(mesh, fans, pointEye(fan.at), box);
  for (const slot of fan.slots) {
    const base = slot - (slot % 3);
    const rightSlot = base + (((slot % 3) + 1) % 3);
    const leftSlot = base + (((slot % 3) + 2) % 3);
    const a = points[corners[rightSlot]];
    const b = points[corners[leftSlot]];
    const cone = wedge === null ? ([a, b] as const) : narrow(fan.at, a, b, wedge);
    if (cone === null) continue;
    if (cone[0] === a) look.see(rightSlot);
    if (cone[1] === b) look.see(leftSlot);
    look.through(rightSlot, cone[0], cone[1]);
  }
  return look;
}

/** All that a straight boundary edge sees when it looks square across; `edges` are its boundary edge slots. */
export function lookAcross(mesh: Triangulation, fans: Fans, edges: readonly number[], along: Point): Sight {
  const { points, corners } = mesh;
  const look = new Look(mesh, fans, edgeEye(along), null);
  // Facing inward, the far end of the edge is on the right: visit from right to left.
  const ordered = [...edges].sort((p, q) => dot(points[corners[q]], along) - dot(points[corners[p]], along));
  for (const slot of ordered) {
    const base = slot - (slot % 3);
    const [second, third] = [base + (((slot % 3) + 1) % 3), base + (((slot % 3) + 2) % 3)];
    const near = points[corners[slot]];
    const far = points[corners[second]];
    const apex = points[corners[third]];
    const eye = edgeEye(along);
    const toLeft = eye.left(near, apex);
    const toRight = eye.left(far, apex);
    if (toLeft > 0) look.through(second, far, near);
    else if (toRight < 0) look.through(third, far, near);
    else {
      look.see(third);
      if (toRight > 0) look.through(second, far, apex);
      if (toLeft < 0) look.through(third, apex, near);
    }
  }
  return look;
}
