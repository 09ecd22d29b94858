import { cut } from '../geometry/convex.ts';
import { addPlanes, type Plane, planeThrough } from '../geometry/plane.ts';
import { bearingVector, dot } from '../geometry/vector.ts';
import type { Assumption } from '../report/types.ts';
import type { JoistSag, Joists, Point, Ring } from '../roof.ts';
import type { Patch } from '../surface/patch.ts';

/** A span hangs in so many straight strips: at 32 the middle of a strip is 1/1024 of the sag off the curve. */
const STRIPS = 32;

/** A span of joists this much longer than the section still is one span of it. */
const SAME_SPAN_FT = 1e-6;

/** How far a surface hangs between its supports, at every point. */
export interface SagShape {
  /** Depth of the sag at the middle of a span; in. */
  depthIn: number;
  spanFt: number;
  /** Unit vector along the joists. */
  along: Point;
  /** Where the first span starts, measured along the joists. */
  startFt: number;
  spans: number;
  assumed: readonly Assumption[];
}

const extentFt = (outline: Ring, along: Point): readonly [number, number] => {
  const at = outline.map((p) => dot(p, along));
  return [Math.min(...at), Math.max(...at)];
};

/** To 1e-12, so that a bearing of 90 degrees runs along the axis. */
const unit = (bearingDeg: number): Point => {
  const [x, y] = bearingVector(bearingDeg);
  return [Math.round(x * 1e12) / 1e12, Math.round(y * 1e12) / 1e12];
};

function shorterWayDeg(outline: Ring): number {
  const width = (deg: number): number => {
    const [low, high] = extentFt(outline, unit(deg));
    return high - low;
  };
  return width(90) < width(0) - SAME_SPAN_FT ? 90 : 0;
}

/**
 * The sag of a roof file as a shape over the section: parabolas between supports, span after span from the section's edge.
 * What is not said is taken from the deck's joists, then from the section, and listed.
 * Correctness: tests/cases/sagged-decks.test.ts, tests/unit/drainage/joist-sag.test.ts
 */
export function sagShape(sag: JoistSag, joists: Joists | null, outline: Ring): SagShape {
  const assumed: Assumption[] = [];
  const or = (given: number | null, otherwise: number, key: string, words: string, because: string): number => {
    if (given !== null) return given;
    assumed.push({
      path: `existing.sag.${key}`,
      value: words,
      because,
      findOut: 'look from below, or at a lifted edge',
    });
    return otherwise;
  };
  const shorter = shorterWayDeg(outline);
  const bearing = or(
    sag.directionDeg ?? joists?.directionDeg ?? null,
    shorter,
    'directionDeg',
    shorter === 90 ? 'east and west' : 'north and south',
    'which way the joists run was not said: the shorter way',
  );
  const along = unit(bearing);
  const [low, high] = extentFt(outline, along);
  const spanFt = or(
    sag.spanFt ?? joists?.spanFt ?? null,
    high - low,
    'spanFt',
    `${Math.round((high - low) * 100) / 100} ft`,
    'the span was not given: one span over the whole section',
  );
  const depthIn = sag.depthIn ?? (sag.spanOver === null ? 0 : (spanFt * 12) / sag.spanOver);
  const spans = Math.max(1, Math.ceil((high - low - SAME_SPAN_FT) / spanFt));
  return { depthIn, spanFt, along, startFt: low, spans, assumed };
}

/** How far the curve hangs [in] at a distance [ft] from the start of the first span: 4 D t (1 - t). */
function hangIn({ depthIn, spanFt }: SagShape, ft: number): number {
  const t = ft / spanFt - Math.floor(ft / spanFt + 1e-12);
  return 4 * depthIn * t * (1 - t);
}

const stripFt = ({ spanFt }: SagShape): number => spanFt / STRIPS;

/** Change of height [in] at a point: on the curve at the ends of every strip, straight between them. */
export function sagAtIn(shape: SagShape, p: Point): number {
  const width = stripFt(shape);
  const ft = dot(p, shape.along) - shape.startFt;
  const strip = Math.floor(ft / width + 1e-9);
  const [from, to] = [hangIn(shape, strip * width), hangIn(shape, (strip + 1) * width)];
  return -(from + ((to - from) * (ft - strip * width)) / width);
}

/** A surface with the sag in it, cut into the strips of the spans. */
export function sagged(patches: readonly Patch[], shape: SagShape): Patch[] {
  const width = stripFt(shape);
  const along = (p: Point): number => dot(p, shape.along) - shape.startFt;
  return patches.flatMap((patch) => {
    const at = patch.ring.map(along);
    const first = Math.floor(Math.min(...at) / width + 1e-9);
    const last = Math.ceil(Math.max(...at) / width - 1e-9);
    return Array.from({ length: last - first }, (_, i) => first + i).flatMap((strip): Patch[] => {
      const [from, to] = [strip * width, (strip + 1) * width];
      const ring = cut(
        cut(patch.ring, (p) => along(p) - from),
        (p) => to - along(p),
      );
      if (ring.length === 0) return [];
      return [{ ...patch, ring, plane: addPlanes(patch.plane, stripPlane(shape, from, to)) }];
    });
  });
}

function stripPlane(shape: SagShape, from: number, to: number): Plane {
  const [start, end] = [hangIn(shape, from), hangIn(shape, to)];
  const fall = (end - start) / (to - from);
  const [x, y] = shape.along;
  const at: Point = [x * (shape.startFt + from), y * (shape.startFt + from)];
  return planeThrough(at, -start, -fall * x, -fall * y);
}
