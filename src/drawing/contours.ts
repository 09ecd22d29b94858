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
/** Lines run a hair under their height, so that a level crease is met on one side and not on both. */
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

/** Pieces that meet, joined end to end. */
function joined(pieces: readonly [Point, Point][]): Point[][] {
  const left = [...pieces];
  const out: Point[][] = [];
  for (let first = left.pop(); first !== undefined; first = left.pop()) {
    const chain: Point[] = [...first];
    for (let grew = true; grew; ) {
      grew = false;
      for (const end of ['last', 'first'] as const) {
        const tip = end === 'last' ? chain[chain.length - 1] : chain[0];
        const i = left.findIndex(([a, b]) => distanceFt(a, tip) < SAME_FT || distanceFt(b, tip) < SAME_FT);
        if (i < 0) continue;
        const [[a, b]] = left.splice(i, 1);
        const far = distanceFt(a, tip) < SAME_FT ? b : a;
        if (end === 'last') chain.push(far);
        else chain.unshift(far);
        grew = true;
      }
    }
    out.push(chain);
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
