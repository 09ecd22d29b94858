import {
  booleanOpDWithPolyTree,
  ClipType,
  EndType,
  FillRule,
  inflatePathsD,
  JoinType,
  type PathsD,
  type PolyPathD,
  PolyTreeD,
} from 'clipper2-ts';
import type { Point, Ring } from '../roof.ts';
import { signedAreaSqFt } from './vector.ts';

/** A polygon with holes: outer ring counter-clockwise, holes clockwise. */
export interface Region {
  outer: Ring;
  holes: readonly Ring[];
}

const DECIMALS = 6;

const toPaths = (rings: readonly Ring[]): PathsD => rings.map((ring) => ring.map(([x, y]) => ({ x, y })));

function toRing(path: readonly { x: number; y: number }[], counterClockwise: boolean): Ring {
  const ring: Point[] = path.map(({ x, y }) => [x, y]);
  return signedAreaSqFt(ring) > 0 === counterClockwise ? ring : ring.reverse();
}

function collect(node: PolyPathD | PolyTreeD, out: Region[]): void {
  for (let i = 0; i < node.count; i++) {
    const outer = node.child(i);
    const holes: Ring[] = [];
    for (let k = 0; k < outer.count; k++) {
      const hole = outer.child(k);
      holes.push(toRing(hole.poly ?? [], false));
      collect(hole, out);
    }
    out.push({ outer: toRing(outer.poly ?? [], true), holes });
  }
}

function operate(kind: ClipType, subject: readonly Ring[], clip: readonly Ring[]): Region[] {
  const tree = new PolyTreeD();
  booleanOpDWithPolyTree(kind, toPaths(subject), toPaths(clip), tree, FillRule.NonZero, DECIMALS);
  const out: Region[] = [];
  collect(tree, out);
  return out;
}

const upright = (rings: readonly Ring[]): Ring[] =>
  rings.map((ring) => (signedAreaSqFt(ring) > 0 ? ring : [...ring].reverse()));

export function unite(rings: readonly Ring[]): Region[] {
  return operate(ClipType.Union, upright(rings), []);
}

export function subtract(from: readonly Ring[], rings: readonly Ring[]): Region[] {
  return operate(ClipType.Difference, upright(from), upright(rings));
}

export function intersect(a: readonly Ring[], b: readonly Ring[]): Region[] {
  return operate(ClipType.Intersection, upright(a), upright(b));
}

/** Grow (positive) or shrink (negative) a ring by a distance, square corners kept. */
export function offset(ring: Ring, byFt: number): Region[] {
  const paths = inflatePathsD(toPaths(upright([ring])), byFt, JoinType.Miter, EndType.Polygon, 2, DECIMALS);
  return unite(paths.map((path) => toRing(path, true)));
}
