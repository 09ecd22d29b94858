/** Places in a roof file as they are written for people: `edges[2].openings[0].heightIn`. */

type Key = string | number;

/** The keys of a path in order; a number is a place in a list. */
export function keysOf(path: string): Key[] {
  return [...path.matchAll(/([^.[\]]+)|\[(\d+)\]/g)].map(([, key, index]) =>
    index === undefined ? key : Number(index),
  );
}

/** The value at a path; undefined where there is none. */
export function valueAt(file: unknown, path: string): unknown {
  return keysOf(path).reduce<unknown>(
    (value, key) => (typeof value === 'object' && value !== null ? (value as Record<Key, unknown>)[key] : undefined),
    file,
  );
}

function withKey(value: unknown, keys: readonly Key[], inner: unknown): unknown {
  if (keys.length === 0) return inner;
  const [key, ...rest] = keys;
  if (typeof key === 'number') {
    const list = Array.isArray(value) ? [...value] : [];
    list[key] = withKey(list[key], rest, inner);
    return list;
  }
  const group = typeof value === 'object' && value !== null && !Array.isArray(value) ? { ...value } : {};
  const next = withKey((group as Record<string, unknown>)[key], rest, inner);
  if (next === undefined) delete (group as Record<string, unknown>)[key];
  else (group as Record<string, unknown>)[key] = next;
  return Object.keys(group).length === 0 && value === undefined ? undefined : group;
}

/** A copy of the file with another value at the path; undefined takes the key away. */
export const withValueAt = (file: unknown, path: string, value: unknown): unknown => withKey(file, keysOf(path), value);

export const joined = (path: string, key: string): string => (path === '' ? key : `${path}.${key}`);

/** The nearest place at or above a path that is one of those given; null where there is none. */
export function nearestOf(path: string, known: ReadonlySet<string>): string | null {
  for (let at = path; at !== ''; at = at.replace(/(\.[^.[\]]+|\[\d+\]|^[^.[\]]+)$/, '')) if (known.has(at)) return at;
  return null;
}
