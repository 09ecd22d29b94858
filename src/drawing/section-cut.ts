import { heightIn, type Plane, planeOfTriangle } from '../core/geometry/plane.ts';
import { centroid, direction, distanceFt, dot } from '../core/geometry/vector.ts';
import { depthFigure } from '../core/report/page-figures.ts';
import type { Assessment, Layout, Point, PondReport, Ring } from '../core/report/types.ts';
import { feetInches, inches } from '../units/print.ts';
import { alongRay, type Ray, stretchesInside } from './crossings.ts';
import { type DrawList, lettering, line, type Mark, polygon } from './draw-list.ts';

/** A straight cut through the roof: where, and what it is called. */
export interface Cut {
  ray: Ray;
  fromFt: number;
  toFt: number;
  /** How many times larger heights are drawn than lengths, the same before and after. */
  scale: number;
}

interface Stretch {
  from: number;
  to: number;
  startIn: number;
  endIn: number;
}

interface Piece {
  rings: readonly Ring[];
  plane: Plane;
}

/** Off the corners of the surface, so that no side is met along its length. */
const OFF_FT = 1.7e-3;
const LETTERS_ACROSS = 32;
/** Height of the drawn roof against its length. */
const TALL = 0.26;
/** A roof flatter than this is drawn as if it fell so much. */
const LEAST_RANGE_IN = 0.5;
const SCALES = [1, 2, 4, 6, 8, 12, 16, 24, 32, 48, 64, 96];

const before = (assessment: Assessment): Piece[] =>
  assessment.existing.surface.map(({ a, b, c, z }) => ({ rings: [[a, b, c]], plane: planeOfTriangle(a, b, c, ...z) }));

const after = (layout: Layout): Piece[] =>
  layout.facets.map(({ outline, holes, plane }) => ({ rings: [outline, ...holes], plane }));

/** Through the deepest water, or the middle of the section, along the way the new roof falls furthest. */
export function cutThrough(assessment: Assessment, layout: Layout | null): Cut | null {
  const { outline, edges } = assessment.plan;
  const worst = [...assessment.existing.ponds].sort((a, b) => b.greatestDepthIn - a.greatestDepthIn)[0];
  const spot = worst?.deepestAt ?? centroid(outline);
  const long = [...edges].sort((a, b) => b.lengthFt - a.lengthFt)[0];
  if (long === undefined) return null;
  const [ux, uy] = direction(long.from, long.to);
  const old = before(assessment);
  const pieces = layout === null ? old : after(layout);
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
  return cuts.sort((a, b) => b.fallIn - a.fallIn)[0] ?? null;
}

function rangeOf(stretches: readonly Stretch[]): number {
  const heights = stretches.flatMap(({ startIn, endIn }) => [startIn, endIn]);
  return heights.length === 0 ? 0 : Math.max(...heights) - Math.min(...heights);
}

function profile(pieces: readonly Piece[], ray: Ray): Stretch[] {
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
function runs(stretches: readonly Stretch[]): Point[][] {
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

/** Water over a profile, under the level of each pond that the cut passes. */
function water(
  ponds: readonly PondReport[],
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
    // The shore lies at the water's level; where the cut meets no shore its depth over the lowest point is the bound.
    const levelIn = Math.min(
      Math.max(...ground.map(([, z]) => z)),
      Math.min(...ground.map(([, z]) => z)) + pond.greatestDepthIn,
    );
    const deepest = ground.reduce((low, p) => (p[1] < low[1] ? p : low));
    return [
      { ring: [...ground, [ground.at(-1)![0], levelIn], [ground[0][0], levelIn]] as Point[], pond, deepest, levelIn },
    ];
  });
}

const at = ({ from, to, startIn, endIn }: Stretch, t: number): number =>
  startIn + ((endIn - startIn) * (t - from)) / (to - from);

/** The edge at which a cut ends, in a word or two. */
function endWords(assessment: Assessment, p: Point): string {
  const near = assessment.plan.edges
    .map((edge) => ({ edge, off: distanceToEdge(p, edge.from, edge.to) }))
    .sort((a, b) => a.off - b.off)[0];
  return near === undefined ? '' : near.edge.label.split(',')[0];
}

function distanceToEdge(p: Point, a: Point, b: Point): number {
  const [dx, dy] = direction(a, b);
  const t = Math.max(0, Math.min(distanceFt(a, b), (p[0] - a[0]) * dx + (p[1] - a[1]) * dy));
  return Math.hypot(a[0] + dx * t - p[0], a[1] + dy * t - p[1]);
}

/**
 * A section through the worst water: the roof as it is, or, with a layout, the new surface over the old one.
 * Heights are drawn larger than lengths, by a factor that the drawing states. Null where there is nothing to cut.
 */
export function sectionCut(assessment: Assessment, layout: Layout | null, cut: Cut | null): DrawList | null {
  if (cut === null) return null;
  const { ray } = cut;
  const inCut = ({ from, to }: Stretch): boolean => from > cut.fromFt - 0.01 && to < cut.toFt + 0.01;
  const old = profile(before(assessment), ray).filter(inCut);
  const fresh = layout === null ? [] : profile(after(layout), ray).filter(inCut);
  const all = [...old, ...fresh].flatMap(({ startIn, endIn }) => [startIn, endIn]);
  if (all.length === 0) return null;
  const lengthFt = cut.toFt - cut.fromFt;
  const [lowIn, highIn] = [Math.min(...all), Math.max(...all)];
  const { scale } = cut;
  const letterFt = lengthFt / LETTERS_ACROSS;
  const up = (zIn: number): number => ((zIn - lowIn) / 12) * scale;
  const lift = (points: readonly Point[]): Point[] => points.map(([t, z]) => [t - cut.fromFt, up(z)]);
  const ground = layout === null ? old : fresh;
  const ponds = water(layout === null ? assessment.existing.ponds : layout.ponds, ground, ray);
  const floor = -1.2 * letterFt;
  const body = runs(ground).map((run) => {
    const top = lift(run);
    return polygon([...top, [top.at(-1)![0], floor], [top[0][0], floor]], 'body');
  });
  const top = up(highIn);
  const [leftAt, rightAt] = [alongRay(ray, cut.fromFt), alongRay(ray, cut.toFt)];
  const endHeights = heightWords(ground, lift, letterFt, layout);
  return {
    title: layout === null ? 'Section through the roof as it is' : 'Section through the new roof',
    description: describe(assessment, layout, lengthFt, scale, ponds),
    box: {
      minX: -3.2 * letterFt,
      maxX: lengthFt + 3.2 * letterFt,
      minY: floor - 3.4 * letterFt,
      maxY: top + 3 * letterFt,
    },
    letterFt,
    marks: [
      ...ponds.map(({ ring }) => polygon(lift(ring), 'water-2', 'shore')),
      ...body,
      ...(layout === null ? [] : runs(old).map((run): Mark => ({ kind: 'polyline', points: lift(run), pen: 'old' }))),
      ...runs(ground).map((run): Mark => ({ kind: 'polyline', points: lift(run), pen: 'surface' })),
      ...endHeights,
      ...ponds.map(({ pond, deepest, levelIn }) =>
        lettering(
          [deepest[0] - cut.fromFt, up(levelIn) + 0.9 * letterFt],
          `${depthFigure(pond.greatestDepthIn)} deep`,
          {
            tone: 'water',
            bold: true,
            size: 'small',
          },
        ),
      ),
      lettering([0, floor - 0.9 * letterFt], endWords(assessment, leftAt), { size: 'small', anchor: 'start' }),
      lettering([lengthFt, floor - 0.9 * letterFt], endWords(assessment, rightAt), { size: 'small', anchor: 'end' }),
      line([0, floor - 2 * letterFt], [lengthFt, floor - 2 * letterFt], 'dimension'),
      lettering([lengthFt / 2, floor - 2.7 * letterFt], `${feetInches(lengthFt)}; heights drawn ${scale} times`, {
        size: 'small',
      }),
    ],
  };
}

/** Heights at both ends of the new surface above its lowest point. */
function heightWords(
  ground: readonly Stretch[],
  lift: (points: readonly Point[]) => Point[],
  letterFt: number,
  layout: Layout | null,
): Mark[] {
  const [first, last] = [ground[0], ground.at(-1)];
  if (layout === null || first === undefined || last === undefined) return [];
  const low = Math.min(...ground.flatMap(({ startIn, endIn }) => [startIn, endIn]));
  return [[first.from, first.startIn, 'start'] as const, [last.to, last.endIn, 'end'] as const].map(
    ([t, z, anchor]) => {
      const [[x, y]] = lift([[t, z]]);
      return lettering([x, y + 0.9 * letterFt], `+${inches(z - low)}`, { size: 'small', anchor });
    },
  );
}

function describe(
  assessment: Assessment,
  layout: Layout | null,
  lengthFt: number,
  scale: number,
  ponds: readonly { pond: PondReport }[],
): string {
  const wet = ponds.map(({ pond }) => `Water stands ${depthFigure(pond.greatestDepthIn)} deep.`);
  const what =
    layout === null
      ? `Cut through the roof as it is, ${feetInches(lengthFt)} long`
      : `Cut through the new roof, ${feetInches(lengthFt)} long, the old surface as a broken line`;
  return [`${what}, of ${assessment.label}. Heights are drawn ${scale} times larger than lengths.`, ...wet].join(' ');
}
