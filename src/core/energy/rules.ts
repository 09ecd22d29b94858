import { replacementRule, reRoofRelief, residentialRelief } from '../../../reference/energy.ts';
import { plainNumber, rValue } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { EnergyTarget } from '../layout/energy-target.ts';
import type { Assumption, CoolRoofRow, EnergyRuleRow, EnergyRulesReport } from '../report/types.ts';
import { californiaDraft, californiaNotHeldDraft } from './california.ts';
import { coolRoofApplies, coolRoofJob, coolRoofRules, coveringsUnder } from './cool-roof.ts';
import { dampNoted } from './damp-note.ts';
import { CALIFORNIA_ZONE, type EnergyRulesInput, type Facts, factsOf, rowOf, ZONE } from './draft.ts';
import { spacingAssumed } from './framing.ts';
import { commercialDrafts, residentialDrafts } from './model-code.ts';

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
          settledBy:
            applies.state === 'yes' ? 'a covering, once one is chosen' : rule.state === 'CA' ? CALIFORNIA_ZONE : ZONE,
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

/** Rules that are not met: of those of which one is enough, the first, where none passes and none may. */
function shortOf(binding: readonly EnergyRuleRow[]): EnergyRuleRow[] {
  return binding.filter((row) => {
    if (row.result !== 'fail') return false;
    const group = eitherOf.find((ids) => ids.includes(row.id));
    if (group === undefined) return true;
    const peers = binding.filter(({ id }) => group.includes(id));
    return peers.every(({ result }) => result === 'fail') && peers[0] === row;
  });
}

/** Rules that are not known: of those of which one is enough, the first, where none passes. */
function openOf(binding: readonly EnergyRuleRow[]): EnergyRuleRow[] {
  return binding.filter((row) => {
    if (row.result !== 'not-known') return false;
    const group = eitherOf.find((ids) => ids.includes(row.id)) ?? [row.id];
    const peers = binding.filter(({ id }) => group.includes(id));
    return !peers.some(({ result }) => result === 'pass') && peers.find(({ result }) => result === 'not-known') === row;
  });
}

function answerOf(rows: readonly EnergyRuleRow[]): string {
  const binding = rows.filter(({ result }) => result !== 'not-applicable');
  const short = shortOf(binding);
  const open = openOf(binding);
  if (binding.length === 0) return 'No energy or cool-roof rule that is held here binds this roof.';
  if (short.length === 0 && open.length === 0)
    return 'Every energy and cool-roof rule that is held here and binds this roof is met.';
  const settle = open.flatMap(({ settledBy }) => settledBy ?? []).filter((text, i, all) => all.indexOf(text) === i);
  return [
    ...(short.length === 0
      ? []
      : [
          `Short of ${short.map(({ title, asked, found }) => `${title}: ${asked} asked for, ${found} there`).join('; ')}.`,
        ]),
    ...(open.length === 0 ? [] : [`Not judged: ${open.map(({ title }) => title).join('; ')}.`]),
    ...settle.map((text) => `What settles it: ${text}.`),
    ...(short.length === 0 && binding.some(({ result }) => result === 'pass')
      ? ['The other rules that bind this roof are met.']
      : []),
  ].join(' ');
}

/** What the job itself asks where that is not what the code asks. */
function targetNote({ r, own, code }: EnergyTarget): string | null {
  if (!own || r === null) return null;
  const table = code === null ? '' : ` The table of the code asks for ${rValue(code.r)} (${code.title}).`;
  return `The target set for this job is ${rValue(r)}: that is its own wish and no rule of the code.${table}`;
}

/**
 * Energy and cool-roof rules of the job as pass, fail or not applicable, each with its clause.
 * Sources: reference/energy.ts, reference/cool-roof.ts. Correctness: tests/published/energy-rules.test.ts
 */
export function energyRulesReport(input: EnergyRulesInput): { report: EnergyRulesReport; assumed: Assumption[] } {
  const facts = factsOf(input);
  const { drafts, stopped } = dampNoted(facts, (seen) => [
    ...residentialDrafts(seen),
    ...commercialDrafts(seen),
    californiaDraft(seen),
    californiaNotHeldDraft(seen),
  ]);
  const rows = drafts.map(rowOf);
  const { coolRoof, coverings } = coolRows(facts);
  const all = [...rows, ...coolRoof];
  const report: EnergyRulesReport = {
    answer: [answerOf(all), ...(stopped === null ? [] : [stopped])].join(' '),
    dampStop: stopped,
    targetNote: targetNote(input.energy),
    climateZone: input.climateZone,
    rows,
    coolRoof,
    coverings,
    relief: reliefOf({ american: facts.american, commercial: facts.commercial, rows: all }),
  };
  const byU = rows.some(({ id, result }) => id === 'residential-u' && (result === 'pass' || result === 'fail'));
  return { report, assumed: byU ? spacingAssumed(facts.framing) : [] };
}
