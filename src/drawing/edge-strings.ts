import { between, direction, distanceFt, signedAreaSqFt } from '../core/geometry/vector.ts';
import type { EdgeReport, Point, Ring } from '../core/report/types.ts';
import { feetInches } from '../units/print.ts';
import { lettering, line, type Mark, placed, widthFt } from './draw-list.ts';
import type { LetterSize } from './pens.ts';

const WORDS_OFF = 0.95;
const STRING_OFF = 2.5;

/** Angle at which words along a line read from the foot or the right of the sheet. */
export function readingAngleDeg([dx, dy]: Point): number {
  const deg = (Math.atan2(dy, dx) * 180) / Math.PI;
  if (deg > 90.01) return deg - 180;
  return deg <= -89.99 ? deg + 180 : deg;
}

const off = (p: Point, normal: Point, byFt: number): Point => [p[0] + normal[0] * byFt, p[1] + normal[1] * byFt];

/** Unit vector out of the section across a side of a ring that runs either way. */
export function outward(ring: Ring): (a: Point, b: Point) => Point {
  const sign = signedAreaSqFt(ring) > 0 ? 1 : -1;
  return (a, b) => {
    const [dx, dy] = direction(a, b);
    return [sign * dy, -sign * dx];
  };
}

const sizes: readonly LetterSize[] = ['plain', 'small', 'tiny'];

/** The largest size at which words fit a length; null where none does. */
function sizeFor(text: string, lengthFt: number, letterFt: number): LetterSize | null {
  return sizes.find((size) => widthFt(text, size, letterFt) <= lengthFt) ?? null;
}

/** The kind of every edge along it, in words. Edges run counter-clockwise, the section on their left hand. */
export function edgeWords(edges: readonly EdgeReport[], letterFt: number): Mark[] {
  return edges.flatMap(({ id, from, to, what: words, lengthFt }) => {
    const short = words.split(' ')[0];
    const [text, size] = [words, short]
      .map((each) => [each, sizeFor(each, lengthFt - letterFt, letterFt)] as const)
      .find(([, fits]) => fits !== null) ?? [words, null];
    if (size === null) return [];
    const [dx, dy] = direction(from, to);
    const at = off(between(from, to, 0.5), [dy, -dx], WORDS_OFF * letterFt);
    return placed(id, [lettering(at, text, { size, angleDeg: readingAngleDeg([dx, dy]) })]);
  });
}

/** Lengths of the sides, outside the outline, in feet and inches. */
export function dimensionStrings(outline: Ring, letterFt: number): Mark[] {
  const normalOf = outward(outline);
  return outline.flatMap((a, i): Mark[] => {
    const b = outline[(i + 1) % outline.length];
    const lengthFt = distanceFt(a, b);
    const text = feetInches(lengthFt);
    const size = sizeFor(text, lengthFt - 0.8 * letterFt, letterFt);
    if (size === null) return [];
    const normal = normalOf(a, b);
    const away = STRING_OFF * letterFt;
    const [p, q] = [off(a, normal, away), off(b, normal, away)];
    const [dx, dy] = direction(a, b);
    const tick = 0.35 * letterFt;
    const slash = (at: Point): Mark =>
      line(
        [at[0] - (dx - normal[0]) * tick, at[1] - (dy - normal[1]) * tick],
        [at[0] + (dx - normal[0]) * tick, at[1] + (dy - normal[1]) * tick],
        'dimension',
      );
    return [
      line(p, q, 'dimension'),
      ...[a, b].map((end) =>
        line(off(end, normal, 0.4 * letterFt), off(end, normal, away + 0.4 * letterFt), 'dimension'),
      ),
      slash(p),
      slash(q),
      lettering(off(between(a, b, 0.5), normal, away + 0.75 * letterFt), text, {
        size,
        angleDeg: readingAngleDeg([dx, dy]),
      }),
    ];
  });
}
