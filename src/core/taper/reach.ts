import type { Plane } from '../geometry/plane.ts';
import { planeThrough } from '../geometry/plane.ts';
import { cross, dot } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';
import type { SlopePattern } from './pattern.ts';
import { isReached, type Stretch } from './profile.ts';

/**
 * Where one plane rises from a place on a side: between two rays, one that bounds it on the right and one on the left.
 * A single point gives a wedge, a stretch gives a wedge swept along it or a strip between two parallel rays.
 */
export interface Reach {
  plane: Plane;
  outlet: number;
  rightAt: Point;
  rightRay: Point;
  leftAt: Point;
  leftRay: Point;
}

/** A triangle's side as the triangle sees it: the triangle lies to the left of its direction. */
export interface Side {
  at: Point;
  along: Point;
  lengthFt: number;
}

/** Every plane of the pattern about one point. */
export function reachesOfPoint(pattern: SlopePattern, at: Point, levelIn: number, outlet: number): Reach[] {
  return pattern.sectors.map(({ from, to, gx, gy }) => ({
    plane: planeThrough(at, levelIn, gx, gy),
    outlet,
    rightAt: at,
    rightRay: from,
    leftAt: at,
    leftRay: to,
  }));
}

const place = ({ at, along }: Side, s: number): Point => [at[0] + along[0] * s, at[1] + along[1] * s];

/** Directions that turn by less than this lie along each other. */
const PARALLEL = 1e-9;

/** Slope of a stretch, and how far it can be trusted: short ones carry rounding. */
function slopeOf({ s0, s1, h0, h1 }: Stretch): { rise: number; slack: number } {
  return { rise: (h1 - h0) / (s1 - s0), slack: 1e-8 + 1e-9 / (s1 - s0) };
}

/** Planes of the pattern that rise along the side just as the stretch does: the usual case. */
function swept(side: Side, pattern: SlopePattern, stretch: Stretch): Reach[] {
  const { rise, slack } = slopeOf(stretch);
  const first = place(side, stretch.s0);
  const last = place(side, stretch.s1);
  return pattern.sectors.flatMap(({ from, to, gx, gy }): Reach[] => {
    if (Math.abs(dot([gx, gy], side.along) - rise) > slack) return [];
    // A wedge that looks away from the triangle has no bounds that hold on this side.
    if (cross(side.along, from) < PARALLEL && cross(side.along, to) < PARALLEL) return [];
    return [
      {
        plane: planeThrough(first, stretch.h0, gx, gy),
        outlet: stretch.outlet,
        rightAt: cross(from, side.along) > 0 ? first : last,
        rightRay: from,
        leftAt: cross(side.along, to) > 0 ? first : last,
        leftRay: to,
      },
    ];
  });
}

/** Planes between two of the pattern's, as an outlet along a turned edge makes them: strips along the creases. */
function strips(side: Side, pattern: SlopePattern, stretch: Stretch): Reach[] {
  const { rise, slack } = slopeOf(stretch);
  const first = place(side, stretch.s0);
  const last = place(side, stretch.s1);
  return pattern.sectors.flatMap((sector, i): Reach[] => {
    const before = pattern.sectors[(i + pattern.sectors.length - 1) % pattern.sectors.length];
    const ray = sector.from;
    const turn = cross(side.along, ray);
    const [a, b] = [dot([before.gx, before.gy], side.along), dot([sector.gx, sector.gy], side.along)];
    if (turn < PARALLEL || rise < Math.min(a, b) + slack || rise > Math.max(a, b) - slack) return [];
    // The plane rises by the stretch's slope along the side and by the crease's along the crease.
    const up = dot([sector.gx, sector.gy], ray);
    const gx = (rise * ray[1] - up * side.along[1]) / turn;
    const gy = (up * side.along[0] - rise * ray[0]) / turn;
    const plane = planeThrough(first, stretch.h0, gx, gy);
    return [{ plane, outlet: stretch.outlet, rightAt: last, rightRay: ray, leftAt: first, leftRay: ray }];
  });
}

/** The planes that rise from where two stretches meet; `null` = nothing joins on there. */
function knee(side: Side, pattern: SlopePattern, left: Stretch | null, right: Stretch | null): Reach[] {
  const own = right ?? left;
  if (own === null) return [];
  const [s, h] = right === null ? [own.s1, own.h1] : [own.s0, own.h0];
  const before = left === null ? null : slopeOf(left);
  const after = right === null ? null : slopeOf(right);
  const at = place(side, s);
  return pattern.sectors.flatMap(({ from, to, gx, gy }): Reach[] => {
    const along = dot([gx, gy], side.along);
    // Whoever stands in this plane finds a lower start to the one side or to the other.
    if (before !== null && along < before.rise + before.slack) return [];
    if (after !== null && along > after.rise - after.slack) return [];
    const plane = planeThrough(at, h, gx, gy);
    return [{ plane, outlet: own.outlet, rightAt: at, rightRay: from, leftAt: at, leftRay: to }];
  });
}

const JOINED_IN = 1e-7;

/**
 * Every plane that the heights along a side send into its triangle.
 * The least way from a side to a place starts at an end of a stretch, or runs along a crease of the pattern: the sum of
 * height and rise is convex along each stretch.
 * @param stretches in order along the side
 * @param entering which of them send anything
 */
export function reachesOfSide(
  side: Side,
  pattern: SlopePattern,
  stretches: readonly Stretch[],
  entering: (stretch: Stretch) => boolean,
): Reach[] {
  const out: Reach[] = [];
  const joined = (a: Stretch | undefined, b: Stretch | undefined): boolean =>
    a !== undefined && b !== undefined && isReached(a) && isReached(b) && Math.abs(a.h1 - b.h0) < JOINED_IN;
  stretches.forEach((stretch, i) => {
    if (!isReached(stretch) || !entering(stretch)) return;
    out.push(...swept(side, pattern, stretch), ...strips(side, pattern, stretch));
    const [before, after] = [stretches[i - 1], stretches[i + 1]];
    out.push(...knee(side, pattern, joined(before, stretch) ? before : null, stretch));
    if (!joined(stretch, after)) out.push(...knee(side, pattern, stretch, null));
    else if (!entering(after)) out.push(...knee(side, pattern, stretch, after));
  });
  return out;
}
