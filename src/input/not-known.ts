import { saysNotKnown } from '../units/tidy.ts';

/** Keys whose text is a person's own words, never an answer. */
const ownWords = new Set(['label', 'note', 'id', 'walk', '$schema']);

/**
 * A copy of a value as JSON has it, with every "not known" (in the words people use for it) turned into null,
 * so that it may stand in any optional place. What JSON cannot hold is left out.
 */
export function withoutNotKnown(value: unknown, key = '', depth = 0): unknown {
  if (typeof value === 'string') return !ownWords.has(key) && saysNotKnown(value) ? null : value;
  if (typeof value === 'function' || typeof value === 'symbol') return undefined;
  if (typeof value === 'bigint') return Number(value);
  if (typeof value !== 'object' || value === null) return value;
  if (depth > 40) return null;
  if (Array.isArray(value)) return value.map((item) => withoutNotKnown(item, key, depth + 1));
  return Object.fromEntries(
    Object.entries(value).map(([name, inner]) => [name, withoutNotKnown(inner, name, depth + 1)]),
  );
}
