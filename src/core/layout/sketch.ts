import { coverBoard } from '../../../reference/insulation.ts';
import { heightIn } from '../geometry/plane.ts';
import { type Box, boxOf, orient } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';
import type { Site } from '../site/site.ts';
import type { Patch } from '../surface/patch.ts';
import { envelope } from '../taper/envelope.ts';
import type { TaperOutlet } from '../taper/sources.ts';
import { spotsOf } from './check.ts';
import type { BoardGround } from './ground.ts';
import type { Limit } from './limits.ts';
import { type LayoutPlan, startsOf } from './plan.ts';
import { momentsOf } from './thermal.ts';

/** A layout as far as it can be told without building it: enough to compare, not enough to offer. */
export interface Sketch {
  plan: LayoutPlan;
  slopeInPerFt: number;
  baseIn: number;
  boardFt: number;
  greatestIn: number;
  /** Least slope of the valleys about the outlets, as far as the boards make it. */
  valleyInPerFt: number;
  /** The hard height that it breaks most, and by how much; null when it keeps them all. */
  short: { limit: Limit; byIn: number } | null;
}

/** Heights of a surface at fixed places; where pieces meet the lower holds, null where nothing lies. */
export function heightsAt(patches: readonly Patch[], places: readonly Point[]): (number | null)[] {
  const boxes = patches.map(({ ring }) => boxOf(ring));
  const near = ({ minX, maxX, minY, maxY }: Box, [x, y]: Point): boolean =>
    x >= minX - 1e-4 && x <= maxX + 1e-4 && y >= minY - 1e-4 && y <= maxY + 1e-4;
  return places.map((p) => {
    let best: number | null = null;
    patches.forEach(({ ring, plane }, i) => {
      if (!near(boxes[i], p)) return;
      if (!ring.every((a, k) => orient(a, ring[(k + 1) % ring.length], p) >= -1e-4)) return;
      const here = heightIn(plane, p);
      if (best === null || here < best) best = here;
    });
    return best;
  });
}

interface Spot {
  limit: Limit;
  at: Point;
  /** What the place allows over the base. */
  allowedIn: number;
}

/** Hard heights of a roof at the spots where they are checked. */
export function hardSpots(site: Site, limits: readonly Limit[]): Spot[] {
  return limits.flatMap((limit) => {
    const { allowedIn, hardness } = limit;
    if (allowedIn === null || hardness !== 'stop') return [];
    const [from, to] = allowedIn;
    return spotsOf(site, limit).map(({ p, t }) => ({ limit, at: p, allowedIn: from + (to - from) * t }));
  });
}

interface Unit {
  starts: readonly TaperOutlet[];
  levelIn: number;
  areaSqFt: number;
  boardFt: number;
  greatestIn: number;
  heights: readonly (number | null)[];
}

const SAME_IN = 1e-9;

/**
 * Sketches of one plan in one form, at any slope and base. Where all outlets start at one level the heights over it
 * grow with the slope alone, and one surface serves all of them.
 */
export class Sketcher {
  readonly #site: Site;
  readonly #plan: LayoutPlan;
  readonly #spots: readonly Spot[];
  /** Levelling or fill under the boards at the spots. */
  readonly #underIn: readonly number[];
  #unit: { slopeInPerFt: number; unit: Unit } | null = null;

  constructor(site: Site, plan: LayoutPlan, ground: BoardGround, spots: readonly Spot[]) {
    this.#site = site;
    this.#plan = plan;
    this.#spots = spots;
    const places = spots.map(({ at }) => at);
    this.#underIn = heightsAt(ground.fill, places).map((fill) => fill ?? 0);
  }

  #unitAt(starts: readonly TaperOutlet[]): Unit {
    const patches = envelope(this.#site.section, starts);
    const { areaSqFt, boardFt, greatestIn } = momentsOf(patches);
    const places = this.#spots.map(({ at }) => at);
    return { starts, levelIn: starts[0].levelIn, areaSqFt, boardFt, greatestIn, heights: heightsAt(patches, places) };
  }

  at(slopeInPerFt: number, baseIn: number): Sketch | null {
    const starts = startsOf(this.#site, this.#plan, slopeInPerFt, baseIn);
    if (starts.length === 0) return null;
    const [{ levelIn }] = starts;
    const level = starts.every((start) => Math.abs(start.levelIn - levelIn) < SAME_IN);
    if (level) this.#unit ??= { slopeInPerFt, unit: this.#unitAt(starts) };
    const kept = level ? this.#unit : null;
    const unit = kept?.unit ?? this.#unitAt(starts);
    const grows = kept === null ? 1 : slopeInPerFt / kept.slopeInPerFt;
    const scaled = (value: number): number => levelIn + (value - unit.levelIn) * grows;
    return {
      plan: this.#plan,
      slopeInPerFt,
      baseIn,
      boardFt: unit.areaSqFt * scaled(unit.boardFt / unit.areaSqFt),
      greatestIn: scaled(unit.greatestIn),
      valleyInPerFt: Math.min(...starts.map(({ pattern }) => pattern.leastRiseInPerFt)),
      short: this.#short(unit.heights.map((height) => (height === null ? null : scaled(height)))),
    };
  }

  #short(heights: readonly (number | null)[]): Sketch['short'] {
    let worst: Sketch['short'] = null;
    heights.forEach((height, i) => {
      if (height === null) return;
      const { limit, allowedIn } = this.#spots[i];
      const byIn = height + this.#underIn[i] + coverBoard.thicknessIn - allowedIn;
      if (byIn > 1e-6 && (worst === null || byIn > worst.byIn)) worst = { limit, byIn };
    });
    return worst;
  }
}
