import { edgeStrips, flatStock, type TaperGroup, taperGroups, zeroEdgeGroups } from '../../../reference/boards.ts';
import { coverBoard } from '../../../reference/insulation.ts';
import { flatBoardAllowance, levellingBoard } from '../../../reference/takeoff/boards.ts';
import { area, decimalInches, plainNumber } from '../../units/print.ts';
import { markOf } from '../layout/bands.ts';
import type { BoardLine, FillLine, MaterialLine, StripLine } from '../report/types.ts';
import { groundNames, plannedWork } from '../site/planned-work.ts';
import type { Job } from './job.ts';
import { counted, lineOf, whole } from './line.ts';

const STOCK = flatStock[0]!;
const groups: readonly TaperGroup[] = [...taperGroups, ...zeroEdgeGroups];
const boardSqFt = STOCK.lengthFt * STOCK.widthFt;
const percent = `${plainNumber(flatBoardAllowance.share * 100)} %`;

/** Whole 4 x 8 ft boards for an area, cuts allowed for. */
export const flatBoards = (areaSqFt: number): number => whole((areaSqFt / boardSqFt) * (1 + flatBoardAllowance.share));

const sum = (lines: readonly BoardLine[], of: (line: BoardLine) => number): number =>
  lines.reduce((total, line) => total + of(line), 0);

function taperLine(mark: string, shared: boolean, lines: readonly BoardLine[]): MaterialLine {
  const [{ slopeInPerFt, runFt, widthFt }] = lines;
  const net = sum(lines, (line) => line.net);
  const taken = sum(lines, ({ boards }) => boards);
  const saved = sum(lines, ({ reusable }) => reusable);
  const slivers = sum(lines, (line) => line.slivers);
  const where = lines.map(({ fillLayersIn, order, layer }) => {
    const on =
      fillLayersIn.length === 0 ? 'on no fill' : `on ${fillLayersIn.map((t) => `${t} in`).join(' + ')} of fill`;
    return `${order} ${on}${layer === 0 ? '' : ', laid on the boards below'}`;
  });
  const waste = taken === 0 ? 0 : 1 - net / taken;
  return lineOf({
    id: `board-${mark}${shared ? `-at-${slopeInPerFt}` : ''}`,
    group: 'Boards',
    item: `Tapered board ${mark} in, ${decimalInches(slopeInPerFt, 4)} per ft, ${plainNumber(widthFt, 2)} x ${plainNumber(runFt, 2)} ft`,
    quantity: net,
    unit: 'boards',
    order: sum(lines, ({ order }) => order),
    orderUnit: 'boards',
    basis: [
      `${plainNumber(net, 2)} boards' worth of area; a new board for every piece on the plan: ${taken} boards, ${plainNumber(100 * waste, 0)} % of them waste; and one spare per ten: ${where.join(', ')}`,
      slivers === 0 ? '' : `${counted(slivers, 'small piece')} cut from offcuts beside them`,
      saved === 0 ? '' : `sorting offcuts could save about ${counted(saved, 'board')}, which is not taken off`,
    ]
      .filter(Boolean)
      .join('; '),
    row: groups.find((group) => group.slopeInPerFt === slopeInPerFt) ?? null,
  });
}

/** Tapered boards: the same board on another fill is the same board to buy. */
function taperLines(boards: readonly BoardLine[]): MaterialLine[] {
  const byBoard = new Map<string, BoardLine[]>();
  for (const line of boards) {
    const key = `${markOf(line.lowIn, line.highIn, 0)}|${line.slopeInPerFt}`;
    byBoard.set(key, [...(byBoard.get(key) ?? []), line]);
  }
  const found = [...byBoard.values()].map((lines) => ({ lines, mark: markOf(lines[0].lowIn, lines[0].highIn, 0) }));
  // Boards of two slopes can have the same edges: their lines are told apart.
  return found.map(({ lines, mark }) => taperLine(mark, found.filter((one) => one.mark === mark).length > 1, lines));
}

function fillLine({ thicknessIn, areaSqFt, lengthFt, widthFt, order }: FillLine, baseIn: number): MaterialLine {
  const base = baseIn > 0 ? `; ${baseIn} in of all fill lies under every board` : '';
  const sqFt = lengthFt * widthFt;
  return lineOf({
    id: `fill-${thicknessIn}`,
    group: 'Boards',
    item: `Flat board ${thicknessIn} in, ${plainNumber(widthFt, 2)} x ${plainNumber(lengthFt, 2)} ft (fill)`,
    quantity: areaSqFt,
    unit: 'sq ft',
    order,
    orderUnit: 'boards',
    basis: `${area(areaSqFt)} in layers of ${thicknessIn} in / ${plainNumber(sqFt, 2)} sq ft, + ${percent}${base}; by area: leftovers are laid on, each layer starts with half a board so that no joint lies over another`,
    row: flatBoardAllowance,
  });
}

function stripLine({ highIn, runIn, lengthFt, order }: StripLine): MaterialLine {
  return lineOf({
    id: `edge-strip-${highIn}-${plainNumber(runIn, 1)}`,
    group: 'Boards',
    item: `Tapered edge strip 0-${plainNumber(highIn, 4)} in, ${plainNumber(runIn, 1)} in wide, 4 ft long`,
    quantity: lengthFt,
    unit: 'ft',
    order,
    orderUnit: 'strips',
    basis: `${plainNumber(lengthFt, 1)} ft, where the low edge of boards on other boards meets nothing`,
    row: edgeStrips[0],
  });
}

/** Everything flat or tapered between deck and covering. */
export function boardLines({ site, layout, areaSqFt }: Job): MaterialLine[] {
  const fills = layout.pieces.filter(({ layer }) => layer === 0).map(({ fillIn }) => fillIn);
  const baseIn = fills.length === 0 ? 0 : Math.min(...fills);
  const lines = [
    ...taperLines(layout.boards),
    ...layout.boardWork.strips.map(stripLine),
    ...layout.fill.map((fill) => fillLine(fill, baseIn)),
  ];
  if (layout.levellingBoardFt > 0.5) {
    const ground = groundNames[plannedWork(site)];
    const perBoard = levellingBoard.thicknessIn * levellingBoard.lengthFt * levellingBoard.widthFt;
    lines.push(
      lineOf({
        id: 'levelling',
        group: 'Boards',
        item: `Levelling fill, built from ${levellingBoard.thicknessIn} in flat board`,
        quantity: layout.levellingBoardFt,
        unit: 'board ft',
        order: whole((layout.levellingBoardFt / perBoard) * (1 + flatBoardAllowance.share)),
        orderUnit: 'boards',
        basis: `${plainNumber(layout.levellingBoardFt, 0)} board ft by the readings bring ${ground} to its plane / ${perBoard} board ft for one 4 x 8 ft board, + ${percent}; steps over 1/4 in are cut or filled, a ribbon does not bridge them; measure ${ground} before ordering`,
        row: levellingBoard,
      }),
    );
  }
  lines.push(
    lineOf({
      id: 'cover-board',
      group: 'Boards',
      item: `Cover board, ${coverBoard.name.replace('cover board, ', '')}, 4 x 8 ft`,
      quantity: areaSqFt,
      unit: 'sq ft',
      order: flatBoards(areaSqFt),
      orderUnit: 'boards',
      basis: `${area(areaSqFt)} / ${boardSqFt} sq ft, + ${percent} for cuts`,
      row: flatBoardAllowance,
    }),
  );
  return lines;
}
