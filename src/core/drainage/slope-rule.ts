import type { Clause } from '../../../reference/rule-sets.ts';
import { type CoveringClass, type SlopeMinimumRow, slopeMinimums } from '../../../reference/slope-minimums.ts';
import type { Cited } from '../../../reference/sources.ts';
import { sourceNote } from '../finding.ts';
import type { SourceNote } from '../report/types.ts';
import type { CoveringKind } from '../roof.ts';
import type { RuleSet } from '../rule-set.ts';

const minimums: readonly SlopeMinimumRow[] = slopeMinimums;

/** Slope [in/ft] of a ratio 1:run. Exact: 12 / run. Correctness: tests/published/drainage-slope.test.ts */
export const slopeOfRatio = (runPerRise: number): number => 12 / runPerRise;

/** Slope [in/ft] of a percentage: 2 % is 0.240 in/ft, not 1/4. Correctness: tests/published/drainage-slope.test.ts */
export const slopeOfPercent = (percent: number): number => (percent / 100) * 12;

const classOfCovering: Record<CoveringKind, CoveringClass | null> = {
  'sbs-granule': 'modified-bitumen',
  app: 'modified-bitumen',
  'bur-gravel': 'built-up',
  'bur-smooth': 'built-up',
  tpo: 'thermoplastic',
  pvc: 'thermoplastic',
  epdm: 'thermoset',
  'roll-roofing': 'roll-roofing',
  coating: 'liquid-applied',
  'spray-foam': 'spray-foam',
  metal: 'standing-seam-metal',
  other: null,
};

/** The code's class of a covering; null = not known, then the common low-slope minimum of 1/4 in/ft is taken. */
export function coveringClassOf(kind: CoveringKind | null): CoveringClass | null {
  return kind === null ? null : classOfCovering[kind];
}

export interface SlopeMinimum {
  covering: CoveringClass | null;
  /** What a new design must have. */
  designInPerFt: number;
  /** What must be left in the finished roof; equal to the design value in the American codes. */
  finishedInPerFt: number;
  /** Percent printed beside the rule, where it is rounded down. */
  printedPercent: number | null;
  source: SourceNote;
}

/**
 * Least slope [in/ft] of a covering under a rule set, with the section of that edition.
 * A covering that is not known is judged as modified bitumen, whose 1/4 in/ft it shares with all the sheets.
 * Source: reference/slope-minimums.ts. Correctness: tests/published/drainage-slope.test.ts
 */
export function slopeMinimum(ruleSet: RuleSet, covering: CoveringClass | null): SlopeMinimum {
  const { slope } = ruleSet.building;
  if (slope.kind === 'design-and-finished') {
    const { designInPerFt, finishedInPerFt } = slope;
    return { covering, designInPerFt, finishedInPerFt, printedPercent: null, source: sourceNote(ruleSet.building) };
  }
  const row = minimums.find((each) => each.covering === (covering ?? 'modified-bitumen'))!;
  const { source, grade } = ruleSet.building;
  const section: Cited = { source, at: row.sections[slope.sections], grade };
  return {
    covering,
    designInPerFt: row.leastInPerFt,
    finishedInPerFt: row.leastInPerFt,
    printedPercent: row.printedPercent,
    source: sourceNote(section),
  };
}

/** How a slope stands to a limit. `printed-percent`: short of 1/4 in/ft, but it has the "2 percent" that the code prints. */
export type SlopeStanding = 'meets' | 'printed-percent' | 'below';

export interface SlopeJudgement {
  standing: SlopeStanding;
  /** How much is missing to the limit [in/ft]; 0 when it is met. */
  shortInPerFt: number;
}

const SAME_SLOPE = 1e-9;

/**
 * Compares a slope [in/ft] with a limit [in/ft], unrounded. `strict` refuses the printed percentage as well.
 * Correctness: tests/published/drainage-slope.test.ts
 */
export function judgeSlope(
  slopeInPerFt: number,
  limitInPerFt: number,
  printedPercent: number | null,
  strict: boolean,
): SlopeJudgement {
  const shortInPerFt = Math.max(0, limitInPerFt - slopeInPerFt);
  if (shortInPerFt <= SAME_SLOPE) return { standing: 'meets', shortInPerFt: 0 };
  const printed = printedPercent === null ? null : slopeOfPercent(printedPercent);
  const passesPrint = !strict && printed !== null && slopeInPerFt >= printed - SAME_SLOPE;
  return { standing: passesPrint ? 'printed-percent' : 'below', shortInPerFt };
}

/** Whether the finished roof is shown to drain: seen or computed to drain, seen or computed to pond, or neither. */
export type DrainageShown = 'drains' | 'ponds' | 'not-shown';

export interface ExceptionAnswer {
  applies: boolean;
  why: string;
  source: SourceNote | null;
}

/**
 * Whether a re-roof may keep less slope than a new roof. It needs a positive finding that the finished roof drains;
 * a roof that ponds, or of which nothing is shown, does not have it. Source: the rule set's own section.
 */
export function reRoofSlopeException(ruleSet: RuleSet, reRoof: boolean, drainage: DrainageShown): ExceptionAnswer {
  return exception(ruleSet, ruleSet.building.reRoofSlope, reRoof, drainage);
}

/**
 * Whether a re-roof may go without adding overflows. Overflows that are there are never given up by it.
 * Source: the rule set's own section.
 */
export function reRoofOverflowException(ruleSet: RuleSet, reRoof: boolean, drainage: DrainageShown): ExceptionAnswer {
  return exception(ruleSet, ruleSet.building.reRoofOverflow, reRoof, drainage);
}

function exception(ruleSet: RuleSet, clause: Clause | null, reRoof: boolean, drainage: DrainageShown): ExceptionAnswer {
  const { hours } = ruleSet.building.drainsWithin;
  if (clause === null) return { applies: false, why: `${ruleSet.building.title} has no such exception.`, source: null };
  const source = sourceNote(clause);
  if (!reRoof) return { applies: false, why: 'The exception is for roofs that are replaced or recovered.', source };
  if (drainage === 'ponds') return { applies: false, why: 'A roof that ponds has lost the exception.', source };
  if (drainage === 'not-shown') {
    return { applies: false, why: `Nobody has shown that the roof is dry ${hours} h after rain.`, source };
  }
  const structure = ruleSet.building.structureCheckedToo
    ? ' The structure must also be checked for ponding and snow (IBC 1608.3 and 1611.2).'
    : '';
  return { applies: true, why: `${clause.text}${structure}`, source };
}
