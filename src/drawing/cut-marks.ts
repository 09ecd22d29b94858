import { boxOf, grown } from '../core/geometry/vector.ts';
import type { Point } from '../core/report/types.ts';
import { alongRay } from './crossings.ts';
import { lettering, line, type Mark, placed } from './draw-list.ts';
import type { FreeRoom } from './free-room.ts';
import type { Cut } from './section-profile.ts';

/** How far the stroke of a cut reaches into the roof and out of it, in letters. */
const INSIDE = 1.1;
const OUTSIDE = 0.35;

/** Where a section is cut: a stroke across the edge at both its ends, with its letter. The plan between stays clear. */
export function cutMarks(cuts: readonly Cut[], letterFt: number, room: FreeRoom): Mark[] {
  return cuts.flatMap(({ name, ray, fromFt, toFt }) => {
    const marks = [
      { at: fromFt, out: -1 },
      { at: toFt, out: 1 },
    ].flatMap(({ at, out }): Mark[] => {
      const off = (letters: number): Point => alongRay(ray, at + out * letters * letterFt);
      const letter = (letters: number) => lettering(off(letters), name, { bold: true });
      const spots = [letter(1), letter(1.9), letter(-1.8)];
      const [found] = room.place(spots);
      room.take(grown(boxOf([off(-INSIDE), off(OUTSIDE)]), 0.5 * letterFt));
      return [line(off(-INSIDE), off(OUTSIDE), 'cut'), found ?? room.insist(spots[1])];
    });
    return placed(`section-${name.toLowerCase()}`, marks);
  });
}
