import type { Cited } from '../sources.ts';

/** Extra of flat and cover boards for cuts. */
export const flatBoardAllowance = {
  share: 0.05,
  source: 'practice',
  at: 'insulation and cover board + 5 %',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/** Levelling is built from the thinnest flat board, cut to the steps of the low spot. */
export const levellingBoard = {
  thicknessIn: 0.5,
  lengthFt: 8,
  widthFt: 4,
  source: 'practice',
  at: 'foam does not bridge a gap over 1/4 in under a board',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/** A sheet cut from the roll is this much longer than the run, to be trimmed. */
export const sheetTrim = {
  cutFt: 0.5,
  source: 'practice',
  at: 'cut length = run + turn-downs + 6 in',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/** Openings smaller than this stay in the area of the sheet. */
export const openingDeduct = {
  overSqFt: 100,
  source: 'practice',
  at: 'deduct openings over 25 to 100 sq ft only',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/** Dearer rolls are only taken where they save seams without wasting this much of the least order. */
export const widestChoice = {
  grossOverLeast: 1.25,
  source: 'practice',
  at: 'fewest seams among rolls of similar waste',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;
