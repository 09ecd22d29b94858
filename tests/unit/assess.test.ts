import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { taperGroups, zeroEdgeGroups } from '../../reference/boards.ts';
import { assess, assessAsBuilt } from '../../src/core/assess.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import type { Roof } from '../../src/core/roof.ts';
import { type RuleSet, ruleSetFor } from '../../src/core/rule-set.ts';
import { parseRoofObject, parseRoofText } from '../../src/input/parse-roof.ts';

const demos = new URL('../../src/demo/', import.meta.url);

function ready(parsed: ReturnType<typeof parseRoofText>): { roof: Roof; ruleSet: RuleSet } {
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  const rules = ruleSetFor(parsed.roof.ruleSet.building, parsed.roof.ruleSet.plumbing, parsed.roof.ruleSet.local);
  if (!rules.ok) throw new Error(JSON.stringify(rules.problems));
  return { roof: parsed.roof, ruleSet: rules.ruleSet };
}

const answer = (file: object): Assessment => {
  const { roof, ruleSet } = ready(parseRoofObject(file));
  return assess(roof, ruleSet);
};

/** Every number of the answer, with its path. */
function numbers(value: unknown, path = ''): [string, number][] {
  if (typeof value === 'number') return [[path, value]];
  if (value === null || typeof value !== 'object') return [];
  return Object.entries(value).flatMap(([key, inner]) => numbers(inner, `${path}.${key}`));
}

const stock = new Set(
  [...taperGroups, ...zeroEdgeGroups].flatMap(({ slopeInPerFt, runFt, lowEdgesIn }) =>
    lowEdgesIn.map((low) => `${slopeInPerFt} ${low} ${low + slopeInPerFt * runFt}`),
  ),
);

for (const name of readdirSync(demos).filter((file) => file.endsWith('.roof.json'))) {
  describe(`demo ${name}`, () => {
    const { roof, ruleSet } = ready(parseRoofText(readFileSync(new URL(name, demos), 'utf8')));
    const result = assess(roof, ruleSet);

    test('the same roof gives the same answer, in finite numbers', () => {
      expect(JSON.stringify(assess(roof, ruleSet))).toBe(JSON.stringify(result));
      expect(numbers(result).filter(([, value]) => !Number.isFinite(value))).toEqual([]);
    });

    test('at least three layouts are compared, rejected ones say what they break', () => {
      expect(result.layouts.length).toBeGreaterThanOrEqual(3);
      for (const { rejected } of result.layouts) if (rejected !== null) expect(rejected.why.length).toBeGreaterThan(10);
      expect(result.layouts.find(({ id }) => id === result.chosenLayout)?.rejected).toBeNull();
    });

    test('every layout that is offered is drained in both senses and keeps its slopes', () => {
      for (const layout of result.layouts.filter(({ rejected }) => rejected === null)) {
        expect(layout.ponds).toEqual([]);
        expect(layout.flats).toEqual([]);
        expect(layout.leastFaceSlopeInPerFt ?? 0).toBeGreaterThanOrEqual(0.24 - 1e-9);
        expect(layout.leastValleySlopeInPerFt ?? 1).toBeGreaterThanOrEqual(1 / 16 - 1e-9);
        if (layout.bound !== null) expect(layout.bound.ratio).toBeGreaterThan(1 - 1e-3);
      }
    });

    test('planes, drainage areas and boards cover the section once', () => {
      const bare = result.layouts[0].facets.reduce((sum, { areaSqFt }) => sum + areaSqFt, 0);
      const curbs = result.section.areaSqFt - bare;
      expect(curbs).toBeGreaterThanOrEqual(-1e-3);
      for (const layout of result.layouts) {
        const drained = layout.outlets.reduce((sum, { drainsSqFt }) => sum + drainsSqFt, 0);
        expect(drained).toBeCloseTo(bare, 1);
        const ground = layout.boards.filter(({ layer }) => layer === 0);
        const boards = ground.reduce((sum, { net }) => sum + 16 * net, 0);
        expect(Math.abs(boards - bare)).toBeLessThan(0.01 * bare + 1);
        for (const { lowIn, highIn, slopeInPerFt } of layout.boards)
          expect(stock).toContain(`${slopeInPerFt} ${lowIn} ${highIn}`);
      }
    });

    test('what was assumed is listed, and every source has words', () => {
      for (const { because, path } of result.assumed) expect(because.length * path.length).toBeGreaterThan(0);
      for (const { source } of result.cautions) expect(source.text.length).toBeGreaterThan(3);
      for (const { basis } of result.materials) expect(basis.length).toBeGreaterThan(5);
    });

    test('a roof laid as designed is judged to drain', () => {
      const chosen = result.layouts.find(({ id }) => id === result.chosenLayout);
      const readings = chosen?.checkPoints.map(({ id, heightIn }) => ({ id, heightIn })) ?? [];
      const laid = assessAsBuilt(roof, ruleSet, result.chosenLayout ?? '', readings);
      expect(laid?.drained).toBe(true);
      expect(laid?.advice).toEqual([]);
    });
  });
}

const box = {
  version: 1,
  label: 'box',
  outline: [
    [0, 0],
    [40, 0],
    [40, 20],
    [0, 20],
  ],
  existing: { surface: 'level', readOn: 'deck' },
};
const sides = (kind: string) => [0, 1, 2, 3].map((side) => ({ side, kind, mayDrain: 'no' }));

describe('roofs at the limits', () => {
  test('a part behind a curb that runs across has no outlet: no layout is offered, and it is said', () => {
    const result = answer({
      ...box,
      edges: sides('wall'),
      curbs: [
        {
          id: 'duct',
          kind: 'equipment',
          outline: [
            [18, 0],
            [22, 0],
            [22, 20],
            [18, 20],
          ],
          heightIn: 12,
        },
      ],
      outlets: [{ id: 'D1', kind: 'drain', at: [8, 10], role: 'primary', leaderRoute: 'yes' }],
    });
    const plain = result.layouts.find(({ id }) => id === 'existing-outlets');
    expect(plain?.rejected?.why).toContain('no outlet');
    expect(result.existing.undrainedAreaSqFt).toBeGreaterThan(359);
  });

  test('no outlet at all is a stop, never a drained roof', () => {
    const result = answer({ ...box, edges: sides('wall') });
    expect(result.findings.some(({ id, level }) => id === 'no-outlet-known' && level === 'stop')).toBe(true);
    expect(result.layouts.filter(({ rejected, id }) => rejected === null && id === 'existing-outlets')).toEqual([]);
  });

  test('nothing but an outline is enough for an answer that lists what it assumed', () => {
    const result = answer({
      version: 1,
      label: 'bare',
      outline: [
        [0, 0],
        [20, 0],
        [20, 12],
        [0, 12],
      ],
    });
    expect(result.existing.verdict).toBe('undecided');
    expect(result.assumed.length).toBeGreaterThan(8);
    expect(result.headline.length).toBeGreaterThan(20);
  });

  test('a clockwise outline gives the same answer as a counter-clockwise one', () => {
    const edge = (side: number) => ({ side, kind: 'gutter', mayDrain: 'yes' });
    const one = answer({ ...box, edges: [edge(0)] });
    const other = answer({
      ...box,
      outline: [
        [0, 0],
        [0, 20],
        [40, 20],
        [40, 0],
      ],
      edges: [edge(3)],
    });
    expect(other.layouts[0].volumeBoardFt).toBeCloseTo(one.layouts[0].volumeBoardFt, 6);
    expect(other.layouts[0].leastFaceSlopeInPerFt).toBeCloseTo(0.25, 9);
  });
});
