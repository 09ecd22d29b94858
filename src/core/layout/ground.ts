import { addPlanes, heightIn, LEVEL, type Plane } from '../geometry/plane.ts';
import { fittedPlane } from '../site/fitted-plane.ts';
import type { Site } from '../site/site.ts';
import { fused } from '../surface/fuse.ts';
import type { SurfaceFill } from '../surface/least-path-fill.ts';
import { laidOn, type Patch, raisedBy } from '../surface/patch.ts';
import { momentsOf } from './thermal.ts';

/**
 * What the boards are laid on: the base as it was read, levelled to a plane first, or filled only where water would not
 * fall on its way.
 */
export interface BoardGround {
  patches: readonly Patch[];
  /** Thickness of the fill over the base; empty when the boards are laid as read. */
  fill: readonly Patch[];
  /** Fill that it takes; 0 when the boards are laid as read. */
  levellingBoardFt: number;
  greatestFillIn: number;
  how: 'as-read' | 'plane' | 'level' | 'filled';
}

/** A plane flatter than this is levelled dead level: the readings cannot tell the difference. */
const HARDLY_SLOPED_IN_PER_FT = 0.02;

const upsideDown = (patch: Patch): Patch => ({
  ...patch,
  plane: { atOriginIn: -patch.plane.atOriginIn, gx: -patch.plane.gx, gy: -patch.plane.gy },
});

/** A ground on top of the base, with what lies between the two. */
function over(base: readonly Patch[], patches: readonly Patch[], how: BoardGround['how']): BoardGround {
  const fill = laidOn(base.map(upsideDown), patches);
  return { patches, fill, ...sumOf(fill), how };
}

function sumOf(fill: readonly Patch[]): { levellingBoardFt: number; greatestFillIn: number } {
  const { boardFt, greatestIn } = momentsOf(fill);
  return { levellingBoardFt: Math.max(0, boardFt), greatestFillIn: Math.max(0, greatestIn) };
}

function levelled(site: Site, plane: Plane, how: 'plane' | 'level'): BoardGround {
  const proud = Math.max(
    ...site.base.flatMap(({ ring, plane: own }) => ring.map((p) => heightIn(own, p) - heightIn(plane, p))),
  );
  const target: Plane = { ...plane, atOriginIn: plane.atOriginIn + proud };
  // One plane in few pieces: readings need many, a plane does not.
  const patches = fused(site.base.map((patch): Patch => ({ ...patch, plane: target })));
  const fill = site.base.map((patch): Patch => ({ ...patch, plane: addPlanes(target, upsideDown(patch).plane) }));
  return { patches, fill, ...sumOf(fill), how };
}

/** The hollows of sagged joists filled up to the planes that were given. */
function withoutSag(site: Site, straight: readonly Patch[]): BoardGround {
  const liftIn = site.roof.existing.readOn === 'deck' ? 0 : -site.given.removedIn;
  return over(site.base, raisedBy(straight, liftIn), 'plane');
}

/** The base as it was read. */
export const asRead = (site: Site): BoardGround => ({
  patches: site.base,
  fill: [],
  levellingBoardFt: 0,
  greatestFillIn: 0,
  how: 'as-read',
});

/** The base filled dead level: what boards of the catalogue fit on without a second thought. */
export const deadLevel = (site: Site): BoardGround => levelled(site, LEVEL, 'level');

/** A ground with the fill of the least-path rule under the boards. */
export function filledGround(ground: BoardGround, { thickness, boardFt, greatestIn }: SurfaceFill): BoardGround {
  return {
    patches: laidOn(ground.patches, thickness),
    fill: thickness,
    levellingBoardFt: ground.levellingBoardFt + boardFt,
    greatestFillIn: greatestIn,
    how: 'filled',
  };
}

/**
 * The grounds a layout may be laid on, the simplest first: as read; levelled to the plane of least squares; dead level.
 * Levelling planes are raised until nothing of the base stands proud of them. A sag that the file names is filled as such.
 */
export function groundsOf(site: Site): BoardGround[] {
  const plain = asRead(site);
  const { readings, sag } = site.measured;
  if (sag !== undefined) return [plain, withoutSag(site, sag.straight)];
  if (readings.length === 0) return [plain];
  const fitted = fittedPlane(readings);
  const grounds = [plain];
  if (fitted !== null && Math.hypot(fitted.gx, fitted.gy) > HARDLY_SLOPED_IN_PER_FT)
    grounds.push(levelled(site, fitted, 'plane'));
  grounds.push(deadLevel(site));
  return grounds;
}
