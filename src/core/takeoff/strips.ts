import { leastFlashing } from '../../../reference/flashing.ts';
import type { Cited } from '../../../reference/sources.ts';
import { edgeStrip } from '../../../reference/takeoff/edges.ts';
import { curbCorner, flashingSheet, parapetSheet, scupperSet, tieIn } from '../../../reference/takeoff/flashings.ts';
import { feetInches, plainNumber } from '../../units/print.ts';
import { perimeterFt } from '../geometry/vector.ts';
import type { Curb } from '../roof.ts';
import { sideLengthFt, valueAlong } from '../site/edges.ts';
import type { EdgeRun, Job } from './job.ts';
import { whole } from './line.ts';
import type { SheetSize } from './sheet-layout.ts';

/** A strip of the covering that is cut from its rolls: base flashing or strip-in. */
export interface Strip {
  id: string;
  item: string;
  lengthFt: number;
  widthIn: number;
  /** 1 or 2 plies of it. */
  plies: number;
  basis: string;
  row: Cited;
}

/** Least height of base flashing above the new surface: the local rule, else the trade's. */
export const flashingIn = ({ site }: Pick<Job, 'site'>): number =>
  site.roof.ruleSet.local.minimumFlashingIn ?? leastFlashing.heightIn;

/** Sheet up a wall or curb: on the field, up, and over its top or onto what stands behind. */
export const wallSheetIn = (heightIn: number): number => flashingSheet.onFieldIn + heightIn + flashingSheet.ontoWallIn;

/** Sheet up and over a parapet and down outside. */
export const parapetSheetIn = (heightIn: number, wallThicknessIn: number): number =>
  flashingSheet.onFieldIn + heightIn + wallThicknessIn + flashingSheet.downOutsideIn;

/** Length of flashing around a curb, corners included. */
export const curbFlashingFt = (outline: Curb['outline']): number =>
  perimeterFt(outline) + (outline.length * curbCorner.pastIn) / 12;

/**
 * How far the sheet runs up the slope above: the longer of the usual run and the run that gains the rise.
 * @param pitchIn12 rise in 12
 */
export function tieInRunIn(pitchIn12: number): number {
  return Math.max(tieIn.leastRunIn, tieIn.riseIn / Math.sin(Math.atan(pitchIn12 / 12)));
}

/** Height of a parapet above the new surface; null = not measured. */
export function parapetHeightIn({ site }: Job, run: EdgeRun): number | null {
  const { topIn, side } = run.site.edge;
  if (topIn === null) return null;
  const length = sideLengthFt(site.roof.outline, side);
  const lift = site.roof.existing.readOn === 'deck' ? 0 : site.given.removedIn;
  const top = Math.max(valueAlong(topIn, length, run.site.fromFt), valueAlong(topIn, length, run.site.toFt));
  return Math.max(0, top + lift - run.lowIn);
}

/** True where the sheet goes over the top of the parapet instead of ending on its face. */
export function goesOver(job: Job, run: EdgeRun): boolean {
  const height = parapetHeightIn(job, run);
  return run.use === 'parapet' && height !== null && height <= parapetSheet.tallestOverIn;
}

function uprightStrip(job: Job, run: EdgeRun, plies: number): Strip {
  const { id, label, lengthFt } = run.site;
  const height = parapetHeightIn(job, run);
  const over = goesOver(job, run);
  const rise = over && height !== null ? height : flashingIn(job);
  const widthIn = over ? parapetSheetIn(rise, parapetSheet.wallThicknessIn) : wallSheetIn(rise);
  const parts = over
    ? `${flashingSheet.onFieldIn} on the field + ${plainNumber(rise, 1)} up + ${parapetSheet.wallThicknessIn} over (wall thickness assumed, measure it) + ${flashingSheet.downOutsideIn} down outside`
    : `${flashingSheet.onFieldIn} on the field + ${plainNumber(rise, 1)} up + ${flashingSheet.ontoWallIn} onto the wall`;
  return {
    id: `flashing-${id}`,
    item: `${over ? 'Parapet' : 'Wall'} flashing, ${label}`,
    lengthFt,
    widthIn,
    plies,
    basis: `${feetInches(lengthFt)} long, ${plainNumber(widthIn, 1)} in wide = ${parts}`,
    row: flashingSheet,
  };
}

const curbName = ({ kind, id }: Curb): string => (id.includes(kind) ? id : `${kind} ${id}`);

function curbStrip(job: Job, curb: Curb, plies: number): Strip {
  const lengthFt = curbFlashingFt(curb.outline);
  const heightIn = flashingIn(job);
  const widthIn = wallSheetIn(heightIn);
  return {
    id: `flashing-curb-${curb.id}`,
    item: `Curb flashing, ${curbName(curb)}`,
    lengthFt,
    widthIn,
    plies,
    basis: `perimeter ${feetInches(perimeterFt(curb.outline))} + ${curbCorner.pastIn} in a side = ${feetInches(lengthFt)}, ${widthIn} in wide (${flashingSheet.onFieldIn} + ${plainNumber(heightIn, 1)} up + ${flashingSheet.ontoWallIn} over the top)`,
    row: curbCorner,
  };
}

/** All strips that are cut from the covering's own rolls (or coated with it). */
export function stripsOf(job: Job): Strip[] {
  if (job.family === null) return [];
  const plies = job.family === 'bitumen' && job.membrane?.id !== 'roll-roofing' ? 2 : 1;
  const upright = job.edges.filter(({ use }) => use === 'wall' || use === 'parapet');
  const strips = [
    ...upright.map((run) => uprightStrip(job, run, plies)),
    ...job.site.roof.curbs.map((curb) => curbStrip(job, curb, plies)),
  ];
  const metal = metalFt(job);
  if (job.family === 'bitumen' && metal > 0)
    strips.push({
      id: 'strip-in',
      item: 'Strip over the edge metal, cut from the cap sheet',
      lengthFt: metal,
      widthIn: edgeStrip.bitumenIn,
      plies: 1,
      basis: `${feetInches(metal)} of edge metal, ${edgeStrip.bitumenIn} in wide`,
      row: edgeStrip,
    });
  const scuppers = job.layout.outlets.filter(({ kind }) => kind === 'scupper').length;
  if (scuppers > 0)
    strips.push({
      id: 'flashing-scuppers',
      item: 'Sheet at the scuppers',
      lengthFt: scuppers * (scupperSet.membraneSqFt / 3),
      widthIn: 36,
      plies: 1,
      basis: `${scuppers} x ${scupperSet.membraneSqFt} sq ft`,
      row: scupperSet,
    });
  return strips;
}

/** Feet of edge that carry edge metal. */
export const metalFt = ({ edges }: Job): number =>
  edges.filter(({ use }) => use === 'open' || use === 'rake').reduce((sum, { site }) => sum + site.lengthFt, 0);

/** Roll feet that the strips take when they are cut across a roll. */
export function cutsAcross(strips: readonly Strip[], { widthFt, sideLapFt, rollFt }: SheetSize): number[] {
  return strips.flatMap(({ lengthFt, widthIn, plies }) => {
    const pieces = plies * whole(lengthFt / (widthFt - sideLapFt));
    return Array.from({ length: pieces }, () => Math.min(rollFt, widthIn / 12));
  });
}
