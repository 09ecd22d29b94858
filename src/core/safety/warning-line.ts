import { safetyLimits } from '../../../reference/safety/limits.ts';

export interface WarningLine {
  insideLengthFt: number;
  insideWidthFt: number;
  lineFt: number;
  flags: number;
  workAreaSqFt: number;
}

/** How wheeled equipment runs over a rectangle; `along-length` = with the longer side. */
export type Travel = 'none' | 'along-length' | 'along-width' | 'both';

/**
 * Warning line round a rectangular part: 6 ft back, and 10 ft back at the edges that wheeled travel meets squarely.
 * null where nothing is left between the lines. Lengths ft.
 * Source: 29 CFR 1926.502(f). Correctness: tests/published/safety-fall.test.ts
 */
export function warningLine(lengthFt: number, widthFt: number, travel: Travel): WarningLine | null {
  const { lineFt: near, lineAcrossTravelFt: far, flagSpacingFt } = safetyLimits;
  const ends = travel === 'along-length' || travel === 'both' ? far.value : near.value;
  const sides = travel === 'along-width' || travel === 'both' ? far.value : near.value;
  const insideLengthFt = lengthFt - 2 * ends;
  const insideWidthFt = widthFt - 2 * sides;
  if (insideLengthFt <= 0 || insideWidthFt <= 0) return null;
  const lineFt = 2 * (insideLengthFt + insideWidthFt);
  return {
    insideLengthFt,
    insideWidthFt,
    lineFt,
    flags: Math.ceil(lineFt / flagSpacingFt.value - 1e-9),
    workAreaSqFt: insideLengthFt * insideWidthFt,
  };
}
