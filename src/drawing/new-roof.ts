import { heightIn } from '../core/geometry/plane.ts';
import { boxOf, distanceFt, isInside } from '../core/geometry/vector.ts';
import type { Assessment, CreaseReport, FacetReport, Layout, Point } from '../core/report/types.ts';
import { inches } from '../units/print.ts';
import { cutMarks } from './cut-marks.ts';
import { lettering, line, type Mark, polygon } from './draw-list.ts';
import { outward } from './edge-strings.ts';
import { curbMarks, outletMarks, pipeMarks } from './fixtures.ts';
import type { Flow } from './flow-marks.ts';
import type { FreeRoom } from './free-room.ts';
import { type PlanFrame, planFrame } from './plan-frame.ts';
import type { Cut } from './section-profile.ts';
import { sheetMarks } from './sheet.ts';

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

/** What every plan of one new roof shows: what stands on it, and the words and strings round it. */
export interface NewRoofFrame extends PlanFrame {
  fixtures: readonly Mark[];
  rim: readonly Mark[];
}

/** The frame of a new roof; its words take their room before those of the plan itself. */
export function newRoofFrame(assessment: Assessment, layout: Layout, cuts: readonly Cut[]): NewRoofFrame {
  const { plan } = assessment;
  const frame = planFrame(assessment);
  const { sheet, room, edges, strings } = frame;
  const { letterFt } = sheet;
  const ends = cutMarks(cuts, letterFt, room);
  const corners = cornerHeights(assessment, layout, letterFt, room);
  const curbs = curbMarks(plan, letterFt, room);
  const outlets = outletMarks(layout.outlets, letterFt, room);
  const pipes = pipeMarks(plan, letterFt, room, false);
  return {
    ...frame,
    fixtures: [polygon(plan.outline, null, 'outline'), ...curbs, ...pipes, ...outlets],
    rim: [...ends, ...edges, ...corners, ...strings, ...sheetMarks(sheet)],
  };
}
