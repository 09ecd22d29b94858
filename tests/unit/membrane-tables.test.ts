import { describe, expect, it } from 'vitest';
import { criteria, scaleLevels } from '../../reference/membranes/criteria.ts';
import { membraneHeat } from '../../reference/membranes/heat.ts';
import { membraneLevels } from '../../reference/membranes/levels.ts';
import { costCurve, costIndex, membraneLife } from '../../reference/membranes/life-and-cost.ts';
import { attachments } from '../../reference/membranes/limits.ts';
import { membraneOptions } from '../../reference/membranes/options.ts';
import { membraneMass, sheetStock } from '../../reference/membranes/stock.ts';
import { membraneVetoes } from '../../reference/membranes/vetoes.ts';
import { situationWeights } from '../../reference/membranes/weights.ts';

const ids = membraneOptions.map((row) => row.id);
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

describe('membrane tables', () => {
  it.each([
    ['heat', membraneHeat],
    ['levels', membraneLevels],
    ['life', membraneLife],
    ['cost', costIndex],
    ['mass', membraneMass],
  ] as const)('%s has exactly one row per covering', (_, table) => {
    expect(table.map((row) => row.membrane).toSorted()).toEqual([...ids].toSorted());
  });

  it('every covering has a way of holding it; every rolled one has stock', () => {
    for (const id of ids) {
      expect(attachments.some((row) => row.membrane === id)).toBe(true);
    }
    const rolled = ids.filter((id) => !['pmma', 'silicone', 'acrylic'].includes(id));
    expect([...new Set(sheetStock.map((row) => row.membrane))].toSorted()).toEqual(rolled.toSorted());
  });

  it('weights of each situation sum to 1', () => {
    for (const row of situationWeights) expect(sum(Object.values(row.weights))).toBeCloseTo(1, 12);
  });

  it('every level that a covering stands on exists, and every level is used', () => {
    const used = new Set(membraneLevels.flatMap((row) => Object.entries(row.levels).map((pair) => pair.join('/'))));
    const known = new Set<string>(scaleLevels.map((row) => `${row.criterion}/${row.level}`));
    expect([...used].filter((level) => !known.has(level))).toEqual([]);
    expect([...known].filter((level) => !used.has(level))).toEqual([]);
  });

  it('scores run from 0 to 10 and better levels stand first', () => {
    for (const { id } of criteria) {
      const scale = scaleLevels.filter((row) => row.criterion === id).map((row) => row.score);
      expect(scale).toEqual(scale.toSorted((a, b) => b - a));
      expect(scale.every((score) => score >= 0 && score <= 10)).toBe(true);
    }
  });

  it('the cost curve falls', () => {
    for (let i = 1; i < costCurve.length; i += 1) {
      expect(costCurve[i]!.index).toBeGreaterThan(costCurve[i - 1]!.index);
      expect(costCurve[i]!.score).toBeLessThan(costCurve[i - 1]!.score);
    }
  });

  it('ranges are ordered and hold the value', () => {
    for (const row of membraneHeat) {
      expect(row.agedRange[0]).toBeLessThanOrEqual(row.agedReflectance);
      expect(row.agedRange[1]).toBeGreaterThanOrEqual(row.agedReflectance);
    }
    for (const row of membraneLife) expect(row.years[0]).toBeLessThan(row.years[1]);
    for (const row of costIndex) expect(row.index[0]).toBeLessThanOrEqual(row.index[1]);
    for (const row of membraneMass) expect(row.weightPsf[0]).toBeLessThanOrEqual(row.weightPsf[1]);
  });

  // Checksums: a changed figure has to be changed here too, on purpose.
  it('checksums', () => {
    expect(sum(membraneHeat.map((row) => row.agedReflectance + row.emittance))).toBeCloseTo(18.73, 9);
    expect(sum(scaleLevels.map((row) => row.score))).toBe(247);
    expect(sum(costIndex.flatMap((row) => row.index))).toBeCloseTo(30.95, 9);
    expect(sum(membraneMass.flatMap((row) => row.weightPsf))).toBeCloseTo(37.36, 9);
    expect(sum(membraneLife.flatMap((row) => row.years))).toBe(535);
    expect(sum(attachments.map((row) => row.leastWorkF ?? 0))).toBe(583);
    expect(membraneVetoes).toHaveLength(8);
  });
});
