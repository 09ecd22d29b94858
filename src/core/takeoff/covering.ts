import { type SheetStock, sheetStock } from '../../../reference/membranes/stock.ts';
import { fieldPastEdge } from '../../../reference/takeoff/edges.ts';
import { seamPlates } from '../../../reference/takeoff/fasteners.ts';
import { tieIn } from '../../../reference/takeoff/flashings.ts';
import { area, feetInches, plainNumber } from '../../units/print.ts';
import { dot, perimeterFt } from '../geometry/vector.ts';
import type { Layout, MaterialLine } from '../report/types.ts';
import type { Point } from '../roof.ts';
import { coveredRegion } from './covered.ts';
import type { EdgeRun, Job } from './job.ts';
import { counted, lineOf } from './line.ts';
import {
  chooseSheets,
  layoutSheets,
  netRollSqFt,
  type SheetPlan,
  type SheetSize,
  type SheetTask,
} from './sheet-layout.ts';
import { cutsAcross, type Strip, tieInRunIn } from './strips.ts';

const stock: readonly SheetStock[] = sheetStock;

export interface Ply {
  layer: SheetStock['layer'];
  plan: SheetPlan;
  line: MaterialLine;
}

/** How far the field sheet goes past an edge, ft. */
export function pastEdgeFt({ use, site }: EdgeRun): number {
  if (use === 'tie-in') return tieInRunIn(site.edge.pitchIn12 ?? tieIn.carefulPitchIn12) / 12;
  if (use === 'wall' || use === 'parapet') return fieldPastEdge.upright.pastIn / 12;
  return fieldPastEdge[use === 'joint' ? 'joint' : 'open'].pastIn / 12;
}

/** Unit vector up the greatest part of the finished surface; on a level one the shorter way across the section. */
export function uphillOf(layout: Pick<Layout, 'facets'>, job: Pick<Job, 'site'>): Point {
  const parts: { toward: Point; areaSqFt: number; net: number }[] = [];
  for (const { plane, slopeInPerFt, areaSqFt } of layout.facets) {
    if (slopeInPerFt < 1e-6) continue;
    const up: Point = [plane.gx / slopeInPerFt, plane.gy / slopeInPerFt];
    const same = parts.find(({ toward }) => Math.abs(dot(toward, up)) > 0.999);
    if (same === undefined) parts.push({ toward: up, areaSqFt, net: areaSqFt });
    else {
      same.areaSqFt += areaSqFt;
      same.net += Math.sign(dot(same.toward, up)) * areaSqFt;
    }
  }
  const [most] = parts.sort((a, b) => b.areaSqFt - a.areaSqFt);
  if (most !== undefined) return most.net < 0 ? [-most.toward[0], -most.toward[1]] : most.toward;
  const [longest] = [...job.site.edges].sort((a, b) => b.lengthFt - a.lengthFt);
  if (longest === undefined) return [0, 1];
  const { from, to, lengthFt } = longest;
  return [(from[1] - to[1]) / lengthFt, (to[0] - from[0]) / lengthFt];
}

const sizeOf = (row: SheetStock, widthIn: number, job: Job): SheetSize => ({
  widthFt: widthIn / 12,
  rollFt: row.lengthFt,
  sideLapFt: (job.attachment?.kind === 'mechanically-attached' ? seamPlates.lapIn : row.sideLapIn) / 12,
  endLapFt: row.endLapIn / 12,
});

function runsInWords(runsFt: readonly number[]): string {
  const counts = new Map<string, number>();
  for (const run of runsFt) counts.set(feetInches(run), (counts.get(feetInches(run)) ?? 0) + 1);
  const parts = [...counts].map(([run, count]) => `${count} x ${run}`);
  return parts.length <= 6 ? parts.join(', ') : `${parts.slice(0, 5).join(', ')} and ${parts.length - 5} other lengths`;
}

function basisOf({ runsFt, size, rows, seamFt, endLaps, netSqFt, grossSqFt }: SheetPlan, layer: string): string {
  const plies = layer === 'base' ? ', first row half wide so that its laps miss those of the cap' : '';
  const ends =
    endLaps > 0
      ? `; ${counted(endLaps, 'end lap')} of ${plainNumber(size.endLapFt * 12, 2)} in, 3 ft or more apart`
      : '';
  return (
    `${counted(rows, 'row')} across the fall from the low side up, side laps ${plainNumber(size.sideLapFt * 12, 2)} in${plies}: sheets ${runsInWords(runsFt)}` +
    `; ${feetInches(seamFt)} of side lap${ends}; covers ${area(netSqFt)} with turn-downs and run-up, flashings cut from the same rolls; ` +
    `rolls hold ${area(grossSqFt)}, ${plainNumber(grossSqFt / netSqFt, 3)} of the net (one roll ${plainNumber(netRollSqFt(size), 1)} sq ft without its laps)`
  );
}

const layerName: Record<SheetStock['layer'], string> = {
  field: '',
  cap: 'cap sheet, ',
  base: 'base sheet, ',
  single: '',
};

function plyOf(job: Job, row: SheetStock, task: SheetTask): Ply {
  const sizes = row.widthsIn.map((width) => sizeOf(row, width, job));
  const plan = sizes.length === 1 ? layoutSheets(task, sizes[0]!) : chooseSheets(task, sizes);
  const name = job.membrane?.name ?? '';
  return {
    layer: row.layer,
    plan,
    line: lineOf({
      id: `membrane-${row.layer}`,
      group: 'Membrane',
      item: `${name}: ${layerName[row.layer]}roll ${plainNumber(plan.size.widthFt * 12, 3)} in x ${plainNumber(row.lengthFt, 2)} ft`,
      quantity: plan.netSqFt,
      unit: 'sq ft',
      order: plan.rolls,
      orderUnit: 'rolls',
      basis: basisOf(plan, row.layer),
      row,
    }),
  };
}

/**
 * The plies of the covering laid out on the plan, the covering sheet first. Empty for liquids and built-up felts.
 * @param strips flashings that are cut from the same rolls
 */
export function pliesOf(job: Job, strips: readonly Strip[]): Ply[] {
  const { membrane, site, layout } = job;
  if (membrane === null || membrane.id === 'bur-hot') return [];
  const covered = coveredRegion(
    site.outline,
    job.edges.map((run) => ({ from: run.site.from, to: run.site.to, pastFt: pastEdgeFt(run) })),
  );
  const curbs = site.roof.curbs.map(({ outline }) => outline).filter((ring) => perimeterFt(ring) > 0);
  const uphill = uphillOf(layout, job);
  const rows = stock.filter((row) => row.membrane === membrane.id);
  return rows.map((row) => {
    const base = row.layer === 'base';
    const own = strips.filter(({ plies }) => !base || plies > 1).map((strip) => ({ ...strip, plies: 1 }));
    return plyOf(job, row, {
      covered,
      curbs,
      uphill,
      starter: base ? 0.5 : 1,
      runOn: base,
      extraCutsFt: (size) => cutsAcross(own, size),
    });
  });
}
