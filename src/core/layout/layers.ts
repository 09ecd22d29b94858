import type { Convex } from '../geometry/convex.ts';
import { heightIn, type Plane } from '../geometry/plane.ts';
import { type Box, boxOf, cross, direction, distanceFt, dot } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';
import type { Patch } from '../surface/patch.ts';
import type { SlopePattern } from '../taper/pattern.ts';

/** One layer of boards over a convex piece of the plan. */
export interface LayerPart {
  ring: Convex;
  /** The outlet that its joints line up with. */
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
const BUCKET_IN = 0.25;
const TOUCH_FT = 1e-4;
/** Pieces that share less of a side than this only touch. */
const LEAST_SHARED_FT = 0.1;

/** The board layers that make a plane of a pattern, bottom first; a plane that is no sector of it is one layer. */
export function layersOfPlane(pattern: SlopePattern, { gx, gy }: Plane): readonly Point[] {
  const same = pattern.sectors.find(
    (sector) => Math.abs(sector.gx - gx) < SAME_GRADIENT && Math.abs(sector.gy - gy) < SAME_GRADIENT,
  );
  return same?.layers ?? [[gx, gy]];
}

/** Items sorted into lists of one plane: the same gradient, and the same height at one point. */
class ByPlane<T> {
  private readonly buckets = new Map<string, { plane: Plane; atIn: number; items: T[] }[]>();

  constructor(private readonly near: Point) {}

  /** The list of the plane; a plane that rounding puts on the border of a bucket is looked for in the next one too. */
  listOf(owner: string, plane: Plane): T[] {
    const atIn = heightIn(plane, this.near);
    const bucket = Math.round(atIn / BUCKET_IN);
    for (const k of [bucket, bucket - 1, bucket + 1]) {
      const same = this.buckets.get(`${owner}|${k}`)?.find((other) => samePlane(other, plane, atIn));
      if (same !== undefined) return same.items;
    }
    const key = `${owner}|${bucket}`;
    const items: T[] = [];
    const list = this.buckets.get(key);
    if (list) list.push({ plane, atIn, items });
    else this.buckets.set(key, [{ plane, atIn, items }]);
    return items;
  }

  *lists(): Generator<T[]> {
    for (const bucket of this.buckets.values()) for (const { items } of bucket) yield items;
  }
}

const samePlane = (other: { plane: Plane; atIn: number }, plane: Plane, atIn: number): boolean =>
  Math.abs(other.plane.gx - plane.gx) < SAME_GRADIENT &&
  Math.abs(other.plane.gy - plane.gy) < SAME_GRADIENT &&
  Math.abs(other.atIn - atIn) < SAME_HEIGHT_IN;

/** One plane of one outlet in one layer. */
interface Facet {
  outlet: string;
  layer: number;
  plane: Plane;
  covered: boolean;
  patches: readonly Patch[];
  box: Box;
}

/** True where two pieces share more than a corner. */
function share(a: Convex, b: Convex): boolean {
  return a.some((p, i) => {
    const q = a[(i + 1) % a.length];
    const lengthFt = distanceFt(p, q);
    const along = direction(p, q);
    return b.some((r, k) => {
      const s = b[(k + 1) % b.length];
      const [dr, ds]: Point[] = [
        [r[0] - p[0], r[1] - p[1]],
        [s[0] - p[0], s[1] - p[1]],
      ];
      if (Math.abs(cross(along, dr)) > TOUCH_FT || Math.abs(cross(along, ds)) > TOUCH_FT) return false;
      const [from, to] = [dot(along, dr), dot(along, ds)];
      return Math.min(lengthFt, Math.max(from, to)) - Math.max(0, Math.min(from, to)) > LEAST_SHARED_FT;
    });
  });
}

const touch = (a: Facet, b: Facet): boolean =>
  a.box.minX <= b.box.maxX + TOUCH_FT &&
  b.box.minX <= a.box.maxX + TOUCH_FT &&
  a.box.minY <= b.box.maxY + TOUCH_FT &&
  b.box.minY <= a.box.maxY + TOUCH_FT &&
  a.patches.some(({ ring }) => b.patches.some((other) => share(ring, other.ring)));

/** Facets of one plane as sheets: those of one outlet, and of outlets whose facets lie side by side. */
function sheetsOf(facets: readonly Facet[]): Facet[][] {
  const sheets: Facet[][] = [];
  for (const facet of facets) {
    const joins = sheets.filter((sheet) => sheet.some((other) => other.outlet === facet.outlet || touch(other, facet)));
    const joined = [...joins.flat(), facet];
    for (const gone of joins) sheets.splice(sheets.indexOf(gone), 1);
    sheets.push(joined);
  }
  return sheets;
}

const risesBy = ([gx, gy]: Point, [x, y]: Point): number => gx * x + gy * y;

/** The layers of the patches of one plane, bottom first. */
function facetsOf(patches: readonly Patch[], layersAt: LayersAt): Facet[] {
  const { outlet, plane: total } = patches[0];
  const upper = layersAt(outlet, total)
    .slice(1)
    .map((g): Plane => {
      const rises = patches.flatMap(({ ring }) => ring.map((p) => risesBy(g, p)));
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
  const box = boxOf(patches.flatMap(({ ring }) => ring));
  return [bottom, ...upper].map((plane, layer) => ({
    outlet,
    layer,
    plane,
    covered: layer < upper.length,
    patches,
    box,
  }));
}

export type LayersAt = (outlet: string, plane: Plane) => readonly Point[];

/**
 * A thickness as layers of boards. Every layer but the lowest is nothing along the line where its plane begins (a cricket's
 * edge, a valley) and the lowest takes what is left, so that its boards run on under a cricket from the field beside it.
 * Together the layers are the thickness, and each covers its planes once.
 * @param layersAt gradients of the layers of an outlet's plane, bottom first
 */
export function layerParts(patches: readonly Patch[], layersAt: LayersAt): LayerPart[] {
  if (patches.length === 0) return [];
  const [near] = patches[0].ring;
  const planes = new ByPlane<Patch>(near);
  for (const patch of patches) planes.listOf(patch.outlet, patch.plane).push(patch);
  const layers = new ByPlane<Facet>(near);
  for (const own of planes.lists())
    for (const facet of facetsOf(own, layersAt)) layers.listOf(String(facet.layer), facet.plane).push(facet);
  return [...layers.lists()].flatMap(sheetsOf).flatMap((sheet, id) => {
    const [{ outlet, plane }] = sheet;
    return sheet.flatMap(({ layer, covered, patches: own }) =>
      own.map(
        (patch): LayerPart => ({ ring: patch.ring, outlet, layer, plane, total: patch.plane, covered, sheet: id }),
      ),
    );
  });
}
