import { type WinterClimateRow, winterClimates } from '../../../reference/winter-climate.ts';
import { sourceNote } from '../finding.ts';
import { finding } from '../report/part-finding.ts';
import type { Finding } from '../report/types.ts';
import type { Roof } from '../roof.ts';
import { findTown } from '../site/town.ts';

const rows: readonly WinterClimateRow[] = winterClimates;
const numberOf = (zone: string): number => Number(zone.charAt(0));

/**
 * A climate zone that is given and is not that of the named town: asked about, for every rule of insulation goes by it. One
 * county in ten moved by a zone in 2021, which is a note; more than one zone apart is likely a mistake.
 */
export function zoneConflict({ city, state, climateZone }: Roof['place']): Finding[] {
  const match = findTown(rows, city, state);
  if (climateZone === null || match.kind !== 'listed' || match.row.zone.startsWith(climateZone)) return [];
  const { row } = match;
  const town = `${row.city}, ${row.state}`;
  const far = Math.abs(numberOf(climateZone) - numberOf(row.zone)) > 1;
  return [
    finding({
      id: 'climate-zone-conflict',
      level: far ? 'fix' : 'note',
      where: 'the place',
      message: `The roof file gives climate zone ${climateZone}, and ${town} lies in ${row.zone} on the map before 2021${far ? ': one of the two is most likely wrong' : ', which moved about one county in ten'}. The rules for insulation, board against damp and cool roofs are held here by ${climateZone}, the weather is that of the town. Ask the building office which zone holds.`,
      value: climateZone,
      limit: row.zone,
      source: sourceNote(row),
    }),
  ];
}
