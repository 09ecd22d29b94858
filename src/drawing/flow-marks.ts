import { isInside } from '../core/geometry/vector.ts';
import { slopeFigure } from '../core/report/page-figures.ts';
import type { FlowArrow, Point, Ring } from '../core/report/types.ts';
import { line, type Mark, polygon } from './draw-list.ts';
import { around } from './fixtures.ts';
import type { FreeRoom } from './free-room.ts';

/** One figure is not printed more often than this; the arrows say the rest. */
const SAME_FIGURE = 6;

/** Which way water runs, with the fall in in/ft. Arrows and words that find no room inside the outline are left out. */
export function flowMarks(arrows: readonly FlowArrow[], outline: Ring, letterFt: number, room: FreeRoom): Mark[] {
  const long = 1.5 * letterFt;
  const said = new Map<string, number>();
  return arrows.flatMap(({ at, toward, slopeInPerFt }): Mark[] => {
    const [dx, dy] = toward;
    const from: Point = [at[0] - (dx * long) / 2, at[1] - (dy * long) / 2];
    const to: Point = [at[0] + (dx * long) / 2, at[1] + (dy * long) / 2];
    const pad = 0.3 * letterFt;
    const box = {
      minX: Math.min(from[0], to[0]) - pad,
      maxX: Math.max(from[0], to[0]) + pad,
      minY: Math.min(from[1], to[1]) - pad,
      maxY: Math.max(from[1], to[1]) + pad,
    };
    if (!room.isFree(box)) return [];
    room.take(box);
    const figure = slopeFigure(slopeInPerFt);
    const times = said.get(figure) ?? 0;
    const words = around(at, figure, 0.6 * letterFt + (Math.abs(dy) * long) / 2, { size: 'tiny' })
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
