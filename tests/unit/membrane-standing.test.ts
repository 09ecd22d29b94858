import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { criteria } from '../../reference/membranes/criteria.ts';
import { membraneLife } from '../../reference/membranes/life-and-cost.ts';
import { situationWeights } from '../../reference/membranes/weights.ts';
import { compareMembranes } from '../../src/core/membrane/compare.ts';
import { membranes } from '../../src/core/membrane/options.ts';
import { lifeScore, scoreMembrane } from '../../src/core/membrane/scores.ts';
import { dominatesOverRanges, type RangedOption, standings } from '../../src/core/membrane/standing.ts';
import { anyFacts, membraneFacts } from './membrane-facts.ts';

const { weights } = situationWeights[0];
const ids = criteria.map(({ id }) => id);

type Scored = RangedOption['reasons'][number];

const option = (id: string, scores: Partial<Record<(typeof ids)[number], readonly [number, number, number]>>) => ({
  id,
  reasons: ids.map((criterion): Scored => {
    const [low, score, high] = scores[criterion] ?? [5, 5, 5];
    return { criterion, low, score, high };
  }),
});

describe('evidence of every covering', () => {
  it('has a figure, points in order and a source with its grade in every cell', () => {
    for (const { id } of membranes)
      for (const cell of scoreMembrane(id)) {
        expect(cell.low).toBeLessThanOrEqual(cell.score);
        expect(cell.score).toBeLessThanOrEqual(cell.high);
        expect(Math.min(cell.low, 10 - cell.high)).toBeGreaterThanOrEqual(0);
        expect(cell.figure.length).toBeGreaterThan(8);
        expect(cell.source.text.length).toBeGreaterThan(8);
        expect(['found', 'memory', 'practice']).toContain(cell.source.grade);
      }
  });

  it('life, heat and first cost are ranges; what was judged without a figure is a point', () => {
    const pvc = scoreMembrane('pvc');
    const wide = pvc.filter(({ low, high }) => low < high).map(({ criterion }) => criterion);
    expect(wide).toEqual(['heat', 'life', 'cost']);
    const cost = pvc.find(({ criterion }) => criterion === 'cost')!;
    expect([cost.low, cost.high]).toEqual([10 - 5.408163265306122, 6].map((value) => expect.closeTo(value, 2)));
    expect(cost.figure).toBe('cost index 1.15 to 1.40');
  });

  it('the judged life of every covering lies between the values of its band (judged: common practice)', () => {
    for (const { membrane, years } of membraneLife) {
      const { score } = scoreMembrane(membrane).find(({ criterion }) => criterion === 'life')!;
      expect(score).toBeGreaterThanOrEqual(lifeScore(years[0]) - 1e-9);
      expect(score).toBeLessThanOrEqual(lifeScore(years[1]) + 1e-9);
    }
    expect([lifeScore(0), lifeScore(17.5), lifeScore(60)]).toEqual([0, 5, 10]);
  });
});

describe('places over the ranges', () => {
  it('worked by hand: two options, one range of 0.08 weight', () => {
    const a = option('a', { life: [4, 6, 8] });
    const b = option('b', { life: [5, 5, 5] });
    const [first, second] = standings([a, b], weights);
    expect(first).toMatchObject({ place: 1, bestPlace: 1, worstPlace: 2 });
    expect(first!.firstShare).toBeCloseTo(2 / 3, 12);
    expect(second!.firstShare).toBeCloseTo(1 / 3, 12);
    expect(first!.highScore - first!.lowScore).toBeCloseTo(4 * weights.life, 12);
    expect(first!.words).toBe(
      'First at the likely values and in 67 of 100 combinations of the ranges; at worst place 2.',
    );
  });

  it('says first whatever the ranges only where no rival reaches it', () => {
    const a = option('a', { heat: [8, 9, 10] });
    expect(standings([a, option('b', { heat: [4, 5, 7.9] })], weights)[0]!.words).toBe('First whatever the ranges.');
    expect(standings([a, option('b', { heat: [4, 5, 8.1] })], weights)[0]!.worstPlace).toBe(2);
  });

  it('one covering alone is first whatever the ranges', () => {
    expect(standings([option('a', { life: [0, 5, 10] })], weights)[0]!).toMatchObject({ firstShare: 1, worstPlace: 1 });
  });

  it('law: no draw from the ranges puts an option outside its best and worst place', () => {
    const range = fc
      .tuple(fc.double({ min: 0, max: 10, noNaN: true }), fc.double({ min: 0, max: 10, noNaN: true }))
      .map(([a, b]) => [Math.min(a, b), (a + b) / 2, Math.max(a, b)] as const);
    const options = fc.array(fc.record({ heat: range, life: range, cost: range }), { minLength: 2, maxLength: 6 });
    fc.assert(
      fc.property(options, fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })), (parts, stream) => {
        const made = parts.map((scores, i) => option(`${i}`, scores));
        const places = standings(made, weights);
        const at = made.map(({ reasons }) =>
          reasons.reduce((sum, { criterion, low, high }) => {
            const t = stream.next().value as number;
            return sum + weights[criterion] * (low + t * (high - low));
          }, 0),
        );
        at.forEach((own, i) => {
          const before = at.filter((other) => other > own + 1e-9).length;
          expect(before + 1).toBeGreaterThanOrEqual(places[i]!.bestPlace);
          expect(before + 1).toBeLessThanOrEqual(places[i]!.worstPlace);
        });
      }),
      { numRuns: 120, seed: 4 },
    );
  });

  it('dominance over ranges is worst against best', () => {
    const a = option('a', { life: [6, 7, 8] });
    expect(dominatesOverRanges(a, option('b', { life: [4, 5, 6] }))).toBe(true);
    expect(dominatesOverRanges(a, option('b', { life: [4, 5, 6.1] }))).toBe(false);
  });
});

describe('in the comparison', () => {
  it('every covering carries ten cells, a vetoed one too; only the open ones have a place', () => {
    fc.assert(
      fc.property(anyFacts, (facts) => {
        const { reports } = compareMembranes(facts);
        const open = reports.filter(({ veto }) => veto === null);
        expect(reports.every(({ evidence }) => evidence?.length === criteria.length)).toBe(true);
        expect(open.map(({ standing }) => standing?.place)).toEqual(open.map((_, i) => i + 1));
        for (const { standing, score } of open) {
          expect(standing!.bestPlace).toBeLessThanOrEqual(standing!.place);
          expect(standing!.worstPlace).toBeGreaterThanOrEqual(standing!.place);
          expect(standing!.lowScore).toBeLessThanOrEqual(score! + 1e-9);
          expect(standing!.highScore).toBeGreaterThanOrEqual(score! - 1e-9);
        }
        expect(reports.every(({ veto, standing }) => veto === null || standing === null)).toBe(true);
      }),
      { numRuns: 60, seed: 8 },
    );
  });

  it('the usual house: first at the likely values, and the ranges are said', () => {
    const [winner] = compareMembranes(membraneFacts({})).reports;
    expect(winner!.standing!.words).toMatch(/^First /);
    expect(winner!.standing!.lowScore).toBeLessThan(winner!.standing!.highScore);
  });
});
