import type { Ring } from '../../core/roof.ts';
import { edgeKinds } from '../../input/choices.ts';
import { parseRoofObject } from '../../input/parse-roof.ts';
import { compassPoint, feetInches } from '../../units/print.ts';
import { valueAt } from './paths.ts';

/** The corners of the file's perimeter; null while it cannot be read. */
function ringOf(file: unknown): Ring | null {
  const parsed = parseRoofObject({ version: 1, outline: valueAt(file, 'outline') });
  return parsed.ok ? parsed.roof.outline : null;
}

function kindOfSide(file: unknown, side: number): string | null {
  const edges = valueAt(file, 'edges');
  if (!Array.isArray(edges)) return null;
  const kind = edges.find((edge) => edge?.side === side)?.kind;
  return typeof kind === 'string' && Object.hasOwn(edgeKinds, kind) ? kind.replaceAll('-', ' ') : null;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Every side in words: "Gutter side, 30′-0″ running E (side 0)". */
export function sideWords(file: unknown): string[] {
  const ring = ringOf(file) ?? [];
  return ring.map(([x, y], side) => {
    const [toX, toY] = ring[(side + 1) % ring.length];
    const runs = compassPoint((Math.atan2(toX - x, toY - y) * 180) / Math.PI);
    const length = feetInches(Math.hypot(toX - x, toY - y));
    const kind = kindOfSide(file, side);
    const run = `${length} running ${runs}`;
    return kind === null ? `Side ${side}, ${run}` : `${capital(kind)} side, ${run} (side ${side})`;
  });
}
