import { between, direction, isInside } from '../core/geometry/vector.ts';
import { depthFigure } from '../core/report/page-figures.ts';
import type { Point, RoofToday } from '../core/report/types.ts';
import { area, feetInches } from '../units/print.ts';
import { cutMarks } from './cut-marks.ts';
import { type DrawList, line, type Mark, polygon } from './draw-list.ts';
import { curbMarks, outletMarks, pipeMarks } from './fixtures.ts';
import { flowMarks } from './flow-marks.ts';
import { innerLines } from './inner-lines.ts';
import { planFrame } from './plan-frame.ts';
import type { Cut } from './section-profile.ts';
import { sheetFor, sheetMarks } from './sheet.ts';
import { flatMarks, flatWords, pondDepths, pondMarks, seenMarks } from './water-marks.ts';

/** "30′-0″ by 24′-0″" of the plan's box. */
function sizeWords(today: RoofToday): string {
  const { plan } = sheetFor(today.plan.outline);
  return `${feetInches(plan.maxX - plan.minX)} by ${feetInches(plan.maxY - plan.minY)}`;
}

function describe(today: RoofToday): string {
  const { existing, section } = today;
  const ponds = existing.ponds.map(
    (pond) => `Water ${depthFigure(pond.greatestDepthIn)} deep over ${area(pond.areaSqFt)}, ${pond.where}.`,
  );
  const flat = existing.undrainedAreaSqFt > 0.5 ? `${area(existing.undrainedAreaSqFt)} lie level.` : '';
  const ways = existing.outlets.map(({ label }) => label).join(', ');
  return [
    `Plan of the roof as it is, ${sizeWords(today)} over all, ${area(section.areaSqFt)}.`,
    ways === '' ? 'No way out for water is known.' : `Water leaves at: ${ways}.`,
    ...ponds,
    flat,
  ]
    .filter((part) => part !== '')
    .join(' ');
}

/** How far beside a line is looked which outlet's ground lies there. */
const BESIDE_FT = 0.02;

/** Inner boundaries of the drainage areas, each once; a cut inside the ground of one outlet is no boundary. */
export function areaLines(today: RoofToday, areas: RoofToday['existing']['areas']): Mark[] {
  const outletAt = (p: Point): string | undefined =>
    areas.find(({ outline, holes }) => isInside(p, [outline, ...holes]))?.outlet;
  const sides = innerLines(
    areas.flatMap(({ outline, holes }) => [outline, ...holes]),
    [today.plan.outline, ...today.plan.curbs.map((curb) => curb.outline)],
  );
  return sides
    .filter(([a, b]) => {
      const [x, y] = between(a, b, 0.5);
      const [dx, dy] = direction(a, b);
      const [left, right] = [BESIDE_FT, -BESIDE_FT].map((by): Point => [x - dy * by, y + dx * by]);
      return outletAt(left) !== outletAt(right);
    })
    .map(([a, b]) => line(a, b, 'area'));
}

/** More ground than this lying level leaves no drainage areas worth a line. */
const MOSTLY_LEVEL = 0.5;

/** The roof as it is: where water stands, which way it runs, and where it leaves. */
export function planBefore(today: RoofToday, cuts: readonly Cut[] = []): DrawList {
  const { plan, existing, section } = today;
  const { sheet, room, edges, strings } = planFrame(today);
  const { letterFt } = sheet;
  const ends = cutMarks(cuts, letterFt, room);
  const curbs = curbMarks(plan, letterFt, room);
  const outlets = outletMarks(existing.outlets, letterFt, room);
  const depths = pondDepths(existing.ponds, letterFt, room);
  // Where readings show the pond, the drawing of it says more than a spot.
  const seen = existing.ponds.length > 0 ? [] : seenMarks(plan, letterFt, room);
  const pipes = pipeMarks(plan, letterFt, room, plan.pipes.length < 10);
  const level = flatWords(existing, letterFt, room);
  const arrows = flowMarks(
    existing.arrows.map(({ at, ...flow }) => ({ ...flow, spots: [at] })),
    plan.outline,
    letterFt,
    room,
  );
  const mostlyLevel = existing.undrainedAreaSqFt > MOSTLY_LEVEL * section.areaSqFt;
  return {
    title: 'The roof as it is',
    description: describe(today),
    box: sheet.box,
    letterFt,
    marks: [
      polygon(plan.outline, 'sheet'),
      ...pondMarks(existing.ponds, existing.surface),
      ...flatMarks(existing.flats, letterFt),
      ...seen,
      ...(mostlyLevel ? [] : areaLines(today, existing.areas)),
      ...arrows,
      polygon(plan.outline, null, 'outline'),
      ...curbs,
      ...pipes,
      ...outlets,
      ...level,
      ...depths,
      ...ends,
      ...edges,
      ...strings,
      ...sheetMarks(sheet),
    ],
  };
}
