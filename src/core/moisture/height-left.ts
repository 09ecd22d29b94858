import type { Budget, Layout, MoistureCure } from '../report/types.ts';

type HeightLeft = Pick<MoistureCure, 'tightest' | 'fits' | 'broken' | 'raised' | 'notMeasured'>;

export interface Heights {
  layout: Layout | null;
  /** Flat board that is planned where there is no layout. */
  flatIn: number | null;
  /** Every height that limits the build-up. */
  budgets: readonly Budget[];
}

/** Less than a tape reads is nothing. */
const NOTHING_IN = 1 / 32;

/** What is left at every place: under a layout what it leaves, else what the heights allow less the flat board. */
function leftAt({ layout, flatIn, budgets }: Heights): { id: string; where: string; leftIn: number }[] {
  if (layout !== null) return [...layout.budgets];
  return budgets.flatMap(({ id, where, boardsIn }) =>
    boardsIn === null ? [] : [{ id, where, leftIn: boardsIn - (flatIn ?? 0) }],
  );
}

/**
 * Whether the heights bear so much more board, at every place that limits it. Where nothing is planned it may break them,
 * but that it fits is not said: the taper comes on top of it.
 * @param moreIn null = no board is asked about
 */
export function heightLeft(heights: Heights, moreIn: number | null): HeightLeft {
  const { layout, flatIn, budgets } = heights;
  const uses = leftAt(heights).map((use) => ({
    ...use,
    hard: budgets.some(({ id, hardness }) => id === use.id && hardness === 'stop'),
  }));
  const hard = uses.filter(({ hard: must }) => must).sort((a, b) => a.leftIn - b.leftIn);
  const notMeasured = budgets
    .filter(({ hardness, availableIn }) => hardness === 'stop' && availableIn === null)
    .map(({ where }) => where);
  const [tight] = hard;
  const over = (some: typeof uses) => some.filter(({ leftIn }) => leftIn < (moreIn ?? 0) - NOTHING_IN);
  const broken = over(hard).map(({ where, leftIn }) => ({ where, shortIn: (moreIn ?? 0) - leftIn }));
  const raised = over(uses.filter(({ hard: must }) => !must));
  const planned = layout !== null || flatIn !== null;
  const open = moreIn === null || (broken.length === 0 && (notMeasured.length > 0 || !planned));
  return {
    tightest: tight === undefined ? null : { where: tight.where, leftIn: tight.leftIn },
    fits: open ? null : broken.length === 0,
    broken,
    raised: raised.map(({ where, leftIn }) => ({ where, byIn: (moreIn ?? 0) - leftIn })),
    notMeasured,
  };
}
