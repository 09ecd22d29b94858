import type { Point, Ring } from '../../src/core/roof.ts';
import { riseIn } from '../../src/core/taper/pattern.ts';
import type { RandomRoof } from './random-roofs.ts';

/**
 * An independent answer to "how high is the taper here": sight by testing a segment against every wall, least levels of
 * corners by relaxing all pairs until nothing changes. Slow and plain on purpose.
 */
export function directHeights(rings: readonly Ring[], { outlets }: RandomRoof): (p: Point) => number {
  const walls = wallsOf(rings);
  const corners = rings.flat().filter((p) => turnsIn(walls, p));
  const patterns = [...new Map(outlets.map(({ pattern }) => [pattern.name, pattern])).values()];
  const levels = patterns.map((pattern) => {
    const level = corners.map(() => Number.POSITIVE_INFINITY);
    const own = outlets.filter((outlet) => outlet.pattern.name === pattern.name);
    corners.forEach((c, i) => {
      for (const { at, levelIn } of own)
        if (sees(walls, at, c)) level[i] = Math.min(level[i], levelIn + riseIn(pattern, by(at, c)));
    });
    const edges = corners.map((a) =>
      corners.map((b) => (sees(walls, a, b) ? riseIn(pattern, by(a, b)) : Number.POSITIVE_INFINITY)),
    );
    for (let changed = true; changed; ) {
      changed = false;
      edges.forEach((row, i) => {
        row.forEach((rise, j) => {
          if (level[i] + rise < level[j] - 1e-9) {
            level[j] = level[i] + rise;
            changed = true;
          }
        });
      });
    }
    return { pattern, own, level };
  });
  return (p) => {
    let least = Number.POSITIVE_INFINITY;
    for (const { pattern, own, level } of levels) {
      for (const { at, levelIn } of own)
        if (sees(walls, at, p)) least = Math.min(least, levelIn + riseIn(pattern, by(at, p)));
      corners.forEach((c, i) => {
        if (level[i] < least && sees(walls, c, p)) least = Math.min(least, level[i] + riseIn(pattern, by(c, p)));
      });
    }
    return least;
  };
}

const by = (a: Point, b: Point): Point => [b[0] - a[0], b[1] - a[1]];

type Wall = readonly [Point, Point];

/** Walls of the section. Where a curb stands against a wall nothing lies between the two: neither is a way. */
function wallsOf(rings: readonly Ring[]): Wall[] {
  const all = rings.flatMap((ring) => ring.map((a, i): Wall => [a, ring[(i + 1) % ring.length]]));
  return all.filter(
    ([a, b]) => !all.some(([c, d]) => c[0] === b[0] && c[1] === b[1] && d[0] === a[0] && d[1] === a[1]),
  );
}

/** Parts of the section that touch in a point, or all but: no water passes there, which a test of segments cannot tell. */
export function isPinched(rings: readonly Ring[]): boolean {
  const walls = wallsOf(rings);
  if (walls.length < rings.flat().length) return true;
  const near = (p: Point, [c, d]: Wall): boolean => {
    const t = Math.min(1, Math.max(0, place(c, d, p)));
    return Math.hypot(c[0] + (d[0] - c[0]) * t - p[0], c[1] + (d[1] - c[1]) * t - p[1]) < 1e-4;
  };
  return walls.some(([a], i) =>
    walls.some((wall, k) => k !== i && (wall[1][0] !== a[0] || wall[1][1] !== a[1]) && near(a, wall)),
  );
}

/** Corners round which water is led: where the wall bends towards the section. Walls have it on their left. */
function turnsIn(walls: readonly Wall[], p: Point): boolean {
  const coming = walls.filter(([, b]) => b[0] === p[0] && b[1] === p[1]);
  const going = walls.filter(([a]) => a[0] === p[0] && a[1] === p[1]);
  if (coming.length !== 1 || going.length !== 1) return true;
  return side(coming[0][0], p, going[0][1]) < 0;
}

const side = (a: Point, b: Point, p: Point): number => {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const raw = ((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])) / Math.max(length, 1e-12);
  return Math.abs(raw) < 1e-4 ? 0 : raw;
};

/** A closed segment keeps to the section: it crosses no wall, and no middle of its stretches lies outside. */
function sees(walls: readonly Wall[], a: Point, b: Point): boolean {
  const stops = [0, 1];
  for (const [c, d] of walls) {
    const [sa, sb] = [side(c, d, a), side(c, d, b)];
    const [sc, sd] = [side(a, b, c), side(a, b, d)];
    if (sa * sb < 0 && sc * sd < 0) return false;
    if (sc === 0) stops.push(place(a, b, c));
    if (sd === 0) stops.push(place(a, b, d));
  }
  const cuts = stops.filter((t) => t >= 0 && t <= 1).sort((x, y) => x - y);
  for (let i = 1; i < cuts.length; i++) {
    if (cuts[i] - cuts[i - 1] < 1e-5) continue;
    const t = (cuts[i] + cuts[i - 1]) / 2;
    const p: Point = [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
    if (!within(walls, p)) return false;
  }
  return true;
}

const place = (a: Point, b: Point, p: Point): number => {
  const length = (b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2;
  return length === 0 ? 0 : ((p[0] - a[0]) * (b[0] - a[0]) + (p[1] - a[1]) * (b[1] - a[1])) / length;
};

function within(walls: readonly Wall[], p: Point): boolean {
  let inside = false;
  for (const [a, b] of walls) {
    const t = place(a, b, p);
    if (side(a, b, p) === 0 && t >= 0 && t <= 1) return true;
    if (a[1] > p[1] !== b[1] > p[1] && p[0] < ((b[0] - a[0]) * (p[1] - a[1])) / (b[1] - a[1]) + a[0]) inside = !inside;
  }
  return inside;
}
