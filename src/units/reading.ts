/** What a person may be offered where the text allows more than one reading. */
export interface Proposal<V = number> {
  /** null: "not known". */
  value: V | null;
  unit: string;
  /** Text that would be accepted as it stands. */
  text: string;
}

export interface Accepted<V = number> {
  action: 'accept';
  /** In the field's own unit. */
  value: V;
  unit: string;
  /** Written with "about" or the like. */
  approximate: boolean;
  /** What a reader should know about the reading; null = nothing. */
  note: string | null;
}

export interface Asked<V = number> {
  action: 'ask';
  proposals: readonly Proposal<V>[];
  why: string;
}

export interface Rejected {
  action: 'reject';
  why: string;
  /** What to write instead. */
  instead: string;
}

/** How one piece of text was understood. */
export type Reading<V = number> = Accepted<V> | Asked<V> | Rejected | { action: 'unknown' };

export function accept<V>(value: V, unit: string, note: string | null = null): Accepted<V> {
  return { action: 'accept', value, unit, approximate: false, note };
}

export function ask<V>(why: string, proposals: readonly Proposal<V>[]): Asked<V> {
  return { action: 'ask', proposals, why };
}

export function reject(why: string, instead: string): Rejected {
  return { action: 'reject', why, instead };
}
