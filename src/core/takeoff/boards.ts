import { flatStock, type TaperGroup, taperGroups, zeroEdgeGroups } from '../../../reference/boards.ts';
import { coverBoard } from '../../../reference/insulation.ts';
import { flatBoardAllowance, levellingBoard } from '../../../reference/takeoff/boards.ts';
import { area, decimalInches, plainNumber } from '../../units/print.ts';
import { markOf } from '../layout/bands.ts';
import type { BoardLine, FillLine, MaterialLine } from '../report/types.ts';
import type { Job } from './job.ts';
import { lineOf, whole } from './line.ts';

const STOCK = flatStock[0]!;
const groups: readonly TaperGroup[] = [...taperGroups, ...zeroEdgeGroups];
const boardSqFt = STOCK.lengthFt * STOCK.widthFt;
const percent = `${plainNumber(flatBoardAllowance.share * 100)} %`;

/** Whole 4 x 8 ft boards for an area, cuts allowed for. */
export const flatBoards = (areaSqFt: number): number => whole((areaSqFt / boardSqFt) * (1 + flatBoardAllowance.share));

function taperLine(mark: string, lines: readonly BoardLine[]): MaterialLine {
  const [first] = lines;
  const net = lines.reduce((sum, line) => sum + line.net, 0);
  const order = lines.reduce((sum, line) => sum + line.order, 0);
  const where = lines.map(
    ({ fillLayersIn, order: count }) =>
      `${count} ${fillLayersIn.length === 0 ? 'on no fill' : `on ${fillLayersIn.map((t) => `${t} in`).join(' + ')} of fill`}`,
  );
  return lineOf({
    id: `board-${mark}`,
    group: 'Boards',
    item: `Tapered board ${mark} in, ${decimalInches(first!.slopeInPerFt, 4)} per ft, 4 x 4 ft`,
    quantity: net,
    unit: 'boards',
    order,
    orderUnit: 'boards',
    basis: `${plainNumber(net, 2)} boards' worth of area; a new board for every piece on the plan and one spare per ten: ${where.join(', ')}`,
    row: groups.find(({ slopeInPerFt }) => slopeInPerFt === first!.slopeInPerFt) ?? null,
  });
}

/** Tapered boards: the same board on another fill is the same board to buy. */
function taperLines(boards: readonly BoardLine[]): MaterialLine[] {
  const byMark = new Map<string, BoardLine[]>();
  for (const line of boards) {
    const mark = markOf(line.lowIn, line.highIn, 0);
    byMark.set(mark, [...(byMark.get(mark) ?? []), line]);
  }
  return [...byMark].map(([mark, lines]) => taperLine(mark, lines));
}

function fillLine({ thicknessIn, areaSqFt, order }: FillLine, baseIn: number): MaterialLine {
  const base = baseIn > 0 ? `; ${baseIn} in of all fill lies under every board` : '';
  return lineOf({
    id: `fill-${thicknessIn}`,
    group: 'Boards',
    item: `Flat board ${thicknessIn} in, 4 x 8 ft (fill)`,
    quantity: areaSqFt,
    unit: 'sq ft',
    order: Math.max(order, flatBoards(areaSqFt)),
    orderUnit: 'boards',
    basis: `${area(areaSqFt)} in layers of ${thicknessIn} in / ${boardSqFt} sq ft, + ${percent}${base}`,
    row: flatBoardAllowance,
  });
}

/** Everything flat or tapered between deck and covering. */
export function boardLines({ layout, areaSqFt }: Job): MaterialLine[] {
  const fills = layout.pieces.map(({ fillIn }) => fillIn);
  const baseIn = fills.length === 0 ? 0 : Math.min(...fills);
  const lines = [...taperLines(layout.boards), ...layout.fill.map((fill) => fillLine(fill, baseIn))];
  if (layout.levellingBoardFt > 0.5) {
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
        basis: `${plainNumber(layout.levellingBoardFt, 0)} board ft by the readings bring the sagging deck to its plane / ${perBoard} board ft for one 4 x 8 ft board, + ${percent}; steps over 1/4 in are cut or filled, a ribbon does not bridge them; measure the bare deck before ordering`,
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
