import type { Fan, Fans } from '../geometry/fans.ts';
import { lookAcross, lookFrom, type Sight } from '../geometry/sight.ts';
import type { Triangulation } from '../geometry/triangulation.ts';
import { direction, distanceFt, dot, toSegment } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';
import { riseIn, type SlopePattern } from './pattern.ts';

/** Where a taper starts: at a point (drain, scupper) or along a straight edge (gutter, drip edge). */
export type TaperOutlet =
  | { id: string; kind: 'point'; at: Point; levelIn: number; pattern: SlopePattern }
  | { id: string; kind: 'edge'; from: Point; to: Point; levelIn: number; pattern: SlopePattern };

/** The whole edge of an edge outlet: the surface rises square to it. */
interface EdgeLine {
  along: Point;
  from: Point;
}

/** One place from which heights rise: an outlet itself, or a corner that leads an outlet's water round it. */
export interface Source {
  outlet: string;
  levelIn: number;
  pattern: SlopePattern;
  at: Point;
  line: EdgeLine | null;
  sight: Sight;
}

export interface Ground {
  mesh: Triangulation;
  fans: Fans;
}

const ON_EDGE_FT = 3e-5;

/** Boundary edge slots that lie on the straight line from a to b. */
export function edgeSlots(mesh: Triangulation, a: Point, b: Point): number[] {
  const out: number[] = [];
  const near = (p: Point): boolean => toSegment(p, a, b).distanceFt < ON_EDGE_FT;
  for (let slot = 0; slot < mesh.corners.length; slot++) {
    if (mesh.across[slot] >= 0) continue;
    const end = slot - (slot % 3) + (((slot % 3) + 1) % 3);
    if (near(mesh.points[mesh.corners[slot]]) && near(mesh.points[mesh.corners[end]])) out.push(slot);
  }
  return out;
}

const inward = (along: Point): Point => [-along[1], along[0]];

/** Rise from a source to a point that it sees. */
export function sourceRiseIn(source: Pick<Source, 'pattern' | 'at' | 'line'>, p: Point): number {
  const by: Point = [p[0] - source.at[0], p[1] - source.at[1]];
  if (source.line === null) return riseIn(source.pattern, by);
  const n = inward(source.line.along);
  return riseIn(source.pattern, n) * dot(by, n);
}

interface Candidate {
  outlet: string;
  fan: number;
  levelIn: number;
}

/** Sorted list, greatest first, so that the least is popped from the end. */
function insert(queue: Candidate[], item: Candidate): void {
  let [lo, hi] = [0, queue.length];
  while (lo < hi) {
    const m = (lo + hi) >> 1;
    if (queue[m].levelIn > item.levelIn) lo = m + 1;
    else hi = m;
  }
  queue.splice(lo, 0, item);
}

/**
 * Every source of one pattern: the outlets, and each inside corner or curb corner at its own least level.
 * Every corner serves all that it sees: under a pattern with ridges the way round can be lower than the straight one.
 * @param outlets all with the same pattern
 * @returns sources in order of their level
 */
export function spread({ mesh, fans }: Ground, outlets: readonly TaperOutlet[]): Source[] {
  const queue: Candidate[] = [];
  const best = new Map<number, number>();
  const sources: Source[] = [];
  const pattern = outlets[0].pattern;

  const passOn = (source: Omit<Source, 'sight'>, seen: readonly number[]): void => {
    for (const id of seen) {
      const fan = fans.fans[id];
      if (!fan.reflex || (source.line === null && distanceFt(fan.at, source.at) === 0)) continue;
      const levelIn = source.levelIn + sourceRiseIn(source, fan.at);
      if (levelIn > (best.get(id) ?? Number.POSITIVE_INFINITY) - 1e-9) continue;
      best.set(id, levelIn);
      insert(queue, { outlet: source.outlet, fan: id, levelIn });
    }
  };
  const fromFan = (outlet: string, fan: Fan, levelIn: number): void => {
    const source = { outlet, levelIn, pattern, at: fan.at, line: null };
    const sight = lookFrom(mesh, fans, fan);
    sources.push({ ...source, sight });
    // The ends of the corner's own walls are always in reach, also where rounding hides them.
    passOn(source, fan.wallEnds);
    passOn(source, sight.seen);
  };
  const fansAt = (p: Point): readonly number[] => {
    const vertex = mesh.points.findIndex((q) => distanceFt(p, q) < ON_EDGE_FT);
    return vertex < 0 ? [] : fans.ofVertex[vertex];
  };

  for (const outlet of outlets) {
    if (outlet.kind === 'edge') {
      const along = direction(outlet.from, outlet.to);
      const sight = lookAcross(mesh, fans, edgeSlots(mesh, outlet.from, outlet.to), along);
      const line = { along, from: outlet.from };
      const source: Source = { outlet: outlet.id, levelIn: outlet.levelIn, pattern, at: outlet.from, line, sight };
      sources.push(source);
      passOn(source, sight.seen);
    }
    const starts = outlet.kind === 'point' ? [outlet.at] : [outlet.from, outlet.to];
    for (const p of starts) for (const id of fansAt(p)) fromFan(outlet.id, fans.fans[id], outlet.levelIn);
  }
  const served = new Set<number>();
  for (let next = queue.pop(); next !== undefined; next = queue.pop()) {
    if (served.has(next.fan)) continue;
    served.add(next.fan);
    fromFan(next.outlet, fans.fans[next.fan], next.levelIn);
  }
  return sources;
}
