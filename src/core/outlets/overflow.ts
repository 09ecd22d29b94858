import { depthForLoadIn, rainLoadPsf } from '../drainage/rain-load.ts';
import { type DrainageShown, type ExceptionAnswer, reRoofOverflowException } from '../drainage/slope-rule.ts';
import { sourceNote } from '../finding.ts';
import type { Assumption, Finding, SourceNote, Working } from '../report/types.ts';
import type { RuleSet } from '../rule-set.ts';
import { drainHeadIn, printedCurve } from './drain-head.ts';
import { flowGpm } from './flow.ts';
import { engineerFirst, type LiveLoad, liveLoadOf, SAME_LOAD_PSF } from './live-load.ts';
import type { DesignRain } from './rain.ts';
import { dutyFlow, inch, type NeededOutlet, type OutletDuty } from './rating.ts';
import { overflowScupperWidths, scupperHeadIn } from './scupper.ts';
import { defaultUsableHeadIn, scuppersFor, scupperWords } from './size-scupper.ts';
import { drainPipes, smallestFor } from './storm-pipe.ts';
import { type WayOut, waysOutFindings } from './ways-out.ts';

export interface OverflowInput {
  id: string;
  /** The area in words: "the section", "the north bay". */
  where: string;
  ruleSet: RuleSet;
  rain: DesignRain;
  /** Walls or parapets can hold water in it when the primary outlets back up. */
  enclosed: boolean;
  /** Area that runs to the overflow with the primary outlets shut, and what is added to it. */
  drainsSqFt: number;
  addedSqFt: number;
  /** Every way out that it has, or will have with the layout that is judged. */
  ways: readonly WayOut[];
  /** Largest primary drain; null = none, or not known: then the drain that the primary flow would need. */
  primaryDrainSizeIn: number | null;
  /** What an overflow would be here: a scupper where there is an outside wall, else a drain of its own. */
  asKind: 'scupper' | 'drain';
  /** Height of a scupper's opening; null = 4 in, the least. */
  openingHeightIn: number | null;
  /** False for a new building. */
  reRoof: boolean;
  drainage: DrainageShown;
  liveLoadPsf: number | null;
}

export interface OverflowAdvice {
  required: boolean;
  /** The re-roof exception lets this roof go without a new one. */
  exceptionApplies: boolean;
  note: string;
  /** Height of the overflow's inlet above the low point. */
  inletAboveLowIn: number;
  /** At least this, in words and for the material list; null = no depth is left to use. */
  needs: string;
  needed: NeededOutlet | null;
  flowGpm: number;
  /** Head over the inlet at that flow; null = not known for a drain of this size. */
  headIn: number | null;
  /** Load at the low point then; null with the head. */
  loadPsf: number | null;
  source: SourceNote;
  workings: readonly Working[];
  findings: readonly Finding[];
  assumed: readonly Assumption[];
}

/**
 * Whether an area needs an overflow, at what height, of what least size, and what then weighs on the roof. The head is kept below
 * the top of the opening and below what the roof live load leaves; width, not height, is the lever. An overflow that is there is
 * never advised away, and an enclosed area with one way out is a stop, whatever the exception says.
 * Source: reference/rule-sets.ts. Correctness: tests/unit/outlets/overflow.test.ts
 */
export function overflowFor(input: OverflowInput): OverflowAdvice {
  const exception = reRoofOverflowException(input.ruleSet, input.reRoof, input.drainage);
  const live = liveLoadOf(input.liveLoadPsf);
  const flow = dutyFlow(dutyOf(input));
  const size =
    input.asKind === 'scupper' ? overflowScupper(input, flow.value, live) : overflowDrain(input, flow.value, live);
  const inletAboveLowIn = input.ruleSet.building.overflow.inletAboveLowPointIn;
  const loadPsf = size.headIn === null ? null : rainLoadPsf(inletAboveLowIn, size.headIn);
  const rule = requirement(input, exception);
  return {
    ...rule,
    note: `${rule.note}${widthWords(input)}`,
    ...size,
    inletAboveLowIn,
    flowGpm: flow.value,
    loadPsf,
    workings: [flow, ...(loadPsf === null ? [] : [loadWorking(input, inletAboveLowIn, size.headIn!, loadPsf)])],
    findings: [
      ...waysOutFindings(input.where, input.enclosed, input.ways, input.ruleSet),
      ...noOverflow(input, rule),
      ...(input.enclosed ? loadFindings(input, size.headIn, loadPsf, live) : []),
    ],
    assumed: input.enclosed ? live.assumed : [],
  };
}

const dutyOf = (input: OverflowInput): OutletDuty => ({
  ...input,
  label: `the overflow of ${input.where}`,
  role: 'overflow',
  working: true,
});

function requirement(
  input: OverflowInput,
  exception: ExceptionAnswer,
): Pick<OverflowAdvice, 'required' | 'exceptionApplies' | 'note' | 'source'> {
  const { overflow } = input.ruleSet.building;
  const source = sourceNote(overflow);
  const { overflowRequired } = input.ruleSet.local;
  const keep = input.ways.some((way) => way.role === 'overflow')
    ? ' The overflow that is there stays or is replaced.'
    : '';
  if (overflowRequired !== null) {
    const note = `${overflowRequired ? 'Required' : 'Not required'} by local amendment.${keep}`;
    return { required: overflowRequired, exceptionApplies: false, note, source };
  }
  if (!input.enclosed) {
    const note = `Not required: every part of ${input.where} drains freely over an edge.${keep}`;
    return { required: false, exceptionApplies: false, note, source };
  }
  if (exception.applies) {
    const note = `Need not be added: ${exception.why} A second way out is still the safe choice.${keep}`;
    return { required: false, exceptionApplies: true, note, source: exception.source ?? source };
  }
  return {
    required: true,
    exceptionApplies: false,
    note: `Required: ${overflow.text} ${exception.why}${keep}`,
    source,
  };
}

/** Several drains on one pipe system plug together: an enclosed area without an overflow is told so. */
function noOverflow(input: OverflowInput, rule: Pick<OverflowAdvice, 'required' | 'note' | 'source'>): Finding[] {
  const open = input.ways.filter(({ working }) => working);
  // With fewer than two ways out the stop for that says it already.
  if (!input.enclosed || open.length < 2 || open.some(({ role }) => role === 'overflow')) return [];
  const where = input.where;
  const message = `No overflow: ${open.length} primary outlets and nothing that takes over when they plug. ${rule.note}`;
  const level = rule.required ? 'fix' : 'note';
  return [{ id: 'no-overflow', level, where, message, value: '0', limit: '1', source: rule.source }];
}

/** Under this head the published scupper tables say nothing. */
const LEAST_HEAD_IN = 0.5;

/** Beyond this many more than the pipes need, one more drain no longer settles the head. */
const MORE_DRAINS = 10;

type Size = Pick<OverflowAdvice, 'needs' | 'needed' | 'headIn'>;

function overflowScupper(input: OverflowInput, flow: number, live: LiveLoad): Size {
  const { overflow, overflowScupper } = input.ruleSet.building;
  const heightIn = Math.max(input.openingHeightIn ?? 0, overflowScupper.leastOpeningIn);
  const roomIn = depthForLoadIn(live.psf) - overflow.inletAboveLowPointIn;
  const usableIn = Math.min(defaultUsableHeadIn(dutyOf(input), heightIn), roomIn);
  const needed = usableIn < LEAST_HEAD_IN ? null : scuppersFor(flow, usableIn, heightIn, leastWidthIn(input, heightIn));
  const needs = scupperWords(needed, flow);
  return { needs, needed, headIn: needed && scupperHeadIn(needed, flow / needed.count) };
}

/** Width [in] that the code asks for whatever the flow: by the drain's size, at least 4 in; of two readings the wider. */
function leastWidthIn(input: OverflowInput, heightIn: number): number {
  const { building, plumbing } = input.ruleSet;
  const { leastOpeningIn } = building.overflowScupper;
  const widths = overflowScupperWidths(primaryDrainIn(input), heightIn, leastOpeningIn);
  return Math.max(
    leastOpeningIn,
    building.overflowScupper.rule === 'three-times' ? Math.max(widths.threeAreasIn, widths.threeDiametersIn) : 0,
    plumbing.overflowScupper.rule === 'circumference' ? widths.circumferenceIn : 0,
  );
}

/** Which reading of the code's width was used, with what the other one gives. */
function widthWords(input: OverflowInput): string {
  if (!input.enclosed || input.asKind !== 'scupper') return '';
  const { building, plumbing } = input.ruleSet;
  const { leastOpeningIn, rule } = building.overflowScupper;
  const heightIn = Math.max(input.openingHeightIn ?? 0, leastOpeningIn);
  const drainIn = primaryDrainIn(input);
  const { threeAreasIn, threeDiametersIn, circumferenceIn } = overflowScupperWidths(drainIn, heightIn, leastOpeningIn);
  const three =
    rule === 'three-times'
      ? ` Three times the size of a ${inch(drainIn)} drain can be read as ${inch(threeDiametersIn)} of width (three diameters) or ${inch(threeAreasIn)} (three areas at ${inch(heightIn)} of height); the wider one, ${inch(Math.max(threeDiametersIn, threeAreasIn))}, is used.`
      : '';
  const round =
    plumbing.overflowScupper.rule === 'circumference'
      ? ` Width by the drain's circumference: ${inch(circumferenceIn)}.`
      : '';
  return `${three}${round}`;
}

function primaryDrainIn(input: OverflowInput): number {
  if (input.primaryDrainSizeIn !== null) return input.primaryDrainSizeIn;
  const table = drainPipes(input.ruleSet.plumbing.pipes);
  const primary = flowGpm(input.drainsSqFt + input.addedSqFt, input.rain.primaryInPerHr);
  return (smallestFor(table, primary) ?? table[table.length - 1]).sizeIn[0];
}

/** Fewest overflow drains whose head, where a curve is listed, stays within what the live load leaves. */
function overflowDrain(input: OverflowInput, flow: number, live: LiveLoad): Size {
  const table = drainPipes(input.ruleSet.plumbing.pipes);
  const largest = table[table.length - 1];
  const least = Math.max(1, Math.ceil(flow / largest.capacityGpm - 1e-9));
  const roomIn = depthForLoadIn(live.psf) - input.ruleSet.building.overflow.inletAboveLowPointIn;
  const choices = Array.from({ length: MORE_DRAINS }, (_, more) => {
    const count = least + more;
    const byFlowIn = (smallestFor(table, flow / count) ?? largest).sizeIn[0];
    const sizeIn = Math.max(byFlowIn, input.primaryDrainSizeIn ?? 0);
    const curve = printedCurve(sizeIn)?.curve;
    return { count, sizeIn, headIn: curve ? drainHeadIn(curve, flow / count) : null };
  });
  const fits = choices.find(({ headIn }) => headIn !== null && headIn <= roomIn);
  const { count, sizeIn, headIn } = fits ?? choices[0];
  const words = count === 1 ? `overflow drain of ${sizeIn} in` : `${count} overflow drains of ${sizeIn} in`;
  return {
    needs: `${words} with its own pipe to a place where it is seen`,
    needed: { kind: 'drain', count, sizeIn, horizontalIn: null },
    headIn,
  };
}

function loadWorking(input: OverflowInput, staticIn: number, headIn: number, value: number): Working {
  return {
    id: `overflow.${input.id}.load`,
    what: `Rain load of ${input.where} with the primary outlets shut`,
    formula: 'R = 5.2 (ds + dh)',
    inputs: { staticIn, headIn },
    value,
    unit: 'psf',
    source: sourceNote(input.ruleSet.building.rainLoad),
  };
}

function loadFindings(input: OverflowInput, headIn: number | null, loadPsf: number | null, live: LiveLoad): Finding[] {
  const inletIn = input.ruleSet.building.overflow.inletAboveLowPointIn;
  const source = sourceNote(input.ruleSet.building.rainLoad);
  if (loadPsf !== null) {
    if (loadPsf <= live.psf + SAME_LOAD_PSF) return [];
    return [engineerFirst(input.where, inletIn + headIn!, loadPsf, live, source)];
  }
  if (input.asKind === 'scupper') {
    const depthIn = inletIn + LEAST_HEAD_IN;
    return [engineerFirst(input.where, depthIn, rainLoadPsf(inletIn, LEAST_HEAD_IN), live, source)];
  }
  return [
    {
      id: 'overflow-head-not-known',
      level: 'note',
      where: input.where,
      message: 'How deep water stands over this overflow drain is not known: ask its maker for the tested curve.',
      value: null,
      limit: inch(Math.max(0, depthForLoadIn(live.psf) - inletIn)),
      source,
    },
  ];
}
