import type { Finding } from '../report/types.ts';
import { drainFlowGpm, drainHeadIn, type HeadFlowCurve, printedCurve } from './drain-head.ts';
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
import { drainPipes, horizontalPipes, rowOfSize, smallestFor } from './storm-pipe.ts';

export interface DrainInput extends OutletDuty {
  kind: 'drain';
  /** Nominal size; null = not known. */
  sizeIn: number | null;
  /** Depth over the inlet that may be used; null = up to the overflow's inlet by the rule set. */
  usableHeadIn: number | null;
  /** Slope of the horizontal pipe that it runs into; null = none or not known. */
  horizontalSlopeInPerFt: number | null;
  /** Tested curve of the maker; null = not given, the pipe table alone decides. */
  makersCurve: HeadFlowCurve | null;
}

/**
 * Rates a roof drain by the vertical pipe table of the plumbing code and sizes the smallest that carries its flow.
 * Codes from IPC 2015 size the pipe by what the drain passes (maker's curve); without one the rain flow and the table are used.
 * Source: reference/storm-pipes.ts, leaders.ts, drain-heads.ts. Correctness: tests/unit/outlets/sizing.test.ts
 */
export function sizeDrain(input: DrainInput): OutletRating {
  const flow = dutyFlow(input);
  const table = drainPipes(input.ruleSet.plumbing.pipes);
  const usableHeadIn = input.usableHeadIn ?? input.ruleSet.building.overflow.inletAboveLowPointIn;
  const row = input.sizeIn === null ? null : rowOfSize(table, input.sizeIn);
  const capacityGpm = input.working ? capacityOf(input, row?.capacityGpm ?? null, usableHeadIn) : 0;
  const needed = neededDrain(input, flow.value);
  const rating = {
    flowGpm: flow.value,
    capacityGpm,
    adequate: carries(capacityGpm, flow.value),
    needs: wordsOf(needed),
    needed,
    headIn: headOf(input, flow.value),
    basis: basisOf(input, usableHeadIn),
    source: (row ?? smallestFor(table, flow.value) ?? table[table.length - 1]).source,
    workings: [flow],
    assumed: [],
  };
  return {
    ...rating,
    findings: [...capacityFindings(input, rating), ...headFindings(input, rating.headIn, usableHeadIn)],
  };
}

function capacityOf(input: DrainInput, pipeGpm: number | null, usableHeadIn: number): number | null {
  if (pipeGpm === null || input.makersCurve === null) return pipeGpm;
  return Math.min(pipeGpm, drainFlowGpm(input.makersCurve, usableHeadIn));
}

function headOf({ sizeIn, makersCurve, working }: DrainInput, flow: number): number | null {
  const curve = makersCurve ?? (sizeIn === null ? null : (printedCurve(sizeIn)?.curve ?? null));
  return curve && working ? drainHeadIn(curve, flow) : null;
}

function neededDrain(input: DrainInput, flow: number): NeededOutlet & { kind: 'drain' } {
  const table = drainPipes(input.ruleSet.plumbing.pipes);
  const largest = table[table.length - 1];
  const count = Math.max(1, Math.ceil(flow / largest.capacityGpm - 1e-9));
  const { sizeIn } = smallestFor(table, flow / count) ?? largest;
  const { horizontalSlopeInPerFt } = input;
  const horizontal =
    horizontalSlopeInPerFt === null
      ? null
      : smallestFor(horizontalPipes(input.ruleSet.plumbing.pipes, horizontalSlopeInPerFt), flow / count);
  return { kind: 'drain', count, sizeIn: sizeIn[0], horizontalIn: horizontal?.sizeIn[0] ?? null };
}

function wordsOf({ count, sizeIn, horizontalIn }: NeededOutlet & { kind: 'drain' }): string {
  const drain = count === 1 ? `${sizeIn}-in drain` : `${count} drains of ${sizeIn} in`;
  return horizontalIn === null ? drain : `${drain}, ${horizontalIn}-in horizontal pipe`;
}

function basisOf({ ruleSet, sizeIn, makersCurve }: DrainInput, usableHeadIn: number): string {
  const table = `vertical pipe table of ${ruleSet.plumbing.title}`;
  if (makersCurve) return `${table}, and the maker's curve at ${inch(usableHeadIn)} of water`;
  if (sizeIn === null) return `${table}; the size there is not known: measure the pipe below or the strainer's outlet`;
  return `${table}; no tested curve of this drain was given`;
}

function headFindings(input: DrainInput, headIn: number | null, usableHeadIn: number): Finding[] {
  if (headIn === null || headIn <= usableHeadIn) return [];
  const curve = input.makersCurve ? null : printedCurve(input.sizeIn!);
  return [
    {
      id: 'drain-head-over-usable',
      level: 'note',
      where: input.label,
      message:
        `The design flow of ${gpm(dutyFlow(input).value)} stands ${inch(headIn)} deep over ${input.label}, more than the ` +
        `${inch(usableHeadIn)} up to the overflow. More drains, or a drain with a better tested curve, lower it.`,
      value: inch(headIn),
      limit: inch(usableHeadIn),
      source: curve?.source ?? null,
    },
  ];
}
