import { boxOf, distanceFt, orient, signedAreaSqFt, snap } from '../core/geometry/vector.ts';
import type { Point, Ring } from '../core/roof.ts';
import { plainNumber } from '../units/print.ts';
import { type InputLog, under } from './problems.ts';
import { readCorners } from './read-measures.ts';

const MOST_CORNERS = 5_000;
/** Corners nearer than this are one corner: the grid of the plan. */
const SAME_FT = 1e-6;
const LARGEST_FT = 5_000;
const LEAST_AREA_SQFT = 0.01;
const MOST_CROSSINGS_TOLD = 5;

export const placeText = ([x, y]: Point): string => `(${plainNumber(x, 3)}, ${plainNumber(y, 3)})`;

const samePlace = (a: Point, b: Point): boolean => distanceFt(a, b) <= SAME_FT;

const sideText = (ring: Ring, i: number): string =>
  `side ${i} from ${placeText(ring[i])} to ${placeText(ring[(i + 1) % ring.length])}`;

function withoutClosingPoint(ring: Ring, path: string, log: InputLog): Ring {
  const last = ring.length - 1;
  if (last < 3 || !samePlace(ring[0], ring[last])) return ring;
  log.note(under(path, last), 'closing-point', `the last corner repeats the first; ${last} corners are kept`);
  return ring.slice(0, last);
}

function tooLarge(ring: Ring, path: string, log: InputLog): boolean {
  const box = boxOf(ring);
  const sizeFt = Math.max(box.maxX - box.minX, box.maxY - box.minY);
  if (sizeFt <= LARGEST_FT) return false;
  const far = ring.findIndex((corner) => distanceFt(corner, ring[0]) > LARGEST_FT / 2);
  log.problem(under(path, Math.max(far, 0)), 'range', `the outline is ${plainNumber(sizeFt)} ft long or wide.`, {
    got: placeText(ring[Math.max(far, 0)]),
    instead: `feet, at most ${plainNumber(LARGEST_FT)}; the unit with it where it is another: "9000 mm"`,
  });
  return true;
}

/** Corners that coincide: next to each other (a side without length) or apart (the outline touches itself). */
function coincide(ring: Ring, path: string, log: InputLog): boolean {
  const seen = new Map<string, number>();
  let any = false;
  ring.forEach((corner, i) => {
    const next = (i + 1) % ring.length;
    if (samePlace(corner, ring[next])) {
      const instead = `corner ${next} left out, or put where it belongs`;
      log.problem(
        under(path, next),
        'zero-length',
        `side ${i} has no length: corners ${i} and ${next} are both at ${placeText(corner)}.`,
        { instead },
      );
      any = true;
    }
    const key = snap(corner)
      .map((v) => v.toFixed(6))
      .join(' ');
    const first = seen.get(key);
    const neighbours = first !== undefined && (i - first === 1 || (first === 0 && i === ring.length - 1));
    if (first !== undefined && !neighbours) {
      const instead = 'each corner once, in the order in which one walks round the edge';
      log.problem(under(path, i), 'repeated-corner', `corner ${i} repeats corner ${first} at ${placeText(corner)}.`, {
        instead,
      });
      any = true;
    }
    if (first === undefined) seen.set(key, i);
  });
  return any;
}

const between = (a: number, b: number, v: number): boolean => v >= Math.min(a, b) && v <= Math.max(a, b);
const onSide = (a: Point, b: Point, p: Point): boolean => between(a[0], b[0], p[0]) && between(a[1], b[1], p[1]);

/** How two sides without a common corner meet; null where they do not. */
function meeting(a: Point, b: Point, c: Point, d: Point): { how: 'crosses' | 'touches'; at: Point } | null {
  const [oc, od, oa, ob] = [orient(a, b, c), orient(a, b, d), orient(c, d, a), orient(c, d, b)];
  if (oc * od < 0 && oa * ob < 0) {
    const t = oc / (oc - od);
    return { how: 'crosses', at: [c[0] + (d[0] - c[0]) * t, c[1] + (d[1] - c[1]) * t] };
  }
  if (oc === 0 && onSide(a, b, c)) return { how: 'touches', at: c };
  if (od === 0 && onSide(a, b, d)) return { how: 'touches', at: d };
  if (oa === 0 && onSide(c, d, a)) return { how: 'touches', at: a };
  return ob === 0 && onSide(c, d, b) ? { how: 'touches', at: b } : null;
}

interface Side {
  i: number;
  a: Point;
  b: Point;
  minX: number;
  maxX: number;
}

/** The first few pairs of sides that cross or touch, by a sweep from west to east. */
function crossings(ring: Ring): string[] {
  const n = ring.length;
  const sides: Side[] = ring.map((a, i) => {
    const b = ring[(i + 1) % n];
    return { i, a, b, minX: Math.min(a[0], b[0]), maxX: Math.max(a[0], b[0]) };
  });
  sides.sort((p, q) => p.minX - q.minX);
  const told: string[] = [];
  for (let s = 0; s < n; s++) {
    for (let t = s + 1; t < n && sides[t].minX <= sides[s].maxX; t++) {
      const [p, q] = sides[s].i < sides[t].i ? [sides[s], sides[t]] : [sides[t], sides[s]];
      if (q.i - p.i === 1 || (p.i === 0 && q.i === n - 1)) continue;
      const met = meeting(p.a, p.b, q.a, q.b);
      if (!met) continue;
      told.push(`${sideText(ring, p.i)} ${met.how} ${sideText(ring, q.i)} at ${placeText(met.at)}.`);
      if (told.length === MOST_CROSSINGS_TOLD) return told;
    }
  }
  return told;
}

/** Sides that run back over the side before them. */
function folds(ring: Ring): string[] {
  return ring.flatMap((corner, i) => {
    const before = ring[(i + ring.length - 1) % ring.length];
    const after = ring[(i + 1) % ring.length];
    const back =
      (corner[0] - before[0]) * (after[0] - corner[0]) + (corner[1] - before[1]) * (after[1] - corner[1]) < 0;
    if (!back || orient(before, corner, after) !== 0) return [];
    return [`${sideText(ring, i)} runs back over the side before it.`];
  });
}

/**
 * Corners as a simple ring, without a repeated closing point; null where it is none, with every reason in the log.
 * @param path of the list of corners
 */
export function checkRing(corners: Ring, path: string, log: InputLog): Ring | null {
  if (corners.length > MOST_CORNERS) {
    const message = `${plainNumber(corners.length)} corners are more than this tool takes for one ring.`;
    log.problem(path, 'too-many-corners', message, { instead: `at most ${plainNumber(MOST_CORNERS)} corners` });
    return null;
  }
  const ring = withoutClosingPoint(corners, path, log);
  if (ring.length < 3) {
    const message = `${ring.length} corner${ring.length === 1 ? '' : 's'} enclose no area.`;
    log.problem(path, 'too-few-corners', message, { instead: 'three corners or more' });
    return null;
  }
  if (tooLarge(ring, path, log) || coincide(ring, path, log)) return null;
  const straight = ring.every((corner) => orient(ring[0], ring[1], corner) === 0);
  const crossed = straight ? [] : [...crossings(ring), ...folds(ring)];
  for (const message of crossed.slice(0, MOST_CROSSINGS_TOLD)) {
    const instead = 'the corners in the order in which one walks round the edge';
    log.problem(path, 'crossed', message, { instead });
  }
  if (crossed.length > 0) return null;
  if (straight || Math.abs(signedAreaSqFt(ring)) < LEAST_AREA_SQFT) {
    const message = 'the corners enclose no area: they lie on one line.';
    log.problem(path, 'zero-area', message, { instead: 'corners that go round the section' });
    return null;
  }
  return ring;
}

/** A ring of the file, measured and checked; null where it is not given or cannot be used. */
export function readRing(
  written: readonly (readonly [number | string, number | string])[] | null | undefined,
  path: string,
  log: InputLog,
): Ring | null {
  if (written && written.length > MOST_CORNERS)
    return checkRing(
      written.map(() => [0, 0]),
      path,
      log,
    );
  const corners = readCorners(written, path, log);
  return corners && checkRing(corners, path, log);
}
