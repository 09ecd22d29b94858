import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gutterRuns, pitchFactor } from '../../../src/core/outlets/gutter.ts';
import type { EdgeInput } from '../../../src/core/outlets/size-edge.ts';
import { sizeOutlet } from '../../../src/core/outlets/size-outlets.ts';
import type { Gutter } from '../../../src/core/roof.ts';
import { duty } from './duty.ts';

const k5: Gutter = { profile: 'k', sizeIn: 5, slopeInPerFt: null, downspouts: [3, 27], downspoutSizeIn: [2, 3] };

const edge = (areaSqFt: number, inPerHr: number, changes: Partial<EdgeInput> = {}): EdgeInput => ({
  ...duty(areaSqFt, inPerHr, changes),
  kind: 'edge',
  fromFt: 0,
  toFt: 30,
  gutter: k5,
  pitchIn12: null,
  ...changes,
});

describe('gutter runs', () => {
  it('break midway between downspouts', () => {
    expect(gutterRuns(0, 30, [27, 3])).toEqual([
      { fromFt: 0, toFt: 3, downspoutFt: 3 },
      { fromFt: 3, toFt: 15, downspoutFt: 3 },
      { fromFt: 15, toFt: 27, downspoutFt: 27 },
      { fromFt: 27, toFt: 30, downspoutFt: 27 },
    ]);
  });

  it('leave out a downspout elsewhere, and there is no run without one', () => {
    expect(gutterRuns(0, 30, [-5, 0])).toEqual([{ fromFt: 0, toFt: 30, downspoutFt: 0 }]);
    expect(gutterRuns(0, 30, [])).toEqual([]);
  });

  it('cover the whole gutter once', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 80, noNaN: true }), { minLength: 1, maxLength: 6 }),
        (downspouts) => {
          const total = gutterRuns(0, 80, downspouts).reduce((sum, run) => sum + run.toFt - run.fromFt, 0);
          expect(total).toBeCloseTo(80, 4);
        },
      ),
    );
  });

  it('pitch factor begins at 4 in 12', () => {
    expect([0, 3.9, 4, 6, 11, 12, 18].map(pitchFactor)).toEqual([1, 1, 1.05, 1.1, 1.2, 1.3, 1.3]);
  });
});

describe('open edges', () => {
  it('a free edge carries what comes, with no head', () => {
    const rating = sizeOutlet(edge(608, 4, { gutter: null }));
    expect(rating.adequate).toBe(true);
    expect(rating.capacityGpm).toBeNull();
    expect(rating.headIn).toBe(0);
    // Case C39: 608 sq ft at 4 in/h.
    expect(Math.abs(rating.flowGpm - 25.3)).toBeLessThan(0.2);
  });

  it('a gutter is as good as its longest run and its busiest downspout', () => {
    const rating = sizeOutlet(edge(720, 3.2));
    // Longest run 12 of 30 ft holds 5,520; the downspout with 15 ft holds 6 x 1,200.
    expect(rating.capacityGpm).toBeCloseTo(0.0104 * Math.min(5520 / 0.4, 7200 / 0.5), 9);
    // Five-minute rain by the one published city: 7.1 in/h where the hour is 3.2.
    expect(rating.flowGpm).toBeCloseTo(0.0104 * 720 * 7.1, 9);
    expect(rating.adequate).toBe(true);
  });

  it('the steep roof above brings its pitch factor with it', () => {
    const flat = sizeOutlet(edge(0, 3.2, { addedSqFt: 420 })).flowGpm;
    expect(sizeOutlet(edge(0, 3.2, { addedSqFt: 420, pitchIn12: 6 })).flowGpm).toBeCloseTo(1.1 * flat, 9);
  });

  it('one downspout at the end is the weak point', () => {
    const rating = sizeOutlet(edge(1200, 3.2, { gutter: { ...k5, downspouts: [0] } }));
    expect(rating.adequate).toBe(false);
    expect(rating.findings.map((finding) => finding.id)).toEqual(['outlet-undersized']);
    expect(rating.needs).toBe('5-in K gutter with a 3 x 4 in downspout mid-length');
  });

  it('what is not known gives no verdict; an unmeasured downspout takes the smallest and is listed', () => {
    expect(sizeOutlet(edge(720, 3.2, { gutter: { ...k5, downspouts: null } })).adequate).toBeNull();
    expect(sizeOutlet(edge(720, 3.2, { gutter: { ...k5, sizeIn: null } })).adequate).toBeNull();
    const box = sizeOutlet(edge(720, 3.2, { gutter: { ...k5, profile: 'box' } }));
    expect(box.adequate).toBeNull();
    expect(box.needs).toContain('box gutter');
    const open = sizeOutlet(edge(720, 3.2, { gutter: { ...k5, downspoutSizeIn: null } }));
    expect(open.assumed.map((each) => each.path)).toEqual([
      'place.rain.fiveMinute',
      'outlets.X1.gutter.downspoutSizeIn',
    ]);
  });

  it('a gutter without a downspout carries nothing away', () => {
    expect(sizeOutlet(edge(720, 3.2, { gutter: { ...k5, downspouts: [] } })).adequate).toBe(false);
  });

  it('what is needed carries the flow', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 20_000, noNaN: true }),
        fc.double({ min: 0.6, max: 6.2, noNaN: true }),
        fc.double({ min: 8, max: 300, noNaN: true }),
        (areaSqFt, inPerHr, lengthFt) => {
          const { needed } = sizeOutlet(edge(areaSqFt, inPerHr, { toFt: lengthFt }));
          if (needed?.kind !== 'gutter') throw new Error('no gutter');
          const stretch = lengthFt / needed.downspouts;
          const gutter = {
            ...k5,
            sizeIn: needed.sizeIn,
            downspouts: Array.from({ length: needed.downspouts }, (_, at) => (at + 0.5) * stretch),
            downspoutSizeIn: needed.downspout.split(' ').flatMap((word) => Number(word) || []) as [number, number],
          };
          expect(sizeOutlet(edge(areaSqFt, inPerHr, { toFt: lengthFt, gutter })).adequate).toBe(true);
        },
      ),
    );
  });
});
