import type { Site } from './site.ts';

/** What becomes of the old roof under the new one, as the job is planned. */
export type PlannedWork = 'tear-off' | 'partly' | 're-cover';

/** A thickness that no tape shows. */
const SAME_IN = 1 / 32;

/** What the roof file plans to do with the old roof: everything comes off where nothing else was said. */
export function plannedWork({ roof: { removedIn }, given }: Pick<Site, 'roof' | 'given'>): PlannedWork {
  if (removedIn === null) return 'tear-off';
  if (removedIn < SAME_IN) return 're-cover';
  return removedIn < given.buildUpIn - SAME_IN ? 'partly' : 'tear-off';
}

/** Whether the deck is off already, down to the joists. */
export const isStripped = ({ roof: { findings } }: Pick<Site, 'roof'>): boolean =>
  findings.some(({ kind }) => kind === 'deck-stripped');

/** Whether an old roof comes off: none does where it stays, and where somebody has stripped the deck already. */
export const comesOff = (site: Pick<Site, 'roof' | 'given'>): boolean =>
  plannedWork(site) !== 're-cover' && !isStripped(site);

/** How much of the old roof [in] stays under the boards. */
export const keptIn = ({ buildUpIn, removedIn }: Site['given']): number => Math.max(0, buildUpIn - removedIn);

/** What the boards then lie on. */
export const groundNames: Readonly<Record<PlannedWork, string>> = {
  'tear-off': 'the bare deck',
  partly: 'what stays of the old roof',
  're-cover': 'the old roof',
};
