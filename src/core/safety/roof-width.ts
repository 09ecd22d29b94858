import { safetyLimits } from '../../../reference/safety/limits.ts';
import type { Point, Ring } from '../roof.ts';

export interface RoofPart {
  /** The lesser of the two plan dimensions. */
  widthFt: number;
  lengthFt: number;
  areaSqFt: number;
}

export interface RoofWidths {
  parts: readonly RoofPart[];
  /** The shape is judged by a person: not built of right angles, or with many inside corners. */
  needsCompetentPerson: boolean;
}

interface Box {
  left: number;
  bottom: number;
  right: number;
  top: number;
}

interface Division {
  boxes: readonly Box[];
  cutFt: number;
}

const TOLERANCE_FT = 0.01;
/** Beyond this many inside corners the shortest set of cuts is not searched; a person judges the shape. */
const MOST_INSIDE_CORNERS = 8;

const same = (a: number, b: number) => Math.abs(a - b) <= TOLERANCE_FT;

/** The outline turned so that its longest side runs along x. */
function turned(outline: Ring): Ring {
  let longest = 0;
  let cos = 1;
  let sin = 0;
  outline.forEach((a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (length <= longest) return;
    longest = length;
    cos = (b[0] - a[0]) / length;
    sin = (b[1] - a[1]) / length;
  });
  return outline.map(([x, y]): Point => [x * cos + y * sin, y * cos - x * sin]);
}

function isRightAngled(ring: Ring): boolean {
  return ring.every((a, i) => {
    const b = ring[(i + 1) % ring.length]!;
    return same(a[0], b[0]) || same(a[1], b[1]);
  });
}

function steps(values: readonly number[]): readonly number[] {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted.filter((value, i) => i === 0 || !same(value, sorted[i - 1]!));
}

function isInside(ring: Ring, [x, y]: Point): boolean {
  let inside = false;
  ring.forEach(([ax, ay], i) => {
    const [bx, by] = ring[(i + 1) % ring.length]!;
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
  });
  return inside;
}

/** The roof as cells between all its corner lines: true where there is roof. */
interface Cells {
  xs: readonly number[];
  ys: readonly number[];
  filled: readonly (readonly boolean[])[];
}

function cellsOf(ring: Ring): Cells {
  const xs = steps(ring.map(([x]) => x));
  const ys = steps(ring.map(([, y]) => y));
  const filled = xs
    .slice(1)
    .map((x, i) => ys.slice(1).map((y, j) => isInside(ring, [(x + xs[i]!) / 2, (y + ys[j]!) / 2])));
  return { xs, ys, filled };
}

/** Cells of one part of the roof, as "i,j". */
type Region = ReadonlySet<string>;

interface Cut {
  across: 'x' | 'y';
  /** Line index, and the cells on either side of the cut. */
  pairs: readonly (readonly [string, string])[];
  lengthFt: number;
}

/** Inside corners of a region: a grid point with three of its four cells filled. */
function insideCorners(cells: Cells, region: Region): readonly (readonly [i: number, j: number])[] {
  const corners: [number, number][] = [];
  for (let i = 1; i < cells.xs.length - 1; i += 1)
    for (let j = 1; j < cells.ys.length - 1; j += 1) {
      const around = [
        [i - 1, j - 1],
        [i, j - 1],
        [i - 1, j],
        [i, j],
      ].filter((cell) => region.has(cell.join(',')));
      if (around.length === 3) corners.push([i, j]);
    }
  return corners;
}

/** The two straight cuts from an inside corner to the far side of the region. */
function cutsAt(cells: Cells, region: Region, i: number, j: number): readonly Cut[] {
  const run = (across: 'x' | 'y'): Cut => {
    const pairs: [string, string][] = [];
    let lengthFt = 0;
    const lines = across === 'x' ? cells.ys : cells.xs;
    const start = across === 'x' ? j : i;
    for (const step of [1, -1]) {
      for (let k = step > 0 ? start : start - 1; k >= 0 && k < lines.length - 1; k += step) {
        const low = across === 'x' ? `${i - 1},${k}` : `${k},${j - 1}`;
        const high = across === 'x' ? `${i},${k}` : `${k},${j}`;
        if (!region.has(low) || !region.has(high)) break;
        pairs.push([low, high]);
        lengthFt += lines[k + 1]! - lines[k]!;
      }
    }
    return { across, pairs, lengthFt };
  };
  return [run('x'), run('y')].filter((cut) => cut.pairs.length > 0);
}

function neighbours(cell: string): readonly string[] {
  const [i, j] = cell.split(',').map(Number) as [number, number];
  return [`${i + 1},${j}`, `${i - 1},${j}`, `${i},${j + 1}`, `${i},${j - 1}`];
}

/** The parts into which a cut divides a region. */
function divide(region: Region, cut: Cut): readonly Region[] {
  const walls = new Set(cut.pairs.flatMap(([low, high]) => [`${low}|${high}`, `${high}|${low}`]));
  const left = new Set(region);
  const parts: Region[] = [];
  for (const seed of region) {
    if (!left.delete(seed)) continue;
    const part = new Set([seed]);
    const queue = [seed];
    for (let cell = queue.pop(); cell !== undefined; cell = queue.pop())
      for (const next of neighbours(cell))
        if (left.has(next) && !walls.has(`${cell}|${next}`)) {
          left.delete(next);
          part.add(next);
          queue.push(next);
        }
    parts.push(part);
  }
  return parts;
}

function boxOf(cells: Cells, region: Region): Box {
  const at = [...region].map((cell) => cell.split(',').map(Number) as [number, number]);
  return {
    left: cells.xs[Math.min(...at.map(([i]) => i))]!,
    right: cells.xs[Math.max(...at.map(([i]) => i)) + 1]!,
    bottom: cells.ys[Math.min(...at.map(([, j]) => j))]!,
    top: cells.ys[Math.max(...at.map(([, j]) => j)) + 1]!,
  };
}

const widthOf = (box: Box) => Math.min(box.right - box.left, box.top - box.bottom);
const narrow = (boxes: readonly Box[]) =>
  boxes.filter((box) => widthOf(box) < safetyLimits.monitorWidthFt.value - TOLERANCE_FT).length;

/** Shorter cuts first; of equal ones, fewer parts under 50 ft, as the guideline asks. */
function better(a: Division, b: Division): Division {
  if (!same(a.cutFt, b.cutFt)) return a.cutFt < b.cutFt ? a : b;
  return narrow(b.boxes) < narrow(a.boxes) ? b : a;
}

function shortestDivision(cells: Cells, region: Region, seen: Map<string, Division>): Division {
  const key = [...region].toSorted().join(' ');
  const known = seen.get(key);
  if (known) return known;
  const corner = insideCorners(cells, region)[0];
  let best: Division | null = corner ? null : { boxes: [boxOf(cells, region)], cutFt: 0 };
  for (const cut of corner ? cutsAt(cells, region, corner[0], corner[1]) : []) {
    const parts = divide(region, cut).map((part) => shortestDivision(cells, part, seen));
    const found = {
      boxes: parts.flatMap((part) => part.boxes),
      cutFt: cut.lengthFt + parts.reduce((sum, part) => sum + part.cutFt, 0),
    };
    best = best ? better(best, found) : found;
  }
  if (!best) throw new Error('an inside corner without a cut');
  seen.set(key, best);
  return best;
}

function partOf(box: Box): RoofPart {
  const x = box.right - box.left;
  const y = box.top - box.bottom;
  return { widthFt: Math.min(x, y), lengthFt: Math.max(x, y), areaSqFt: x * y };
}

/**
 * Roof widths for the safety monitor: a roof of right angles is cut at its inside corners by the shortest set of lines
 * into rectangles, and each one's width is the lesser of its plan dimensions. Any other shape takes the box around it,
 * which is never narrower than the roof, and is marked for a competent person.
 * @param outline plan outline [ft]
 * Source: 29 CFR 1926 Subpart M, Appendix A (non-mandatory). Correctness: tests/published/safety-fall.test.ts
 */
export function roofWidths(outline: Ring): RoofWidths {
  const ring = turned(outline);
  const xs = ring.map(([x]) => x);
  const ys = ring.map(([, y]) => y);
  const around = { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
  const odd: RoofWidths = { parts: [partOf(around)], needsCompetentPerson: true };
  if (!isRightAngled(ring)) return odd;
  const cells = cellsOf(ring);
  const region: Region = new Set(
    cells.filled.flatMap((column, i) => column.flatMap((filled, j) => (filled ? [`${i},${j}`] : []))),
  );
  if (insideCorners(cells, region).length > MOST_INSIDE_CORNERS) return odd;
  const { boxes } = shortestDivision(cells, region, new Map());
  return { parts: boxes.map(partOf).toSorted((a, b) => b.widthFt - a.widthFt), needsCompetentPerson: false };
}
