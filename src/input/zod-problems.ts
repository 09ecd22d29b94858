import type { z } from 'zod';
import { closest } from './closest.ts';
import { type InputLog, shown, under } from './problems.ts';

type Issue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];

/** No text of the library reaches a person: an empty message means that the schema gave none of its own. */
const noMessage = { error: () => '' };

const expectedWords: Record<string, string> = {
  object: 'a group { ... }',
  array: 'a list [ ... ]',
  tuple: 'a list [ ... ]',
  string: 'text in quotes',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
};

const pathText = (path: Path): string =>
  path.reduce<string>((text, key) => under(text, key as string | number), '') || 'file';

function valueAt(root: unknown, path: Path): unknown {
  return path.reduce<unknown>((value, key) => (value as Record<PropertyKey, unknown> | undefined)?.[key], root);
}

/** The value itself has another type than this branch of a union wants. */
const isOtherType = (issues: readonly Issue[]): boolean =>
  issues.some(({ path, code }) => path.length === 0 && (code === 'invalid_type' || code === 'invalid_union'));

/**
 * Issues of a union as issues of the branch that was meant: the only one whose outer type fits.
 * Where no single branch fits, the union's own message stands.
 */
function flatten(issue: Issue): Issue[] {
  if (issue.code !== 'invalid_union' || issue.errors.length === 0) return [issue];
  const meant = issue.errors.filter((branch) => !isOtherType(branch));
  if (meant.length !== 1) return [issue];
  return meant[0].flatMap((inner) => {
    const message = inner.message === '' && inner.path.length === 0 ? issue.message : inner.message;
    return flatten({ ...inner, message, path: [...issue.path, ...inner.path] } as Issue);
  });
}

function unknownKeys(issue: z.core.$ZodIssueUnrecognizedKeys, log: InputLog): void {
  const known = issue.message.split('|');
  for (const key of issue.keys) {
    const near = closest(key, known);
    const path = pathText([...issue.path, key]);
    log.problem(path, 'unknown-key', `there is no "${key}" here.`, {
      got: key,
      instead: near ? `"${near}"` : `one of ${known.join(', ')}`,
    });
  }
}

function choiceProblem(issue: Issue, choices: readonly string[], got: unknown, log: InputLog): void {
  const near = typeof got === 'string' ? closest(got, choices) : null;
  const path = pathText(issue.path);
  const all = issue.message || `one of ${choices.join(', ')}`;
  if (got === undefined || got === null) {
    log.problem(path, 'missing', 'it is needed and not given.', { instead: all });
    return;
  }
  log.problem(path, 'choice', `${shown(got)} is not a choice here.`, {
    got: shown(got),
    instead: near ? `"${near}"; the choices are ${choices.join(', ')}` : all,
  });
}

function typeProblem(issue: Issue, got: unknown, log: InputLog): void {
  const path = pathText(issue.path);
  const wanted =
    'expected' in issue ? (expectedWords[String(issue.expected)] ?? String(issue.expected)) : 'another value';
  const instead = issue.message || wanted;
  if (got === undefined || got === null) {
    log.problem(path, 'missing', got === null ? 'it must be known here.' : 'it is needed and not given.', { instead });
  } else if (typeof got === 'number' && !Number.isFinite(got)) {
    log.problem(path, 'measure', `${got} is not a finite number.`, {
      got: String(got),
      instead: `${instead}, or "not known"`,
    });
  } else {
    log.problem(path, 'type', `${shown(got)} does not fit here.`, { got: shown(got), instead });
  }
}

function rangeProblem(issue: Issue, limit: string, got: number, log: InputLog): void {
  const words = issue.message ? `${issue.message}, ` : '';
  log.problem(pathText(issue.path), 'range', `${got} is out of range.`, { got: String(got), instead: words + limit });
}

function describe(issue: Issue, root: unknown, log: InputLog): void {
  const got = valueAt(root, issue.path);
  if (issue.code === 'unrecognized_keys') unknownKeys(issue, log);
  else if (issue.code === 'invalid_value') choiceProblem(issue, issue.values.map(String), got, log);
  else if (issue.code === 'invalid_union' && 'options' in issue) {
    choiceProblem(issue, (issue.options as unknown[]).map(String), got, log);
  } else if (issue.code === 'too_small' && typeof got === 'number') {
    rangeProblem(issue, `at least ${issue.minimum}`, got, log);
  } else if (issue.code === 'too_big' && typeof got === 'number') {
    rangeProblem(issue, `at most ${issue.maximum}`, got, log);
  } else typeProblem(issue, got, log);
}

function issuesOf(schema: z.ZodType, value: unknown): Issue[] {
  const result = schema.safeParse(value, noMessage);
  return result.success ? [] : result.error.issues.flatMap(flatten);
}

/** Every fault of structure in a value, in our words. */
export function structureProblems(schema: z.ZodType, value: unknown, log: InputLog): void {
  for (const issue of issuesOf(schema, value)) describe(issue, value, log);
}

/** Take the faulty key away; inside a list, the whole list goes, since its places would shift. */
function prune(root: unknown, path: Path): void {
  let end = path.length;
  while (end > 0 && typeof path[end - 1] === 'number') end--;
  if (end === 0) return;
  const holder = valueAt(root, path.slice(0, end - 1));
  if (typeof holder === 'object' && holder !== null) delete (holder as Record<PropertyKey, unknown>)[path[end - 1]];
}

/** Any word of the list in place of a wrong one: the problem is told already, and the rest can still be looked at. */
function put(root: unknown, path: Path, value: unknown): void {
  const holder = valueAt(root, path.slice(0, -1));
  if (typeof holder === 'object' && holder !== null)
    (holder as Record<PropertyKey, unknown>)[path[path.length - 1]] = value;
}

/**
 * What can be used of a value whose structure may be faulty, so that its other faults are found in the same go.
 * Null where nothing of it can.
 */
export function usablePart<T extends z.ZodType>(schema: T, value: unknown): z.infer<T> | null {
  const issues = issuesOf(schema, value);
  if (issues.length === 0) return value as z.infer<T>;
  const copy = structuredClone(value);
  for (const issue of issues) {
    if (issue.code === 'unrecognized_keys') for (const key of issue.keys) prune(copy, [...issue.path, key]);
    else if (issue.code === 'invalid_value' && issue.path.length > 0) put(copy, issue.path, issue.values[0]);
    else prune(copy, issue.path);
  }
  return issuesOf(schema, copy).length === 0 ? (copy as z.infer<T>) : null;
}
