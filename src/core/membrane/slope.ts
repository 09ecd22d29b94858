import { type CoveringClass, type SlopeMinimumRow, slopeMinimums } from '../../../reference/slope-minimums.ts';
import { judgeSlope } from '../drainage/slope-rule.ts';

const table: readonly SlopeMinimumRow[] = slopeMinimums;

/** Least slope that low-slope coverings share; a covering that needs more has no re-roof exception. */
const COMMON_LEAST_IN_PER_FT = 0.25;

/** How the finished slope stands to the least slope of a covering. */
export type FinishedSlope = 'meets' | 'printed-percent' | 're-roof-exception' | 'too-flat' | 'not-known';

export function slopeRow(covering: CoveringClass): SlopeMinimumRow {
  const row = table.find((entry) => entry.covering === covering);
  if (!row) throw new Error(`no least slope for ${covering}`);
  return row;
}

/** True for a covering that needs more than the 1/4 in/ft of the others (roll roofing). */
export function needsMoreSlope(covering: CoveringClass): boolean {
  return slopeRow(covering).leastInPerFt > COMMON_LEAST_IN_PER_FT;
}

/**
 * `printed-percent`: below 1/4 in/ft but at the "2 percent" that the rule prints. `re-roof-exception`: lawful for a
 * replacement that is shown to drain.
 * @param slopeInPerFt least plane slope of the finished roof [in/ft]; null = not known
 * Source: reference/slope-minimums.ts. Correctness: tests/published/membrane-choice.test.ts
 */
export function finishedSlope(
  covering: CoveringClass,
  slopeInPerFt: number | null,
  exceptionApplies: boolean,
): FinishedSlope {
  if (slopeInPerFt === null) return 'not-known';
  const row = slopeRow(covering);
  const { standing } = judgeSlope(slopeInPerFt, row.leastInPerFt, row.printedPercent, false);
  if (standing !== 'below') return standing;
  return exceptionApplies && !needsMoreSlope(covering) ? 're-roof-exception' : 'too-flat';
}
