import { coverBoard } from '../../../reference/insulation.ts';
import { foamRibbons } from '../../../reference/takeoff/adhesives.ts';
import { levellingBoard } from '../../../reference/takeoff/boards.ts';
import {
  boardDensity,
  type DeckHold,
  type EdgeIncrease,
  screwStock,
  seamPlates,
  sheetNails,
} from '../../../reference/takeoff/fasteners.ts';
import { area, decimalInches, plainNumber } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import { centroid, signedAreaSqFt } from '../geometry/vector.ts';
import { deckNames } from '../kind-names.ts';
import { layersOf } from '../layout/bands.ts';
import { catalogueOf } from '../layout/catalogue.ts';
import type { Finding, MaterialLine } from '../report/types.ts';
import { keptIn } from '../site/planned-work.ts';
import type { Job } from './job.ts';
import { lineOf, whole } from './line.ts';
import type { SheetPlan } from './sheet-layout.ts';
import { type WindZones, windZones } from './zones.ts';

type Zone = 'field' | 'perimeter' | 'corner';

/** Next stock length of an insulation screw. Source: half inches to 8 in, then whole inches, common practice. */
export function stockScrewIn(neededIn: number): number {
  const half = whole(neededIn / screwStock.stepIn) * screwStock.stepIn;
  return half <= screwStock.upToIn + 1e-9 ? half : whole(neededIn / screwStock.beyondStepIn) * screwStock.beyondStepIn;
}

/** Screw for a stack: everything it passes and the hold in the deck, before rounding to stock. */
export function neededScrewIn(stackIn: number, deckThicknessIn: number, hold: DeckHold): number {
  return stackIn + (hold.throughPanel ? deckThicknessIn : 0) + hold.engagementIn;
}

/** Screws on one board near the edge where the named loss-prevention rule is followed. */
export function edgeScrews(fieldCount: number, boardSqFt: number, rule: EdgeIncrease): readonly [number, number] {
  const at = (factor: number, sqFt: number | null): number =>
    Math.max(whole(fieldCount * factor), sqFt === null ? 0 : whole(boardSqFt / sqFt));
  return [at(rule.perimeterFactor, rule.perimeterSqFt), at(rule.cornerFactor, rule.cornerSqFt)];
}

/** Feet of ribbon on an area at that spacing. Arithmetic: 12 / spacing feet for each sq ft. */
export const ribbonFt = (areaSqFt: number, spacingIn: number): number => (areaSqFt * 12) / spacingIn;

/** Plates in the laps of a mechanically attached sheet, for one square. */
export const seamPlatesPerSq = (rowFt: number, spacingIn: number): number => 100 / (rowFt * (spacingIn / 12));

/** Nails for one square of sheet on wood: one line along the lap and rows between. */
export const sheetNailsPerSq = (
  widthIn: number,
  lapIn: number,
  rowSpacingIn: number = sheetNails.rowSpacingIn,
): number => (100 / ((widthIn - lapIn) / 12)) * (12 / sheetNails.lapSpacingIn + (sheetNails.rows * 12) / rowSpacingIn);

/** Screws over an area by zone at the board's density. */
export const zoneScrews = (areaSqFt: number, zone: Zone): number =>
  (areaSqFt * boardDensity[zone]) / boardDensity.boardSqFt;

const spacing: Record<Zone, number> = {
  field: foamRibbons.fieldIn,
  perimeter: foamRibbons.perimeterIn,
  corner: foamRibbons.cornerIn,
};

function adhered(job: Job, zones: WindZones): MaterialLine {
  const { layout } = job;
  const catalogue = catalogueOf(job.site.roof);
  let fillFt = 0;
  let fillSqFt = 0;
  for (const { outline, fillIn } of layout.pieces) {
    const layers = layersOf(catalogue, fillIn)?.length ?? 0;
    if (layers === 0) continue;
    const sqFt = layers * Math.abs(signedAreaSqFt(outline));
    fillSqFt += sqFt;
    fillFt += ribbonFt(sqFt, spacing[zones.at(centroid(outline))]);
  }
  const upperSqFt = layout.pieces
    .filter(({ layer }) => layer > 0)
    .reduce((sum, { outline }) => sum + Math.abs(signedAreaSqFt(outline)), 0);
  const upperFt = ribbonFt(upperSqFt, spacing.field);
  const onceFt =
    ribbonFt(zones.fieldSqFt, spacing.field) +
    ribbonFt(zones.perimeterSqFt, spacing.perimeter) +
    ribbonFt(zones.cornerSqFt, spacing.corner);
  const levelSqFt = layout.levellingBoardFt / levellingBoard.thicknessIn;
  const levelFt = ribbonFt(levelSqFt, spacing.field);
  const totalFt = fillFt + 2 * onceFt + levelFt + upperFt;
  const most = Math.max(0, ...layout.pieces.map(({ fillIn }) => layersOf(catalogue, fillIn)?.length ?? 0));
  return lineOf({
    id: 'board-adhesive',
    group: 'Attachment',
    item: 'Low-rise foam adhesive in ribbons, 1,500 mL two-part cartridges',
    quantity: totalFt,
    unit: 'ft of ribbon',
    order: whole((totalFt / foamRibbons.cartridgeFt) * (1 + foamRibbons.allowance)),
    orderUnit: 'cartridges',
    basis:
      `no screws in the field: ${job.noScrews?.why ?? ''}. Every interface is one application, 2 to ${2 + most} in the stack: ` +
      `fill ${area(fillSqFt)} ${plainNumber(fillFt)} ft, taper ${plainNumber(onceFt)} ft, cover board ${plainNumber(onceFt)} ft${upperFt > 1 ? `, boards on boards ${area(upperSqFt)} ${plainNumber(upperFt)} ft` : ''}${levelFt > 1 ? `, levelling ${area(levelSqFt)} ${plainNumber(levelFt)} ft` : ''}; ` +
      `ribbons ${spacing.field} in apart in the field (${area(zones.fieldSqFt)}), ${spacing.perimeter} in within ${plainNumber(zones.bandFt, 1)} ft of the edges (${area(zones.perimeterSqFt)}), ${spacing.corner} in at corners (${area(zones.cornerSqFt)}); ` +
      `${foamRibbons.cartridgeFt} ft a cartridge, + ${foamRibbons.allowance * 100} %; the uplift calculation governs`,
    row: foamRibbons,
  });
}

/** Smaller remnants have no screw of their own. */
const SCRAP_SQ_FT = 0.02;

interface ScrewRow {
  lengthIn: number;
  count: number;
  thickIn: number;
}

/** Screws of every board row: its own length from its thick side, its own number from its zone. */
function screwRows(job: Job, zones: WindZones): ScrewRow[] {
  const { given } = job.site;
  const oldIn = keptIn(given);
  const rows = new Map<number, ScrewRow>();
  for (const { outline, coveredSqFt, stackIn, fillIn, highIn, layer, whole: full } of job.layout.pieces) {
    // One pattern goes through the whole stack: what lies under other boards is held with them.
    const sqFt = Math.abs(signedAreaSqFt(outline)) - coveredSqFt;
    if (sqFt < SCRAP_SQ_FT) continue;
    const boardsIn = layer === 0 && coveredSqFt < SCRAP_SQ_FT ? fillIn + highIn : stackIn;
    const thickIn = boardsIn + coverBoard.thicknessIn + oldIn;
    const lengthIn = stockScrewIn(neededScrewIn(thickIn, given.deckThicknessIn, job.hold));
    const least = full
      ? boardDensity.leastOnWhole
      : sqFt < boardDensity.cutUnderSqFt
        ? boardDensity.leastOnCut
        : boardDensity.leastOnWhole;
    const row = rows.get(lengthIn) ?? { lengthIn, count: 0, thickIn };
    row.count += Math.max(least, whole(zoneScrews(sqFt, zones.at(centroid(outline)))));
    row.thickIn = Math.max(row.thickIn, thickIn);
    rows.set(lengthIn, row);
  }
  return [...rows.values()].sort((a, b) => a.lengthIn - b.lengthIn);
}

/** Screws, plates or nails to buy: allowance and whole packs. */
export const packed = (count: number): number =>
  whole((count * (1 + screwStock.allowance)) / screwStock.packCount) * screwStock.packCount;

function screwed(job: Job, zones: WindZones): MaterialLine[] {
  const rows = screwRows(job, zones);
  const { hold } = job;
  const deck = hold.throughPanel ? ` + ${decimalInches(job.site.given.deckThicknessIn, 3)} of deck` : '';
  const lines = rows.map(({ lengthIn, count, thickIn }) =>
    lineOf({
      id: `screw-${lengthIn}`,
      group: 'Attachment',
      item: `Insulation screw ${lengthIn} in`,
      quantity: count,
      unit: 'screws',
      order: packed(count),
      orderUnit: 'screws',
      basis: `rows up to ${decimalInches(thickIn)} thick with cover board${deck} + ${hold.engagementIn} in hold; 4 x 8 board ${boardDensity.field} field, ${boardDensity.perimeter} perimeter (${plainNumber(zones.bandFt, 1)} ft band), ${boardDensity.corner} corner, at least ${boardDensity.leastOnWhole} a board and ${boardDensity.leastOnCut} a small cut; + 5 % in packs of ${screwStock.packCount}; the uplift calculation governs`,
      row: hold,
    }),
  );
  const total = rows.reduce((sum, { count }) => sum + count, 0);
  return [
    ...lines,
    lineOf({
      id: 'board-plates',
      group: 'Attachment',
      item: 'Insulation plates',
      quantity: total,
      unit: 'plates',
      order: packed(total),
      orderUnit: 'plates',
      basis: `one for every screw through the stack (${total}), all layers under one pattern`,
      row: boardDensity,
    }),
  ];
}

/** Screws of the covering itself, where it is held that way and the deck takes it. */
function sheetScrews(job: Job, plan: SheetPlan | null): MaterialLine[] {
  if (plan === null || job.noScrews !== null) return [];
  const rowFt = plan.size.widthFt - plan.size.sideLapFt;
  if (job.attachment?.kind === 'mechanically-attached') {
    const count = whole((seamPlatesPerSq(rowFt, seamPlates.spacingIn) * plan.netSqFt) / 100);
    return [
      lineOf({
        id: 'seam-plates',
        group: 'Attachment',
        item: 'Plates and screws in the seams of the sheet',
        quantity: count,
        unit: 'sets',
        order: packed(count),
        orderUnit: 'sets',
        basis: `rows ${plainNumber(rowFt, 2)} ft apart, ${seamPlates.spacingIn} in on centre = ${plainNumber(seamPlatesPerSq(rowFt, seamPlates.spacingIn), 1)} a square; ${seamPlates.closeSpacingIn} in and half sheets at edges where uplift asks it`,
        row: seamPlates,
      }),
    ];
  }
  if (job.attachment?.kind !== 'nailed') return [];
  const perSq = sheetNailsPerSq(plan.size.widthFt * 12, plan.size.sideLapFt * 12);
  const count = whole((perSq * plan.netSqFt) / 100);
  return [
    lineOf({
      id: 'sheet-nails',
      group: 'Attachment',
      item: 'Roofing nails with caps',
      quantity: count,
      unit: 'nails',
      order: packed(count),
      orderUnit: 'nails',
      basis: `${plainNumber(perSq, 1)} a square: laps ${sheetNails.lapSpacingIn} in and ${sheetNails.rows} rows ${sheetNails.rowSpacingIn} in on centre`,
      row: sheetNails,
    }),
  ];
}

function findingsOf(job: Job): Finding[] {
  const { noScrews, hold, attachment, site } = job;
  const out: Finding[] = [];
  const base = { where: 'the whole section', value: null, limit: null } as const;
  if (noScrews !== null)
    out.push({
      ...base,
      id: hold.hold === 'adhesive' ? 'nothing-drilled' : 'no-field-screws',
      level: 'note',
      message: `Boards are held with adhesive, not screws: ${noScrews.why}.`,
      source: sourceNote(noScrews.row),
    });
  if (noScrews === null && hold.pullTest)
    out.push({
      ...base,
      id: 'pull-test',
      level: 'fix',
      message: `Screws in ${site.given.deckThicknessIn} in of ${deckNames[site.given.deckKind]}: have them pull-tested on this deck before boards are ordered.`,
      source: sourceNote(hold),
    });
  if (noScrews !== null && attachment?.throughDeck)
    out.push({
      ...base,
      id: 'covering-needs-screws',
      level: 'fix',
      message: `The covering is ${attachment.name}, which needs screws or nails that this deck must not take: choose a way of holding it without them.`,
      source: sourceNote(attachment),
    });
  return out;
}

/** How boards and sheet are held: ribbons where nothing may come through, else screws by length. */
export function attachmentLines(
  job: Job,
  plan: SheetPlan | null,
): { lines: readonly MaterialLine[]; findings: readonly Finding[] } {
  const zones = windZones(
    job.site.outline,
    job.site.roof.curbs.map(({ outline }) => outline),
    job.site.given.heightFt,
  );
  const boards = job.noScrews === null ? screwed(job, zones) : [adhered(job, zones)];
  return { lines: [...boards, ...sheetScrews(job, plan)], findings: findingsOf(job) };
}
