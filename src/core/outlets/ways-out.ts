import { rainLoadPsf } from '../drainage/rain-load.ts';
import { sourceNote } from '../finding.ts';
import type { Finding } from '../report/types.ts';
import type { OutletRole } from '../roof.ts';
import type { RuleSet } from '../rule-set.ts';
import { inch } from './rating.ts';

/** One way for water to leave an area: a drain, a scupper or an open edge. */
export interface WayOut {
  id: string;
  label: string;
  role: OutletRole;
  /** False when it is covered or blocked. */
  working: boolean;
  /** Inlet above the surface that the file's heights are measured from, at its own spot; null = not known. */
  inletIn: number | null;
  /** Inlet above the low point of the area; null = not known. */
  inletAboveLowIn: number | null;
  /** Inlet above the surface at its own spot; below 0 the new roof buries it. null = not known. */
  inletAboveSurfaceIn: number | null;
}

/**
 * What is wrong with the ways out of an area. An area that walls can fill needs two that do not depend on each other,
 * whatever a re-roof exception permits; an overflow must be open, above the surface and not too high.
 * Correctness: tests/unit/outlets/overflow.test.ts, cases C22
 */
export function waysOutFindings(
  where: string,
  enclosed: boolean,
  ways: readonly WayOut[],
  ruleSet: RuleSet,
): Finding[] {
  const overflows = ways.filter((way) => way.role === 'overflow').flatMap((way) => overflowFindings(way, ruleSet));
  return enclosed ? [...tooFewFindings(where, ways, ruleSet), ...overflows] : overflows;
}

const isBuried = (way: Inlet): boolean => way.inletAboveSurfaceIn !== null && way.inletAboveSurfaceIn < -1e-6;

function tooFewFindings(where: string, ways: readonly WayOut[], ruleSet: RuleSet): Finding[] {
  const open = ways.filter((way) => way.working && !isBuried(way));
  if (open.length >= 2) return [];
  const none = open.length === 0;
  return [
    {
      id: none ? 'no-way-out' : 'no-second-way-out',
      level: 'stop',
      where,
      message: none
        ? `Walls or parapets close ${where} in and nothing lets the water out: it fills to the lowest spill. Open a way out first.`
        : `Walls or parapets close ${where} in and ${open[0].label} is the only way out: if it plugs, the roof fills. Add a second, separate way out.`,
      value: `${open.length}`,
      limit: '2',
      source: sourceNote(ruleSet.building.overflow),
    },
  ];
}

function overflowFindings(way: WayOut, ruleSet: RuleSet): Finding[] {
  const base = { level: 'fix', where: way.label, source: sourceNote(ruleSet.building.overflow) } as const;
  if (!way.working) {
    const message = `${way.label} is covered or blocked: it counts for nothing. Open it again or replace it; an overflow is never given up.`;
    return [{ ...base, id: 'overflow-covered', message, value: 'covered', limit: 'open' }, ...tooHigh(way, ruleSet)];
  }
  if (isBuried(way)) {
    const message = `The new roof buries ${way.label} by ${inch(-way.inletAboveSurfaceIn!)}: ${raiseWords(way, ruleSet)}, or lower the taper there.`;
    return [{ ...base, id: 'overflow-buried', message, value: inch(way.inletAboveSurfaceIn!), limit: inch(0) }];
  }
  return [...tooLow(way, ruleSet), ...tooHigh(way, ruleSet)];
}

type Inlet = Pick<WayOut, 'inletAboveLowIn' | 'inletAboveSurfaceIn'>;

/** How far an inlet is raised: to 2 in (or the rule's own) over the low point, and never under the surface beside it. */
function riseIn({ inletAboveLowIn, inletAboveSurfaceIn }: Inlet, { building }: RuleSet): number {
  const toLowIn = inletAboveLowIn === null ? 0 : building.overflow.inletAboveLowPointIn - inletAboveLowIn;
  return Math.max(toLowIn, -(inletAboveSurfaceIn ?? 0));
}

/** Rise [in] of an overflow's inlet that the new roof buries, or that would run in every rain; 0 where it may stay. */
export const overflowRiseIn = (inlet: Inlet, ruleSet: RuleSet): number =>
  isBuried(inlet) || isTooLow(inlet, ruleSet) ? riseIn(inlet, ruleSet) : 0;

function raiseWords(way: WayOut, ruleSet: RuleSet): string {
  const byIn = riseIn(way, ruleSet);
  const to = way.inletIn === null ? '' : `, to ${inch(way.inletIn + byIn)} above the old surface there`;
  return `raise its inlet by ${inch(byIn)}${to}, ${inch((way.inletAboveLowIn ?? 0) + byIn)} above the low point`;
}

/** Reading a height to a quarter inch is as good as it gets on a roof. */
const HARDLY_LOW_IN = 0.25;

const isTooLow = ({ inletAboveLowIn }: Inlet, { building }: RuleSet): boolean =>
  inletAboveLowIn !== null && inletAboveLowIn < building.overflow.inletAboveLowPointIn - HARDLY_LOW_IN - 1e-6;

/** An overflow so low that it runs in every rain hides a plugged main outlet. */
function tooLow(way: WayOut, ruleSet: RuleSet): Finding[] {
  const { inletAboveLowPointIn } = ruleSet.building.overflow;
  if (way.inletAboveLowIn === null || !isTooLow(way, ruleSet)) return [];
  return [
    {
      id: 'overflow-too-low',
      level: 'fix',
      where: way.label,
      source: sourceNote(ruleSet.building.overflow),
      message: `${way.label} takes water ${inch(way.inletAboveLowIn)} above the low point already: it would run in every rain, and nobody sees when the main outlets plug. Better: ${raiseWords(way, ruleSet)}.`,
      value: inch(way.inletAboveLowIn),
      limit: inch(inletAboveLowPointIn),
    },
  ];
}

function tooHigh(way: WayOut, ruleSet: RuleSet): Finding[] {
  const { inletAboveLowPointIn } = ruleSet.building.overflow;
  const tooHighIn = (way.inletAboveLowIn ?? 0) - inletAboveLowPointIn;
  if (tooHighIn <= 1e-6) return [];
  const more = `${rainLoadPsf(tooHighIn, 0).toFixed(1)} psf`;
  return [
    {
      id: 'overflow-too-high',
      level: 'fix',
      where: way.label,
      source: sourceNote(ruleSet.building.overflow),
      message: `${way.label} lets water in ${inch(tooHighIn)} higher than ${inch(inletAboveLowPointIn)} above the low point: ${more} more before it runs. Lower it.`,
      value: inch(way.inletAboveLowIn!),
      limit: inch(inletAboveLowPointIn),
    },
  ];
}
