import { waterLoadPerInch } from '../../../reference/deflection.ts';
import { rainLoadPsf } from '../drainage/rain-load.ts';
import { sourceNote } from '../finding.ts';
import type { Assumption, Finding, LoadStep } from '../report/types.ts';
import { engineerFirst, liveLoadOf, SAME_LOAD_PSF } from './live-load.ts';

/** A place where water leaves an area, by height. */
export interface SpillPlace {
  label: string;
  kind: 'primary' | 'overflow' | 'door' | 'parapet' | 'other';
  /** Inlet, sill or top above the file's height zero. */
  heightIn: number;
  /** Head over it at its design flow; 0 for a sill, a parapet and a free edge, null = not known. */
  headIn: number | null;
}

export interface LoadLadderInput {
  where: string;
  /** Lowest point of the surface, above the file's height zero. */
  lowPointIn: number;
  spills: readonly SpillPlace[];
  liveLoadPsf: number | null;
}

export interface LoadLadder {
  /** From the lowest level up: each holds when everything below it is shut. */
  steps: readonly LoadStep[];
  findings: readonly Finding[];
  assumed: readonly Assumption[];
}

const words: Record<SpillPlace['kind'], (label: string) => string> = {
  primary: (label) => `to run into ${label}`,
  overflow: (label) => `primary outlets shut: to run out at ${label}`,
  door: (label) => `all outlets shut: in at ${label}`,
  parapet: (label) => `all outlets shut: over ${label}`,
  other: (label) => `all outlets shut: to ${label}`,
};

/**
 * Depth [in] and load [psf] of water at the low point up to each successive spill: 5.2 psf per inch, against the roof live load.
 * A static level plus the head over it where that is known. A door below the overflow, and more load than the roof bears before the
 * overflow (or, without one, before the lowest spill) runs, are stops.
 * Source: IBC 1611.1. Correctness: tests/unit/outlets/load.test.ts, cases C22 and C28
 */
export function loadLadder(input: LoadLadderInput): LoadLadder {
  const live = liveLoadOf(input.liveLoadPsf);
  const rungs = input.spills
    .map((spill) => ({ spill, depthIn: Math.max(0, spill.heightIn + (spill.headIn ?? 0) - input.lowPointIn) }))
    .toSorted((a, b) => a.depthIn - b.depthIn)
    .map(({ spill, depthIn }) => ({ spill, depthIn, loadPsf: rainLoadPsf(depthIn, 0) }));
  const steps = rungs.map(({ spill, depthIn, loadPsf }) => ({
    label: `${words[spill.kind](spill.label)}${spill.headIn === null ? ', head over it not known' : ''}`,
    depthIn,
    loadPsf,
    exceedsLiveLoad: loadPsf > live.psf + SAME_LOAD_PSF,
  }));
  const source = sourceNote(waterLoadPerInch);
  const shut = rungs.filter(({ spill }) => spill.kind !== 'primary');
  const relief = shut.find(({ spill }) => spill.kind === 'overflow') ?? shut[0];
  const tooHeavy = relief && relief.loadPsf > live.psf + SAME_LOAD_PSF;
  return {
    steps,
    findings: [
      ...(tooHeavy ? [engineerFirst(input.where, relief.depthIn, relief.loadPsf, live, source)] : []),
      ...shut
        .filter(({ spill, depthIn }) => spill.kind === 'door' && depthIn < (relief?.depthIn ?? 0))
        .map(({ spill, depthIn }) => doorFinding(spill.label, depthIn, relief!.depthIn)),
      ...(relief?.spill.kind === 'door' ? [doorIsOverflow(relief.spill.label, relief.depthIn)] : []),
    ],
    assumed: live.assumed,
  };
}

function doorFinding(label: string, depthIn: number, overflowIn: number): Finding {
  return {
    id: 'door-below-overflow',
    level: 'stop',
    where: label,
    message: `Water comes in at ${label} before the overflow carries its flow: lower or widen the overflow, or raise the sill.`,
    value: `${depthIn.toFixed(2)} in`,
    limit: `${overflowIn.toFixed(2)} in`,
    source: sourceNote(waterLoadPerInch),
  };
}

function doorIsOverflow(label: string, depthIn: number): Finding {
  return {
    id: 'door-is-overflow',
    level: 'stop',
    where: label,
    message: `The only overflow is the door at ${label}: with the outlets shut the water goes into the building at ${depthIn.toFixed(2)} in. Make an overflow below the sill.`,
    value: `${depthIn.toFixed(2)} in`,
    limit: 'an overflow below the sill',
    source: sourceNote(waterLoadPerInch),
  };
}
