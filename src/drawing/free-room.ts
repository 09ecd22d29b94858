import { type Box, boxesOverlap, distanceFt } from '../core/geometry/vector.ts';
import type { Ring } from '../core/report/types.ts';
import { type Lettering, type Mark, roomOf } from './draw-list.ts';
import type { Sheet } from './sheet.ts';

/** Sides of outlines longer than this many corners are not kept free one by one. */
const MOST_CORNERS = 400;

/** Keeps words from standing on each other or off the sheet: a mark is kept only where its room is still free. */
export class FreeRoom {
  readonly #taken: Box[] = [];
  readonly #sheet: Sheet;

  constructor(sheet: Sheet) {
    this.#sheet = sheet;
  }

  isFree(box: Box): boolean {
    const { minX, maxX, minY, maxY } = this.#sheet.box;
    if (box.minX < minX || box.maxX > maxX || box.minY < minY || box.maxY > maxY) return false;
    return !this.#taken.some((other) => boxesOverlap(box, other));
  }

  take(box: Box): void {
    this.#taken.push(box);
  }

  /** Keeps words off the sides of a ring. */
  takeSides(ring: Ring): void {
    if (ring.length > MOST_CORNERS) return;
    const half = 0.15 * this.#sheet.letterFt;
    ring.forEach((a, i) => {
      const b = ring[(i + 1) % ring.length];
      const steps = Math.ceil(distanceFt(a, b) / (2 * half));
      for (let k = 0; k <= steps; k++) {
        const [x, y] = [a[0] + ((b[0] - a[0]) * k) / steps, a[1] + ((b[1] - a[1]) * k) / steps];
        this.take({ minX: x - half, maxX: x + half, minY: y - half, maxY: y + half });
      }
    });
  }

  /** Keeps words off words that stand already. */
  takeWords(marks: readonly Mark[]): void {
    for (const mark of marks) if (mark.kind === 'text') this.take(roomOf(mark, this.#sheet.letterFt));
  }

  /** The first of some positions that is free, taken; empty where none is. */
  place(choices: readonly Lettering[]): Lettering[] {
    const found = choices.find((mark) => this.isFree(roomOf(mark, this.#sheet.letterFt)));
    if (found === undefined) return [];
    this.takeWords([found]);
    return [found];
  }

  /** Words that must stand, free room or not. */
  insist(mark: Lettering): Lettering {
    this.takeWords([mark]);
    return mark;
  }
}
