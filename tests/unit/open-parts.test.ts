import { describe, expect, it } from 'vitest';
import { assess } from '../../src/core/assess.ts';
import { orderOfWork } from '../../src/core/report/page-crew.ts';
import { fortyByTwenty } from './outlets/forty-by-twenty.ts';
import { rules } from './outlets/rules.ts';

const parapets = [0, 1, 2, 3].map((side) => ({ side, kind: 'parapet', topIn: 30, mayDrain: 'no' }));
const drain = (id: string, x: number, y = 10) => ({ id, kind: 'drain', at: [x, y], sizeIn: 4, leaderRoute: 'yes' });

/** 40 x 20 ft, level, between parapets, 2 in of old roof over the deck. */
function answer(changes: object = {}) {
  const roof = fortyByTwenty({
    place: { rain: { inPerHr: 3.2, durationMin: 60, returnYears: 100 } },
    deck: { liveLoadPsf: 20 },
    edges: parapets,
    outlets: [drain('D1', 10), drain('D2', 30)],
    existing: { surface: 'level', readOn: 'covering', buildUpIn: 2 },
    ...changes,
  });
  const done = assess(roof, rules('irc-2021', 'ipc-2021'));
  const chosen = done.layouts.find(({ id }) => id === done.chosenLayout)!;
  return { done, chosen, parts: chosen.workParts ?? [] };
}

const told = (changes: object, id: string) => answer(changes).done.findings.find((finding) => finding.id === id);

describe('the deck that lies open at the end of a work day', () => {
  it('one part for each drainage area, with the ways out that lie in it', () => {
    const { parts } = answer();
    expect(parts.map(({ outlet }) => outlet).sort()).toEqual(['D1', 'D2']);
    expect(parts.reduce((sum, { areaSqFt }) => sum + areaSqFt, 0)).toBeCloseTo(800, 3);
    for (const { label, waysOut, overAnEdge, damIn } of parts) {
      expect([waysOut, overAnEdge, damIn]).toEqual([[label], false, 2]);
    }
  });

  it('a part with one way out is told: the old roof dams 2 in, 10.4 psf; over the live load it is a stop', () => {
    const found = told({}, 'open-part-one-way-out');
    expect(found).toMatchObject({ level: 'fix', value: '1', limit: '2' });
    expect(found?.message).toMatch(/drain D[12] and drain D[12].* 2 in deep, 10\.4 psf/);
    expect(told({ deck: { liveLoadPsf: 10 } }, 'open-part-one-way-out')?.level).toBe('stop');
  });

  it('an overflow in the part is the second way; an open edge needs none', () => {
    const relief = (id: string, alongFt: number) => ({
      ...{ id, kind: 'scupper', side: 0, alongFt, widthIn: 12, heightIn: 6, inletIn: 4, role: 'overflow' },
    });
    const outlets = [drain('D1', 10), drain('D2', 30), relief('O1', 10), relief('O2', 30)];
    expect(told({ outlets }, 'open-part-one-way-out')).toBeUndefined();
    const gutter = [{ side: 3, kind: 'gutter' }, ...parapets.slice(0, 3)];
    expect(told({ edges: gutter, outlets: [] }, 'open-part-one-way-out')).toBeUndefined();
  });

  it('a scupper whose floor stands above the bare deck holds water on it', () => {
    const outlets = [{ id: 'S1', kind: 'scupper', side: 3, alongFt: 10, widthIn: 12, heightIn: 6, inletIn: 0 }];
    const found = told({ outlets }, 'open-part-holds-water');
    // The floor is flush with the old covering, 2 in over the deck that is laid bare.
    expect(found).toMatchObject({ level: 'fix', value: '2 in' });
  });

  it('the crew sheet has the line for every part', () => {
    const { done, chosen } = answer();
    const step = orderOfWork(done, chosen).find(({ title }) => title === 'At the end of every work day');
    expect(step?.hold).toBe(true);
    expect(step?.lines.filter((line) => line.startsWith('Area of drain D'))).toHaveLength(2);
    expect(step?.lines.join(' ')).toContain('One way out is not enough');
  });
});
