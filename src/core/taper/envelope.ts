import { type Convex, cut, intersectConvex, isSliver, subtractConvex } from '../geometry/convex.ts';
import { findFans } from '../geometry/fans.ts';
import { heightIn, type Plane } from '../geometry/plane.ts';
import type { Section } from '../geometry/section.ts';
import { type Box, boxesOverlap, boxOf } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';
import { higherSide, lowerOf, type Patch } from '../surface/patch.ts';
import { piecesOf } from './pieces.ts';
import { CORNER, type Ground, type Source, spread, type TaperOutlet } from './sources.ts';

interface Piece {
  ring: Convex;
  box: Box;
  plane: Plane;
  /** Height of the plane at the middle of the section, in 1e-9 in. */
  rank: number;
}

interface Cell {
  source: Source;
  pieces: readonly Piece[];
  box: Box;
}

const parallel = (a: Plane, b: Plane): boolean => Math.abs(a.gx - b.gx) < 1e-9 && Math.abs(a.gy - b.gy) < 1e-9;

/**
 * What is left of a ring of one piece where a rival piece is lower.
 * Parallel planes are ordered by one number for the whole roof: comparing them where they happen to meet would let
 * rounding go round in a circle and leave a hole that nobody governs.
 */
function yieldTo(ring: Convex, own: Piece, rival: Piece, rivalFirst: boolean): Convex[] {
  const { plane } = own;
  const sameWay = parallel(plane, rival.plane);
  if (sameWay && (own.rank < rival.rank || (own.rank === rival.rank && !rivalFirst))) return [ring];
  if (!sameWay && ring.every((p) => heightIn(plane, p) <= heightIn(rival.plane, p))) return [ring];
  const both = intersectConvex(ring, rival.ring);
  if (both.length === 0) return [ring];
  const lost = sameWay ? both : cut(both, higherSide(plane, rival.plane));
  return isSliver(lost) ? [ring] : subtractConvex(ring, lost);
}

const union = (boxes: readonly Box[]): Box =>
  boxes.reduce((a, b) => ({
    minX: Math.min(a.minX, b.minX),
    minY: Math.min(a.minY, b.minY),
    maxX: Math.max(a.maxX, b.maxX),
    maxY: Math.max(a.maxY, b.maxY),
  }));

/** For each cell the others whose boxes overlap it, by sweeping along x. */
function neighbours(cells: readonly Cell[]): number[][] {
  const near: number[][] = cells.map(() => []);
  const order = cells.map((_, i) => i).sort((a, b) => cells[a].box.minX - cells[b].box.minX);
  let open: number[] = [];
  for (const i of order) {
    open = open.filter((j) => cells[j].box.maxX > cells[i].box.minX);
    for (const j of open) {
      if (!boxesOverlap(cells[i].box, cells[j].box)) continue;
      near[i].push(j);
      near[j].push(i);
    }
    open.push(i);
  }
  return near;
}

/** The part of its own pieces in which each source is the lowest. */
function resolve(cells: readonly Cell[]): Patch[][] {
  const near = neighbours(cells);
  return cells.map((cell, i) => {
    const outlet = cell.source.outlet;
    const out: Patch[] = [];
    for (const piece of cell.pieces) {
      let rings: { ring: Convex; box: Box }[] = [piece];
      for (const j of near[i]) {
        if (rings.length === 0) break;
        if (!boxesOverlap(piece.box, cells[j].box)) continue;
        for (const rival of cells[j].pieces) {
          if (!boxesOverlap(piece.box, rival.box)) continue;
          rings = rings.flatMap((r) => {
            if (!boxesOverlap(r.box, rival.box)) return [r];
            const left = yieldTo(r.ring, piece, rival, j < i);
            return left.length === 1 && left[0] === r.ring ? [r] : left.map((ring) => ({ ring, box: boxOf(ring) }));
          });
        }
      }
      for (const { ring } of rings) out.push({ ring, plane: piece.plane, outlet });
    }
    return out;
  });
}

const touches = (patches: readonly Patch[], box: Box): boolean =>
  patches.some(({ ring }) =>
    ring.some(([x, y]) => x <= box.minX + 1e-7 || x >= box.maxX - 1e-7 || y <= box.minY + 1e-7 || y >= box.maxY - 1e-7),
  );

/**
 * Lowest surface over the sources of one pattern. Sources are first looked at in a box about them; a box doubles
 * while the source's part touches it. A part is star-shaped about its source, so one that stays inside is complete.
 */
function lowestOfPattern(ground: Ground, outlets: readonly TaperOutlet[], whole: Box): Patch[] {
  const corners = ground.fans.fans.filter((fan) => fan.reflex).length;
  const spanFt = Math.max(whole.maxX - whole.minX, whole.maxY - whole.minY);
  const area = (whole.maxX - whole.minX) * (whole.maxY - whole.minY);
  const few = outlets.length + corners <= 6;
  const startFt = (key: string): number => {
    if (few) return spanFt;
    return 0.7 * Math.sqrt(area / (key.startsWith(CORNER) ? outlets.length + corners : outlets.length));
  };
  const middle: Point = [(whole.minX + whole.maxX) / 2, (whole.minY + whole.maxY) / 2];
  const reachFt = new Map<string, number>();
  for (;;) {
    const sources = spread(ground, outlets, (key, [x, y]) => {
      const r = reachFt.get(key) ?? startFt(key);
      return r >= spanFt ? null : { minX: x - r, minY: y - r, maxX: x + r, maxY: y + r };
    });
    const cells = sources.flatMap((source): Cell[] => {
      const pieces = piecesOf(source).map(({ ring, plane }) => ({
        ring,
        plane,
        box: boxOf(ring),
        rank: Math.round(heightIn(plane, middle) * 1e9),
      }));
      return pieces.length === 0 ? [] : [{ source, pieces, box: union(pieces.map((piece) => piece.box)) }];
    });
    const parts = resolve(cells);
    let grown = false;
    cells.forEach(({ source }, i) => {
      if (source.box === null || !touches(parts[i], source.box)) return;
      reachFt.set(source.key, 2 * (reachFt.get(source.key) ?? startFt(source.key)));
      grown = true;
    });
    if (!grown) return parts.flat();
  }
}

/**
 * Thickness (or finished height) as the least, over all outlets and the corners that lead their water, of level + rise.
 * @param section with every outlet point and edge end as a vertex
 * @returns convex patches that partition all of the section that some outlet reaches
 * Source: design of the taper; continuous because rise adds up along one ray, falling because the straight way to the
 * governing source never rises.
 */
export function envelope(section: Section, outlets: readonly TaperOutlet[]): Patch[] {
  if (outlets.length === 0) return [];
  const ground: Ground = { mesh: section.triangulation, fans: findFans(section.triangulation) };
  const whole = boxOf(section.rings.flat());
  const byPattern = new Map<string, TaperOutlet[]>();
  for (const outlet of outlets) {
    const same = byPattern.get(outlet.pattern.name);
    if (same) same.push(outlet);
    else byPattern.set(outlet.pattern.name, [outlet]);
  }
  const surfaces = [...byPattern.values()].map((same) => lowestOfPattern(ground, same, whole));
  return surfaces.reduce((a, b) => lowerOf(a, b));
}
