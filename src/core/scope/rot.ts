import { rotNearLeak } from '../../../reference/scope.ts';
import type { FoundBy, InspectionFinding, Ring } from '../roof.ts';
import { softDeckOf } from './bearing.ts';
import { apartFt } from './places.ts';

/** Soft deck and a leak together: a ground for a tear-off, or what is missing before it is one; null = no ground. */
export type RotAndLeak = 'ground' | { lacks: readonly string[] } | null;

/** Ways of finding that go into the wood; all others only look at it. */
const intoIt: ReadonlySet<FoundBy | null> = new Set<FoundBy | null>(['probe', 'core']);

/** What is missing of one soft place and one leak; null = they do not belong together, or the place is a small one. */
function lacking(rot: InspectionFinding, leak: InspectionFinding, outline: Ring): string[] | null {
  if (rot.severity === 'slight') return null;
  const apart = apartFt(rot, leak, outline);
  if (apart !== null && apart > rotNearLeak.ft) return null;
  return [
    ...(intoIt.has(rot.foundBy) ? [] : ['Nobody has opened or probed the soft place.']),
    ...(rot.severity === null ? ['How bad it is was not noted.'] : []),
    ...(apart === null ? ['Whether the leak lies near it was not noted.'] : []),
  ];
}

/**
 * Whether rot and a leak ask for the whole deck to be seen: the rot is of the deck, was gone into, is more than slight, and
 * water came through within `rotNearLeak` of it. Never on looks alone, and never for wood of the eave.
 * Source: common practice, no source. Correctness: tests/unit/scope.test.ts
 */
export function rotAndLeakOf(findings: readonly InspectionFinding[], outline: Ring): RotAndLeak {
  const leaks = findings.filter(({ kind }) => kind === 'leak-below');
  const pairs = softDeckOf(findings)
    .flatMap((rot) => leaks.map((leak) => lacking(rot, leak, outline)))
    .filter((lacks) => lacks !== null)
    .sort((a, b) => a.length - b.length);
  if (pairs.length === 0) return null;
  return pairs[0].length === 0 ? 'ground' : { lacks: pairs[0] };
}
