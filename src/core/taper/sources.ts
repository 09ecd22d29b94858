import type { Fan, Fans } from '../geometry/fans.ts';
import { lookAcross, lookFrom, type Sight, type Wedge } from '../geometry/sight.ts';
import type { Triangulation } from '../geometry/triangulation.ts';
import { type Box, cross, direction, distanceFt, dot, toSegment } from '../geometry/vector.ts';
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
  /** Unique within one spread. */
  key: string;
  outlet: string;
  levelIn: number;
  pattern: SlopePattern;
  at: Point;
  line: EdgeLine | null;
  sight: Sight;
  /** Outside this box the source was not looked at; null = looked at everywhere. */
  box: Box | null;
}

export interface Ground {
  mesh: Triangulation;
  fans: Fans;
}

/** Keys of corner sources begin so. */
export const CORNER = 'corner ';

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

/** Which directions a corner has to serve: all, none, or the wedge that its parent cannot see. */
type Duty = 'all' | 'none' | Wedge;

/**
 * Directions behind a corner that whoever looks along `toward` cannot see.
 * Enough for convex patterns only: there what is in plain sight is never reached sooner round the corner.
 */
function shadowOf(fan: Fan, toward: Point): Duty {
  const { right, left } = fan;
  if (right === null || left === null) return 'none';
  const toRight = cross(toward, right);
  const toLeft = cross(toward, left);
  // An edge that leads back along the line of sight may lie on either side of it by a grid step.
  const back = (off: number, edge: Point): boolean => Math.abs(off) < ON_EDGE_FT && dot(toward, edge) < 0;
  if (toLeft > 0 && (toRight > 0 || back(toRight, right))) return { right: toward, left };
  if (toRight < 0 && (toLeft < 0 || back(toLeft, left))) return { right, left: toward };
  return 'none';
}

interface Candidate {
  outlet: string;
  fan: number;
  levelIn: number;
  duty: Duty;
}

/** Two ways to a corner that differ by less are equally long. */
const SAME_WAY_IN = 2e-6;

/** The part of a new wedge that an earlier one of the same corner does not serve; null = nothing. */
function unserved(wedge: Wedge, served: Wedge): Wedge | null {
  if (wedge.left === served.left) {
    return cross(wedge.right, served.right) > 1e-12 ? { right: wedge.right, left: served.right } : null;
  }
  if (wedge.right === served.right) {
    return cross(served.left, wedge.left) > 1e-12 ? { right: served.left, left: wedge.left } : null;
  }
  return wedge;
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
 * @param outlets all with the same pattern
 * @param boxFor how far a source is looked at (null = everywhere); only for convex patterns
 * @returns sources in order of their level
 */
export function spread(
  ground: Ground,
  outlets: readonly TaperOutlet[],
  boxFor: (key: string, at: Point) => Box | null = () => null,
): Source[] {
  const { mesh, fans } = ground;
  const queue: Candidate[] = [];
  const settled = new Map<number, number>();
  const sources: Source[] = [];
  const pattern = outlets[0].pattern;

  const passOn = (source: Omit<Source, 'sight'>, seen: readonly number[]): void => {
    for (const id of seen) {
      const fan = fans.fans[id];
      if (!fan.reflex || (source.line === null && distanceFt(fan.at, source.at) === 0)) continue;
      const levelIn = source.levelIn + sourceRiseIn(source, fan.at);
      const best = settled.get(id) ?? Number.POSITIVE_INFINITY;
      // Where two ways are equally long the corner serves what either of them cannot see.
      if (levelIn > best + (pattern.convex ? SAME_WAY_IN : -1e-9)) continue;
      const toward = source.line ? inward(source.line.along) : direction(source.at, fan.at);
      settled.set(id, Math.min(best, levelIn));
      insert(queue, { outlet: source.outlet, fan: id, levelIn, duty: pattern.convex ? shadowOf(fan, toward) : 'all' });
    }
  };
  const fromFan = (key: string, outlet: string, fan: Fan, levelIn: number, duty: Duty): void => {
    const box = pattern.convex ? boxFor(key, fan.at) : null;
    const source = { key, outlet, levelIn, pattern, at: fan.at, line: null, box };
    // The ends of the corner's own walls are always in reach, also where rounding hides them.
    passOn(source, fan.wallEnds);
    if (duty === 'none') return;
    const sight = lookFrom(mesh, fans, fan, duty === 'all' ? null : duty, box);
    sources.push({ ...source, sight });
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
      const common = { outlet: outlet.id, levelIn: outlet.levelIn, pattern };
      const source: Source = { ...common, key: outlet.id, at: outlet.from, line, sight, box: null };
      sources.push(source);
      passOn(source, sight.seen);
    }
    const starts = outlet.kind === 'point' ? [outlet.at] : [outlet.from, outlet.to];
    starts.forEach((p, i) => {
      for (const id of fansAt(p)) fromFan(`${outlet.id}/${i}/${id}`, outlet.id, fans.fans[id], outlet.levelIn, 'all');
    });
  }
  const served = new Map<number, Wedge[]>();
  for (let next = queue.pop(); next !== undefined; next = queue.pop()) {
    const { fan, outlet, levelIn, duty } = next;
    if (levelIn > (settled.get(fan) ?? Number.POSITIVE_INFINITY) + (pattern.convex ? SAME_WAY_IN : 0)) continue;
    const done = served.get(fan) ?? [];
    let rest: Duty = duty;
    if (typeof duty === 'object') {
      const left = done.reduce<Wedge | null>(
        (wedge, before) => (wedge === null ? null : unserved(wedge, before)),
        duty,
      );
      if (left === null) continue;
      rest = left;
      done.push(duty);
    } else if (served.has(fan)) continue;
    served.set(fan, done);
    fromFan(`${CORNER}${fan} ${done.length}`, outlet, fans.fans[fan], levelIn, rest);
  }
  return sources;
}
