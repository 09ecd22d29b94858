import { markPlace, surveySentence } from '../core/report/page-survey.ts';
import type { RoofToday } from '../core/report/types.ts';
import type { Survey } from '../core/survey/survey.ts';
import { type DrawList, type Mark, placed, polygon } from './draw-list.ts';
import { around, curbMarks, outletMarks } from './fixtures.ts';
import type { FreeRoom } from './free-room.ts';
import { planFrame } from './plan-frame.ts';
import { sheetMarks } from './sheet.ts';

const DOT_LETTERS = 0.22;

/** A dot and its number at every mark; the numbers are what one looks for on the roof, so none is left out. */
function numbered({ marks }: Survey, letterFt: number, room: FreeRoom): Mark[] {
  const radiusFt = DOT_LETTERS * letterFt;
  for (const { at } of marks) {
    const r = radiusFt * 0.9;
    room.take({ minX: at[0] - r, maxX: at[0] + r, minY: at[1] - r, maxY: at[1] + r });
  }
  return marks.flatMap(({ id, at }) => {
    const choices = around(at, String(id), 0.85 * letterFt, { bold: true });
    const words = room.place(choices);
    const dot: Mark = { kind: 'circle', at, radiusFt, pen: null, fill: 'ink' };
    return placed(markPlace(id), [dot, ...(words.length > 0 ? words : [room.insist(choices[0])])]);
  });
}

/** The roof with the numbered marks to read, in ink and grey: it is printed and written on. */
export function surveyPlan(today: RoofToday, survey: Survey): DrawList {
  const { plan, existing } = today;
  const { sheet, room, edges, strings } = planFrame(today);
  const { letterFt } = sheet;
  const curbs = curbMarks(plan, letterFt, room);
  const marks = numbered(survey, letterFt, room);
  return {
    title: 'Where to measure',
    description: `Plan of the roof with its survey marks. ${surveySentence(survey)}`,
    box: sheet.box,
    letterFt,
    marks: [
      polygon(plan.outline, 'sheet'),
      polygon(plan.outline, null, 'outline'),
      ...curbs,
      ...outletMarks(existing.outlets, letterFt, room),
      ...marks,
      ...edges,
      ...strings,
      ...sheetMarks(sheet),
    ],
  };
}
