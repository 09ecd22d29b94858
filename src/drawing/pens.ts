/**
 * Line weights, fills and letters, the same for every printer of a drawing (screen, PDF, DXF).
 * Blue is water and nothing else; red is a broken limit, always beside a word. All else is ink and grey.
 */

export type Tone = 'ink' | 'soft' | 'faint' | 'water' | 'stop';

export interface PenStyle {
  widthMm: number;
  /** Stroke and gap lengths; null = solid. */
  dashMm: readonly number[] | null;
  tone: Tone;
}

const solid = (widthMm: number, tone: Tone = 'ink'): PenStyle => ({ widthMm, dashMm: null, tone });
const dashed = (widthMm: number, dashMm: readonly number[], tone: Tone = 'ink'): PenStyle => ({
  widthMm,
  dashMm,
  tone,
});

export const pens = {
  outline: solid(0.6),
  curb: solid(0.4),
  fixture: solid(0.3),
  plane: solid(0.13, 'soft'),
  ridge: solid(0.18),
  valley: solid(0.5),
  wall: dashed(0.25, [1.2, 0.8]),
  contour: solid(0.13, 'soft'),
  'contour-heavy': solid(0.26, 'soft'),
  cut: solid(0.7),
  area: dashed(0.25, [2.4, 0.8, 0.4, 0.8], 'soft'),
  arrow: solid(0.25),
  dimension: solid(0.13, 'soft'),
  limit: solid(0.3),
  stop: solid(0.5, 'stop'),
  board: solid(0.1, 'soft'),
  chalk: dashed(0.25, [1.6, 0.9]),
  nailer: solid(0.8, 'soft'),
  shore: solid(0.25, 'water'),
  hatch: solid(0.13, 'faint'),
  flat: dashed(0.5, [0.6, 0.9], 'soft'),
  old: dashed(0.3, [1.4, 0.8], 'soft'),
  surface: solid(0.5),
  scale: solid(0.3),
} as const satisfies Record<string, PenStyle>;

export type Pen = keyof typeof pens;

/** Greys of board thickness, thin to thick, light enough for ink letters on the darkest (contrast above 4.5). */
export const greys = ['#f3f2ee', '#e6e4df', '#d8d6d0', '#cac8c2', '#bcbab4', '#aeaca6', '#a09e98', '#92908b'] as const;
export const greysInSun = [
  '#ffffff',
  '#ececec',
  '#dadada',
  '#c8c8c8',
  '#b6b6b6',
  '#a4a4a4',
  '#949494',
  '#868686',
] as const;

/** Least water depth of each blue, in; the same on every drawing, so that before and after compare. */
export const waterDepthsIn = [0, 0.25, 0.5, 1, 2, 4] as const;
export const blues = ['#d9e9f5', '#b5d3ea', '#8bb9db', '#5f9bc8', '#3a7bad', '#235f90'] as const;

export type Fill =
  | 'sheet'
  | 'curb'
  | 'body'
  | 'ink'
  | 'stop'
  | `grey-${0 | 1 | 2 | 3 | 4 | 5 | 6 | 7}`
  | `water-${0 | 1 | 2 | 3 | 4 | 5}`;

/** Letter heights against the sheet's own letter. */
export const letters = { large: 1.2, plain: 1, small: 0.86, tiny: 0.76 } as const;
export type LetterSize = keyof typeof letters;

/** Mean advance of a letter against its height, on the wide side: used to see whether words fit. */
export const ADVANCE = 0.54;
