import { between, boxOf, direction, distanceFt } from '../core/geometry/vector.ts';
import type { Assessment, Budget, Layout, PlanReport, Point } from '../core/report/types.ts';
import { inches } from '../units/print.ts';
import { type Lettering, lettering, line, type Mark, placed, type TextChoice } from './draw-list.ts';
import { readingAngleDeg } from './edge-strings.ts';
import { around, aroundBox } from './fixtures.ts';
import type { FreeRoom } from './free-room.ts';
import type { Sheet } from './sheet.ts';

/** More than this left at an edge or a pipe is not worth words on the plan; the table has it. */
const PLENTY_IN = 3;
const MOST = 8;
/** Less than a tape reads is nothing. */
const NOTHING_IN = 1 / 32;

const names: Record<Budget['kind'], string> = {
  door: 'door',
  window: 'window',
  siding: 'siding',
  wall: 'wall',
  parapet: 'parapet',
  curb: 'curb',
  'tie-in': 'shingles',
  pipe: 'pipe',
  overflow: 'overflow',
  guard: 'guard',
};

const openings: ReadonlySet<Budget['kind']> = new Set(['door', 'window', 'siding']);

export const limitName = ({ kind }: Pick<Budget, 'kind'>): string => names[kind];

/** "door: 2 1/4″ left"; "door: 1″ short" where that stops the layout, "curb: raise 1″" where it is only work. */
export function limitWords({ kind, hardness }: Pick<Budget, 'kind' | 'hardness'>, leftIn: number): string {
  if (leftIn >= -NOTHING_IN) return `${names[kind]}: ${inches(Math.max(0, leftIn))} left`;
  return hardness === 'stop' ? `${names[kind]}: ${inches(-leftIn)} short` : `${names[kind]}: raise ${inches(-leftIn)}`;
}

export const isBroken = ({ hardness }: Pick<Budget, 'hardness'>, leftIn: number): boolean =>
  hardness === 'stop' && leftIn < -NOTHING_IN;

/** A bracket along a stretch, inside the outline, which runs counter-clockwise. */
function bracket(a: Point, b: Point, letterFt: number, broken: boolean): Mark[] {
  const [dx, dy] = direction(a, b);
  const pen = broken ? 'stop' : 'limit';
  const off = 0.7 * letterFt;
  const [p, q] = [a, b].map(([x, y]): Point => [x - dy * off, y + dx * off]);
  return [line(a, p, pen), line(p, q, pen), line(q, b, pen)];
}

interface Use {
  budget: Budget;
  leftIn: number;
  text: string;
}

/** The tight heights of a layout, tightest first; the same words are not said twice. */
function tightOnes(assessment: Assessment, layout: Layout): Use[] {
  const byId = new Map(assessment.budgets.map((budget) => [budget.id, budget]));
  const uses = layout.budgets.flatMap(({ id, leftIn }): Use[] => {
    const budget = byId.get(id);
    if (budget === undefined || (leftIn > PLENTY_IN && !openings.has(budget.kind))) return [];
    return [{ budget, leftIn, text: limitWords(budget, leftIn) }];
  });
  const sorted = uses.sort((a, b) => a.leftIn - b.leftIn);
  return sorted.filter(({ text }, i) => sorted.findIndex((use) => use.text === text) === i).slice(0, MOST);
}

function spotWords({ budget, text }: Use, plan: PlanReport, letterFt: number, choice: TextChoice): Lettering[] {
  const curb = plan.curbs.find(({ id }) => budget.id === `curb-${id}`);
  if (curb === undefined) return around(budget.at, text, 1.3 * letterFt, choice);
  const box = boxOf(curb.outline);
  return aroundBox(box, text, letterFt, choice);
}

/** Brackets at openings and words at edges and spots, with the height that is left there. */
export function limitMarks(assessment: Assessment, layout: Layout, sheet: Sheet, room: FreeRoom): Mark[] {
  const { letterFt } = sheet;
  return tightOnes(assessment, layout).flatMap((use) => {
    const { budget, leftIn, text } = use;
    const { at, to, kind } = budget;
    const broken = isBroken(budget, leftIn);
    const choice = { size: 'small', tone: broken ? 'stop' : 'ink', bold: leftIn < -NOTHING_IN } as const;
    const place = `limit-${budget.id}`;
    if (to === null || distanceFt(at, to) < 1e-3)
      return placed(place, room.place(spotWords(use, assessment.plan, letterFt, choice)));
    const [dx, dy] = direction(at, to);
    const depth = openings.has(kind) ? 1.4 : 0.8;
    const words = [0.5, 0.3, 0.7, 0.15, 0.85].flatMap((t) =>
      [depth, depth + 1].map((letters) => {
        const [x, y] = between(at, to, t);
        return lettering([x - dy * letters * letterFt, y + dx * letters * letterFt], text, {
          ...choice,
          angleDeg: readingAngleDeg([dx, dy]),
        });
      }),
    );
    return placed(place, [...(openings.has(kind) ? bracket(at, to, letterFt, broken) : []), ...room.place(words)]);
  });
}
