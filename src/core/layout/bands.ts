import type { BoardGroup } from '../roof.ts';
import type { Catalogue } from './catalogue.ts';

/** One band of thickness: the stock board that lies in it and the flat fill under that board. */
export interface Band {
  index: number;
  lowIn: number;
  highIn: number;
  boardLowIn: number;
  boardHighIn: number;
  fillIn: number;
}

/**
 * The k-th band: thickness [e0 + k r, e0 + (k + 1) r], board k mod n of the group on n r of fill per repeat.
 * @param index from 0 up
 * Source: repeat rule of tapered groups, common practice.
 */
export function bandOf(group: BoardGroup, index: number): Band {
  const rise = group.slopeInPerFt * group.runFt;
  const n = group.lowEdgesIn.length;
  const boardLowIn = group.lowEdgesIn[index % n];
  const fillIn = group.fillStepIn * Math.floor(index / n);
  const lowIn = group.lowEdgesIn[0] + index * rise;
  return { index, lowIn, highIn: lowIn + rise, boardLowIn, boardHighIn: boardLowIn + rise, fillIn };
}

const MOST_LAYERS = 24;

/** The thickness nearest to an even share with which the layers that are left can still make up the rest. */
function split(fillIn: number, count: number, stock: readonly number[], thickestIn: number): number[] | null {
  const layers: number[] = [];
  let left = fillIn;
  for (let i = count; i > 0; i--) {
    const even = left / i;
    const fits = stock.filter((t) => t <= left + 1e-9 && left - t <= (i - 1) * thickestIn + 1e-9);
    const pick = fits.sort((p, q) => Math.abs(p - even) - Math.abs(q - even))[0];
    if (pick === undefined) return null;
    layers.push(pick);
    left -= pick;
  }
  return left < 1e-9 ? layers.sort((a, b) => b - a) : null;
}

/**
 * Stock layers that make a fill, as few as may be, thickest at the bottom; none is thicker than a layer may be, so thick
 * fill is split and its joints can stagger. Null where the stock does not make this thickness.
 */
export function layersOf({ flat, thickestFillLayerIn }: Catalogue, fillIn: number): readonly number[] | null {
  if (fillIn < 1e-9) return [];
  const stock = [...new Set(flat.map(({ thicknessIn }) => thicknessIn))].filter((t) => t <= thickestFillLayerIn + 1e-9);
  const thickest = Math.max(0, ...stock);
  if (thickest === 0) return null;
  for (let count = Math.ceil(fillIn / thickest - 1e-9); count <= MOST_LAYERS; count++) {
    const layers = split(fillIn, Math.max(1, count), stock, thickest);
    if (layers !== null) return layers;
  }
  return null;
}

/** The thickness itself is the mark: "0.5-1.5 +2". */
export function markOf(lowIn: number, highIn: number, fillIn: number): string {
  const n = (v: number): string => String(Math.round(v * 10000) / 10000);
  return fillIn > 1e-9 ? `${n(lowIn)}-${n(highIn)} +${n(fillIn)}` : `${n(lowIn)}-${n(highIn)}`;
}
