import type { Convex } from '../geometry/convex.ts';
import { heightIn, type Plane } from '../geometry/plane.ts';
import { signedAreaSqFt } from '../geometry/vector.ts';
import type { BoardGroup, Point } from '../roof.ts';
import type { Band } from './bands.ts';
import type { LayerPart } from './layers.ts';

/** One cell of the grid of boards on a plane: what is cut from one board, or from one strip. */
export interface Tile {
  kind: 'board' | 'strip';
  group: BoardGroup;
  layer: number;
  /** Number of the plane that the cell lies in, as the layer parts have it. */
  sheet: number;
  outlet: string;
  band: Band;
  rings: Convex[];
  areaSqFt: number;
  coveredSqFt: number;
  /** Flat stock under the layer. */
  flatIn: number;
  /** Thickness of the layer within the cell. */
  leastIn: number;
  mostIn: number;
  stackIn: number;
  plane: Plane;
  axis: Point;
  column: number;
  sliver: boolean;
}

/** A convex part of one band. */
export interface Banded {
  kind: 'board' | 'strip';
  band: Band;
  ring: Convex;
}

/** Cells of all layers. */
export class Cells {
  readonly tiles = new Map<string, Tile>();

  add(
    part: LayerPart,
    { plane, flatIn }: { plane: Plane; flatIn: number },
    group: BoardGroup,
    { kind, band, ring }: Banded,
    column: number,
    axis: Point,
  ): void {
    const key = `${part.sheet}|${band.index}|${column}`;
    let tile = this.tiles.get(key);
    if (tile === undefined) {
      const { layer, outlet, sheet } = part;
      const none = { areaSqFt: 0, coveredSqFt: 0, leastIn: Infinity, mostIn: -Infinity, stackIn: 0, sliver: false };
      tile = { kind, group, layer, sheet, outlet, band, rings: [], flatIn, plane, axis, column, ...none };
      this.tiles.set(key, tile);
    }
    const areaSqFt = signedAreaSqFt(ring);
    tile.rings.push(ring);
    tile.areaSqFt += areaSqFt;
    if (part.covered) tile.coveredSqFt += areaSqFt;
    for (const p of ring) {
      const t = heightIn(plane, p);
      if (t < tile.leastIn) tile.leastIn = t;
      if (t > tile.mostIn) tile.mostIn = t;
      const stack = heightIn(part.total, p);
      if (stack > tile.stackIn) tile.stackIn = stack;
    }
  }
}

/** Distance along the level direction of a plane. */
export function alongLevel({ gx, gy }: Plane, axis: Point): (p: Point) => number {
  const steep = Math.hypot(gx, gy);
  return (p) => (gx * (p[1] - axis[1]) - gy * (p[0] - axis[0])) / steep;
}
