import type { CriterionId } from '../../../reference/membranes/criteria.ts';
import {
  firstCoolZone,
  parentCap,
  type SituationId,
  type SituationWeights,
  situationWeights,
} from '../../../reference/membranes/weights.ts';
import type { MembraneFacts } from './facts.ts';

export type Weights = Readonly<Record<CriterionId, number>>;

export interface WeighedSituation {
  situations: readonly SituationWeights[];
  weights: Weights;
  /** Why these weights, in one sentence. */
  why: string;
  climateAssumed: boolean;
}

const table: readonly SituationWeights[] = situationWeights;

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

/**
 * The weights for this job. Water that stays decides alone; otherwise climate picks the set, and wear or a tight budget
 * add theirs, averaged. Traffic and redundancy then share one allowance. Source: reference/membranes/weights.ts.
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
  return {
    situations: rows,
    weights: capTogether(meanWeights(rows), parentCap.criteria, parentCap.mostTogether),
    why: `Weighed for ${titles}${rows.length > 1 ? ', averaged' : ''}: ${because.join(', ')}.`,
    climateAssumed: !ponded && zoneNumber(facts.climateZone) === null,
  };
}
