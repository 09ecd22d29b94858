import { heightIn } from '../core/geometry/plane.ts';
import { between, boxOf, direction, distanceFt, isInside } from '../core/geometry/vector.ts';
import { depthFigure, slopeFigure } from '../core/report/page-figures.ts';
import type { Assessment, CreaseReport, FacetReport, Layout, Point } from '../core/report/types.ts';
import { inches } from '../units/print.ts';
import { cutMarks } from './cut-marks.ts';
import { type DrawList, lettering, line, type Mark, polygon, widthFt } from './draw-list.ts';
import { outward, readingAngleDeg } from './edge-strings.ts';
import { curbMarks, outletMarks, pipeMarks } from './fixtures.ts';
import { type Flow, flowMarks } from './flow-marks.ts';
import type { FreeRoom } from './free-room.ts';
import { innerLines } from './inner-lines.ts';
import { limitMarks } from './limit-marks.ts';
import { areaLines } from './plan-before.ts';
import { planFrame } from './plan-frame.ts';
import type { Cut } from './section-profile.ts';
import { sheetMarks } from './sheet.ts';
import { flatMarks, pondDepths, pondMarks } from './water-marks.ts';

/** Outlines of more corners print their heights in the table only. */
const MOST_CORNERS = 24;

/** Height of the finished surface at the lowest outlet, from which corner heights are counted. */
export function lowestIn(layout: Layout): number {
  return layout.facets.reduce(
    (least, { outline, plane }) => Math.min(least, ...outline.map((p) => heightIn(plane, p))),
    Number.POSITIVE_INFINITY,
  );
}

export function creaseLines(creases: readonly CreaseReport[]): Mark[] {
  return creases.flatMap(({ from, to, kind }) => (kind === 'wall' ? [] : [line(from, to, kind)]));
}

/** Valleys and ridges by name, along the line where the words fit; the long ones first, and not the same twice over. */
export function creaseNames(creases: readonly CreaseReport[], letterFt: number, room: FreeRoom, most = 10): Mark[] {
  const named = creases.filter(({ kind }) => kind !== 'wall').sort((a, b) => b.lengthFt - a.lengthFt);
  const out: Mark[] = [];
  for (const { from, to, kind, slopeInPerFt, lengthFt } of named) {
    if (out.length >= most) break;
    const text = kind === 'valley' ? `valley ${slopeFigure(slopeInPerFt)}` : 'ridge';
    if (widthFt(text, 'tiny', letterFt) > lengthFt) continue;
    const angleDeg = readingAngleDeg(direction(from, to));
    const [dx, dy] = direction(from, to);
    const off = 0.55 * letterFt;
    const spots = [0.5, 0.35, 0.65].flatMap((t) => {
      const [x, y] = between(from, to, t);
      return [
        [x - dy * off, y + dx * off],
        [x + dy * off, y - dx * off],
      ] as Point[];
    });
    out.push(
      ...room.place(spots.map((at) => lettering(at, text, { size: 'tiny', angleDeg, bold: kind === 'valley' }))),
    );
  }
  return out;
}

/** Finished heights at the corners, in inches above the lowest outlet, outside the outline. */
export function cornerHeights(assessment: Assessment, layout: Layout, letterFt: number, room: FreeRoom): Mark[] {
  const zero = lowestIn(layout);
  const { outline } = assessment.plan;
  if (outline.length > MOST_CORNERS) return [];
  const normalOf = outward(outline);
  return layout.cornerHeights.flatMap(({ at, heightIn: z }) => {
    const i = outline.findIndex((p) => distanceFt(p, at) < 1e-3);
    if (i < 0) return [];
    const [before, after] = [outline.at(i - 1) ?? at, outline[(i + 1) % outline.length]];
    const [p, q] = [normalOf(before, at), normalOf(at, after)];
    const [dx, dy] = [p[0] + q[0], p[1] + q[1]];
    const text = `+${inches(Math.max(0, z - zero))}`;
    const anchor = dx > 0.1 ? 'start' : dx < -0.1 ? 'end' : 'middle';
    const spots = [0.75, 1.2].map((by) =>
      lettering([at[0] + 0.6 * dx * by * letterFt, at[1] + dy * by * letterFt], text, { size: 'small', anchor }),
    );
    return room.place(spots);
  });
}

/** Spots inside a plane, the middle of its largest part first. */
function spotsOf({ outline, holes, labelAt }: FacetReport): Point[] {
  const box = boxOf(outline);
  const shares = [0.5, 0.3, 0.7, 0.15, 0.85];
  const grid = shares.flatMap((v) =>
    shares.map((u): Point => [box.minX + (box.maxX - box.minX) * u, box.minY + (box.maxY - box.minY) * v]),
  );
  return [labelAt, ...grid.filter((p) => isInside(p, [outline, ...holes]))];
}

/** Side of the square, in letters, that one arrow speaks for, and the most arrows on one plane. */
const ARROW_LETTERS = 9;
const MOST_ARROWS = 4;
/** Roofs of more planes than this carry one arrow on each. */
const MANY_PLANES = 16;

/** Arrows on every plane, the large planes first and with more of them. */
export const planeArrows = (layout: Layout, letterFt: number): Flow[] =>
  [...layout.facets]
    .sort((a, b) => b.areaSqFt - a.areaSqFt)
    .flatMap((facet) => {
      const { plane, slopeInPerFt } = facet;
      if (slopeInPerFt < 1e-4) return [];
      const flow: Flow = {
        spots: spotsOf(facet),
        toward: [-plane.gx / slopeInPerFt, -plane.gy / slopeInPerFt],
        slopeInPerFt,
      };
      const share = Math.round(facet.areaSqFt / (ARROW_LETTERS * letterFt) ** 2);
      const times = layout.facets.length > MANY_PLANES ? 1 : Math.min(MOST_ARROWS, Math.max(1, share));
      return Array.from({ length: times }, () => flow);
    });

function describe(layout: Layout): string {
  const { leastFaceSlopeInPerFt: face, leastValleySlopeInPerFt: valley } = layout;
  return [
    `Plan of the new roof: ${layout.title}.`,
    face === null ? '' : `Every plane falls at least ${slopeFigure(face)}.`,
    valley === null ? '' : `Every valley falls at least ${slopeFigure(valley)}.`,
    `The build-up is ${inches(layout.leastThicknessIn)} to ${inches(layout.greatestThicknessIn)} thick.`,
    ...layout.ponds.map((pond) => `Water would stand ${depthFigure(pond.greatestDepthIn)} deep, ${pond.where}.`),
  ]
    .filter((part) => part !== '')
    .join(' ');
}

/** The new roof: planes, valleys and ridges, falls, outlets, corner heights, and what is left at every tight height. */
export function planAfter(assessment: Assessment, layout: Layout, cuts: readonly Cut[] = []): DrawList {
  const { plan } = assessment;
  const { sheet, room, edges, strings } = planFrame(assessment);
  const { letterFt } = sheet;
  const ends = cutMarks(cuts, letterFt, room);
  const corners = cornerHeights(assessment, layout, letterFt, room);
  const outlets = outletMarks(layout.outlets, letterFt, room);
  const curbs = curbMarks(plan, letterFt, room);
  const pipes = pipeMarks(plan, letterFt, room, false);
  const limits = limitMarks(assessment, layout, sheet, room);
  const names = creaseNames(layout.creases, letterFt, room);
  const arrows = flowMarks(planeArrows(layout, letterFt), plan.outline, letterFt, room);
  const walls = [plan.outline, ...plan.curbs.map((curb) => curb.outline)];
  return {
    title: 'The roof as it will be',
    description: describe(layout),
    box: sheet.box,
    letterFt,
    marks: [
      polygon(plan.outline, 'sheet'),
      ...pondMarks(layout.ponds, []),
      ...flatMarks(layout.flats, letterFt),
      ...innerLines(
        layout.facets.flatMap(({ outline, holes }) => [outline, ...holes]),
        walls,
      ).map(([a, b]) => line(a, b, 'plane')),
      ...areaLines(assessment, layout.areas),
      ...creaseLines(layout.creases),
      ...arrows,
      polygon(plan.outline, null, 'outline'),
      ...curbs,
      ...pipes,
      ...outlets,
      ...limits,
      ...names,
      ...pondDepths(layout.ponds, letterFt, room),
      ...ends,
      ...edges,
      ...corners,
      ...strings,
      ...sheetMarks(sheet),
    ],
  };
}

/** The new roof with the water that would stand on it as it was laid. */
export function planAsLaid(assessment: Assessment, layout: Layout, ponds: Layout['ponds']): DrawList {
  return { ...planAfter(assessment, { ...layout, ponds }), title: 'The roof as it was laid' };
}
