import type { Cited } from '../../../reference/sources.ts';
import { sourceNote } from '../finding.ts';
import type { MaterialLine } from '../report/types.ts';

export type Group =
  | 'Tear-off'
  | 'Wood and deck'
  | 'Deck sheet'
  | 'Boards'
  | 'Attachment'
  | 'Membrane'
  | 'Flashings'
  | 'Adhesives and sealants'
  | 'Edges'
  | 'Water';

export interface LineDraft {
  id: string;
  group: Group;
  item: string;
  /** Net amount on the roof. */
  quantity: number;
  unit: string;
  /** What to buy, in the unit in which it is sold. */
  order: number;
  orderUnit: string;
  basis: string;
  row: Cited | null;
}

/** A line of the material list from its parts. */
export function lineOf({ order, row, ...rest }: LineDraft): MaterialLine {
  return { ...rest, orderQuantity: order, source: row === null ? null : sourceNote(row) };
}

/** Whole pieces, not one more for a rounding error. */
export const whole = (amount: number): number => Math.ceil(amount - 1e-9);

/** A count with its noun: "1 wall", "3 walls". */
export const counted = (count: number, noun: string, plural = `${noun}s`): string =>
  `${count} ${count === 1 ? noun : plural}`;

/** Text as a part of an id. */
export const slug = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
