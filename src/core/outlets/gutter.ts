import {
  downspoutRule,
  type GutterRow,
  gutters,
  type PitchFactorRow,
  pitchFactors,
} from '../../../reference/gutters.ts';

const gutterRows: readonly GutterRow[] = gutters;
const factorRows: readonly PitchFactorRow[] = pitchFactors;

/** Gutter rows of one profile, smallest first. */
export const gutterSizes = (profile: GutterRow['profile']): readonly GutterRow[] =>
  gutterRows.filter((row) => row.profile === profile);

/** Factor on plan area for rain driven onto a pitch [in 12]; 1 up to 3 in 12. Sheet-metal practice. */
export function pitchFactor(pitchIn12: number): number {
  return factorRows.findLast((row) => pitchIn12 >= row.fromPitchIn12)!.factor;
}

/** Roof area x pitch factor x rain [sq ft x in/h]: what gutter tables are entered with. Correctness: tests/published/drainage-outlets.test.ts row 34 */
export function adjustedAreaSqFt(areaSqFt: number, pitchIn12: number, inPerHr: number): number {
  return areaSqFt * pitchFactor(pitchIn12) * inPerHr;
}

/** Smallest gutter of a profile whose run carries an adjusted area; null when it is off the table. */
export function smallestGutter(profile: GutterRow['profile'], adjustedSqFt: number): GutterRow | null {
  return gutterSizes(profile).find((row) => row.adjustedSqFt >= adjustedSqFt - 1e-9) ?? null;
}

/** Section of downspout [sq in] for an adjusted area: 1 sq in for each 1,200. Correctness: tests/published/drainage-outlets.test.ts row 35 */
export const downspoutSqIn = (adjustedSqFt: number): number => adjustedSqFt / downspoutRule.areaSqFtPerSqIn;

/** One run of a gutter from its high point to the downspout that takes it. */
export interface GutterRun {
  fromFt: number;
  toFt: number;
  downspoutFt: number;
}

/**
 * Runs of a gutter: the high points lie midway between neighbouring downspouts, and the ends fall to the nearest one.
 * @param downspoutsFt distances along the side; those outside the gutter are left out
 * @returns two runs for each downspout, without those of no length; none when there is no downspout
 */
export function gutterRuns(fromFt: number, toFt: number, downspoutsFt: readonly number[]): GutterRun[] {
  const inside = downspoutsFt.filter((at) => at >= fromFt - 1e-6 && at <= toFt + 1e-6).toSorted((a, b) => a - b);
  return inside
    .flatMap((at, index) => {
      const left = index === 0 ? fromFt : (inside[index - 1] + at) / 2;
      const right = index === inside.length - 1 ? toFt : (at + inside[index + 1]) / 2;
      return [
        { fromFt: left, toFt: at, downspoutFt: at },
        { fromFt: at, toFt: right, downspoutFt: at },
      ];
    })
    .filter((run) => run.toFt - run.fromFt > 1e-6);
}
