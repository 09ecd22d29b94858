import { wetAlarm } from '../../../reference/vapor.ts';
import type { Budget, Layout, Lining, MoistureCure } from '../report/types.ts';
import { yearsToAlarm } from './balance.ts';
import { type BuildUp, linedWith } from './build-up.ts';
import { heightLeft } from './height-left.ts';
import { BARE, balanceOf, failing, liningFor, linings, type Place } from './lining.ts';
import { roomOf } from './room.ts';

export interface CureInput extends Place {
  /** The roof with so much more board above the deck, in. */
  builtWith: (moreIn: number) => BuildUp;
  /** The roof with so much more board and nothing left of the old one; null = nothing stays of it. */
  builtTorn: ((moreIn: number) => BuildUp) | null;
  /** The roof as planned with so much R below the deck in place of what lies there. */
  builtOver: (kind: 'batts' | 'closed-cell', r: number) => BuildUp;
  /** What the space below the deck takes of closed-cell foam. */
  foamR: number;
  layout: Layout | null;
  /** Flat board that is planned where there is no layout. */
  flatIn: number | null;
  budgets: readonly Budget[];
}

const STEP_IN = 0.5;
export const MOST_IN = 16;
/** Drier rooms than this are asked of nobody. Common practice, no source. */
export const DRIEST_PCT = 30;
const STEP_PCT = 5;
/** What fills up sooner than this is not worth laying. */
const SLOW_YEARS = 10;

/** Least board, in half inches, with which no test fails, and the cheapest lining that is enough with it. */
function leastMore(place: Place, builtWith: CureInput['builtWith']): { moreIn: number; lining: Lining } | null {
  for (let moreIn = 0; moreIn <= MOST_IN; moreIn += STEP_IN) {
    const lining = liningFor(place, builtWith(moreIn));
    if (lining !== null) return { moreIn, lining };
  }
  return null;
}

function drierRoom(input: CureInput): MoistureCure['drierRoom'] {
  const built = input.builtWith(0);
  const from = STEP_PCT * (Math.ceil(input.room.humidityPct / STEP_PCT) - 1);
  for (let mostPct = from; mostPct >= DRIEST_PCT; mostPct -= STEP_PCT) {
    const lining = liningFor({ ...input, room: roomOf(input.winter, mostPct) }, built);
    if (lining !== null) return { mostPct, ...lining };
  }
  return null;
}

/** Where water gathers whatever is done: the tightest lining over the least board with which it takes years to be too much. */
function slowest(input: CureInput): MoistureCure['slows'] {
  for (let moreIn = 0; moreIn <= MOST_IN; moreIn += STEP_IN) {
    const built = input.builtWith(moreIn);
    const lining = linings(built).at(-1)!;
    const tight = linedWith(built, lining);
    if (failing(input, tight).some(({ id }) => id !== 'year-balance')) continue;
    const water = balanceOf(input, tight);
    const years = yearsToAlarm(water);
    if (water.peakGPerM2 > wetAlarm.gPerM2 || years < SLOW_YEARS) continue;
    return { ...lining, moreIn, peakGPerM2: water.peakGPerM2, leftGPerM2: water.leftGPerM2, years };
  }
  return null;
}

/** More than any joist space holds: with so much the amount is no limit. */
const NO_LIMIT_R = 60;

/**
 * Most R of batts under a build-up with which no test fails, and the lining that it takes; null = even none is too much.
 * @param fromR less than is there
 * @param asWater the tables of the code are not asked
 */
export function mostBatts(
  place: Place,
  builtOver: CureInput['builtOver'],
  { fromR = NO_LIMIT_R, asWater = false },
): { r: number; lining: Lining; noLimit: boolean } | null {
  for (let r = Math.max(0, Math.ceil(fromR) - 1); r >= 0; r--) {
    const lining = liningFor(place, builtOver('batts', r), asWater);
    if (lining !== null) return { r, lining, noLimit: fromR === NO_LIMIT_R && r === NO_LIMIT_R - 1 };
  }
  return null;
}

/**
 * What makes a roof that fails a test hold all of them: a vapor retarder, a coating of the foam, more board, fewer batts, foam in their place,
 * the old roof off, drier rooms. Each is the same roof put through the same tests again; a retarder is taken where it saves board.
 * Correctness: tests/cases/damp-cures.test.ts
 */
export function cureOf(input: CureInput): MoistureCure {
  const { moreIn, lining } = leastMore(input, input.builtWith) ?? { moreIn: null, lining: BARE };
  const slows = moreIn === null ? slowest(input) : null;
  const { below, above } = input.builtWith(0);
  const fewer =
    moreIn !== 0 && below.kind === 'batts' ? mostBatts(input, input.builtOver, { fromR: below.r ?? 0 }) : null;
  const torn = moreIn === 0 || input.builtTorn === null ? null : leastMore(input, input.builtTorn);
  return {
    ...lining,
    moreIn,
    aboveR: moreIn === null ? null : input.builtWith(moreIn).above.winterR,
    slows,
    ...heightLeft(input, moreIn ?? slows?.moreIn ?? null),
    planned: above.winterR > 0,
    sprayed:
      moreIn !== 0 && below.kind === 'batts' ? liningFor(input, input.builtOver('closed-cell', input.foamR)) : null,
    fewerBatts: fewer === null ? null : { mostR: fewer.r, ...fewer.lining },
    tornOff: torn === null ? null : { moreIn: torn.moreIn, ...torn.lining },
    drierRoom: moreIn === 0 ? null : drierRoom(input),
  };
}
