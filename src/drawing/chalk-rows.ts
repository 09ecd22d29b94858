import type { EdgeReport, Layout } from '../core/report/types.ts';
import { feetInches } from '../units/print.ts';
import { chalkLines } from './chalk.ts';

export interface ChalkRow {
  start: string;
  /** Distances off it, nearest first: "4′-0″, 8′-0″". */
  distances: string;
}

/** Lines to snap, gathered by the outlet or edge the tape is held to. */
export function chalkRows(layout: Layout, edges: readonly EdgeReport[]): ChalkRow[] {
  const byStart = new Map<string, Set<number>>();
  for (const { start, offFt } of chalkLines(layout, edges)) {
    if (start === null || offFt === null) continue;
    byStart.set(start, (byStart.get(start) ?? new Set()).add(Math.round(offFt * 192) / 192));
  }
  return [...byStart].map(([start, distances]) => ({
    start,
    distances: [...distances]
      .sort((a, b) => a - b)
      .map(feetInches)
      .join(', '),
  }));
}
