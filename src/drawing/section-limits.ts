import { toSegment } from '../core/geometry/vector.ts';
import type { Assessment, Budget, Layout, Point } from '../core/report/types.ts';
import { inches } from '../units/print.ts';
import { alongRay, stretchesInside } from './crossings.ts';
import { type Lettering, lettering, line, type Mark, polygon } from './draw-list.ts';
import { isBroken, limitName, limitWords } from './limit-marks.ts';
import type { Cut, Stretch } from './section-profile.ts';

/** How a section stands on its sheet. */
export interface SectionFrame {
  cut: Cut;
  letterFt: number;
  /** Height on the sheet of a height of the roof. */
  up: (zIn: number) => number;
  lowIn: number;
  /** Nothing is drawn higher than this. */
  ceilingIn: number;
}

const ON_EDGE_FT = 0.05;
/** Two lines of letters stand so far apart, in letters. */
const LINE = 1.15;

const atEdges: ReadonlySet<Budget['kind']> = new Set(['door', 'window', 'siding', 'wall', 'parapet', 'tie-in']);

const near = (p: Point, a: Point, b: Point): boolean => toSegment(p, a, b).distanceFt < ON_EDGE_FT;

interface EndLimit {
  budget: Budget;
  topIn: number;
  /** The cut goes beside it: it is seen behind. */
  beyond: boolean;
}

/** Limits on the edge at which a cut ends, lowest first. */
function limitsOn({ plan, budgets }: Assessment, end: Point): EndLimit[] {
  const edges = plan.edges.filter(({ from, to }) => near(end, from, to));
  return budgets
    .flatMap((budget): EndLimit[] => {
      const { at, to, topsIn, kind } = budget;
      if (!atEdges.has(kind) || topsIn === undefined || topsIn === null || to === null) return [];
      if (!edges.some((edge) => near(at, edge.from, edge.to) && near(to, edge.from, edge.to))) return [];
      const { t } = toSegment(end, at, to);
      return [{ budget, topIn: topsIn[0] + (topsIn[1] - topsIn[0]) * t, beyond: !near(end, at, to) }];
    })
    .sort((a, b) => a.topIn - b.topIn);
}

function wordsFor({ budget, topIn, beyond }: EndLimit, layout: Layout | null, surfaceIn: number): string {
  const behind = beyond ? ' (beyond)' : '';
  const use = layout?.budgets.find(({ id }) => id === budget.id);
  if (use !== undefined) return `${limitWords(budget, use.leftIn)}${behind}`;
  return `${limitName(budget)}${behind}: ${inches(topIn - surfaceIn)} up`;
}

/** The wall at one end, with a tick at each of its limits. */
function endMarks(
  limits: readonly EndLimit[],
  layout: Layout | null,
  at: { xFt: number; into: 1 | -1; surfaceIn: number; wordsFromFt: number },
  { up, letterFt, ceilingIn }: SectionFrame,
): Mark[] {
  const { xFt, into, surfaceIn } = at;
  let nextFt = at.wordsFromFt;
  const base = up(surfaceIn);
  return limits.flatMap((limit): Mark[] => {
    const { budget, topIn } = limit;
    const leftIn = layout?.budgets.find(({ id }) => id === budget.id)?.leftIn ?? 0;
    const broken = layout !== null && isBroken(budget, leftIn);
    const pen = broken ? 'stop' : 'limit';
    const cutOff = topIn > ceilingIn;
    const y = up(Math.min(topIn, ceilingIn));
    const wordsY = Math.max(y, nextFt);
    nextFt = wordsY + LINE * letterFt;
    const tick = 1.1 * letterFt * into;
    const words = `${wordsFor(limit, layout, surfaceIn)}${cutOff ? ', broken off' : ''}`;
    return [
      line([xFt, Math.min(base, y)], [xFt, Math.max(base, y)], pen),
      // A slash instead of a tick: what is drawn is not all of it.
      line(
        [xFt - (cutOff ? tick / 2 : 0), y - (cutOff ? 0.3 * letterFt : 0)],
        [xFt + tick, y + (cutOff ? 0.3 * letterFt : 0)],
        pen,
      ),
      lettering([xFt + 1.4 * letterFt * into, wordsY], words, {
        size: 'small',
        anchor: into === 1 ? 'start' : 'end',
        tone: broken ? 'stop' : 'ink',
        bold: broken,
      }),
    ];
  });
}

/** Doors, windows, siding, walls, parapets and shingles at the two ends of a cut. */
export function limitsAtEnds(
  assessment: Assessment,
  layout: Layout | null,
  ground: readonly Stretch[],
  frame: SectionFrame,
  taken: readonly Mark[],
): Mark[] {
  const { cut, letterFt, up } = frame;
  const [first, last] = [ground[0], ground[ground.length - 1]];
  if (first === undefined || last === undefined) return [];
  const highest = Math.max(...taken.flatMap(heightsOfMark), Number.NEGATIVE_INFINITY);
  const ends = [
    { at: cut.fromFt, xFt: 0, into: 1 as const, surfaceIn: first.startIn },
    { at: cut.toFt, xFt: cut.toFt - cut.fromFt, into: -1 as const, surfaceIn: last.endIn },
  ];
  return ends.flatMap(({ at, ...end }) => {
    const over = up(end.surfaceIn) + (taken.length > 0 ? 0.9 + LINE : 0.6) * letterFt;
    const wordsFromFt = Number.isFinite(highest) ? Math.min(over, highest + LINE * letterFt) : over;
    return endMarks(limitsOn(assessment, alongRay(cut.ray, at)), layout, { ...end, wordsFromFt }, frame);
  });
}

/** Curbs that the cut goes through, as high as they are; open at the top where that is not known. */
export function curbsInCut(assessment: Assessment, ground: readonly Stretch[], frame: SectionFrame): Mark[] {
  const { cut, up, ceilingIn } = frame;
  const heightAt = (t: number): number => {
    const beside = ground.flatMap(({ from, to, startIn, endIn }) => [
      { off: Math.abs(from - t), z: startIn },
      { off: Math.abs(to - t), z: endIn },
    ]);
    return beside.sort((a, b) => a.off - b.off)[0]?.z ?? frame.lowIn;
  };
  return assessment.plan.curbs.flatMap(({ id, outline }) => {
    const top = assessment.budgets.find((budget) => budget.id === `curb-${id}`)?.topsIn?.[0];
    return stretchesInside(cut.ray, [outline]).flatMap(([from, to]): Mark[] => {
      const [a, b] = [from - cut.fromFt, to - cut.fromFt];
      const foot: Point[] = [
        [a, up(heightAt(from))],
        [b, up(heightAt(to))],
      ];
      if (top === undefined) return foot.map(([x, y]) => line([x, y], [x, y + 1.5 * frame.letterFt], 'curb'));
      const y = up(Math.min(top, ceilingIn));
      return [polygon([foot[0], foot[1], [b, y], [a, y]], 'curb', 'curb')];
    });
  });
}

const isText = (mark: Mark): mark is Lettering => mark.kind === 'text';

/** Heights on the sheet that a mark reaches. */
export function heightsOfMark(mark: Mark): number[] {
  if (isText(mark)) return [mark.at[1]];
  if (mark.kind === 'line') return [mark.from[1], mark.to[1]];
  return mark.kind === 'polygon' ? mark.outline.map(([, y]) => y) : [];
}

/** The words of a mark as a sentence of the description. */
export const wordsOfMark = (mark: Mark): string[] => (isText(mark) ? [`${mark.text}.`] : []);
