import type { Roof } from '../core/roof.ts';
import { checkJsonText } from './json-text.ts';
import { withoutNotKnown } from './not-known.ts';
import { InputLog, type InputNote, type InputProblem, shown } from './problems.ts';
import type { RawFile } from './read-group.ts';
import { readRoof } from './read-roof.ts';
import { roofFileSchema } from './schema.ts';
import { structureProblems } from './zod-problems.ts';

export type ParsedRoof =
  | { ok: true; roof: Roof; notes: readonly InputNote[] }
  | { ok: false; problems: readonly InputProblem[]; notes: readonly InputNote[] };

/** Longest text that is looked at; a roof of 5,000 corners is a hundredth of it. */
const LONGEST_TEXT = 10_000_000;

function parse(value: unknown, log: InputLog): ParsedRoof {
  const file = withoutNotKnown(value);
  if (typeof file !== 'object' || file === null || Array.isArray(file)) {
    log.problem('file', 'type', `${shown(value)} is not a roof file.`, {
      got: shown(value),
      instead: '{ "version": 1, "label": "...", "outline": [[0, 0], [30, 0], [30, 24], [0, 24]] }',
    });
    return { ok: false, problems: log.problems, notes: log.notes };
  }
  structureProblems(roofFileSchema, file, log);
  const roof = readRoof(file as RawFile, log);
  return roof ? { ok: true, roof, notes: log.notes } : { ok: false, problems: log.problems, notes: log.notes };
}

/**
 * A roof file that is an object already (a form, a request body) as a roof.
 * All problems come at once; what is not given is null, never a default of ours, except where a note says so.
 */
export function parseRoofObject(value: unknown): ParsedRoof {
  return parse(value, new InputLog());
}

/** The object of a JSON text; undefined, with the problem in the log, where the text is none. */
function objectOf(text: string, log: InputLog): unknown {
  if (text.length > LONGEST_TEXT) {
    log.problem('file', 'too-large', `the file has ${Math.round(text.length / 1e6)} million characters.`, {
      instead: 'a roof file of at most 10 MB: one section per file',
    });
    return undefined;
  }
  const { fault, duplicates } = checkJsonText(text);
  if (fault) {
    const message = `line ${fault.line}, column ${fault.column}: ${fault.message}.`;
    log.problem('file', 'not-json', message, { instead: fault.instead });
    return undefined;
  }
  for (const { path, key, line } of duplicates) {
    log.problem(path, 'duplicate-key', `"${key}" is given twice in one group (line ${line}).`, { instead: 'it once' });
  }
  try {
    return JSON.parse(text);
  } catch (error) {
    log.problem('file', 'not-json', `it is not JSON: ${(error as Error).message}.`, {
      instead: 'JSON as the schema has it',
    });
    return undefined;
  }
}

/** A roof file as text (JSON). The text itself stays with the caller, so nothing that was typed is lost. */
export function parseRoofText(text: string): ParsedRoof {
  const log = new InputLog();
  const value = objectOf(text.replace(/^\uFEFF/, ''), log);
  return value === undefined ? { ok: false, problems: log.problems, notes: log.notes } : parse(value, log);
}
