import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildingRules, plumbingRules } from '../../../reference/rule-sets.ts';
import { type OverflowInput, overflowFor } from '../../../src/core/outlets/overflow.ts';
import type { WayOut } from '../../../src/core/outlets/ways-out.ts';
import { rainOf } from './duty.ts';
import { rules } from './rules.ts';

const way = (id: string, changes: Partial<WayOut> = {}): WayOut => ({
  id,
  label: `outlet ${id}`,
  role: 'primary',
  working: true,
  inletIn: 0,
  inletAboveLowIn: 0,
  inletAboveSurfaceIn: 0,
  ...changes,
});

const overflow = (changes: Partial<WayOut> = {}) =>
  way('O1', { role: 'overflow', inletAboveLowIn: 2, inletAboveSurfaceIn: 1.5, ...changes });

const irc = rules('irc-2021', 'ipc-2021');

function input(changes: Partial<OverflowInput> = {}): OverflowInput {
  const ruleSet = changes.ruleSet ?? irc;
  return {
    id: 'A1',
    where: 'the section',
    ruleSet,
    rain: rainOf(3.2, ruleSet),
    enclosed: true,
    drainsSqFt: 2640,
    addedSqFt: 0,
    ways: [way('D1'), way('D2')],
    primaryDrainSizeIn: 4,
    asKind: 'scupper',
    openingHeightIn: null,
    reRoof: true,
    drainage: 'not-shown',
    liveLoadPsf: 20,
    ...changes,
  };
}

const ids = (given: Partial<OverflowInput>) => overflowFor(input(given)).findings.map((finding) => finding.id);

describe('whether an overflow is required', () => {
  it('where walls can hold water, unless a re-roof is shown to drain', () => {
    expect(overflowFor(input()).required).toBe(true);
    expect(overflowFor(input({ drainage: 'ponds' })).note).toContain('lost the exception');
    const excused = overflowFor(input({ drainage: 'drains' }));
    expect(excused.required).toBe(false);
    expect(excused.exceptionApplies).toBe(true);
    expect(excused.source.text).toContain('R908.1 exception 2');
    expect(overflowFor(input({ drainage: 'drains', reRoof: false })).required).toBe(true);
  });

  it('not where every part drains over an edge; a local amendment decides alone', () => {
    expect(overflowFor(input({ enclosed: false })).required).toBe(false);
    const asked = rules('irc-2021', 'ipc-2021', { overflowRequired: true });
    expect(overflowFor(input({ ruleSet: asked, drainage: 'drains' })).required).toBe(true);
  });

  it('one that is there is never given up', () => {
    for (const drainage of ['drains', 'ponds', 'not-shown'] as const) {
      const { note } = overflowFor(input({ drainage, ways: [way('D1'), overflow()] }));
      expect(note).toContain('stays or is replaced');
    }
  });
});

describe('ways out of an enclosed area', () => {
  it('one is a stop even where the exception applies, none is worse', () => {
    expect(ids({ ways: [way('D1')], drainage: 'drains' })).toContain('no-second-way-out');
    expect(ids({ ways: [] })).toContain('no-way-out');
    expect(ids({ ways: [way('D1'), overflow()] })).toEqual([]);
    expect(ids({ ways: [way('D1')], enclosed: false })).toEqual([]);
  });

  it('several primary outlets without an overflow are told so: to be fixed, or known where the exception applies', () => {
    const two = { ways: [way('D1'), way('D2')] };
    const level = (given: Partial<OverflowInput>) =>
      overflowFor(input(given)).findings.find(({ id }) => id === 'no-overflow')?.level;
    expect(level(two)).toBe('fix');
    expect(level({ ...two, drainage: 'drains' })).toBe('note');
    expect(level({ ...two, enclosed: false })).toBeUndefined();
    expect(level({ ways: [way('D1'), way('D2'), overflow({ working: false })] })).toBe('fix');
  });

  it('a covered overflow that is too high is told both', () => {
    const covered = overflow({ working: false, inletAboveLowIn: 6 });
    expect(ids({ ways: [way('S1'), covered] })).toEqual(['no-second-way-out', 'overflow-covered', 'overflow-too-high']);
  });

  it('a covered or buried overflow counts for nothing (case C22)', () => {
    expect(ids({ ways: [way('S1'), overflow({ working: false })] })).toEqual(['no-second-way-out', 'overflow-covered']);
    expect(ids({ ways: [way('S1'), overflow({ inletAboveSurfaceIn: -0.5 })] })).toEqual([
      'no-second-way-out',
      'overflow-buried',
    ]);
  });

  it('an overflow 4 in too high adds 20.8 psf (case C22)', () => {
    const { findings } = overflowFor(input({ ways: [way('S1'), overflow({ inletAboveLowIn: 6 })] }));
    expect(findings.map((finding) => finding.id)).toEqual(['overflow-too-high']);
    expect(findings[0].message).toContain('20.8 psf');
  });
});

describe('size of an overflow', () => {
  it('40 x 60 ft with a wall, 3.2 in/h doubled: 175.7 gpm, width before height', () => {
    const advice = overflowFor(input());
    expect(advice.flowGpm).toBeCloseTo(175.7, 1);
    // 1.85 in of head is what 20 psf leaves over the 2-in inlet: two readings of "three times a 4-in drain" ask 12 in, the flow 24.
    expect(advice.needed).toEqual({ kind: 'scupper', count: 1, widthIn: 24, heightIn: 4 });
    expect(advice.loadPsf!).toBeLessThanOrEqual(20);
    expect(advice.inletAboveLowIn).toBe(2);
  });

  it('the wider of the two readings rules where the flow is small, the circumference under the UPC', () => {
    const small = { drainsSqFt: 100 };
    expect(overflowFor(input(small)).needs).toBe('scupper 12 x 4 in');
    expect(overflowFor(input({ ...small, ruleSet: rules('ibc-2021', 'ipc-2021') })).needs).toBe('scupper 4 x 4 in');
    expect(overflowFor(input({ ...small, ruleSet: rules('ibc-2021', 'upc-2021') })).needs).toBe('scupper 18 x 4 in');
  });

  it('an overflow drain has at least the size of the primary one and its own pipe', () => {
    const advice = overflowFor(input({ asKind: 'drain', drainsSqFt: 300, liveLoadPsf: 30 }));
    expect(advice.needed).toMatchObject({ kind: 'drain', sizeIn: 4 });
    expect(advice.needs).toContain('its own pipe');
    // 20 gpm at 80 gpm for the first inch.
    expect(advice.headIn).toBeCloseTo((0.0104 * 300 * 6.4) / 80, 9);
    expect(advice.loadPsf).toBeCloseTo(5.2 * (2 + advice.headIn!), 9);
  });

  it('two drains share a flow whose head over one is more than the live load leaves', () => {
    const advice = overflowFor(input({ asKind: 'drain', drainsSqFt: 3000, ways: [way('D1'), overflow()] }));
    expect(advice.needs).toContain('2 overflow drains of 4 in');
    expect(advice.loadPsf!).toBeLessThanOrEqual(20);
    expect(advice.findings).toEqual([]);
  });

  it('a drain without a curve leaves head and load open and says so', () => {
    const advice = overflowFor(input({ asKind: 'drain', primaryDrainSizeIn: 5 }));
    expect(advice.headIn).toBeNull();
    expect(advice.loadPsf).toBeNull();
    expect(advice.findings.map((finding) => finding.id)).toEqual(['no-overflow', 'overflow-head-not-known']);
  });

  it('where the live load is used up before the overflow runs, the engineer is first', () => {
    expect(ids({ liveLoadPsf: 10 })).toEqual(['no-overflow', 'engineer-first']);
    expect(overflowFor(input({ liveLoadPsf: 10 })).needed).toBeNull();
    expect(ids({ asKind: 'drain', liveLoadPsf: 10 })).toEqual(['no-overflow', 'engineer-first']);
  });

  it('an assumed live load is listed', () => {
    expect(overflowFor(input({ liveLoadPsf: null })).assumed.map((each) => each.path)).toEqual(['deck.liveLoadPsf']);
  });

  it('under every rule set: finite, at least 4 in each way, and within the live load', () => {
    const building = fc.constantFrom(...buildingRules.map((row) => row.id));
    const plumbing = fc.constantFrom(...plumbingRules.map((row) => row.id));
    const area = fc.double({ min: 0, max: 40_000, noNaN: true });
    fc.assert(
      fc.property(
        building,
        plumbing,
        area,
        fc.double({ min: 15, max: 60, noNaN: true }),
        (b, p, drainsSqFt, liveLoadPsf) => {
          const advice = overflowFor(input({ ruleSet: rules(b, p), drainsSqFt, liveLoadPsf }));
          if (advice.needed?.kind !== 'scupper') throw new Error('no scupper');
          expect(advice.needed.widthIn).toBeGreaterThanOrEqual(4);
          expect(advice.needed.heightIn).toBeGreaterThanOrEqual(4);
          expect(advice.loadPsf!).toBeLessThanOrEqual(liveLoadPsf + 0.01);
        },
      ),
    );
  });
});
