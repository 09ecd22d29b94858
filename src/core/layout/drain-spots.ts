import { bearingVector, distanceFt, dot, isInside, toSegment } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';
import { isOpenEdge } from '../site/offers.ts';
import { outletPoint, type Site } from '../site/site.ts';
import { axisDeg, workingOutlets } from './plan.ts';

/** A drain keeps so far from edges and from other outlets. */
export const FAR_IN_FT = 3;

/** A place that a curb takes is left for another so near. */
const NEAR_FT = 5;

/** Samples along the longer way at least, and feet between them at most: fine enough to tell arms of a section apart. */
const LEAST_ALONG = 24;
const STEP_FT = 2;
const MOST_ALONG = 60;
/** Rounds after which new spots stay where they are. */
const ROUNDS = 6;

/** To the half foot, as it would be marked on the deck. */
export function roundedInside(site: Site, p: Point): Point {
  const near: Point = [Math.round(p[0] * 2) / 2, Math.round(p[1] * 2) / 2];
  return isInside(near, site.section.rings) ? near : p;
}

/** And so far from a curb. */
const OFF_CURB_FT = 1;

/** Whether a curb leaves room for a drain. */
export const isOffCurbs = ({ roof }: Site, spot: Point): boolean =>
  roof.curbs.every(({ outline }) =>
    outline.every((a, i) => toSegment(spot, a, outline[(i + 1) % outline.length]).distanceFt >= OFF_CURB_FT),
  );

/** Whether a drain can be set there: on the roof, off its edges and curbs, away from other outlets. */
export const isClear = (site: Site, spot: Point): boolean =>
  isOffCurbs(site, spot) &&
  site.edges.every((edge) => toSegment(spot, edge.from, edge.to).distanceFt > FAR_IN_FT) &&
  isInside(spot, site.section.rings) &&
  site.roof.outlets.every((outlet) => distanceFt(outletPoint(site.roof, outlet), spot) >= FAR_IN_FT);

/**
 * Spots for new drains from which the ways over the section are short, beside what takes water already. Of an empty
 * rectangle those are its middle and the middles of its halves; of other shapes the middle of the box about the part that
 * a drain serves where that lies on the roof, else the clear spot whose farthest way is shortest.
 */
export class DrainSpots {
  readonly #site: Site;
  readonly #axes: readonly [Point, Point];
  readonly #cell: readonly [number, number];
  readonly #samples: readonly Point[];

  constructor(site: Site) {
    this.#site = site;
    const along = bearingVector(axisDeg(site));
    this.#axes = [[along[1], -along[0]], along];
    const local = site.outline.map((p) => this.#local(p));
    const least = [0, 1].map((k) => Math.min(...local.map((q) => q[k])));
    const lengths = [0, 1].map((k) => Math.max(...local.map((q) => q[k])) - least[k]);
    // An even number of cells, so that a half ends where a cell does.
    const longest = Math.max(...lengths);
    const stepFt = Math.min(longest / LEAST_ALONG, Math.max(STEP_FT, longest / MOST_ALONG));
    const counts = lengths.map((length) => 2 * Math.max(1, Math.ceil(length / stepFt / 2)));
    this.#cell = [lengths[0] / counts[0], lengths[1] / counts[1]];
    const samples: Point[] = [];
    for (let i = 0; i < counts[0]; i++)
      for (let j = 0; j < counts[1]; j++) {
        const q: Point = [least[0] + (i + 0.5) * this.#cell[0], least[1] + (j + 0.5) * this.#cell[1]];
        if (isInside(this.#world(q), site.section.rings)) samples.push(q);
      }
    this.#samples = samples;
  }

  #local(p: Point): Point {
    return [dot(p, this.#axes[0]), dot(p, this.#axes[1])];
  }

  #world([x, y]: Point): Point {
    const [u, v] = this.#axes;
    return [x * u[0] + y * v[0], x * u[1] + y * v[1]];
  }

  /** How far boards rise from one spot to another: along the axes of a four-way taper the longer way counts. */
  #wayFt(a: Point, b: Point): number {
    return Math.max(Math.abs(a[0] - b[0]), Math.abs(a[1] - b[1]));
  }

  /** Best spot of a part; null where none of it is clear. */
  #spotOf(part: readonly Point[]): Point | null {
    if (part.length === 0) return null;
    const [x, y] = ([0, 1] as const).map((k) => part.map((q) => q[k]));
    const [low, high]: [Point, Point] = [
      [Math.min(...x), Math.min(...y)],
      [Math.max(...x), Math.max(...y)],
    ];
    const boxed = roundedInside(this.#site, this.#world([(low[0] + high[0]) / 2, (low[1] + high[1]) / 2]));
    if (isClear(this.#site, boxed)) return boxed;
    const farthest = (q: Point): number => Math.max(this.#wayFt(q, low), this.#wayFt(q, high));
    const clear = part
      .map((q) => ({ at: roundedInside(this.#site, this.#world(q)), far: farthest(q) }))
      .filter(({ at }) => isClear(this.#site, at));
    return clear.length === 0 ? null : clear.reduce((a, b) => (b.far < a.far - 1e-9 ? b : a)).at;
  }

  /** Ways to what takes water already: working outlets and open edges. */
  #takenFt(q: Point): number {
    const p = this.#world(q);
    const { roof, edges } = this.#site;
    const points = workingOutlets(this.#site).filter(({ role }) => role === 'primary');
    return Math.min(
      Number.POSITIVE_INFINITY,
      ...points.map((outlet) => this.#wayFt(q, this.#local(outletPoint(roof, outlet)))),
      ...edges.filter(isOpenEdge).map(({ from, to }) => toSegment(p, from, to).distanceFt),
    );
  }

  /** New spots moved into the middle of what they alone shorten, beside what takes water already. */
  #settled(first: readonly Point[]): readonly Point[] | null {
    const taken = this.#samples.map((q) => this.#takenFt(q));
    let spots = first;
    for (let round = 0; round < ROUNDS; round++) {
      const local = spots.map((p) => this.#local(p));
      const parts: Point[][] = local.map(() => []);
      this.#samples.forEach((q, i) => {
        const ways = local.map((p) => this.#wayFt(p, q));
        const near = ways.indexOf(Math.min(...ways));
        if (ways[near] < taken[i]) parts[near].push(q);
      });
      const moved = parts.map((part) => this.#spotOf(part));
      if (moved.some((spot) => spot === null)) return null;
      const next = moved.filter((spot): spot is Point => spot !== null);
      if (next.every((p, i) => distanceFt(p, spots[i]) < 1e-6)) break;
      spots = next;
    }
    return spots;
  }

  /** The clear spot that is nearest to a place; null where none is near. */
  nearest(p: Point): Point | null {
    const spots = this.#samples.map((q) => roundedInside(this.#site, this.#world(q)));
    const clear = spots.filter((at) => distanceFt(at, p) < NEAR_FT && isClear(this.#site, at));
    return clear.length === 0 ? null : clear.reduce((a, b) => (distanceFt(b, p) < distanceFt(a, p) ? b : a));
  }

  /** One spot: the middle, or where the ways are longest beside what takes water already. */
  one(): Point | null {
    const middle = this.#spotOf(this.#samples);
    return middle === null ? null : (this.#settled([middle])?.[0] ?? middle);
  }

  /** Two spots, from the middles of the halves; null where there is no room for them. */
  two(): readonly Point[] | null {
    const spread = (k: 0 | 1): number =>
      Math.max(...this.#samples.map((q) => q[k])) - Math.min(...this.#samples.map((q) => q[k]));
    const long = spread(0) > spread(1) + 1e-9 ? 0 : 1;
    const sorted = [...this.#samples].sort((a, b) => a[long] - b[long] || a[1 - long] - b[1 - long]);
    const at = Math.ceil(sorted.length / 2);
    const [a, b] = [this.#spotOf(sorted.slice(0, at)), this.#spotOf(sorted.slice(at))];
    if (a === null || b === null) return null;
    const spots = this.#settled([a, b]) ?? [a, b];
    return distanceFt(spots[0], spots[1]) < 2 * FAR_IN_FT ? null : spots;
  }
}
