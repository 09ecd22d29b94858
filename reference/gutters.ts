import type { Cited } from './sources.ts';

export interface GutterRow extends Cited {
  profile: 'k' | 'half-round';
  sizeIn: number;
  /** Roof area x pitch factor x five-minute rain [sq ft x in/h] that one run carries, gutter near level (1/16 in/ft). */
  adjustedSqFt: number;
}

/**
 * Gutter runs by adjusted area (sheet-metal practice). 5 and 6 in were read; the page leaves the profile of one pair to be
 * inferred. The other half-round sizes are the 1/16-in/ft column of the old plumbing area table, from memory: the same table
 * holds 2,500 and 3,840 at 5 and 6 in. The gpm table of IPC 2015 and later is not used: its cells could not be verified.
 */
export const gutters = [
  { profile: 'half-round', sizeIn: 3, adjustedSqFt: 680, source: 'ipc-2012', at: 'Table 1106.6', grade: 'memory' },
  { profile: 'half-round', sizeIn: 4, adjustedSqFt: 1440, source: 'ipc-2012', at: 'Table 1106.6', grade: 'memory' },
  { profile: 'half-round', sizeIn: 5, adjustedSqFt: 2500, source: 'gutter-magazine', at: 'half-round', grade: 'found' },
  { profile: 'half-round', sizeIn: 6, adjustedSqFt: 3840, source: 'gutter-magazine', at: 'half-round', grade: 'found' },
  { profile: 'half-round', sizeIn: 7, adjustedSqFt: 5520, source: 'ipc-2012', at: 'Table 1106.6', grade: 'memory' },
  { profile: 'half-round', sizeIn: 8, adjustedSqFt: 7960, source: 'ipc-2012', at: 'Table 1106.6', grade: 'memory' },
  { profile: 'half-round', sizeIn: 10, adjustedSqFt: 14400, source: 'ipc-2012', at: 'Table 1106.6', grade: 'memory' },
  { profile: 'k', sizeIn: 5, adjustedSqFt: 5520, source: 'gutter-magazine', at: 'K profile', grade: 'found' },
  { profile: 'k', sizeIn: 6, adjustedSqFt: 7960, source: 'gutter-magazine', at: 'K profile', grade: 'found' },
] as const satisfies readonly GutterRow[];

export interface PitchFactorRow extends Cited {
  /** From this pitch (rise in 12) up to the next row. */
  fromPitchIn12: number;
  factor: number;
}

/** Rain that wind drives onto a steep roof, sheet-metal practice only; the plumbing codes apply no pitch factor. */
export const pitchFactors = [
  { fromPitchIn12: 0, factor: 1, source: 'gutter-magazine', at: 'flat to 3 in 12', grade: 'found' },
  { fromPitchIn12: 4, factor: 1.05, source: 'gutter-magazine', at: '4 to 5 in 12', grade: 'found' },
  { fromPitchIn12: 6, factor: 1.1, source: 'gutter-magazine', at: '6 to 8 in 12', grade: 'found' },
  { fromPitchIn12: 9, factor: 1.2, source: 'gutter-magazine', at: '9 to 11 in 12', grade: 'found' },
  { fromPitchIn12: 12, factor: 1.3, source: 'gutter-magazine', at: '12 in 12 and more', grade: 'found' },
] as const satisfies readonly PitchFactorRow[];

export interface DownspoutRule extends Cited {
  /** Roof area at 1 in/h that one square inch of downspout serves. */
  areaSqFtPerSqIn: number;
}

/** The copper manual's 150 sq ft per square inch at 8 in/h is the same rule. */
export const downspoutRule = {
  areaSqFtPerSqIn: 1200,
  source: 'inspection-notes',
  at: '1 sq in for each 1,200 sq ft at 1 in/h',
  grade: 'found',
} as const satisfies DownspoutRule;

export interface DownspoutStock extends Cited {
  label: string;
  /** Clear width and depth. */
  sidesIn: readonly [number, number];
  areaSqIn: number;
}

/** Usual downspouts by clear section, smallest first. Where leaves fall, at least 3 in (historic copper manual). */
export const downspoutStock = [
  { label: '2 x 3 in', sidesIn: [2, 3], areaSqIn: 6, source: 'practice', at: 'usual sizes', grade: 'practice' },
  { label: '3 x 4 in', sidesIn: [3, 4], areaSqIn: 12, source: 'practice', at: 'usual sizes', grade: 'practice' },
  { label: '4 x 5 in', sidesIn: [4, 5], areaSqIn: 20, source: 'practice', at: 'usual sizes', grade: 'practice' },
] as const satisfies readonly DownspoutStock[];

export interface GutterSpacing extends Cited {
  greatestSpacingFt: number;
}

/** Greatest distance between downspouts. */
export const downspoutSpacing = {
  greatestSpacingFt: 75,
  source: 'copper-manual',
  at: 'spacing of leaders',
  grade: 'found',
} as const satisfies GutterSpacing;
