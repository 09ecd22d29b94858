import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/core/assess.ts';
import { scupperCapacityGpm } from '../../../src/core/outlets/scupper.ts';
import { gutterAsNeeded, sizeEdge } from '../../../src/core/outlets/size-edge.ts';
import type { Assessment } from '../../../src/core/report/types.ts';
import { duty } from './duty.ts';
import { fortyByTwenty } from './forty-by-twenty.ts';
import { rules } from './rules.ts';

const parapets = [0, 1, 2, 3].map((side) => ({ side, kind: 'parapet', topIn: 14, mayDrain: 'no' }));
const main = { id: 'S1', kind: 'scupper', side: 3, alongFt: 10, widthIn: 12, heightIn: 6, inletIn: 0 };
const relief = (inletIn: number, changes: object = {}) => ({
  ...{ id: 'O1', kind: 'scupper', side: 3, alongFt: 4, widthIn: 12, heightIn: 6, inletIn, role: 'overflow' },
  ...changes,
});

/** 40 x 20 ft falling 1/4 in per ft to side 3, between parapets; 3.2 in/h. */
function answer(changes: object = {}): Assessment {
  const roof = fortyByTwenty({
    place: { rain: { inPerHr: 3.2, durationMin: 60, returnYears: 100 } },
    ruleSet: { building: 'irc-2021', plumbing: 'ipc-2021' },
    deck: { liveLoadPsf: 20 },
    edges: parapets,
    outlets: [main, relief(2)],
    existing: { planes: [{ slopeInPerFt: 0.25, fallsToward: { side: 3 } }], readOn: 'deck' },
    ...changes,
  });
  return assess(roof, rules('irc-2021', 'ipc-2021'));
}

const outlet = ({ existing }: Assessment, id: string) => existing.outlets.find((each) => each.id === id)!;
const told = ({ findings }: Assessment, id: string) => findings.find((finding) => finding.id === id);

describe('usable head: from the main inlet to the overflow inlet', () => {
  const at = (inletIn: number, changes: object = {}) =>
    outlet(answer({ outlets: [main, relief(inletIn)], ...changes }), 'S1').capacityGpm;

  it('is the real height between the two, not the 2 in of the rule', () => {
    for (const inletIn of [1.25, 2, 3]) {
      expect(at(inletIn)).toBeCloseTo(scupperCapacityGpm({ widthIn: 12, heightIn: 6 }, inletIn), 6);
    }
  });

  it('never more than the roof bears (10 psf are 1.92 in), nor than the opening less 1 in of freeboard', () => {
    expect(at(3, { deck: { liveLoadPsf: 10 } })).toBeCloseTo(
      scupperCapacityGpm({ widthIn: 12, heightIn: 6 }, 10 / 5.2),
      6,
    );
    expect(at(9, { deck: { liveLoadPsf: 60 } })).toBeCloseTo(scupperCapacityGpm({ widthIn: 12, heightIn: 6 }, 5), 6);
  });

  it('falls back on the rule where no working overflow takes the water', () => {
    const two = scupperCapacityGpm({ widthIn: 12, heightIn: 6 }, 2);
    expect(outlet(answer({ outlets: [main] }), 'S1').capacityGpm).toBeCloseTo(two, 6);
    const covered = answer({ outlets: [main, relief(3, { working: false })] });
    expect(outlet(covered, 'S1').capacityGpm).toBeCloseTo(two, 6);
  });
});

describe('an overflow is rated with the main outlets shut', () => {
  it('takes the whole area then: 800 sq ft at twice the hourly rain, 53.2 gpm', () => {
    const rated = outlet(answer(), 'O1');
    expect(rated.drainsSqFt).toBeCloseTo(0, 6);
    expect(rated.shutSqFt).toBeCloseTo(800, 4);
    expect(rated.flowGpm).toBeCloseTo(0.0104 * 800 * 6.4, 4);
    expect(rated.basis).toContain('with the main outlets shut 800 sq ft run to it');
    expect(outlet(answer({ outlets: [main, relief(2, { widthIn: 1 })] }), 'O1').adequate).toBe(false);
  });

  it('two of them share it, and their areas make up the section', () => {
    const both = answer({ outlets: [main, relief(2), relief(2, { id: 'O2', alongFt: 16 })] });
    const areas = ['O1', 'O2'].map((id) => outlet(both, id).shutSqFt!);
    expect(areas[0] + areas[1]).toBeCloseTo(800, 4);
  });
});

describe('the new roof and the overflow', () => {
  it('a taper buries a low overflow: the height to raise it to is said', () => {
    const found = told(answer({ outlets: [main, relief(0.25, { alongFt: 19 })] }), 'overflow-buried');
    expect(found?.level).toBe('fix');
    const [, by, to] = /raise its inlet by ([\d.]+) in, to ([\d.]+) in above the old surface/.exec(found!.message)!;
    expect(Number(to)).toBeCloseTo(0.25 + Number(by), 2);
    expect(Number(by)).toBeGreaterThan(0.5);
  });

  it('a taper that lifts the low point leaves an overflow too low: raised to 2 in above the new one', () => {
    const found = told(answer(), 'overflow-too-low');
    expect(found).toMatchObject({ level: 'fix', limit: '2 in' });
    expect(found?.message).toMatch(/2 in above the low point/);
    expect(Number.parseFloat(found!.value!)).toBeLessThan(2);
  });

  it('an overflow 2 in above the new low point is left in peace', () => {
    const ids = answer({ outlets: [main, relief(3)] }).findings.map(({ id }) => id);
    expect(ids).not.toContain('overflow-too-low');
    expect(ids).not.toContain('overflow-buried');
  });

  it('the reading of "three times the size" that was used is said with the other one', () => {
    const note = answer({ outlets: [{ id: 'D1', kind: 'drain', at: [2, 10], sizeIn: 4 }] }).layouts[0].overflow.note;
    expect(note).toContain('12 in of width (three diameters) or 9.42 in (three areas at 4 in of height)');
    expect(note).toContain('the wider one, 12 in, is used');
  });
});

describe('a new gutter', () => {
  const needed = { kind: 'gutter', profile: 'k', sizeIn: 5, downspouts: 2, downspout: '2 x 3 in' } as const;

  it('has its downspouts on its own stretch, counted from the first corner of the side', () => {
    expect(gutterAsNeeded(needed, 60, 100).downspouts).toEqual([70, 90]);
    expect(gutterAsNeeded(needed, 60, 100).downspoutSizeIn).toEqual([2, 3]);
  });

  it('carries its flow wherever on the side it lies; downspouts counted from its own start would carry nothing', () => {
    const edge = { ...duty(1000, 3), kind: 'edge', pitchIn12: null } as const;
    const ratedAt = (fromFt: number, gutter: ReturnType<typeof gutterAsNeeded>) =>
      sizeEdge({ ...edge, fromFt, toFt: fromFt + 40, gutter });
    const near = ratedAt(0, gutterAsNeeded(needed, 0, 40));
    const far = ratedAt(60, gutterAsNeeded(needed, 60, 100));
    expect(far.capacityGpm).toBe(near.capacityGpm);
    expect(far.adequate).toBe(true);
    expect(ratedAt(60, gutterAsNeeded(needed, 0, 40)).capacityGpm).toBe(0);
  });

  it('on the far part of a side it is planned as needed and carries its flow', () => {
    const edges = [
      ...parapets.filter(({ side }) => side !== 0),
      { side: 0, fromFt: 0, toFt: 20, kind: 'parapet', topIn: 14, mayDrain: 'no' },
      { side: 0, fromFt: 20, toFt: 40, kind: 'rake', mayDrain: 'yes' },
    ];
    const opened = answer({ edges }).layouts.flatMap(({ outlets }) =>
      outlets.filter(({ kind, status }) => kind === 'edge' && status === 'proposed'),
    );
    expect(opened.length).toBeGreaterThan(0);
    for (const gutter of opened) {
      expect(gutter.label).toContain('new gutter');
      expect(gutter.adequate).toBe(true);
      expect(gutter.capacityGpm!).toBeGreaterThanOrEqual(gutter.flowGpm!);
    }
  });
});
