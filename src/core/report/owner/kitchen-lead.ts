import type { KitchenChoice } from './kitchen-options.ts';
import type { Situation } from './situation.ts';
import { type OwnerStatement, say } from './statement.ts';

/** The words over the options of the kitchen table. */

const leads: Readonly<Record<KitchenChoice, string>> = {
  'leave-or-new': 'Nothing that was found asks for work. A new roof is set beside that to compare.',
  'keep-or-new': 'The choice is between mending what is there and a new roof.',
  'coat-or-new': 'The choice is between a new coat on what is there and a new roof.',
  'not-settled': 'It is not settled yet whether to mend this roof or replace it.',
  'edge-or-boards': 'The choice is between the edge alone and a new roof on sloped boards.',
  wishes: 'What was asked for cannot all be kept. The choice is what to give up.',
  'two-layouts': 'Both ways drain by our figures. They differ in what is seen and in what it takes.',
  'two-coverings': 'The slope is the same in both. The choice is the covering.',
  one: 'Only one way is left here, so there is nothing to set beside it.',
  barred:
    'The new roof that is drawn here would leave the old one in place. What was found rules that out, so its figures do not hold. Nothing is chosen or signed today. First have a new roof planned with the old one taken off.',
  'nothing-fits': 'No plan fits yet, so there is nothing to price. See the owner’s page for what stands in the way.',
};

const ofOldRoof: ReadonlySet<KitchenChoice> = new Set(['not-settled', 'two-layouts', 'two-coverings', 'one']);

/** Something about the old roof has to be found out before anybody chooses. */
export const waits = ({ call }: Situation, choice: KitchenChoice): boolean => call === 'open' && ofOldRoof.has(choice);

const ONE_WISH = 'What was asked for cannot all be kept. Only one wish can be given up so that the rest is kept.';

/**
 * Why these two; where nothing is settled, that nothing is chosen yet.
 * @param options how many are offered
 * @param stopped a stop stands over the page
 */
export function leadOf(
  situation: Situation,
  choice: KitchenChoice,
  { options, stopped }: { options: number; stopped: boolean },
): OwnerStatement {
  const why = choice === 'wishes' && options === 1 ? ONE_WISH : leads[choice];
  if (!waits(situation, choice))
    return stopped && options > 0
      ? say`${why} Nothing is chosen or signed before the stop above is settled.`
      : say`${why}`;
  const open = choice === 'not-settled' ? leads[choice] : 'How much of the old roof comes off is not settled yet.';
  return say`${open} So nothing is chosen or signed today. First do this:`;
}
