import { usualVents, type VentRow } from '../../../reference/attic-vents.ts';
import { atMost } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { Assumption, VentReport } from '../report/types.ts';
import type { Adjoining } from '../roof.ts';

export type Vent = VentReport['vents'][number];

const rows: readonly VentRow[] = usualVents;
const rowOf = (kind: string): VentRow => rows.find((row) => row.kind === kind)!;

export const nameOf = (kind: string): string => rowOf(kind).name;

export const areaOf = (vents: readonly Vent[]): number => vents.reduce((total, { totalSqIn }) => total + totalSqIn, 0);

/** Vents that stay and are listed without a count, by name. */
export const notCountedOf = (vents: readonly Vent[]): string[] => [
  ...new Set(vents.filter(({ stays, count }) => stays && count === null).map(({ kind }) => nameOf(kind))),
];

const placeNames: Readonly<Record<Vent['where'], string>> = { high: 'high', eaves: 'at the eaves', between: 'between' };

/** What is left in one place: "288 sq in high", "high: not counted (ridge vent)"; what nobody counted is no zero. */
export function placeWords(vents: readonly Vent[], where: Vent['where'], unit = ''): string {
  const own = vents.filter((vent) => vent.stays && vent.where === where);
  const [area, open] = [areaOf(own), notCountedOf(own)];
  const place = placeNames[where];
  const sum = `${atMost(area)}${unit} ${place}`;
  if (open.length === 0) return sum;
  return area > 0
    ? `${sum} besides what nobody counted (${open.join(', ')})`
    : `${place}: not counted (${open.join(', ')})`;
}

/**
 * The kind of outlet that stays where there are several: the ridge vent, which draws along the whole ridge, else the high
 * kind with the most area, else the kind with the most. Null = at most one kind is there.
 */
function keptKind(vents: readonly Vent[]): string | null {
  const kinds = [...new Set(vents.filter(({ outlet }) => outlet).map(({ kind }) => kind))];
  if (kinds.length < 2) return null;
  const rank = (kind: string): readonly [number, number] => {
    const own = vents.filter((vent) => vent.kind === kind);
    return [kind === 'ridge' ? 2 : own.some(({ where }) => where === 'high') ? 1 : 0, areaOf(own)];
  };
  return kinds.reduce((best, kind) => {
    const [[a, area], [b, most]] = [rank(kind), rank(best)];
    return a > b || (a === b && area > most) ? kind : best;
  });
}

/** The vents of an attic by area and place, with those to close marked. One that is listed without a count is there. */
export function ventsOf({ vents }: Adjoining): { vents: Vent[]; assumed: Assumption[] } {
  const assumed: Assumption[] = [];
  const read = vents.flatMap(({ kind, count, netFreeSqIn, high }, i): Vent[] => {
    if (count === 0) return [];
    const row = rowOf(kind);
    const eachSqIn = netFreeSqIn ?? row.eachSqIn;
    if (netFreeSqIn === null && row.eachSqIn > 0)
      assumed.push({
        path: `adjoining.vents[${i}].netFreeSqIn`,
        value: `${row.eachSqIn} sq in ${row.unit === 'each' ? 'each' : `per ${row.unit}`}`,
        because: `usual ${row.name}, common practice; the label was not read`,
        findOut: 'read the label or the maker’s sheet',
      });
    return [
      {
        kind,
        name: row.unit === 'each' ? row.name : `${row.name}, ${row.unit}`,
        count,
        eachSqIn,
        totalSqIn: (count ?? 0) * eachSqIn,
        where: (high ?? row.high) ? 'high' : row.exhaust ? 'between' : 'eaves',
        outlet: row.exhaust || high === true,
        stays: true,
        given: netFreeSqIn !== null,
        source: sourceNote(row),
      },
    ];
  });
  const kept = keptKind(read);
  return {
    vents: read.map((vent) => ({ ...vent, stays: kept === null || !vent.outlet || vent.kind === kept })),
    assumed,
  };
}
