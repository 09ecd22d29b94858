import type { Assessment, Layout } from '../core/report/types.ts';
import { boardPlan, MANY_BOARDS } from './board-plan.ts';
import { type BoardKeyRow, boardKey } from './board-shade.ts';
import type { DrawList } from './draw-list.ts';

export interface BoardSheets {
  whole: DrawList;
  key: readonly BoardKeyRow[];
  /** One sheet to each drainage area, where the whole is too large to name its boards. */
  parts: readonly { id: string; list: DrawList }[];
}

/** All sheets the crew lays boards by. */
export function boardSheets(assessment: Assessment, layout: Layout): BoardSheets {
  const many = layout.pieces.length > MANY_BOARDS;
  return {
    whole: boardPlan(assessment, layout),
    key: boardKey(layout),
    parts: many
      ? layout.areas.map((area, i) => ({ id: `boards-${i + 1}`, list: boardPlan(assessment, layout, area) }))
      : [],
  };
}
