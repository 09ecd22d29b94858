import { describe, expect, it } from 'vitest';
import { criteria } from '../../reference/membranes/criteria.ts';
import { situationWeights, weightShifts } from '../../reference/membranes/weights.ts';
import { compareMembranes } from '../../src/core/membrane/compare.ts';
import { shiftWeights, weighSituation, withOwnWeights } from '../../src/core/membrane/weights.ts';
import { parseRoofObject } from '../../src/input/parse-roof.ts';
import { roofFileObject } from '../../src/input/print-roof.ts';
import { membraneFacts } from './membrane-facts.ts';

const sum = (weights: object): number => Object.values(weights).reduce((total: number, weight) => total + weight, 0);
const dry = { covering: 'sbs-granule', layers: 1, wet: null, ponds: false } as const;
const usual = weighSituation(membraneFacts({ existing: dry })).weights;

describe('what shifts a weight (amounts: common practice)', () => {
  it.each([
    ['ponding', 'up', { existing: { ...dry, ponds: true } }],
    ['puncture', 'up', { existing: dry, grease: true }],
    ['ignition', 'up', { existing: dry, noFlame: true }],
    ['residue', 'up', { existing: dry, residueRemovedOrCovered: false }],
    ['residue', 'down', { existing: dry, residueRemovedOrCovered: true }],
    ['puncture', 'up', { existing: dry, footTraffic: true }],
    ['redundancy', 'up', { existing: dry, debris: true }],
    ['heat', 'down', { existing: dry, climateZone: '6' }],
    ['heat', 'down', { existing: dry, livingSpaceBelow: false }],
    ['cost', 'up', { existing: dry, tightBudget: true }],
    ['ponding', 'up', { existing: dry, residualPondIn: 1 }],
  ] as const)('%s goes %s with %o', (criterion, way, change) => {
    const { weights, why } = weighSituation(membraneFacts(change));
    expect(sum(weights)).toBeCloseTo(1, 12);
    if (way === 'up') expect(weights[criterion]).toBeGreaterThan(usual[criterion] + 1e-9);
    else expect(weights[criterion]).toBeLessThan(usual[criterion] - 1e-9);
    expect(why).toMatch(/^Weighed for /);
  });

  it('each says its reason, and the others keep their proportion', () => {
    const weighed = weighSituation(membraneFacts({ existing: { ...dry, ponds: true } }));
    expect(weighed.why).toContain('Standing water counts half again as much: water stood on the old roof.');
    const [hot] = situationWeights;
    const moved = shiftWeights(hot.weights, [weightShifts[0]]);
    expect(moved.ponding).toBeCloseTo(0.15 / 1.05, 12);
    expect(moved.heat / moved.life).toBeCloseTo(hot.weights.heat / hot.weights.life, 12);
  });

  it('an old sheet without asphalt leaves none to weigh, whatever is said of it; a second layer might', () => {
    for (const residueRemovedOrCovered of [null, true, false]) {
      const facts = membraneFacts({ existing: { ...dry, covering: 'tpo', layers: 1 }, residueRemovedOrCovered });
      const weighed = weighSituation(facts);
      expect(weighed.weights.residue).toBe(0);
      expect(sum(weighed.weights)).toBeCloseTo(1, 12);
      expect(weighed.why).toContain('Old asphalt left below does not count: the old roof has none.');
    }
    const two = membraneFacts({ existing: { ...dry, covering: 'tpo', layers: 2 } });
    expect(weighSituation(two).weights.residue).toBeGreaterThan(0);
    const coated = membraneFacts({ existing: { ...dry, covering: 'coating', layers: 1 } });
    expect(weighSituation(coated).weights.residue).toBeGreaterThan(0);
  });

  it('no flip asks about what counts nothing', () => {
    const { reports } = compareMembranes(membraneFacts({ existing: { ...dry, covering: 'tpo', layers: 1 } }));
    expect(reports.flatMap(({ flips }) => flips).join(' ')).not.toContain('old asphalt');
  });
});

describe('weights of the owner’s own', () => {
  it('take their share, and the others keep their proportion in the rest', () => {
    const own = withOwnWeights(usual, { heat: 40, cost: 20 })!;
    expect([own.heat, own.cost]).toEqual([expect.closeTo(0.4, 12), expect.closeTo(0.2, 12)]);
    expect(sum(own)).toBeCloseTo(1, 12);
    expect(own.life / own.detail).toBeCloseTo(usual.life / usual.detail, 12);
  });

  it('all ten are brought to a sum of one; all of it on one leaves nothing to the others', () => {
    const even = Object.fromEntries(criteria.map(({ id }) => [id, 3]));
    expect(Object.values(withOwnWeights(usual, even)!)).toEqual(criteria.map(() => expect.closeTo(0.1, 12)));
    expect(withOwnWeights(usual, { heat: 100 })).toMatchObject({ heat: 1, cost: 0 });
    expect(withOwnWeights(usual, Object.fromEntries(criteria.map(({ id }) => [id, 0])))).toBeNull();
  });

  it('decide, are told as the reader’s own, and never bring back what is out', () => {
    const { reports, chosen, weighing } = compareMembranes(membraneFacts({ ownWeights: { cost: 100 } }));
    expect(chosen).toBe('epdm-black');
    expect(weighing.own).toBe(true);
    expect(weighing.why).toMatch(/^Your own weights are used: price 100 %\./);
    expect(reports.find(({ id }) => id === 'roll-roofing')!.veto).not.toBeNull();
    expect(reports.flatMap(({ flips }) => flips).join(' ')).not.toMatch(/Infinity|NaN|assumed/);
    expect(weighing.weights.find(({ criterion }) => criterion === 'cost')).toMatchObject({ given: true, weight: 1 });
  });

  it('where none are given the situation decides, and nothing says otherwise', () => {
    const { weighing } = compareMembranes(membraneFacts({}));
    expect(weighing.own).toBe(false);
    expect(weighing.weights.every(({ weight, usual: same, given }) => weight === same && !given)).toBe(true);
  });
});

const roofWith = (weights: unknown) =>
  parseRoofObject({
    version: 1,
    outline: [
      [0, 0],
      [20, 0],
      [20, 10],
      [0, 10],
    ],
    preferences: { weights },
  });

describe('weights in the roof file', () => {
  it('are read, kept as written and printed back', () => {
    const parsed = roofWith({ heat: 30, cost: 0 });
    if (!parsed.ok) throw new Error('not read');
    expect(parsed.roof.preferences.weights).toEqual({ heat: 30, cost: 0 });
    expect(roofFileObject(parsed.roof)).toMatchObject({ preferences: { weights: { heat: 30, cost: 0 } } });
  });

  it.each([
    ['not known', null],
    [{}, null],
    [{ heat: null }, null],
  ])('%o is no weight', (weights, read) => {
    const parsed = roofWith(weights);
    expect(parsed.ok && parsed.roof.preferences.weights).toBe(read);
  });

  it.each([
    [{ heat: 80, cost: 30 }, 'preferences.weights', 'more than 100 percent'],
    [{ heet: 30 }, 'preferences.weights.heet', 'there is no "heet" here'],
    [{ heat: -5 }, 'preferences.weights.heat', '-5'],
    [{ heat: 'much' }, 'preferences.weights.heat', 'much'],
    [Object.fromEntries(criteria.map(({ id }) => [id, 0])), 'preferences.weights', 'all weights are 0'],
  ])('%o is refused at %s', (weights, path, words) => {
    const parsed = roofWith(weights);
    expect(parsed.ok).toBe(false);
    const problem = parsed.ok ? undefined : parsed.problems[0];
    expect(problem?.path).toBe(path);
    expect(`${problem?.message} ${problem?.got}`).toContain(words);
    expect(problem?.instead ?? '').not.toBe('');
  });
});
