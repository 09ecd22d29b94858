import type { Cited } from '../sources.ts';

/** Width of a flashing sheet: on the field, up, and onto what stands behind it. */
export const flashingSheet = {
  onFieldIn: 6,
  ontoWallIn: 4,
  downOutsideIn: 2,
  source: 'practice',
  at: 'sheet width 6 + height + 2 to 4 in; 2 in down outside a parapet',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/** The roof file does not hold the thickness of a parapet; taller ones are flashed like walls. */
export const parapetSheet = {
  wallThicknessIn: 8,
  tallestOverIn: 24,
  source: 'practice',
  at: 'up and over a parapet',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/** A curb flashing runs this much past each side for its corner. */
export const curbCorner = {
  pastIn: 8,
  source: 'practice',
  at: 'curb flashing length, side + 8 in',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/** Plates at walls, curbs and slope changes. A county specification wants 8 in; corners take 6 in. */
export const basePlates = {
  spacingIn: 12,
  closerIn: 8,
  source: 'practice',
  at: 'base attachment 12 in on centre',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

export const terminationBar = {
  pieceFt: 10,
  fastenerIn: 8,
  source: 'practice',
  at: 'termination bar, 6 to 8 in on centre',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/**
 * How far the sheet runs up under the shingles: the longer of 24 in along the slope and 8 in of rise.
 * A builder's detail article asks 18 to 24 in of rise; heavy snow is the reason to follow it.
 */
export const tieIn = {
  leastRunIn: 24,
  riseIn: 8,
  /** A flat pitch makes the longest run, so it is taken where the pitch is not known. */
  carefulPitchIn12: 3,
  source: 'practice',
  at: 'tie-in under shingles',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/** Self-adhered underlayment over the top of the sheet. */
export const underlayRoll = {
  widthIn: 36,
  lengthFt: 66,
  source: 'memory',
  at: 'underlayment roll of two squares',
  grade: 'memory',
} as const satisfies Cited & Record<string, unknown>;

export const pipeBoot = {
  heightIn: 8,
  source: 'va-07-54-23',
  at: 'pipe flashing height',
  grade: 'found',
} as const satisfies Cited & Record<string, unknown>;

export const drainSet = {
  targetFt: 3,
  sumpFt: 4,
  tubes: 0.75,
  source: 'practice',
  at: 'drain: 36 x 36 in target sheet, 1/2 to 1 tube under the ring, 4 ft sump',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

export const scupperSet = {
  membraneSqFt: 10,
  corners: 2,
  tubes: 1,
  source: 'practice',
  at: 'scupper sleeve with 4 in flanges, stripped in 6 in',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;
