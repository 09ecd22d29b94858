import type { Assessment, Layout, ScopeReport } from '../types.ts';

/** What the roof does with rain today, as far as it is known. */
export type Today =
  | 'stands'
  | 'may-stand'
  | 'seen'
  | 'shallow'
  | 'level-area'
  | 'level-line'
  | 'slow'
  | 'drains'
  | 'not-known';

const LEVEL_SQ_FT = 0.5;

export function todayOf({ existing }: Pick<Assessment, 'existing'>): Today {
  const { ponds, flats, verdict, undrainedAreaSqFt } = existing;
  if (ponds.some(({ birdBath }) => !birdBath)) return verdict === 'ponds' ? 'stands' : 'may-stand';
  if (verdict === 'ponds') return 'seen';
  if (undrainedAreaSqFt > LEVEL_SQ_FT) return 'level-area';
  if (verdict === 'drains-below-minimum') return 'slow';
  if (verdict === 'meets-minimum') return ponds.length > 0 ? 'shallow' : 'drains';
  return flats.some(({ lengthFt }) => lengthFt !== null) ? 'level-line' : 'not-known';
}

export const waterStands = (today: Today): boolean => today === 'stands' || today === 'seen';

/** What ends it. */
export type Plan = 'taper' | 'edge-first' | 'flat-boards' | 'wishes-clash' | 'none';

export function planOf({ existing, flatBoards, moisture }: Assessment, layout: Layout | null): Plan {
  if (existing.edgeFirst) return 'edge-first';
  if (moisture?.noCompliantOption) return 'wishes-clash';
  if (flatBoards?.used) return 'flat-boards';
  return layout === null ? 'none' : 'taper';
}

/** What to do with the old roof; `open` = not settled, `unsaid` = nothing was worked out. */
export type Call = NonNullable<ScopeReport['comesTo']> | 'open' | 'unsaid';

export const callOf = ({ scope }: Pick<Assessment, 'scope'>): Call =>
  scope === undefined ? 'unsaid' : (scope.comesTo ?? 'open');

/** Whether a new roof is what is asked for; where not, the words say what one would be. */
export type KeptCall = Extract<Call, 'upkeep' | 'repair' | 'coat'>;

export const keepsOldRoof = (call: Call): call is KeptCall => call === 'upkeep' || call === 'repair' || call === 'coat';

/** Whether the drawn new roof is what is planned, and not only what one would be. */
export const isPlanned = ({ plan, call, barred }: Pick<Situation, 'plan' | 'call' | 'barred'>): boolean =>
  !barred &&
  (plan === 'taper' || plan === 'flat-boards') &&
  (call === 'tear-off' || call === 're-cover' || call === 'off');

/** The layout that is offered, never a rejected one. */
export const offeredLayout = ({ layouts, chosenLayout }: Assessment): Layout | null =>
  layouts.find(({ id, rejected }) => id === chosenLayout && rejected === null) ?? null;

/** Everything that the words of one roof hang on. */
export interface Situation {
  assessment: Assessment;
  layout: Layout | null;
  /** Path of the layout in the answer. */
  at: string;
  today: Today;
  plan: Plan;
  call: Call;
  /** The drawn new roof would leave the old one in place, and what was found rules that out. */
  barred: boolean;
}

export function situationOf(assessment: Assessment): Situation {
  const layout = offeredLayout(assessment);
  return {
    assessment,
    layout,
    at: `layouts.${layout === null ? 0 : assessment.layouts.indexOf(layout)}`,
    today: todayOf(assessment),
    plan: planOf(assessment, layout),
    call: callOf(assessment),
    barred: assessment.findings.some(({ id }) => id === 're-cover-barred'),
  };
}
