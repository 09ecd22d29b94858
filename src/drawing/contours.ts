import { slopeInPerFt } from '../core/geometry/plane.ts';
import { distanceFt } from '../core/geometry/vector.ts';
import type { FacetReport, Point } from '../core/report/types.ts';
import { alongRay, stretchesInside } from './crossings.ts';

/** A line of one height over a surface. */
export interface Contour {
  /** Above the lowest point of the surface. */
  heightIn: number;
  points: readonly Point[];
}

type Facet = Pick<FacetReport, 'outline' | 'holes' | 'plane'>;

/** Flatter planes than this carry no lines. */
const LEVEL_IN_PER_FT = 1e-4;
/** Lines run a hair under their height, so that a level ridge of that height is met: once from either side. */
const UNDER_IN = 2e-5;
const SAME_FT = 5e-3;

/** Steps between lines, finest first. */
const STEPS_IN = [0.5, 1, 2, 3, 6, 12, 24] as const;
/** More lines than this are a grey, not a drawing. */
const MOST_LINES = 14;

/**
 * The finest step of heights whose lines stay apart on the sheet.
 * @param rangeIn from the lowest to the highest point
 * @param steepest of the planes, in/ft
 * @param apartFt least distance between two lines on the sheet
 */
export function contourStepIn(rangeIn: number, steepest: number, apartFt: number): number {
  const fits = (step: number): boolean => rangeIn / step <= MOST_LINES && step / Math.max(steepest, 1e-9) >= apartFt;
  return STEPS_IN.find(fits) ?? STEPS_IN[STEPS_IN.length - 1];
}

/** Pieces of one height in every plane: straight, cut at the plane's own outline. */
function piecesAt(facets: readonly Facet[], zIn: number): [Point, Point][] {
  return facets.flatMap(({ outline, holes, plane }): [Point, Point][] => {
    const steep = slopeInPerFt(plane);
    if (steep < LEVEL_IN_PER_FT) return [];
    const offFt = (zIn - plane.atOriginIn) / steep;
    const [nx, ny] = [plane.gx / steep, plane.gy / steep];
    const ray = { at: [nx * offFt, ny * offFt] as Point, toward: [-ny, nx] as Point };
    return stretchesInside(ray, [outline, ...holes]).map(([a, b]) => [alongRay(ray, a), alongRay(ray, b)]);
  });
}

const cellOf = ([x, y]: Point): [number, number] => [Math.round(x / CELL_FT), Math.round(y / CELL_FT)];
const CELL_FT = 0.05;

/** Pieces by the cells in which their ends lie, so that neighbours are found without a look at all of them. */
class PiecesByEnd {
  readonly #cells = new Map<string, Set<number>>();
  readonly #pieces: readonly [Point, Point][];

  constructor(pieces: readonly [Point, Point][]) {
    this.#pieces = pieces;
    pieces.forEach((piece, i) => {
      for (const end of piece) {
        const key = cellOf(end).join();
        this.#cells.set(key, (this.#cells.get(key) ?? new Set()).add(i));
      }
    });
  }

  /** Some piece with an end at a point, taken out; null where there is none. */
  take(tip: Point): [Point, Point] | null {
    const [cx, cy] = cellOf(tip);
    for (const dx of [0, -1, 1]) {
      for (const dy of [0, -1, 1]) {
        for (const i of this.#cells.get([cx + dx, cy + dy].join()) ?? []) {
          const [a, b] = this.#pieces[i];
          if (distanceFt(a, tip) > SAME_FT && distanceFt(b, tip) > SAME_FT) continue;
          this.drop(i);
          return distanceFt(a, tip) <= SAME_FT ? [a, b] : [b, a];
        }
      }
    }
    return null;
  }

  drop(i: number): void {
    for (const end of this.#pieces[i]) this.#cells.get(cellOf(end).join())?.delete(i);
  }

  has(i: number): boolean {
    return this.#cells.get(cellOf(this.#pieces[i][0]).join())?.has(i) ?? false;
  }
}

const pieceKey = (piece: readonly [Point, Point]): string =>
  piece
    .map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`)
    .sort()
    .join();

/** Pieces that meet, joined end to end; what two planes give twice is taken once. */
function joined(all: readonly [Point, Point][]): Point[][] {
  const pieces = [...new Map(all.map((piece) => [pieceKey(piece), piece])).values()];
  const left = new PiecesByEnd(pieces);
  const out: Point[][] = [];
  for (const [i, piece] of pieces.entries()) {
    if (!left.has(i)) continue;
    left.drop(i);
    const [head, tail] = piece;
    const grown = (from: Point): Point[] => {
      const points: Point[] = [];
      for (let next = left.take(from); next !== null; next = left.take(next[1])) points.push(next[1]);
      return points;
    };
    const after = grown(tail);
    out.push([...grown(head).reverse(), head, tail, ...after]);
  }
  return out;
}

/**
 * Lines of equal height over a surface of planes, exact: where each plane has the height, inside its outline.
 * @param lowIn height that counts as nothing
 */
export function contoursOf(facets: readonly Facet[], lowIn: number, highIn: number, stepIn: number): Contour[] {
  const out: Contour[] = [];
  for (let k = 1; k * stepIn < highIn - lowIn + 1e-6; k++) {
    for (const points of joined(piecesAt(facets, lowIn + k * stepIn - UNDER_IN)))
      out.push({ heightIn: k * stepIn, points });
  }
  return out;
}
