import { ventRatios } from '../../../reference/attic-vents.ts';
import { sourceNote } from '../finding.ts';
import type { Assumption, VentReport } from '../report/types.ts';
import type { Adjoining } from '../roof.ts';
import { answerOf, type FlatPart, flatPartOf, toCloseOf, todoOf, warningsOf } from './advice.ts';
import { areaOf, notCountedOf, type Vent, ventsOf } from './pieces.ts';
import { type Areas, conditionsOf, neededSqIn, reducedRule, verdictOf } from './rules.ts';

export interface VentInput {
  adjoining: Adjoining;
  /** Year of the residential code. */
  edition: number;
  climateZone: string | null;
  flat: FlatPart;
}

/**
 * Vents of the attic beside the section, against 1/150 and 1/300 of its floor, with what is left once all kinds of outlet but
 * one are closed. Sources: reference/attic-vents.ts. Correctness: tests/published/vents.test.ts
 */
export function ventReport({ adjoining, edition, climateZone, flat }: VentInput): {
  report: VentReport;
  assumed: Assumption[];
} {
  const { atticSqFt, ceilingRetarder } = adjoining;
  const { vents, assumed } = ventsOf(adjoining);
  const at = (where: Vent['where']): number => areaOf(vents.filter((vent) => vent.stays && vent.where === where));
  const areas: Areas = { highSqIn: at('high'), eaveSqIn: at('eaves'), betweenSqIn: at('between') };
  const [thereSqIn, countedSqIn] = [areaOf(vents), areaOf(vents.filter(({ stays }) => stays))];
  const toClose = toCloseOf(vents);
  const rule = reducedRule(edition);
  const usualSqIn = atticSqFt === null ? null : neededSqIn(atticSqFt, ventRatios.usual);
  const reducedSqIn = atticSqFt === null ? null : neededSqIn(atticSqFt, ventRatios.reduced);
  const conditions = conditionsOf({
    rule,
    need: reducedSqIn ?? 0,
    areas,
    vents,
    climateZone,
    retarder: ceilingRetarder,
  });
  const notCounted = notCountedOf(vents);
  const verdict = verdictOf({
    countedSqIn,
    usualSqIn,
    reducedSqIn,
    conditions,
    rule,
    counted: notCounted.length === 0,
  });
  const report: VentReport = {
    verdict,
    answer: answerOf({ verdict, thereSqIn, countedSqIn, usualSqIn, reducedSqIn, toClose, notCounted }),
    atticSqFt,
    needed150SqIn: usualSqIn,
    needed300SqIn: reducedSqIn,
    highFromSqIn: reducedSqIn === null ? null : rule.highFrom * reducedSqIn,
    highToSqIn: reducedSqIn === null ? null : rule.highTo * reducedSqIn,
    thereSqIn,
    toClose,
    countedSqIn,
    ...areas,
    vents,
    conditions,
    warnings: warningsOf(vents),
    todo: todoOf({ verdict, rule, usualSqIn, reducedSqIn, areas, conditions, toClose, notCounted }),
    flatPart: flatPartOf(flat),
    source: sourceNote(ventRatios),
  };
  return { report, assumed };
}
