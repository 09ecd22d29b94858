import { compassPoint, feetInches } from '../../units/print.ts';
import { direction, distanceFt, signedAreaSqFt, toSegment } from '../geometry/vector.ts';
import type { Assumption } from '../report/types.ts';
import type { Edge, EdgeKind, Point, Ring, Roof } from '../roof.ts';

/** A stretch of one side with one kind of edge, with the section on its left hand. */
export interface SiteEdge {
  /** `side-2`, or `side-2b` for the second stretch of a side. */
  id: string;
  edge: Edge;
  from: Point;
  to: Point;
  /** Distances of `from` and `to` along the side, as the file counts them. */
  fromFt: number;
  toFt: number;
  lengthFt: number;
  /** "parapet" */
  what: string;
  /** Its name on this roof and its length: "parapet on the N side, 20'-0"". */
  label: string;
}

const words: Record<EdgeKind, string> = {
  gutter: 'gutter side',
  drip: 'drip edge',
  rake: 'rake',
  parapet: 'parapet',
  wall: 'wall',
  'shingles-above': 'shingles above',
  'roof-below': 'edge over the roof below',
  'box-gutter': 'box gutter',
  'party-wall': 'party wall',
  joint: 'joint with the next roof',
};

const closed: Omit<Edge, 'side' | 'fromFt' | 'toFt'> = {
  kind: 'wall',
  mayDrain: 'unknown',
  topIn: null,
  clearIn: null,
  gutter: null,
  pitchIn12: null,
  shedsSqFt: null,
  wallHeightFt: null,
  openings: [],
};

const along = (a: Point, b: Point, ft: number): Point => {
  const t = ft / distanceFt(a, b);
  return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
};

/**
 * All sides as stretches; what the file does not list is a closed edge, and listed as assumed.
 * Stretches run counter-clockwise about the section, whichever way the outline was walked.
 */
export function siteEdges(roof: Roof): { edges: SiteEdge[]; assumed: Assumption[] } {
  const edges: SiteEdge[] = [];
  const assumed: Assumption[] = [];
  const turned = signedAreaSqFt(roof.outline) < 0;
  roof.outline.forEach((a, side) => {
    const b = roof.outline[(side + 1) % roof.outline.length];
    const length = distanceFt(a, b);
    const listed = roof.edges
      .filter((edge) => edge.side === side)
      .map((edge) => ({ edge, from: edge.fromFt ?? 0, to: Math.min(edge.toFt ?? length, length) }))
      .sort((p, q) => p.from - q.from);
    const stretches: typeof listed = [];
    let done = 0;
    const fill = (to: number): void => {
      if (to - done < 1e-3) return;
      stretches.push({ edge: { ...closed, side, fromFt: done, toFt: to }, from: done, to });
      const what =
        stretches.length === 1 && to > length - 1e-3
          ? `side ${side}`
          : `side ${side} from ${feetInches(done)} to ${feetInches(to)}`;
      assumed.push({
        path: `edges (side ${side})`,
        value: 'closed edge, no water leaves',
        because: `${what} is not described`,
        findOut: 'look at the edge',
      });
    };
    for (const item of listed) {
      fill(item.from);
      stretches.push(item);
      done = item.to;
    }
    fill(length);
    stretches.forEach(({ edge, from, to }, k) => {
      const [p, q] = [along(a, b, from), along(a, b, to)];
      edges.push({
        id: k === 0 ? `side-${side}` : `side-${side}${'abcdefghijklmnopqrstuvwxyz'[k] ?? `-${k}`}`,
        edge,
        from: turned ? q : p,
        to: turned ? p : q,
        fromFt: from,
        toFt: to,
        lengthFt: to - from,
        what: words[edge.kind],
        label: '',
      });
    });
  });
  return { edges: named(edges), assumed };
}

/** "N": where an edge looks as one stands on the roof, y being north. */
function facing({ from, to }: SiteEdge): string {
  const [dx, dy] = direction(from, to);
  return compassPoint((Math.atan2(dy, -dx) * 180) / Math.PI);
}

/** Every edge with a name of its own: what it is; of several alike the side that it faces, then its number. */
function named(edges: readonly SiteEdge[]): SiteEdge[] {
  const kind = ({ what }: SiteEdge): string => what;
  const faced = (edge: SiteEdge): string => `${kind(edge)} on the ${facing(edge)} side`;
  const numbered = (edge: SiteEdge): string => `${faced(edge)} (${edge.id.replace('-', ' ')})`;
  const alone = (edge: SiteEdge, name: (edge: SiteEdge) => string): boolean =>
    edges.every((other) => other === edge || name(other) !== name(edge));
  return edges.map((edge) => {
    const name = [kind, faced].find((each) => alone(edge, each)) ?? numbered;
    return { ...edge, label: `${name(edge)}, ${feetInches(edge.lengthFt)}` };
  });
}

/** The stretch that a boundary point lies on; null for points on curbs. */
export function edgeAt(edges: readonly SiteEdge[], p: Point): SiteEdge | null {
  let best: SiteEdge | null = null;
  let nearest = 1e-3;
  for (const edge of edges) {
    const d = toSegment(p, edge.from, edge.to).distanceFt;
    if (d < nearest) {
      nearest = d;
      best = edge;
    }
  }
  return best;
}

/** A value given at both ends of a side, at a place along it (ft from the side's first corner). */
export function valueAlong(value: readonly [number, number], sideLengthFt: number, alongFt: number): number {
  return value[0] + (value[1] - value[0]) * Math.min(1, Math.max(0, alongFt / sideLengthFt));
}

export function sideLengthFt(outline: Ring, side: number): number {
  return distanceFt(outline[side], outline[(side + 1) % outline.length]);
}

/** Point on a side of the file's outline. */
export function onSide(outline: Ring, side: number, alongFt: number): Point {
  return along(outline[side], outline[(side + 1) % outline.length], alongFt);
}
