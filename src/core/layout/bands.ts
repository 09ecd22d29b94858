import {
  boardsPerSpare,
  flatStock,
  type TaperGroup,
  taperGroups,
  thickestFillLayerIn,
} from '../../../reference/boards.ts';

const groups: readonly TaperGroup[] = taperGroups;

export const groupOf = (slopeInPerFt: number): TaperGroup | null =>
  groups.find((group) => Math.abs(group.slopeInPerFt - slopeInPerFt) < 1e-9) ?? null;

/** One band of thickness: the stock board that lies in it and the flat fill under that board. */
export interface Band {
  index: number;
  lowIn: number;
  highIn: number;
  boardLowIn: number;
  boardHighIn: number;
  fillIn: number;
}

/** Number of the band that holds a thickness, counted from the group's lowest edge. */
export function bandIndex(group: TaperGroup, thicknessIn: number): number {
  return Math.floor((thicknessIn - group.lowEdgesIn[0]) / (group.slopeInPerFt * group.runFt) + 1e-6);
}

/**
 * The k-th band: thickness [e0 + k r, e0 + (k + 1) r], board k mod n of the group on n r of fill per repeat.
 * Source: repeat rule of tapered groups, common practice.
 */
export function bandOf(group: TaperGroup, index: number): Band {
  const rise = group.slopeInPerFt * group.runFt;
  const n = group.lowEdgesIn.length;
  const boardLowIn = group.lowEdgesIn[((index % n) + n) % n];
  const fillIn = group.fillStepIn * Math.floor(index / n);
  const lowIn = group.lowEdgesIn[0] + index * rise;
  return { index, lowIn, highIn: lowIn + rise, boardLowIn, boardHighIn: boardLowIn + rise, fillIn };
}

/** Whole stock layers that make a fill, thickest at the bottom; thick fill is split so that joints can stagger. */
export function layersOf(fillIn: number): number[] {
  const stock = flatStock.map(({ thicknessIn }) => thicknessIn);
  if (fillIn < 1e-9) return [];
  const count = Math.max(1, Math.ceil(fillIn / thickestFillLayerIn - 1e-9));
  const layers: number[] = [];
  let left = fillIn;
  for (let i = count; i > 0; i--) {
    const fits = stock.filter(
      (t) => t <= left + 1e-9 && left - t <= (i - 1) * thickestFillLayerIn + 1e-9 && t <= thickestFillLayerIn + 1e-9,
    );
    const even = left / i;
    const pick = fits.sort((p, q) => Math.abs(p - even) - Math.abs(q - even))[0];
    if (pick === undefined) break;
    layers.push(pick);
    left -= pick;
  }
  return layers.sort((a, b) => b - a);
}

/** Boards to buy for so many pieces: every piece from a new board, and one spare per ten. */
export const orderOf = (pieces: number): number => pieces + Math.ceil(pieces / boardsPerSpare - 1e-9);

/** The thickness itself is the mark: "0.5-1.5 +2". */
export function markOf(lowIn: number, highIn: number, fillIn: number): string {
  const n = (v: number): string => String(Math.round(v * 10000) / 10000);
  return fillIn > 1e-9 ? `${n(lowIn)}-${n(highIn)} +${n(fillIn)}` : `${n(lowIn)}-${n(highIn)}`;
}
