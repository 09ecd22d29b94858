import { californiaAboveDeck, californiaTrigger } from '../../../reference/cool-roof.ts';
import {
  ashrae901R,
  ceilingU,
  leastAtLowPoint,
  replacementRule,
  reRoofRelief,
  residentialRelief,
  smallCeiling,
  type ZoneRow,
} from '../../../reference/energy.ts';
import { filmsR } from '../../../reference/insulation.ts';
import type { Cited } from '../../../reference/sources.ts';
import { area, inches, plainNumber, rValue } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import { rowForZone, tableFor } from '../layout/energy-target.ts';
import type {
  CoolRoofRow,
  EnergyRuleRow,
  EnergyRulesReport,
  Layout,
  MoistureReport,
  RuleResult,
} from '../report/types.ts';
import type { RuleSet } from '../rule-set.ts';
import type { Site } from '../site/site.ts';
import { stateCode } from '../site/town.ts';
import {
  californiaAboveR,
  coolRoofApplies,
  coolRoofJob,
  coolRoofRules,
  coveringsUnder,
  isCommercial,
} from './cool-roof.ts';

export interface EnergyRulesInput {
  site: Site;
  ruleSet: RuleSet;
  layout: Layout | null;
  membrane: string | null;
  climateZone: string | null;
  above: MoistureReport['above'];
  below: MoistureReport['below'];
}

interface Facts extends EnergyRulesInput {
  commercial: boolean;
  american: boolean;
  california: boolean;
  heated: boolean;
  areaSqFt: number;
  /** R of the whole roof without films, effective above the deck and below it. */
  totalR: number;
  aboveR: number;
  slopeInPerFt: number;
  recover: boolean;
}

function factsOf(input: EnergyRulesInput): Facts {
  const { site, ruleSet, layout, above, below } = input;
  const { building } = ruleSet;
  const commercial = isCommercial(building.id);
  const aboveR = site.roof.insulation.flatIn === null ? (layout?.effectiveR ?? 0) : above.labelR;
  return {
    ...input,
    commercial,
    american: commercial || building.id.startsWith('irc'),
    california: stateCode(site.roof.place.state ?? '') === 'CA',
    heated: site.given.below.startsWith('living'),
    areaSqFt: site.section.areaSqFt,
    aboveR,
    totalR: aboveR + (below.r ?? 0),
    slopeInPerFt: layout?.leastFaceSlopeInPerFt ?? 0,
    recover: site.given.removedIn === 0 && site.given.buildUpIn > 0,
  };
}

interface Draft {
  id: string;
  title: string;
  row: Cited;
  /** null = it does not bind this job; the note says why. */
  binds: boolean | null;
  why: string;
  asked: string;
  found: string;
  passes: boolean | null;
}

const clauseOf = ({ at }: Cited): string => at;

function rowOf({ row, binds, why, passes, asked, found, ...rest }: Draft): EnergyRuleRow {
  const result: RuleResult =
    binds === false ? 'not-applicable' : binds === null || passes === null ? 'not-known' : passes ? 'pass' : 'fail';
  return { ...rest, result, asked, found, clause: clauseOf(row), note: why, source: sourceNote(row) };
}

const HIGHER = 1e-9;

/** Why a rule of the building's kind does not bind; null = it does. */
function bars(facts: Facts, commercial: boolean): string | null {
  if (!facts.american) return 'the building code of this job is not an American one';
  if (!facts.heated) return 'the space below is neither heated nor cooled';
  if (facts.commercial !== commercial)
    return commercial ? 'the job is under the residential code' : 'the job is under the commercial code';
  if (facts.california) return 'California has rules of its own';
  return null;
}

function byZone(
  facts: Facts,
  draft: Pick<Draft, 'id' | 'title'>,
  row: ZoneRow | null,
  fallback: Cited,
  commercial: boolean,
): Draft {
  const barred = bars(facts, commercial);
  const found = commercial ? facts.aboveR : facts.totalR;
  const counted = commercial ? 'Above the deck, averaged by U.' : 'Above and below the deck, averaged by U above.';
  return {
    ...draft,
    row: row ?? fallback,
    binds: barred !== null ? false : row === null ? null : true,
    why: barred ?? (row === null ? 'the climate zone is not known' : counted),
    asked: row === null ? 'not known' : rValue(row.value),
    found: rValue(found),
    passes: row === null ? null : found >= row.value - HIGHER,
  };
}

function residentialDrafts(facts: Facts): Draft[] {
  const table = tableFor(facts.ruleSet, false);
  const row = rowForZone(table, facts.climateZone);
  const [fallback] = table.rows;
  const ceiling = byZone(
    facts,
    { id: 'residential-ceiling', title: `R of the ceiling (${table.title})` },
    row,
    fallback,
    false,
  );
  const pair = ceilingU.find(({ r }) => r === row?.value);
  const u = 1 / (facts.totalR + filmsR.value);
  const small = row !== null && row.value > smallCeiling.r;
  const isSmall = facts.areaSqFt <= smallCeiling.areaSqFt;
  return [
    ceiling,
    {
      id: 'residential-u',
      title: 'The same by U: either may be shown',
      row: pair ?? ceilingU[0],
      binds: ceiling.binds === true ? pair !== undefined : ceiling.binds,
      why:
        ceiling.binds !== true
          ? ceiling.why
          : pair === undefined
            ? 'no U is held for this R'
            : `Without joists in it, ${rValue(1 / pair.u)} with films is enough.`,
      asked: pair === undefined ? '' : `U ${plainNumber(pair.u, 3)}`,
      found: `U ${plainNumber(u, 3)}`,
      passes: pair === undefined ? null : u <= pair.u + HIGHER,
    },
    {
      id: 'small-ceiling',
      title: `Ceiling without an attic, up to ${area(smallCeiling.areaSqFt)}`,
      row: smallCeiling,
      binds: ceiling.binds === true ? small && isSmall : ceiling.binds,
      why:
        ceiling.binds !== true
          ? ceiling.why
          : isSmall
            ? `Only where the framing leaves no room, and for at most ${100 * smallCeiling.share} % of all ceilings: ask.`
            : `the section has ${area(facts.areaSqFt)}`,
      asked: rValue(smallCeiling.r),
      found: rValue(facts.totalR),
      passes: facts.totalR >= smallCeiling.r - HIGHER,
    },
  ];
}

function commercialDrafts(facts: Facts): Draft[] {
  const table = tableFor(facts.ruleSet, true);
  const row = rowForZone(table, facts.climateZone);
  const under = (facts.below.r ?? 0) > 0;
  const excused = (draft: Draft): Draft => {
    if (draft.binds !== true) return draft;
    if (facts.recover) return { ...draft, binds: false, why: 'the old roof stays: a recover is let off' };
    if (under) return { ...draft, binds: false, why: 'insulation lies below the deck: a replacement need not meet it' };
    return draft;
  };
  const row901 = rowForZone(ashrae901R, facts.climateZone);
  const barred = bars(facts, true);
  const leastIn = facts.site.roof.insulation.flatIn ?? facts.layout?.leastThicknessIn ?? 0;
  return [
    excused(
      byZone(facts, { id: 'commercial-roof', title: `R above the deck (${table.title})` }, row, table.rows[0], true),
    ),
    excused(
      byZone(
        facts,
        { id: 'ashrae-roof', title: `R above the deck (${ashrae901R.title})` },
        row901,
        ashrae901R.rows[0],
        true,
      ),
    ),
    excused({
      id: 'low-point',
      title: 'Insulation at the lowest point',
      row: leastAtLowPoint,
      binds: barred === null,
      why: barred ?? 'At the gutter edge, the drain and the scupper.',
      asked: inches(leastAtLowPoint.thicknessIn),
      found: inches(leastIn),
      passes: leastIn >= leastAtLowPoint.thicknessIn - HIGHER,
    }),
  ];
}

function californiaDraft(facts: Facts): Draft {
  const zone = facts.site.roof.place.californiaZone;
  const asked = zone === null ? null : californiaAboveR(zone);
  const barred = !facts.california
    ? 'the job is not in California'
    : facts.commercial
      ? 'the job is under the commercial code'
      : facts.heated
        ? null
        : 'the space below is neither heated nor cooled';
  return {
    id: 'california-above-deck',
    title: 'California: insulation above the deck of a re-roof',
    row: californiaAboveDeck,
    binds: barred !== null ? false : zone === null ? null : asked !== null,
    why:
      barred ??
      (zone === null
        ? 'the zone of California, 1 to 16, is not given'
        : asked === null
          ? `not in California zone ${zone}`
          : `Not where ${rValue(californiaAboveDeck.exceptR)} of continuous insulation is there already; from half of the roof or ${area(californiaTrigger.residentialSqFt)} on.`),
    asked: rValue(californiaAboveDeck.r),
    found: rValue(facts.aboveR),
    passes: facts.aboveR >= californiaAboveDeck.r - HIGHER,
  };
}

function coolRows(facts: Facts): Pick<EnergyRulesReport, 'coolRoof' | 'coverings'> {
  const job = coolRoofJob(facts.site, facts.ruleSet, facts.slopeInPerFt, facts.climateZone);
  const judged = coolRoofRules.map((rule) => ({
    rule,
    applies: coolRoofApplies(rule, job),
    all: coveringsUnder(rule, facts.membrane),
  }));
  return {
    coolRoof: judged.map(({ rule, applies, all }): CoolRoofRow => {
      const chosen = all.find((one) => one.chosen);
      const { agedReflectance, emittance, agedSri } = rule;
      return {
        ...rowOf({
          id: rule.id,
          title: `Cool roof: ${rule.title}`,
          row: rule,
          binds: !facts.american ? false : applies.state === 'not-known' ? null : applies.state === 'yes',
          why: facts.american ? applies.why : 'the building code of this job is not an American one',
          asked: `aged reflectance ${agedReflectance} and emittance ${emittance}, or SRI ${agedSri}`,
          found:
            chosen === undefined
              ? 'no covering chosen'
              : `${chosen.name}: ${chosen.agedReflectance} and ${chosen.emittance}, SRI ${plainNumber(chosen.sri)}`,
          passes: chosen?.passes ?? null,
        }),
        agedReflectance,
        emittance,
        agedSri,
      };
    }),
    coverings: judged
      .filter(({ applies }) => facts.american && applies.state === 'yes')
      .flatMap(({ rule, all }) => all.map((one) => ({ ...one, rule: rule.id }))),
  };
}

function reliefOf({
  american,
  commercial,
  rows,
}: {
  american: boolean;
  commercial: boolean;
  rows: readonly EnergyRuleRow[];
}) {
  if (!american || !rows.some(({ result }) => result === 'fail')) return [];
  return [
    commercial
      ? {
          text: 'A replacement must meet the table only where all insulation lies above the deck; a recover and a repair are let off.',
          source: sourceNote(replacementRule),
        }
      : {
          text: 'A re-roof that opens neither sheathing nor insulation is let off, and so is a recover; joist spaces that are opened and empty are filled; where there is no joist space, insulation goes above or below the sheathing. Ask the building office before the order.',
          source: sourceNote(residentialRelief),
        },
    {
      text: 'Where doors, glazing, parapets, equipment or flashing heights leave no room, an office may take the most that fits, never less than is there now.',
      source: sourceNote(reRoofRelief),
    },
  ];
}

/** Rules of which one is enough: paths of one code, or of two that stand for each other. */
const eitherOf: readonly (readonly string[])[] = [
  ['residential-ceiling', 'residential-u', 'small-ceiling'],
  ['commercial-roof', 'ashrae-roof'],
  ['iecc-c402-3', 'ashrae-90-1-cool'],
];

/** Rules that are not met: of those of which one is enough, the first, where none passes. */
function shortOf(binding: readonly EnergyRuleRow[]): EnergyRuleRow[] {
  return binding.filter((row) => {
    if (row.result !== 'fail') return false;
    const group = eitherOf.find((ids) => ids.includes(row.id));
    if (group === undefined) return true;
    const peers = binding.filter(({ id }) => group.includes(id));
    return !peers.some(({ result }) => result === 'pass') && peers[0] === row;
  });
}

function answerOf(rows: readonly EnergyRuleRow[]): string {
  const binding = rows.filter(({ result }) => result !== 'not-applicable');
  const short = shortOf(binding);
  if (binding.length === 0) return 'No energy or cool-roof rule that is held here binds this roof.';
  if (short.length > 0)
    return `Short of ${short.map(({ title, asked, found }) => `${title}: ${asked} asked for, ${found} there`).join('; ')}.`;
  if (binding.some(({ result }) => result === 'not-known'))
    return 'Whether the energy rules are met is not known yet: give the town or the climate zone.';
  return 'Every energy and cool-roof rule that binds this roof is met.';
}

/**
 * Energy and cool-roof rules of the job as pass, fail or not applicable, each with its clause.
 * Sources: reference/energy.ts, reference/cool-roof.ts. Correctness: tests/published/energy-rules.test.ts
 */
export function energyRulesReport(input: EnergyRulesInput): EnergyRulesReport {
  const facts = factsOf(input);
  const rows = [...residentialDrafts(facts), ...commercialDrafts(facts), californiaDraft(facts)].map(rowOf);
  const { coolRoof, coverings } = coolRows(facts);
  const all = [...rows, ...coolRoof];
  return {
    answer: answerOf(all),
    climateZone: input.climateZone,
    rows,
    coolRoof,
    coverings,
    relief: reliefOf({ american: facts.american, commercial: facts.commercial, rows: all }),
  };
}
