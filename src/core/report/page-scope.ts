import { plainNumber } from '../../units/print.ts';
import type { InspectedFinding, PlannedReport, RepairWork, ScopeReport, ScopeWay, WoodRow } from './types.ts';

/** The scope of the work as it is printed. */

export const standingWords: Readonly<Record<ScopeWay['standing'], string>> = {
  open: 'open',
  barred: 'ruled out',
  'not-known': 'not known yet',
};

export const severityWords: Readonly<Record<NonNullable<InspectedFinding['severity']>, string>> = {
  slight: 'slight',
  plain: 'plain to see',
  severe: 'severe',
};

/** "32 sq ft; severe; core cut": how much, how bad, how it was found. */
export function extentWords({ extent, severity, foundBy }: InspectedFinding): string {
  const parts = [extent, severity === null ? '' : severityWords[severity], foundBy ?? ''];
  return parts.filter((part) => part !== '').join('; ') || 'not said';
}

export interface WoodFigures {
  what: string;
  likely: string;
  oneInTen: string;
  basis: string;
}

export const woodFigures = ({ what, unit, likely, oneInTen, basis }: WoodRow): WoodFigures => ({
  what,
  likely: `${plainNumber(likely, 1)} ${unit}`,
  oneInTen: `${plainNumber(oneInTen, 1)} ${unit}`,
  basis,
});

/** "416 ft to fasten in all": the lengths of a repair, with what was taken for now. */
export const repairFigures = ({ figures }: RepairWork): string[] =>
  figures
    .filter(({ value }) => value > 0)
    .map(
      ({ name, value, unit, assumed }) =>
        `${[plainNumber(value, 1), unit, name].filter((part) => part !== '').join(' ')}${assumed === null ? '' : ` (taken for now: ${assumed})`}`,
    );

export const isRecommended = ({ recommended }: ScopeReport, { id }: ScopeWay): boolean => id === recommended;

/** When the amount of wood is known: the old roof comes off, stays, or is off already. */
export function woodKnown({ comesTo }: Pick<ScopeReport, 'comesTo'>, { work }: Pick<PlannedReport, 'work'>): string {
  if (comesTo === 'off') return 'it is known when all of it has been looked at';
  const stays = comesTo === 'upkeep' || comesTo === 'repair' || comesTo === 'coat';
  const off = !stays && (comesTo === 'tear-off' || work === 'tear-off');
  return off ? 'it is known when the old roof is off' : 'it is known when the places are opened';
}
