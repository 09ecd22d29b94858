import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plumbingRules } from '../../../reference/rule-sets.ts';
import { drainFlowGpm, drainHeadIn, printedCurve } from '../../../src/core/outlets/drain-head.ts';
import { scupperCapacityGpm, scupperHeadIn } from '../../../src/core/outlets/scupper.ts';
import type { DrainInput } from '../../../src/core/outlets/size-drain.ts';
import { sizeOutlet } from '../../../src/core/outlets/size-outlets.ts';
import type { ScupperInput } from '../../../src/core/outlets/size-scupper.ts';
import { horizontalPipes, leaders, rectangularLeaders, rowOfSize } from '../../../src/core/outlets/storm-pipe.ts';
import { duty } from './duty.ts';
import { rules } from './rules.ts';

const drain = (areaSqFt: number, inPerHr: number, changes: Partial<DrainInput> = {}): DrainInput => ({
  ...duty(areaSqFt, inPerHr, changes),
  kind: 'drain',
  sizeIn: null,
  insertBoreIn: null,
  strainer: null,
  strainerFreeSqIn: null,
  usableHeadIn: null,
  horizontalSlopeInPerFt: null,
  makersCurve: null,
  ...changes,
});

const scupper = (areaSqFt: number, inPerHr: number, changes: Partial<ScupperInput> = {}): ScupperInput => ({
  ...duty(areaSqFt, inPerHr, changes),
  kind: 'scupper',
  widthIn: null,
  heightIn: null,
  usableHeadIn: null,
  ...changes,
});

const neededDrainIn = (input: DrainInput) => {
  const { needed } = sizeOutlet(input);
  return needed?.kind === 'drain' ? needed : null;
};

describe('drains', () => {
  it('2,640 sq ft at 3.2 in/h: 87.9 gpm, a 3-in drain is short by 0.9, a 4-in one carries it', () => {
    const small = sizeOutlet(drain(2640, 3.2, { sizeIn: 3 }));
    expect(small.flowGpm).toBeCloseTo(87.86, 2);
    expect(small.capacityGpm).toBe(87);
    expect(small.adequate).toBe(false);
    expect(small.needs).toBe('4-in drain');
    expect(small.findings.map((finding) => finding.id)).toEqual(['outlet-undersized']);
    expect(sizeOutlet(drain(2640, 3.2, { sizeIn: 4 })).adequate).toBe(true);
  });

  it('a size that is not known gives no capacity and no verdict', () => {
    const rating = sizeOutlet(drain(600, 3));
    expect(rating.capacityGpm).toBeNull();
    expect(rating.adequate).toBeNull();
    expect(rating.needs).toBe('2-in drain');
    expect(rating.basis).toContain('not known');
  });

  it('the same drain under the three generations of tables', () => {
    const sizes = ['ipc-2012', 'ipc-2021', 'upc-2021'].map(
      (id) => neededDrainIn(drain(2500, 7.2, { ruleSet: rules('ibc-2018', id) }))?.sizeIn,
    );
    expect(sizes).toEqual([4, 5, 5]);
  });

  it('a covered drain carries nothing, whatever its size', () => {
    const rating = sizeOutlet(drain(600, 3, { sizeIn: 6, working: false }));
    expect(rating.capacityGpm).toBe(0);
    expect(rating.adequate).toBe(false);
    expect(rating.findings.map((finding) => finding.id)).toEqual(['outlet-not-working']);
  });

  it('more than the largest pipe is split', () => {
    expect(neededDrainIn(drain(200_000, 4))).toMatchObject({ count: 2 });
  });

  it("the maker's curve limits what the pipe could carry", () => {
    const makersCurve = [
      [1, 40],
      [2, 60],
    ] as const;
    expect(sizeOutlet(drain(2000, 3, { sizeIn: 4, makersCurve })).capacityGpm).toBe(60);
    expect(sizeOutlet(drain(2000, 3, { sizeIn: 4, makersCurve, usableHeadIn: 1 })).capacityGpm).toBe(40);
  });

  it('water deeper over the drain than the overflow allows is told', () => {
    const rating = sizeOutlet(drain(6250, 4, { sizeIn: 6 }));
    expect(rating.headIn).toBeGreaterThan(2);
    expect(rating.findings.map((finding) => finding.id)).toContain('drain-head-over-usable');
  });

  it('a flat horizontal pipe is larger than the drain', () => {
    expect(neededDrainIn(drain(2640, 3.2, { horizontalSlopeInPerFt: 1 / 16 }))).toMatchObject({
      sizeIn: 4,
      horizontalIn: 5,
    });
  });
});

describe('pipe tables', () => {
  it('a slope between columns takes the flatter one, and a flatter pipe than the table has no row', () => {
    expect(horizontalPipes('ipc-gpm', 0.2)).toEqual(horizontalPipes('ipc-gpm', 0.125));
    expect(horizontalPipes('ipc-area', 0.1)).toEqual([]);
  });

  it('a size between rows takes the smaller one; rectangles are listed in one generation only', () => {
    expect(rowOfSize(leaders('ipc-area'), 3.5)?.sizeIn).toEqual([3]);
    expect(rowOfSize(leaders('ipc-area'), 1)).toBeNull();
    expect(rectangularLeaders('seven-twenty-fourths')).toEqual([]);
    expect(rectangularLeaders('ipc-gpm').every((row) => row.sizeIn.length === 2)).toBe(true);
  });
});

describe('drain curves', () => {
  it('interpolate from the origin, invert, and are not carried on', () => {
    const { curve } = printedCurve(6)!;
    expect(drainHeadIn(curve, 50)).toBeCloseTo(0.5, 12);
    expect(drainHeadIn(curve, 230)).toBeCloseTo(2.25, 12);
    expect(drainHeadIn(curve, 541)).toBeNull();
    expect(drainFlowGpm(curve, 10)).toBe(540);
    expect(printedCurve(5)).toBeNull();
  });
});

describe('scuppers', () => {
  it('case C22: a 6 x 6 in primary scupper carries a quarter of 6,000 sq ft at 3 in/h', () => {
    const rating = sizeOutlet(scupper(6000, 3, { widthIn: 6, heightIn: 6, usableHeadIn: 2 }));
    expect(Math.abs(rating.flowGpm - 187)).toBeLessThan(1);
    expect(Math.abs(rating.capacityGpm! - 47.5)).toBeLessThan(2);
    expect(Math.abs(rating.flowGpm / rating.capacityGpm! - 3.9)).toBeLessThan(0.2);
    expect(rating.adequate).toBe(false);
    expect(rating.needs).toBe('scupper 24 x 6 in');
  });

  it('default heads: 2 in for a primary, 1 in under the top for an overflow, never less than none', () => {
    const primary = sizeOutlet(scupper(500, 3, { widthIn: 8, heightIn: 8 }));
    expect(primary.basis).toContain('2 in of water');
    const overflow = sizeOutlet(scupper(500, 3, { widthIn: 8, heightIn: 8, role: 'overflow' }));
    expect(overflow.basis).toContain('7 in of water');
    const slot = sizeOutlet(scupper(500, 3, { widthIn: 8, heightIn: 0.5, role: 'overflow' }));
    expect(slot.capacityGpm).toBe(0);
    expect(slot.findings.map((finding) => finding.id)).toContain('scupper-opening-small');
  });

  it('an unknown height is assumed and listed, an unknown width gives no verdict', () => {
    const rating = sizeOutlet(scupper(500, 3, { widthIn: 8 }));
    expect(rating.assumed.map((each) => each.path)).toEqual(['outlets.X1.heightIn']);
    expect(sizeOutlet(scupper(500, 3)).adequate).toBeNull();
  });

  it('head is the inverse of capacity, through weir and orifice', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 36, noNaN: true }),
        fc.option(fc.double({ min: 2, max: 8, noNaN: true })),
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        (widthIn, heightIn, headIn) => {
          const opening = { widthIn, heightIn };
          const back = scupperHeadIn(opening, scupperCapacityGpm(opening, headIn))!;
          expect(back).toBeLessThanOrEqual(headIn + 1e-6);
          expect(scupperCapacityGpm(opening, back)).toBeCloseTo(scupperCapacityGpm(opening, headIn), 6);
        },
      ),
    );
  });

  it('capacity never falls with head or width', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 36, noNaN: true }),
        fc.option(fc.double({ min: 2, max: 8, noNaN: true })),
        fc.double({ min: 0, max: 120, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (widthIn, heightIn, headIn, more) => {
          const flow = scupperCapacityGpm({ widthIn, heightIn }, headIn);
          expect(scupperCapacityGpm({ widthIn, heightIn }, headIn + more)).toBeGreaterThanOrEqual(flow - 1e-9);
          expect(scupperCapacityGpm({ widthIn: widthIn + more, heightIn }, headIn)).toBeGreaterThanOrEqual(flow - 1e-9);
        },
      ),
    );
  });
});

describe('laws of sizing', () => {
  const rain = fc.double({ min: 0.5, max: 7, noNaN: true });
  const area = fc.double({ min: 0, max: 60_000, noNaN: true });
  const plumbing = fc.constantFrom(...plumbingRules.map((row) => row.id));

  it('more rain never gives a smaller drain, and what is needed carries the flow', () => {
    fc.assert(
      fc.property(area, rain, rain, plumbing, (areaSqFt, a, b, id) => {
        const ruleSet = rules('irc-2021', id);
        const [less, more] = [Math.min(a, b), Math.max(a, b)].map((inPerHr) =>
          neededDrainIn(drain(areaSqFt, inPerHr, { ruleSet })),
        );
        expect(more!.count).toBeGreaterThanOrEqual(less!.count);
        if (more!.count === less!.count) expect(more!.sizeIn).toBeGreaterThanOrEqual(less!.sizeIn);
        const asBuilt = sizeOutlet(drain(areaSqFt / more!.count, Math.max(a, b), { ruleSet, sizeIn: more!.sizeIn }));
        expect(asBuilt.adequate).toBe(true);
      }),
    );
  });

  it('more rain never gives fewer or narrower scuppers in all, and what is needed carries the flow', () => {
    fc.assert(
      fc.property(area, rain, rain, fc.double({ min: 0.5, max: 6, noNaN: true }), (areaSqFt, a, b, usableHeadIn) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)].map((inPerHr) => {
          const { needed } = sizeOutlet(scupper(areaSqFt, inPerHr, { usableHeadIn }));
          if (needed?.kind !== 'scupper') throw new Error('no scupper');
          return needed;
        });
        expect(more.count).toBeGreaterThanOrEqual(less.count);
        if (more.count === less.count) expect(more.widthIn).toBeGreaterThanOrEqual(less.widthIn);
        const asBuilt = sizeOutlet(
          scupper(areaSqFt / more.count, Math.max(a, b), {
            usableHeadIn,
            widthIn: more.widthIn,
            heightIn: more.heightIn,
          }),
        );
        expect(asBuilt.adequate).toBe(true);
      }),
    );
  });

  it('every number is finite or null, and added area counts like area', () => {
    fc.assert(
      fc.property(area, area, rain, (areaSqFt, addedSqFt, inPerHr) => {
        const apart = sizeOutlet(drain(areaSqFt, inPerHr, { addedSqFt, sizeIn: 4 }));
        const together = sizeOutlet(drain(areaSqFt + addedSqFt, inPerHr, { sizeIn: 4 }));
        expect(apart.flowGpm).toBeCloseTo(together.flowGpm, 6);
        for (const value of [apart.flowGpm, apart.capacityGpm, apart.headIn]) {
          expect(value === null || Number.isFinite(value)).toBe(true);
        }
      }),
    );
  });
});
