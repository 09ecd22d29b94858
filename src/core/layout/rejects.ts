import { inches } from '../../units/print.ts';
import type { SearchReport } from '../report/types.ts';
import type { Limit } from './limits.ts';
import { type Barred, layoutTitle } from './plan.ts';
import { roundedUpIn } from './round-up.ts';
import type { Short, Sketch } from './sketch.ts';

interface Group {
  limit: Limit;
  count: number;
  best: Sketch;
  leastShortIn: number;
}

interface BarredGroup {
  barred: Barred;
  count: number;
  best: Sketch;
}

/** Candidates that break a height, gathered by the height they break most. */
export class Rejects {
  readonly #groups = new Map<string, Group>();
  readonly #barred = new Map<string, BarredGroup>();

  /** A candidate whose outlets may not be made, whatever its heights. */
  bar(sketch: Sketch, barred: Barred): void {
    const group = this.#barred.get(barred.why);
    if (group === undefined) {
      this.#barred.set(barred.why, { barred, count: 1, best: sketch });
      return;
    }
    group.count++;
    if (isBetter(sketch, group.best)) group.best = sketch;
  }

  add(sketch: Sketch, [{ limit, byIn }]: readonly Short[]): void {
    const group = this.#groups.get(limit.id);
    if (group === undefined) {
      this.#groups.set(limit.id, { limit, count: 1, best: sketch, leastShortIn: byIn });
      return;
    }
    group.count++;
    if (byIn >= group.leastShortIn) return;
    group.leastShortIn = byIn;
    group.best = sketch;
  }

  /**
   * What was rejected and why; where nothing is offered, the least that would have to give.
   * @param holds whether a candidate drains, its height left aside; asked of the nearest ones alone
   */
  report(
    fitting: number,
    offered: boolean,
    holds: (sketch: Sketch) => boolean,
  ): Pick<SearchReport, 'fitting' | 'barred' | 'rejected' | 'relaxation'> {
    const groups = [...this.#groups.values()].sort((a, b) => b.count - a.count);
    const nearest = offered
      ? undefined
      : [...groups].sort((a, b) => a.leastShortIn - b.leastShortIn).find(({ best }) => holds(best));
    return {
      fitting,
      barred: [...this.#barred.values()].map(({ barred, count, best }) => ({
        ...barred,
        count,
        fits: best.short === null,
        nearest: titleOf(best),
        boardFt: best.boardFt,
      })),
      rejected: groups.map(({ limit, count, best, leastShortIn }) => ({
        limit: limit.id,
        where: limit.where,
        count,
        leastShortIn,
        nearest: titleOf(best),
      })),
      relaxation:
        nearest === undefined
          ? null
          : {
              limit: nearest.limit.id,
              where: nearest.limit.where,
              byIn: nearest.leastShortIn,
              opens: titleOf(nearest.best),
              text: `${more(nearest.best)} (raise it, or have less flashing accepted there) would let this fit: ${titleOf(nearest.best)}.`,
            },
    };
  }
}

/** One that keeps the heights is better than any that does not; of two alike the one with the least board. */
const isBetter = (a: Sketch, b: Sketch): boolean =>
  (a.short === null) === (b.short === null) ? a.boardFt < b.boardFt : a.short === null;

const titleOf = ({ plan, slopeInPerFt }: Sketch): string => layoutTitle(plan, slopeInPerFt);

/** What every height that a candidate breaks is short of, rounded up as nobody can raise less. */
const more = ({ short }: Sketch): string =>
  (short ?? []).map(({ limit, byIn }) => `${inches(roundedUpIn(byIn))} more at ${limit.where}`).join(' and ');
