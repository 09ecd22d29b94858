import { feetInches, inches, rValue } from '../../units/print.ts';
import { NOT_KNOWN, orNotKnown } from './page-figures.ts';
import type { Assessment, Layout, SourceNote } from './types.ts';

export interface LimitRow {
  id: string;
  where: string;
  /** Height above the bare deck, what must stay clear of it, and what that allows. */
  height: string;
  clear: string;
  available: string;
  allowsR: string;
  /** How far a taper may run toward it at the slope of the rule. */
  run: string;
  /** What there is before any layout. */
  before: string;
  used: string;
  left: string;
  /** `short` stops a layout; `raise` is work; `not-known` has no height. */
  state: 'short' | 'raise' | 'holds' | 'not-known';
  /** "door on the wall: 2 1/4″ left". */
  sentence: string;
  source: SourceNote | null;
}

/** Less than a tape reads is nothing. */
const NOTHING_IN = 1 / 32;
const order: Record<LimitRow['state'], number> = { short: 0, raise: 1, holds: 2, 'not-known': 3 };

function leftWords(leftIn: number, state: LimitRow['state']): string {
  if (state === 'short') return `${inches(-leftIn)} short`;
  if (state === 'raise') return `raise it ${inches(-leftIn)}`;
  return `${inches(Math.max(0, leftIn))} left`;
}

function runWords({ run }: Assessment['budgets'][number]): string {
  if (run === undefined || run === null) return '';
  return run.runFt > 0 ? feetInches(Math.floor(run.runFt * 12) / 12) : 'none';
}

/** "5 1/2″ there before any layout; a taper may run 10 ft toward it". */
function beforeWords(budget: Assessment['budgets'][number]): string {
  const { availableIn } = budget;
  if (availableIn === null) return 'measure it before the boards are ordered';
  if (availableIn < 0) return `${inches(-availableIn)} short before any board is laid`;
  const run = runWords(budget);
  const reach = run === '' ? '' : run === 'none' ? '; no taper fits toward it' : `; a taper may run ${run} toward it`;
  return `${inches(availableIn)} there before any layout${reach}`;
}

/** Every height that limits the build-up with what a layout leaves of it: the broken first, then the tightest. */
export function limitRows({ budgets }: Pick<Assessment, 'budgets'>, layout: Layout | null): LimitRow[] {
  const uses = new Map(layout?.budgets.map((use) => [use.id, use]) ?? []);
  const rows = budgets.map((budget) => {
    const use = uses.get(budget.id);
    const leftIn = use?.leftIn ?? budget.availableIn;
    const state: LimitRow['state'] =
      leftIn === null ? 'not-known' : leftIn >= -NOTHING_IN ? 'holds' : budget.hardness === 'stop' ? 'short' : 'raise';
    const left = leftIn === null ? NOT_KNOWN : leftWords(leftIn, state);
    const row: LimitRow = {
      id: budget.id,
      where: budget.where,
      height: orNotKnown(budget.heightIn, inches),
      clear: inches(budget.clearIn),
      available: orNotKnown(budget.availableIn, inches),
      allowsR: orNotKnown(budget.rAvailable, (r) => ((budget.boardsIn ?? 0) > 0 ? rValue(r) : 'none')),
      run: runWords(budget),
      before: beforeWords(budget),
      used: use === undefined ? '' : inches(use.usedIn),
      left,
      state,
      sentence: `${budget.where}: ${leftIn === null ? 'height not known' : left}`,
      source: budget.source,
    };
    return { row, leftIn: leftIn ?? 0 };
  });
  return rows.sort((a, b) => order[a.row.state] - order[b.row.state] || a.leftIn - b.leftIn).map(({ row }) => row);
}
