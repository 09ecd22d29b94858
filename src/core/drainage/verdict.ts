import { slopeInWords, withError } from '../../units/print.ts';
import type { PondReport, Verdict } from '../report/types.ts';
import { areaWords, depthWords } from '../report/words.ts';
import type { CoveringKind, Existing } from '../roof.ts';
import type { RuleSet } from '../rule-set.ts';
import type { Judgement } from './judge.ts';
import { runToDecideFt } from './reading-error.ts';
import { coveringClassOf, judgeSlope, slopeMinimum, slopeOfPercent } from './slope-rule.ts';

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
  /** Error of the flattest plane's slope and of a depth, from the readings; null = the surface was not read. */
  error: ReadingError | null;
}

export interface ReadingError {
  readingIn: number;
  slopeInPerFt: number;
  /** Of the difference of two heights. */
  depthIn: number;
}

/** What was seen after the hours of the rule: true = dry, false = water stood, null = nobody looked. */
export function seenAfter48h({ seenPonds, seenDryAfter48h }: Existing, hours: number): boolean | null {
  const wet = seenPonds.some(({ hoursAfterRain }) => hoursAfterRain === null || hoursAfterRain >= hours);
  return wet ? false : seenDryAfter48h;
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
    const early = existing.seenPonds[0]?.hoursAfterRain;
    const looked =
      early == null
        ? 'nobody has looked after rain'
        : `water was seen ${early} h after rain only, sooner than the ${hours} h that count`;
    return { verdict: 'undecided', why: `The surface was not measured and ${looked}.`, decidedBy: LOOK };
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
  const depthError = input.error?.depthIn ?? 0;
  const inDoubt = (depthIn: number): boolean => Math.abs(depthIn - ruleSet.birdBathIn) <= depthError;
  const worst = ponds.find(({ greatestDepthIn, birdBath }) => !birdBath && !inDoubt(greatestDepthIn));
  const doubtful = ponds.find(({ greatestDepthIn }) => input.error !== null && inDoubt(greatestDepthIn));
  if (worst === undefined && doubtful !== undefined) {
    return {
      verdict: 'undecided',
      why: `Water stands ${withError(doubtful.greatestDepthIn, depthError, 'in')} deep by the readings, ${doubtful.where}: that may be more or less than the ${depthWords(ruleSet.birdBathIn)} that is failed.`,
      decidedBy: `Measure the depth of the water there after rain, or read the low spot and the way out again. ${LOOK}`,
    };
  }
  if (worst !== undefined) {
    return {
      verdict: 'ponds',
      why: `By the readings water stands ${depthWords(worst.greatestDepthIn)} deep over ${areaWords(worst.areaSqFt)}, ${worst.where}.`,
      decidedBy: null,
    };
  }
  return withoutPond(input);
}

const LOOK_COLD = 'It was seen dry once; look again 48 h after a rain in the cool season: is there water?';

function withoutPond(input: VerdictInput): VerdictOf {
  const { existing, judgement, covering, strict, ruleSet, error } = input;
  const { flats } = judgement;
  const dry = existing.seenDryAfter48h === true;
  if (flats.areaSqFt > 1e-3 || flats.lengthFt > 1e-2) {
    const what =
      flats.areaSqFt > 1e-3
        ? `${areaWords(flats.areaSqFt)} lie level`
        : `${Math.round(flats.lengthFt)} ft of valley or wall line lie level`;
    return {
      verdict: 'undecided',
      why: dry
        ? `Seen dry within 48 h, so it does not pond by that definition; but ${what}, and water there has nowhere to run.`
        : `${what}: water there has nowhere to run, whether it dries in time was not seen.`,
      decidedBy: dry ? LOOK_COLD : LOOK,
    };
  }
  const least = judgement.leastFaceSlopeInPerFt ?? 0;
  const minimum = slopeMinimum(ruleSet, coveringClassOf(covering));
  const passesAt =
    strict || minimum.printedPercent === null ? minimum.finishedInPerFt : slopeOfPercent(minimum.printedPercent);
  if (error !== null && Math.abs(least - passesAt) < error.slopeInPerFt && !(dry && least < passesAt)) {
    return {
      verdict: 'undecided',
      why: `The flattest plane falls ${withError(least, error.slopeInPerFt, 'in/ft')} by the readings; the rule asks for ${slopeInWords(minimum.finishedInPerFt)}, which lies inside that error.`,
      decidedBy: decidingReading(least - passesAt, error),
    };
  }
  const falls = error === null ? slopeInWords(least) : withError(least, error.slopeInPerFt, 'in/ft');
  const { standing, shortInPerFt } = judgeSlope(least, minimum.finishedInPerFt, minimum.printedPercent, strict);
  if (standing !== 'below') {
    const note =
      standing === 'meets' ? '' : ` (${shortInPerFt.toFixed(3)} short of 1/4, but the 2 percent that the rule prints)`;
    return {
      verdict: 'meets-minimum',
      why: `The flattest plane falls ${falls}${note}; the rule asks for ${slopeInWords(minimum.finishedInPerFt)}.`,
      decidedBy: null,
    };
  }
  const below = `The flattest plane falls ${falls}; the rule asks for ${slopeInWords(minimum.finishedInPerFt)}`;
  const exception = ruleSet.building.reRoofSlope;
  if (existing.seenDryAfter48h === true && exception !== null) {
    return {
      verdict: 'drains-below-minimum',
      why: `${below}, but it was seen dry after 48 h: a re-roof may keep the slope (${exception.at}).`,
      decidedBy: null,
    };
  }
  if (dry) {
    return { verdict: 'undecided', why: `${below}; it was seen dry after 48 h.`, decidedBy: LOOK_COLD };
  }
  return { verdict: 'undecided', why: `${below}, and nobody has looked 48 h after rain.`, decidedBy: LOOK };
}

/** Longer than this nobody holds a straight fall on a roof section. */
const LONGEST_RUN_FT = 60;

/** The reading that tells a slope from its limit: two heights far enough apart along the fall. */
function decidingReading(gapInPerFt: number, { readingIn }: ReadingError): string {
  const runFt = Math.ceil(runToDecideFt(readingIn, gapInPerFt));
  if (!(runFt <= LONGEST_RUN_FT)) return `No reading of this tool decides it. ${LOOK}`;
  return `Read two heights at least ${runFt} ft apart along the fall of that plane, each to within ${depthWords(readingIn)}.`;
}
