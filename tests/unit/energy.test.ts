import { describe, expect, it } from 'vitest';
import { commercialR, commercialU, foamForCondensation, residentialR } from '../../reference/energy.ts';
import { coverBoard, filmsR } from '../../reference/insulation.ts';
import { assess } from '../../src/core/assess.ts';
import { rowForZone } from '../../src/core/layout/energy-target.ts';
import { averageU, labelLaw, perInch, type ResistanceLaw } from '../../src/core/layout/thermal.ts';
import { ruleSetFor } from '../../src/core/rule-set.ts';
import type { Patch } from '../../src/core/surface/patch.ts';
import { parseRoofObject } from '../../src/input/parse-roof.ts';

/** 24 x 20 ft, gutter on the long low side, one low door that the file may raise. */
function answer(more: { place?: object; ruleSet?: object; below?: string; insulation?: object; doorIn?: number } = {}) {
  const { place = {}, ruleSet = {}, below = 'living-exposed-deck', insulation = {}, doorIn = 60 } = more;
  const parsed = parseRoofObject({
    version: 1,
    outline: [
      [0, 0],
      [24, 0],
      [24, 20],
      [0, 20],
    ],
    place,
    ruleSet,
    insulation,
    building: { below },
    existing: { surface: 'level', readOn: 'deck' },
    edges: [
      { side: 0, kind: 'gutter', mayDrain: 'yes' },
      { side: 1, kind: 'rake', mayDrain: 'no' },
      { side: 2, kind: 'wall', mayDrain: 'no', openings: [{ kind: 'door', fromFt: 4, toFt: 7, heightIn: doorIn }] },
      { side: 3, kind: 'rake', mayDrain: 'no' },
    ],
  });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  const { building, plumbing, local } = parsed.roof.ruleSet;
  const rules = ruleSetFor(building, plumbing, local);
  if (!rules.ok) throw new Error(JSON.stringify(rules.problems));
  const assessment = assess(parsed.roof, rules.ruleSet);
  const layout = assessment.layouts.find(({ id }) => id === assessment.chosenLayout);
  if (layout?.thermal === undefined) throw new Error('no layout was chosen');
  return { assessment, layout, thermal: layout.thermal };
}

const wedge: Patch[] = [
  {
    ring: [
      [0, 0],
      [24, 0],
      [24, 20],
      [0, 20],
    ],
    plane: { atOriginIn: 0.5, gx: 0.07, gy: 0.24 },
    outlet: 'A',
  },
];

/** Mean of 1/R at the middles of a fine grid. */
function sampledU(law: ResistanceLaw, steps: number): number {
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    for (let j = 0; j < steps; j++) {
      const t = 0.5 + (0.07 * 24 * (i + 0.5)) / steps + (0.24 * 20 * (j + 0.5)) / steps;
      sum += 1 / (law.rIn(t, t) + coverBoard.r + filmsR.value);
    }
  }
  return sum / steps ** 2;
}

describe('U averaged over the area', () => {
  it('is the mean of 1/R on a fine grid, on a straight and on the label basis', () => {
    expect(averageU(wedge, perInch(5))(0)).toBeCloseTo(sampledU(perInch(5), 400), 6);
    // Straight between half inches: R 0.01 of the curve.
    expect(Math.abs(1 / averageU(wedge, labelLaw)(0) - 1 / sampledU(labelLaw, 400))).toBeLessThan(0.01);
  });

  it('falls with a flat layer as the grid says', () => {
    const thicker = { ...perInch(5), rIn: (t: number) => 5 * t + 11.4 };
    expect(averageU(wedge, perInch(5))(11.4)).toBeCloseTo(sampledU(thicker, 400), 7);
  });
});

describe('tables of the energy code', () => {
  it('read "4C" before "4", and know no zone that is not there', () => {
    expect(rowForZone(foamForCondensation, '4C')?.value).toBe(10);
    expect(rowForZone(foamForCondensation, '4a')?.value).toBe(15);
    expect(rowForZone(foamForCondensation, '9')).toBeNull();
    expect(rowForZone(foamForCondensation, null)).toBeNull();
  });

  it('ask for no less in a colder zone', () => {
    const zones = ['1', '2', '3', '4', '5', '6', '7', '8'];
    for (const table of [...Object.values(residentialR), ...Object.values(commercialR), foamForCondensation]) {
      const values = zones.map((zone) => rowForZone(table, zone)?.value ?? Number.NaN);
      expect(values).toEqual([...values].sort((a, b) => a - b));
    }
    const us = zones.map((zone) => rowForZone(commercialU, zone)?.value ?? Number.NaN);
    expect(us).toEqual([...us].sort((a, b) => b - a));
  });
});

describe('a layout under the energy code', () => {
  it('stands on three bases side by side, the effective R under that of the mean thickness', () => {
    const { bases } = answer({ insulation: { targetR: 30 } }).thermal;
    expect(bases.map(({ id }) => id)).toEqual(['label', 'service-warm', 'service-cold']);
    for (const { thinnestR, averageR, effectiveR } of bases) {
      expect(effectiveR).toBeGreaterThan(thinnestR);
      expect(effectiveR).toBeLessThan(averageR - 1);
    }
    expect(bases[2].effectiveR).toBeLessThan(bases[1].effectiveR);
  });

  it('finds the least layer of half inches for each reading, and says that they disagree', () => {
    const { assessment, thermal } = answer({ insulation: { targetR: 30 } });
    const [inch, average] = thermal.checks;
    // Label values: 1 1/2 in and the cover board are R 10.97; a layer of 3 1/2 in is two of 1 3/4 in, R 19.86.
    expect(inch.found).toBeCloseTo(5.5 * 1.5 + 0.1 * 1.5 ** 2 + 2.5, 9);
    expect(inch.baseIn).toBe(3.5);
    expect(average.baseIn ?? 99).toBeLessThan(3.5);
    expect(average.inForce).toBe(true);
    expect(thermal.disagreement).toContain('disagree');
    const ids = assessment.findings.map(({ id }) => id);
    expect(ids).toContain('taper-rules-disagree');
    expect(ids).toContain('insulation-below-target');
    expect(assessment.assumed.map(({ path }) => path)).toContain('ruleSet.local.taperRule');
  });

  it('takes the reading that the file names, and assumes none then', () => {
    const { assessment, thermal } = answer({
      insulation: { targetR: 30 },
      ruleSet: { local: { taperRule: 'one-inch' } },
    });
    expect(thermal.checks.find(({ id }) => id === 'one-inch-rule')?.inForce).toBe(true);
    expect(thermal.checks.find(({ id }) => id === 'average-u')?.inForce).toBe(false);
    expect(assessment.assumed.map(({ path }) => path)).not.toContain('ruleSet.local.taperRule');
    expect(assessment.ruleSet.local.join(' ')).toContain('risen 1 in');
  });

  it('asks for relief where the heights do not bear the layer, and not where they do', () => {
    const ids = (doorIn: number) =>
      answer({ insulation: { targetR: 30 }, doorIn }).assessment.findings.map(({ id }) => id);
    expect(ids(60)).not.toContain('insulation-relief');
    expect(ids(14.5)).toContain('insulation-relief');
  });

  it('wants 1 in at the low point on commercial work only', () => {
    const place = { climateZone: '5A' };
    const house = answer({ place }).thermal.checks.map(({ id }) => id);
    const shop = answer({ place, ruleSet: { building: 'ibc-2021' } });
    expect(house).not.toContain('low-point-thickness');
    expect(shop.thermal.checks.find(({ id }) => id === 'low-point-thickness')).toMatchObject({
      passes: false,
      baseIn: 0.5,
    });
    expect(shop.thermal.target).toMatchObject({ r: 30, u: 0.032 });
    expect(shop.assessment.findings.map(({ id }) => id)).toContain('insulation-thin-at-low-point');
  });

  it('holds the thin end against condensation where insulation may lie under the deck', () => {
    const place = { climateZone: '5A' };
    const thin = answer({ place, below: 'living-ceiling' });
    const check = thin.thermal.checks.find(({ id }) => id === 'thin-end-foam');
    // Half an inch of board is R 2.775; R-20 wants 17.225 more.
    expect(check).toMatchObject({ asked: 20, passes: false });
    expect(check?.found).toBeCloseTo(2.775, 9);
    expect(answer({ place }).thermal.checks.map(({ id }) => id)).not.toContain('thin-end-foam');
  });

  it('knows no target without a zone, and tells the small ceiling apart', () => {
    expect(answer().thermal).toMatchObject({ target: null, checks: [], disagreement: null });
    const small = answer({ place: { climateZone: '5A' } }).assessment.findings.map(({ id }) => id);
    expect(small).toContain('small-ceiling');
  });
});
