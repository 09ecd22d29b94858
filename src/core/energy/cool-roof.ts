import { type CoolRoofRequirement, californiaAboveDeck, coolRoofRequirements } from '../../../reference/cool-roof.ts';
import { membraneHeat } from '../../../reference/membranes/heat.ts';
import { membraneOptions } from '../../../reference/membranes/options.ts';
import type { MembraneFacts } from '../membrane/facts.ts';
import { solarReflectanceIndex } from '../membrane/sri.ts';
import { winterFor } from '../moisture/winter.ts';
import type { CoolRoofOption } from '../report/types.ts';
import { isCommercial, type RuleSet } from '../rule-set.ts';
import type { Site } from '../site/site.ts';
import { stateOf } from '../site/town.ts';
import { notRooms, type Under, underOf } from '../site/under.ts';

/** Whom the rules see: the job, its place and its slope. */
export interface CoolRoofJob {
  commercial: boolean;
  california: boolean;
  /** Zone of the model code; null = not known. */
  climateZone: string | null;
  /** Zone 1 to 16 of California; null = not known. */
  californiaZone: number | null;
  slopeInPerFt: number;
  under: Under;
}

export type Applies = { state: 'yes' | 'no' | 'not-known'; why: string };

const requirements: readonly CoolRoofRequirement[] = coolRoofRequirements;

const OVER_ATTIC =
  'over an attic as well, where the rooms under it are heated or cooled; exceptions, as for ducts or insulation in the attic, are not held here: ask the building office';

/** Whether a rule for cool roofs binds a job, and why. */
export function coolRoofApplies(rule: CoolRoofRequirement, job: CoolRoofJob): Applies {
  const no = (why: string): Applies => ({ state: 'no', why });
  if ((rule.kind === 'commercial') !== job.commercial)
    return no(
      rule.kind === 'commercial' ? 'the job is under the residential code' : 'the job is under the commercial code',
    );
  if ((rule.state === 'CA') !== job.california)
    return no(rule.state === 'CA' ? 'the job is not in California' : 'California has a rule of its own');
  const bar = notRooms(job.under);
  const atticToo = rule.state === 'CA' && job.under === 'attic';
  if (bar !== null && !atticToo) return no(bar);
  if (rule.underInPerFt !== null && job.slopeInPerFt >= rule.underInPerFt)
    return no(`the roof is steeper than ${rule.underInPerFt} in 12`);
  const yes = (why: string): Applies => ({ state: 'yes', why: atticToo ? `${why}; ${OVER_ATTIC}` : why });
  if (rule.zones === null) return yes('all climate zones');
  const zone = rule.state === 'CA' ? (job.californiaZone?.toString() ?? null) : (job.climateZone?.charAt(0) ?? null);
  const whose = rule.state === 'CA' ? 'California zone' : 'climate zone';
  if (zone === null) return { state: 'not-known', why: `the ${whose} is not known` };
  return rule.zones.includes(zone) ? yes(`${whose} ${zone}`) : no(`not in ${whose} ${zone}`);
}

/** The job as the cool-roof rules see it. @param climateZone of the winter table where the file names none */
export function coolRoofJob(
  { roof, given }: Site,
  { building }: RuleSet,
  slopeInPerFt: number,
  climateZone: string | null = winterFor(roof.place).climateZone,
): CoolRoofJob {
  return {
    commercial: isCommercial(building.id),
    california: stateOf(roof.place) === 'CA',
    climateZone,
    californiaZone: roof.place.californiaZone,
    slopeInPerFt,
    under: underOf(given.below),
  };
}

/** Id of the cool-roof rule that binds a job, as the choice of the covering knows it; null = none does, as far as is known. */
export function bindingCoolRoof(job: CoolRoofJob): MembraneFacts['coolRoofRule'] {
  const rule = requirements.find((one) => coolRoofApplies(one, job).state === 'yes');
  if (rule === undefined) return null;
  return rule.state === 'CA' ? 'ca-title-24' : 'iecc-zones-1-3';
}

/** Which of the two routes a surface passes by; null = neither. Source: the two columns of every rule. */
export function coolRoofRoute(
  rule: Pick<CoolRoofRequirement, 'agedReflectance' | 'emittance' | 'agedSri'>,
  agedReflectance: number,
  emittance: number,
): 'pair' | 'index' | null {
  if (agedReflectance >= rule.agedReflectance - 1e-9 && emittance >= rule.emittance - 1e-9) return 'pair';
  return solarReflectanceIndex(agedReflectance, emittance) >= rule.agedSri - 1e-9 ? 'index' : null;
}

const SRI: ReadonlyMap<string, number> = new Map(
  membraneHeat.map(({ membrane, agedReflectance, emittance }) => [
    membrane,
    solarReflectanceIndex(agedReflectance, emittance),
  ]),
);

/** Every covering against one rule, by its aged values. */
export function coveringsUnder(rule: CoolRoofRequirement, chosen: string | null): CoolRoofOption[] {
  return membraneHeat.map(({ membrane, agedReflectance, emittance }) => {
    const by = coolRoofRoute(rule, agedReflectance, emittance);
    return {
      id: membrane,
      name: membraneOptions.find(({ id }) => id === membrane)?.shortName ?? membrane,
      chosen: membrane === chosen,
      agedReflectance,
      emittance,
      sri: SRI.get(membrane) ?? 0,
      passes: by !== null,
      by,
    };
  });
}

export const coolRoofRules = requirements;

/** R above the deck that California asks of a low-slope re-roof of a home in one of its zones; null = none. */
export const californiaAboveR = (zone: number): number | null =>
  (californiaAboveDeck.zones as readonly string[]).includes(`${zone}`) ? californiaAboveDeck.r : null;
