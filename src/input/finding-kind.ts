import { type FindingKind, type FindingKindRow, findingKinds } from '../../reference/findings.ts';
import { closest } from './closest.ts';
import { type InputLog, shown } from './problems.ts';

const rows: readonly FindingKindRow[] = findingKinds;

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ')
    .trim();

const names = ({ kind, also }: FindingKindRow): string[] => [kind, ...also].map(plain);

/** The kind that a word most likely means: mistyped, or part of a name that is known; null where none is near. */
function nearest(word: string): string | null {
  const all = rows.flatMap((row) => names(row).map((name) => [name, row.kind] as const));
  const near = closest(
    word,
    all.map(([name]) => name),
  );
  const part = (name: string): boolean => word.length > 2 && (name.includes(word) || word.includes(name));
  return all.find(([name]) => name === near || (near === null && part(name)))?.[1] ?? null;
}

/** What was found, by its name or by another that people write for it; null, with a problem, where it is no known kind. */
export function readFindingKind(written: string, path: string, log: InputLog): FindingKind | null {
  const word = plain(written);
  const row = rows.find((each) => names(each).includes(word));
  if (row !== undefined) {
    if (plain(row.kind) !== word) log.note(path, 'reading', `${shown(written)} is taken as ${row.kind}`, row.kind);
    return row.kind as FindingKind;
  }
  const near = nearest(word);
  const list = rows.map(({ kind }) => kind).join(', ');
  log.problem(path, 'choice', `${shown(written)} is no kind of finding.`, {
    got: shown(written),
    instead: near ? `"${near}"; the kinds are ${list}` : `one of ${list}; "other" with a note for all else`,
  });
  return null;
}
