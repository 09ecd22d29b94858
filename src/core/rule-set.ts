import { pondLimit } from '../../reference/drying.ts';
import {
  type BuildingRule,
  buildingRules,
  defaultRuleIds,
  type PlumbingRule,
  plumbingRules,
} from '../../reference/rule-sets.ts';
import type { Assumption } from './report/types.ts';
import type { LocalRules } from './roof.ts';

const buildings: readonly BuildingRule[] = buildingRules;
const plumbings: readonly PlumbingRule[] = plumbingRules;

/** A building code, a plumbing code and the local amendments: everything that the water rules of one job come from. */
export interface RuleSet {
  building: BuildingRule;
  plumbing: PlumbingRule;
  local: LocalRules;
  /** Water this deep or less after 48 h is listed, not failed. */
  birdBathIn: number;
  /** Water over more than this is flagged, however shallow. */
  birdBathSqFt: number;
  /** Local amendments in words, for every paper. */
  localNotes: readonly string[];
}

/** An id that names no rule set. */
export interface RuleSetProblem {
  path: 'ruleSet.building' | 'ruleSet.plumbing';
  got: string;
  validIds: readonly string[];
  message: string;
}

export type RuleSetResult =
  | { ok: true; ruleSet: RuleSet; assumed: readonly Assumption[] }
  | { ok: false; problems: readonly RuleSetProblem[] };

/** No amendment at all. */
export const noLocalRules: LocalRules = {
  rainInPerHr: null,
  wallShare: null,
  minimumFlashingIn: null,
  birdBathIn: null,
  birdBathSqFt: null,
  overflowRequired: null,
  taperRule: null,
};

/**
 * The rule set of a job. `null` ids take the default (IRC 2021 with IPC 2021) and are listed as assumed.
 * An unknown id comes back as a problem that lists the valid ones. Source: reference/rule-sets.ts.
 */
export function ruleSetFor(buildingId: string | null, plumbingId: string | null, local: LocalRules): RuleSetResult {
  const building = buildings.find((row) => row.id === (buildingId ?? defaultRuleIds.building));
  const plumbing = plumbings.find((row) => row.id === (plumbingId ?? defaultRuleIds.plumbing));
  if (!building || !plumbing) {
    const problems = [
      ...(building ? [] : [unknownRule('ruleSet.building', buildingId ?? '', buildings)]),
      ...(plumbing ? [] : [unknownRule('ruleSet.plumbing', plumbingId ?? '', plumbings)]),
    ];
    return { ok: false, problems };
  }
  const ruleSet = {
    building,
    plumbing,
    local,
    birdBathIn: local.birdBathIn ?? pondLimit.failIn,
    birdBathSqFt: local.birdBathSqFt ?? pondLimit.flagSqFt,
    localNotes: notesOf(local),
  };
  const assumed = [
    ...(buildingId === null ? [assumedRule('ruleSet.building', building)] : []),
    ...(plumbingId === null ? [assumedRule('ruleSet.plumbing', plumbing)] : []),
  ];
  return { ok: true, ruleSet, assumed };
}

function unknownRule(
  path: RuleSetProblem['path'],
  got: string,
  rows: readonly { id: string; title: string }[],
): RuleSetProblem {
  const validIds = rows.map((row) => row.id);
  return { path, got, validIds, message: `"${got}" names no rule set: write one of ${validIds.join(', ')}.` };
}

function assumedRule(path: RuleSetProblem['path'], rule: { id: string; title: string }): Assumption {
  return {
    path,
    value: rule.id,
    because: `No code was named; ${rule.title} is used.`,
    findOut: 'Ask the permit desk which edition is adopted, and with what amendments.',
  };
}

function notesOf(local: LocalRules): string[] {
  const notes: string[] = [];
  if (local.rainInPerHr !== null) notes.push(`Rain fixed locally at ${local.rainInPerHr} in/h.`);
  if (local.wallShare !== null) notes.push(`Share of walls fixed locally at ${local.wallShare}.`);
  if (local.minimumFlashingIn !== null) notes.push(`Flashing at least ${local.minimumFlashingIn} in high.`);
  if (local.birdBathIn !== null) notes.push(`Water up to ${local.birdBathIn} in deep is listed, not failed.`);
  if (local.birdBathSqFt !== null) notes.push(`Water over more than ${local.birdBathSqFt} sq ft is flagged.`);
  if (local.overflowRequired !== null) {
    notes.push(local.overflowRequired ? 'Overflows are required locally.' : 'Overflows are not required locally.');
  }
  if (local.taperRule === 'one-inch') notes.push('Tapered insulation reaches its R where the taper has risen 1 in.');
  if (local.taperRule === 'average-u') notes.push('Tapered insulation is judged by its U averaged over the area.');
  return notes;
}

/** Building codes for all buildings but small dwellings. */
export const isCommercial = (buildingCode: string): boolean => /^(ibc|iebc)/.test(buildingCode);

/** Codes to which the energy tables that are held belong. */
export const isAmerican = (buildingCode: string): boolean =>
  isCommercial(buildingCode) || buildingCode.startsWith('irc');
