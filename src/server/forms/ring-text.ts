import { parseMeasure } from '../../units/parse-measure.ts';
import { feetInches } from '../../units/print.ts';

type Part = number | string;

/** A plain number as a number, any other text as it was typed: the roof file reads both. */
export function asTyped(text: string): Part {
  const trimmed = text.trim();
  return /^[+-]?(\d+(\.\d+)?|\.\d+)$/.test(trimmed) ? Number(trimmed) : trimmed;
}

/** Values on one line: parted by commas, semicolons or tabs; by spaces where all of them are plain numbers. */
export function partsOf(line: string): Part[] {
  const byMark = line.split(/[,;\t]/).map((part) => part.trim());
  if (byMark.length > 1) return byMark.filter((part) => part !== '').map(asTyped);
  const bySpace = line.trim().split(/\s+/).map(asTyped);
  return bySpace.every((part) => typeof part === 'number') ? bySpace : [line.trim()];
}

export const linesOf = (text: string): string[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');

/** "4 x 4" as two plain numbers, which the box says the unit of; null for any other text. */
export function plainPair(text: string): [number, number] | null {
  const sizes = text.split(/\s*x\s*/i).map(asTyped);
  return sizes.length === 2 && sizes.every((size) => typeof size === 'number') ? (sizes as [number, number]) : null;
}

function sizeOf(text: string): readonly [number, number] | null {
  const size = parseMeasure(text, 'plan');
  return plainPair(text) ?? (size.action === 'accept' ? size.value : null);
}

/** "4 x 4 at 9, 13": a rectangle by its size and the place of its lower left corner. */
function rectangleOf(text: string): [number, number][] | null {
  const parts = /^(.+?)\s+at\s+([^,;]+)[,;]\s*([^,;]+)$/i.exec(text.trim());
  if (parts === null) return null;
  const size = sizeOf(parts[1]);
  const [x, y] = [parseMeasure(parts[2], 'coordinate'), parseMeasure(parts[3], 'coordinate')];
  if (size === null || x.action !== 'accept' || y.action !== 'accept') return null;
  const [wide, deep] = size;
  return [
    [x.value, y.value],
    [x.value + wide, y.value],
    [x.value + wide, y.value + deep],
    [x.value, y.value + deep],
  ];
}

/** Corners from text: one to a line (or parted by semicolons), or a rectangle by size and place. */
export function ringFromText(text: string): unknown {
  const rectangle = rectangleOf(text);
  if (rectangle !== null) return rectangle;
  const rows = text.includes('\n') ? linesOf(text) : text.split(';').filter((row) => row.trim() !== '');
  return rows.map(partsOf);
}

const isPlainPoint = (point: unknown): point is [number, number] =>
  Array.isArray(point) && point.length === 2 && point.every((value) => typeof value === 'number');

/** A rectangle along the axes from its lower left corner, as `rectangleOf` reads it; null for any other ring. */
function rectangleText(ring: readonly unknown[]): string | null {
  if (ring.length !== 4 || !ring.every(isPlainPoint)) return null;
  const [[ax, ay], [bx, by], [cx, cy], [dx, dy]] = ring as [number, number][];
  const square = ay === by && bx === cx && cy === dy && dx === ax && bx > ax && cy > by;
  if (!square) return null;
  const text = `${bx - ax} x ${cy - by} at ${ax}, ${ay}`;
  // Only where reading it again gives the very same corners.
  return JSON.stringify(rectangleOf(text)) === JSON.stringify(ring) ? text : null;
}

export function ringText(value: unknown): string {
  if (!Array.isArray(value)) return value === undefined ? '' : JSON.stringify(value);
  return rectangleText(value) ?? rowsText(value);
}

/** A number that does not end soon as feet and inches, where they say exactly the same: 24.541666... is 24'-6 1/2". */
function shortest(value: unknown): string {
  const text = String(value);
  if (typeof value !== 'number' || text.length < 9) return text;
  const printed = feetInches(value).replace('′', "'").replace('″', '"');
  const reading = parseMeasure(printed, 'coordinate');
  return reading.action === 'accept' && Math.abs(reading.value - value) < 1e-9 ? printed : text;
}

/** Rows of values, one row to a line; places in feet come first in each. */
export const rowsText = (rows: readonly unknown[]): string =>
  rows.map((row) => (Array.isArray(row) ? row.map(shortestPlace).join(', ') : JSON.stringify(row))).join('\n');

const shortestPlace = (value: unknown, i: number): string => (i < 2 ? shortest(value) : String(value));
