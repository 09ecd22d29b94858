import { heightIn, type Plane, planeOfTriangle } from '../core/geometry/plane.ts';
import { centroid, direction, distanceFt, dot } from '../core/geometry/vector.ts';
import type { Assessment, Layout, Point, PondReport, Ring } from '../core/report/types.ts';
import { alongRay, type Ray, stretchesInside } from './crossings.ts';

/** A straight cut through the roof: where, and what it is called. */
export interface Cut {
  /** Letter by which the plans name it. */
  name: string;
  ray: Ray;
  fromFt: number;
  toFt: number;
  /** How many times larger heights are drawn than lengths, the same before and after. */
  scale: number;
}

export interface Stretch {
  from: number;
  to: number;
  startIn: number;
  endIn: number;
}

export interface Piece {
  rings: readonly Ring[];
  plane: Plane;
}

/** Off the corners of the surface, so that no side is met along its length. */
const OFF_FT = 1.7e-3;
/** Height of the drawn roof against its length. */
const TALL = 0.26;
/** A roof flatter than this is drawn as if it fell so much. */
const LEAST_RANGE_IN = 0.5;
const SCALES = [1, 2, 4, 6, 8, 12, 16, 24, 32, 48, 64, 96];

export const surfaceBefore = (assessment: Assessment): Piece[] =>
  assessment.existing.surface.map(({ a, b, c, z }) => ({ rings: [[a, b, c]], plane: planeOfTriangle(a, b, c, ...z) }));

export const surfaceAfter = (layout: Layout): Piece[] =>
  layout.facets.map(({ outline, holes, plane }) => ({ rings: [outline, ...holes], plane }));

/**
 * Two cuts through the deepest water, or the middle of the section, along and across the long side: first the one along
 * which the new roof falls furthest.
 */
export function cutsThrough(assessment: Assessment, layout: Layout | null): Cut[] {
  const { outline, edges } = assessment.plan;
  const worst = [...assessment.existing.ponds].sort((a, b) => b.greatestDepthIn - a.greatestDepthIn)[0];
  const spot = worst?.deepestAt ?? centroid(outline);
  const long = [...edges].sort((a, b) => b.lengthFt - a.lengthFt)[0];
  if (long === undefined) return [];
  const [ux, uy] = direction(long.from, long.to);
  const old = surfaceBefore(assessment);
  const pieces = layout === null ? old : surfaceAfter(layout);
  const cuts = (
    [
      [ux, uy],
      [-uy, ux],
    ] as Point[]
  ).flatMap((toward) => {
    const [dx, dy] = dot(toward, [1, 1]) < 0 ? [-toward[0], -toward[1]] : toward;
    const ray: Ray = { at: [spot[0] - dy * OFF_FT, spot[1] + dx * OFF_FT], toward: [dx, dy] };
    const inside = stretchesInside(ray, [outline]).find(([from, to]) => from < 0.01 && to > -0.01);
    if (inside === undefined) return [];
    const [fromFt, toFt] = inside;
    const rangeIn = Math.max(rangeOf(profile([...old, ...pieces], ray)), LEAST_RANGE_IN);
    const scale = SCALES.filter((each) => (each * rangeIn) / 12 <= TALL * (toFt - fromFt)).at(-1) ?? 1;
    return [{ ray, fromFt, toFt, scale, fallIn: rangeOf(profile(pieces, ray)) }];
  });
  return cuts.sort((a, b) => b.fallIn - a.fallIn).map(({ fallIn: _, ...cut }, i) => ({ ...cut, name: 'AB'[i] }));
}

function rangeOf(stretches: readonly Stretch[]): number {
  const heights = stretches.flatMap(({ startIn, endIn }) => [startIn, endIn]);
  return heights.length === 0 ? 0 : Math.max(...heights) - Math.min(...heights);
}

export function profile(pieces: readonly Piece[], ray: Ray): Stretch[] {
  return pieces
    .flatMap(({ rings, plane }) =>
      stretchesInside(ray, rings).map(([from, to]) => ({
        from,
        to,
        startIn: heightIn(plane, alongRay(ray, from)),
        endIn: heightIn(plane, alongRay(ray, to)),
      })),
    )
    .sort((a, b) => a.from - b.from);
}

/** Unbroken lines of a profile: a curb or a step breaks it. */
export function runs(stretches: readonly Stretch[]): Point[][] {
  const out: Point[][] = [];
  for (const { from, to, startIn, endIn } of stretches) {
    const last = out.at(-1)?.at(-1);
    if (last !== undefined && Math.abs(last[0] - from) < 1e-2 && Math.abs(last[1] - startIn) < 1e-2)
      out.at(-1)?.push([to, endIn]);
    else
      out.push([
        [from, startIn],
        [to, endIn],
      ]);
  }
  return out;
}

/** Level of a pond: its depth over the corner of the surface where it is deepest; null where that is no corner. */
function levelOf({ deepestAt, greatestDepthIn }: PondReport, pieces: readonly Piece[]): number | null {
  const bottoms = pieces.flatMap(({ rings, plane }) =>
    rings.flat().flatMap((p) => (distanceFt(p, deepestAt) < 1e-2 ? [heightIn(plane, p)] : [])),
  );
  return bottoms.length === 0 ? null : Math.min(...bottoms) + greatestDepthIn;
}

/** Water over a profile, under the level of each pond that the cut passes. */
export function water(
  ponds: readonly PondReport[],
  pieces: readonly Piece[],
  stretches: readonly Stretch[],
  ray: Ray,
): { ring: Point[]; pond: PondReport; deepest: Point; levelIn: number }[] {
  return ponds.flatMap((pond) => {
    const wet = stretchesInside(ray, [pond.outline, ...pond.holes]);
    const spans = stretches.flatMap((stretch) =>
      wet.flatMap(([from, to]) => {
        const [a, b] = [Math.max(from, stretch.from), Math.min(to, stretch.to)];
        return b - a < 1e-6 ? [] : [{ a, b, za: at(stretch, a), zb: at(stretch, b) }];
      }),
    );
    if (spans.length === 0) return [];
    const ground = spans.flatMap(({ a, b, za, zb }): Point[] => [
      [a, za],
      [b, zb],
    ]);
    const lowIn = Math.min(...ground.map(([, z]) => z));
    // Of a pond that was only seen the shore in the cut says the level, its depth over the lowest point is the bound.
    const levelIn =
      levelOf(pond, pieces) ?? Math.min(Math.max(...ground.map(([, z]) => z)), lowIn + pond.greatestDepthIn);
    const deepest = ground.reduce((low, p) => (p[1] < low[1] ? p : low));
    return [
      { ring: [...ground, [ground.at(-1)![0], levelIn], [ground[0][0], levelIn]] as Point[], pond, deepest, levelIn },
    ];
  });
}

const at = ({ from, to, startIn, endIn }: Stretch, t: number): number =>
  startIn + ((endIn - startIn) * (t - from)) / (to - from);
