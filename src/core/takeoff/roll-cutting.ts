import { whole } from './line.ts';

/** Pieces at least as long as the roll are split; every second row starts with half a roll so that end laps stagger. */
export function splitRow(runFt: number, rollFt: number, endLapFt: number, halfStart: boolean): number[] {
  if (runFt <= rollFt + 1e-9) return [runFt];
  const pieces: number[] = [];
  let left = runFt;
  let next = halfStart ? rollFt / 2 : rollFt;
  while (left > next + 1e-9) {
    pieces.push(next);
    left -= next - endLapFt;
    next = rollFt;
  }
  return [...pieces, left];
}

/**
 * Rolls from which these pieces can be cut, longest first into the first roll with room.
 * @param piecesFt none longer than the roll
 */
export function rollsForPieces(piecesFt: readonly number[], rollFt: number): number {
  const leftFt: number[] = [];
  for (const piece of [...piecesFt].sort((a, b) => b - a)) {
    const roll = leftFt.findIndex((left) => left >= piece - 1e-9);
    if (roll < 0) leftFt.push(rollFt - piece);
    else leftFt[roll]! -= piece;
  }
  return leftFt.length;
}

/** Rolls laid one after the other, the next lapped onto the end of the last wherever that falls. */
export function rollsRunOn(laidFt: number, rollFt: number, endLapFt: number): number {
  if (laidFt <= 0) return 0;
  return Math.max(1, 1 + whole((laidFt - rollFt) / (rollFt - endLapFt)));
}
