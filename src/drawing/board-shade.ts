import type { BoardPiece, Layout } from '../core/report/types.ts';
import { type Fill, greys } from './pens.ts';

/** Mean thickness of a board with its fill. */
const thicknessOf = ({ lowIn, highIn, fillIn }: BoardPiece): number => fillIn + (lowIn + highIn) / 2;

/** Grey of a thickness: the thinnest boards of the layout are the lightest. */
export function shadeOf(pieces: readonly BoardPiece[]): (piece: BoardPiece) => Fill {
  const steps = [...new Set(pieces.map((piece) => thicknessOf(piece).toFixed(3)))].map(Number).sort((a, b) => a - b);
  const last = Math.max(steps.length - 1, 1);
  const range = (steps.at(-1) ?? 0) - (steps[0] ?? 0);
  return (piece) => {
    const share = range === 0 ? 0 : (thicknessOf(piece) - steps[0]) / range;
    const step = last < greys.length ? Math.round(share * last) : Math.round(share * (greys.length - 1));
    return `grey-${Math.min(step, greys.length - 1)}` as Fill;
  };
}

/** Pieces of one thickness and layer together: the boards on the ground first, thin to thick. */
export function byMark(pieces: readonly BoardPiece[]): BoardPiece[][] {
  const groups = new Map<string, BoardPiece[]>();
  for (const piece of pieces) {
    const key = `${piece.layer}|${piece.mark}`;
    const own = groups.get(key);
    if (own) own.push(piece);
    else groups.set(key, [piece]);
  }
  return [...groups.values()].sort((a, b) => a[0].layer - b[0].layer || thicknessOf(a[0]) - thicknessOf(b[0]));
}

/** A mark as it stands in a list: boards on other boards, and edge strips, say so. */
export const markWords = ({ mark, layer, kind }: Pick<BoardPiece, 'mark' | 'layer' | 'kind'>): string =>
  [mark, kind === 'strip' ? 'edge strip' : '', layer === 0 ? '' : 'on the boards below'].filter(Boolean).join(', ');

/** Grey and mark of every thickness, under the plan. */
export interface BoardKeyRow {
  fill: Fill;
  mark: string;
}

export function boardKey(layout: Layout): BoardKeyRow[] {
  const shade = shadeOf(layout.pieces);
  return byMark(layout.pieces).map(([piece]) => ({ fill: shade(piece), mark: markWords(piece) }));
}
