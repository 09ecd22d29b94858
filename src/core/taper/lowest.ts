import { type Convex, cut, intersectConvex, isSliver, subtractConvex } from '../geometry/convex.ts';
import { heightIn, type Plane } from '../geometry/plane.ts';
import { type Box, boxesOverlap, boxOf, centroid } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';
import { higherSide, type Patch } from '../surface/patch.ts';

interface Piece {
  patch: Patch;
  box: Box;
  /** Height of the plane at one place for the whole roof, in 1e-9 in. */
  rank: number;
}

const parallel = (a: Plane, b: Plane): boolean => Math.abs(a.gx - b.gx) < 1e-9 && Math.abs(a.gy - b.gy) < 1e-9;

/**
 * What is left of a ring of one piece where a rival piece is lower.
 * Parallel planes are ordered by one number for the whole roof: comparing them where they happen to meet would let
 * rounding go round in a circle and leave a hole that nobody governs.
 */
function yieldTo(ring: Convex, own: Piece, rival: Piece, rivalFirst: boolean): Convex[] {
  const { plane } = own.patch;
  const sameWay = parallel(plane, rival.patch.plane);
  if (sameWay && (own.rank < rival.rank || (own.rank === rival.rank && !rivalFirst))) return [ring];
  if (!sameWay && ring.every((p) => heightIn(plane, p) <= heightIn(rival.patch.plane, p))) return [ring];
  const both = intersectConvex(ring, rival.patch.ring);
  if (both.length === 0) return [ring];
  const lost = sameWay ? both : cut(both, higherSide(plane, rival.patch.plane));
  return isSliver(lost) ? [ring] : subtractConvex(ring, lost);
}

/** For each piece the others whose boxes overlap it, by sweeping along x. */
function neighbours(pieces: readonly Piece[]): number[][] {
  const near: number[][] = pieces.map(() => []);
  const order = pieces.map((_, i) => i).sort((a, b) => pieces[a].box.minX - pieces[b].box.minX);
  let open: number[] = [];
  for (const i of order) {
    open = open.filter((j) => pieces[j].box.maxX > pieces[i].box.minX);
    for (const j of open) {
      if (!boxesOverlap(pieces[i].box, pieces[j].box)) continue;
      near[i].push(j);
      near[j].push(i);
    }
    open.push(i);
  }
  return near;
}

/** Rivals that lie lowest at the middle of a piece come first: they leave little of it for the others to be tried on. */
function likeliestFirst({ patch }: Piece, pieces: readonly Piece[], near: readonly number[]): readonly number[] {
  if (near.length < 4) return near;
  const [x, y] = centroid(patch.ring);
  const lowness = near.map((j) => {
    const { box, patch: rival } = pieces[j];
    const over = x > box.minX && x < box.maxX && y > box.minY && y < box.maxY;
    return { j, key: heightIn(rival.plane, [x, y]) + (over ? 0 : FAR_IN) };
  });
  return lowness.sort((a, b) => a.key - b.key).map(({ j }) => j);
}

/** More than any roof rises. */
const FAR_IN = 1e6;

/**
 * The lowest of pieces that may overlap; where two are equal the earlier keeps the place.
 * @param middle one and the same place for all pieces of a roof
 */
export function lowestOf(patches: readonly Patch[], middle: Point): Patch[] {
  if (patches.length < 2) return [...patches];
  const pieces = patches.map(
    (patch): Piece => ({ patch, box: boxOf(patch.ring), rank: Math.round(heightIn(patch.plane, middle) * 1e9) }),
  );
  const near = neighbours(pieces);
  return pieces.flatMap((piece, i) => {
    let rings: Convex[] = [piece.patch.ring];
    for (const j of likeliestFirst(piece, pieces, near[i])) {
      if (rings.length === 0) break;
      rings = rings.flatMap((ring) => yieldTo(ring, piece, pieces[j], j < i));
    }
    return rings.map((ring): Patch => ({ ...piece.patch, ring }));
  });
}
