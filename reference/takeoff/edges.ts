import type { Cited } from '../sources.ts';

/** Edge metal as sold. A gap of 1/4 in over an 8 to 12 in plate is the other common joint and needs no more pieces. */
export const edgeMetal = {
  pieceFt: 10,
  lapIn: 4,
  source: 'ufgs-07600',
  at: 'gravel stops and fascias, laps',
  grade: 'found',
} as const satisfies Cited & Record<string, unknown>;

/** The face covers boards, deck edge and a strip of the fascia; never less than the least face. */
export const edgeFace = {
  belowDeckIn: 1,
  leastIn: 2,
  source: 'practice',
  at: 'vertical face of drip edge 2 in or more',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

export interface NailSpacing extends Cited {
  spacingIn: number;
}

/** Nails of the metal flange: the usual spacing and the closer one of the guide specification (two staggered rows). */
export const flangeNails = {
  usual: { spacingIn: 4, source: 'practice', at: 'flange nails, staggered', grade: 'practice' },
  specified: { spacingIn: 3, source: 'ufgs-07600', at: 'gravel stops, nails', grade: 'found' },
} as const satisfies Record<string, NailSpacing>;

/** Nails of the continuous cleat (hook strip). */
export const cleatNails = {
  spacingIn: 6,
  source: 'ufgs-07600',
  at: 'hook strips',
  grade: 'found',
} as const satisfies NailSpacing;

/** How far the field sheet goes past the line of the edge, in. A parapet or wall has its own flashing sheet. */
export const fieldPastEdge = {
  open: { pastIn: 3, source: 'practice', at: 'sheet turned down 2 to 3 in', grade: 'practice' },
  upright: { pastIn: 2, source: 'county-re-roof', at: 'base attachment, sheet up the vertical', grade: 'found' },
  joint: { pastIn: 6, source: 'practice', at: 'sheet lapped onto the next roof', grade: 'practice' },
} as const satisfies Record<string, Cited & { pastIn: number }>;

/** Strip over the metal flange. Bitumen strips are cut from the cap roll. */
export const edgeStrip = {
  singlePlyIn: 6,
  singlePlyRollFt: 100,
  bitumenIn: 9,
  source: 'practice',
  at: 'strip-in of edge metal',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/** Treated 2x6 as sold; each course is 1 1/2 in, the top course is ripped to the height of the boards. */
export const nailerStock = {
  courseIn: 1.5,
  lengthFt: 16,
  allowance: 0.1,
  screwSpacingIn: 12,
  source: 'practice',
  at: 'nailer as thick as the insulation at the edge, fixed 12 to 24 in on centre',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/** Gutters and downspouts as sold. */
export const gutterStock = {
  pieceFt: 10,
  hangerFt: 2,
  source: 'practice',
  at: 'gutter pieces and hangers',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;
