import { keepsOldRoof, type Situation } from './situation.ts';
import { type OwnerStatement, say, standingOn, takerOf } from './statement.ts';

/** Whether the new roof that is drawn lies over the old one, or a part of it. */
export const laidOver = ({ assessment }: Pick<Situation, 'assessment'>): boolean =>
  assessment.planned.work !== 'tear-off';

/** What the words say when the ground of the new roof is at last seen. */
export function groundShown(situation: Situation): string {
  if (situation.call === 'off') return 'When the new deck lies';
  return laidOver(situation) && !situation.barred
    ? 'When small holes are cut in the old roof'
    : 'When the old roof is off';
}

const work = {
  'tear-off': say`The figures here are for a new roof after the old one is taken off`,
  partly: say`The figures here are for a new roof after a part of the old one is taken off`,
  're-cover': say`The figures here are for a new roof laid over the old one`,
} as const;

/** What work the figures stand for, wherever it is not the work that what was found asks for, or leaves the old roof. */
export function plannedStatements({ assessment, call, plan, barred }: Situation): OwnerStatement[] {
  const { planned } = assessment;
  // Without boards that are planned no figure of a new roof is told.
  if (planned.note === null || plan !== 'taper') return [];
  const note = takerOf(assessment).quote('answer-scope', 'What the figures stand for', 'planned.note');
  if (planned.stripped)
    return [standingOn(say`The figures here are for the roof over a new deck. The deck is in none of them.`, note)];
  const figures = work[planned.work].text;
  const kept = planned.work !== 'tear-off';
  if (barred) return [standingOn(say`${figures}. What was found rules that out, so they do not hold.`, note)];
  if (call === 'open') return [standingOn(say`${figures}. Whether it comes to that is not settled yet.`, note)];
  if (keepsOldRoof(call)) return [standingOn(say`${figures}. What was found asks for less than that.`, note)];
  if (call === 'tear-off' && kept)
    return [standingOn(say`${figures}. What was found asks for more: it should come off.`, note)];
  if (call === 're-cover' && !kept)
    return [standingOn(say`${figures}. What was found allows less: a new roof over the old one.`, note)];
  return [standingOn(say`${figures}.`, note)];
}
