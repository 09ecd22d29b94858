import type { ZoneRow } from '../../../reference/energy.ts';
import type { Cited } from '../../../reference/sources.ts';
import { rValue } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { EnergyTarget } from '../layout/energy-target.ts';
import type { EnergyRuleRow, Layout, MoistureReport, RuleResult } from '../report/types.ts';
import type { Answer } from '../roof.ts';
import { isAmerican, isCommercial, type RuleSet } from '../rule-set.ts';
import { plannedWork } from '../site/planned-work.ts';
import type { Site } from '../site/site.ts';
import { stateOf } from '../site/town.ts';
import { notRooms, type Under, underOf } from '../site/under.ts';
import { type Framing, framingOf } from './framing.ts';

export interface EnergyRulesInput {
  site: Site;
  ruleSet: RuleSet;
  layout: Layout | null;
  membrane: string | null;
  climateZone: string | null;
  energy: EnergyTarget;
  above: MoistureReport['above'];
  below: MoistureReport['below'];
  damp: MoistureReport['verdict'];
}

export interface Facts extends EnergyRulesInput {
  commercial: boolean;
  american: boolean;
  california: boolean;
  under: Under;
  areaSqFt: number;
  /** R of the whole roof without films, effective above the deck and below it; what is not known below counts nothing. */
  totalR: number;
  /** R above the deck as far as it counts, and as it is laid. */
  aboveR: number;
  laidR: number;
  /** Outside air passes between the deck and what lies below it: what is laid above the deck then counts nothing. */
  outsideAir: Answer;
  /** What lies below the deck is not known: more may be there. */
  belowUnknown: boolean;
  /** Joists beside the insulation below the deck; null = nothing is known to lie there. */
  framing: Framing | null;
  slopeInPerFt: number;
  recover: boolean;
}

/** Over foam that touches the deck, and under a deck that is seen from below, no air can pass. */
function outsideAirOf({ roof, given }: Site, { kind }: MoistureReport['below']): Answer {
  if (given.below !== 'living-ceiling' || (kind !== 'batts' && kind !== null)) return 'no';
  return roof.insulation.below?.vented ?? 'unknown';
}

export function factsOf(input: EnergyRulesInput): Facts {
  const { site, ruleSet, layout, above, below } = input;
  const { building } = ruleSet;
  const commercial = isCommercial(building.id);
  const laidR = site.roof.insulation.flatIn === null ? (layout?.effectiveR ?? 0) : above.labelR;
  const outsideAir = outsideAirOf(site, below);
  const aboveR = outsideAir === 'yes' ? 0 : laidR;
  return {
    ...input,
    commercial,
    american: isAmerican(building.id),
    california: stateOf(site.roof.place) === 'CA',
    under: underOf(site.given.below),
    areaSqFt: site.section.areaSqFt,
    aboveR,
    laidR,
    outsideAir,
    totalR: aboveR + (below.r ?? 0),
    belowUnknown: below.r === null,
    framing: framingOf(site, below),
    slopeInPerFt: layout?.leastFaceSlopeInPerFt ?? 0,
    recover: plannedWork(site) === 're-cover',
  };
}

export interface Draft {
  id: string;
  title: string;
  row: Cited;
  /** null = it does not bind this job; the note says why. */
  binds: boolean | null;
  why: string;
  asked: string;
  found: string;
  passes: boolean | null;
  /** What would settle it where it is not known. */
  settledBy: string | null;
}

export const ZONE = 'the town, or the climate zone of the energy code: the building office knows it';
export const CALIFORNIA_ZONE =
  'the California energy zone, 1 to 16 (not the climate zone of the model code): the state’s energy commission lists it by ZIP code, and the building office knows it';
export const BELOW = 'what lies between ceiling and deck: take down a ceiling lamp and look';
export const BELOW_NOT_KNOWN = 'What lies below the deck is not known, and what lies above it is not enough alone.';

const clauseOf = ({ at }: Cited): string => at;

export function rowOf({ row, binds, why, passes, asked, found, settledBy, ...rest }: Draft): EnergyRuleRow {
  const result: RuleResult =
    binds === false ? 'not-applicable' : binds === null || passes === null ? 'not-known' : passes ? 'pass' : 'fail';
  return {
    ...rest,
    result,
    asked,
    found,
    clause: clauseOf(row),
    note: why,
    settledBy: result === 'not-known' ? settledBy : null,
    source: sourceNote(row),
  };
}

export const HIGHER = 1e-9;

/** Why a rule of the building's kind does not bind; null = it does. */
export function bars(facts: Facts, commercial: boolean): string | null {
  if (!facts.american) return 'the building code of this job is not an American one';
  if (facts.commercial !== commercial)
    return commercial ? 'the job is under the residential code' : 'the job is under the commercial code';
  if (facts.california) return 'California has rules of its own';
  return notRooms(facts.under);
}

/** A rule that binds, or the words that let this job off it. @param row where the relief is written */
export const unlessLetOff = (draft: Draft, off: string | null, row: Cited): Draft =>
  draft.binds !== true || off === null ? draft : { ...draft, row, binds: false, why: off };

export const RECOVER = 'the old roof stays: a recover is let off';

/** What is there, that more may lie below, and what is laid above and does not count. */
export function foundWords(figure: string, { belowUnknown, outsideAir, laidR }: Facts): string {
  const idle = outsideAir === 'yes' && laidR > 0 ? ` (${rValue(laidR)} above the deck not counted)` : '';
  if (!belowUnknown) return `${figure}${idle}`;
  return idle === '' ? `${figure} above the deck; below it not known` : `below the deck not known${idle}`;
}

/** Not short before it is known what lies below. */
export const unlessBelow = (passes: boolean, { belowUnknown }: Facts): boolean | null =>
  passes || !belowUnknown ? passes : null;

export function byZone(
  facts: Facts,
  draft: Pick<Draft, 'id' | 'title'>,
  row: ZoneRow | null,
  fallback: Cited,
  commercial: boolean,
): Draft {
  const barred = bars(facts, commercial);
  const found = commercial ? facts.aboveR : facts.totalR;
  const counted = commercial ? 'Above the deck, averaged by U.' : 'Above and below the deck, averaged by U above.';
  const passes = row === null ? null : found >= row.value - HIGHER;
  const open = barred === null && passes === false && facts.belowUnknown;
  return {
    ...draft,
    row: row ?? fallback,
    binds: barred !== null ? false : row === null ? null : true,
    why: barred ?? (row === null ? 'the climate zone is not known' : open ? BELOW_NOT_KNOWN : counted),
    asked: row === null ? 'not known' : rValue(row.value),
    found: foundWords(rValue(found), facts),
    passes: open ? null : passes,
    settledBy: row === null ? ZONE : BELOW,
  };
}
