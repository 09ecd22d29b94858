import {
  intakeRule,
  oneExhaust,
  type ReducedVentRule,
  reducedVentRules,
  usualVents,
  type VentRow,
  ventRatios,
} from '../../../reference/attic-vents.ts';
import { ventedOrNot } from '../../../reference/vapor.ts';
import { plainNumber } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { Assumption, VentReport } from '../report/types.ts';
import type { Adjoining } from '../roof.ts';

const SQ_IN_PER_SQ_FT = 144;
const rows: readonly VentRow[] = usualVents;
const SAME = 1e-9;

/**
 * Net free area that an attic needs, sq in. Source: IRC R806.2.
 * Correctness: tests/published/vents.test.ts, 33
 */
export const neededSqIn = (atticSqFt: number, ratio: number): number => atticSqFt * ratio * SQ_IN_PER_SQ_FT;

/** The rule for the smaller area in an edition of the code: the newest that is not younger. */
export function reducedRule(edition: number): ReducedVentRule {
  const held: readonly ReducedVentRule[] = reducedVentRules;
  return held.filter(({ from }) => from <= edition).pop() ?? held[0];
}

type Vent = VentReport['vents'][number];

function ventsOf({ vents }: Adjoining): { vents: Vent[]; assumed: Assumption[] } {
  const assumed: Assumption[] = [];
  const read = vents.map(({ kind, count, netFreeSqIn, high }, i): Vent => {
    const row = rows.find((one) => one.kind === kind)!;
    const eachSqIn = netFreeSqIn ?? row.eachSqIn;
    if (netFreeSqIn === null && row.eachSqIn > 0)
      assumed.push({
        path: `adjoining.vents[${i}].netFreeSqIn`,
        value: `${row.eachSqIn} sq in ${row.unit === 'each' ? 'each' : `per ${row.unit}`}`,
        because: `usual ${row.name}, common practice; the label was not read`,
        findOut: 'read the label or the maker’s sheet',
      });
    return {
      kind,
      name: row.unit === 'each' ? row.name : `${row.name}, ${row.unit}`,
      count: count ?? 0,
      eachSqIn,
      totalSqIn: (count ?? 0) * eachSqIn,
      high: high ?? row.high,
      given: netFreeSqIn !== null,
      source: sourceNote(row),
    };
  });
  return { vents: read, assumed };
}

interface Weighed {
  rule: ReducedVentRule;
  neededSqIn: number;
  highSqIn: number;
  /** At the eaves: a gable louver is neither there nor high. */
  eaveSqIn: number;
  climateZone: string | null;
  retarder: Adjoining['ceilingRetarder'];
}

/** The share that is high is taken of what is there, or of what is needed where that is more. */
function conditionsOf({
  rule,
  neededSqIn: need,
  highSqIn,
  eaveSqIn,
  climateZone,
  retarder,
}: Weighed): VentReport['conditions'] {
  const source = sourceNote(rule);
  const both = highSqIn + eaveSqIn;
  const all = Math.max(need, both);
  const split = both >= need - SAME && highSqIn >= rule.highFrom * all - SAME && highSqIn <= rule.highTo * all + SAME;
  const bites =
    rule.retarderZones === null
      ? true
      : climateZone === null
        ? null
        : rule.retarderZones.includes(climateZone.charAt(0));
  const where = rule.retarderZones === null ? '' : ` in zones ${rule.retarderZones.join(', ')}`;
  return [
    {
      text: `${plainNumber(100 * rule.highFrom)} to ${plainNumber(100 * rule.highTo)} % of the vent area ${rule.highWords}, the rest at the eaves: ${plainNumber(highSqIn)} sq in high, ${plainNumber(eaveSqIn)} at the eaves`,
      state: split ? 'met' : 'not-met',
      source,
    },
    {
      text: `a vapor retarder (${rule.retarder}) on the warm side of the ceiling${where}${bites === false ? '; not asked for here' : ''}`,
      state:
        bites === false
          ? 'met'
          : bites === null || retarder === 'unknown'
            ? 'not-known'
            : retarder === 'yes'
              ? 'met'
              : 'not-met',
      source,
    },
  ];
}

function mixed(vents: readonly Vent[]): VentReport['warnings'][number][] {
  const outlets = [
    ...new Set(
      vents.flatMap(({ kind, count }) => {
        const row = rows.find((one) => one.kind === kind);
        return row?.exhaust === true && count > 0 ? [row.name] : [];
      }),
    ),
  ];
  if (outlets.length < 2) return [];
  return [
    {
      text: `Two kinds of outlet in one attic (${outlets.join(', ')}): air takes the shortest way from one to the other, the eaves stand idle, and rain or snow can be drawn in. Keep one kind and close the rest.`,
      source: sourceNote(oneExhaust),
    },
  ];
}

const letsOut = ({ kind, high }: Vent): boolean => rows.find((row) => row.kind === kind)?.exhaust ?? high;

function warningsOf(vents: readonly Vent[]): VentReport['warnings'][number][] {
  const area = (out: boolean): number =>
    vents.filter((vent) => letsOut(vent) === out).reduce((total, { totalSqIn }) => total + totalSqIn, 0);
  const [outSqIn, inSqIn] = [area(true), area(false)];
  const fan = vents.some(({ kind, count }) => kind === 'power-fan' && count > 0);
  return [
    ...mixed(vents),
    ...(outSqIn > inSqIn + SAME
      ? [
          {
            text: `More air can leave (${plainNumber(outSqIn)} sq in) than comes in at the eaves (${plainNumber(inSqIn)} sq in): the rest is drawn from the house. Add eave vents.`,
            source: sourceNote(intakeRule),
          },
        ]
      : []),
    ...(fan
      ? [
          {
            text: 'A powered fan needs eave vents of its own and can draw flue gas and room air into the attic.',
            source: sourceNote(oneExhaust),
          },
        ]
      : []),
  ];
}

const FLAT =
  'The flat part is not vented, neither to the outside nor into this attic: its insulation lies above the deck, and over so little height air does not move by itself. Block and air-seal the line where the two roofs meet. Where the flat roof cuts off the eave of the steep roof, its intake must come from that line, or the steep part stays unvented by its own rule.';

/** What to add, by either rule. */
function todoOf(
  verdict: VentReport['verdict'],
  rule: ReducedVentRule,
  usualSqIn: number,
  reducedSqIn: number,
  there: number,
): string[] {
  if (verdict !== 'short') return [];
  const missing = usualSqIn - there;
  const [from, to] = [rule.highFrom * reducedSqIn, rule.highTo * reducedSqIn];
  return [
    ...(missing > 0 ? [`Add ${plainNumber(Math.ceil(missing))} sq in of net free area to reach 1/150`] : []),
    `${missing > 0 ? 'or b' : 'B'}ring it to ${plainNumber(Math.ceil(reducedSqIn))} sq in with ${plainNumber(Math.ceil(from))} to ${plainNumber(Math.floor(to))} of it high and the rest at the eaves, with the other condition of 1/300.`,
  ];
}

function answerOf(
  verdict: VentReport['verdict'],
  there: number,
  usualSqIn: number | null,
  reducedSqIn: number | null,
): string {
  const has = `${plainNumber(there)} sq in of net free vent area`;
  if (usualSqIn === null || reducedSqIn === null)
    return 'The floor area of the attic beside the section is not known, so its vents cannot be judged.';
  switch (verdict) {
    case 'enough':
      return `The attic beside it has enough vents: ${has}, ${plainNumber(usualSqIn)} needed by the 1/150 rule.`;
    case 'enough-by-exception':
      return `The attic beside it has enough vents by the 1/300 rule: ${has}, ${plainNumber(reducedSqIn)} needed.`;
    case 'short':
      return `The attic beside it has too few vents: ${has}, ${plainNumber(usualSqIn)} needed (${plainNumber(reducedSqIn)} where both conditions of the 1/300 rule hold).`;
    default:
      return `Whether ${has} is enough for the attic beside it hangs on what is not known yet; by the 1/150 rule ${plainNumber(usualSqIn)} is needed.`;
  }
}

export interface VentInput {
  adjoining: Adjoining;
  /** Year of the residential code. */
  edition: number;
  climateZone: string | null;
}

/**
 * Vents of the attic beside the section, against 1/150 and 1/300 of its floor. Sources: reference/attic-vents.ts.
 * Correctness: tests/published/vents.test.ts
 */
export function ventReport({ adjoining, edition, climateZone }: VentInput): {
  report: VentReport;
  assumed: Assumption[];
} {
  const { atticSqFt, ceilingRetarder } = adjoining;
  const { vents, assumed } = ventsOf(adjoining);
  const sum = (high: boolean): number =>
    vents.filter((vent) => vent.high === high).reduce((total, { totalSqIn }) => total + totalSqIn, 0);
  const [highSqIn, lowSqIn] = [sum(true), sum(false)];
  const there = highSqIn + lowSqIn;
  const rule = reducedRule(edition);
  const usualSqIn = atticSqFt === null ? null : neededSqIn(atticSqFt, ventRatios.usual);
  const reducedSqIn = atticSqFt === null ? null : neededSqIn(atticSqFt, ventRatios.reduced);
  const weighed: Weighed = {
    rule,
    neededSqIn: reducedSqIn ?? 0,
    highSqIn,
    eaveSqIn: vents
      .filter((vent) => !vent.high && !letsOut(vent))
      .reduce((total, { totalSqIn }) => total + totalSqIn, 0),
    climateZone,
    retarder: ceilingRetarder,
  };
  const conditions = conditionsOf(weighed);
  const verdict = verdictOf({
    there,
    usualSqIn,
    reducedSqIn,
    conditions,
    rule,
    counted: adjoining.vents.every(({ count }) => count !== null),
  });
  const report: VentReport = {
    verdict,
    answer: answerOf(verdict, there, usualSqIn, reducedSqIn),
    atticSqFt,
    needed150SqIn: usualSqIn,
    needed300SqIn: reducedSqIn,
    highFromSqIn: reducedSqIn === null ? null : rule.highFrom * reducedSqIn,
    highToSqIn: reducedSqIn === null ? null : rule.highTo * reducedSqIn,
    thereSqIn: there,
    highSqIn,
    lowSqIn,
    vents,
    conditions,
    warnings: warningsOf(vents),
    todo:
      usualSqIn === null || reducedSqIn === null
        ? ['Measure the attic floor: length by width, level.']
        : todoOf(verdict, rule, usualSqIn, reducedSqIn, there),
    flatPart: { text: FLAT, source: sourceNote(ventedOrNot) },
    source: sourceNote(ventRatios),
  };
  return { report, assumed };
}

interface Judged {
  there: number;
  usualSqIn: number | null;
  reducedSqIn: number | null;
  conditions: VentReport['conditions'];
  rule: ReducedVentRule;
  counted: boolean;
}

function verdictOf({ there, usualSqIn, reducedSqIn, conditions, rule, counted }: Judged): VentReport['verdict'] {
  if (usualSqIn === null || reducedSqIn === null) return 'not-known';
  if (there >= usualSqIn - SAME) return 'enough';
  if (!counted) return 'not-known';
  if (there < reducedSqIn - SAME) return 'short';
  const met = conditions.filter(({ state }) => state === 'met').length;
  if (met >= (rule.needs === 'both' ? 2 : 1)) return 'enough-by-exception';
  const possible = conditions.filter(({ state }) => state !== 'not-met').length;
  return possible >= (rule.needs === 'both' ? 2 : 1) ? 'not-known' : 'short';
}
