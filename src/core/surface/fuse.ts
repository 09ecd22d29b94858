import type { Convex } from '../geometry/convex.ts';
import { cross, dot } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';
import { type Patch, samePlaneOver } from './patch.ts';

/** Corners that bend by less than this distance are straight. */
const STRAIGHT_FT = 1e-8;

/** A ring with the numbers of its corners: the same place has the same number in every ring. */
interface Numbered {
  patch: Patch;
  ring: Convex;
  ids: readonly number[];
}

function numbered(patches: readonly Patch[]): Numbered[] {
  const known = new Map<string, number>();
  return patches.map((patch) => {
    const ids = patch.ring.map(([x, y]) => {
      const key = `${Math.round(x * 1e7)},${Math.round(y * 1e7)}`;
      const id = known.get(key) ?? known.size;
      known.set(key, id);
      return id;
    });
    return { patch, ring: patch.ring, ids };
  });
}

/** How far the corner b lies outside the straight line from a to c, in ft. */
function bulge(a: Point, b: Point, c: Point): number {
  const chord: Point = [c[0] - a[0], c[1] - a[1]];
  return cross([b[0] - a[0], b[1] - a[1]], chord) / Math.max(Math.hypot(chord[0], chord[1]), 1e-12);
}

/** A corner that bends outward or goes straight on; one that turns right back is neither. */
function isConvex(a: Point, b: Point, c: Point): boolean {
  const out = bulge(a, b, c);
  return out > STRAIGHT_FT || (out > -STRAIGHT_FT && dot([b[0] - a[0], b[1] - a[1]], [c[0] - b[0], c[1] - b[1]]) > 0);
}

const turnedTo = <T>(list: readonly T[], first: number): T[] => [...list.slice(first), ...list.slice(0, first)];

/** Both as one where they share a side from corner i of a, which is corner j + 1 of b, and the whole is convex; else null. */
function joined(a: Numbered, i: number, b: Numbered, j: number): Numbered | null {
  // Both from the end of the shared side: a leaves it there, b comes to it there at the end of its round.
  const [n, m] = [a.ring.length, b.ring.length];
  const own = turnedTo(a.ids, (i + 1) % n);
  const other = turnedTo(b.ids, (j + 1) % m);
  // own = q ... p, other = p ... q. Where the rings share more sides in a row, all of them go.
  let [q, p] = [0, 0];
  while (q < Math.min(n, m) - 2 && own[q + 1] === other[m - 2 - q]) q++;
  while (q + p < Math.min(n, m) - 2 && own[n - 2 - p] === other[p + 1]) p++;
  const kept = turnedTo(a.ring, (i + 1) % n).slice(q, n - p);
  const added = turnedTo(b.ring, (j + 1) % m).slice(p, m - q);
  if (kept.length + added.length < 5) return null;
  const atQ = isConvex(added[added.length - 2], kept[0], kept[1]);
  const atP = isConvex(kept[kept.length - 2], added[0], added[1]);
  if (!atQ || !atP) return null;
  const ids = [...own.slice(q, n - p), ...other.slice(p + 1, m - q - 1)];
  return { patch: a.patch, ring: [...kept, ...added.slice(1, -1)], ids };
}

/**
 * The same surface in fewer pieces: neighbours in one plane of one outlet become one while the whole stays convex.
 * @param patches that partition a region; pieces that do not share a whole side stay apart
 */
export function fused(patches: readonly Patch[]): Patch[] {
  const pieces: (Numbered | null)[] = numbered(patches);
  const count = pieces.reduce((sum, piece) => sum + (piece?.ids.length ?? 0), 0);
  const bySide = new Map<number, { piece: number; side: number }>();
  const note = (piece: number): void => {
    const ids = pieces[piece]?.ids ?? [];
    for (let side = 0; side < ids.length; side++)
      bySide.set(ids[side] * count + ids[(side + 1) % ids.length], { piece, side });
  };
  const grow = (i: number, own: Numbered): Numbered | null => {
    for (let side = 0; side < own.ids.length; side++) {
      const across = bySide.get(own.ids[(side + 1) % own.ids.length] * count + own.ids[side]);
      const other = across === undefined || across.piece === i ? null : pieces[across.piece];
      if (across === undefined || other === null || other.patch.outlet !== own.patch.outlet) continue;
      if (!samePlaneOver(other.ring, own.patch.plane, other.patch.plane)) continue;
      const whole = joined(own, side, other, across.side);
      if (whole === null) continue;
      pieces[across.piece] = null;
      return whole;
    }
    return null;
  };
  for (let i = 0; i < pieces.length; i++) note(i);
  for (let i = 0; i < pieces.length; i++) {
    for (let own = pieces[i]; own !== null; own = grow(i, own)) {
      if (own === pieces[i]) continue;
      pieces[i] = own;
      note(i);
    }
  }
  return pieces.flatMap((piece) => (piece === null ? [] : [{ ...piece.patch, ring: withoutStraight(piece.ring) }]));
}

/** One corner at a time: of two that nearly coincide each looks straight beside the other, but one of them bends. */
function withoutStraight(ring: Convex): Convex {
  const kept = [...ring];
  for (let i = 0; i < kept.length && kept.length > 3; ) {
    const [a, c] = [kept[(i + kept.length - 1) % kept.length], kept[(i + 1) % kept.length]];
    if (Math.abs(bulge(a, kept[i], c)) > 1e-10) i++;
    else kept.splice(i, 1);
  }
  return kept;
}
