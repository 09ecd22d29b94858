import { type DesignRain, rainFor } from '../../../src/core/outlets/rain.ts';
import type { OutletDuty } from '../../../src/core/outlets/rating.ts';
import type { RuleSet } from '../../../src/core/rule-set.ts';
import { rules } from './rules.ts';

/** Rain of a given hourly rate under a rule set. */
export const rainOf = (inPerHr: number, ruleSet: RuleSet): DesignRain =>
  rainFor(
    {
      city: null,
      state: null,
      rain: { inPerHr, durationMin: 60, returnYears: 100 },
      climateZone: null,
      groundSnowPsf: null,
      californiaZone: null,
    },
    ruleSet,
  );

/** A primary outlet that takes an area at an hourly rain. */
export function duty(drainsSqFt: number, inPerHr: number, changes: Partial<OutletDuty> = {}): OutletDuty {
  const ruleSet = changes.ruleSet ?? rules('irc-2021', 'ipc-2021');
  return {
    id: 'X1',
    label: 'outlet X1',
    role: 'primary',
    working: true,
    drainsSqFt,
    addedSqFt: 0,
    rain: rainOf(inPerHr, ruleSet),
    ruleSet,
    ...changes,
  };
}
