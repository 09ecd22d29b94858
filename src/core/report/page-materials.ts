import { feetInches, plainNumber, slopeInWords } from '../../units/print.ts';
import { count } from './page-figures.ts';
import type { BoardLine, FillLine, Layout, MaterialLine, SourceNote } from './types.ts';

export interface MaterialRow {
  item: string;
  order: string;
  net: string;
  basis: string;
  source: SourceNote | null;
}

export interface MaterialGroup {
  group: string;
  lines: readonly MaterialRow[];
}

const rowOf = ({ item, quantity, unit, orderQuantity, orderUnit, basis, source }: MaterialLine): MaterialRow => ({
  item,
  order: `${count(orderQuantity)}${/^\d/.test(orderUnit) ? ' x ' : ' '}${orderUnit}`,
  net: `${count(quantity)} ${unit}`,
  basis,
  source,
});

/** Lines by group, in the order in which the groups first come up. */
export function materialGroups(materials: readonly MaterialLine[]): MaterialGroup[] {
  const groups = new Map<string, MaterialRow[]>();
  for (const line of materials) groups.set(line.group, [...(groups.get(line.group) ?? []), rowOf(line)]);
  return [...groups].map(([group, lines]) => ({ group, lines }));
}

export interface BoardRow {
  mark: string;
  edges: string;
  /** Slope and size of the board. */
  board: string;
  fill: string;
  net: string;
  order: string;
  /** Boards cut, and what is left over of those taken. */
  cut: string;
  waste: string;
}

const inch = (valueIn: number): string => `${plainNumber(valueIn, 4)} in`;

export const boardRows = ({ boards }: Pick<Layout, 'boards'>): BoardRow[] =>
  boards.map(({ mark, lowIn, highIn, fillLayersIn, net, order, layer, cut, wasteShare, ...line }: BoardLine) => ({
    mark: layer === 0 ? mark : `${mark}, on the boards below`,
    edges: `${inch(lowIn)} to ${inch(highIn)}`,
    board: `${slopeInWords(line.slopeInPerFt)}, ${plainNumber(line.widthFt, 2)} x ${plainNumber(line.runFt, 2)} ft`,
    fill: fillLayersIn.length === 0 ? 'none' : fillLayersIn.map(inch).join(' + '),
    net: count(net),
    order: plainNumber(order),
    cut: plainNumber(cut),
    waste: `${plainNumber(100 * wasteShare, 0)} %`,
  }));

/** A shorter line is a corner. */
const LEAST_MITRE_FT = 0.5;

/** What the list of boards does not show: waste, re-use, strips, mitres and ripped rows, a sentence each. */
export function boardNotes({ boardWork, creases }: Pick<Layout, 'boardWork' | 'creases'>): string[] {
  const { net, taken, wasteShare, reusable, rips, strips, staggerFt } = boardWork;
  const inches = (t: number): string => plainNumber(t, 2);
  return [
    `${count(net)} boards’ worth of area takes ${plainNumber(taken)} boards, every piece from a new one: ${plainNumber(100 * wasteShare, 0)} % is left over. Spares come on top.`,
    reusable === 0
      ? ''
      : `Sorting offcuts could save about ${plainNumber(reusable)} boards; that is not taken off the order.`,
    ...rips.map(
      ({ mark, part, useFt, fromIn, toIn, pieces }) =>
        `${plainNumber(pieces)} x the ${part} ${feetInches(useFt)} of ${mark}, from ${inches(fromIn)} to ${inches(toIn)} in.`,
    ),
    ...strips.map(
      ({ highIn, runIn, lengthFt }) =>
        `${feetInches(lengthFt)} of edge strip from 0 to ${inches(highIn)} in, ${inches(runIn)} in wide, along the thin edge of boards that lie on boards.`,
    ),
    mitres(creases),
    taken === 0
      ? ''
      : `Joints of one layer stand ${feetInches(staggerFt)} off those of the layer below: the fill starts with half a board.`,
  ].filter((part) => part !== '');
}

/** Lines along which boards are cut to meet; empty where there are none. */
function mitres(creases: Layout['creases']): string {
  const along = (of: 'valley' | 'ridge'): number =>
    creases.reduce((sum, { kind, lengthFt }) => (kind === of ? sum + lengthFt : sum), 0);
  const lines = (['valley', 'ridge'] as const).flatMap((kind) =>
    along(kind) > LEAST_MITRE_FT ? [`${feetInches(along(kind))} of ${kind}`] : [],
  );
  if (lines.length === 0) return '';
  return `Boards are mitred along ${lines.join(' and ')}: cut each piece to the line on the plan, or ask for valley and ridge boards that come cut.`;
}

export interface FillRow {
  size: string;
  thickness: string;
  area: string;
  order: string;
}

export const fillRows = ({ fill }: Pick<Layout, 'fill'>): FillRow[] =>
  fill.map(({ thicknessIn, areaSqFt, lengthFt, widthFt, order }: FillLine) => ({
    size: `${plainNumber(widthFt, 2)} x ${plainNumber(lengthFt, 2)} ft`,
    thickness: inch(thicknessIn),
    area: `${plainNumber(areaSqFt)} sq ft`,
    order: plainNumber(order),
  }));

/** What a supplier is asked for besides the boards, which have tables of their own; hauling is not a supplier's. */
export const supplierGroups = (materials: readonly MaterialLine[]): MaterialGroup[] =>
  materialGroups(materials.filter(({ id, group }) => group !== 'Tear-off' && !/^(board|fill)-\d/.test(id)));
