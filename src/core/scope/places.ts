import { between, distanceFt, isInside, orient, toSegment } from '../geometry/vector.ts';
import type { InspectionFinding, Point, Ring } from '../roof.ts';

/** The marked stretch of a side. */
export function stretchOf({ side, fromFt, toFt }: InspectionFinding, outline: Ring): [Point, Point] | null {
  if (side === null) return null;
  const [a, b] = [outline[side], outline[(side + 1) % outline.length]];
  const length = distanceFt(a, b);
  return [between(a, b, (fromFt ?? 0) / length), between(a, b, (toFt ?? length) / length)];
}

type Segment = readonly [Point, Point];

/** Lines that bound the place of a finding; a spot is a line without length. Empty = no place was noted. */
function linesOf(finding: InspectionFinding, outline: Ring): Segment[] {
  const { at, outline: ring } = finding;
  if (ring !== null) return ring.map((p, i) => [p, ring[(i + 1) % ring.length]]);
  const stretch = stretchOf(finding, outline);
  if (stretch !== null) return [stretch];
  return at === null ? [] : [[at, at]];
}

const cross = ([a, b]: Segment, [c, d]: Segment): boolean =>
  orient(a, b, c) * orient(a, b, d) < 0 && orient(c, d, a) * orient(c, d, b) < 0;

function betweenLinesFt(one: Segment, other: Segment): number {
  if (cross(one, other)) return 0;
  return Math.min(
    ...one.map((p) => toSegment(p, ...other).distanceFt),
    ...other.map((p) => toSegment(p, ...one).distanceFt),
  );
}

/** Least distance in plan between the places of two findings, ft; null = one of them has no place. */
export function apartFt(one: InspectionFinding, other: InspectionFinding, outline: Ring): number | null {
  const [lines, others] = [linesOf(one, outline), linesOf(other, outline)];
  if (lines.length === 0 || others.length === 0) return null;
  const holds = ({ outline: ring }: InspectionFinding, [[p]]: readonly Segment[]): boolean =>
    ring !== null && isInside(p, [ring]);
  if (holds(one, others) || holds(other, lines)) return 0;
  return Math.min(...lines.flatMap((line) => others.map((each) => betweenLinesFt(line, each))));
}
