import type { Cited } from '../../../reference/sources.ts';
import { plainNumber } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { Finding, SourceNote } from '../report/types.ts';
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
import { drainPipes, horizontalPipes, leaderFlowGpm, type PipeSize, rowOfSize, smallestFor } from './storm-pipe.ts';
import { type DrainFittings, fittingFindings, ratedBoreIn, strainerFlowGpm } from './strainer.ts';

export interface DrainInput extends OutletDuty, DrainFittings {
  kind: 'drain';
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
  const pipe = pipeOf(table, ratedBoreIn(input));
  const capacityGpm = input.working ? capacityOf(input, pipe?.capacityGpm ?? null, usableHeadIn) : 0;
  const needed = neededDrain(input, flow.value);
  const rating = {
    flowGpm: flow.value,
    capacityGpm,
    adequate: carries(capacityGpm, flow.value),
    needs: wordsOf(needed),
    needed,
    headIn: headOf(input, flow.value),
    basis: basisOf(input, usableHeadIn),
    source: (pipe ?? smallestFor(table, flow.value) ?? table[table.length - 1]).source,
    workings: [flow],
    assumed: [],
  };
  return {
    ...rating,
    findings: [
      ...capacityFindings(input, rating),
      ...fittingFindings(
        input.label,
        input,
        { withInsertGpm: pipe?.capacityGpm ?? null, withoutGpm: pipeOf(table, input.sizeIn)?.capacityGpm ?? null },
        rating.adequate === false,
      ),
      ...headFindings(input, rating.headIn, usableHeadIn),
    ],
  };
}

const underTheTable: Cited = {
  source: 'nspc-2006',
  at: 'Table 13.6.1, formula for a leader 7/24 full',
  grade: 'found',
};

/** What a bore [in] carries upright; under the smallest listed size by the formula behind the leader tables. */
function pipeOf(table: readonly PipeSize[], boreIn: number | null): PipeSize | null {
  if (boreIn === null) return null;
  const listed = rowOfSize(table, boreIn);
  return listed ?? { sizeIn: [boreIn], capacityGpm: leaderFlowGpm(boreIn), source: sourceNote(underTheTable) };
}

function capacityOf(input: DrainInput, pipeGpm: number | null, usableHeadIn: number): number | null {
  if (pipeGpm === null) return null;
  const { makersCurve, strainerFreeSqIn } = input;
  return Math.min(
    pipeGpm,
    makersCurve === null ? Number.POSITIVE_INFINITY : drainFlowGpm(makersCurve, usableHeadIn),
    strainerFreeSqIn === null ? Number.POSITIVE_INFINITY : strainerFlowGpm(strainerFreeSqIn, usableHeadIn),
  );
}

/** Curve of the drain as it is: the maker's, or the printed one of the bore that it is rated by. */
function curveOf(input: DrainInput): { curve: HeadFlowCurve; source: SourceNote | null } | null {
  if (input.makersCurve !== null) return { curve: input.makersCurve, source: null };
  const boreIn = ratedBoreIn(input);
  return boreIn === null ? null : printedCurve(boreIn);
}

function headOf(input: DrainInput, flow: number): number | null {
  const curve = curveOf(input)?.curve;
  return curve && input.working ? drainHeadIn(curve, flow) : null;
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

function basisOf(input: DrainInput, usableHeadIn: number): string {
  const { ruleSet, sizeIn, makersCurve, insertBoreIn, strainerFreeSqIn } = input;
  const rated = insertBoreIn === null ? '' : `, rated by the ${plainNumber(insertBoreIn, 3)}-in bore of its insert`;
  const grate =
    strainerFreeSqIn === null
      ? ''
      : `, not more than its strainer passes at ${inch(usableHeadIn)} of water (${plainNumber(strainerFreeSqIn, 1)} sq in free, formula from memory)`;
  const table = `vertical pipe table of ${ruleSet.plumbing.title}${rated}${grate}`;
  if (makersCurve) return `${table}, and the maker's curve at ${inch(usableHeadIn)} of water`;
  if (sizeIn === null && insertBoreIn === null)
    return `${table}; the size there is not known: measure the pipe below or the strainer's outlet`;
  return `${table}; no tested curve of this drain was given`;
}

function headFindings(input: DrainInput, headIn: number | null, usableHeadIn: number): Finding[] {
  if (headIn === null || headIn <= usableHeadIn) return [];
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
      source: curveOf(input)?.source ?? null,
    },
  ];
}
