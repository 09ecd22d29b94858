import type { Budget, Layout, MoistureCure } from '../report/types.ts';

type HeightLeft = Pick<MoistureCure, 'tightest' | 'fits' | 'broken' | 'raised' | 'notMeasured'>;

/** Less than a tape reads is nothing. */
const NOTHING_IN = 1 / 32;

/**
 * Whether the heights bear so much more board under a layout, at every place that limits it.
 * @param budgets every height that limits the build-up
 * @param moreIn null = no board is asked about
 */
export function heightLeft(layout: Layout | null, budgets: readonly Budget[], moreIn: number | null): HeightLeft {
  const uses = (layout?.budgets ?? []).map((use) => ({
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
  const open = layout === null || moreIn === null || (broken.length === 0 && notMeasured.length > 0);
  return {
    tightest: tight === undefined ? null : { where: tight.where, leftIn: tight.leftIn },
    fits: open ? null : broken.length === 0,
    broken,
    raised: raised.map(({ where, leftIn }) => ({ where, byIn: (moreIn ?? 0) - leftIn })),
    notMeasured,
  };
}
