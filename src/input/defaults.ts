import type { Curb, Outlet } from '../core/roof.ts';
import type { Placed } from './placed.ts';
import { type InputLog, under } from './problems.ts';

type WithId = { id: string };

/** Give the parts without an id one that is free. */
export function withIds<T extends WithId>(parts: readonly Placed<T>[], word: string, log: InputLog): Placed<T>[] {
  const taken = new Set(parts.map(({ item }) => item.id));
  let next = 1;
  return parts.map(({ item, path }) => {
    if (item.id !== '') return { item, path };
    while (taken.has(`${word}-${next}`)) next++;
    const id = `${word}-${next}`;
    taken.add(id);
    log.note(under(path, 'id'), 'default', `not given: called "${id}"`, id);
    return { item: { ...item, id }, path };
  });
}

/** Ids name one thing each; `side-3` is the name of what leaves over the third side. */
export function checkIds(curbs: readonly Placed<Curb>[], outlets: readonly Placed<Outlet>[], log: InputLog): void {
  const seen = new Map<string, string>();
  for (const { item, path } of [...curbs, ...outlets]) {
    const first = seen.get(item.id);
    if (first !== undefined) {
      const message = `the id "${item.id}" is used twice: ${first} has it too.`;
      log.problem(under(path, 'id'), 'duplicate-id', message, { got: item.id, instead: `"${item.id}-2"` });
    } else if (/^side-\d+$/.test(item.id)) {
      const message = `ids such as "${item.id}" are kept for edges that drain.`;
      log.problem(under(path, 'id'), 'duplicate-id', message, { got: item.id, instead: '"D1" or "S1"' });
    }
    if (first === undefined) seen.set(item.id, path);
  }
}

/** One note for all parts that leave the same key out, with what is then taken. */
export function noteDefault(
  parts: readonly { raw: unknown; id: string }[],
  list: string,
  key: string,
  value: unknown,
  words: string,
  log: InputLog,
): void {
  const without = parts.filter(({ raw }) => {
    const given = (raw as Record<string, unknown>)[key];
    return given === undefined || given === null;
  });
  if (without.length === 0) return;
  const names = without.map(({ id }) => id);
  const few = names.length > 6 ? `${names.slice(0, 6).join(', ')} and ${names.length - 6} more` : names.join(', ');
  log.note(list, 'default', `${key} not given (${few}): ${words}`, value);
}
