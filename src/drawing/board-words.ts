import { type Box, between, boxOf, direction, distanceFt, isInside } from '../core/geometry/vector.ts';
import type { BoardPiece, Layout, Point } from '../core/report/types.ts';
import { feetInches, inches } from '../units/print.ts';
import type { ChalkLine } from './chalk.ts';
import { lettering, type Mark, placed, widthFt } from './draw-list.ts';
import { readingAngleDeg } from './edge-strings.ts';
import type { FreeRoom } from './free-room.ts';

/** The mark on every board where it fits, turned where the board stands upright. */
export function boardNames(pieces: readonly BoardPiece[], letterFt: number, room: FreeRoom): Mark[] {
  return pieces.flatMap(({ outline, mark, labelAt }) => {
    const box = boxOf(outline);
    const long = widthFt(mark, 'tiny', letterFt);
    const [across, up] = [box.maxX - box.minX, box.maxY - box.minY];
    if (long > Math.max(across, up) || 0.8 * letterFt > Math.min(across, up)) return [];
    const angleDeg = long <= across ? 0 : 90;
    const spots = [0, 0.9, -0.9].map((by): Point => {
      const [x, y] = labelAt;
      return angleDeg === 0 ? [x, y + by * letterFt] : [x + by * letterFt, y];
    });
    const within = spots.filter((at) => isInside(at, [outline]));
    return room.place(within.map((at) => lettering(at, mark, { size: 'tiny', angleDeg, rim: false })));
  });
}

/** How far off the edge each chalk line is, at its end. */
export function chalkWords(lines: readonly ChalkLine[], letterFt: number, room: FreeRoom): Mark[] {
  return lines.flatMap(({ from, to, offFt }) => {
    if (offFt === null) return [];
    const angleDeg = readingAngleDeg(direction(from, to));
    const text = feetInches(offFt);
    if (widthFt(text, 'tiny', letterFt) > distanceFt(from, to)) return [];
    return room.place(
      [0.12, 0.88, 0.3, 0.7].map((t) => lettering(between(from, to, t), text, { size: 'tiny', angleDeg })),
    );
  });
}

/** Height of the wood at both ends of every straight stretch of edge, outside the outline. */
export function nailerWords(layout: Layout, letterFt: number, room: FreeRoom): Mark[] {
  return layout.nailers.flatMap(({ from, to, startIn, endIn }) => {
    const [dx, dy] = direction(from, to);
    const off = 0.8 * letterFt;
    const end = (t: number, heightIn: number): Mark[] => {
      const [x, y] = between(from, to, t);
      const text = inches(heightIn);
      const angleDeg = readingAngleDeg([dx, dy]);
      return room.place([lettering([x + dy * off, y - dx * off], text, { size: 'tiny', angleDeg, bold: true })]);
    };
    const t = Math.min(0.5, (1.3 * letterFt) / Math.max(distanceFt(from, to), 1e-6));
    return [...end(t, startIn), ...end(1 - t, endIn)];
  });
}

/** Where the number of a spot may stand, in letters from the spot. */
const turns: readonly Point[] = [
  [0, -0.9],
  [0, 0.9],
  [0.9, 0],
  [-0.9, 0],
  [1.1, -1.1],
  [1.1, 1.1],
  [-1.1, 1.1],
  [-1.1, -1.1],
];

/** Numbered spots to read with a level: a dot where the rod stands, its number in a ring beside it. */
export function checkMarks(layout: Layout, letterFt: number, room: FreeRoom): Mark[] {
  const r = 0.55 * letterFt;
  return layout.checkPoints.flatMap(({ id, at }) => {
    const spot: Mark = { kind: 'circle', at, radiusFt: 0.14 * letterFt, pen: null, fill: 'ink' };
    const around = turns.map(([dx, dy]): Point => [at[0] + dx * letterFt, at[1] + dy * letterFt]);
    const free = around.find((p) => room.isFree(squareAt(p, r)));
    if (free === undefined) return placed(`check-${id}`, [spot]);
    room.take(squareAt(free, r));
    return placed(`check-${id}`, [
      spot,
      { kind: 'circle', at: free, radiusFt: r, pen: 'fixture', fill: 'sheet' },
      lettering(free, id, { size: id.length > 1 ? 'tiny' : 'small', bold: true, rim: false }),
    ]);
  });
}

export const squareAt = ([x, y]: Point, half: number): Box => ({
  minX: x - half,
  maxX: x + half,
  minY: y - half,
  maxY: y + half,
});
