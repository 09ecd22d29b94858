import { wetAlarm } from '../../../reference/vapor.ts';
import type { Budget, Layout, MoistureCure, RetarderKind } from '../report/types.ts';
import { driesOut, YEARS, type YearBalance, yearBalance } from './balance.ts';
import { type BuildUp, vaporLayers, withRetarder } from './build-up.ts';
import { heightLeft } from './height-left.ts';
import { type Room, roomOf } from './room.ts';
import { moistureTests } from './tests.ts';
import type { Winter } from './winter.ts';

export interface CureInput {
  /** The roof with so much more board above the deck, in. */
  builtWith: (moreIn: number) => BuildUp;
  winter: Winter;
  climateZone: string | null;
  room: Room;
  layout: Layout | null;
  budgets: readonly Budget[];
}

const STEP_IN = 0.5;
const MOST_IN = 16;
/** Drier rooms than this are asked of nobody. Common practice, no source. */
export const DRIEST_PCT = 30;
const STEP_PCT = 5;

/** From the cheapest on. */
const retarders: readonly RetarderKind[] = ['none', 'sheet', 'foil'];

type Tests = ReturnType<typeof moistureTests>;

const passes = (tests: Tests): boolean => tests.every(({ state }) => state !== 'fails');

type Place = Pick<CureInput, 'winter' | 'climateZone'>;

const balanceWith = ({ winter }: Place, built: BuildUp, room: Room, retarder: RetarderKind): YearBalance =>
  yearBalance(vaporLayers(withRetarder(built.layers, retarder)), winter, room.excessPa);

/** Whether no test but that of the year fails. */
const warmEnough = ({ winter, climateZone }: Place, built: BuildUp, room: Room): boolean =>
  passes(moistureTests({ built, winter, climateZone, room, balance: null }));

/** Whether no test fails. The balance takes longest and is asked last. */
const holds = (input: Place, built: BuildUp, room: Room, retarder: RetarderKind): boolean =>
  warmEnough(input, built, room) && driesOut(balanceWith(input, built, room, retarder));

/** The cheapest retarder with which no test fails; null = none is enough. */
export const retarderFor = (place: Place, built: BuildUp, room: Room): RetarderKind | null =>
  retarders.find((kind) => holds(place, built, room, kind)) ?? null;

/** Least board, in half inches, with which no test fails, and the cheapest retarder that is enough over it. */
function leastMore(input: CureInput): { moreIn: number; retarder: RetarderKind } | null {
  for (let moreIn = 0; moreIn <= MOST_IN; moreIn += STEP_IN) {
    const built = input.builtWith(moreIn);
    const retarder = retarderFor(input, built, input.room);
    if (retarder !== null) return { moreIn, retarder };
  }
  return null;
}

function drierRoom(input: CureInput): MoistureCure['drierRoom'] {
  const built = input.builtWith(0);
  const from = STEP_PCT * (Math.ceil(input.room.humidityPct / STEP_PCT) - 1);
  for (let mostPct = from; mostPct >= DRIEST_PCT; mostPct -= STEP_PCT) {
    const room = roomOf(input.winter, mostPct);
    const retarder = retarderFor(input, built, room);
    if (retarder !== null) return { mostPct, retarder };
  }
  return null;
}

/** Where water gathers whatever is done: the tightest retarder over the least board with which it stays few years' water. */
function slowest(input: CureInput): MoistureCure['slows'] {
  for (let moreIn = 0; moreIn <= MOST_IN; moreIn += STEP_IN) {
    const built = input.builtWith(moreIn);
    if (!warmEnough(input, built, input.room)) continue;
    const { peakGPerM2, leftGPerM2 } = balanceWith(input, built, input.room, 'foil');
    if (peakGPerM2 > wetAlarm.gPerM2) continue;
    return { retarder: 'foil', moreIn, peakGPerM2, leftGPerM2, years: (YEARS * wetAlarm.gPerM2) / leftGPerM2 };
  }
  return null;
}

/**
 * What makes a roof that fails a test hold all of them: a vapor retarder on the deck, more board above it, drier rooms.
 * Each is the same roof put through the same tests again; a retarder is taken where it saves board.
 * Correctness: tests/cases/damp-cures.test.ts
 */
export function cureOf(input: CureInput): MoistureCure {
  const { moreIn, retarder } = leastMore(input) ?? { moreIn: null, retarder: 'none' };
  const slows = moreIn === null ? slowest(input) : null;
  return {
    retarder,
    moreIn,
    aboveR: moreIn === null ? null : input.builtWith(moreIn).above.winterR,
    slows,
    ...heightLeft(input.layout, input.budgets, moreIn ?? slows?.moreIn ?? null),
    drierRoom: moreIn === 0 ? null : drierRoom(input),
  };
}
