import type { CautionMoment } from '../../../../reference/safety/row.ts';
import type { WorkMethod } from '../../../../reference/work-methods.ts';
import type { SafetyFacts } from '../facts.ts';
import { figure, listed } from '../figure.ts';

/** The fact of this job under which a caution holds at that moment, in words with its figures; null = it does not hold. */
export type Trigger = (facts: SafetyFacts, when: CautionMoment) => string | null;

/** Holds when the hazard is there, and when nobody knows. */
export function ifPresent(hazard: boolean | null, known: string, unknown: string): string | null {
  if (hazard === null) return `Not known: ${unknown}.`;
  return hazard ? known : null;
}

/** Holds when the protection is not there, and when nobody knows. */
export function ifMissing(protection: boolean | null, missing: string, unknown: string): string | null {
  return ifPresent(protection === null ? null : !protection, missing, unknown);
}

/** Holds when a distance is less than it has to be, and when it is not known. */
export function ifNearer(distance: number | null, least: number, what: string, unit = 'ft'): string | null {
  if (distance === null) return `Not known: ${what}; ${least} ${unit} are needed.`;
  return distance < least ? `${what}: ${figure(distance)} ${unit}; ${least} ${unit} are needed.` : null;
}

const methodNames: Readonly<Record<WorkMethod, string>> = {
  torch: 'torching',
  'hot-asphalt': 'hot asphalt',
  'cold-adhesive': 'cold adhesive',
  'self-adhered': 'self-adhered sheet',
  'hot-air': 'hot-air welding',
  'solvent-adhesive': 'solvent adhesive',
  'mechanical-fastening': 'screwing through the deck',
  'foam-adhesive': 'foam adhesive',
  'liquid-resin': 'liquid resin',
  'spray-foam': 'sprayed foam',
  ballast: 'ballast',
};

/** The planned methods among those named, in words; all are possible while none is chosen. */
export function methodFact(facts: SafetyFacts, methods: readonly WorkMethod[]): string | null {
  const chosen = facts.work.methods;
  if (chosen === null)
    return `The method is not chosen yet; ${listed(
      methods.map((m) => methodNames[m]),
      'or',
    )} is possible.`;
  const used = methods.filter((method) => chosen.includes(method));
  return used.length > 0 ? `The method includes ${listed(used.map((m) => methodNames[m]))}.` : null;
}

/** Holds when the method may be used and the second fact holds too; the second says why. */
export function withMethod(
  methods: readonly WorkMethod[],
  fact: (facts: SafetyFacts, when: CautionMoment) => string | null,
): Trigger {
  return (facts, when) => (methodFact(facts, methods) === null ? null : fact(facts, when));
}

export const oneOf =
  (...methods: readonly WorkMethod[]): Trigger =>
  (facts) =>
    methodFact(facts, methods);

/** The first of several facts that holds. */
export const anyOf =
  (...triggers: readonly Trigger[]): Trigger =>
  (facts, when) => {
    for (const trigger of triggers) {
      const fact = trigger(facts, when);
      if (fact !== null) return fact;
    }
    return null;
  };
