import { type Convex, cut, isSliver } from '../geometry/convex.ts';
import { heightIn } from '../geometry/plane.ts';
import { nextSlot, type Triangulation, twinSlot } from '../geometry/triangulation.ts';
import { cross, direction, distanceFt } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';
import { LevelHeap } from '../surface/flood.ts';
import type { SlopePattern } from './pattern.ts';
import { Profile, type Stretch } from './profile.ts';
import { type Reach, reachesOfPoint, reachesOfSide, type Side } from './reach.ts';

/** Where a height starts: at a corner of the triangulation, or all along one of its boundary sides. */
export type Seed =
  | { kind: 'corner'; vertex: number; levelIn: number; outlet: number }
  | { kind: 'side'; slot: number; levelIn: number; outlet: number };

/** A piece of a triangle with the reach whose plane it lies in. */
export interface Share {
  ring: Convex;
  reach: Reach;
}

const NEAR_FT = 1e-9;
/** Heights that start on a boundary side itself, and heights that the triangles on both sides have at first hand. */
const STARTED = -1;
const KNOWN = -2;

const snapped = (value: number): number => (Math.abs(value) < NEAR_FT ? 0 : value);

/** Distance of p inside the right-hand bound of a reach, in ft; the left-hand one likewise. */
const insideRight = ({ rightAt, rightRay }: Reach, p: Point): number =>
  snapped(cross(rightRay, [p[0] - rightAt[0], p[1] - rightAt[1]]));
const insideLeft = ({ leftAt, leftRay }: Reach, p: Point): number =>
  snapped(cross([p[0] - leftAt[0], p[1] - leftAt[1]], leftRay));

/**
 * Least heights over a triangulation, spread from triangle to triangle like a front of water that rises.
 * Along every side the heights known so far are kept; what they send across a triangle lowers its other sides, least
 * heights first. Only for convex patterns, where the lowest way on is never shorter than the straight one.
 * Source: Huygens' principle with a polygonal gauge; order as in Dijkstra's method.
 */
export class Front {
  readonly #mesh: Triangulation;
  readonly #pattern: SlopePattern;
  readonly #sides: readonly Side[];
  /** Slot from the other triangle, -1 at the boundary. */
  readonly #twin: Int32Array;
  /** Known heights, kept at the lower slot of each pair and in its direction. */
  readonly #profiles: readonly (Profile | null)[];
  readonly #corners = new Map<number, Reach[]>();
  /** Per slot: where heights changed that its triangle has not been told of. */
  readonly #news: ({ s0: number; s1: number } | null)[];
  readonly #queue: LevelHeap;

  constructor(mesh: Triangulation, pattern: SlopePattern, seeds: readonly Seed[]) {
    this.#mesh = mesh;
    this.#pattern = pattern;
    this.#twin = Int32Array.from(mesh.corners, (_, slot) => twinSlot(mesh, slot));
    const { corners, points } = mesh;
    this.#sides = Array.from(corners, (id, slot): Side => {
      const [a, b] = [points[id], points[corners[nextSlot(slot)]]];
      return { at: a, along: direction(a, b), lengthFt: distanceFt(a, b) };
    });
    this.#profiles = this.#sides.map(({ lengthFt }, slot) =>
      this.#keeper(slot) === slot ? new Profile(lengthFt) : null,
    );
    this.#news = this.#sides.map(() => null);
    this.#queue = new LevelHeap(corners.length);
    this.#start(seeds);
    this.#spread();
  }

  /** Pieces that one triangle is made of before the lowest is taken: they may overlap. */
  sharesOf(triangle: number): Share[] {
    const { corners, points } = this.#mesh;
    const own: Convex = [0, 1, 2].map((k) => points[corners[3 * triangle + k]]);
    const reaches = [...(this.#corners.get(triangle) ?? [])];
    for (let slot = 3 * triangle; slot < 3 * triangle + 3; slot++) reaches.push(...this.#sentBy(slot, null));
    return reaches.flatMap((reach): Share[] => {
      const right = cut(own, (p) => insideRight(reach, p));
      const ring = right.length === 0 ? right : cut(right, (p) => insideLeft(reach, p));
      return isSliver(ring) ? [] : [{ ring, reach }];
    });
  }

  #keeper(slot: number): number {
    const twin = this.#twin[slot];
    return twin >= 0 && twin < slot ? twin : slot;
  }

  #start(seeds: readonly Seed[]): void {
    const { corners, points } = this.#mesh;
    const slotsOf = new Map<number, number[]>();
    for (const seed of seeds) if (seed.kind === 'corner') slotsOf.set(seed.vertex, []);
    corners.forEach((vertex, slot) => {
      slotsOf.get(vertex)?.push(slot);
    });
    for (const seed of seeds) {
      if (seed.kind === 'side') {
        const { lengthFt } = this.#sides[seed.slot];
        const { levelIn, outlet } = seed;
        this.#lower(seed.slot, { s0: 0, s1: lengthFt, h0: levelIn, h1: levelIn, outlet, from: STARTED });
        continue;
      }
      const reaches = reachesOfPoint(this.#pattern, points[seed.vertex], seed.levelIn, seed.outlet);
      for (const slot of slotsOf.get(seed.vertex) ?? []) {
        const triangle = Math.floor(slot / 3);
        this.#corners.set(triangle, [...(this.#corners.get(triangle) ?? []), ...reaches]);
        const opposite = nextSlot(slot);
        for (const reach of reaches) {
          this.#meet(opposite, reach, triangle);
          for (const beside of [slot, nextSlot(opposite)]) this.#meet(beside, reach, KNOWN);
        }
      }
    }
  }

  #spread(): void {
    while (this.#queue.size > 0) {
      const slot = this.#queue.pop();
      const news = this.#news[slot];
      if (news === null) continue;
      this.#news[slot] = null;
      const others = [nextSlot(slot), nextSlot(nextSlot(slot))];
      for (const reach of this.#sentBy(slot, news))
        for (const other of others) this.#meet(other, reach, Math.floor(slot / 3));
    }
  }

  /** What the heights along a slot's side send into the slot's triangle; all of them, or those that are news. */
  #sentBy(slot: number, news: { s0: number; s1: number } | null): Reach[] {
    const triangle = Math.floor(slot / 3);
    const known = this.#profileOf(slot);
    const entering = ({ from, s0, s1 }: Stretch): boolean =>
      from !== triangle && from !== KNOWN && (news === null || (s1 > news.s0 - NEAR_FT && s0 < news.s1 + NEAR_FT));
    return reachesOfSide(this.#sides[slot], this.#pattern, known, entering);
  }

  /** Known heights along a side in the direction of this slot. */
  #profileOf(slot: number): readonly Stretch[] {
    const keeper = this.#keeper(slot);
    const known = this.#profiles[keeper]?.stretches ?? [];
    return keeper === slot ? known : known.map((stretch) => this.#turned(stretch, slot)).reverse();
  }

  #turned({ s0, s1, h0, h1, outlet, from }: Stretch, slot: number): Stretch {
    const { lengthFt } = this.#sides[slot];
    return { s0: lengthFt - s1, s1: lengthFt - s0, h0: h1, h1: h0, outlet, from };
  }

  /** Lowers a side by what a reach brings to it from inside the slot's own triangle. */
  #meet(slot: number, reach: Reach, from: number): void {
    const side = this.#sides[slot];
    const end: Point = this.#mesh.points[this.#mesh.corners[nextSlot(slot)]];
    let [first, last] = [0, side.lengthFt];
    for (const inside of [insideRight, insideLeft]) {
      const [a, b] = [inside(reach, side.at), inside(reach, end)];
      if (a < 0 && b < 0) return;
      if (a < 0) first = Math.max(first, (side.lengthFt * a) / (a - b));
      else if (b < 0) last = Math.min(last, (side.lengthFt * a) / (a - b));
    }
    if (last - first < NEAR_FT) return;
    const heightAt = (s: number): number =>
      heightIn(reach.plane, [side.at[0] + side.along[0] * s, side.at[1] + side.along[1] * s]);
    const [h0, h1] = [heightAt(first), heightAt(last)];
    this.#lower(slot, { s0: first, s1: last, h0, h1, outlet: reach.outlet, from });
  }

  #lower(slot: number, offer: Stretch): void {
    const keeper = this.#keeper(slot);
    const gain = this.#profiles[keeper]?.lower(keeper === slot ? offer : this.#turned(offer, slot)) ?? null;
    if (gain === null) return;
    const least = Math.min(offer.h0, offer.h1);
    if (offer.from === KNOWN) return;
    // What arrives through a triangle is news beyond the side; what starts on a side is news in its triangle.
    const told = offer.from === STARTED ? [slot] : [this.#twin[slot]];
    for (const teller of told) {
      if (teller < 0) continue;
      const { lengthFt } = this.#sides[teller];
      const here = teller === keeper ? gain : { s0: lengthFt - gain.s1, s1: lengthFt - gain.s0 };
      const before = this.#news[teller];
      this.#news[teller] =
        before === null ? here : { s0: Math.min(before.s0, here.s0), s1: Math.max(before.s1, here.s1) };
      this.#queue.push(least, teller);
    }
  }
}
