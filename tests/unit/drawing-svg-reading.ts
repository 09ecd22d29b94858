import type { Point, Ring } from '../../src/core/report/types.ts';

/** Reads back what svg.ts prints: polygons in feet, out of hundredths of a foot with y downward. */

const UNITS_PER_FT = 100;

/** Rings of one path's `d`, in feet, y up. */
export function ringsOf(d: string): Ring[] {
  return [...d.matchAll(/M(-?\d+) (-?\d+)l([^MaZz]*)(z?)/g)].map(([, x, y, rest]) => {
    const numbers = rest.trim().split(/\s+/).map(Number);
    let [px, py] = [Number(x), Number(y)];
    const ring: Point[] = [[px / UNITS_PER_FT, -py / UNITS_PER_FT]];
    for (let i = 0; i + 1 < numbers.length; i += 2) {
      [px, py] = [px + numbers[i], py + numbers[i + 1]];
      ring.push([px / UNITS_PER_FT, -py / UNITS_PER_FT]);
    }
    return ring;
  });
}

/** All rings drawn with a class. */
export const drawnWith = (svg: string, className: string): Ring[] =>
  [...svg.matchAll(/<path class="([^"]*)" d="([^"]*)"/g)]
    .filter(([, classes]) => classes.split(' ').includes(className))
    .flatMap(([, , d]) => ringsOf(d));

export const wordsOf = (svg: string): string[] =>
  [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, text]) => text);
