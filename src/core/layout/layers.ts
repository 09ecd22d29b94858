import type { Convex } from '../geometry/convex.ts';
import { heightIn, type Plane } from '../geometry/plane.ts';
import type { Point } from '../roof.ts';
import type { Patch } from '../surface/patch.ts';
import type { SlopePattern } from '../taper/pattern.ts';

/** One layer of boards over a convex piece of the plan. */
export interface LayerPart {
  ring: Convex;
  outlet: string;
  /** 0 = on the ground. */
  layer: number;
  /** Thickness of this layer. */
  plane: Plane;
  /** Thickness of all layers together. */
  total: Plane;
  /** A further layer lies on this one. */
  covered: boolean;
  /** Parts with the same number lie in one plane of one outlet and layer: their boards run on from part to part. */
  sheet: number;
}

const SAME_GRADIENT = 1e-6;
const SAME_HEIGHT_IN = 1e-3;

/** The board layers that make a plane of a pattern, bottom first; a plane that is no sector of it is one layer. */
export function layersOfPlane(pattern: SlopePattern, { gx, gy }: Plane): readonly Point[] {
  const same = pattern.sectors.find(
    (sector) => Math.abs(sector.gx - gx) < SAME_GRADIENT && Math.abs(sector.gy - gy) < SAME_GRADIENT,
  );
  return same?.layers ?? [[gx, gy]];
}

/** Numbers planes as they come: planes of one owner that are the same near a point have the same number. */
class PlaneNumbers {
  private readonly known = new Map<string, { plane: Plane; atIn: number; id: number }[]>();
  private next = 0;

  numberOf(owner: string, plane: Plane, near: Point): number {
    const list = this.known.get(owner) ?? [];
    if (list.length === 0) this.known.set(owner, list);
    const atIn = heightIn(plane, near);
    const same = list.find(
      (other) =>
        Math.abs(other.plane.gx - plane.gx) < SAME_GRADIENT &&
        Math.abs(other.plane.gy - plane.gy) < SAME_GRADIENT &&
        Math.abs(other.atIn - atIn) < SAME_HEIGHT_IN,
    );
    if (same !== undefined) return same.id;
    list.push({ plane, atIn, id: this.next });
    return this.next++;
  }
}

const risesBy = ([gx, gy]: Point, [x, y]: Point): number => gx * x + gy * y;

/**
 * A thickness as layers of boards. Every layer but the lowest is nothing along the line where its plane begins (a cricket's
 * edge, a valley) and the lowest takes what is left, so that its boards run on under a cricket from the field beside it.
 * Together the layers are the thickness, and each covers its planes once.
 * @param axisOf a point of the outlet
 * @param layersAt gradients of the layers of an outlet's plane, bottom first
 */
export function layerParts(
  patches: readonly Patch[],
  axisOf: (outlet: string) => Point,
  layersAt: (outlet: string, plane: Plane) => readonly Point[],
): LayerPart[] {
  const planes = new PlaneNumbers();
  const facets = new Map<number, Patch[]>();
  for (const patch of patches) {
    const id = planes.numberOf(patch.outlet, patch.plane, axisOf(patch.outlet));
    const own = facets.get(id);
    if (own) own.push(patch);
    else facets.set(id, [patch]);
  }
  const sheets = new PlaneNumbers();
  return [...facets.values()].flatMap((facet) => {
    const { outlet, plane: total } = facet[0];
    const gradients = layersAt(outlet, total);
    const upper = gradients.slice(1).map((g): Plane => {
      const rises = facet.flatMap(({ ring }) => ring.map((p) => risesBy(g, p)));
      return { atOriginIn: -rises.reduce((a, b) => Math.min(a, b)), gx: g[0], gy: g[1] };
    });
    const bottom = upper.reduce(
      (rest, { atOriginIn, gx, gy }): Plane => ({
        atOriginIn: rest.atOriginIn - atOriginIn,
        gx: rest.gx - gx,
        gy: rest.gy - gy,
      }),
      total,
    );
    return [bottom, ...upper].flatMap((plane, layer): LayerPart[] => {
      const sheet = sheets.numberOf(`${outlet}|${layer}`, plane, axisOf(outlet));
      const covered = layer < upper.length;
      return facet.map((patch) => ({ ring: patch.ring, outlet, layer, plane, total: patch.plane, covered, sheet }));
    });
  });
}
