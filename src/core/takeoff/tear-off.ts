import { tieIn } from '../../../reference/takeoff/flashings.ts';
import {
  debrisBox,
  looseWood,
  type OldCovering,
  oldCoverings,
  sheathing,
  shingles,
} from '../../../reference/takeoff/tear-off.ts';
import { area, plainNumber } from '../../units/print.ts';
import { coveringNames } from '../kind-names.ts';
import type { MaterialLine } from '../report/types.ts';
import { comesOff } from '../site/planned-work.ts';
import type { Job } from './job.ts';
import { lineOf, whole } from './line.ts';
import { tieInRunIn } from './strips.ts';

const coverings: readonly OldCovering[] = oldCoverings;
const LB_PER_TON = 2000;

/** One material that comes off: how much, how heavy. */
export interface Debris {
  areaSqFt: number;
  psf: number;
}

/** Weight of what comes off, lb. */
export const debrisLb = (parts: readonly Debris[]): number =>
  parts.reduce((sum, { areaSqFt, psf }) => sum + areaSqFt * psf, 0);

/** Loads of a box: by weight or by volume, whichever fills it first. */
export const boxLoads = (pounds: number, cubicYd: number): number =>
  Math.max(1, whole(pounds / LB_PER_TON / debrisBox.ton), whole(cubicYd / debrisBox.cubicYd));

const tieInSqFt = ({ edges }: Job): number =>
  edges
    .filter(({ use }) => use === 'tie-in')
    .reduce(
      (sum, { site }) => sum + (site.lengthFt * tieInRunIn(site.edge.pitchIn12 ?? tieIn.carefulPitchIn12)) / 12,
      0,
    );

/** Shingles above the tie-in come off whatever lies below. */
function shinglesLine(topSqFt: number): MaterialLine {
  const pounds = debrisLb([{ areaSqFt: topSqFt, psf: shingles.psf }]);
  return lineOf({
    id: 'tear-off',
    group: 'Tear-off',
    item: 'Shingles above the tie-in to take off and haul away',
    quantity: pounds,
    unit: 'lb',
    order: boxLoads(pounds, (topSqFt / 100) * shingles.cubicYdPerSq),
    orderUnit: `${debrisBox.cubicYd} yd boxes`,
    basis: `${area(topSqFt)} of shingles at ${shingles.psf} psf = ${plainNumber(pounds)} lb; no old roof comes off with them`,
    row: shingles,
  });
}

/** Weight and boxes of the old roof. Nothing is torn off where nothing is removed. */
export function tearOffLines(job: Job, sheetsOut: number): MaterialLine[] {
  const { given } = job.site;
  const old = coverings.find(({ covering }) => covering === given.covering);
  const onDeck = job.site.roof.existing.readOn === 'deck';
  const torn = (onDeck ? given.removedIn > 0 : true) && comesOff(job.site);
  const top = tieInSqFt(job);
  if (!torn || given.layers === 0) return top > 0 ? [shinglesLine(top)] : [];
  if (old === undefined) return [];
  const roofSqFt = job.areaSqFt * given.layers;
  const woodSqFt = sheetsOut * sheathing.sheetSqFt;
  const fixed: Debris[] = [
    { areaSqFt: top, psf: shingles.psf },
    { areaSqFt: woodSqFt, psf: sheathing.psf },
  ];
  const [lightLb, pounds] = old.psf.map((psf) => debrisLb([{ areaSqFt: roofSqFt, psf }, ...fixed])) as [number, number];
  const cubicYd =
    (roofSqFt / 100) * old.cubicYdPerSq +
    (top / 100) * shingles.cubicYdPerSq +
    (woodSqFt * sheathing.psf) / looseWood.lbPerCubicYd;
  const loads = boxLoads(pounds, cubicYd);
  const parts = [
    `${area(job.areaSqFt)} x ${given.layers} layer${given.layers === 1 ? '' : 's'} of ${coveringNames[given.covering]} at ${old.psf[1]} psf dry`,
    ...(top > 0 ? [`${area(top)} of shingles at ${shingles.psf}`] : []),
    ...(woodSqFt > 0 ? [`${sheetsOut} sheets of deck at ${sheathing.psf}`] : []),
  ];
  return [
    lineOf({
      id: 'tear-off',
      group: 'Tear-off',
      item: 'Old roof to take off and haul away',
      quantity: pounds,
      unit: 'lb',
      order: loads,
      orderUnit: `${debrisBox.cubicYd} yd boxes`,
      basis: `${parts.join(' + ')} = ${plainNumber(pounds)} lb (from ${plainNumber(lightLb)}), ${plainNumber(pounds / LB_PER_TON, 2)} ton; about ${plainNumber(cubicYd, 1)} cubic yd; a box carries ${debrisBox.ton} ton. Old insulation and water in it come on top: an inch of water is 5.2 psf. Suspect asbestos is surveyed before anything is cut`,
      row: old,
    }),
  ];
}
