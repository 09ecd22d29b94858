import { flatBoardAllowance } from '../../../reference/takeoff/boards.ts';
import { heightIn } from '../geometry/plane.ts';
import { distanceFt } from '../geometry/vector.ts';
import type { BoardLine, BoardWork, FillLine, RipLine, StripLine, UnmadePlane } from '../report/types.ts';
import type { Point } from '../roof.ts';
import { layersOf, markOf } from './bands.ts';
import type { Catalogue } from './catalogue.ts';
import { alongLevel, type Tile } from './cells.ts';
import { outlinesOf } from './pieces.ts';
import { boardsSaved } from './reuse.ts';

/** Length of the pieces in which edge strips come. */
const STRIP_FT = 4;
/** A part of a board that misses its edge by less than this is the whole run. */
const SAME_IN = 0.01;
/** A shorter level side is a corner. */
const LEAST_RIP_FT = 0.25;
/** Less than this is not bought: it is rounding, or sealed. */
const SCRAP_SQ_FT = 0.02;

const whole = (count: number): number => Math.ceil(count - 1e-9);

/** Boards to buy for so many that are cut or laid: one spare per so many. */
export const withSpares = (boards: number, boardsPerSpare: number): number => boards + whole(boards / boardsPerSpare);

function grouped<T>(items: readonly T[], keyOf: (item: T) => string): T[][] {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const key = keyOf(item);
    const own = groups.get(key);
    if (own) own.push(item);
    else groups.set(key, [item]);
  }
  return [...groups.values()];
}

const isCut = ({ areaSqFt, group }: Tile): boolean => areaSqFt < group.runFt * group.widthFt - 1e-3;

/** The outlines of a cell as they lie on their board: up the slope from the low edge, along the level side. */
function onBoard({ rings, plane, band, axis, group }: Tile): Point[][] {
  const level = alongLevel(plane, axis);
  const up = (p: Point): number => (heightIn(plane, p) - band.lowIn) / group.slopeInPerFt;
  return outlinesOf(rings).map((outline) => outline.map((p): Point => [up(p), level(p)]));
}

function boardLine(tiles: readonly Tile[], catalogue: Catalogue): BoardLine {
  const { band, group, layer, flatIn: ground } = tiles[0];
  const { runFt, widthFt, slopeInPerFt } = group;
  const boardSqFt = runFt * widthFt;
  const laid = tiles.filter(({ sliver }) => !sliver);
  const sum = (list: readonly Tile[]): number => list.reduce((total, { areaSqFt }) => total + areaSqFt, 0);
  const [areaSqFt, laidSqFt] = [sum(tiles), sum(laid)];
  const sliverSqFt = areaSqFt - laidSqFt;
  // Small pieces come out of what is cut off their row; where that is too little, a board is taken for them.
  const short = sliverSqFt - (laid.length * boardSqFt - laidSqFt);
  const boards = laid.length + (short > SCRAP_SQ_FT ? whole(short / boardSqFt) : 0);
  const cut = laid.filter(isCut);
  return {
    layer,
    lowIn: band.boardLowIn,
    highIn: band.boardHighIn,
    slopeInPerFt,
    runFt,
    widthFt,
    fillLayersIn: [...(layersOf(catalogue, ground) ?? []), ...(layersOf(catalogue, band.fillIn) ?? [])],
    net: areaSqFt / boardSqFt,
    boards,
    cut: cut.length,
    order: withSpares(boards, catalogue.boardsPerSpare),
    wasteShare: boards === 0 ? 0 : 1 - areaSqFt / (boards * boardSqFt),
    reusable: boardsSaved(
      cut.map((tile) => ({ outlines: onBoard(tile) })),
      runFt,
      widthFt,
    ),
    slivers: tiles.length - laid.length,
    sliverSqFt,
    mark: markOf(band.boardLowIn, band.boardHighIn, band.fillIn + ground),
  };
}

/** One line to each thickness of each layer, with what is bought for it. */
export function boardLines(tiles: readonly Tile[], catalogue: Catalogue): BoardLine[] {
  const boards = tiles.filter(({ kind }) => kind === 'board');
  return grouped(boards, ({ layer, group, band, flatIn }) => `${layer}|${group.slopeInPerFt}|${band.index}|${flatIn}`)
    .sort(([a], [b]) => a.layer - b.layer || a.group.slopeInPerFt - b.group.slopeInPerFt || a.band.index - b.band.index)
    .map((own) => boardLine(own, catalogue))
    .filter(({ boards }) => boards > 0);
}

/** Flat stock under the bands, per layer thickness, by area. */
export function fillLines(tiles: readonly Tile[], catalogue: Catalogue): FillLine[] {
  const byThickness = new Map<number, number>();
  const add = (fillIn: number, areaSqFt: number): void => {
    for (const thicknessIn of layersOf(catalogue, fillIn) ?? [])
      byThickness.set(thicknessIn, (byThickness.get(thicknessIn) ?? 0) + areaSqFt);
  };
  for (const own of grouped(tiles, ({ band, flatIn }) => `${flatIn}|${band.fillIn}`)) {
    const areaSqFt = own.reduce((sum, tile) => sum + tile.areaSqFt, 0);
    add(own[0].flatIn, areaSqFt);
    add(own[0].band.fillIn, areaSqFt);
  }
  return [...byThickness]
    .sort(([a], [b]) => a - b)
    .flatMap(([thicknessIn, areaSqFt]) => {
      const stock = catalogue.flat.find((row) => Math.abs(row.thicknessIn - thicknessIn) < 1e-9);
      if (stock === undefined) return [];
      const { lengthFt, widthFt } = stock;
      const share = areaSqFt / (lengthFt * widthFt);
      const order = whole(share * (1 + flatBoardAllowance.share));
      return [{ thicknessIn, areaSqFt, lengthFt, widthFt, boards: whole(share), order }];
    });
}

function stripLines(tiles: readonly Tile[]): StripLine[] {
  const strips = tiles.filter(({ kind }) => kind === 'strip');
  return grouped(strips, ({ band, group }) => `${band.highIn}|${group.slopeInPerFt}`).map((own) => {
    const { band, group } = own[0];
    const runFt = band.highIn / group.slopeInPerFt;
    const areaSqFt = own.reduce((sum, tile) => sum + tile.areaSqFt, 0);
    const lengthFt = areaSqFt / runFt;
    return { highIn: band.highIn, runIn: 12 * runFt, lengthFt, order: whole(lengthFt / STRIP_FT) };
  });
}

/** Length of the cell's sides that run along the slope's level at a thickness: a ripped edge, not a corner of a mitre. */
function levelSideFt({ rings, plane }: Tile, thicknessIn: number): number {
  const on = (p: Point): boolean => Math.abs(heightIn(plane, p) - thicknessIn) < SAME_IN;
  let sumFt = 0;
  for (const ring of rings)
    ring.forEach((a, i) => {
      const b = ring[(i + 1) % ring.length];
      if (on(a) && on(b)) sumFt += distanceFt(a, b);
    });
  return sumFt;
}

function ripLines(tiles: readonly Tile[]): RipLine[] {
  const start = new Map<number, number>();
  for (const { sheet, leastIn } of tiles) start.set(sheet, Math.min(leastIn, start.get(sheet) ?? leastIn));
  const ripped = tiles.flatMap((tile) => {
    const { band, kind, sliver, flatIn, group, sheet } = tile;
    // Behind an inside corner a plane starts in a point: there is no level side, but no lower part either.
    const isFirst = tile.leastIn < (start.get(sheet) ?? 0) + SAME_IN;
    if (kind !== 'board' || sliver) return [];
    const fromIn = Math.max(band.boardLowIn, tile.leastIn - band.fillIn);
    const toIn = Math.min(band.boardHighIn, tile.mostIn - band.fillIn);
    const low = fromIn > band.boardLowIn + SAME_IN && (isFirst || levelSideFt(tile, tile.leastIn) > LEAST_RIP_FT);
    const high = toIn < band.boardHighIn - SAME_IN && levelSideFt(tile, tile.mostIn) > LEAST_RIP_FT;
    if (!low && !high) return [];
    const part: RipLine['part'] = low && high ? 'middle' : low ? 'upper' : 'lower';
    const mark = markOf(band.boardLowIn, band.boardHighIn, band.fillIn + flatIn);
    return [{ mark, part, fromIn, toIn, useFt: (toIn - fromIn) / group.slopeInPerFt }];
  });
  return grouped(ripped, ({ mark, fromIn, toIn }) => `${mark}|${fromIn.toFixed(2)}|${toIn.toFixed(2)}`).map((own) => ({
    ...own[0],
    pieces: own.length,
  }));
}

/** What goes with the boards: strips, ripped rows, waste, what re-use could save, and planes that cannot be made. */
export function boardWork(
  tiles: readonly Tile[],
  lines: readonly BoardLine[],
  unmade: readonly UnmadePlane[],
): BoardWork {
  const total = (of: (line: BoardLine) => number): number => lines.reduce((sum, line) => sum + of(line), 0);
  const [net, taken] = [total((line) => line.net), total(({ boards }) => boards)];
  const widths = lines.map(({ widthFt }) => widthFt);
  return {
    strips: stripLines(tiles),
    rips: ripLines(tiles),
    unmade,
    net,
    taken,
    wasteShare: taken === 0 ? 0 : 1 - net / taken,
    reusable: total(({ reusable }) => reusable),
    staggerFt: widths.length === 0 ? 0 : Math.min(...widths) / 2,
  };
}
