import type { Edge, Existing, ExistingSurface, Roof } from '../core/roof.ts';

/** Longest line before a group or list is broken over several. */
const LINE = 110;

/** Keys that say something when empty: no downspouts; a gutter of which nothing is known. Other empty places are left out. */
const keepEmpty = new Set(['downspouts', 'gutter']);

/** Keys in the order in which a reader looks for them; the others follow by the alphabet. */
const keyOrder = [
  ...['version', 'label', 'invented', 'id', 'side', 'kind', 'at', 'place', 'ruleSet', 'building', 'deck', 'outline'],
  ...['alongFt', 'fromFt', 'toFt', 'edges', 'curbs', 'pipes', 'inflows', 'outlets', 'existing', 'surface', 'planes'],
  ...[
    'readings',
    'sense',
    'referenceIn',
    'strings',
    'errorIn',
    'covering',
    'insulation',
    'adjoining',
    'boards',
    'prices',
    'slopeRule',
    'removedIn',
  ],
  ...['wind', 'findings'],
  ...['preferences', 'role', 'status', 'mayDrain', 'city', 'state', 'rain', 'climateZone', 'inPerHr'],
];

const rank = (key: string): number => (keyOrder.includes(key) ? keyOrder.indexOf(key) : keyOrder.length);
const byRank = ([a]: readonly [string, unknown], [b]: readonly [string, unknown]): number =>
  rank(a) - rank(b) || (a < b ? -1 : 1);

function compact(value: unknown, key = ''): unknown {
  if (Array.isArray(value)) {
    return value.length === 0 && !keepEmpty.has(key) ? undefined : value.map((item) => compact(item) ?? {});
  }
  if (typeof value !== 'object' || value === null) return value ?? undefined;
  const entries = Object.entries(value)
    .map(([name, inner]) => [name, compact(inner, name)] as const)
    .filter(([, inner]) => inner !== undefined)
    .sort(byRank);
  return entries.length === 0 && !keepEmpty.has(key) ? undefined : Object.fromEntries(entries);
}

/** A group on one line where it fits, else one key to a line. */
function layOut(value: unknown, indent: string): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const inner = `${indent}  `;
  const list = Array.isArray(value);
  const parts = list
    ? value.map((item) => layOut(item, inner))
    : Object.entries(value).map(([key, item]) => `${JSON.stringify(key)}: ${layOut(item, inner)}`);
  const [open, close] = list ? ['[', ']'] : ['{ ', ' }'];
  const line = `${open}${parts.join(', ')}${close}`;
  if (parts.length === 0) return list ? '[]' : '{}';
  if (indent.length + line.length <= LINE && !line.includes('\n')) return line;
  return `${open.trim()}\n${inner}${parts.join(`,\n${inner}`)}\n${indent}${close.trim()}`;
}

const bothEnds = (heights: readonly [number, number] | null) =>
  heights && heights[0] === heights[1] ? heights[0] : heights;

const edgeOf = (edge: Edge) => ({ ...edge, topIn: bothEnds(edge.topIn), clearIn: bothEnds(edge.clearIn) });

type Readings = Extract<ExistingSurface, { kind: 'readings' }>;

const readingsObject = ({ kind: _, sense, ...rest }: Readings): object => ({
  ...rest,
  // Strings count one way only: a sense is said where there are readings at spots.
  sense: rest.readings.length > 0 ? sense : null,
});

function surfaceOf(surface: ExistingSurface): object {
  switch (surface.kind) {
    case 'level':
      return { surface: 'level' };
    case 'unknown':
      return {};
    case 'planes':
      return {
        planes: surface.planes.map((plane) => ({
          ...plane,
          fallsToward: 'side' in plane.fallsToward ? plane.fallsToward : plane.fallsToward.bearingDeg,
        })),
      };
    case 'readings':
      return readingsObject(surface);
  }
}

const existingOf = ({ surface, ...rest }: Existing): object => ({ ...surfaceOf(surface), ...rest });

function placeOf({ city, state, ...rest }: Roof['place']): object {
  // A comma in the town's name would otherwise be read as the start of the state.
  const apart = state === null && city?.includes(',') ? 'not known' : state;
  return { city, state: apart, ...rest };
}

/** The roof as an object of the roof file: `parseRoofObject` gives the same roof again. */
export function roofFileObject(roof: Roof): object {
  const file = compact({
    version: roof.version,
    label: roof.label === '' ? null : roof.label,
    invented: roof.invented ? true : null,
    place: placeOf(roof.place),
    ruleSet: roof.ruleSet,
    building: roof.building,
    deck: roof.deck,
    outline: roof.outline,
    edges: roof.edges.map(edgeOf),
    curbs: roof.curbs,
    pipes: roof.pipes,
    inflows: roof.inflows,
    outlets: roof.outlets,
    existing: existingOf(roof.existing),
    covering: roof.covering,
    insulation: roof.insulation,
    adjoining: roof.adjoining,
    boards: roof.boards,
    prices: roof.prices,
    slopeRule: roof.slopeRule,
    removedIn: roof.removedIn,
    wind: roof.wind,
    findings: roof.findings,
    preferences: roof.preferences,
  });
  return file as object;
}

/** The roof as a roof file: JSON in one form, that reads back as the same roof. */
export function printRoofFile(roof: Roof): string {
  return `${layOut(roofFileObject(roof), '')}\n`;
}
