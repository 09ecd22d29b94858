import { type InnerFace, march, type OuterFace, storedJ } from './march.ts';
import type { Slab } from './slab.ts';

/** One day that ends as it began, entry 0 = midnight, last entry = midnight again. */
export interface PeriodicDay {
  faceC: Float64Array;
  /** Heat into the room, W/m2. */
  roomWPerM2: Float64Array;
  /** Through the outer face and into the room over the day, J/m2. */
  enteredJ: number;
  leftJ: number;
  /** Heat stored at the end less that at the start, J/m2. */
  storedJ: number;
  days: number;
}

export interface DayInput {
  slab: Slab;
  outer: OuterFace;
  inner: InnerFace;
  stepS: number;
  /** Temperatures to start from, C. */
  startC: Float64Array;
}

const MOST_DAYS = 400;

const dot = (a: Float64Array, b: Float64Array): number => a.reduce((sum, each, i) => sum + each * b[i], 0);

/** Where a heavy deck creeps by a like share each day, go to the sum of all the days to come (Aitken). */
function leap(tempC: Float64Array, change: Float64Array, last: Float64Array): void {
  const share = dot(change, last) / Math.max(dot(last, last), Number.MIN_VALUE);
  if (!(share > 0 && share < 0.99)) return;
  const ahead = share / (1 - share);
  for (let i = 0; i < tempC.length; i++) tempC[i] += ahead * change[i];
}

/**
 * Repeats a day until no temperature moves by more than `toleranceK` from one midnight to the next. The first day is
 * stepped backward (theta 1), which wipes out what the guess got wrong; the others are of second order.
 */
export function periodicDay({ slab, outer, inner, stepS, startC }: DayInput, toleranceK = 1e-4): PeriodicDay {
  const steps = inner.airC.length - 1;
  const n = slab.capacity.length;
  const temp = Float64Array.from(startC);
  const damped = march(slab, outer, inner, stepS, 1);
  for (let step = 0; step < steps; step++) damped.advance(temp, step);
  const { advance } = march(slab, outer, inner, stepS, 0.5);
  const day: PeriodicDay = {
    faceC: new Float64Array(steps + 1),
    roomWPerM2: new Float64Array(steps + 1),
    enteredJ: 0,
    leftJ: 0,
    storedJ: 0,
    days: 1,
  };
  const note = (step: number): void => {
    day.faceC[step] = temp[0];
    day.roomWPerM2[step] = inner.filmWPerM2K * (temp[n - 1] - inner.airC[step]);
  };
  const before = new Float64Array(n);
  let last: Float64Array | null = null;
  for (let moved = Number.POSITIVE_INFINITY; moved > toleranceK && day.days < MOST_DAYS; day.days++) {
    before.set(temp);
    [day.enteredJ, day.leftJ] = [0, 0];
    note(0);
    for (let step = 0; step < steps; step++) {
      const [entered, left] = advance(temp, step);
      day.enteredJ += entered;
      day.leftJ += left;
      note(step + 1);
    }
    day.storedJ = storedJ(slab, temp) - storedJ(slab, before);
    const change = temp.map((each, i) => each - before[i]);
    moved = change.reduce((most, each) => Math.max(most, Math.abs(each)), 0);
    if (last === null) last = change;
    else {
      leap(temp, change, last);
      last = null;
    }
  }
  return day;
}
