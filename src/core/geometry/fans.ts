import type { Point } from '../roof.ts';
import type { Triangulation } from './triangulation.ts';
import { cross, dot } from './vector.ts';

/**
 * The free space around one corner of the section: triangles about a vertex from one closed edge to the next,
 * counter-clockwise. A vertex where two pieces touch has several fans: water does not pass between them.
 */
export interface Fan {
  vertex: number;
  at: Point;
  /** Triangle corner slots (3 t + k), counter-clockwise. */
  slots: readonly number[];
  /** Direction of the closed edges on the right and on the left; null for an open, full-circle fan. */
  right: Point | null;
  left: Point | null;
  /** Fans at the next corners along those walls. */
  wallEnds: number[];
  /** Wider than a straight line: water can turn round this corner. */
  reflex: boolean;
}

export interface Fans {
  fans: readonly Fan[];
  /** Fan of each triangle corner slot. */
  ofSlot: Int32Array;
  /** Fans of each vertex. */
  ofVertex: readonly (readonly number[])[];
}

/** A vertex nearer than this to the line of its neighbours is no corner. */
const STRAIGHT_FT = 3e-5;

const away = (from: Point, to: Point): Point => [to[0] - from[0], to[1] - from[1]];

export function findFans({ points, corners, across }: Triangulation): Fans {
  const ofSlot = new Int32Array(corners.length).fill(-1);
  const ofVertex: number[][] = points.map(() => []);
  const fans: Fan[] = [];
  const next = (slot: number, by: number): number => slot - (slot % 3) + (((slot % 3) + by) % 3);
  /** The neighbouring slot about the same vertex across the edge that starts (by 0) or ends (by 2) at it. */
  const turn = (slot: number, by: 0 | 2): number => {
    const neighbour = across[next(slot, by)];
    if (neighbour < 0) return -1;
    for (let k = 0; k < 3; k++) if (corners[3 * neighbour + k] === corners[slot]) return 3 * neighbour + k;
    return -1;
  };
  for (let slot = 0; slot < corners.length; slot++) {
    if (ofSlot[slot] >= 0) continue;
    let first = slot;
    for (let back = turn(first, 0); back >= 0 && back !== slot; back = turn(first, 0)) first = back;
    const slots: number[] = [];
    let closed = true;
    for (let at = first; at >= 0; at = turn(at, 2)) {
      if (ofSlot[at] >= 0) {
        closed = false;
        break;
      }
      ofSlot[at] = fans.length;
      slots.push(at);
    }
    const vertex = corners[slot];
    const at = points[vertex];
    const last = slots[slots.length - 1];
    let angle = 0;
    for (const s of slots) {
      const [u, v] = [away(at, points[corners[next(s, 1)]]), away(at, points[corners[next(s, 2)]])];
      angle += Math.atan2(cross(u, v), dot(u, v));
    }
    ofVertex[vertex].push(fans.length);
    fans.push({
      vertex,
      at,
      slots,
      right: closed ? away(at, points[corners[next(first, 1)]]) : null,
      left: closed ? away(at, points[corners[next(last, 2)]]) : null,
      wallEnds: [],
      reflex: closed && angle > Math.PI + 1e-7,
    });
  }
  const rightOf = (fan: Fan): number => ofSlot[next(fan.slots[0], 1)];
  const leftOf = (fan: Fan): number => ofSlot[next(fan.slots[fan.slots.length - 1], 2)];
  for (const fan of fans) {
    if (fan.right === null) continue;
    fan.wallEnds.push(alongWall(fans, rightOf(fan), rightOf), alongWall(fans, leftOf(fan), leftOf));
  }
  return { fans, ofSlot, ofVertex };
}

/** Follows a wall over vertices that only rounding keeps from being straight. */
function alongWall(fans: readonly Fan[], start: number, onward: (fan: Fan) => number): number {
  let at = start;
  for (let step = 0; step < fans.length && isStraight(fans[at]); step++) at = onward(fans[at]);
  return at;
}

function isStraight({ right, left }: Fan): boolean {
  if (right === null || left === null || dot(right, left) >= 0) return false;
  return Math.abs(cross(right, left)) / Math.hypot(left[0] - right[0], left[1] - right[1]) < STRAIGHT_FT;
}
