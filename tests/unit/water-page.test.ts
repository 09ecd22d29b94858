import { describe, expect, it } from 'vitest';
import { whatDecides } from '../../src/core/report/page-decides.ts';
import { loadRungs, outletRows, pondNote, pondRows, sparePercent } from '../../src/core/report/page-water.ts';
import type { Assessment, ExistingReport, OutletReport, PondReport } from '../../src/core/report/types.ts';
import { caseRoof, caseText } from '../cases/case-roof.ts';
import { byHand } from './drawing-fixture.ts';

const limits = { listedFromIn: 0.0625, flaggedOverIn: 0.25, flaggedOverSqFt: 10 };
const [pit] = byHand.existing.ponds;
const pond = (part: Partial<PondReport>): PondReport => ({ ...pit, birdBath: true, flagged: [], ...part });

describe('table of ponds', () => {
  it('lists from 1/16 in, keeps the numbers of the drawings, and counts the films it leaves out', () => {
    const ponds = [pond({}), pond({ greatestDepthIn: 0.0624 }), pond({ greatestDepthIn: 0.0625 })];
    expect(pondRows(ponds, limits).map(({ place }) => place)).toEqual(['pond-1', 'pond-3']);
    expect(pondNote(ponds, limits)).toContain('1 film of water under 1/16″ is not listed.');
  });

  it('says why a pond is flagged, or that it is a bird bath', () => {
    const words = (flagged: PondReport['flagged']) => pondRows([pond({ flagged })], limits)[0];
    expect(words(['depth', 'area']).standing).toBe('flagged: over 1/4″ deep and over 10 sq ft wide');
    expect(words(['area'])).toMatchObject({ standing: 'flagged: over 10 sq ft wide', flagged: true });
    expect(words([])).toMatchObject({ standing: 'a bird bath: listed, not failed', flagged: false });
  });

  it('prints what is left after 48 h by season', () => {
    const left = (leftAfter48hIn: PondReport['leftAfter48hIn']) => pondRows([pond({ leftAfter48hIn })], limits)[0].left;
    expect(left([0.55, 0.85])).toBe('9/16″ (warm season) to 7/8″ (cool season)');
    expect(left([0, 0.125])).toBe('dry (warm season) to 1/8″ (cool season)');
    expect(left([0, 0])).toBe('dry');
    expect(left(undefined)).toBe('not known');
  });
});

describe('flags on a real roof', () => {
  /** A square tray 1/8 in deep in the middle, all over the section: readings on a grid of 10 ft. */
  const tray = (local: object) => {
    const grid = [0, 10, 20];
    const readings = grid.flatMap((x) => grid.map((y) => [x, y, x === 10 && y === 10 ? -0.125 : 0]));
    return caseRoof(
      'tray',
      JSON.stringify({
        version: 1,
        ruleSet: { local },
        outline: [
          [0, 0],
          [20, 0],
          [20, 20],
          [0, 20],
        ],
        edges: [{ side: 0, kind: 'drip', mayDrain: 'yes' }],
        existing: { readings },
      }),
    ).answer.existing.ponds[0];
  };

  it('a shallow wide pond is flagged for its area alone, and the two settings move both limits', () => {
    expect(tray({}).areaSqFt).toBeGreaterThan(100);
    expect(tray({})).toMatchObject({ birdBath: true, flagged: ['area'] });
    expect(tray({ birdBathSqFt: 1000 })).toMatchObject({ birdBath: true, flagged: [] });
    expect(tray({ birdBathIn: 0.0625 })).toMatchObject({ birdBath: false, flagged: ['depth', 'area'] });
  });
});

describe('table of outlets', () => {
  const outlet = (part: Partial<OutletReport>): OutletReport => ({ ...byHand.existing.outlets[0], ...part });

  it('gives the spare share of what an outlet carries, or the share of its flow that it does not', () => {
    expect(sparePercent({ flowGpm: 30, capacityGpm: 40 })).toBeCloseTo(25, 9);
    expect(sparePercent({ flowGpm: 50, capacityGpm: 40 })).toBeCloseTo(-20, 9);
    expect(sparePercent({ flowGpm: 40, capacityGpm: 40 })).toBe(0);
    expect(sparePercent({ flowGpm: 0, capacityGpm: 0 })).toBe(0);
    expect(sparePercent({ flowGpm: null, capacityGpm: 40 })).toBeNull();
    const words = outletRows([outlet({ flowGpm: 50, capacityGpm: 40 }), outlet({ flowGpm: 5, capacityGpm: 0 })]);
    expect(words.map(({ spare }) => spare)).toEqual(['short by 20 % of its flow', 'none: carries nothing of it']);
  });

  it('gives the water at an outlet and its weight, 5.2 psf to the inch (IBC 1611.1)', () => {
    const [row] = outletRows([outlet({ headIn: 0.75, loadPsf: 3.9 })]);
    expect(row.load).toBe('3/4″ over the inlet, 3.9 psf');
    expect(outletRows([outlet({})])[0].load).toBe('not known');
    const { outlets } = caseRoof('c22').answer.existing;
    const scupper = outlets.find(({ id }) => id === 'S1')!;
    expect(scupper.loadPsf).toBeCloseTo(5.2 * scupper.headIn!, 9);
  });
});

describe('levels and their loads', () => {
  it('begin with the deepest water of today and join steps of one height', () => {
    const existing: ExistingReport = {
      ...byHand.existing,
      liveLoad: { psf: 5, assumed: false },
      loads: [
        { label: 'to run into drain D1', depthIn: 0, loadPsf: 0, exceedsLiveLoad: false },
        { label: 'to run into drain D2', depthIn: 0, loadPsf: 0, exceedsLiveLoad: false },
      ],
    };
    expect(loadRungs(existing)).toMatchObject([
      { label: 'the deepest water of today', depthIn: 1, loadPsf: 5.2, exceeds: true, today: true },
      { label: 'to run into drain D1 (and 1 more at this height)', depthIn: 0, today: false },
    ]);
  });
});

describe('what decides the answer', () => {
  const lookOf = (assessment: Assessment) => whatDecides(assessment).look;

  it('names the observation that the verdict names, where it is undecided', () => {
    const { answer } = caseRoof('c11');
    expect(answer.existing.decidedBy).not.toBeNull();
    expect(lookOf(answer)).toBe(answer.existing.decidedBy);
  });

  it('asks to look again where water was seen, and to check the readings where it is computed', () => {
    expect(lookOf(caseRoof('c02').answer)).toContain('Look again 48 h after the next rain');
    expect(lookOf(caseRoof('c26').answer)).toMatch(/a reading is wrong\.$/);
  });

  it('gives one or two facts, the verdict first, each with one full stop', () => {
    for (const id of ['c02', 'c11', 'c16', 'c26', 'c42']) {
      const { answer } = caseRoof(id);
      const { facts } = whatDecides(answer);
      expect(facts[0]).toBe(answer.existing.why);
      expect([1, 2]).toContain(facts.length);
      for (const fact of facts) expect(fact).toMatch(/[^.]\.$/);
    }
  });

  it('does not ask for what was measured', () => {
    const text = JSON.parse(caseText('c42'));
    const { answer } = caseRoof('c42', JSON.stringify({ ...text, existing: { ...text.existing, buildUpIn: 1 } }));
    expect(answer.assumed.some(({ path }) => path.startsWith('existing'))).toBe(false);
    expect(
      whatDecides({ ...answer, assumed: answer.assumed.filter(({ path }) => path !== 'removedIn') }).takenForNow,
    ).toBeNull();
  });
});
