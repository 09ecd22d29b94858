import { plainNumber } from '../../units/print.ts';
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
  fill: string;
  net: string;
  order: string;
}

const inch = (valueIn: number): string => `${plainNumber(valueIn, 4)} in`;

export const boardRows = ({ boards }: Pick<Layout, 'boards'>): BoardRow[] =>
  boards.map(({ mark, lowIn, highIn, fillLayersIn, net, order }: BoardLine) => ({
    mark,
    edges: `${inch(lowIn)} to ${inch(highIn)}`,
    fill: fillLayersIn.length === 0 ? 'none' : fillLayersIn.map(inch).join(' + '),
    net: count(net),
    order: plainNumber(order),
  }));

export interface FillRow {
  thickness: string;
  area: string;
  order: string;
}

export const fillRows = ({ fill }: Pick<Layout, 'fill'>): FillRow[] =>
  fill.map(({ thicknessIn, areaSqFt, order }: FillLine) => ({
    thickness: inch(thicknessIn),
    area: `${plainNumber(areaSqFt)} sq ft`,
    order: plainNumber(order),
  }));

/** What a supplier is asked for besides the boards, which have tables of their own; hauling is not a supplier's. */
export const supplierGroups = (materials: readonly MaterialLine[]): MaterialGroup[] =>
  materialGroups(materials.filter(({ id, group }) => group !== 'Tear-off' && !/^(board|fill)-\d/.test(id)));
