import { slopeInWords } from '../../units/print.ts';
import type { PondReport, Verdict } from '../report/types.ts';
import { areaWords, depthWords } from '../report/words.ts';
import type { CoveringKind, Existing } from '../roof.ts';
import type { RuleSet } from '../rule-set.ts';
import type { Judgement } from './judge.ts';
import { coveringClassOf, judgeSlope, slopeMinimum } from './slope-rule.ts';

export interface VerdictOf {
  verdict: Verdict;
  why: string;
  /** The cheapest observation that would decide an undecided roof. */
  decidedBy: string | null;
}

const LOOK = 'Look (from a window or by pole camera) 48 h after a rain: is there water?';

export interface VerdictInput {
  existing: Existing;
  judgement: Judgement;
  ponds: readonly PondReport[];
  covering: CoveringKind;
  strict: boolean;
  ruleSet: RuleSet;
  /** A diagonal between level readings that would change the answer, and where a reading would settle it. */
  openChoice: string | null;
}

/** The old roof under the rule set: meets it, drains below it, ponds, or not decided. What was seen outranks what is computed. */
export function verdictOf(input: VerdictInput): VerdictOf {
  const { existing, judgement, ponds, ruleSet } = input;
  const hours = ruleSet.building.drainsWithin.hours;
  const seen = existing.seenPonds.find(({ hoursAfterRain }) => hoursAfterRain === null || hoursAfterRain >= hours);
  if (seen !== undefined) {
    const depth = seen.depthIn === null ? '' : `, ${depthWords(seen.depthIn)} deep`;
    return {
      verdict: 'ponds',
      why: `Water was seen standing ${seen.hoursAfterRain ?? hours} h after rain${depth}; what is seen outranks what is computed.`,
      decidedBy: null,
    };
  }
  if (existing.surface.kind === 'unknown') {
    return {
      verdict: 'undecided',
      why: 'The surface was not measured and nobody has looked after rain.',
      decidedBy: LOOK,
    };
  }
  if (judgement.trappedSqFt > 1e-3) {
    return {
      verdict: 'ponds',
      why: `${areaWords(judgement.trappedSqFt)} of the section has no way out for water at all.`,
      decidedBy: null,
    };
  }
  if (input.openChoice !== null) {
    return { verdict: 'undecided', why: 'The readings allow both a dry roof and a pond.', decidedBy: input.openChoice };
  }
  const worst = ponds.find(({ birdBath }) => !birdBath);
  if (worst !== undefined) {
    return {
      verdict: 'ponds',
      why: `By the readings water stands ${depthWords(worst.greatestDepthIn)} deep over ${areaWords(worst.areaSqFt)}, ${worst.where}.`,
      decidedBy: null,
    };
  }
  return withoutPond(input);
}

function withoutPond({ existing, judgement, covering, strict, ruleSet }: VerdictInput): VerdictOf {
  const { flats } = judgement;
  if (flats.areaSqFt > 1e-3 || flats.lengthFt > 1e-2) {
    const what =
      flats.areaSqFt > 1e-3
        ? `${areaWords(flats.areaSqFt)} lie level`
        : `${Math.round(flats.lengthFt)} ft of valley or wall line lie level`;
    return {
      verdict: 'undecided',
      why: `${what}: water there has nowhere to run, whether it dries in time was not seen.`,
      decidedBy: LOOK,
    };
  }
  const least = judgement.leastFaceSlopeInPerFt ?? 0;
  const minimum = slopeMinimum(ruleSet, coveringClassOf(covering));
  const { standing, shortInPerFt } = judgeSlope(least, minimum.finishedInPerFt, minimum.printedPercent, strict);
  if (standing !== 'below') {
    const note =
      standing === 'meets' ? '' : ` (${shortInPerFt.toFixed(3)} short of 1/4, but the 2 percent that the rule prints)`;
    return {
      verdict: 'meets-minimum',
      why: `The flattest plane falls ${slopeInWords(least)}${note}; the rule asks for ${slopeInWords(minimum.finishedInPerFt)}.`,
      decidedBy: null,
    };
  }
  const below = `The flattest plane falls ${slopeInWords(least)}; the rule asks for ${slopeInWords(minimum.finishedInPerFt)}`;
  const exception = ruleSet.building.reRoofSlope;
  if (existing.seenDryAfter48h === true && exception !== null) {
    return {
      verdict: 'drains-below-minimum',
      why: `${below}, but it was seen dry after 48 h: a re-roof may keep the slope (${exception.at}).`,
      decidedBy: null,
    };
  }
  return { verdict: 'undecided', why: `${below}, and nobody has looked 48 h after rain.`, decidedBy: LOOK };
}
