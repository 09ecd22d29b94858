import {
  type Criterion,
  type CriterionId,
  criteria,
  type ScaleLevel,
  scaleLevels,
} from '../../../reference/membranes/criteria.ts';
import { type MembraneHeat, membraneHeat } from '../../../reference/membranes/heat.ts';
import { type MembraneLevels, membraneLevels } from '../../../reference/membranes/levels.ts';
import {
  type CostIndex,
  costCurve,
  costIndex,
  lifeValue,
  membraneLife,
} from '../../../reference/membranes/life-and-cost.ts';
import { sourceNote } from '../finding.ts';
import type { SourceNote } from '../report/types.ts';
import { figure } from '../safety/figure.ts';
import { type MembraneId, rowFor } from './options.ts';
import { solarReflectanceIndex, surfaceTemperatureF } from './sri.ts';
import type { Weights } from './weights.ts';

export interface CriterionScore {
  criterion: CriterionId;
  title: string;
  /** 0 to 10, at the likely value of the evidence. */
  score: number;
  /** The score at the bad and at the good end of the evidence; both are the score where no range is known. */
  low: number;
  high: number;
  /** The evidence itself: a figure with its range, or what was judged. */
  figure: string;
  text: string;
  source: SourceNote;
}

type Reason = Omit<CriterionScore, 'criterion' | 'title'>;

export type Scores = Readonly<Record<CriterionId, number>>;

const levels: readonly ScaleLevel[] = scaleLevels;
const levelTable: readonly MembraneLevels[] = membraneLevels;
const heatTable: readonly MembraneHeat[] = membraneHeat;
const costTable: readonly CostIndex[] = costIndex;
const criterionTable: readonly Criterion[] = criteria;

/** Aged solar reflectance index of a covering. */
export function agedSri(id: MembraneId): number {
  const heat = rowFor(heatTable, id);
  return solarReflectanceIndex(heat.agedReflectance, heat.emittance);
}

/** Value of the index: a tenth of it as ratings print it (whole numbers), held between 0 and 10. */
export function heatScore(sri: number): number {
  return Math.min(10, Math.max(0, Math.round(sri) / 10));
}

/** Value of first cost: straight between the points of the published curve, flat beyond its ends. */
export function costScore(index: number): number {
  const after = costCurve.findIndex((point) => point.index >= index);
  if (after === 0) return costCurve[0].score;
  const high = costCurve[after];
  const low = costCurve[after - 1];
  if (!high || !low) return costCurve[costCurve.length - 1]!.score;
  return low.score + ((index - low.index) / (high.index - low.index)) * (high.score - low.score);
}

function heatReason(id: MembraneId): Reason {
  const heat = rowFor(heatTable, id);
  const [least, most] = heat.agedRange.map((value) => solarReflectanceIndex(value, heat.emittance)) as [number, number];
  const range = `${figure(least, 0)} to ${figure(most, 0)}`;
  const sri = agedSri(id);
  const hot = figure(surfaceTemperatureF(heat.agedReflectance, heat.emittance), 0);
  return {
    score: heatScore(sri),
    low: heatScore(least),
    high: heatScore(most),
    figure: `aged SRI ${figure(sri, 0)} (${range})`,
    text: `Aged SRI ${figure(sri, 0)} (${range} by product and dirt); about ${hot} F in full summer sun.`,
    source: sourceNote(heat),
  };
}

function costReason(id: MembraneId): Reason {
  const cost = rowFor(costTable, id);
  const [least, most] = cost.index;
  const range = least === most ? least.toFixed(2) : `${least.toFixed(2)} to ${most.toFixed(2)}`;
  return {
    score: costScore((least + most) / 2),
    low: costScore(most),
    high: costScore(least),
    figure: `cost index ${range}`,
    text: `Cost index ${range}, with adhered TPO at 1.00; your own prices decide.`,
    source: sourceNote(cost),
  };
}

/** Value of a life in years, 0 to 10. Source: reference/membranes/life-and-cost.ts */
export function lifeScore(years: number): number {
  return Math.min(10, Math.max(0, (years - lifeValue.noneAtYears) * lifeValue.pointsPerYear));
}

function lifeReason(id: MembraneId, { score, text }: ScaleLevel): Reason {
  const life = rowFor(membraneLife, id);
  const range = `${life.years[0]} to ${life.years[1]} years`;
  return {
    score,
    low: Math.min(score, lifeScore(life.years[0])),
    high: Math.max(score, lifeScore(life.years[1])),
    figure: range,
    text: `${text} ${range}; it usually ends with ${life.usualFailure}.`,
    source: sourceNote(life),
  };
}

function levelReason(id: MembraneId, criterion: Exclude<CriterionId, 'heat' | 'cost'>): Reason {
  const name = rowFor(levelTable, id).levels[criterion];
  const level = levels.find((row) => row.criterion === criterion && row.level === name);
  if (!level) throw new Error(`no level ${name} on the ${criterion} scale`);
  if (criterion === 'life') return lifeReason(id, level);
  const { score, text } = level;
  return { score, low: score, high: score, figure: text, text, source: sourceNote(level) };
}

/** The ten scores of one covering, each with its evidence and its reason. Source: the tables of reference/membranes. */
export function scoreMembrane(id: MembraneId): readonly CriterionScore[] {
  return criterionTable.map(({ id: criterion, title }) => {
    const reason =
      criterion === 'heat' ? heatReason(id) : criterion === 'cost' ? costReason(id) : levelReason(id, criterion);
    return { criterion, title, ...reason };
  });
}

export function scoresById(reasons: readonly CriterionScore[]): Scores {
  return Object.fromEntries(reasons.map((reason) => [reason.criterion, reason.score])) as Scores;
}

/** Weighted sum of scores (linear additive value model). Correctness: tests/published/membrane-choice.test.ts */
export function weightedScore(scores: Scores, weights: Weights): number {
  return criterionTable.reduce((sum, { id }) => sum + weights[id] * scores[id], 0);
}
