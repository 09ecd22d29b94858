import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { deflectionLimits } from '../../../reference/deflection.ts';
import { drainHeads } from '../../../reference/drain-heads.ts';
import { panRates } from '../../../reference/drying.ts';
import { downspoutStock, type GutterRow, gutters, pitchFactors } from '../../../reference/gutters.ts';
import { areaLeaders, gpmLeaders, sevenTwentyFourthsLeaders } from '../../../reference/leaders.ts';
import { frequencyLayout, rainEvents } from '../../../reference/precipitation-frequency.ts';
import { rainCities } from '../../../reference/rain-cities.ts';
import { buildingRules, plumbingRules } from '../../../reference/rule-sets.ts';
import { stockScuppers, weirForms } from '../../../reference/scuppers.ts';
import { slopeMinimums } from '../../../reference/slope-minimums.ts';
import type { Cited } from '../../../reference/sources.ts';
import { sources } from '../../../reference/sources.ts';
import { areaPipes, gpmPipes } from '../../../reference/storm-pipes.ts';
import { usStates } from '../../../reference/us-states.ts';

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const rises = (values: readonly number[]) => values.every((value, at) => at === 0 || value > values[at - 1]);

/** Changes when any cell does: an edit of a table must be an edit of this line too. */
const checksum = (table: unknown) => createHash('sha256').update(JSON.stringify(table)).digest('hex').slice(0, 12);

const tables = {
  slopeMinimums,
  gpmPipes,
  areaPipes,
  gpmLeaders,
  areaLeaders,
  sevenTwentyFourthsLeaders,
  drainHeads,
  weirForms,
  gutters,
  pitchFactors,
  downspoutStock,
  panRates,
  deflectionLimits,
  rainEvents,
  rainCities,
  buildingRules,
  plumbingRules,
} as const;

describe('drainage tables', () => {
  it.each(Object.entries(tables))('%s: each row names a known source, a place in it and a grade', (_, table) => {
    for (const row of table as readonly Cited[]) {
      expect(sources).toHaveProperty(row.source);
      expect(row.at.length).toBeGreaterThan(0);
      expect(['found', 'memory', 'practice', 'computed']).toContain(row.grade);
    }
  });

  it('rises with size and with slope wherever water is carried', () => {
    for (const row of gpmPipes) expect(rises(row.slopedGpm)).toBe(true);
    for (const row of areaPipes) expect(rises(row.areaSqFt)).toBe(true);
    for (const column of [0, 1, 2, 3]) expect(rises(gpmPipes.map((row) => row.slopedGpm[column]))).toBe(true);
    for (const column of [0, 1, 2]) expect(rises(areaPipes.map((row) => row.areaSqFt[column]))).toBe(true);
    expect(rises(gpmPipes.map((row) => row.verticalGpm))).toBe(true);
    expect(rises(areaLeaders.map((row) => row.areaSqFt))).toBe(true);
    expect(rises(sevenTwentyFourthsLeaders.map((row) => row.gpm))).toBe(true);
    expect(rises(gpmLeaders.filter((row) => row.sizeIn.length === 1).map((row) => row.gpm))).toBe(true);
    expect(rises(stockScuppers.widthsIn)).toBe(true);
    expect(rises(pitchFactors.map((row) => row.factor))).toBe(true);
    expect(rises(downspoutStock.map((row) => row.areaSqIn))).toBe(true);
    const rows: readonly GutterRow[] = gutters;
    for (const profile of ['k', 'half-round']) {
      expect(rises(rows.filter((row) => row.profile === profile).map((row) => row.adjustedSqFt))).toBe(true);
    }
  });

  it('drain curves rise in head and flow, and a larger drain passes more at the same head', () => {
    for (const { curve } of drainHeads) {
      expect(rises(curve.map(([head]) => head))).toBe(true);
      expect(rises(curve.map(([, flow]) => flow))).toBe(true);
    }
    for (const at of [0, 1, 2]) expect(rises(drainHeads.map((row) => row.curve[at][1]))).toBe(true);
  });

  it('prints of one leader table agree: area at 1 in/h over 96 is the gpm column', () => {
    for (const row of sevenTwentyFourthsLeaders) {
      for (const area of row.areaSqFt) expect(Math.abs(area / 96 - row.gpm)).toBeLessThan(0.5 + 0.004 * row.gpm);
    }
  });

  it('column sums are as typed', () => {
    expect(sum(gpmPipes.map((row) => row.verticalGpm))).toBe(13132);
    expect([0, 1, 2, 3].map((column) => sum(gpmPipes.map((row) => row.slopedGpm[column])))).toEqual([
      5915, 8365, 11835, 16738,
    ]);
    expect([0, 1, 2].map((column) => sum(areaPipes.map((row) => row.areaSqFt[column])))).toEqual([
      91570, 129520, 183136,
    ]);
    expect(sum(areaLeaders.map((row) => row.areaSqFt))).toBe(234680);
    expect(sum(sevenTwentyFourthsLeaders.map((row) => row.gpm))).toBe(1832);
    expect(sum(gpmLeaders.map((row) => row.gpm))).toBe(6235);
  });

  it.each([
    ['slopeMinimums', 'bd3bc2e3e753'],
    ['gpmPipes', '27c94f48cd31'],
    ['areaPipes', '79396e5f36c5'],
    ['gpmLeaders', '9b0f3dee207f'],
    ['areaLeaders', '907544a82114'],
    ['sevenTwentyFourthsLeaders', '14dfd78587a8'],
    ['drainHeads', '7b37b8ad0f66'],
    ['weirForms', '56f67cacd663'],
    ['gutters', '98b89a71ac2a'],
    ['pitchFactors', '046a567dfc02'],
    ['panRates', '217a67d0dab9'],
    ['deflectionLimits', '4a9ac5f73da5'],
    ['rainCities', '584d4b4be7ac'],
    ['buildingRules', '4242a11a8713'],
    ['plumbingRules', '14dcaed4593c'],
  ] as const)('%s is pinned', (name, pinned) => {
    expect(checksum(tables[name])).toBe(pinned);
  });
});

describe('rain table', () => {
  it('has 150 cities in every state, 32 of them read in print', () => {
    expect(rainCities).toHaveLength(150);
    expect(rainCities.filter((row) => row.grade === 'found')).toHaveLength(32);
    expect(sum(rainCities.map((row) => row.inPerHr))).toBeCloseTo(439.7, 6);
    expect(new Set(rainCities.map((row) => row.state)).size).toBe(Object.keys(usStates).length);
    expect(new Set(rainCities.map((row) => `${row.city}, ${row.state}`)).size).toBe(150);
  });

  it('lies between the desert and the wettest island', () => {
    for (const row of rainCities) {
      expect(row.inPerHr).toBeGreaterThanOrEqual(0.6);
      expect(row.inPerHr).toBeLessThanOrEqual(6.2);
    }
  });

  it('the frequency layout has 19 rows, and the annual series lacks the first year', () => {
    expect(frequencyLayout.durationsMin).toHaveLength(19);
    expect(rises(frequencyLayout.durationsMin)).toBe(true);
    expect(frequencyLayout.returnYears.pds.slice(1)).toEqual([...frequencyLayout.returnYears.ams]);
  });
});
