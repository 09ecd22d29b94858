import { type ReducedVentRule, reducedVentRules } from '../../../reference/attic-vents.ts';
import { plainNumber } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { VentReport } from '../report/types.ts';
import type { Adjoining } from '../roof.ts';
import { notCountedOf, placeWords, type Vent } from './pieces.ts';

const SQ_IN_PER_SQ_FT = 144;
export const SAME = 1e-9;

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

/** What counts: high, at the eaves and between, sq in. */
export interface Areas {
  highSqIn: number;
  eaveSqIn: number;
  betweenSqIn: number;
}

/** Least high and eave areas that hold the split of 1/300 and let no more out than in, taking nothing away. */
export function splitFor(need: number, { highFrom, highTo }: ReducedVentRule, { highSqIn, eaveSqIn }: Areas) {
  const high = Math.max(highSqIn, highFrom * need, (highFrom / (1 - highFrom)) * eaveSqIn);
  return { highSqIn: high, eaveSqIn: Math.max(eaveSqIn, need - high, ((1 - highTo) / highTo) * high, high) };
}

export interface ConditionsInput {
  rule: ReducedVentRule;
  /** By 1/300, sq in. */
  need: number;
  areas: Areas;
  vents: readonly Vent[];
  climateZone: string | null;
  retarder: Adjoining['ceilingRetarder'];
}

/** The share that is high is taken of what is there, or of what is needed where that is more. */
export function conditionsOf({
  rule,
  need,
  areas,
  vents,
  climateZone,
  retarder,
}: ConditionsInput): VentReport['conditions'] {
  const source = sourceNote(rule);
  const { highSqIn, eaveSqIn } = areas;
  const open = notCountedOf(vents.filter(({ where }) => where !== 'between')).length > 0;
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
      text: `${plainNumber(100 * rule.highFrom)} to ${plainNumber(100 * rule.highTo)} % of the vent area ${rule.highWords}, the rest at the eaves: ${placeWords(vents, 'high', ' sq in')}, ${placeWords(vents, 'eaves')}`,
      state: open ? 'not-known' : split ? 'met' : 'not-met',
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

export interface Judged {
  countedSqIn: number;
  usualSqIn: number | null;
  reducedSqIn: number | null;
  conditions: VentReport['conditions'];
  rule: ReducedVentRule;
  /** Every vent was counted. */
  counted: boolean;
}

export function verdictOf(judged: Judged): VentReport['verdict'] {
  const { countedSqIn, usualSqIn, reducedSqIn, conditions, rule, counted } = judged;
  if (usualSqIn === null || reducedSqIn === null) return 'not-known';
  if (countedSqIn >= usualSqIn - SAME) return 'enough';
  if (!counted) return 'not-known';
  if (countedSqIn < reducedSqIn - SAME) return 'short';
  const met = conditions.filter(({ state }) => state === 'met').length;
  if (met >= (rule.needs === 'both' ? 2 : 1)) return 'enough-by-exception';
  const possible = conditions.filter(({ state }) => state !== 'not-met').length;
  return possible >= (rule.needs === 'both' ? 2 : 1) ? 'not-known' : 'short';
}
