import { offset, unite } from '../geometry/boolean.ts';
import { type Convex, cut, isSliver } from '../geometry/convex.ts';
import { centroid, direction, perimeterFt, signedAreaSqFt } from '../geometry/vector.ts';
import type { BoardPiece } from '../report/types.ts';
import type { Ring } from '../roof.ts';
import { fused } from '../surface/fuse.ts';
import { type Band, markOf } from './bands.ts';
import type { Catalogue } from './catalogue.ts';
import type { Tile } from './cells.ts';

/** True where a convex ring keeps something when every side moves in by this much. */
function keepsConvex(ring: Convex, byFt: number): boolean {
  let rest: Convex = ring;
  for (let i = 0; i < ring.length && rest.length >= 3; i++) {
    const a = ring[i];
    const [dx, dy] = direction(a, ring[(i + 1) % ring.length]);
    rest = cut(rest, ([x, y]) => (y - a[1]) * dx - (x - a[0]) * dy - byFt);
  }
  return !isSliver(rest);
}

/**
 * True where no circle of this diameter lies in the outline.
 * A circle is between area / perimeter and twice that in radius on a convex outline; in between, the sides are moved in.
 */
export function isTooSmall(outline: Ring, diameterFt: number, convex: boolean): boolean {
  const radiusFt = diameterFt / 2;
  const areaSqFt = Math.abs(signedAreaSqFt(outline));
  const perRound = areaSqFt / Math.max(perimeterFt(outline), 1e-9);
  if (perRound >= radiusFt) return false;
  if (convex) return 2 * perRound < radiusFt || !keepsConvex(outline, radiusFt);
  return offset(outline, -radiusFt).length === 0;
}

const LEVEL = { atOriginIn: 0, gx: 0, gy: 0 };

/** Outlines of the parts of one board: parts that touch become one piece, but a board round a curb stays in its parts. */
export function outlinesOf(rings: readonly Convex[]): readonly Ring[] {
  if (rings.length === 1) return rings;
  // Most parts lie side by side and make a convex whole: that needs no general union.
  const joined = fused(rings.map((ring) => ({ ring, plane: LEVEL, outlet: '' }))).map(({ ring }) => ring);
  if (joined.length === 1) return joined;
  const regions = unite(joined);
  return regions.some(({ holes }) => holes.length > 0) ? rings : regions.map(({ outer }) => outer);
}

/** The pieces of one cell; the cell is marked where all of them are too small to be laid as boards. */
export function piecesOf(cell: Tile, { leastPieceIn }: Catalogue, markOfBand: MarkOfBand): BoardPiece[] {
  const { kind, layer, band, rings, group, coveredSqFt, stackIn } = cell;
  const { boardLowIn: lowIn, boardHighIn: highIn } = band;
  const fillIn = band.fillIn + cell.flatIn;
  const outlines = outlinesOf(rings);
  const fromIn = Math.max(lowIn, cell.leastIn - band.fillIn);
  const toIn = Math.min(highIn, cell.mostIn - band.fillIn);
  const mark = markOfBand(band, fillIn);
  const whole = cell.areaSqFt > group.runFt * group.widthFt - 1e-3;
  let laid = kind === 'strip';
  const pieces: BoardPiece[] = [];
  for (const outline of outlines) {
    const sliver = kind === 'board' && !whole && isTooSmall(outline, leastPieceIn / 12, rings.length === 1);
    if (!sliver) laid = true;
    // All keys in one literal: thousands of pieces are made, and a spread of this size is slow.
    pieces.push({
      outline,
      kind,
      layer,
      lowIn,
      highIn,
      fillIn,
      fromIn,
      toIn,
      stackIn,
      coveredSqFt: coveredSqFt / outlines.length,
      mark,
      whole,
      sliver,
      labelAt: centroid(outline),
    });
  }
  cell.sliver = !laid;
  return pieces;
}

type MarkOfBand = (band: Band, fillIn: number) => string;

/** Marks are made once for each band and fill. */
export function marks(): MarkOfBand {
  const known = new Map<Band, { fillIn: number; mark: string }[]>();
  return (band, fillIn) => {
    const own = known.get(band) ?? [];
    if (own.length === 0) known.set(band, own);
    const same = own.find((one) => one.fillIn === fillIn);
    if (same !== undefined) return same.mark;
    const mark = markOf(band.boardLowIn, band.boardHighIn, fillIn);
    own.push({ fillIn, mark });
    return mark;
  };
}
