import { type DrainHeadRow, drainHeads } from '../../../reference/drain-heads.ts';
import { sourceNote } from '../finding.ts';
import type { SourceNote } from '../report/types.ts';

/** Head and flow of a drain, rising in both; starts at no head, no flow. */
export type HeadFlowCurve = readonly (readonly [headIn: number, flowGpm: number])[];

const rows: readonly DrainHeadRow[] = drainHeads;

/** The printed curve of a drain size [in] (from memory), or null where none is listed. */
export function printedCurve(sizeIn: number): { curve: HeadFlowCurve; source: SourceNote } | null {
  const row = rows.find((each) => Math.abs(each.sizeIn - sizeIn) < 1e-9);
  return row ? { curve: row.curve, source: sourceNote(row) } : null;
}

/** Linear interpolation between listed points and from the origin; null beyond the last point. */
function interpolate(points: readonly (readonly [x: number, y: number])[], x: number): number | null {
  if (x <= 0) return 0;
  let [fromX, fromY] = [0, 0];
  for (const [toX, toY] of points) {
    if (x <= toX) return fromY + ((x - fromX) / (toX - fromX)) * (toY - fromY);
    [fromX, fromY] = [toX, toY];
  }
  return null;
}

/**
 * Head [in] over a drain at a flow [gpm]; null when the flow is beyond the curve (it is not carried on).
 * Correctness: tests/published/drainage-load.test.ts row 4
 */
export function drainHeadIn(curve: HeadFlowCurve, gpm: number): number | null {
  return interpolate(
    curve.map(([headIn, flow]) => [flow, headIn] as const),
    gpm,
  );
}

/** Flow [gpm] that a drain passes at a head [in]; beyond the curve its last flow is kept, the drain can pass no less. */
export function drainFlowGpm(curve: HeadFlowCurve, headIn: number): number {
  return interpolate(curve, headIn) ?? curve[curve.length - 1][1];
}
