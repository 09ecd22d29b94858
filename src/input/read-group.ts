import type { z } from 'zod';
import type { Placed } from './placed.ts';
import { type InputLog, under } from './problems.ts';
import { usablePart } from './zod-problems.ts';

/** The file as an object whose values are not looked at yet. */
export type RawFile = Record<string, unknown>;

/** Every entry of a list that can be used, each with its place in the file. */
export function readList<S extends z.ZodType, T>(
  file: RawFile,
  key: string,
  itemSchema: S,
  read: (raw: z.infer<S>, path: string, log: InputLog) => T | null,
  log: InputLog,
): Placed<T>[] {
  const list = file[key];
  if (!Array.isArray(list)) return [];
  return list.flatMap((raw, i) => {
    const usable = usablePart(itemSchema, raw);
    const path = under(key, i);
    const item = usable === null ? null : read(usable, path, log);
    return item === null ? [] : [{ item, path }];
  });
}

/** A group of the file as the schema has it; an empty one where it is not given or cannot be used. */
export function readGroup<S extends z.ZodType, T>(
  file: RawFile,
  key: string,
  groupSchema: S,
  read: (raw: z.infer<S>, path: string, log: InputLog) => T,
  log: InputLog,
): T {
  const usable = usablePart(groupSchema, file[key] ?? {}) ?? ({} as z.infer<S>);
  return read(usable, key, log);
}
