import {
  type DownspoutStock,
  downspoutRule,
  downspoutSpacing,
  downspoutStock,
  type GutterRow,
} from '../../../reference/gutters.ts';
import { freeEdgeHead } from '../../../reference/rain-flow.ts';
import { plainNumber } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { Assumption, Working } from '../report/types.ts';
import type { Gutter } from '../roof.ts';
import { flowGpm } from './flow.ts';
import { adjustedAreaSqFt, downspoutSqIn, type GutterRun, gutterRuns, gutterSizes, smallestGutter } from './gutter.ts';
import {
  capacityFindings,
  carries,
  dutyFlow,
  gpm,
  type NeededOutlet,
  type OutletDuty,
  type OutletRating,
} from './rating.ts';

export interface EdgeInput extends OutletDuty {
  kind: 'edge';
  /** Part of the side that takes the water, from the side's first corner. */
  fromFt: number;
  toFt: number;
  /** null = free drip edge. */
  gutter: Gutter | null;
  /** Pitch of the steep roof behind `addedSqFt`, rise in 12; null = none. */
  pitchIn12: number | null;
}

const stock: readonly DownspoutStock[] = downspoutStock;
type TabledProfile = GutterRow['profile'];

/**
 * Rates an open edge. Water leaves a free edge without head. A gutter is rated run by run, from its high points to its
 * downspouts, by roof area x pitch factor x five-minute rain (sheet-metal practice), the water spread evenly along it.
 * `flowGpm` and `capacityGpm` then stand at that five-minute rate for the whole edge: the capacity is where the worst run is full.
 * Source: reference/gutters.ts. Correctness: tests/unit/outlets/gutter.test.ts
 */
export function sizeEdge(input: EdgeInput): OutletRating {
  return input.gutter === null ? freeEdge(input) : withGutter(input, input.gutter);
}

function freeEdge(input: EdgeInput): OutletRating {
  const flow = dutyFlow(input);
  const rating = {
    flowGpm: flow.value,
    capacityGpm: input.working ? null : 0,
    adequate: input.working,
    needs: 'nothing: water leaves over the free edge',
    needed: { kind: 'free-edge' } as const,
    headIn: input.working ? freeEdgeHead.headIn : null,
    basis: 'free edge along its whole length, no head of water',
    source: sourceNote(freeEdgeHead),
    workings: [flow],
    assumed: [],
  };
  return { ...rating, findings: capacityFindings(input, rating) };
}

function withGutter(input: EdgeInput, gutter: Gutter): OutletRating {
  const rain = input.rain.gutterInPerHr;
  const adjustedSqFt =
    adjustedAreaSqFt(input.drainsSqFt, 0, rain) + adjustedAreaSqFt(input.addedSqFt, input.pitchIn12 ?? 0, rain);
  const flow = flowGpm(adjustedSqFt, 1);
  const profile = gutter.profile === 'box' ? null : (gutter.profile ?? 'k');
  const capacityGpm = input.working ? gutterCapacityGpm(input, gutter, profile) : 0;
  const needed = profile === null ? null : neededGutter(profile, adjustedSqFt, input.toFt - input.fromFt);
  const rating = {
    flowGpm: flow,
    capacityGpm,
    adequate: carries(capacityGpm, flow),
    needs: needsWords(needed, profile, flow),
    needed,
    headIn: 0,
    basis: `gutter runs between downspouts and high points, ${input.rain.gutterBasis} (${plainNumber(rain, 1)} in/h)`,
    source: sourceNote(gutterSizes(profile ?? 'k').find((row) => row.sizeIn === gutter.sizeIn) ?? gutterSizes('k')[0]),
    workings: [gutterWorking(input, adjustedSqFt)],
    assumed: assumedOf(input, gutter),
  };
  return { ...rating, findings: capacityFindings(input, rating) };
}

/** null = profile, size or downspouts are not known, or a size outside the table. */
function gutterCapacityGpm(input: EdgeInput, gutter: Gutter, profile: TabledProfile | null): number | null {
  if (gutter.downspouts === null || gutter.sizeIn === null || profile === null) return null;
  const lengthFt = input.toFt - input.fromFt;
  const runs = gutterRuns(input.fromFt, input.toFt, gutter.downspouts);
  if (runs.length === 0) return 0;
  // The nearest listed size that is not larger.
  const row = gutterSizes(profile).findLast((each) => each.sizeIn <= gutter.sizeIn! + 1e-9);
  if (!row) return null;
  const longestRunFt = Math.max(...runs.map((run) => run.toFt - run.fromFt));
  const byGutter = (row.adjustedSqFt * lengthFt) / longestRunFt;
  const byDownspout = (sectionSqIn(gutter) * downspoutRule.areaSqFtPerSqIn * lengthFt) / mostServedFt(runs);
  return flowGpm(Math.min(byGutter, byDownspout), 1);
}

const sectionSqIn = (gutter: Gutter): number =>
  gutter.downspoutSizeIn ? gutter.downspoutSizeIn[0] * gutter.downspoutSizeIn[1] : stock[0].areaSqIn;

/** Length of gutter that the busiest downspout takes. */
function mostServedFt(runs: readonly GutterRun[]): number {
  const served = new Map<number, number>();
  for (const run of runs) served.set(run.downspoutFt, (served.get(run.downspoutFt) ?? 0) + run.toFt - run.fromFt);
  return Math.max(...served.values());
}

/** Fewest downspouts, then the smallest gutter, when each downspout stands in the middle of its stretch. */
function neededGutter(
  profile: TabledProfile,
  adjustedSqFt: number,
  lengthFt: number,
): NeededOutlet & { kind: 'gutter' } {
  const sizes = gutterSizes(profile);
  const largest = sizes[sizes.length - 1].adjustedSqFt;
  const largestSection = stock[stock.length - 1].areaSqIn;
  const downspouts = Math.max(
    1,
    Math.ceil(lengthFt / downspoutSpacing.greatestSpacingFt - 1e-9),
    Math.ceil(adjustedSqFt / (2 * largest) - 1e-9),
    Math.ceil(downspoutSqIn(adjustedSqFt) / largestSection - 1e-9),
  );
  const { sizeIn } = smallestGutter(profile, adjustedSqFt / (2 * downspouts)) ?? sizes[sizes.length - 1];
  const section = downspoutSqIn(adjustedSqFt / downspouts);
  const downspout = (stock.find((row) => row.areaSqIn >= section - 1e-9) ?? stock[stock.length - 1]).label;
  return { kind: 'gutter', profile, sizeIn, downspouts, downspout };
}

/** A new gutter as it is needed: each downspout in the middle of its stretch, counted from the side's first corner. */
export function gutterAsNeeded(needed: NeededOutlet & { kind: 'gutter' }, fromFt: number, toFt: number): Gutter {
  const { profile, sizeIn, downspouts, downspout } = needed;
  const stretchFt = (toFt - fromFt) / downspouts;
  return {
    profile,
    sizeIn,
    slopeInPerFt: null,
    downspouts: Array.from({ length: downspouts }, (_, i) => fromFt + (i + 0.5) * stretchFt),
    downspoutSizeIn: stock.find(({ label }) => label === downspout)?.sidesIn ?? null,
  };
}

function needsWords(needed: (NeededOutlet & { kind: 'gutter' }) | null, profile: TabledProfile | null, flow: number) {
  if (needed === null) return `box gutter for ${gpm(flow)}: measure width, depth and fall, and have it calculated`;
  const { sizeIn, downspouts, downspout } = needed;
  const pipes = downspouts === 1 ? `a ${downspout} downspout mid-length` : `${downspouts} downspouts ${downspout}`;
  return `${sizeIn}-in ${profile === 'k' ? 'K' : 'half-round'} gutter with ${pipes}`;
}

function gutterWorking(input: EdgeInput, value: number): Working {
  return {
    id: `outlet.${input.id}.adjusted-area`,
    what: `Adjusted area of ${input.label}`,
    formula: 'plan area x pitch factor x five-minute rain',
    inputs: {
      areaSqFt: input.drainsSqFt,
      addedSqFt: input.addedSqFt,
      pitchIn12: input.pitchIn12 ?? 0,
      inPerHr: input.rain.gutterInPerHr,
    },
    value,
    unit: 'sq ft x in/h',
    source: sourceNote(gutterSizes('k')[0]),
  };
}

function assumedOf(input: EdgeInput, gutter: Gutter): Assumption[] {
  const assumed: Assumption[] = input.rain.gutterAssumed ? [input.rain.gutterAssumed] : [];
  const path = `outlets.${input.id}.gutter`;
  if (gutter.profile === null) {
    const because = `The shape of the gutter at ${input.label} is not known.`;
    assumed.push({ path: `${path}.profile`, value: 'K profile', because, findOut: 'Look at it from the ground.' });
  }
  if (gutter.downspouts !== null && gutter.downspoutSizeIn === null) {
    const because = `The downspouts at ${input.label} were not measured; the smallest usual size is taken.`;
    assumed.push({ path: `${path}.downspoutSizeIn`, value: stock[0].label, because, findOut: 'Measure one.' });
  }
  return assumed;
}
