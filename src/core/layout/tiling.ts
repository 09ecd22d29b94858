import { flatStock, type TaperGroup } from '../../../reference/boards.ts';
import { unite } from '../geometry/boolean.ts';
import { type Convex, cut, isSliver } from '../geometry/convex.ts';
import { heightIn, type Plane } from '../geometry/plane.ts';
import { centroid, signedAreaSqFt } from '../geometry/vector.ts';
import type { BoardLine, BoardPiece, FillLine } from '../report/types.ts';
import type { Point, Ring } from '../roof.ts';
import type { Patch } from '../surface/patch.ts';
import { type Band, bandIndex, bandOf as bandNumber, layersOf, markOf, orderOf } from './bands.ts';

/** Pieces smaller than this are trimmed from the board beside them. */
const SCRAP_SQ_FT = 0.02;

interface Tile {
  band: Band;
  rings: Ring[];
  areaSqFt: number;
}

/** Bands of one patch, cut where its thickness crosses a board edge. */
function bandsOfPatch(ring: Convex, plane: Plane, group: TaperGroup): { band: Band; ring: Convex }[] {
  const heights = ring.map((p) => heightIn(plane, p));
  const steep = Math.max(Math.hypot(plane.gx, plane.gy), 1e-12);
  const out: { band: Band; ring: Convex }[] = [];
  for (let k = bandIndex(group, Math.min(...heights)); k <= bandIndex(group, Math.max(...heights)); k++) {
    const band = bandNumber(group, k);
    const above = cut(ring, (p) => (heightIn(plane, p) - band.lowIn) / steep);
    const within = above.length < 3 ? above : cut(above, (p) => (band.highIn - heightIn(plane, p)) / steep);
    if (!isSliver(within)) out.push({ band, ring: within });
  }
  return out;
}

/** Columns of board width along the level direction of a plane, with a joint on the outlet's axis. */
function columns(ring: Convex, plane: Plane, axis: Point, widthFt: number): { column: number; ring: Convex }[] {
  const steep = Math.hypot(plane.gx, plane.gy);
  const place = (p: Point): number => (plane.gx * (p[1] - axis[1]) - plane.gy * (p[0] - axis[0])) / steep;
  const places = ring.map(place);
  const out: { column: number; ring: Convex }[] = [];
  const first = Math.floor(Math.min(...places) / widthFt + 1e-6);
  const last = Math.ceil(Math.max(...places) / widthFt - 1e-6) - 1;
  for (let c = first; c <= last; c++) {
    const right = cut(ring, (p) => place(p) - c * widthFt);
    const part = right.length < 3 ? right : cut(right, (p) => (c + 1) * widthFt - place(p));
    if (!isSliver(part)) out.push({ column: c, ring: part });
  }
  return out;
}

export interface Tiling {
  pieces: BoardPiece[];
  boards: BoardLine[];
  fill: FillLine[];
}

/**
 * Boards over a thickness: bands shared by all planes, cut at valleys, hips, edges and curbs.
 * @param axisOf where the joints of an outlet's boards line up (the outlet itself)
 * @param baseIn flat layer under everything, ordered as stock layers
 */
export function tile(
  patches: readonly Patch[],
  group: TaperGroup,
  axisOf: (outlet: string) => Point,
  baseIn: number,
): Tiling {
  const tiles = new Map<string, Tile>();
  for (const { ring, plane, outlet } of patches) {
    const own: Plane = { ...plane, atOriginIn: plane.atOriginIn - baseIn };
    const facing = `${plane.gx.toFixed(6)},${plane.gy.toFixed(6)}`;
    for (const { band, ring: strip } of bandsOfPatch(ring, own, group)) {
      for (const { column, ring: part } of columns(strip, plane, axisOf(outlet), group.widthFt)) {
        const at = heightIn(plane, [0, 0]).toFixed(4);
        const key = `${outlet}|${facing}|${at}|${band.index}|${column}`;
        const tile = tiles.get(key) ?? { band, rings: [], areaSqFt: 0 };
        tile.rings.push(part);
        tile.areaSqFt += signedAreaSqFt(part);
        tiles.set(key, tile);
      }
    }
  }
  const whole = group.runFt * group.widthFt;
  const kept = [...tiles.values()].filter(({ areaSqFt }) => areaSqFt > SCRAP_SQ_FT);
  return {
    pieces: kept.flatMap((t) => piecesOf(t, whole, baseIn)),
    boards: boardLines(kept, group, baseIn),
    fill: fillLines(kept, baseIn),
  };
}

function piecesOf({ band, rings, areaSqFt }: Tile, whole: number, baseIn: number): BoardPiece[] {
  const outlines = rings.length === 1 ? [rings[0]] : unite(rings).map(({ outer }) => outer);
  const fillIn = band.fillIn + baseIn;
  return outlines.map((outline) => ({
    outline,
    lowIn: band.boardLowIn,
    highIn: band.boardHighIn,
    fillIn,
    mark: markOf(band.boardLowIn, band.boardHighIn, fillIn),
    whole: areaSqFt > whole - 1e-3,
    labelAt: centroid(outline),
  }));
}

function boardLines(tiles: readonly Tile[], group: TaperGroup, baseIn: number): BoardLine[] {
  const byBand = new Map<number, { band: Band; areaSqFt: number; pieces: number }>();
  for (const { band, areaSqFt } of tiles) {
    const line = byBand.get(band.index) ?? { band, areaSqFt: 0, pieces: 0 };
    byBand.set(band.index, { band, areaSqFt: line.areaSqFt + areaSqFt, pieces: line.pieces + 1 });
  }
  return [...byBand.values()]
    .sort((a, b) => a.band.index - b.band.index)
    .map(({ band, areaSqFt, pieces }) => ({
      lowIn: band.boardLowIn,
      highIn: band.boardHighIn,
      slopeInPerFt: group.slopeInPerFt,
      fillLayersIn: [...layersOf(baseIn), ...layersOf(band.fillIn)],
      net: areaSqFt / (group.runFt * group.widthFt),
      order: orderOf(pieces),
      mark: markOf(band.boardLowIn, band.boardHighIn, band.fillIn + baseIn),
    }));
}

/** Flat stock under the bands, per layer thickness. */
function fillLines(tiles: readonly Tile[], baseIn: number): FillLine[] {
  const byThickness = new Map<number, number>();
  for (const { band, areaSqFt } of tiles) {
    for (const layer of [...layersOf(baseIn), ...layersOf(band.fillIn)]) {
      byThickness.set(layer, (byThickness.get(layer) ?? 0) + areaSqFt);
    }
  }
  return [...byThickness]
    .sort(([a], [b]) => a - b)
    .map(([thicknessIn, areaSqFt]) => {
      const stock = flatStock.find((row) => Math.abs(row.thicknessIn - thicknessIn) < 1e-9) ?? flatStock[0];
      return { thicknessIn, areaSqFt, order: Math.ceil(areaSqFt / (stock.lengthFt * stock.widthFt) - 1e-9) };
    });
}
