/** A taper from its start toward a height that it must stay under. */
export interface RunToLimit {
  /** Thickness with which it starts. */
  startIn: number;
  slopeInPerFt: number;
  /** What is left over the start; negative = short before the taper rises at all. */
  riseIn: number;
  /** How far it may run at that slope; 0 where nothing is left. */
  runFt: number;
}

/**
 * How far a taper may run before it meets a height.
 * @param boardsIn thickness of boards that the place allows: its height less flashing and cover board [in]
 * @param startIn thickness at the outlet or low edge [in]
 * @param slopeInPerFt rise of the boards
 * Formula: rise = sill - flashing - cover - start; run = rise / slope. Source: arithmetic.
 * Correctness: tests/published/taper.test.ts, 51
 */
export function runToLimit(boardsIn: number, startIn: number, slopeInPerFt: number): RunToLimit {
  const riseIn = boardsIn - startIn;
  return { startIn, slopeInPerFt, riseIn, runFt: Math.max(0, riseIn / slopeInPerFt) };
}

/**
 * What a build-up buries of a steep slope that runs up from it.
 * @param buildUpIn at the joint [in]
 * @param pitchIn12 rise of the shingles in 12
 * @returns inches level and along the slope. Source: trigonometry. Correctness: tests/published/taper.test.ts, 52
 */
export function buriedIn(buildUpIn: number, pitchIn12: number): { levelIn: number; alongIn: number } {
  const levelIn = (12 * buildUpIn) / pitchIn12;
  return { levelIn, alongIn: Math.hypot(levelIn, buildUpIn) };
}
