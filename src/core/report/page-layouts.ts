import { inches, plainNumber, rValue } from '../../units/print.ts';
import { boardFeet, depthFigure, orNotKnown, psf, slopeFigure } from './page-figures.ts';
import type { Assessment, ExistingReport, Layout } from './types.ts';
import { sentence } from './words.ts';

/** The layout that a page shows: the one asked for, else the chosen one, else the first that was tried. */
export function shownLayout(assessment: Assessment, id: string | null = null): Layout | null {
  const { layouts, chosenLayout } = assessment;
  return (
    layouts.find((layout) => layout.id === id) ??
    layouts.find((layout) => layout.id === chosenLayout) ??
    layouts[0] ??
    null
  );
}

const areaOf = (areaSqFt: number): string => `${plainNumber(areaSqFt)} sq ft`;

/** The roof as it is, in one sentence. */
export function todaySentence({ ponds, undrainedAreaSqFt, verdict, leastFaceSlopeInPerFt }: ExistingReport): string {
  const deep = ponds.filter(({ birdBath }) => !birdBath);
  if (deep.length > 0) {
    const worst = Math.max(...deep.map(({ greatestDepthIn }) => greatestDepthIn));
    const wet = deep.reduce((sum, { areaSqFt }) => sum + areaSqFt, 0);
    return `Today water stands up to ${depthFigure(worst)} deep over ${areaOf(wet)}.`;
  }
  if (verdict === 'ponds') return 'Today water stands where it was seen.';
  if (undrainedAreaSqFt > 0.5)
    return `Today ${areaOf(undrainedAreaSqFt)} lie level, and water there has nowhere to run.`;
  return leastFaceSlopeInPerFt === null
    ? 'Whether water stands today is not known: the surface was not measured.'
    : 'Today no standing water is computed.';
}

/** What a layout does about it, in one sentence. */
export function laidSentence(layout: Layout): string {
  if (layout.rejected !== null) return sentence(`This layout is not offered: ${layout.rejected.why}`);
  const { leastFaceSlopeInPerFt: face, leastValleySlopeInPerFt: valley } = layout;
  const falls = [
    face === null ? '' : `every plane falls at least ${slopeFigure(face)}`,
    valley === null ? '' : `every valley at least ${slopeFigure(valley)}`,
  ].filter((part) => part !== '');
  const dry =
    layout.ponds.length === 0
      ? 'no water stands'
      : `water still stands ${depthFigure(layout.ponds[0].greatestDepthIn)} deep`;
  return `Laid so, ${[...falls, dry].join(', ').replace(/, ([^,]*)$/, ' and $1')}.`;
}

export const differenceSentence = (existing: ExistingReport, layout: Layout): string =>
  `${todaySentence(existing)} ${laidSentence(layout)}`;

const valleyWords: Record<Layout['valleyGrade'], string> = {
  good: '',
  slow: ', a slow valley',
  'too-flat': ', too flat',
};

export interface LayoutRow {
  id: string;
  title: string;
  why: string;
  state: 'chosen' | 'offered' | 'rejected';
  stateWords: string;
  /** Why it is rejected, and what to relax. */
  reason: string | null;
  relax: string | null;
  planes: string;
  valleys: string;
  thickness: string;
  meanThickness: string;
  volume: string;
  /** By the user's prices, with what it is made of; null where none were given. */
  cost: string | null;
  levelling: string;
  thinnestR: string;
  effectiveR: string;
  newOutlets: string;
  tightest: string;
  addedLoad: string;
}

function tightestOf(assessment: Assessment, layout: Layout): string {
  const hard = new Set(assessment.budgets.filter(({ hardness }) => hardness === 'stop').map(({ id }) => id));
  const [first] = layout.budgets.filter(({ id }) => hard.has(id)).sort((a, b) => a.leftIn - b.leftIn);
  if (first === undefined) return 'no hard limit known';
  const left = first.leftIn < -1 / 32 ? `${inches(-first.leftIn)} short` : `${inches(Math.max(0, first.leftIn))} left`;
  return `${left} at ${first.where}`;
}

function costWords({ cost }: Layout): string | null {
  if (cost === undefined || !cost.own) return null;
  const parts = cost.parts.map(
    ({ what, count, unit, rate }) =>
      `${what} ${plainNumber(count)}${unit === '' ? '' : ` ${unit}`} at ${plainNumber(rate, 2)}`,
  );
  return `${plainNumber(cost.amount)} by your prices: ${parts.join(', ')}`;
}

/** One layout in the words of the comparison. */
export function layoutRow(assessment: Assessment, layout: Layout): LayoutRow {
  const { rejected } = layout;
  const state = rejected !== null ? 'rejected' : layout.id === assessment.chosenLayout ? 'chosen' : 'offered';
  return {
    id: layout.id,
    title: layout.title,
    why: layout.why,
    state,
    stateWords: { chosen: 'chosen', offered: 'can be built', rejected: 'rejected' }[state],
    reason: rejected?.why ?? null,
    relax: rejected?.relax ?? null,
    planes: orNotKnown(layout.leastFaceSlopeInPerFt, slopeFigure),
    valleys:
      layout.leastValleySlopeInPerFt === null
        ? 'none'
        : `${slopeFigure(layout.leastValleySlopeInPerFt)}${valleyWords[layout.valleyGrade]}`,
    thickness: `${inches(layout.leastThicknessIn)} to ${inches(layout.greatestThicknessIn)}`,
    meanThickness: inches(layout.meanThicknessIn),
    volume: boardFeet(layout.volumeBoardFt),
    cost: costWords(layout),
    levelling: layout.levellingBoardFt < 0.5 ? 'none' : boardFeet(layout.levellingBoardFt),
    thinnestR: rValue(layout.thinnestR),
    effectiveR: rValue(layout.effectiveR),
    newOutlets: layout.newOutlets === 0 ? 'none' : plainNumber(layout.newOutlets),
    tightest: tightestOf(assessment, layout),
    addedLoad: psf(layout.addedPsf),
  };
}

export const layoutRows = (assessment: Assessment): LayoutRow[] =>
  assessment.layouts.map((layout) => layoutRow(assessment, layout));

/** What the thickness under the target would take, in a sentence; null where no target is known. */
export function baseSentence(layout: Layout): string | null {
  const { baseForTargetIn: base, baseForTargetFits: fits, effectiveR } = layout;
  if (base === null) return null;
  if (base === 0) return `The taper alone meets the target: effective ${rValue(effectiveR)}.`;
  const layer = (layout.baseIn ?? 0) > 0 ? 'Another flat layer' : 'A flat layer';
  const how = `${layer} of ${inches(base)} under the taper would meet the target R`;
  return fits === true
    ? `${how}, and the heights bear it. It is not added unless you ask for it (under Change the measurements: insulation).`
    : `${how}, but the heights do not bear it: ask for relief, or raise what is in the way.`;
}

/** Sumps at the drains of a layout, or why there are none; null without drains. */
export function sumpSentence({ sumps = [], noSumps = null, outlets }: Layout): string | null {
  const drains = outlets.filter(({ kind, role }) => kind === 'drain' && role === 'primary');
  if (drains.length === 0) return null;
  const [first] = sumps;
  if (first === undefined) {
    const why = noSumps === null ? '' : `: ${noSumps}`;
    return `No sumps${why}. Each drain is set to the low edge of the boards about it.`;
  }
  const rest = sumps.length < drains.length ? ` At ${drains.length - sumps.length} of them there is no room.` : '';
  return `A sump of ${plainNumber(first.sideFt, 1)} x ${plainNumber(first.sideFt, 1)} ft at the drains: four planes at ${slopeFigure(first.slopeInPerFt)} sunk in, ${inches(first.atDrainIn)} of board left at the drain.${rest}`;
}

/** How near the layout comes to the least board that any layout with its own least slope could do with. */
export function boundSentence({ bound, volumeBoardFt, levellingBoardFt, sumps = [] }: Layout): string | null {
  if (bound === null) return null;
  const what = `${levellingBoardFt < 0.5 ? '' : ' of fill and boards'}${sumps.length > 0 ? ', the sumps filled,' : ''}`;
  return `${boardFeet(volumeBoardFt + levellingBoardFt)}${what} against a least of ${boardFeet(bound.boardFt)} (within ${boardFeet(bound.errorBoardFt)}) for any roof that falls ${slopeFigure(bound.pathSlopeInPerFt)} along every path to the same outlets: ${plainNumber(bound.ratio, 2)} times. With the full slope in the valleys too it would be ${boardFeet(bound.strictConeBoardFt)}.`;
}
