import {
  asphaltPrimer,
  coldAdhesive,
  contactAdhesive,
  sealant,
  seamTape,
} from '../../../reference/takeoff/adhesives.ts';
import { drainSet, scupperSet } from '../../../reference/takeoff/flashings.ts';
import { area, feetInches, plainNumber } from '../../units/print.ts';
import type { MaterialLine } from '../report/types.ts';
import type { Ply } from './covering.ts';
import type { Job } from './job.ts';
import { counted, type LineDraft, lineOf, whole } from './line.ts';
import { goesOver, metalFt, type Strip } from './strips.ts';

const group = 'Adhesives and sealants' as const;

/** Feet of bead from a cartridge. Source: 1 fl oz = 1.8047 cu in, round bead; arithmetic. */
export const beadFtPerTube = (diameterIn: number, ounces: number = sealant.cartridgeOz): number =>
  (ounces * 1.8047) / ((Math.PI * diameterIn * diameterIn) / 4) / 12;

/** Pails of a liquid that covers so many sq ft a gallon. */
export const pails = (areaSqFt: number, sqFtPerGal: number, pailGal: number): number =>
  whole(areaSqFt / sqFtPerGal / pailGal);

const flashed = (strips: readonly Strip[]): number =>
  strips.reduce((sum, { lengthFt, widthIn, plies }) => sum + (lengthFt * widthIn * plies) / 12, 0);

function bonding(netSqFt: number, flashingSqFt: number): LineDraft {
  const total = netSqFt + flashingSqFt;
  const { sqFtPerGal, thinnerSqFtPerGal, pailGal } = contactAdhesive;
  return {
    id: 'bonding-adhesive',
    group,
    item: 'Bonding adhesive, both faces',
    quantity: total / sqFtPerGal,
    unit: 'gal',
    order: pails(total, sqFtPerGal, pailGal),
    orderUnit: `${pailGal} gal pails`,
    basis: `(${area(netSqFt)} of sheet + ${area(flashingSqFt)} of flashing) / ${sqFtPerGal} sq ft a gallon; a product at ${thinnerSqFtPerGal} takes ${pails(total, thinnerSqFtPerGal, pailGal)} pails; laps stay dry`,
    row: contactAdhesive,
  };
}

function primer(netSqFt: number): LineDraft {
  const gallons = (asphaltPrimer.galPerSq * netSqFt) / 100;
  return {
    id: 'primer',
    group,
    item: 'Asphalt primer on boards and metal flanges',
    quantity: gallons,
    unit: 'gal',
    order: whole(gallons / asphaltPrimer.pailGal),
    orderUnit: `${asphaltPrimer.pailGal} gal pails`,
    basis: `${area(netSqFt)} x ${asphaltPrimer.galPerSq} gal per square`,
    row: asphaltPrimer,
  };
}

function coldGlue(netSqFt: number, plies: number): LineDraft {
  const { galPerSq, mostGalPerSq, pailGal } = coldAdhesive;
  const squares = (netSqFt * plies) / 100;
  return {
    id: 'cold-adhesive',
    group,
    item: 'Cold adhesive',
    quantity: squares * galPerSq,
    unit: 'gal',
    order: whole((squares * mostGalPerSq) / pailGal),
    orderUnit: `${pailGal} gal pails`,
    basis: `${counted(plies, 'ply', 'plies')} x ${area(netSqFt)}; ${galPerSq} gal per square and ply, ordered at ${mostGalPerSq} for a rough board`,
    row: coldAdhesive,
  };
}

function tape(seamFt: number): LineDraft[] {
  if (seamFt < 0.1) return [];
  const gallons = (seamFt / 100) * seamTape.primerGalPer100Ft;
  return [
    {
      id: 'seam-tape',
      group,
      item: 'Seam tape 3 in',
      quantity: seamFt,
      unit: 'ft',
      order: whole(seamFt / seamTape.rollFt),
      orderUnit: `${seamTape.rollFt} ft rolls`,
      basis: `${feetInches(seamFt)} of side and end laps`,
      row: seamTape,
    },
    {
      id: 'seam-primer',
      group,
      item: 'Seam primer',
      quantity: gallons,
      unit: 'gal',
      order: whole(gallons / 0.25) * 0.25,
      orderUnit: 'gal, in quarts',
      basis: `${seamTape.primerGalPer100Ft} gal for 100 ft of tape, both faces`,
      row: seamTape,
    },
  ];
}

/** Bead along seams, metal and curbs: cut edges of welded sheet, laps of rubber. */
function seamBead(job: Job, seamFt: number, strips: readonly Strip[]): LineDraft[] {
  if (job.family !== 'welded' && job.family !== 'rubber') return [];
  const curbFt = strips.filter(({ id }) => id.startsWith('flashing-')).reduce((sum, { lengthFt }) => sum + lengthFt, 0);
  const totalFt = metalFt(job) + seamFt + curbFt;
  const rubber = job.family === 'rubber';
  const beadIn = rubber ? sealant.lapIn : sealant.cutEdgeIn;
  return [
    {
      id: rubber ? 'lap-sealant' : 'cut-edge-sealant',
      group,
      item: rubber ? 'Lap sealant' : 'Cut-edge sealant',
      quantity: totalFt,
      unit: 'ft of bead',
      order: whole(totalFt / beadFtPerTube(beadIn)),
      orderUnit: '10.1 oz tubes',
      basis: `${plainNumber(metalFt(job), 1)} ft of metal + ${plainNumber(seamFt, 1)} ft of seam + ${plainNumber(curbFt, 1)} ft of flashing, ${beadIn} in bead at ${plainNumber(beadFtPerTube(beadIn), 1)} ft a tube`,
      row: sealant,
    },
  ];
}

function waterBlock(job: Job): LineDraft[] {
  const pipes = job.site.roof.pipes.length;
  const drains = job.layout.outlets.filter(({ kind }) => kind === 'drain').length;
  const scuppers = job.layout.outlets.filter(({ kind }) => kind === 'scupper').length;
  const walls = job.edges.filter((run) => (run.use === 'wall' || run.use === 'parapet') && !goesOver(job, run));
  const barFt = walls.reduce((sum, { site }) => sum + site.lengthFt, 0);
  const bead = beadFtPerTube(sealant.waterBlockIn);
  const tubes = pipes * sealant.tubesPerPipe + drains * drainSet.tubes + scuppers * scupperSet.tubes + barFt / bead;
  if (tubes === 0) return [];
  const parts = [
    ...(pipes > 0 ? [`${counted(pipes, 'pipe')} x ${sealant.tubesPerPipe}`] : []),
    ...(drains > 0 ? [`${counted(drains, 'drain')} x ${drainSet.tubes}`] : []),
    ...(scuppers > 0 ? [`${counted(scuppers, 'scupper')} x ${scupperSet.tubes}`] : []),
    ...(barFt > 0 ? [`${plainNumber(barFt, 1)} ft behind termination bar / ${plainNumber(bead, 1)} ft a tube`] : []),
  ];
  return [
    {
      id: 'water-block',
      group,
      item: job.family === 'bitumen' ? 'Flashing mastic, water block' : 'Water block sealant',
      quantity: tubes,
      unit: 'tubes',
      order: whole(tubes),
      orderUnit: '10.1 oz tubes',
      basis: parts.join(' + '),
      row: sealant,
    },
  ];
}

function joints(job: Job, { plan }: Ply): LineDraft[] {
  if (job.family !== 'welded' && job.family !== 'rubber') return [];
  const seams = Math.max(0, plan.rows - 1);
  const curbs = job.site.roof.curbs.length;
  const count = 2 * seams + 2 * plan.endLaps + 2 * curbs;
  if (count === 0) return [];
  return [
    {
      id: 't-joints',
      group,
      item: 'T-joint covers',
      quantity: count,
      unit: 'covers',
      order: count + 2,
      orderUnit: 'covers',
      basis: `${counted(seams, 'seam')} x 2 ends + ${counted(plan.endLaps, 'end lap')} x 2 + ${counted(curbs, 'curb')} x 2, and 2 in hand`,
      row: contactAdhesive,
    },
  ];
}

/** What bonds and seals the covering, by its way of being held. */
export function glueLines(job: Job, plies: readonly Ply[], strips: readonly Strip[]): MaterialLine[] {
  const [top] = plies;
  const lines: LineDraft[] = [];
  if (top !== undefined) {
    const { netSqFt, seamFt, endLaps, size } = top.plan;
    const allSeamFt = seamFt + endLaps * size.widthFt;
    if (job.family === 'rubber') lines.push(...tape(allSeamFt));
    if (job.family === 'welded' || job.family === 'rubber') {
      const held = job.attachment?.kind === 'adhered' || job.noScrews !== null || job.attachment === null;
      lines.push(bonding(held ? netSqFt : 0, flashed(strips)));
    }
    if (job.attachment?.kind === 'self-adhered') lines.push(primer(netSqFt));
    if (job.attachment?.kind === 'cold-adhesive')
      lines.push(coldGlue(netSqFt + flashed(strips) / plies.length, plies.length));
    lines.push(...seamBead(job, allSeamFt, strips), ...joints(job, top));
  }
  return [...lines, ...(job.membrane === null ? [] : waterBlock(job))].map(lineOf);
}
