import { describe, expect, it } from 'vitest';
import { siteOf } from '../../src/core/site/site.ts';
import { workDaysOf } from '../../src/core/takeoff/work-days.ts';
import { assessed, gutterRoof, layoutOf, roofOf, wayOf } from './takeoff-roofs.ts';

const chosenOf = (more: Record<string, unknown>) => {
  const { layouts, chosenLayout, ...answer } = assessed(roofOf(gutterRoof(30, 24, more)));
  return { ...answer, chosen: layouts.find(({ id }) => id === chosenLayout)!, layouts };
};
const part = ({ chosen }: ReturnType<typeof chosenOf>, what: RegExp) =>
  chosen.workDays?.parts.find((one) => what.test(one.what));
const old = { existing: { surface: 'level', readOn: 'covering', buildUpIn: 1.5 } };

// Planning bands for a crew of four, common practice, no source: 8 to 15 squares of one layer a day, 4 to 8 with gravel,
// 15 to 25 of boards, 6 to 10 of two self-adhered plies; 15 to 25 ft of edge an hour for two.
describe('working days', () => {
  it('one layer of 7.2 squares takes 0.48 to 0.9 days to tear off, gravel 0.9 to 1.8, two layers twice as long', () => {
    const one = part(chosenOf({ ...old, covering: { kind: 'sbs-granule', layers: 1 } }), /old roof/);
    expect([one?.leastDays, one?.mostDays]).toEqual([expect.closeTo(0.48, 9), expect.closeTo(0.9, 9)]);
    const gravel = part(chosenOf({ ...old, covering: { kind: 'bur-gravel', layers: 1 } }), /old roof/);
    expect([gravel?.leastDays, gravel?.mostDays]).toEqual([expect.closeTo(0.9, 9), expect.closeTo(1.8, 9)]);
    const two = part(chosenOf({ ...old, covering: { kind: 'sbs-granule', layers: 2 } }), /old roof/);
    expect(two?.mostDays).toBeCloseTo(1.8, 9);
  });

  it('an old roof that stays, or is off already, takes none', () => {
    expect(part(chosenOf({ ...old, removedIn: 0 }), /old roof/)).toBeUndefined();
    expect(part(chosenOf({}), /old roof/)).toBeUndefined();
  });

  it('boards are counted layer by layer with the cover board', () => {
    // 24 ft to a gutter at 1/4: two boards of the group of 0.5 to 2.5 in repeat on 2 and 4 in of fill.
    const days = chosenOf({});
    const { boards, fill } = days.chosen;
    const layers =
      boards.reduce((sum, { net, runFt, widthFt }) => sum + net * runFt * widthFt, 0) +
      fill.reduce((sum, { areaSqFt }) => sum + areaSqFt, 0) +
      720;
    expect(layers).toBeGreaterThan(1440);
    expect(part(days, /boards/)?.leastDays).toBeCloseTo(layers / 100 / 25, 9);
  });

  it('edges: 54 ft at 15 to 25 an hour and a wall of 30 for one pair of two', () => {
    const edges = part(chosenOf({}), /edges/);
    expect(edges?.leastDays).toBeCloseTo(108 / 25 / 2 / 8, 9);
    expect(edges?.mostDays).toBeCloseTo(108 / 15 / 2 / 8, 9);
  });

  it('a small single-ply section goes slower by the square, and a covering without a rate says so', () => {
    const covering = (membrane: 'tpo' | 'pmma' | 'sbs-self-adhered', widthFt = 30) => {
      const roof = roofOf(gutterRoof(widthFt, 24));
      const input = { site: siteOf(roof), layout: layoutOf(roof), membrane, attachment: wayOf(membrane) };
      return workDaysOf(input).parts.find(({ what }) => what === 'Lay the covering')!;
    };
    expect(covering('tpo').basis).toContain('a small section');
    expect(covering('tpo').leastDays).toBeCloseTo(7.2 / 8, 9);
    expect(covering('tpo', 60).leastDays).toBeCloseTo(14.4 / 15, 9);
    expect(covering('sbs-self-adhered').mostDays).toBeCloseTo(7.2 / 6, 9);
    expect(covering('pmma').basis).toContain('no rate is held');
    expect([covering('pmma').leastDays, covering('pmma').mostDays]).toEqual([7.2 / 15, 7.2 / 4]);
  });

  it('the whole is whole days, the parts added; only what can be built has any', () => {
    const { chosen, layouts } = chosenOf({});
    const sum = (pick: (one: { leastDays: number; mostDays: number }) => number) =>
      chosen.workDays!.parts.reduce((all, one) => all + pick(one), 0);
    expect(chosen.workDays?.leastDays).toBe(Math.ceil(sum(({ leastDays }) => leastDays)));
    expect(chosen.workDays?.mostDays).toBe(Math.ceil(sum(({ mostDays }) => mostDays)));
    for (const { rejected, workDays } of layouts) expect(workDays === undefined).toBe(rejected !== null);
  });
});
