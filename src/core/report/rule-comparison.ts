import { buildingRules, plumbingRules } from '../../../reference/rule-sets.ts';
import { compareRuleSets } from '../drainage/compare-rules.ts';
import { coveringClassOf, reRoofSlopeException } from '../drainage/slope-rule.ts';
import type { VerdictOf } from '../drainage/verdict.ts';
import { sourceNote } from '../finding.ts';
import type { OverflowAdvice } from '../outlets/overflow.ts';
import { type DesignRain, rainFor } from '../outlets/rain.ts';
import { overflowScupperWidths } from '../outlets/scupper.ts';
import type { RuleSet } from '../rule-set.ts';
import type { Site } from '../site/site.ts';
import type {
  BuildingStanding,
  ExistingReport,
  Layout,
  OutletReport,
  PlumbingStanding,
  RuleComparison,
  ScupperReadings,
} from './types.ts';

/** One roof, and how it is judged under a rule set that is not its own. */
export interface RuleComparisonInput {
  site: Site;
  ruleSet: RuleSet;
  existing: ExistingReport;
  chosen: Layout | null;
  verdictUnder: (ruleSet: RuleSet) => VerdictOf;
  overflowUnder: (ruleSet: RuleSet, rain: DesignRain) => OverflowAdvice;
  outletsUnder: (ruleSet: RuleSet, rain: DesignRain) => readonly OutletReport[];
}

const pipeWords: Record<RuleSet['plumbing']['pipes'], string> = {
  'ipc-area': 'area tables',
  'ipc-gpm': 'tables in gpm',
  'seven-twenty-fourths': 'leaders 7/24 full',
};

/** Height of opening at which the readings are compared: the least that every code asks for. */
const OPENING_IN = 4;

/** Both readings of "three times the size", and the circumference, for the largest primary drain whose size is known. */
function scupperReadings({ roof }: Site): ScupperReadings | null {
  const sizes = roof.outlets.flatMap((outlet) =>
    outlet.kind === 'drain' && outlet.role === 'primary' && outlet.sizeIn !== null ? [outlet.sizeIn] : [],
  );
  if (sizes.length === 0) return null;
  const drainSizeIn = Math.max(...sizes);
  return { drainSizeIn, heightIn: OPENING_IN, ...overflowScupperWidths(drainSizeIn, OPENING_IN, OPENING_IN) };
}

function buildingStandings(input: RuleComparisonInput): BuildingStanding[] {
  const { site, ruleSet, existing, chosen } = input;
  const covering = coveringClassOf(site.given.covering);
  const standings = (slope: number) => compareRuleSets(slope, covering, site.given.strict, ruleSet);
  const today = existing.leastFaceSlopeInPerFt;
  const planned = chosen?.leastFaceSlopeInPerFt ?? null;
  const [now, then] = [standings(today ?? 0), standings(planned ?? 0)];
  const margin = (slope: number | null, limitInPerFt: number) => (slope === null ? null : slope - limitInPerFt);
  return buildingRules.map((building): BuildingStanding => {
    const set = { ...ruleSet, building };
    const rain = rainFor(site.roof.place, set);
    const advice = input.overflowUnder(set, rain);
    const { verdict, why } = input.verdictUnder(set);
    const drainage = verdict === 'ponds' ? 'ponds' : existing.passes48h === true ? 'drains' : 'not-shown';
    const rows = now.flatMap((row, i) => (row.id === building.id ? [{ row, planned: then[i] }] : []));
    return {
      id: building.id,
      title: building.title,
      own: building.id === ruleSet.building.id,
      slopes: rows.map(({ row, planned: next }) => ({
        stage: row.stage,
        limitInPerFt: row.limitInPerFt,
        todayMarginInPerFt: margin(today, row.limitInPerFt),
        todayPasses: today === null ? null : row.passes,
        plannedMarginInPerFt: margin(planned, row.limitInPerFt),
        plannedPasses: planned === null ? null : next.passes,
      })),
      slopeSource: rows[0].row.source,
      verdict,
      why,
      slopeException: reRoofSlopeException(set, true, drainage),
      overflow: { required: advice.required, note: advice.note, source: advice.source },
      scupper: {
        text: building.overflowScupper.text,
        needs: advice.needs,
        source: sourceNote(building.overflowScupper),
      },
      rain: { overflowInPerHr: rain.overflowInPerHr, basis: rain.overflowBasis, source: sourceNote(building.rainLoad) },
    };
  });
}

function plumbingStandings(input: RuleComparisonInput): PlumbingStanding[] {
  const { site, ruleSet } = input;
  return plumbingRules.map((plumbing): PlumbingStanding => {
    const set = { ...ruleSet, plumbing };
    const rain = rainFor(site.roof.place, set);
    const outlets = input.outletsUnder(set, rain).filter(({ role }) => role === 'primary');
    return {
      id: plumbing.id,
      title: plumbing.title,
      own: plumbing.id === ruleSet.plumbing.id,
      pipes: pipeWords[plumbing.pipes],
      source: sourceNote(plumbing),
      primaryRain: {
        inPerHr: rain.primaryInPerHr,
        text: plumbing.primaryRain.text,
        source: sourceNote(plumbing.primaryRain),
      },
      overflowRain: {
        inPerHr: rain.overflowInPerHr,
        text: plumbing.overflowRain.text,
        source: sourceNote(plumbing.overflowRain),
      },
      walls: {
        text: plumbing.walls.text,
        addedSqFt: outlets.reduce((sum, { addedSqFt }) => sum + addedSqFt, 0),
        source: sourceNote(plumbing.walls),
      },
      scupper: {
        text: plumbing.overflowScupper.text,
        needs: input.overflowUnder(set, rain).needs,
        source: sourceNote(plumbing.overflowScupper),
      },
      flowGpm: outlets.reduce((sum, { flowGpm }) => sum + (flowGpm ?? 0), 0),
      carrying: outlets.filter(({ adequate }) => adequate === true).length,
      short: outlets.filter(({ adequate }) => adequate === false).length,
      notKnown: outlets.filter(({ adequate }) => adequate === null).length,
    };
  });
}

/**
 * One roof under every building code and every plumbing code that is held, the other half and the local amendments kept.
 * Source: reference/rule-sets.ts. Correctness: tests/unit/drainage/rule-comparison.test.ts, case C42
 */
export function ruleComparison(input: RuleComparisonInput): RuleComparison {
  return {
    todayInPerFt: input.existing.leastFaceSlopeInPerFt,
    plannedInPerFt: input.chosen?.leastFaceSlopeInPerFt ?? null,
    buildings: buildingStandings(input),
    plumbings: plumbingStandings(input),
    scupperReadings: scupperReadings(input.site),
  };
}
