import { type Box, boxOf, isInside } from '../core/geometry/vector.ts';
import { slopeFigure } from '../core/report/page-figures.ts';
import type { FlowArrow, Point, Ring } from '../core/report/types.ts';
import { line, type Mark, polygon } from './draw-list.ts';
import { around } from './fixtures.ts';
import type { FreeRoom } from './free-room.ts';

/** Length of an arrow in letters. */
const LONG = 1.5;

function endsOf([x, y]: Point, [dx, dy]: Point, letterFt: number): [Point, Point] {
  const half = (LONG * letterFt) / 2;
  return [
    [x - dx * half, y - dy * half],
    [x + dx * half, y + dy * half],
  ];
}

function roomOfArrow(at: Point, toward: Point, letterFt: number): Box {
  const box = boxOf(endsOf(at, toward, letterFt));
  const pad = 0.3 * letterFt;
  return { minX: box.minX - pad, maxX: box.maxX + pad, minY: box.minY - pad, maxY: box.maxY + pad };
}

/** One figure is not printed more often than this; the arrows say the rest. */
const SAME_FIGURE = 6;

/** An arrow that may stand at the first free one of several spots. */
export interface Flow extends Omit<FlowArrow, 'at'> {
  spots: readonly Point[];
}

/** Which way water runs, with the fall in in/ft. Arrows and words that find no room inside the outline are left out. */
export function flowMarks(arrows: readonly Flow[], outline: Ring, letterFt: number, room: FreeRoom): Mark[] {
  const said = new Map<string, number>();
  return arrows.flatMap(({ spots, toward, slopeInPerFt }): Mark[] => {
    const at = spots.find((spot) => room.isFree(roomOfArrow(spot, toward, letterFt)));
    if (at === undefined) return [];
    room.take(roomOfArrow(at, toward, letterFt));
    const [, dy] = toward;
    const [from, to] = endsOf(at, toward, letterFt);
    const figure = slopeFigure(slopeInPerFt);
    const times = said.get(figure) ?? 0;
    const words = around(at, figure, 0.6 * letterFt + (Math.abs(dy) * LONG * letterFt) / 2, { size: 'tiny' })
      .slice(0, 4)
      .filter((mark) => isInside(mark.at, [outline]));
    const placed = times < SAME_FIGURE ? room.place(words) : [];
    said.set(figure, times + placed.length);
    return [...arrow(from, to, 0.45 * letterFt), ...placed];
  });
}

export function arrow(from: Point, to: Point, headFt: number): Mark[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [dx, dy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const back: Point = [to[0] - dx * headFt, to[1] - dy * headFt];
  const half = headFt * 0.38;
  return [
    line(from, back, 'arrow'),
    polygon([to, [back[0] - dy * half, back[1] + dx * half], [back[0] + dy * half, back[1] - dx * half]], 'ink'),
  ];
}
