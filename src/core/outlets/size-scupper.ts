import { scupperFreeboard, stockScuppers } from '../../../reference/scuppers.ts';
import { plainNumber } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { Assumption, Finding, Working } from '../report/types.ts';
import {
  capacityFindings,
  carries,
  dutyFlow,
  gpm,
  inch,
  type NeededOutlet,
  type OutletDuty,
  type OutletRating,
} from './rating.ts';
import { scupperCapacityGpm, scupperHeadIn, smallestScupperWidthIn, weirForm } from './scupper.ts';

export interface ScupperInput extends OutletDuty {
  kind: 'scupper';
  /** Clear width and height of the opening; null = not known. */
  widthIn: number | null;
  heightIn: number | null;
  /** Depth over its floor that may be used; null = see `defaultUsableHeadIn`. */
  usableHeadIn: number | null;
}

/**
 * Head [in] that a scupper may use where none is given: an overflow up to 1 in below the top of its opening (common practice),
 * a primary one also not more than up to the overflow's inlet (2 in above the low point by the house code).
 */
export function defaultUsableHeadIn(duty: OutletDuty, heightIn: number): number {
  const open = Math.max(0, heightIn - scupperFreeboard.freeboardIn);
  return duty.role === 'primary' ? Math.min(open, duty.ruleSet.building.overflow.inletAboveLowPointIn) : open;
}

/**
 * Rates a scupper as a weir (an orifice once its opening is submerged) at the usable head, and sizes the narrowest stock width.
 * Source: reference/scuppers.ts. Correctness: tests/unit/outlets/sizing.test.ts, cases C22
 */
export function sizeScupper(input: ScupperInput): OutletRating {
  const flow = dutyFlow(input);
  const leastIn = input.ruleSet.building.overflowScupper.leastOpeningIn;
  const heightIn = input.heightIn ?? leastIn;
  const usableHeadIn = input.usableHeadIn ?? defaultUsableHeadIn(input, heightIn);
  const scupper = input.widthIn === null ? null : { widthIn: input.widthIn, heightIn };
  const open = scupper === null ? null : scupperCapacityGpm(scupper, usableHeadIn);
  const capacityGpm = input.working ? open : 0;
  const needed = neededScupper(input, flow.value, leastIn);
  const rating = {
    flowGpm: flow.value,
    capacityGpm,
    adequate: carries(capacityGpm, flow.value),
    needs: scupperWords(needed, flow.value),
    needed,
    headIn: scupper && input.working ? scupperHeadIn(scupper, flow.value) : null,
    basis: basisOf(input, usableHeadIn),
    source: sourceNote(weirForm('francis')),
    workings: [flow, ...(scupper ? [capacityWorking(input, scupper, usableHeadIn, open!)] : [])],
    assumed: input.heightIn === null ? [assumedHeight(input, leastIn)] : [],
  };
  return { ...rating, findings: [...capacityFindings(input, rating), ...openingFindings(input, leastIn)] };
}

type NeededScupper = NeededOutlet & { kind: 'scupper' };

function neededScupper(input: ScupperInput, flow: number, leastIn: number): NeededScupper | null {
  const heightIn = Math.max(input.heightIn ?? leastIn, leastIn);
  const headIn = input.usableHeadIn ?? defaultUsableHeadIn(input, heightIn);
  return scuppersFor(flow, headIn, heightIn, leastIn);
}

/**
 * Fewest scuppers of the narrowest stock width that carry a flow [gpm] at a head [in]; null when there is no head to use.
 * Correctness: tests/unit/outlets/sizing.test.ts
 */
export function scuppersFor(
  flow: number,
  headIn: number,
  heightIn: number,
  leastWidthIn: number,
): NeededScupper | null {
  const widestIn = stockScuppers.widthsIn[stockScuppers.widthsIn.length - 1];
  const most = scupperCapacityGpm({ widthIn: widestIn, heightIn }, headIn);
  if (most <= 0) return null;
  const count = Math.max(1, Math.ceil(flow / most - 1e-9));
  const stockIn = smallestScupperWidthIn(flow / count, headIn, heightIn, leastWidthIn);
  // A width that a rule asks for beyond the stock is bent to order, to the whole inch.
  return { kind: 'scupper', count, widthIn: stockIn ?? Math.max(widestIn, Math.ceil(leastWidthIn - 1e-9)), heightIn };
}

export function scupperWords(needed: NeededScupper | null, flow: number): string {
  if (needed === null) return `more depth of water at the scupper: there is none to use for ${gpm(flow)}`;
  const size = `${plainNumber(needed.widthIn, 2)} x ${plainNumber(needed.heightIn, 2)} in`;
  return needed.count === 1 ? `scupper ${size}` : `${needed.count} scuppers ${size}`;
}

function basisOf(input: ScupperInput, usableHeadIn: number): string {
  const head = `weir with end contractions at ${inch(usableHeadIn)} of water`;
  if (input.widthIn === null) return `${head}; the width there is not known: measure the opening`;
  return usableHeadIn > input.widthIn / 3 ? `${head}; narrow for that depth, so approximate` : head;
}

function capacityWorking(
  input: ScupperInput,
  scupper: { widthIn: number; heightIn: number },
  headIn: number,
  value: number,
): Working {
  const { factor, contraction } = weirForm('francis');
  return {
    id: `outlet.${input.id}.capacity`,
    what: `Capacity of ${input.label}`,
    formula: `Q = ${factor} (b - ${contraction} H) H^1.5, not more than the opening under water`,
    inputs: { widthIn: scupper.widthIn, heightIn: scupper.heightIn, headIn },
    value,
    unit: 'gpm',
    source: sourceNote(weirForm('francis')),
  };
}

const assumedHeight = (input: ScupperInput, leastIn: number): Assumption => ({
  path: `outlets.${input.id}.heightIn`,
  value: inch(leastIn),
  because: `The height of ${input.label} is not known; the least opening of the code is taken.`,
  findOut: 'Measure the clear opening.',
});

function openingFindings(input: ScupperInput, leastIn: number): Finding[] {
  const small = [input.widthIn, input.heightIn].filter((side) => side !== null && side < leastIn - 1e-9);
  if (input.role === 'primary' || small.length === 0) return [];
  return [
    {
      id: 'scupper-opening-small',
      level: 'fix',
      where: input.label,
      message: `${input.label} opens less than ${inch(leastIn)} one way: leaves and ice shut it. Make it at least that each way.`,
      value: inch(Math.min(...small.map((side) => side!))),
      limit: inch(leastIn),
      source: sourceNote(input.ruleSet.building.overflowScupper),
    },
  ];
}
