import type { Asked, Proposal, Rejected } from '../units/reading.ts';

/** Something in the input that a person has to put right or to decide. */
export interface InputProblem {
  /** Where: `edges[2].openings[0].heightIn`; `file` for the whole. */
  path: string;
  code: ProblemCode;
  /** What is wrong, as a sentence without the path. */
  message: string;
  /** What was read there. */
  got?: string;
  /** What to write instead. */
  instead?: string;
  /** Readings to choose from (code `ask`). */
  proposals?: readonly Proposal<unknown>[];
}

export type ProblemCode =
  | 'ask'
  | 'not-json'
  | 'too-large'
  | 'duplicate-key'
  | 'unknown-key'
  | 'missing'
  | 'type'
  | 'choice'
  | 'range'
  | 'measure'
  | 'conflict'
  | 'duplicate-id'
  | 'too-many-corners'
  | 'too-few-corners'
  | 'zero-length'
  | 'repeated-corner'
  | 'crossed'
  | 'zero-area'
  | 'outside'
  | 'overlap'
  | 'in-curb'
  | 'no-such-side'
  | 'beyond-side'
  | 'order'
  | 'walk'
  | 'does-not-close';

/** Something that was read without a question, but that a reader should know about. */
export interface InputNote {
  path: string;
  code: 'approximate' | 'reading' | 'default' | 'left-out' | 'closing' | 'closing-point' | 'clockwise' | 'adjusted';
  message: string;
  /** The value that was taken, where one was. */
  value?: unknown;
}

/** A measurement that has to be asked about or written differently, as a problem. */
export function measureProblem(reading: Asked<unknown> | Rejected, got: string, path: string): InputProblem {
  const why = /[.?]$/.test(reading.why) ? reading.why : `${reading.why}.`;
  return reading.action === 'ask'
    ? { path, code: 'ask', message: `${got} is not clear: ${why}`, got, proposals: reading.proposals }
    : { path, code: 'measure', message: `${got} cannot be used: ${why}`, got, instead: reading.instead };
}

/** Problems and notes while a file is read. */
export class InputLog {
  readonly problems: InputProblem[] = [];
  readonly notes: InputNote[] = [];

  problem(path: string, code: ProblemCode, message: string, more: Partial<InputProblem> = {}): void {
    this.problems.push({ path, code, message, ...more });
  }

  note(path: string, code: InputNote['code'], message: string, value?: unknown): void {
    this.notes.push(value === undefined ? { path, code, message } : { path, code, message, value });
  }
}

/** One line for a person: path first, then what is wrong and what to write instead. */
export function problemLine({ path, message, instead, proposals }: InputProblem): string {
  const offers = proposals?.map(({ text }) => text) ?? [];
  const choose = offers.length > 0 ? ` Write ${offers.join(', or ')}.` : '';
  return `${path}: ${message}${choose}${instead ? ` Write instead: ${instead}.` : ''}`;
}

/** Path of a key or place inside another path. */
export function under(path: string, key: string | number): string {
  if (typeof key === 'number') return `${path}[${key}]`;
  return path === '' ? key : `${path}.${key}`;
}

/** A value as it stood in the file, shortened. */
export function shown(value: unknown): string {
  if (typeof value === 'number') return String(value);
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}
