import type { Cited } from './sources.ts';

/** How heights of a roof are read. */
export type Instrument = 'laser' | 'string-line' | 'water-level';

export interface ReadingErrorRow extends Cited {
  instrument: Instrument;
  /** What it is called on the roof. */
  name: string;
  /** How far one reading may be off, in, either way. */
  errorIn: number;
}

/**
 * How far a careful reading may be off when nobody said. No document was found that gives these figures: they are what
 * roofers expect of each tool over one roof section, 1/16 to 1/8 in. A laser that is out of adjustment, a string in
 * the wind or air in a tube is worse, and a reading error that was found out goes before these.
 */
export const readingErrors = [
  {
    instrument: 'laser',
    name: 'builder’s laser',
    errorIn: 1 / 16,
    source: 'practice',
    at: 'builder’s laser over one section',
    grade: 'practice',
  },
  {
    instrument: 'string-line',
    name: 'string line',
    errorIn: 1 / 8,
    source: 'practice',
    at: 'tape under a tight string',
    grade: 'practice',
  },
  {
    instrument: 'water-level',
    name: 'water level',
    errorIn: 1 / 8,
    source: 'practice',
    at: 'mark on a clear tube',
    grade: 'practice',
  },
] as const satisfies readonly ReadingErrorRow[];
