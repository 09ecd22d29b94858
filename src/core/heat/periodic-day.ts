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
    moved = temp.reduce((most, each, i) => Math.max(most, Math.abs(each - before[i])), 0);
  }
  day.storedJ = storedJ(slab, temp) - storedJ(slab, before);
  return day;
}
