/** Heights along one straight stretch of a triangle's side: rising evenly from h0 to h1. */
export interface Stretch {
  s0: number;
  s1: number;
  h0: number;
  h1: number;
  /** Index of the outlet whose water would leave here. */
  outlet: number;
  /** Triangle through which this height arrived; negative where it came otherwise. */
  from: number;
}

/** A height that is lower by less than this is the same height. */
const SAME_IN = 1e-9;
/** Stretches shorter than this are nothing. */
const SHORT_FT = 1e-9;

const unreached = (s0: number, s1: number): Stretch => ({
  s0,
  s1,
  h0: Number.POSITIVE_INFINITY,
  h1: Number.POSITIVE_INFINITY,
  outlet: -1,
  from: -1,
});

export const isReached = ({ h0 }: Stretch): boolean => h0 !== Number.POSITIVE_INFINITY;

const at = ({ s0, s1, h0, h1 }: Stretch, s: number): number => {
  if (h0 === Number.POSITIVE_INFINITY || s <= s0) return h0;
  return s >= s1 ? h1 : h0 + ((h1 - h0) * (s - s0)) / (s1 - s0);
};

const part = (whole: Stretch, s0: number, s1: number): Stretch => ({
  ...whole,
  s0,
  s1,
  h0: at(whole, s0),
  h1: at(whole, s1),
});

/** Two stretches end to end that are one straight line. */
const inLine = (a: Stretch, b: Stretch): boolean =>
  a.outlet === b.outlet &&
  a.from === b.from &&
  isReached(a) === isReached(b) &&
  (!isReached(a) ||
    (Math.abs(a.h1 - b.h0) < SAME_IN &&
      Math.abs(a.h0 + ((b.h1 - a.h0) * (a.s1 - a.s0)) / (b.s1 - a.s0) - a.h1) < SAME_IN));

/**
 * The least height known so far at each place of one side, as stretches from 0 to its length.
 * Only `lower` changes it, and only downward.
 */
export class Profile {
  stretches: Stretch[];

  constructor(lengthFt: number) {
    this.stretches = [unreached(0, lengthFt)];
  }

  /** Takes the lower of what is known and one more stretch; returns where it was lower, null where nowhere. */
  lower(offer: Stretch): { s0: number; s1: number } | null {
    if (!this.#gains(offer)) return null;
    const out: Stretch[] = [];
    const push = (stretch: Stretch): void => {
      if (stretch.s1 - stretch.s0 <= 0) return;
      const last = out[out.length - 1];
      if (last !== undefined && inLine(last, stretch))
        out[out.length - 1] = { ...last, s1: stretch.s1, h1: stretch.h1 };
      else out.push(stretch);
    };
    let [gain0, gain1] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    const win = (s0: number, s1: number): void => {
      push(part(offer, s0, s1));
      gain0 = Math.min(gain0, s0);
      gain1 = Math.max(gain1, s1);
    };
    for (const known of this.stretches) {
      const a = Math.max(known.s0, offer.s0);
      const b = Math.min(known.s1, offer.s1);
      if (b - a <= SHORT_FT) {
        push(known);
        continue;
      }
      push(part(known, known.s0, a));
      const da = at(offer, a) - at(known, a);
      const db = at(offer, b) - at(known, b);
      if (da >= -SAME_IN && db >= -SAME_IN) push(part(known, a, b));
      else if (da <= SAME_IN && db <= SAME_IN) win(a, b);
      else {
        const meet = Math.min(b, Math.max(a, a + ((b - a) * da) / (da - db)));
        if (da < 0) {
          win(a, meet);
          push(part(known, meet, b));
        } else {
          push(part(known, a, meet));
          win(meet, b);
        }
      }
      push(part(known, b, known.s1));
    }
    this.stretches = out;
    return gain0 < gain1 ? { s0: gain0, s1: gain1 } : null;
  }

  #gains(offer: Stretch): boolean {
    for (const known of this.stretches) {
      const a = Math.max(known.s0, offer.s0);
      const b = Math.min(known.s1, offer.s1);
      if (b - a <= SHORT_FT) continue;
      if (at(offer, a) < at(known, a) - SAME_IN || at(offer, b) < at(known, b) - SAME_IN) return true;
    }
    return false;
  }
}
