import type { PondReport } from '../src/core/report/types.ts';

/** One check point as it was laid: read against the plan. Heights above the lowest outlet. */
export interface AsBuiltPoint {
  id: string;
  designIn: number;
  readIn: number | null;
  /** Read less design: positive is high. */
  differenceIn: number | null;
}

/** What the typed heights come to, judged as a roof of its own. */
export interface AsBuiltResult {
  points: readonly AsBuiltPoint[];
  /** One sentence: "No water would stand." or what would, and where. */
  judgement: string;
  /** False while something has to be lifted before the cover goes on. */
  goOn: boolean;
  /** Water that would stand on the boards as they lie. */
  ponds: readonly PondReport[];
  /** Which board to lift or shim, in sentences. */
  advice: readonly string[];
}

/** The form as it comes back: nothing that was typed is lost. */
export interface AsBuiltForm {
  /** Text by field name (`height-3`). */
  typed: Readonly<Record<string, string>>;
  /** Fields that could not be read: what was read, and what to write instead. */
  problems: readonly { field: string; message: string }[];
  /** Null while a field cannot be read, or nothing was typed. */
  result: AsBuiltResult | null;
}
