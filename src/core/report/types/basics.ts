export type Point = readonly [xFt: number, yFt: number];

export type Ring = readonly Point[];

export type Grade = 'found' | 'memory' | 'practice' | 'computed';

/** Where a fact comes from, ready to print. */
export interface SourceNote {
  /** Bibliography id (reference/sources.ts). */
  id: string;
  /** "Document, edition, section" in words. */
  text: string;
  grade: Grade;
}

/** `stop` = do not go on before this is settled; `fix` = the plan must change or it is handled in it; `note` = know it. */
export type FindingLevel = 'stop' | 'fix' | 'note';

/** A fact about this roof that somebody must act on. `id` is stable and test-friendly, e.g. `no-second-way-out`. */
export interface Finding {
  id: string;
  level: FindingLevel;
  where: string;
  message: string;
  value: string | null;
  limit: string | null;
  source: SourceNote | null;
}

export interface Assumption {
  /** Path in the roof file, e.g. `existing.buildUpIn`. */
  path: string;
  value: string;
  because: string;
  /** The cheapest way to find out, where there is one. */
  findOut: string | null;
}

/** One computed number with everything that made it: "where does this come from?" */
export interface Working {
  id: string;
  what: string;
  formula: string;
  inputs: Readonly<Record<string, number | string>>;
  value: number;
  unit: string;
  source: SourceNote;
}
