import type { Point } from '../roof.ts';
import type { Fan, Fans } from './fans.ts';
import type { Triangulation } from './triangulation.ts';
import { dot, orient } from './vector.ts';

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

class Look {
  readonly glimpses: Glimpse[] = [];
  readonly seen: number[] = [];
  readonly #mesh: Triangulation;
  readonly #fans: Fans;
  readonly #eye: Eye;

  constructor(mesh: Triangulation, fans: Fans, eye: Eye) {
    this.#mesh = mesh;
    this.#fans = fans;
    this.#eye = eye;
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
    if (neighbour < 0) {
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

/** All that a corner sees, in counter-clockwise order. */
export function lookFrom(mesh: Triangulation, fans: Fans, fan: Fan): Sight {
  const { points, corners } = mesh;
  const look = new Look(mesh, fans, pointEye(fan.at));
  for (const slot of fan.slots) {
    const base = slot - (slot % 3);
    const rightSlot = base + (((slot % 3) + 1) % 3);
    const leftSlot = base + (((slot % 3) + 2) % 3);
    look.see(rightSlot);
    look.see(leftSlot);
    look.through(rightSlot, points[corners[rightSlot]], points[corners[leftSlot]]);
  }
  return look;
}

/** All that a straight boundary edge sees when it looks square across; `edges` are its boundary edge slots. */
export function lookAcross(mesh: Triangulation, fans: Fans, edges: readonly number[], along: Point): Sight {
  const { points, corners } = mesh;
  const look = new Look(mesh, fans, edgeEye(along));
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
