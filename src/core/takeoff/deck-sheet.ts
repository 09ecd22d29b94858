import { asphaltPrimer } from '../../../reference/takeoff/adhesives.ts';
import { deckSheetDetail, deckSheetStock } from '../../../reference/takeoff/deck-sheet.ts';
import { fieldPastEdge } from '../../../reference/takeoff/edges.ts';
import { area, feetInches, plainNumber } from '../../units/print.ts';
import { perimeterFt } from '../geometry/vector.ts';
import { DECK } from '../moisture/deck-sheet.ts';
import type { DeckSheet, MaterialLine } from '../report/types.ts';
import { coveredRegion } from './covered.ts';
import { uphillOf } from './covering.ts';
import type { EdgeRun, Job } from './job.ts';
import { counted, lineOf, whole } from './line.ts';
import { layoutSheets, netRollSqFt, type SheetSize } from './sheet-layout.ts';
import { cutsAcross, type Strip } from './strips.ts';

const group = 'Deck sheet' as const;

/** Up a wall to the top of the boards and onto it; at other edges past the line, to be sealed to the wood. */
function pastFt({ use, highIn }: EdgeRun): number {
  const upright = use === 'wall' || use === 'parapet' || use === 'tie-in';
  if (upright) return (highIn + deckSheetDetail.ontoWallIn) / 12;
  return fieldPastEdge[use === 'joint' ? 'joint' : 'open'].pastIn / 12;
}

/** Collars round curbs and pieces round pipes, cut from the same rolls. */
function collars({ site, layout }: Job): Pick<Strip, 'lengthFt' | 'widthIn'>[] {
  const upIn = layout.greatestThicknessIn + deckSheetDetail.ontoWallIn + deckSheetDetail.onDeckIn;
  const { pipePieceIn } = deckSheetDetail;
  return [
    ...site.roof.curbs.map(({ outline }) => ({ lengthFt: perimeterFt(outline), widthIn: upIn })),
    ...site.roof.pipes.map(() => ({ lengthFt: pipePieceIn / 12, widthIn: pipePieceIn })),
  ];
}

function nameOf({ kind, mostPerm, on }: DeckSheet): string {
  if (kind === 'air-sheet') return `Airtight sheet on ${on}, self-adhered, lets vapor through`;
  const foil = mostPerm !== null && mostPerm < 0.05 ? ', foil-faced' : '';
  return `Vapor retarder on ${on}, self-adhered${foil}, ${mostPerm} perm or less`;
}

/** What the sheet needs besides its rolls on what it is laid on. */
function groundNote({ site }: Job, { on }: DeckSheet): string {
  const { deckKind } = site.given;
  if (on !== DECK) return `; the maker says whether it sticks to ${on}, and with what primer`;
  if (deckKind === 'steel') return '; over the ribs a sheet made to span them, or a thin board under it';
  if (deckKind === 'gypsum' || deckKind === 'cement-fiber') return '; the maker says whether it sticks to this deck';
  return '';
}

/**
 * The retarder or airtight sheet under all boards, laid out like every other roll, and its primer. Empty where none is
 * called for. Correctness: tests/unit/takeoff-deck-sheet.test.ts
 */
export function deckSheetLines(job: Job, sheet: DeckSheet | null): MaterialLine[] {
  if (sheet === null) return [];
  const row = deckSheetStock.find(({ kind }) => kind === sheet.kind)!;
  const size: SheetSize = {
    widthFt: row.widthIn / 12,
    rollFt: row.lengthFt,
    sideLapFt: row.sideLapIn / 12,
    endLapFt: row.endLapIn / 12,
  };
  const extra = collars(job);
  const strips = extra.map((one): Strip => ({ ...one, id: '', item: '', plies: 1, basis: '', row }));
  const plan = layoutSheets(
    {
      covered: coveredRegion(
        job.site.outline,
        job.edges.map((run) => ({ from: run.site.from, to: run.site.to, pastFt: pastFt(run) })),
      ),
      curbs: job.site.roof.curbs.map(({ outline }) => outline).filter((ring) => perimeterFt(ring) > 0),
      uphill: uphillOf(job.layout, job),
      runOn: true,
      extraCutsFt: (of) => cutsAcross(strips, of),
    },
    size,
  );
  const round = extra.reduce((sum, { lengthFt, widthIn }) => sum + (lengthFt * widthIn) / 12, 0);
  const netSqFt = plan.netSqFt + round;
  const gallons = (asphaltPrimer.galPerSq * netSqFt) / 100;
  const lines = [
    lineOf({
      id: 'deck-sheet',
      group,
      item: `${nameOf(sheet)}: roll ${row.widthIn} in x ${row.lengthFt} ft`,
      quantity: netSqFt,
      unit: 'sq ft',
      order: plan.rolls,
      orderUnit: 'rolls',
      basis:
        `${counted(plan.rows, 'row')}, side laps ${row.sideLapIn} in, end laps ${row.endLapIn} in, ${feetInches(plan.seamFt)} of side lap; ` +
        `covers ${area(plan.netSqFt)} with ${deckSheetDetail.ontoWallIn} in onto walls above the boards, ${area(round)} round curbs and pipes; ` +
        `rolls hold ${area(plan.grossSqFt)}, ${plainNumber(plan.grossSqFt / netSqFt, 2)} of the net (one roll ${plainNumber(netRollSqFt(size), 1)} sq ft without its laps)${groundNote(job, sheet)}. ${sheet.why}`,
      row,
    }),
  ];
  if (sheet.on !== DECK || job.site.given.deckKind !== 'steel')
    lines.push(
      lineOf({
        id: 'deck-sheet-primer',
        group,
        item: `Primer on ${sheet.on} under the self-adhered sheet`,
        quantity: gallons,
        unit: 'gal',
        order: whole(gallons / asphaltPrimer.pailGal),
        orderUnit: `${asphaltPrimer.pailGal} gal pails`,
        basis: `${area(netSqFt)} x ${asphaltPrimer.galPerSq} gal per square; the primer of the sheet’s maker`,
        row: asphaltPrimer,
      }),
    );
  return lines;
}
