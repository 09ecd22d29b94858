/** A chimney or curb wider than this across the slope needs a cricket: IBC 1503.6 (to 2018), 1503.5 (2021), IRC R903.2.2. */
export const CRICKET_FROM_WIDTH_IN = 30;

/**
 * Whether the code asks for a cricket above a chimney or curb of this width across the slope [in]: more than 30 in.
 * Unit skylights flashed as their listing says are excepted. Correctness: tests/published/drainage-slope.test.ts
 */
export const needsCricket = (widthAcrossIn: number): boolean => widthAcrossIn > CRICKET_FROM_WIDTH_IN;

/**
 * Height [in] of the code's cricket at the chimney: half the width x the roof's rise over run, a level ridge with valleys at
 * 45 degrees in plan. Its valleys fall 0.707 of the roof's slope: on a low-slope roof it is built steeper than that.
 * @param widthIn width of the chimney [in]
 * @param pitchIn12 rise of the roof in 12
 * Source: IRC R1003.20, table of cricket heights. Correctness: tests/published/drainage-slope.test.ts
 */
export const codeCricketHeightIn = (widthIn: number, pitchIn12: number): number => (widthIn * pitchIn12) / 12 / 2;
