import { planeOfTriangle } from '../core/geometry/plane.ts';
import { between, boxOf, centroid, direction, isInside } from '../core/geometry/vector.ts';
import { outletName, waterMapWords } from '../core/report/page-map.ts';
import type { Assessment, DrainageArea, EdgeReport, Layout, Point } from '../core/report/types.ts';
import { area as areaText } from '../units/print.ts';
import { groundMarks, looksOf } from './area-looks.ts';
import { type DrawList, lettering, type Mark, placed, polygon, widthFt } from './draw-list.ts';
import { around, curbMarks, outletMarks } from './fixtures.ts';
import { arrow } from './flow-marks.ts';
import type { FreeRoom } from './free-room.ts';
import { areaLines } from './plan-before.ts';
import { planFrame } from './plan-frame.ts';
import { sheetMarks } from './sheet.ts';

/** Spots inside an area where its words may stand: its middle, then a grid over its box. */
function spotsIn({ outline, holes }: DrainageArea): Point[] {
  const box = boxOf(outline);
  const shares = [0.5, 0.35, 0.65, 0.2, 0.8];
  const grid = shares.flatMap((v) =>
    shares.map((u): Point => [box.minX + (box.maxX - box.minX) * u, box.minY + (box.maxY - box.minY) * v]),
  );
  return [centroid(outline), ...grid].filter((p) => isInside(p, [outline, ...holes]));
}

/** Name and size of every outlet's area, in the largest piece of it. */
function areaNames(
  assessment: Assessment,
  layout: Layout | null,
  areas: readonly DrainageArea[],
  letterFt: number,
  room: FreeRoom,
): Mark[] {
  const crowded = new Set(areas.map(({ outlet }) => outlet)).size > 8;
  return [...new Set(areas.map(({ outlet }) => outlet))].flatMap((outlet) => {
    const own = areas.filter((each) => each.outlet === outlet).sort((a, b) => b.areaSqFt - a.areaSqFt);
    const size = areaText(own.reduce((sum, { areaSqFt }) => sum + areaSqFt, 0));
    const full =
      outlet === '' ? `no way out: ${size}` : `${outletName(assessment, layout, outlet).split(',')[0]}: ${size}`;
    const across = boxOf(own[0].outline);
    // Words wider than their ground would stand on their neighbour's.
    const fits = widthFt(full, 'small', letterFt) < across.maxX - across.minX;
    const texts = fits && !crowded ? [full, size] : [size];
    const spots = spotsIn(own[0]);
    for (const text of texts) {
      const found = room.place(spots.map((at) => lettering(at, text, { size: 'small', bold: true })));
      if (found.length > 0) return placed(`outlet-${outlet}`, found);
    }
    return [];
  });
}

const ARROWS_ON_EDGE = [0.2, 0.5, 0.8];

/** Water that comes over an edge: arrows onto the section, with how much. */
function shedMarks({ from, to, sheds = [] }: EdgeReport, letterFt: number, room: FreeRoom): Mark[] {
  if (sheds.length === 0) return [];
  const [dx, dy] = direction(from, to);
  const inward = ([x, y]: Point, by: number): Point => [x - dy * by * letterFt, y + dx * by * letterFt];
  const arrows = ARROWS_ON_EDGE.flatMap((t) => {
    const on = between(from, to, t);
    return waterArrow(inward(on, -0.3), inward(on, 1.3), 0.6 * letterFt);
  });
  const text = sheds.map((shed) => `+${areaText(shed.areaSqFt)} from ${shed.from}`).join(', ');
  const spots = [0.5, 0.35, 0.65].flatMap((t) => [2.1, 2.9].map((by) => inward(between(from, to, t), by)));
  return [
    ...arrows,
    ...room.place(spots.map((at) => lettering(at, text, { size: 'small', tone: 'water', bold: true }))),
  ];
}

const waterArrow = (from: Point, to: Point, headFt: number): Mark[] =>
  arrow(from, to, headFt).map((mark): Mark => {
    if (mark.kind === 'line') return { ...mark, pen: 'shore' };
    return mark.kind === 'polygon' ? { ...mark, fill: 'water-4' } : mark;
  });

/** Way down the surface at a spot; null where it is level or not known. */
function downhill(assessment: Assessment, layout: Layout | null, at: Point): Point | null {
  const facet = layout?.facets.find(({ outline, holes }) => isInside(at, [outline, ...holes]));
  const under = assessment.existing.surface.find(({ a, b, c }) => isInside(at, [[a, b, c]]));
  const plane = layout !== null ? facet?.plane : under && planeOfTriangle(under.a, under.b, under.c, ...under.z);
  if (plane === undefined) return null;
  const fall = Math.hypot(plane.gx, plane.gy);
  return fall < 1e-4 ? null : [-plane.gx / fall, -plane.gy / fall];
}

/** Downspouts, and shingled valleys: there the flow of a whole slope comes down on one spot. */
function inflowMarks(assessment: Assessment, layout: Layout | null, letterFt: number, room: FreeRoom): Mark[] {
  return assessment.plan.inflows.flatMap(({ at, kind, fromSqFt }): Mark[] => {
    const valley = kind === 'valley';
    const r = (valley ? 0.7 : 0.4) * letterFt;
    const toward = valley ? downhill(assessment, layout, at) : null;
    const tip = (by: number): Point => [at[0] + (toward?.[0] ?? 0) * by, at[1] + (toward?.[1] ?? 0) * by];
    room.take({ minX: at[0] - r, maxX: at[0] + r, minY: at[1] - r, maxY: at[1] + r });
    const text = valley ? `valley dumps here, ${areaText(fromSqFt)}` : `${kind}, ${areaText(fromSqFt)}`;
    return [
      ...(valley ? [{ kind: 'circle', at, radiusFt: r, pen: 'valley', fill: 'water-1' } as const] : []),
      { kind: 'circle', at, radiusFt: 0.35 * letterFt, pen: 'shore', fill: 'water-4' },
      ...(toward === null ? [] : waterArrow(tip(r), tip(r + 2.4 * letterFt), 0.9 * letterFt)),
      ...room.place(around(at, text, 1.2 * letterFt, { size: 'small', tone: 'water', bold: true })),
    ];
  });
}

/** Where the water goes: the ground of every outlet told apart by tone and lines, and what comes onto it from beyond. */
export function waterMap(assessment: Assessment, layout: Layout | null): DrawList {
  const { plan, existing } = assessment;
  const { sheet, room, edges, strings } = planFrame(assessment);
  const { letterFt } = sheet;
  const areas = (layout ?? existing).areas;
  const looks = looksOf(areas);
  const curbs = curbMarks(plan, letterFt, room);
  const outlets = outletMarks((layout ?? existing).outlets, letterFt, room);
  const inflows = inflowMarks(assessment, layout, letterFt, room);
  const sheds = plan.edges.flatMap((edge) => placed(edge.id, shedMarks(edge, letterFt, room)));
  const names = areaNames(assessment, layout, areas, letterFt, room);
  return {
    title: layout === null ? 'Where the water goes today' : 'Where the water will go',
    description: waterMapWords(assessment, layout).join(' '),
    box: sheet.box,
    letterFt,
    marks: [
      polygon(plan.outline, 'sheet'),
      ...areas.flatMap((area) => placed(`outlet-${area.outlet}`, groundMarks(area, looks.get(area.outlet)!, letterFt))),
      ...areaLines(assessment, areas),
      polygon(plan.outline, null, 'outline'),
      ...curbs,
      ...sheds,
      ...inflows,
      ...outlets,
      ...names,
      ...edges,
      ...strings,
      ...sheetMarks(sheet),
    ],
  };
}
