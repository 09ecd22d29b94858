import { waterLoadPerInch } from '../../../reference/deflection.ts';
import { inches } from '../../units/print.ts';
import { rainLoadPsf } from '../drainage/rain-load.ts';
import { sourceNote } from '../finding.ts';
import type { Assumption, Finding, LoadStep } from '../report/types.ts';
import { engineerFirst, liveLoadOf, SAME_LOAD_PSF } from './live-load.ts';
import type { SpillPlace } from './spill-places.ts';

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
  sleeve: (label) => `all outlets shut: in at ${label}`,
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
      ...(tooHeavy
        ? [engineerFirst(input.where, relief.depthIn, relief.loadPsf, live, source, reasonOf(relief.spill))]
        : []),
      ...shut
        .filter(({ spill, depthIn }) => getsIn(spill) && depthIn < (relief?.depthIn ?? 0))
        .map(({ spill, depthIn }) => belowOverflow(spill, depthIn, relief!.depthIn)),
      ...(relief && getsIn(relief.spill) ? [isOverflow(relief.spill, relief.depthIn)] : []),
      ...(relief && !getsIn(relief.spill) && relief.spill.kind !== 'overflow' && !tooHeavy
        ? [blockedDepth(input.where, relief.spill, relief.depthIn, relief.loadPsf, live.psf)]
        : []),
    ],
    assumed: live.assumed,
  };
}

/** Water there is water in the building. */
const getsIn = ({ kind }: SpillPlace): boolean => kind === 'door' || kind === 'sleeve';

const reasonOf = (spill: SpillPlace): string => {
  const { kind, label } = spill;
  if (kind === 'overflow') return `before ${label} carries its flow`;
  return getsIn(spill) ? `before it runs in at ${label}` : `before it runs over ${label}`;
};

function belowOverflow({ kind, label }: SpillPlace, depthIn: number, overflowIn: number): Finding {
  return {
    id: `${kind}-below-overflow`,
    level: 'stop',
    where: label,
    message: `Engineer first: with the outlets shut, water comes in at ${label} before the overflow carries its flow. Lower or widen the overflow, or raise ${kind === 'door' ? 'the sill' : label}.`,
    value: `${depthIn.toFixed(2)} in`,
    limit: `${overflowIn.toFixed(2)} in`,
    source: sourceNote(waterLoadPerInch),
  };
}

function isOverflow({ kind, label }: SpillPlace, depthIn: number): Finding {
  const what = kind === 'door' ? `the door at ${label}` : label;
  return {
    id: `${kind}-is-overflow`,
    level: 'stop',
    where: label,
    message: `The only overflow is ${what}: with the outlets shut the water goes into the building at ${inches(depthIn)}. Make an overflow below ${kind === 'door' ? 'the sill' : 'it'}.`,
    value: `${depthIn.toFixed(2)} in`,
    limit: `an overflow below ${kind === 'door' ? 'the sill' : 'it'}`,
    source: sourceNote(waterLoadPerInch),
  };
}

function blockedDepth(
  where: string,
  { label }: SpillPlace,
  depthIn: number,
  loadPsf: number,
  livePsf: number,
): Finding {
  return {
    id: 'blocked-depth',
    level: 'note',
    where,
    message: `With every outlet blocked, water stands ${depthIn.toFixed(2)} in deep at the low point before it runs over ${label}: ${loadPsf.toFixed(1)} psf of the ${livePsf} psf that the roof is taken to bear.`,
    value: `${loadPsf.toFixed(1)} psf`,
    limit: `${livePsf} psf`,
    source: sourceNote(waterLoadPerInch),
  };
}
