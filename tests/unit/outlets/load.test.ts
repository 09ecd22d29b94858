import { describe, expect, it } from 'vitest';
import { inServiceSlope } from '../../../src/core/drainage/sag.ts';
import { type LoadLadderInput, loadLadder } from '../../../src/core/outlets/load-ladder.ts';
import type { SpillPlace } from '../../../src/core/outlets/spill-places.ts';
import { wallShareSqFt } from '../../../src/core/outlets/wall-share.ts';
import { rules } from './rules.ts';

const spill = (kind: SpillPlace['kind'], heightIn: number, headIn: number | null = 0): SpillPlace => ({
  label: `the ${kind}`,
  kind,
  heightIn,
  headIn,
});

const ladder = (spills: readonly SpillPlace[], changes: Partial<LoadLadderInput> = {}) =>
  loadLadder({ where: 'the section', lowPointIn: -1, spills, liveLoadPsf: 20, ...changes });

describe('load ladder', () => {
  it('climbs from the low point in order of level, 5.2 psf to the inch', () => {
    const { steps } = ladder([spill('parapet', 13), spill('overflow', 1, 1.5), spill('primary', -1), spill('door', 5)]);
    expect(steps.map((step) => step.depthIn)).toEqual([0, 3.5, 6, 14]);
    expect(steps.map((step) => step.loadPsf)).toEqual([0, 18.2, 31.200000000000003, 72.8]);
    expect(steps.map((step) => step.exceedsLiveLoad)).toEqual([false, false, true, true]);
    expect(steps[1].label).toBe('primary outlets shut: to run out at the overflow');
  });

  it('an overflow within the live load is no stop, even if the parapet would not be', () => {
    expect(ladder([spill('overflow', 1, 1.5), spill('parapet', 13)]).findings).toEqual([]);
  });

  it('a hospital roof whose only overflow is a door (case C28): 150 mm to the sill is 1.47 kPa', () => {
    const sillIn = 150 / 25.4;
    const { steps, findings } = ladder([spill('door', sillIn), spill('parapet', 600 / 25.4)], {
      lowPointIn: 0,
      liveLoadPsf: null,
    });
    expect(Math.abs(steps[0].loadPsf * 0.0478803 - 1.47)).toBeLessThan(0.02);
    expect(Math.abs(steps[1].loadPsf * 0.0478803 - 5.89)).toBeLessThan(0.03);
    expect(findings.map((finding) => [finding.id, finding.level])).toEqual([
      ['engineer-first', 'stop'],
      ['door-is-overflow', 'stop'],
    ]);
  });

  it('a door below the running overflow is a stop', () => {
    const { findings } = ladder([spill('overflow', 1, 1.5), spill('door', 2)]);
    expect(findings.map((finding) => finding.id)).toEqual(['door-below-overflow']);
  });

  it('an unknown head is said, an unknown live load assumed and listed', () => {
    const { steps, assumed } = ladder([spill('overflow', 1, null)], { liveLoadPsf: null });
    expect(steps[0].label).toContain('not known');
    expect(assumed.map((each) => each.value)).toEqual(['20 psf']);
  });

  it('no way out gives no step', () => {
    expect(ladder([])).toMatchObject({ steps: [], findings: [] });
  });
});

describe('walls under the UPC (1103.4; opposite and three-sided walls from memory)', () => {
  const upc = rules('ibc-2021', 'upc-2021');
  const wall = (areaSqFt: number, facingDeg: number | null) => ({ areaSqFt, facingDeg });
  const share = (...walls: ReturnType<typeof wall>[]) => wallShareSqFt(walls, upc).areaSqFt;

  it('counts by number and direction', () => {
    expect(share()).toBe(0);
    expect(share(wall(400, 0))).toBe(200);
    expect(share(wall(400, 10), wall(400, 190))).toBe(0);
    expect(share(wall(400, 350), wall(300, 170))).toBe(50);
    expect(share(wall(400, 0), wall(300, 90))).toBeCloseTo(245, 9);
    expect(share(wall(400, 0), wall(300, null))).toBe(350);
    expect(share(wall(400, 0), wall(300, 90), wall(400, 180))).toBe(550);
  });

  it('the local share wins', () => {
    const local = rules('ibc-2021', 'upc-2021', { wallShare: 0.25 });
    expect(wallShareSqFt([wall(400, 0), wall(300, 90)], local).areaSqFt).toBe(175);
  });
});

describe('slope in service', () => {
  const joists = { spanFt: 20, depthIn: 9.25, spacingIn: 16, directionDeg: null };
  const given = {
    slopeInPerFt: 0.25,
    joists,
    fallBearingDeg: 0,
    addedDeadPsf: 0,
    unreadDeadPsf: 20,
    liveLoadPsf: 20,
  };

  it('is not known without joists', () => {
    expect(inServiceSlope({ ...given, joists: null })).toMatchObject({ slopeInPerFt: null, sagToComeIn: null });
  });

  it('1.5 times the dead sag and live turn the 2x10 of the published case uphill, 0.009 in/ft', () => {
    const result = inServiceSlope(given);
    expect(result.slopeInPerFt!).toBeCloseTo(-0.009, 3);
    expect(result.note).toContain('uphill');
    expect(result.assumed.map((each) => each.path)).toEqual(['deck.joists']);
  });

  it('dead load that the readings show already is not counted again, and a lighter roof gives nothing back', () => {
    const read = inServiceSlope({ ...given, unreadDeadPsf: 0 });
    expect(read.sagToComeIn!).toBeCloseTo(0.647, 3);
    expect(inServiceSlope({ ...given, unreadDeadPsf: 0, addedDeadPsf: -5 }).sagToComeIn).toBe(read.sagToComeIn);
  });

  it('a fall across the joists loses nothing along them', () => {
    const across = inServiceSlope({ ...given, joists: { ...joists, directionDeg: 90 } });
    expect(across.slopeInPerFt!).toBeCloseTo(0.25, 9);
  });
});
