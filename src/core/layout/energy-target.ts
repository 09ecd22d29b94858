import { californiaAboveDeck } from '../../../reference/cool-roof.ts';
import {
  ceilingU,
  commercialR,
  commercialU,
  foamForCondensation,
  residentialR,
  type ZoneRow,
  type ZoneTable,
} from '../../../reference/energy.ts';
import { filmsR } from '../../../reference/insulation.ts';
import type { Cited } from '../../../reference/sources.ts';
import { isAmerican, isCommercial, type RuleSet } from '../rule-set.ts';
import type { Site } from '../site/site.ts';
import { climateZoneOf, stateOf } from '../site/town.ts';
import { notRooms, underOf } from '../site/under.ts';

/** What the energy code or the job asks of this roof. */
export interface EnergyTarget {
  /** Least R, films not counted; null = no target known. */
  r: number | null;
  /** Greatest U with films; null = no target known. */
  u: number | null;
  title: string | null;
  /** Set in the roof file for this job; what the code asks is then beside it in `code`. */
  own: boolean;
  /** What the table of the code asks in this place, whatever target is set; null = no table is known to bind. */
  code: { r: number; title: string } | null;
  /** Why there is no target; null = there is one. */
  noTarget: string | null;
  /** Rows of the tables; null = given, or the U that the R makes with the films. */
  rRow: Cited | null;
  uRow: Cited | null;
  /** Rules of commercial work in the model code apply; California has its own. */
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

type Asked = { r: number; u: number; title: string; rRow: Cited; uRow: Cited | null };

/** California asks a re-roof of a home for R above the deck, by a zone of its own. */
function californian(zone: number | null, commercial: boolean): Asked | string {
  if (commercial)
    return 'no insulation rule of California for nonresidential buildings is held here (a target can be set)';
  if (zone === null) return 'the California energy zone, 1 to 16, is not known';
  const zones: readonly string[] = californiaAboveDeck.zones;
  if (!zones.includes(`${zone}`))
    return `California asks for no insulation above the deck of a re-roof in its zone ${zone}`;
  const { r } = californiaAboveDeck;
  return { r, u: uOfR(r), title: 'California, above the deck of a re-roof', rRow: californiaAboveDeck, uRow: null };
}

/** What the code asks of this roof, or why nothing is known of it. */
function askedByCode({ roof, given }: Site, ruleSet: RuleSet): Asked | string {
  const { place } = roof;
  const commercial = isCommercial(ruleSet.building.id);
  if (!isAmerican(ruleSet.building.id)) return 'the building code of this job is not an American one';
  const bar = notRooms(underOf(given.below));
  if (bar !== null) return bar;
  if (stateOf(place) === 'CA') return californian(place.californiaZone, commercial);
  const table = tableFor(ruleSet, commercial);
  const climateZone = climateZoneOf(place);
  const rRow = rowForZone(table, climateZone);
  if (rRow === null) return 'the climate zone is not known';
  const printed = commercial ? rowForZone(commercialU, climateZone) : null;
  const pair = commercial ? undefined : ceilingU.find(({ r }) => r === rRow.value);
  return {
    r: rRow.value,
    u: printed?.value ?? pair?.u ?? uOfR(rRow.value),
    title: table.title,
    rRow,
    uRow: printed ?? pair ?? null,
  };
}

/** The R and U that this roof should reach: as given, else by the code where people live below. */
export function energyTarget(site: Site, ruleSet: RuleSet): EnergyTarget {
  const { place, insulation } = site.roof;
  const belowKind = insulation.below?.kind ?? null;
  const airPasses = site.given.below === 'living-ceiling' && (belowKind === null || belowKind === 'batts');
  const foam = airPasses ? rowForZone(foamForCondensation, climateZoneOf(place)) : null;
  const asked = askedByCode(site, ruleSet);
  const known = typeof asked === 'string' ? null : asked;
  const code = known === null ? null : { r: known.r, title: known.title };
  const modelCode = stateOf(place) !== 'CA';
  const common = { commercial: modelCode && isCommercial(ruleSet.building.id), foam, code };
  const none = { rRow: null, uRow: null };
  if (insulation.targetR !== null) {
    const r = insulation.targetR;
    return { r, u: uOfR(r), title: 'target set for this job', own: true, noTarget: null, ...none, ...common };
  }
  if (known === null) return { r: null, u: null, title: null, own: false, noTarget: `${asked}`, ...none, ...common };
  return { ...known, own: false, noTarget: null, ...common };
}
