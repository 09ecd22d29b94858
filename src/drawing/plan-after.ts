import { between, direction } from '../core/geometry/vector.ts';
import { depthFigure, slopeFigure } from '../core/report/page-figures.ts';
import type { Assessment, CreaseReport, Layout, Point } from '../core/report/types.ts';
import { inches } from '../units/print.ts';
import { type DrawList, lettering, line, type Mark, polygon, widthFt } from './draw-list.ts';
import { readingAngleDeg } from './edge-strings.ts';
import { flowMarks } from './flow-marks.ts';
import type { FreeRoom } from './free-room.ts';
import { innerLines } from './inner-lines.ts';
import { limitMarks } from './limit-marks.ts';
import { creaseLines, newRoofFrame, planeArrows } from './new-roof.ts';
import { areaLines } from './plan-before.ts';
import type { Cut } from './section-profile.ts';
import { flatMarks, pondDepths, pondMarks } from './water-marks.ts';

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
  const { sheet, room, fixtures, rim } = newRoofFrame(assessment, layout, cuts);
  const { letterFt } = sheet;
  const limits = limitMarks(assessment, layout, sheet, room);
  const names = creaseNames(layout.creases, letterFt, room);
  const arrows = flowMarks(planeArrows(layout, letterFt), plan.outline, letterFt, room);
  const walls = [plan.outline, ...plan.curbs.map((curb) => curb.outline)];
  return {
    title: 'The new roof',
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
      ...fixtures,
      ...limits,
      ...names,
      ...pondDepths(layout.ponds, letterFt, room),
      ...rim,
    ],
  };
}

/** The new roof with the water that would stand on it as it was laid. */
export function planAsLaid(assessment: Assessment, layout: Layout, ponds: Layout['ponds']): DrawList {
  return { ...planAfter(assessment, { ...layout, ponds }), title: 'The roof as it was laid' };
}
