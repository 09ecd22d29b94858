import type { RoofToday } from '../core/report/types.ts';
import type { Mark } from './draw-list.ts';
import { dimensionStrings, edgeWords } from './edge-strings.ts';
import { FreeRoom } from './free-room.ts';
import { lettersAcross, type Sheet, sheetFor } from './sheet.ts';

/** What every plan of one roof has in common: its sheet, the words about its edges, and the room that they leave. */
export interface PlanFrame {
  sheet: Sheet;
  room: FreeRoom;
  edges: readonly Mark[];
  strings: readonly Mark[];
}

/** The same frame for the roof as it is and for every layout, so that they stand at one scale. */
export function planFrame({ plan, existing }: RoofToday): PlanFrame {
  const sheet = sheetFor(plan.outline, lettersAcross(existing.outlets.length));
  const room = new FreeRoom(sheet);
  room.takeSides(plan.outline);
  const edges = edgeWords(plan.edges, sheet.letterFt);
  const strings = dimensionStrings(plan.outline, sheet.letterFt);
  room.takeWords([...edges, ...strings]);
  return { sheet, room, edges, strings };
}
