import type { Assessment, DrainageArea, Layout } from '../core/report/types.ts';
import { boardPlan, isCrowded } from './board-plan.ts';
import { type BoardKeyRow, boardKey } from './board-shade.ts';
import type { DrawList } from './draw-list.ts';

export interface BoardSheets {
  whole: DrawList;
  key: readonly BoardKeyRow[];
  /** One sheet to each drainage area where the whole is too large to name its boards; where boards lie on boards, those below first. */
  parts: readonly { id: string; list: DrawList }[];
}

/** All sheets the crew lays boards by. */
export function boardSheets(assessment: Assessment, layout: Layout): BoardSheets {
  const many = isCrowded(assessment, layout);
  const layered = layout.pieces.some(({ layer }) => layer > 0);
  const sheetsOf = (id: string, area: DrainageArea | null): BoardSheets['parts'] => [
    ...(layered ? [{ id: `${id}-ground`, list: boardPlan(assessment, layout, area, 'ground') }] : []),
    ...(area === null ? [] : [{ id, list: boardPlan(assessment, layout, area) }]),
  ];
  return {
    whole: boardPlan(assessment, layout),
    key: boardKey(layout),
    parts: many ? layout.areas.flatMap((area, i) => sheetsOf(`boards-${i + 1}`, area)) : sheetsOf('boards', null),
  };
}
