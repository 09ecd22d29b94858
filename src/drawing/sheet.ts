import { type Box, boxOf } from '../core/geometry/vector.ts';
import type { Ring } from '../core/report/types.ts';
import { feetInches } from '../units/print.ts';
import { lettering, line, type Mark } from './draw-list.ts';

/** The room round a plan: letters of a size that reads on a phone, and a margin for dimension strings. */
export interface Sheet {
  /** Of the roof alone. */
  plan: Box;
  /** With its margins. */
  box: Box;
  letterFt: number;
}

/** Letters across the width of a plan without its margins. */
const LETTERS_ACROSS = 26;
const MARGIN_LETTERS = 4.4;
const FOOT_LETTERS = 2.6;

/** Plans of many things take smaller letters. */
const CROWDED_ACROSS = 34;
const CROWD = 12;

export const lettersAcross = (things: number): number => (things > CROWD ? CROWDED_ACROSS : LETTERS_ACROSS);

/** @param across letters in the plan's width: more letters are smaller letters */
export function sheetFor(outline: Ring, across = LETTERS_ACROSS): Sheet {
  const plan = boxOf(outline);
  const widthFt = Math.max(plan.maxX - plan.minX, 0.8 * (plan.maxY - plan.minY));
  const letterFt = widthFt / across;
  const margin = MARGIN_LETTERS * letterFt;
  return {
    plan,
    letterFt,
    box: {
      minX: plan.minX - margin,
      maxX: plan.maxX + margin,
      minY: plan.minY - margin - FOOT_LETTERS * letterFt,
      maxY: plan.maxY + margin,
    },
  };
}

const STEPS_FT = [1, 2, 5, 10, 20, 50, 100, 200];

/** A bar of round length, a quarter of the plan's width or less. */
function scaleBar({ plan, box, letterFt }: Sheet): Mark[] {
  const most = (plan.maxX - plan.minX) / 3.5;
  const lengthFt = STEPS_FT.filter((step) => step <= most).at(-1) ?? 1;
  const y = box.minY + 1.3 * letterFt;
  const [x0, x1] = [plan.minX, plan.minX + lengthFt];
  const tick = 0.35 * letterFt;
  return [
    line([x0, y], [x1, y], 'scale'),
    ...[x0, (x0 + x1) / 2, x1].map((x) => line([x, y - tick], [x, y + tick], 'scale')),
    lettering([x1 + 0.5 * letterFt, y], feetInches(lengthFt).replace('-0″', ''), { anchor: 'start', size: 'small' }),
  ];
}

function northArrow({ plan, box, letterFt }: Sheet): Mark[] {
  const x = plan.maxX - 0.6 * letterFt;
  const y = box.minY + 0.4 * letterFt;
  const high = 1.9 * letterFt;
  const half = 0.4 * letterFt;
  return [
    line([x, y], [x, y + high], 'scale'),
    {
      kind: 'polygon',
      outline: [
        [x - half, y + high - 2 * half],
        [x + half, y + high - 2 * half],
        [x, y + high],
      ],
      holes: [],
      pen: null,
      fill: 'ink',
    },
    lettering([x - 1.2 * letterFt, y + high / 2], 'N', { bold: true }),
  ];
}

export const sheetMarks = (sheet: Sheet): Mark[] => [...scaleBar(sheet), ...northArrow(sheet)];
