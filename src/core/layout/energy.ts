import { averageURule, leastAtLowPoint, oneInchRule } from '../../../reference/energy.ts';
import { coverBoard, type InsulationBasis, insulationBases } from '../../../reference/insulation.ts';
import type { Cited } from '../../../reference/sources.ts';
import { inches, plainNumber, rValue } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { EnergyCheck, ThermalBasisReport, ThermalReport } from '../report/types.ts';
import type { TaperRuleId } from '../roof.ts';
import type { Patch } from '../surface/patch.ts';
import type { EnergyTarget } from './energy-target.ts';
import { averageU, effectiveR, labelLaw, labelR, momentsOf, perInch, type ResistanceLaw } from './thermal.ts';

/** Thickest flat layer that is looked at under a taper, and its step. */
const MOST_BASE_IN = 16;
const STEP_IN = 0.5;
const SAME = 1e-9;

/** Reading of the energy code where no local rule names one: the residential code has no rule for tapers, so U is averaged. */
export const USUAL_TAPER_RULE: TaperRuleId = 'average-u';

export interface EnergyContext {
  thickness: readonly Patch[];
  slopeInPerFt: number;
  target: EnergyTarget;
  /** Local rule; null = none named. */
  taperRule: TaperRuleId | null;
  /** Height that is left at the tightest place that must hold; null = nothing limits. */
  roomIn: number | null;
}

/**
 * Where the taper has risen 1 in: the R must be there by then.
 * @returns ft from the low point. Source: the 1-in exception of the energy code and arithmetic.
 */
export const oneInchReachFt = (slopeInPerFt: number): number => oneInchRule.riseIn / slopeInPerFt;

/**
 * Two equal flat layers that reach an R by their label values, R to a tenth per layer, in tenths of an inch.
 * Source: programme values of two-layer roofs. Correctness: tests/published/taper.test.ts, 6
 */
export function twoEqualLayersIn(r: number): number {
  for (let tenths = 5; tenths < 400; tenths++) {
    const each = Math.round(10 * labelR(tenths / 10)) / 10;
    if (2 * each >= r - SAME) return tenths / 10;
  }
  return 40;
}

/** The thinnest flat layer, in half inches, with which something holds; null where 16 in are not enough. */
function leastBase(holds: (baseIn: number) => boolean): number | null {
  for (let baseIn = 0; baseIn <= MOST_BASE_IN; baseIn += STEP_IN) if (holds(baseIn)) return baseIn;
  return null;
}

const lawOf = ({ rPerIn }: InsulationBasis): ResistanceLaw => (rPerIn === null ? labelLaw : perInch(rPerIn));

/** R that a flat layer under everything adds. */
const flatR = (law: ResistanceLaw, layerIn: number): number => law.rIn(layerIn, layerIn);

interface Measured {
  law: ResistanceLaw;
  uOf: (addedR: number) => number;
  leastIn: number;
  meanIn: number;
  greatestIn: number;
}

function measured({ thickness }: EnergyContext, basis: InsulationBasis): Measured {
  const law = lawOf(basis);
  const { leastIn, greatestIn, boardFt, areaSqFt } = momentsOf(thickness);
  return { law, uOf: averageU(thickness, law), leastIn, meanIn: boardFt / areaSqFt, greatestIn };
}

const bears = ({ roomIn }: EnergyContext, baseIn: number | null): boolean | null =>
  baseIn === null ? null : roomIn === null || roomIn >= baseIn - SAME;

const rAt = ({ law }: Measured, thicknessIn: number): number => law.rIn(thicknessIn, thicknessIn) + coverBoard.r;

function basisReport(context: EnergyContext, basis: InsulationBasis): ThermalBasisReport {
  const m = measured(context, basis);
  const { u: targetU, r: targetR } = context.target;
  const u = m.uOf(0);
  const goal = targetU ?? (targetR === null ? null : 1 / targetR);
  const baseIn = goal === null ? null : leastBase((b) => m.uOf(flatR(m.law, b)) <= goal + SAME);
  return {
    id: basis.id,
    name: basis.name,
    thinnestR: rAt(m, m.leastIn),
    averageR: rAt(m, m.meanIn),
    effectiveR: effectiveR(u),
    u,
    meetsTarget: goal === null ? null : u <= goal + SAME,
    baseForTargetIn: baseIn,
    baseFits: bears(context, baseIn),
    source: sourceNote(basis),
  };
}

interface CheckDraft {
  id: EnergyCheck['id'];
  title: string;
  inForce: boolean;
  asked: number;
  found: number;
  unit: EnergyCheck['unit'];
  baseIn: number | null;
  note: string;
  source: Cited;
}

function checkOf(context: EnergyContext, draft: CheckDraft): EnergyCheck {
  const { source, ...rest } = draft;
  const passes = rest.unit === 'U' ? rest.found <= rest.asked + SAME : rest.found >= rest.asked - SAME;
  return { ...rest, passes, baseFits: bears(context, draft.baseIn), source: sourceNote(source) };
}

function targetChecks(context: EnergyContext, m: Measured): CheckDraft[] {
  const { target, taperRule, slopeInPerFt } = context;
  if (target.r === null || target.u === null) return [];
  const { r, u, rRow, uRow } = target;
  const rule = taperRule ?? USUAL_TAPER_RULE;
  const judgedIn = Math.min(m.leastIn + oneInchRule.riseIn, m.greatestIn);
  const reach = plainNumber(oneInchReachFt(slopeInPerFt), 1);
  return [
    {
      id: 'one-inch-rule',
      title: 'Full R where the taper has risen 1 in',
      inForce: rule === 'one-inch',
      asked: r,
      found: rAt(m, judgedIn),
      unit: 'R',
      baseIn: leastBase((b) => rAt(m, judgedIn) + flatR(m.law, b) >= r - SAME),
      note: `The whole ${rValue(r)} within ${reach} ft of the low point; on a flat roof two layers of ${plainNumber(twoEqualLayersIn(r), 1)} in. ${rRow === null ? '' : `Asked: ${sourceNote(rRow).text}.`}`.trim(),
      source: oneInchRule,
    },
    {
      id: 'average-u',
      title: 'U averaged over the area',
      inForce: rule === 'average-u',
      asked: u,
      found: m.uOf(0),
      unit: 'U',
      baseIn: leastBase((b) => m.uOf(flatR(m.law, b)) <= u + SAME),
      note: `By the exact integral, with films; never by the mean thickness. ${uRow === null ? '' : `Asked: ${sourceNote(uRow).text}.`}`.trim(),
      source: averageURule,
    },
  ];
}

function thinEndChecks(context: EnergyContext, m: Measured): CheckDraft[] {
  const { commercial, foam } = context.target;
  const out: CheckDraft[] = [];
  if (commercial)
    out.push({
      id: 'low-point-thickness',
      title: 'Insulation at the lowest point',
      inForce: true,
      asked: leastAtLowPoint.thicknessIn,
      found: m.leastIn,
      unit: 'in',
      baseIn: leastBase((b) => m.leastIn + b >= leastAtLowPoint.thicknessIn - SAME),
      note: `At the gutter edge, the drain and the scupper; here ${inches(m.leastIn)}.`,
      source: leastAtLowPoint,
    });
  if (foam !== null) {
    const boardsR = m.law.rIn(m.leastIn, m.leastIn);
    out.push({
      id: 'thin-end-foam',
      title: 'Foam above the deck against condensation, at the thin end',
      inForce: true,
      asked: foam.value,
      found: boardsR,
      unit: 'R',
      baseIn: leastBase((b) => boardsR + flatR(m.law, b) >= foam.value - SAME),
      note: 'Where the space under the deck holds loose or batt insulation and is not vented. The cover board is not counted.',
      source: foam,
    });
  }
  return out;
}

/** Why the two readings of the energy code matter here; null where they agree or no target is known. */
function disagreement(checks: readonly EnergyCheck[], taperRule: TaperRuleId | null): string | null {
  const inch = checks.find(({ id }) => id === 'one-inch-rule');
  const average = checks.find(({ id }) => id === 'average-u');
  if (inch === undefined || average === undefined) return null;
  if (inch.passes === average.passes && inch.baseIn === average.baseIn) return null;
  const need = ({ baseIn }: EnergyCheck): string =>
    baseIn === null
      ? 'more than a flat layer can give'
      : baseIn === 0
        ? 'nothing more'
        : `a flat layer of ${inches(baseIn)}`;
  const own =
    taperRule === null
      ? 'None was named for this job: ask the building office which it takes.'
      : 'The local rule of this job is in force.';
  return `The readings disagree: the full R where the taper has risen 1 in takes ${need(inch)}, the U averaged over the area ${need(average)}. ${own}`;
}

/** R and U of a layout on every basis, and what the energy code makes of them. Checks use the label basis. */
export function thermalReport(context: EnergyContext): ThermalReport {
  const [label] = insulationBases;
  const m = measured(context, label);
  const { target, taperRule } = context;
  const checks = [...targetChecks(context, m), ...thinEndChecks(context, m)].map((draft) => checkOf(context, draft));
  return {
    bases: insulationBases.map((basis) => basisReport(context, basis)),
    checksOn: label.name,
    target:
      target.r === null || target.u === null
        ? null
        : { r: target.r, u: target.u, title: target.title ?? '', own: target.own },
    codeTarget: target.code,
    noTarget: target.noTarget,
    taperRule: { id: taperRule ?? USUAL_TAPER_RULE, given: taperRule !== null },
    checks,
    disagreement: disagreement(checks, taperRule),
  };
}
