import { type Box, between, boxesOverlap, boxOf, direction, distanceFt, isInside } from '../core/geometry/vector.ts';
import type { Assessment, BoardPiece, DrainageArea, Layout, Point, Ring } from '../core/report/types.ts';
import { area, feetInches, inches } from '../units/print.ts';
import { type ChalkLine, chalkLines } from './chalk.ts';
import { alongRay, stretchesInside } from './crossings.ts';
import { type DrawList, lettering, line, type Mark, placed, polygon, widthFt } from './draw-list.ts';
import { dimensionStrings, edgeWords, readingAngleDeg } from './edge-strings.ts';
import { curbMarks, outletMarks, pipeMarks } from './fixtures.ts';
import { FreeRoom } from './free-room.ts';
import { type Fill, greys } from './pens.ts';
import { type Sheet, sheetFor, sheetMarks } from './sheet.ts';

/** Letters across the plan of boards: it is printed on a full page. */
const LETTERS_ACROSS = 44;
/** Plans of more boards than this are a key to the sheets of the drainage areas, where the boards are named. */
export const MANY_BOARDS = 350;

/** Mean thickness of a board with its fill. */
const thicknessOf = ({ lowIn, highIn, fillIn }: BoardPiece): number => fillIn + (lowIn + highIn) / 2;

/** Grey of a thickness: the thinnest boards of the layout are the lightest. */
function shadeOf(pieces: readonly BoardPiece[]): (piece: BoardPiece) => Fill {
  const steps = [...new Set(pieces.map((piece) => thicknessOf(piece).toFixed(3)))].map(Number).sort((a, b) => a - b);
  const last = Math.max(steps.length - 1, 1);
  const range = (steps.at(-1) ?? 0) - (steps[0] ?? 0);
  return (piece) => {
    const share = range === 0 ? 0 : (thicknessOf(piece) - steps[0]) / range;
    const step = last < greys.length ? Math.round(share * last) : Math.round(share * (greys.length - 1));
    return `grey-${Math.min(step, greys.length - 1)}` as Fill;
  };
}

function byMark(pieces: readonly BoardPiece[]): BoardPiece[][] {
  const groups = new Map<string, BoardPiece[]>();
  for (const piece of pieces) groups.set(piece.mark, [...(groups.get(piece.mark) ?? []), piece]);
  return [...groups.values()].sort((a, b) => thicknessOf(a[0]) - thicknessOf(b[0]));
}

/** The mark on every board where it fits, turned where the board stands upright. */
function boardNames(pieces: readonly BoardPiece[], letterFt: number, room: FreeRoom): Mark[] {
  return pieces.flatMap(({ outline, mark, labelAt }) => {
    const box = boxOf(outline);
    const long = widthFt(mark, 'tiny', letterFt);
    const [across, up] = [box.maxX - box.minX, box.maxY - box.minY];
    if (long > Math.max(across, up) || 0.8 * letterFt > Math.min(across, up)) return [];
    const angleDeg = long <= across ? 0 : 90;
    const spots = [0, 0.9, -0.9].map((by): Point => {
      const [x, y] = labelAt;
      return angleDeg === 0 ? [x, y + by * letterFt] : [x + by * letterFt, y];
    });
    const within = spots.filter((at) => isInside(at, [outline]));
    return room.place(within.map((at) => lettering(at, mark, { size: 'tiny', angleDeg, rim: false })));
  });
}

/** How far off the edge each chalk line is, at its end. */
function chalkWords(lines: readonly ChalkLine[], letterFt: number, room: FreeRoom): Mark[] {
  return lines.flatMap(({ from, to, offFt }) => {
    if (offFt === null) return [];
    const angleDeg = readingAngleDeg(direction(from, to));
    const text = feetInches(offFt);
    if (widthFt(text, 'tiny', letterFt) > distanceFt(from, to)) return [];
    return room.place(
      [0.12, 0.88, 0.3, 0.7].map((t) => lettering(between(from, to, t), text, { size: 'tiny', angleDeg })),
    );
  });
}

/** Height of the wood at both ends of every straight stretch of edge, outside the outline. */
function nailerWords(layout: Layout, letterFt: number, room: FreeRoom): Mark[] {
  return layout.nailers.flatMap(({ from, to, startIn, endIn }) => {
    const [dx, dy] = direction(from, to);
    const off = 0.8 * letterFt;
    const end = (t: number, heightIn: number): Mark[] => {
      const [x, y] = between(from, to, t);
      const text = inches(heightIn);
      const angleDeg = readingAngleDeg([dx, dy]);
      return room.place([lettering([x + dy * off, y - dx * off], text, { size: 'tiny', angleDeg, bold: true })]);
    };
    const t = Math.min(0.5, (1.3 * letterFt) / Math.max(distanceFt(from, to), 1e-6));
    return [...end(t, startIn), ...end(1 - t, endIn)];
  });
}

/** Where the number of a spot may stand, in letters from the spot. */
const turns: readonly Point[] = [
  [0, -0.9],
  [0, 0.9],
  [0.9, 0],
  [-0.9, 0],
  [1.1, -1.1],
  [1.1, 1.1],
  [-1.1, 1.1],
  [-1.1, -1.1],
];

/** Numbered spots to read with a level: a dot where the rod stands, its number in a ring beside it. */
function checkMarks(layout: Layout, letterFt: number, room: FreeRoom): Mark[] {
  const r = 0.55 * letterFt;
  return layout.checkPoints.flatMap(({ id, at }) => {
    const spot: Mark = { kind: 'circle', at, radiusFt: 0.14 * letterFt, pen: null, fill: 'ink' };
    const around = turns.map(([dx, dy]): Point => [at[0] + dx * letterFt, at[1] + dy * letterFt]);
    const free = around.find((p) => room.isFree(squareAt(p, r)));
    if (free === undefined) return placed(`check-${id}`, [spot]);
    room.take(squareAt(free, r));
    return placed(`check-${id}`, [
      spot,
      { kind: 'circle', at: free, radiusFt: r, pen: 'fixture', fill: 'sheet' },
      lettering(free, id, { size: id.length > 1 ? 'tiny' : 'small', bold: true, rim: false }),
    ]);
  });
}

const squareAt = ([x, y]: Point, half: number): Box => ({
  minX: x - half,
  maxX: x + half,
  minY: y - half,
  maxY: y + half,
});

/** Grey, mark and count of every thickness, under the plan. */
export interface BoardKeyRow {
  fill: Fill;
  mark: string;
}

export function boardKey(layout: Layout): BoardKeyRow[] {
  const shade = shadeOf(layout.pieces);
  return byMark(layout.pieces).map(([piece]) => ({ fill: shade(piece), mark: piece.mark }));
}

/** One drainage area of a large roof on a sheet of its own; null = the whole section. */
type Part = DrainageArea | null;

function piecesOn(layout: Layout, part: Part): readonly BoardPiece[] {
  if (part === null) return layout.pieces;
  const rings: Ring[] = [part.outline, ...part.holes];
  // The middle of a board cut round a curb may lie on the curb: most of the board decides.
  return layout.pieces.filter(({ outline, labelAt }) => {
    const spots = outline.map((p) => between(p, labelAt, 0.1));
    return 2 * spots.filter((p) => isInside(p, rings)).length > spots.length;
  });
}

function describe(layout: Layout, pieces: readonly BoardPiece[], part: Part): string {
  const marks = byMark(pieces).map((group) => `${group[0].mark} in (${group.length} pieces)`);
  return [
    `Plan of the boards${part === null ? '' : ` round ${nameOf(layout, part)}, ${area(part.areaSqFt)}`}, thin to thick: ${marks.join(', ')}.`,
    'A board is named by its low and high edge, with the flat fill under it. Broken lines are chalk lines. Bold heights outside are the wood at the edge.',
  ].join(' ');
}

const nameOf = (layout: Layout, part: DrainageArea): string =>
  layout.outlets.find(({ id }) => id === part.outlet)?.label ?? part.outlet;

const within = (box: Box, p: readonly [number, number]): boolean =>
  p[0] >= box.minX && p[0] <= box.maxX && p[1] >= box.minY && p[1] <= box.maxY;

/** Letters small enough that a mark of ten letters fits a 4-ft board. */
const FITTING_FT = 0.95;
const MOST_ACROSS = 72;

function frameOf(assessment: Assessment, part: Part): Sheet {
  if (part === null) return sheetFor(assessment.plan.outline, LETTERS_ACROSS);
  const box = boxOf(part.outline);
  const across = (box.maxX - box.minX) / FITTING_FT;
  return sheetFor(part.outline, Math.min(MOST_ACROSS, Math.max(LETTERS_ACROSS, across)));
}

/** The part of a line that lies on the sheet's plan. */
function clipped(from: Point, to: Point, { plan }: Sheet): [Point, Point][] {
  const ring: Ring = [
    [plan.minX, plan.minY],
    [plan.maxX, plan.minY],
    [plan.maxX, plan.maxY],
    [plan.minX, plan.maxY],
  ];
  const ray = { at: from, toward: direction(from, to) };
  const lengthFt = distanceFt(from, to);
  return stretchesInside(ray, [ring]).flatMap(([a, b]): [Point, Point][] => {
    const [s, t] = [Math.max(a, 0), Math.min(b, lengthFt)];
    return t - s < 1e-3 ? [] : [[alongRay(ray, s), alongRay(ray, t)]];
  });
}

function creaseMarks(layout: Layout, part: Part, sheet: Sheet): Mark[] {
  return layout.creases
    .filter(({ kind }) => kind !== 'wall')
    .flatMap(({ from, to, kind }) => {
      const lines: [Point, Point][] = part === null ? [[from, to]] : clipped(from, to, sheet);
      return lines.map(([a, b]) => line(a, b, kind === 'valley' ? 'valley' : 'ridge'));
    });
}

/** The plan the crew lays by: every board by its thickness, chalk lines, nailer heights and check points. */
export function boardPlan(assessment: Assessment, layout: Layout, part: Part = null): DrawList {
  const { plan } = assessment;
  const sheet = frameOf(assessment, part);
  const { letterFt } = sheet;
  const room = new FreeRoom(sheet);
  const pieces = piecesOn(layout, part);
  const crowded = pieces.length > MANY_BOARDS;
  const shade = shadeOf(layout.pieces);
  const shown = (p: readonly [number, number]): boolean => part === null || within(sheet.box, p);
  const curbs = plan.curbs.filter(({ outline }) => part === null || boxesOverlap(boxOf(outline), sheet.box));
  const here = {
    plan: { ...plan, curbs, pipes: plan.pipes.filter(({ at }) => shown(at)) },
    outlets: layout.outlets.filter(({ id, at }) =>
      part === null ? true : id === part.outlet || within(sheet.plan, at),
    ),
    layout: {
      ...layout,
      checkPoints: layout.checkPoints.filter(({ at }) => part === null || within(sheet.plan, at)),
      nailers: part === null ? layout.nailers : [],
    },
  };
  const chalk = chalkLines({ ...layout, pieces, outlets: here.outlets }, plan.edges);
  const edges = part === null ? edgeWords(plan.edges, letterFt) : [];
  const strings = part === null ? dimensionStrings(plan.outline, letterFt) : [];
  room.takeWords([...edges, ...strings]);
  for (const { at } of here.layout.checkPoints) room.take(squareAt(at, 0.14 * letterFt));
  const marks = {
    nailers: nailerWords(here.layout, letterFt, room),
    outlets: outletMarks(here.outlets, letterFt, room),
    curbs: curbMarks(here.plan, letterFt, room),
    pipes: pipeMarks(here.plan, letterFt, room, false),
    checks: checkMarks(here.layout, letterFt, room),
    names: crowded ? [] : boardNames(pieces, letterFt, room),
    chalkWords: crowded ? [] : chalkWords(chalk, letterFt, room),
  };
  return {
    title: part === null ? 'Boards' : `Boards round ${nameOf(layout, part)}`,
    description: describe(layout, pieces, part),
    box: sheet.box,
    letterFt,
    marks: [
      ...byMark(pieces).flatMap((group) =>
        group.map((piece) => polygon(piece.outline, shade(piece), crowded ? null : 'board')),
      ),
      ...chalk.map(({ from, to }) => line(from, to, crowded ? 'board' : 'chalk')),
      ...creaseMarks(layout, part, sheet),
      ...(part === null ? [polygon(plan.outline, null, 'outline')] : [polygon(part.outline, null, 'area', part.holes)]),
      ...here.layout.nailers.map(({ from, to }) => line(from, to, 'nailer')),
      ...marks.curbs,
      ...marks.pipes,
      ...marks.outlets,
      ...marks.names,
      ...marks.chalkWords,
      ...marks.checks,
      ...marks.nailers,
      ...edges,
      ...strings,
      ...sheetMarks(sheet),
    ],
  };
}
