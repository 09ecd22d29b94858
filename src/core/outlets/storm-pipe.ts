import {
  type AreaLeaderRow,
  areaLeaders,
  type GpmLeaderRow,
  gpmLeaders,
  type SevenTwentyFourthsRow,
  sevenTwentyFourthsLeaders,
} from '../../../reference/leaders.ts';
import type { Cited } from '../../../reference/sources.ts';
import {
  type AreaPipeRow,
  areaPipeSlopesInPerFt,
  areaPipes,
  type GpmPipeRow,
  gpmPipeSlopesInPerFt,
  gpmPipes,
  type PipeGeneration,
} from '../../../reference/storm-pipes.ts';
import { sourceNote } from '../finding.ts';
import type { SourceNote } from '../report/types.ts';
import { flowGpm, SAME_FLOW_GPM } from './flow.ts';

/** One size of a table with what it carries. */
export interface PipeSize {
  /** Diameter, or the two sides of a rectangle [in]. */
  sizeIn: readonly number[];
  capacityGpm: number;
  source: SourceNote;
}

const size = (sizeIn: readonly number[], capacityGpm: number, row: Cited): PipeSize => ({
  sizeIn,
  capacityGpm,
  source: sourceNote(row),
});

const gpmRows: readonly GpmPipeRow[] = gpmPipes;
const areaRows: readonly AreaPipeRow[] = areaPipes;
const gpmLeaderRows: readonly GpmLeaderRow[] = gpmLeaders;
const areaLeaderRows: readonly AreaLeaderRow[] = areaLeaders;
const upcLeaderRows: readonly SevenTwentyFourthsRow[] = sevenTwentyFourthsLeaders;

const roundLeaders: Record<PipeGeneration, readonly PipeSize[]> = {
  'ipc-area': areaLeaderRows.map((row) => size([row.diameterIn], flowGpm(row.areaSqFt, 1), row)),
  'ipc-gpm': gpmLeaderRows.filter((row) => row.sizeIn.length === 1).map((row) => size(row.sizeIn, row.gpm, row)),
  'seven-twenty-fourths': upcLeaderRows.map((row) => size([row.diameterIn], row.gpm, row)),
};

/**
 * Vertical pipe under a roof drain, smallest first: Table 1106.2 "vertical" (IPC from 2015), else the leader table of the
 * generation. Correctness: tests/published/drainage-pipes.test.ts
 */
export function drainPipes(generation: PipeGeneration): readonly PipeSize[] {
  if (generation !== 'ipc-gpm') return roundLeaders[generation];
  return gpmRows.map((row) => size([row.sizeIn], row.verticalGpm, row));
}

/** Round leaders that take a gutter or scupper head, smallest first. Correctness: tests/published/drainage-pipes.test.ts */
export const leaders = (generation: PipeGeneration): readonly PipeSize[] => roundLeaders[generation];

/** Rectangular leaders of the gpm table, smallest flow first; the other generations list round ones only. */
export function rectangularLeaders(generation: PipeGeneration): readonly PipeSize[] {
  if (generation !== 'ipc-gpm') return [];
  return gpmLeaderRows.filter((row) => row.sizeIn.length === 2).map((row) => size(row.sizeIn, row.gpm, row));
}

/**
 * Horizontal storm pipes at a slope [in/ft], smallest first. A slope between two columns takes the flatter one;
 * empty when the pipe is flatter than the table. Correctness: tests/published/drainage-pipes.test.ts
 */
export function horizontalPipes(generation: PipeGeneration, slopeInPerFt: number): readonly PipeSize[] {
  const slopes: readonly number[] = generation === 'ipc-gpm' ? gpmPipeSlopesInPerFt : areaPipeSlopesInPerFt;
  const column = slopes.findLastIndex((each) => each <= slopeInPerFt + 1e-9);
  if (column < 0) return [];
  if (generation === 'ipc-gpm') return gpmRows.map((row) => size([row.sizeIn], row.slopedGpm[column], row));
  return areaRows.map((row) => size([row.sizeIn], flowGpm(row.areaSqFt[column], 1), row));
}

/** First size of a table that carries a flow [gpm]; null when the flow is off the table. */
export function smallestFor(table: readonly PipeSize[], gpm: number): PipeSize | null {
  return table.find((row) => row.capacityGpm >= gpm - SAME_FLOW_GPM) ?? null;
}

/**
 * Row of a given size [in]; a size that is not listed takes the next smaller row (common practice), null below the table.
 */
export function rowOfSize(table: readonly PipeSize[], sizeIn: number): PipeSize | null {
  return table.findLast((row) => row.sizeIn.length === 1 && row.sizeIn[0] <= sizeIn + 1e-9) ?? null;
}

/**
 * Flow [gpm] of a vertical leader that runs partly full: Q = 27.8 r^(5/3) D^(8/3).
 * @param diameterIn inner diameter [in]
 * @param filled share of the section that is water; 7/24 in the UPC and NSPC
 * Source: NSPC 2006, Table 13.6.1. Correctness: tests/published/drainage-pipes.test.ts row 20
 */
export function leaderFlowGpm(diameterIn: number, filled = 7 / 24): number {
  return 27.8 * filled ** (5 / 3) * diameterIn ** (8 / 3);
}
