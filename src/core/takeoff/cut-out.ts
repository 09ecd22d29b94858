import { waterLoadPerInch } from '../../../reference/deflection.ts';
import { wetShareLimit } from '../../../reference/scope.ts';
import { cutOutPast, debrisBox, type OldCovering, oldCoverings } from '../../../reference/takeoff/tear-off.ts';
import { area, inches, plainNumber } from '../../units/print.ts';
import { perimeterFt, signedAreaSqFt } from '../geometry/vector.ts';
import { coveringNames } from '../kind-names.ts';
import type { MaterialLine } from '../report/types.ts';
import type { InspectionFinding } from '../roof.ts';
import { bears } from '../scope/bearing.ts';
import { shareOf } from '../scope/extent.ts';
import { keptIn, plannedWork } from '../site/planned-work.ts';
import type { Site } from '../site/site.ts';
import { flatBoards } from './boards.ts';
import type { Job } from './job.ts';
import { lineOf } from './line.ts';
import { boxLoads } from './tear-off.ts';

const coverings: readonly OldCovering[] = oldCoverings;
const CUBIC_FT_PER_YD = 27;

/** What the cut past the line adds all round one place; a place that was not drawn is taken for a square. */
function marginSqFt({ outline, areaSqFt }: InspectionFinding): number {
  const around = outline === null ? 4 * Math.sqrt(areaSqFt ?? 0) : perimeterFt(outline);
  return around * cutOutPast.mostFt + 4 * cutOutPast.mostFt ** 2;
}

/**
 * Area of the old roof that is cut out where it stays, sq ft; null = none is wet, nobody knows how far it reaches, or so much
 * that it does not stay.
 */
export function cutOutSqFt({ roof }: Pick<Site, 'roof'>): number | null {
  const wet = roof.findings.filter(({ kind }) => bears(kind) === 'wet');
  const share = wet.length === 0 ? null : shareOf(wet, roof);
  if (share === null || share > wetShareLimit.share) return null;
  const all = Math.abs(signedAreaSqFt(roof.outline));
  return Math.min(all, share * all + wet.reduce((sum, finding) => sum + marginSqFt(finding), 0));
}

const cutOut = ({ site }: Pick<Job, 'site'>): number | null =>
  plannedWork(site) === 'tear-off' ? null : cutOutSqFt(site);

const how = (sqFt: number): string =>
  `what was found wet, and ${cutOutPast.mostFt} ft past its line all round: ${area(sqFt)}`;

/** The wet part of an old roof that stays: what is hauled away. */
export function cutOutHaul(job: Pick<Job, 'site'>): MaterialLine[] {
  const { given } = job.site;
  const old = coverings.find(({ covering }) => covering === given.covering);
  const sqFt = cutOut(job);
  if (sqFt === null || old === undefined) return [];
  const pounds = sqFt * old.psf[1] * given.layers;
  const loads = boxLoads(pounds, (sqFt * keptIn(given)) / 12 / CUBIC_FT_PER_YD);
  return [
    lineOf({
      id: 'cut-out-haul',
      group: 'Tear-off',
      item: 'Wet part of the old roof to cut out and haul away',
      quantity: pounds,
      unit: 'lb',
      order: loads,
      orderUnit: `${debrisBox.cubicYd} yd boxes`,
      basis: `${how(sqFt)} of ${coveringNames[given.covering]} at ${old.psf[1]} psf dry = ${plainNumber(pounds)} lb at the least; wet board weighs up to ${waterLoadPerInch.psf} psf more for every inch of its thickness`,
      row: old,
    }),
  ];
}

/** Dry board in its place, up to the height of what stays. */
export function cutOutFill(job: Pick<Job, 'site'>): MaterialLine[] {
  const sqFt = cutOut(job);
  if (sqFt === null) return [];
  return [
    lineOf({
      id: 'cut-out-fill',
      group: 'Boards',
      item: `Dry fill board, ${inches(keptIn(job.site.given))} thick in all, where the wet part is cut out`,
      quantity: sqFt,
      unit: 'sq ft',
      order: flatBoards(sqFt),
      orderUnit: 'boards 4 x 8 ft in each layer',
      basis: `${how(sqFt)}, up to the height of what stays; measure the thickness where it is cut`,
      row: cutOutPast,
    }),
  ];
}
