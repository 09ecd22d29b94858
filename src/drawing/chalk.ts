import { between, cross, direction, distanceFt, dot, isInside, toSegment } from '../core/geometry/vector.ts';
import type { BoardPiece, EdgeReport, Layout, OutletReport, Point } from '../core/report/types.ts';
import { sidesOf } from './inner-lines.ts';

/** A line to snap before the boards: where one row of boards ends and the next begins. */
export interface ChalkLine {
  from: Point;
  to: Point;
  /** The outlet or edge it is measured from, square to the line. */
  start: string | null;
  offFt: number | null;
}

const SAME_FT = 5e-3;
/** Shorter pieces than this are laid by eye. */
const LEAST_FT = 1.5;

interface Stretch {
  from: number;
  to: number;
  /** Mark of the board on the left of the line, seen along it; null on its right. */
  left: string | null;
  right: string | null;
}

interface Rule {
  toward: Point;
  at: Point;
  stretches: Stretch[];
}

/** All sides of the boards of one layer gathered on the straight lines they lie on. */
function rulesOf(pieces: readonly BoardPiece[]): Rule[] {
  const rules = new Map<string, Rule>();
  for (const { outline, mark } of pieces) {
    for (const [a, b] of sidesOf(outline)) {
      if (distanceFt(a, b) < SAME_FT) continue;
      let toward = direction(a, b);
      const turned = toward[0] < -1e-4 || (Math.abs(toward[0]) <= 1e-4 && toward[1] < 0);
      if (turned) toward = [-toward[0], -toward[1]];
      const off = cross(toward, a);
      const key = `${toward.map((v) => v.toFixed(3)).join(',')}|${(Math.round(off * 50) / 50).toFixed(2)}`;
      const rule = rules.get(key) ?? { toward, at: [-toward[1] * off, toward[0] * off], stretches: [] };
      const [s, t] = [dot(toward, a), dot(toward, b)];
      // Outlines run counter-clockwise: the board lies on the left of its own side.
      rule.stretches.push({
        from: Math.min(s, t),
        to: Math.max(s, t),
        left: turned ? null : mark,
        right: turned ? mark : null,
      });
      rules.set(key, rule);
    }
  }
  return [...rules.values()];
}

/** Where the boards on the two sides of a line differ: joints inside a row are not chalked. */
function rowEnds({ stretches }: Rule): [number, number][] {
  const cuts = [...new Set(stretches.flatMap(({ from, to }) => [from, to]))].sort((a, b) => a - b);
  const out: [number, number][] = [];
  for (let i = 0; i + 1 < cuts.length; i++) {
    const [from, to] = [cuts[i], cuts[i + 1]];
    if (to - from < SAME_FT) continue;
    const over = stretches.filter((each) => each.from < from + SAME_FT && each.to > to - SAME_FT);
    const left = over.find((each) => each.left !== null)?.left;
    const right = over.find((each) => each.right !== null)?.right;
    if (left === undefined || right === undefined || left === right) continue;
    const last = out.at(-1);
    if (last !== undefined && from - last[1] < SAME_FT) last[1] = to;
    else out.push([from, to]);
  }
  return out;
}

const onCrease = (a: Point, b: Point, layout: Layout): boolean =>
  layout.creases.some(
    ({ from, to }) => toSegment(a, from, to).distanceFt < 0.05 && toSegment(b, from, to).distanceFt < 0.05,
  );

type Tape = Pick<ChalkLine, 'start' | 'offFt'>;

/** Distance of a line from a point, or from a line that runs along it; null where that line does not. */
function offOf(a: Point, along: Point, { at, to }: Pick<OutletReport, 'at' | 'to'>): number | null {
  if (to !== null && Math.abs(cross(along, direction(at, to))) > 1e-3) return null;
  return Math.abs(cross(along, [at[0] - a[0], at[1] - a[1]]));
}

/** Where the tape starts: at the way out that the boards there fall to, else at the nearest edge along the line. */
function tapeFrom(a: Point, b: Point, layout: Layout, edges: readonly EdgeReport[]): Tape {
  const along = direction(a, b);
  const nearest = (starts: readonly (Pick<OutletReport, 'at' | 'to'> & { label: string })[]): Tape | null => {
    const offs = starts.flatMap((start) => {
      const offFt = offOf(a, along, start);
      return offFt === null ? [] : [{ start: start.label, offFt }];
    });
    return offs.sort((p, q) => p.offFt - q.offFt)[0] ?? null;
  };
  const middle = between(a, b, 0.5);
  const area = layout.areas.find(({ outline, holes }) => isInside(middle, [outline, ...holes]));
  const primary = layout.outlets.filter(({ role }) => role === 'primary');
  return (
    nearest(primary.filter(({ id }) => id === area?.outlet)) ??
    nearest(primary) ??
    nearest(edges.map(({ label, from, to }) => ({ label, at: from, to }))) ?? { start: null, offFt: null }
  );
}

/** Chalk lines at the rows of boards, longest first. Valleys and ridges have their own lines. */
export function chalkLines(layout: Layout, edges: readonly EdgeReport[]): ChalkLine[] {
  const layers = [...new Set(layout.pieces.map(({ layer }) => layer))].sort((a, b) => a - b);
  return layers
    .flatMap((layer) => rulesOf(layout.pieces.filter((piece) => piece.layer === layer)))
    .flatMap((rule) =>
      rowEnds(rule).map(([from, to]) => {
        const at = (t: number): Point => [rule.at[0] + rule.toward[0] * t, rule.at[1] + rule.toward[1] * t];
        return { from: at(from), to: at(to) };
      }),
    )
    .filter(({ from, to }) => distanceFt(from, to) > LEAST_FT && !onCrease(from, to, layout))
    .map(({ from, to }) => ({ from, to, ...tapeFrom(from, to, layout, edges) }))
    .sort((a, b) => distanceFt(b.from, b.to) - distanceFt(a.from, a.to));
}
