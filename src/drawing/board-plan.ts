import {
  type Box,
  between,
  boxesOverlap,
  boxOf,
  direction,
  distanceFt,
  isInside,
  signedAreaSqFt,
} from '../core/geometry/vector.ts';
import type { Assessment, BoardPiece, DrainageArea, Layout, Point, Ring } from '../core/report/types.ts';
import { area } from '../units/print.ts';
import { byMark, shadeOf } from './board-shade.ts';
import { boardNames, chalkWords, checkMarks, nailerWords, squareAt } from './board-words.ts';
import { chalkLines } from './chalk.ts';
import { alongRay, stretchesInside } from './crossings.ts';
import { type DrawList, line, type Mark, polygon } from './draw-list.ts';
import { dimensionStrings, edgeWords } from './edge-strings.ts';
import { curbMarks, outletMarks, pipeMarks } from './fixtures.ts';
import { FreeRoom } from './free-room.ts';
import { type Sheet, sheetFor, sheetMarks } from './sheet.ts';

/** Letters across the plan of boards: it is printed on a full page. */
const LETTERS_ACROSS = 44;
/** Plans of more boards than this are a key to the sheets of the drainage areas, where the boards are named. */
export const MANY_BOARDS = 350;

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
  const marks = byMark(pieces).map(
    (group) => `${group[0].mark} in${group[0].layer === 0 ? '' : ' on the boards below'} (${group.length} pieces)`,
  );
  return [
    `Plan of the boards${part === null ? '' : ` round ${nameOf(layout, part)}, ${area(part.areaSqFt)}`}, thin to thick: ${marks.join(', ')}.`,
    'A board is named by its low and high edge, with the flat fill under it. Broken lines are chalk lines. Bold heights outside are the wood at the edge.',
  ].join(' ');
}

/** More than half of the piece is seen from above. */
const shows = ({ outline, coveredSqFt }: BoardPiece): boolean => 2 * coveredSqFt < Math.abs(signedAreaSqFt(outline));

const nameOf = (layout: Layout, part: DrainageArea): string =>
  layout.outlets.find(({ id }) => id === part.outlet)?.label ?? part.outlet;

const within = (box: Box, p: readonly [number, number]): boolean =>
  p[0] >= box.minX && p[0] <= box.maxX && p[1] >= box.minY && p[1] <= box.maxY;

/** Letters small enough that a mark of ten letters fits a 4-ft board. */
const FITTING_FT = 0.95;
const MOST_ACROSS = 72;

const lettersAcross = (ring: Ring): number => {
  const { minX, maxX } = boxOf(ring);
  return (maxX - minX) / FITTING_FT;
};

/** Whether one sheet is too small to name every board on it. */
export const isCrowded = ({ plan }: Assessment, { pieces }: Layout): boolean =>
  pieces.length > MANY_BOARDS || lettersAcross(plan.outline) > MOST_ACROSS;

function frameOf(assessment: Assessment, part: Part): Sheet {
  const ring = part === null ? assessment.plan.outline : part.outline;
  return sheetFor(ring, Math.min(MOST_ACROSS, Math.max(LETTERS_ACROSS, lettersAcross(ring))));
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

/** All boards as they are seen from above, or those on the ground alone, before others are laid on them. */
export type Seen = 'all' | 'ground';

const onGround = (pieces: readonly BoardPiece[]): BoardPiece[] =>
  pieces.filter(({ layer }) => layer === 0).map((piece) => ({ ...piece, coveredSqFt: 0 }));

const titleOf = (layout: Layout, part: Part, seen: Seen): string => {
  const around = part === null ? '' : ` round ${nameOf(layout, part)}`;
  return seen === 'all' ? `Boards${around}` : `Boards on the ground${around}, before others are laid on them`;
};

/** The plan the crew lays by: every board by its thickness, chalk lines, nailer heights and check points. */
export function boardPlan(assessment: Assessment, full: Layout, part: Part = null, seen: Seen = 'all'): DrawList {
  const layout = seen === 'all' ? full : { ...full, pieces: onGround(full.pieces) };
  const { plan } = assessment;
  const sheet = frameOf(assessment, part);
  const { letterFt } = sheet;
  const room = new FreeRoom(sheet);
  const pieces = piecesOn(layout, part);
  const crowded = part === null ? isCrowded(assessment, layout) : pieces.length > MANY_BOARDS;
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
  const chalk = chalkLines({ ...layout, pieces: pieces.filter(shows), outlets: here.outlets }, plan.edges);
  const edges = part === null ? edgeWords(plan.edges, letterFt) : [];
  const strings = part === null ? dimensionStrings(plan.outline, letterFt) : [];
  room.takeWords([...edges, ...strings]);
  for (const { at } of here.layout.checkPoints) room.take(squareAt(at, 0.14 * letterFt));
  const marks = {
    nailers: nailerWords(here.layout, letterFt, room),
    curbs: curbMarks(here.plan, letterFt, room),
    outlets: outletMarks(here.outlets, letterFt, room),
    pipes: pipeMarks(here.plan, letterFt, room, false),
    checks: checkMarks(here.layout, letterFt, room),
    // What lies under a cricket is named where it shows.
    names: crowded ? [] : boardNames(pieces.filter(shows), letterFt, room),
    chalkWords: crowded ? [] : chalkWords(chalk, letterFt, room),
  };
  return {
    title: titleOf(layout, part, seen),
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
