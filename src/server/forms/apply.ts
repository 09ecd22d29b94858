import { fileValue, textOf } from './codec.ts';
import { joined, valueAt, withValueAt } from './paths.ts';
import type { GroupSpec, SectionSpec } from './spec.ts';

/** What a form sent: box name to text. */
export type Posted = Readonly<Record<string, string>>;

const isEmpty = (text: string | undefined): boolean => text === undefined || text.trim() === '' || text === 'unknown';

/** A blank entry holds nothing but the side it was offered for. */
const saysNothing = (spec: GroupSpec, at: string, posted: Posted): boolean =>
  spec.fields.every(({ key, kind }) => kind === 'side' || isEmpty(posted[joined(at, key)])) &&
  (spec.inner ?? []).every((inner) => countOf(joined(at, inner.at), posted) === 0);

/** How many entries of a list the form had. */
function countOf(at: string, posted: Posted): number {
  let most = 0;
  for (const name of Object.keys(posted)) {
    if (!name.startsWith(`${at}[`)) continue;
    const index = Number.parseInt(name.slice(at.length + 1), 10);
    if (!isEmpty(posted[name]) && index >= most) most = index + 1;
  }
  return most;
}

function withFields(file: unknown, spec: GroupSpec, at: string, posted: Posted): unknown {
  return spec.fields.reduce((next, field) => {
    const path = joined(at, field.key);
    const typed = posted[path];
    const before = valueAt(next, path);
    // A box that shows what the file has changes nothing, however the file writes it.
    if (typed === undefined || typed === textOf(field, before) || (before === undefined && isEmpty(typed))) return next;
    return withValueAt(next, path, isEmpty(typed) ? undefined : fileValue(field, typed));
  }, file);
}

function withList(file: unknown, spec: GroupSpec, posted: Posted): unknown {
  const before = valueAt(file, spec.at);
  const there = Array.isArray(before) ? before.length : 0;
  const rows = Math.max(there, countOf(spec.at, posted));
  let next = file;
  const kept: unknown[] = [];
  for (let i = 0; i < rows; i++) {
    const at = `${spec.at}[${i}]`;
    if (posted[`${at}.remove`] !== undefined) continue;
    if (i >= there && saysNothing(spec, at, posted)) continue;
    next = withFields(next, spec, at, posted);
    for (const inner of spec.inner ?? []) next = withList(next, { ...inner, at: joined(at, inner.at) }, posted);
    kept.push(valueAt(next, at) ?? {});
  }
  if (kept.length === 0 && there === 0) return file;
  return withValueAt(next, spec.at, kept);
}

/**
 * A roof file with one section of it as the form sent it. Boxes that the form did not have keep what the file has;
 * what cannot be read stays as it was typed.
 */
export function applySection(section: SectionSpec, file: unknown, posted: Posted): unknown {
  return section.groups.reduce(
    (next, spec) => (spec.list === undefined ? withFields(next, spec, spec.at, posted) : withList(next, spec, posted)),
    file,
  );
}

/** The text of a roof file after a form: lists of plain values on one line, all else spread out to be read. */
export function fileText(file: unknown): string {
  const spread = JSON.stringify(file, null, 2);
  return `${spread.replace(/\[\n\s*([^[\]{}]*?)\n\s*\]/g, (_, inner: string) => `[${inner.replace(/\n\s*/g, ' ')}]`)}\n`;
}
