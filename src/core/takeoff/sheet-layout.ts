import { openingDeduct, sheetTrim, widestChoice } from '../../../reference/takeoff/boards.ts';
import { intersect, type Region, subtract } from '../geometry/boolean.ts';
import { boxOf, signedAreaSqFt } from '../geometry/vector.ts';
import type { Point, Ring } from '../roof.ts';
import { whole } from './line.ts';
import { rollsForPieces, rollsRunOn, splitRow } from './roll-cutting.ts';

export interface SheetSize {
  widthFt: number;
  rollFt: number;
  sideLapFt: number;
  endLapFt: number;
}

export interface SheetPlan {
  size: SheetSize;
  rows: number;
  /** Run of every sheet on the roof, low row first; a row cut by a curb has two. */
  runsFt: readonly number[];
  /** What is cut from rolls, trimming included. */
  cutsFt: readonly number[];
  rolls: number;
  /** Side laps between rows. */
  seamFt: number;
  /** The same as if no curb stood in them: a width is not better because its seam runs into a curb. */
  fullSeamFt: number;
  endLaps: number;
  netSqFt: number;
  grossSqFt: number;
}

export interface SheetTask {
  covered: readonly Region[];
  curbs: readonly Ring[];
  /** Unit vector up the fall: rows run across it, low row first, each lapped over the one below it. */
  uphill: Point;
  /** Width of the first row as a share of the roll; a half keeps the laps of two plies apart. */
  starter?: 1 | 0.5;
  /** Base plies are rolled out one after the other, covering sheets are cut whole. */
  runOn?: boolean;
  /** Further pieces cut across the same rolls (flashings): roll feet of each. */
  extraCutsFt?: (size: SheetSize) => readonly number[];
}

/** Sheets across a depth. Source: n = 1 + ceil((C - W) / (W - lap)), arithmetic. */
export function rowCount(depthFt: number, widthFt: number, lapFt: number): number {
  return depthFt <= widthFt + 1e-9 ? 1 : 1 + whole((depthFt - widthFt) / (widthFt - lapFt));
}

/** What one roll covers when its laps are taken off, sq ft. */
export const netRollSqFt = ({ widthFt, rollFt, sideLapFt, endLapFt }: SheetSize): number =>
  (widthFt - sideLapFt) * (rollFt - endLapFt);

const turned =
  ([ux, uy]: Point) =>
  ([x, y]: Point): Point => [x * uy - y * ux, x * ux + y * uy];

const area = (regions: readonly Region[]): number =>
  regions.reduce(
    (sum, { outer, holes }) => sum + signedAreaSqFt(outer) + holes.reduce((s, hole) => s + signedAreaSqFt(hole), 0),
    0,
  );

/** The part of the covered area between two lines across the fall, curbs cut out. */
function band(covered: readonly Ring[], curbs: readonly Ring[], [x0, x1]: Point, v0: number, v1: number): Region[] {
  const strip: Ring = [
    [x0, v0],
    [x1, v0],
    [x1, v1],
    [x0, v1],
  ];
  const inside = intersect(covered, [strip]).map(({ outer }) => outer);
  const hit = curbs.filter((curb) => {
    const box = boxOf(curb);
    return box.minY < v1 && box.maxY > v0;
  });
  return (hit.length === 0 ? inside.map((outer): Region => ({ outer, holes: [] })) : subtract(inside, hit)).filter(
    (region) => area([region]) > 0.02,
  );
}

const spanFt = ({ outer }: Region): number => {
  const box = boxOf(outer);
  return box.maxX - box.minX;
};

/** The roof covered with sheets of one width. Lengths and curbs are those of the plan, not an average. */
export function layoutSheets(task: SheetTask, size: SheetSize): SheetPlan {
  const turn = turned(task.uphill);
  const covered = task.covered.map(({ outer }) => outer.map(turn));
  const curbs = task.curbs.map((curb) => curb.map(turn));
  const boxes = covered.map(boxOf);
  const across: Point = [Math.min(...boxes.map((b) => b.minX)) - 1, Math.max(...boxes.map((b) => b.maxX)) + 1];
  const [low, high] = [Math.min(...boxes.map((b) => b.minY)), Math.max(...boxes.map((b) => b.maxY))];
  const { widthFt, rollFt, sideLapFt, endLapFt } = size;
  const starterFt = widthFt * (task.starter ?? 1);
  const rows = rowCount(high - low + widthFt - starterFt, widthFt, sideLapFt);
  const runsFt: number[] = [];
  const cutsFt: number[] = [];
  let seamFt = 0;
  let fullSeamFt = 0;
  let endLaps = 0;
  for (let row = 0; row < rows; row++) {
    const bottom = row === 0 ? low : low + starterFt - sideLapFt + (row - 1) * (widthFt - sideLapFt);
    const top = row === 0 ? low + starterFt : bottom + widthFt;
    for (const region of band(covered, curbs, across, bottom, Math.min(top, high))) {
      const runFt = spanFt(region);
      const pieces = splitRow(runFt, rollFt, endLapFt, row % 2 === 1);
      runsFt.push(runFt);
      endLaps += pieces.length - 1;
      cutsFt.push(...pieces.map((piece) => (task.runOn ? piece : Math.min(rollFt, piece + sheetTrim.cutFt))));
    }
    if (row === 0) continue;
    seamFt += area(band(covered, curbs, across, bottom, bottom + sideLapFt)) / sideLapFt;
    fullSeamFt += area(band(covered, [], across, bottom, bottom + sideLapFt)) / sideLapFt;
  }
  const extra = task.extraCutsFt?.(size) ?? [];
  const laidFt = runsFt.reduce((sum, run) => sum + run, 0);
  const rolls = task.runOn
    ? rollsRunOn(laidFt + extra.reduce((sum, cut) => sum + cut, 0), rollFt, endLapFt)
    : rollsForPieces([...cutsFt, ...extra], rollFt);
  const openings = task.curbs.map((curb) => Math.abs(signedAreaSqFt(curb))).filter((a) => a > openingDeduct.overSqFt);
  return {
    size,
    rows,
    runsFt,
    cutsFt,
    rolls,
    seamFt,
    fullSeamFt,
    endLaps: task.runOn ? Math.max(endLaps, rolls - 1) : endLaps,
    netSqFt: area(task.covered) - openings.reduce((sum, a) => sum + a, 0),
    grossSqFt: rolls * rollFt * widthFt,
  };
}

/**
 * The best roll width: fewest seam feet, then rolls, then waste, among widths that do not waste far more than the best.
 * Seams within half a foot are the same. Rows always run across the fall, so that laps shed water.
 */
export function chooseSheets(task: SheetTask, sizes: readonly SheetSize[]): SheetPlan {
  const plans = sizes.map((size) => layoutSheets(task, size));
  const least = Math.min(...plans.map(({ grossSqFt }) => grossSqFt));
  return plans
    .filter(({ grossSqFt }) => grossSqFt <= least * widestChoice.grossOverLeast + 1e-9)
    .sort((a, b) => Math.round(a.fullSeamFt - b.fullSeamFt) || a.rolls - b.rolls || a.grossSqFt - b.grossSqFt)[0]!;
}
