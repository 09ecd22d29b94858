import { saysNotKnown } from '../../units/tidy.ts';
import { asTyped, linesOf, partsOf, plainPair, ringFromText, ringText, rowsText } from './ring-text.ts';
import type { FieldKind } from './spec.ts';

const json = (value: unknown): string => (typeof value === 'string' ? value : JSON.stringify(value));

function outlineText(value: unknown): string {
  if (Array.isArray(value)) return rowsText(value);
  const walk = typeof value === 'object' && value !== null ? (value as { walk?: unknown }).walk : undefined;
  return typeof walk === 'string' ? walk : json(value);
}

function towardText(value: unknown): string {
  const side = typeof value === 'object' && value !== null ? (value as { side?: unknown }).side : undefined;
  return side === undefined ? json(value) : `side ${side}`;
}

/** A value of the roof file as it stands in a box; what does not fit the kind is shown as it stands in the file. */
export function textOf(kind: FieldKind, value: unknown): string {
  if (value === undefined || value === null) return '';
  switch (kind.kind) {
    case 'outline':
      return outlineText(value);
    case 'ring':
      return ringText(value);
    case 'readings':
      return Array.isArray(value) ? rowsText(value) : json(value);
    case 'toward':
      return towardText(value);
    case 'pair':
      return Array.isArray(value) ? value.join(' x ') : json(value);
    case 'distances':
      return Array.isArray(value) ? (value.length === 0 ? 'none' : value.join(', ')) : json(value);
    case 'ends':
    case 'point':
    case 'place-and-height':
      return Array.isArray(value) ? value.join(', ') : json(value);
    case 'yes-no':
      return value === true ? 'yes' : value === false ? 'no' : json(value);
    default:
      return json(value);
  }
}

/** Corners where every row holds two values, else the walk as it was typed. */
function outlineOf(text: string): unknown {
  const rows = text.includes('\n') ? linesOf(text) : text.split(';').filter((row) => row.trim() !== '');
  const parts = rows.map(partsOf);
  const corners = parts.every((row) => row.length === 2) && !/left|right/i.test(text);
  return corners ? parts : { walk: text };
}

function distancesOf(text: string): unknown {
  return /^none$/i.test(text) ? [] : partsOf(text);
}

/** What a box holds, for the roof file; undefined takes the key away. Text that cannot be read stays text. */
export function fileValue(kind: FieldKind, typed: string): unknown {
  const text = typed.replaceAll('\r\n', '\n').trim();
  if (text === '') return undefined;
  if (kind.kind !== 'text' && saysNotKnown(text)) return text;
  switch (kind.kind) {
    case 'outline':
      return outlineOf(text);
    case 'ring':
      return ringFromText(text);
    case 'readings':
      return linesOf(text).map(partsOf);
    case 'pair':
      return plainPair(text) ?? text;
    case 'distances':
      return distancesOf(text);
    case 'point':
    case 'place-and-height':
      return partsOf(text);
    case 'ends': {
      const parts = partsOf(text);
      return parts.length === 1 ? parts[0] : parts;
    }
    case 'toward': {
      const side = /^side (\d+)$/.exec(text);
      return side === null ? asTyped(text) : { side: Number(side[1]) };
    }
    case 'yes-no':
      return text === 'yes' ? true : text === 'no' ? false : text;
    case 'measure':
    case 'side':
    case 'whole':
    case 'share':
      return asTyped(text);
    default:
      return text;
  }
}
