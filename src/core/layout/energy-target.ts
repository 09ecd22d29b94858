import {
  commercialR,
  commercialU,
  foamForCondensation,
  residentialR,
  type ZoneRow,
  type ZoneTable,
} from '../../../reference/energy.ts';
import { filmsR } from '../../../reference/insulation.ts';
import type { Cited } from '../../../reference/sources.ts';
import type { RuleSet } from '../rule-set.ts';
import type { Site } from '../site/site.ts';
import { climateZoneOf } from '../site/town.ts';

/** What the energy code or the job asks of this roof. */
export interface EnergyTarget {
  /** Least R, films not counted; null = no target known. */
  r: number | null;
  /** Greatest U with films; null = no target known. */
  u: number | null;
  title: string | null;
  /** Rows of the tables; null = given, or the U that the R makes with the films. */
  rRow: Cited | null;
  uRow: Cited | null;
  /** Rules of commercial work apply. */
  commercial: boolean;
  /** Least R of foam above the deck at its thinnest against condensation; null = does not apply, or zone not known. */
  foam: ZoneRow | null;
}

/** The row of a climate zone: "4C" before "4"; null where the zone is not in the table. */
export function rowForZone({ rows }: ZoneTable, climateZone: string | null): ZoneRow | null {
  const zone = climateZone?.trim().toUpperCase() ?? '';
  const within = (name: string): ZoneRow | undefined => rows.find(({ zones }) => zones.includes(name));
  return within(zone) ?? within(zone.charAt(0)) ?? null;
}

const uOfR = (r: number): number => 1 / (r + filmsR.value);

/** The table of the edition of a rule set. */
export function tableFor(ruleSet: RuleSet, commercial: boolean): ZoneTable {
  const edition = /2018|2021|2024/.exec(ruleSet.building.id)?.[0] ?? '2021';
  if (commercial) return commercialR[edition === '2018' ? '2018' : '2021'];
  return residentialR[edition as keyof typeof residentialR];
}

/** The R and U that this roof should reach: as given, else by climate zone where people live below. */
export function energyTarget(site: Site, ruleSet: RuleSet): EnergyTarget {
  const { place, insulation } = site.roof;
  const climateZone = climateZoneOf(place);
  const commercial = ruleSet.building.id.startsWith('ibc') || ruleSet.building.id.startsWith('iebc');
  const heated = site.given.below.startsWith('living');
  const belowKind = insulation.below?.kind ?? null;
  const airPasses = site.given.below === 'living-ceiling' && (belowKind === null || belowKind === 'batts');
  const foam = airPasses ? rowForZone(foamForCondensation, climateZone) : null;
  const common = { commercial, foam };
  if (insulation.targetR !== null) {
    const r = insulation.targetR;
    return { r, u: uOfR(r), title: 'as given', rRow: null, uRow: null, ...common };
  }
  const table = tableFor(ruleSet, commercial);
  const rRow = heated ? rowForZone(table, climateZone) : null;
  if (rRow === null) return { r: null, u: null, title: null, rRow: null, uRow: null, ...common };
  const printed = commercial ? rowForZone(commercialU, climateZone) : null;
  return {
    r: rRow.value,
    u: printed?.value ?? uOfR(rRow.value),
    title: table.title,
    rRow,
    uRow: printed,
    ...common,
  };
}
