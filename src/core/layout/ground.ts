import { heightIn, type Plane } from '../geometry/plane.ts';
import { centroid, signedAreaSqFt } from '../geometry/vector.ts';
import { fittedPlane } from '../site/fitted-plane.ts';
import type { Site } from '../site/site.ts';
import { type Patch, raisedBy } from '../surface/patch.ts';

/** What the boards are laid on: the base as it was read, or levelled to a plane first. */
export interface BoardGround {
  patches: readonly Patch[];
  /** Fill that levelling takes; 0 when the boards are laid as read. */
  levellingBoardFt: number;
  greatestFillIn: number;
  how: 'as-read' | 'plane' | 'level';
}

/** A plane flatter than this is levelled dead level: the readings cannot tell the difference. */
const HARDLY_SLOPED_IN_PER_FT = 0.02;

function levelled(site: Site, plane: Plane, how: 'plane' | 'level'): BoardGround {
  let proud = Number.NEGATIVE_INFINITY;
  let deep = Number.POSITIVE_INFINITY;
  for (const { ring, plane: own } of site.base) {
    for (const p of ring) {
      const over = heightIn(own, p) - heightIn(plane, p);
      proud = Math.max(proud, over);
      deep = Math.min(deep, over);
    }
  }
  const target: Plane = { ...plane, atOriginIn: plane.atOriginIn + proud };
  let levellingBoardFt = 0;
  const patches = site.base.map((patch): Patch => {
    const c = centroid(patch.ring);
    levellingBoardFt += signedAreaSqFt(patch.ring) * (heightIn(target, c) - heightIn(patch.plane, c));
    return { ...patch, plane: target };
  });
  return { patches, levellingBoardFt, greatestFillIn: proud - deep, how };
}

/** The hollows of sagged joists filled up to the planes that were given. */
function withoutSag(site: Site, { straight, straightAt, sagIn }: NonNullable<Site['measured']['sag']>): BoardGround {
  const liftIn = site.roof.existing.readOn === 'deck' ? 0 : -site.given.removedIn;
  const levellingBoardFt = site.base.reduce((sum, { ring, plane }) => {
    const c = centroid(ring);
    return sum + signedAreaSqFt(ring) * (straightAt(c) + liftIn - heightIn(plane, c));
  }, 0);
  return { patches: raisedBy(straight, liftIn), levellingBoardFt, greatestFillIn: sagIn, how: 'plane' };
}

/**
 * The grounds a layout may be laid on, the simplest first: as read; levelled to the plane of least squares; dead level.
 * Levelling planes are raised until nothing of the base stands proud of them. A sag that the file names is filled as such.
 */
export function groundsOf(site: Site): BoardGround[] {
  const asRead: BoardGround = { patches: site.base, levellingBoardFt: 0, greatestFillIn: 0, how: 'as-read' };
  const { readings, sag } = site.measured;
  if (sag !== undefined) return [asRead, withoutSag(site, sag)];
  if (readings.length === 0) return [asRead];
  const fitted = fittedPlane(readings);
  const grounds = [asRead];
  if (fitted !== null && Math.hypot(fitted.gx, fitted.gy) > HARDLY_SLOPED_IN_PER_FT)
    grounds.push(levelled(site, fitted, 'plane'));
  grounds.push(levelled(site, { atOriginIn: 0, gx: 0, gy: 0 }, 'level'));
  return grounds;
}
