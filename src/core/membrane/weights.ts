import { type Criterion, type CriterionId, criteria } from '../../../reference/membranes/criteria.ts';
import {
  firstCoolZone,
  parentCap,
  type ShiftCondition,
  type SituationId,
  type SituationWeights,
  situationWeights,
  type WeightShift,
  weightShifts,
} from '../../../reference/membranes/weights.ts';
import type { CoveringKind } from '../roof.ts';
import { figure, listed } from '../safety/figure.ts';
import type { MembraneFacts } from './facts.ts';
import { sentenceStart } from './flip-words.ts';
import { bituminous } from './options.ts';

export type Weights = Readonly<Record<CriterionId, number>>;

export interface WeighedSituation {
  situations: readonly SituationWeights[];
  shifts: readonly WeightShift[];
  weights: Weights;
  /** By the situation alone; the same as `weights` where the roof file gives none. */
  usual: Weights;
  /** True where the roof file gives weights. */
  own: boolean;
  /** Why these weights, in one sentence. */
  why: string;
  climateAssumed: boolean;
}

const table: readonly SituationWeights[] = situationWeights;
const shiftTable: readonly WeightShift[] = weightShifts;
const criterionTable: readonly Criterion[] = criteria;

function situation(id: SituationId): SituationWeights {
  const row = table.find((entry) => entry.id === id);
  if (!row) throw new Error(`no weights for situation ${id}`);
  return row;
}

function mapWeights(weights: Weights, change: (weight: number, id: CriterionId) => number): Weights {
  const entries = Object.entries(weights) as [CriterionId, number][];
  return Object.fromEntries(entries.map(([id, weight]) => [id, change(weight, id)])) as Weights;
}

/** The plain mean of several sets of weights; sums stay 1. */
export function meanWeights(rows: readonly { weights: Weights }[]): Weights {
  const first = rows[0];
  if (!first) throw new Error('no weights to average');
  return mapWeights(first.weights, (_, id) => rows.reduce((sum, row) => sum + row.weights[id], 0) / rows.length);
}

/**
 * Holds criteria that rise together to one allowance: they shrink in proportion, the others grow in proportion, the sum stays.
 * Correctness: tests/unit/membrane-compare.test.ts
 */
export function capTogether(weights: Weights, together: readonly CriterionId[], most: number): Weights {
  const held = together.reduce((sum, id) => sum + weights[id], 0);
  if (held <= most) return weights;
  const shrink = most / held;
  const grow = (1 - most) / (1 - held);
  return mapWeights(weights, (weight, id) => weight * (together.includes(id) ? shrink : grow));
}

/** Number of an IECC climate zone ("3B" is 3); null where it cannot be read. */
export function zoneNumber(climateZone: string | null): number | null {
  const digit = climateZone?.trim().match(/^([0-8])/)?.[1];
  return digit === undefined ? null : Number(digit);
}

function chooseSituations(facts: MembraneFacts): { rows: SituationWeights[]; because: string[] } {
  const zone = zoneNumber(facts.climateZone);
  const cool = zone !== null && zone >= firstCoolZone.zone;
  const heatCounts = !cool && facts.livingSpaceBelow !== false;
  const rows = [situation(heatCounts ? 'hot-occupied' : 'cool-shade-debris')];
  const because = [
    zone === null
      ? 'the climate zone is not known, so heat is weighed as in a hot one'
      : `climate zone ${facts.climateZone}`,
  ];
  if (!cool && !heatCounts) because.push('no living space below');
  const worn = [
    facts.shade ? 'shade' : null,
    facts.debris ? 'debris' : null,
    facts.footTraffic ? 'foot traffic' : null,
  ].filter((fact) => fact !== null);
  because.push(...worn);
  if (worn.length > 0 && heatCounts) rows.push(situation('cool-shade-debris'));
  if (facts.tightBudget) {
    rows.push(situation('tight-budget'));
    because.push('a tight budget');
  }
  return { rows, because };
}

/** True when water deeper than a bird bath stays after the design, or when nobody has shown that it does not. */
export function waterStays(facts: MembraneFacts): boolean {
  return facts.residualPondIn === null || facts.residualPondIn > facts.birdBathIn;
}

/** Old sheets that are made without asphalt; a coating or foam may lie over some. */
const asphaltFree: ReadonlySet<CoveringKind> = new Set(['tpo', 'pvc', 'epdm', 'metal']);

/** One old covering, and it holds no asphalt: there is nothing of it to touch. */
function neverBitumen({ existing: { covering, layers } }: MembraneFacts): boolean {
  return covering !== null && asphaltFree.has(covering) && (layers ?? 1) <= 1;
}

/** When each fact of the job moves a weight. */
const shiftHolds: Readonly<Record<ShiftCondition, (facts: MembraneFacts) => boolean>> = {
  'stood-water': ({ existing }) => existing.ponds === true,
  grease: ({ grease }) => grease === true,
  'no-flame-site': ({ noFlame }) => noFlame === true,
  'residue-stays': ({ existing, residueRemovedOrCovered }) =>
    residueRemovedOrCovered === false && (existing.covering === null || bituminous.has(existing.covering)),
  'residue-gone': (facts) => facts.residueRemovedOrCovered === true && !neverBitumen(facts),
  'residue-never': neverBitumen,
};

/** Every shift multiplies its weight; the sum is then 1 again. */
export function shiftWeights(weights: Weights, shifts: readonly WeightShift[]): Weights {
  const moved = mapWeights(weights, (weight, id) =>
    shifts.reduce((product, { criterion, times }) => (criterion === id ? product * times : product), weight),
  );
  const sum = Object.values(moved).reduce((total, weight) => total + weight, 0);
  return mapWeights(moved, (weight) => weight / sum);
}

/**
 * Weights of the owner's own in place of the usual ones: shares in percent by criterion. All ten given: brought to a sum
 * of 1. Fewer: what they leave of 100 goes to the others in their usual proportion.
 * @returns null where they leave nothing to weigh by (all 0)
 * Correctness: tests/unit/membrane-weights.test.ts
 */
export function withOwnWeights(usual: Weights, own: NonNullable<MembraneFacts['ownWeights']>): Weights | null {
  const given = criterionTable.reduce((sum, { id }) => sum + (own[id] ?? 0), 0);
  const rest = criterionTable.reduce((sum, { id }) => sum + (own[id] === undefined ? usual[id] : 0), 0);
  const left = rest > 0 ? Math.max(0, 100 - given) : 0;
  const total = given + left;
  if (total <= 0) return null;
  return mapWeights(usual, (weight, id) => (own[id] ?? (rest > 0 ? (left * weight) / rest : 0)) / total);
}

function shiftWords(shifts: readonly WeightShift[]): string {
  const words = shifts.map(({ criterion, times, because }) => {
    const { plain } = criterionTable.find(({ id }) => id === criterion)!;
    const how = times === 0 ? 'does not count' : `counts ${times > 1 ? 'half again as much' : 'half'}`;
    return `${plain} ${how}: ${because}`;
  });
  return words.length === 0 ? '' : ` ${words.map(sentenceStart).join('. ')}.`;
}

function ownWords(own: NonNullable<MembraneFacts['ownWeights']>): string {
  const given = criterionTable.flatMap(({ id, plain }) =>
    own[id] === undefined ? [] : [`${plain} ${figure(own[id], 1)} %`],
  );
  const rest = given.length === criterionTable.length ? '' : ' What they leave is shared out as usual:';
  return `Your own weights are used: ${listed(given)}.${rest}`;
}

/**
 * The weights for this job. Water that stays decides alone; otherwise climate picks the set, and wear or a tight budget
 * add theirs, averaged. Facts of the job then shift single weights; traffic and redundancy share one allowance. Weights of
 * the roof file go over all of it, as they are given. Source: reference/membranes/weights.ts.
 */
export function weighSituation(facts: MembraneFacts): WeighedSituation {
  const ponded = waterStays(facts);
  const chosen = ponded ? { rows: [situation('residual-ponding')], because: [] } : chooseSituations(facts);
  const { rows } = chosen;
  const because = ponded
    ? [
        facts.residualPondIn === null
          ? 'it is not shown that the finished roof drains'
          : 'water still stands after the design',
      ]
    : chosen.because;
  const titles = rows.map((row) => `"${row.title}"`).join(' and ');
  const shifts = shiftTable.filter(({ when }) => shiftHolds[when](facts));
  const usual = capTogether(shiftWeights(meanWeights(rows), shifts), parentCap.criteria, parentCap.mostTogether);
  const own = facts.ownWeights === null ? null : withOwnWeights(usual, facts.ownWeights);
  const why = `Weighed for ${titles}${rows.length > 1 ? ', averaged' : ''}: ${because.join(', ')}.${shiftWords(shifts)}`;
  return {
    situations: rows,
    shifts,
    weights: own ?? usual,
    usual,
    own: own !== null,
    why: own === null || facts.ownWeights === null ? why : `${ownWords(facts.ownWeights)} ${why}`,
    climateAssumed: !ponded && zoneNumber(facts.climateZone) === null,
  };
}
