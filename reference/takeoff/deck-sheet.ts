import type { Cited } from '../sources.ts';

export interface DeckSheetStock extends Cited {
  kind: 'vapor-retarder' | 'air-sheet';
  widthIn: number;
  lengthFt: number;
  sideLapIn: number;
  endLapIn: number;
}

/** Self-adhered sheets for the deck as sold. Common practice, no source: rolls and laps differ by maker. */
export const deckSheetStock = [
  {
    kind: 'vapor-retarder',
    widthIn: 39,
    lengthFt: 65,
    sideLapIn: 3,
    endLapIn: 6,
    source: 'practice',
    at: 'self-adhered vapor retarder, roll and laps',
    grade: 'practice',
  },
  {
    kind: 'air-sheet',
    widthIn: 48,
    lengthFt: 100,
    sideLapIn: 3,
    endLapIn: 6,
    source: 'practice',
    at: 'self-adhered vapor-open sheet, roll and laps',
    grade: 'practice',
  },
] as const satisfies readonly DeckSheetStock[];

/** How far the sheet goes onto what stands above the boards, and the piece round a pipe. Common practice, no source. */
export const deckSheetDetail = {
  ontoWallIn: 2,
  onDeckIn: 4,
  pipePieceIn: 24,
  source: 'practice',
  at: 'deck sheet turned up to the top of the boards',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;
