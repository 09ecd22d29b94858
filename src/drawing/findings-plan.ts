import { between, centroid, direction, distanceFt, isInside } from '../core/geometry/vector.ts';
import type { InspectedFinding, Point, Ring, RoofToday } from '../core/report/types.ts';
import { hatchLines } from './crossings.ts';
import { type DrawList, lettering, line, type Mark, placed, polygon } from './draw-list.ts';
import { curbMarks, outletMarks, pipeMarks } from './fixtures.ts';
import { planFrame } from './plan-frame.ts';
import { sheetMarks } from './sheet.ts';

/** Radius of a number's circle, in letters. */
const CIRCLE = 0.8;
const WAYS = 12;

export const findingPlace = (number: number): string => `finding-${number}`;

const spotOf = ({ at, outline, line: along }: InspectedFinding): Point | null =>
  at ?? (along !== null ? between(along[0], along[1], 0.5) : outline === null ? null : centroid(outline));

/** Where the circle stands: on its spot, or beside it where another one stands there already. */
function freeSpot(spot: Point, taken: readonly Point[], radiusFt: number): Point {
  const clear = (p: Point): boolean => taken.every((other) => distanceFt(p, other) > 2.1 * radiusFt);
  for (let ring = 0; ring < 4; ring++) {
    for (let i = 0; i < WAYS; i++) {
      const angle = (2 * Math.PI * i) / WAYS;
      const by = 1.2 * ring * radiusFt;
      const p: Point = [spot[0] + by * Math.cos(angle), spot[1] + by * Math.sin(angle)];
      if (clear(p)) return p;
    }
  }
  return spot;
}

/** A stretch of an edge as a thick line inside it, with its ends. */
function edgeBand([a, b]: readonly [Point, Point], section: Ring, letterFt: number): Mark[] {
  const [dx, dy] = direction(a, b);
  const by = 0.45 * letterFt;
  const middle = between(a, b, 0.5);
  const turn = isInside([middle[0] - dy * by, middle[1] + dx * by], [section]) ? 1 : -1;
  const inside = ([x, y]: Point): Point => [x - turn * dy * by, y + turn * dx * by];
  return [line(inside(a), inside(b), 'cut'), line(a, inside(a), 'fixture'), line(b, inside(b), 'fixture')];
}

/** What is marked of a finding's extent: a thick line along a side, an area hatched. */
function extentMarks({ outline, line: along }: InspectedFinding, section: Ring, letterFt: number): Mark[] {
  return [
    ...(along === null ? [] : edgeBand(along, section, letterFt)),
    ...(outline === null
      ? []
      : [...hatchLines([outline], 0.5 * letterFt).map(([a, b]) => line(a, b, 'hatch')), polygon(outline, null, 'old')]),
  ];
}

function numbers(findings: readonly InspectedFinding[], section: Ring, letterFt: number): Mark[] {
  const radiusFt = CIRCLE * letterFt;
  const taken: Point[] = [];
  return findings.flatMap((finding) => {
    const spot = spotOf(finding);
    if (spot === null) return [];
    const at = freeSpot(spot, taken, radiusFt);
    taken.push(at);
    const moved = distanceFt(at, spot) > radiusFt;
    const dot: Mark = { kind: 'circle', at: spot, radiusFt: 0.15 * letterFt, pen: null, fill: 'ink' };
    return placed(findingPlace(finding.number), [
      ...extentMarks(finding, section, letterFt),
      ...(moved ? [dot, line(spot, at, 'dimension')] : []),
      { kind: 'circle', at, radiusFt, pen: 'fixture', fill: 'sheet' },
      lettering(at, String(finding.number), { bold: true, rim: false }),
    ]);
  });
}

function describe(findings: readonly InspectedFinding[]): string {
  const words = findings.map(({ number, title, where }) => `${number}: ${title}, ${where}.`);
  return ['Plan of the roof with what was found, numbered.', ...words].join(' ');
}

/** The roof with the numbered findings of its inspection, in ink and grey. */
export function findingsPlan(today: RoofToday): DrawList {
  const { plan, existing, inspection = [] } = today;
  const { sheet, room, edges, strings } = planFrame(today);
  const { letterFt } = sheet;
  return {
    title: 'What was found',
    description: describe(inspection),
    box: sheet.box,
    letterFt,
    marks: [
      polygon(plan.outline, 'sheet'),
      polygon(plan.outline, null, 'outline'),
      ...curbMarks(plan, letterFt, room),
      ...pipeMarks(plan, letterFt, room, false),
      ...outletMarks(existing.outlets, letterFt, room),
      ...edges,
      ...strings,
      ...numbers(inspection, plan.outline, letterFt),
      ...sheetMarks(sheet),
    ],
  };
}
