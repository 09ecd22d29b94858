import { toSegment } from '../core/geometry/vector.ts';
import { depthFigure } from '../core/report/page-figures.ts';
import type { Assessment, Layout, Point, PondReport } from '../core/report/types.ts';
import { feetInches, inches } from '../units/print.ts';
import { alongRay } from './crossings.ts';
import { type DrawList, lettering, line, type Mark, polygon } from './draw-list.ts';
import { curbsInCut, heightsOfMark, limitsAtEnds, type SectionFrame, wordsOfMark } from './section-limits.ts';
import { type Cut, profile, runs, type Stretch, surfaceAfter, surfaceBefore, water } from './section-profile.ts';

/** The edge at which a cut ends, in a word or two. */
function endWords(assessment: Assessment, p: Point): string {
  const near = assessment.plan.edges
    .map((edge) => ({ edge, off: toSegment(p, edge.from, edge.to).distanceFt }))
    .sort((a, b) => a.off - b.off)[0];
  return near === undefined ? '' : near.edge.label.split(',')[0];
}

const LETTERS_ACROSS = 32;
/** Doors and parapets higher than this share of the length are drawn broken off. */
const HEADROOM = 0.3;

/**
 * A section through the worst water: the roof as it is, or, with a layout, the new surface over the old one.
 * Heights are drawn larger than lengths, by a factor that the drawing states. Doors, walls, parapets and
 * curbs stand as marks with what is left under them. Null where the cut meets no surface.
 */
export function sectionCut(assessment: Assessment, layout: Layout | null, cut: Cut): DrawList | null {
  const { ray } = cut;
  const inCut = ({ from, to }: Stretch): boolean => from > cut.fromFt - 0.01 && to < cut.toFt + 0.01;
  const old = profile(surfaceBefore(assessment), ray).filter(inCut);
  const fresh = layout === null ? [] : profile(surfaceAfter(layout), ray).filter(inCut);
  const all = [...old, ...fresh].flatMap(({ startIn, endIn }) => [startIn, endIn]);
  if (all.length === 0) return null;
  const lengthFt = cut.toFt - cut.fromFt;
  const [lowIn, highIn] = [Math.min(...all), Math.max(...all)];
  const { scale } = cut;
  const letterFt = lengthFt / LETTERS_ACROSS;
  const up = (zIn: number): number => ((zIn - lowIn) / 12) * scale;
  const lift = (points: readonly Point[]): Point[] => points.map(([t, z]) => [t - cut.fromFt, up(z)]);
  const ground = layout === null ? old : fresh;
  const [pieces, standing] =
    layout === null ? [surfaceBefore(assessment), assessment.existing.ponds] : [surfaceAfter(layout), layout.ponds];
  const ponds = water(standing, pieces, ground, ray);
  const wetIn = Math.max(highIn, ...ponds.map(({ levelIn }) => levelIn));
  const floor = -1.2 * letterFt;
  const body = runs(ground).map((run) => {
    const top = lift(run);
    return polygon([...top, [top.at(-1)![0], floor], [top[0][0], floor]], 'body');
  });
  const [leftAt, rightAt] = [alongRay(ray, cut.fromFt), alongRay(ray, cut.toFt)];
  const endHeights = heightWords(ground, lift, letterFt, layout);
  const frame: SectionFrame = {
    cut,
    letterFt,
    up,
    lowIn,
    ceilingIn: Math.max(wetIn, lowIn + (HEADROOM * lengthFt * 12) / scale),
  };
  const curbs = curbsInCut(assessment, ground, frame);
  const limits = limitsAtEnds(assessment, layout, ground, frame, endHeights);
  const top = Math.max(up(wetIn), ...[...curbs, ...limits].flatMap(heightsOfMark));
  return {
    title: `Section ${cut.name} through the ${layout === null ? 'roof as it is' : 'new roof'}`,
    description: [describe(assessment, layout, lengthFt, scale, ponds), ...limits.flatMap(wordsOfMark)].join(' '),
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
      ...curbs,
      ...endHeights,
      ...limits,
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
      lettering([0, floor - 0.9 * letterFt], `${cut.name}, ${endWords(assessment, leftAt)}`, {
        size: 'small',
        anchor: 'start',
      }),
      lettering([lengthFt, floor - 0.9 * letterFt], `${endWords(assessment, rightAt)}, ${cut.name}`, {
        size: 'small',
        anchor: 'end',
      }),
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
      const inward = (anchor === 'start' ? 1.3 : -1.3) * letterFt;
      return lettering([x + inward, y + 0.9 * letterFt], `+${inches(z - low)}`, { size: 'small', anchor });
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
