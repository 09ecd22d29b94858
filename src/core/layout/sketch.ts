import { coverBoard } from '../../../reference/insulation.ts';
import { heightIn } from '../geometry/plane.ts';
import { type Box, boxOf, orient } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';
import type { Site } from '../site/site.ts';
import type { Patch } from '../surface/patch.ts';
import { envelope } from '../taper/envelope.ts';
import type { TaperOutlet } from '../taper/sources.ts';
import { cornersOf, spotsOf } from './check.ts';
import type { BoardGround } from './ground.ts';
import type { Limit } from './limits.ts';
import { type LayoutPlan, startsOf } from './plan.ts';
import { momentsOf } from './thermal.ts';

/** A hard height that is broken, and by how much. */
export interface Short {
  limit: Limit;
  byIn: number;
}

/** A layout as far as it can be told without building it: enough to compare, not enough to offer. */
export interface Sketch {
  plan: LayoutPlan;
  slopeInPerFt: number;
  baseIn: number;
  boardFt: number;
  greatestIn: number;
  /** Where the taper starts at its outlets. */
  levelsIn: readonly number[];
  /** Least slope of the valleys about the outlets, as far as the boards make it. */
  valleyInPerFt: number;
  /** The hard heights that it breaks, the worst first; null when it keeps them all. */
  short: readonly Short[] | null;
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

/** Hard heights of a roof at the spots where a surface with these corners is held against them. */
function hardSpots(site: Site, limits: readonly Limit[], corners: readonly Point[]): Spot[] {
  return limits.flatMap((limit) => {
    const { allowedIn, hardness } = limit;
    if (allowedIn === null || hardness !== 'stop') return [];
    const [from, to] = allowedIn;
    return spotsOf(site, limit, corners).map(({ p, t }) => ({ limit, at: p, allowedIn: from + (to - from) * t }));
  });
}

interface Unit {
  starts: readonly TaperOutlet[];
  levelIn: number;
  areaSqFt: number;
  boardFt: number;
  greatestIn: number;
  /** Hard heights where this surface is held against them, and what lies there. */
  spots: readonly Spot[];
  heights: readonly (number | null)[];
  /** Levelling or fill under the boards at the spots. */
  underIn: readonly number[];
}

const SAME_IN = 1e-9;

/**
 * Sketches of one plan in one form, at any slope and base. Where all outlets start at one level the heights over it
 * grow with the slope alone, and one surface serves all of them.
 */
export class Sketcher {
  readonly #site: Site;
  readonly #plan: LayoutPlan;
  readonly #limits: readonly Limit[];
  readonly #ground: BoardGround;
  #unit: { slopeInPerFt: number; unit: Unit } | null = null;

  constructor(site: Site, plan: LayoutPlan, ground: BoardGround, limits: readonly Limit[]) {
    this.#site = site;
    this.#plan = plan;
    this.#limits = limits;
    this.#ground = ground;
  }

  #unitAt(starts: readonly TaperOutlet[]): Unit {
    const patches = envelope(this.#site.section, starts);
    const { areaSqFt, boardFt, greatestIn } = momentsOf(patches);
    const spots = hardSpots(this.#site, this.#limits, cornersOf([...patches, ...this.#ground.fill]));
    const places = spots.map(({ at }) => at);
    const heights = heightsAt(patches, places);
    const underIn = heightsAt(this.#ground.fill, places).map((fill) => fill ?? 0);
    return { starts, levelIn: starts[0].levelIn, areaSqFt, boardFt, greatestIn, spots, heights, underIn };
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
      levelsIn: starts.map((start) => start.levelIn),
      valleyInPerFt: Math.min(...starts.map(({ pattern }) => pattern.leastRiseInPerFt)),
      short: shortOf(unit, scaled),
    };
  }
}

/** Every hard height that a surface breaks, the worst first; null when it keeps them all. */
function shortOf({ spots, heights, underIn }: Unit, scaled: (value: number) => number): Sketch['short'] {
  const worst = new Map<string, Short>();
  heights.forEach((height, i) => {
    if (height === null) return;
    const { limit, allowedIn } = spots[i];
    const byIn = scaled(height) + underIn[i] + coverBoard.thicknessIn - allowedIn;
    if (byIn > 1e-6 && byIn > (worst.get(limit.id)?.byIn ?? 0)) worst.set(limit.id, { limit, byIn });
  });
  const all = [...worst.values()].sort((a, b) => b.byIn - a.byIn);
  return all.length === 0 ? null : all;
}
