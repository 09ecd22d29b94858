import { usStates } from '../../reference/us-states.ts';

/** Postal letters of a state given by letters or by name; null for anything else. */
export function stateLetters(text: string): string | null {
  const wanted = text.trim().toLowerCase();
  const found = Object.entries(usStates).find(
    ([letters, name]) => letters.toLowerCase() === wanted || name.toLowerCase() === wanted,
  );
  return found?.[0] ?? null;
}

/** "Town, ST" or "Town, State" in its two parts; a town alone has no state. */
export function townAndState(text: string): { city: string; state: string | null } {
  const comma = text.lastIndexOf(',');
  const state = comma > 0 ? stateLetters(text.slice(comma + 1)) : null;
  return state === null ? { city: text.trim(), state } : { city: text.slice(0, comma).trim(), state };
}
