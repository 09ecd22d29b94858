import { type StateCode, usStates } from '../../../reference/us-states.ts';
import { winterClimates } from '../../../reference/winter-climate.ts';
import type { Roof } from '../roof.ts';

const states = Object.entries(usStates) as [StateCode, string][];

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[.']/g, '')
    .replace(/\bsaint\b/g, 'st')
    .replace(/\s+/g, ' ')
    .trim();

/** Postal code of a state from its code or name; null for other text. */
export function stateCode(text: string): StateCode | null {
  const wanted = plain(text);
  return states.find(([code, name]) => code.toLowerCase() === wanted || plain(name) === wanted)?.[0] ?? null;
}

/** What a table of towns holds for a place. */
export type TownMatch<R> =
  | { kind: 'listed'; row: R }
  /** The town's name stands in several states and none was given. */
  | { kind: 'several'; rows: readonly R[] }
  /** Not listed; the towns of its state. */
  | { kind: 'state'; town: string; state: StateCode; rows: readonly R[] }
  /** Neither town nor state can be placed. */
  | { kind: 'none'; town: string | null; rows: readonly R[] };

/** Finds a town in a table, upper or lower case, "Town", "Town, ST" or with the state apart. */
export function findTown<R extends { state: StateCode; city: string }>(
  table: readonly R[],
  city: string | null,
  state: string | null,
): TownMatch<R> {
  const [town, tail] = splitTown(city ?? '');
  const code = stateCode(state ?? '') ?? stateCode(tail);
  const named = table.filter((row) => plain(row.city) === plain(town) && (code === null || row.state === code));
  if (named.length === 1) return { kind: 'listed', row: named[0] };
  if (named.length > 1) return { kind: 'several', rows: named };
  if (code !== null) return { kind: 'state', town, state: code, rows: table.filter((row) => row.state === code) };
  return { kind: 'none', town: town || null, rows: table };
}

function splitTown(city: string): [town: string, tail: string] {
  const comma = city.lastIndexOf(',');
  return comma < 0 ? [city.trim(), ''] : [city.slice(0, comma).trim(), city.slice(comma + 1)];
}

/**
 * Climate zone of a roof's place: as the file gives it, else that of its town where it is listed; null = not known.
 * Source: reference/winter-climate.ts, the map before 2021
 */
export function climateZoneOf({
  city,
  state,
  climateZone,
}: Pick<Roof['place'], 'city' | 'state' | 'climateZone'>): string | null {
  if (climateZone !== null) return climateZone.trim().toUpperCase();
  const match = findTown(winterClimates, city, state);
  return match.kind === 'listed' ? match.row.zone : null;
}

/** State of a roof's place: as given, else behind the town's name, else that of a town listed once; null = not known. */
export function stateOf({ city, state }: Pick<Roof['place'], 'city' | 'state'>): StateCode | null {
  const match = findTown(winterClimates, city, state);
  if (match.kind === 'listed') return match.row.state;
  return match.kind === 'state' ? match.state : null;
}
