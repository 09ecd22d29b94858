import { describe, expect, it } from 'vitest';
import { evaluateCautions } from '../../src/core/safety/cautions.ts';
import type { SafetyFacts } from '../../src/core/safety/facts.ts';
import { areaExtinguishers, fireWatchMin, lastFlameMin, torchExtinguishers } from '../../src/core/safety/fire-watch.ts';
import {
  cordDropV,
  lineClearanceFt,
  openAreaSqFt,
  palletPsf,
  screwTipIn,
  spreadAreaSqFt,
} from '../../src/core/safety/site-figures.ts';
import { heatIndexF, windChillF, windForceLb } from '../../src/core/safety/weather.ts';
import { jobFacts } from '../unit/safety-facts.ts';

const ids = (facts: SafetyFacts) => evaluateCautions(facts).map((caution) => caution.id);

describe('fire watch', () => {
  it.each([
    { document: 'default', minutes: 120, source: 'trade association torch program, at least 2 h, found' },
    { document: 'nfpa-51b-2014', minutes: 30, source: 'NFPA 51B 2014, found' },
    { document: 'nfpa-51b-2019', minutes: 60, source: 'NFPA 51B 2019, found' },
    { document: 'nfpa-241-2022', minutes: 120, source: 'NFPA 241 2022, torch-applied roofing, found' },
    { document: 'osha-general-industry', minutes: 30, source: '29 CFR 1910.252(a)(2)(iii), found' },
  ] as const)('$source: $minutes min', ({ document, minutes }) => {
    expect(fireWatchMin('torch', document)).toBe(minutes);
  });

  it('site closes 16:30: last torch 14:30', () => {
    expect(lastFlameMin(16.5 * 60, 'torch')).toBe(14.5 * 60);
    const late = (lastFlameBeforeCloseMin: number) =>
      ids(jobFacts({ work: { methods: ['torch'] }, hotWork: { lastFlameBeforeCloseMin } })).includes('torch-too-late');
    expect(late(119)).toBe(true);
    expect(late(120)).toBe(false);
  });
});

describe('torch, kettle, extinguishers', () => {
  it('torch on wood without a barrier stops; with one the permit and the watch stay (trade association 2013, found)', () => {
    const wood = (thermalBarrier: boolean) => {
      const base = jobFacts({ work: { methods: ['torch'] }, hotWork: { thermalBarrier } });
      return evaluateCautions({ ...base, roof: { ...base.roof, deck: { ...base.roof.deck, kind: 'plywood' } } });
    };
    expect(wood(false).find((caution) => caution.id === 'torch-on-wood')?.severity).toBe(4);
    expect(wood(true).map((caution) => caution.id)).not.toContain('torch-on-wood');
    expect(wood(true).map((caution) => caution.id)).toContain('torch-permit');
  });

  it('two torches 25 ft apart need 4 extinguishers, 15 ft apart 2 (torch program, found)', () => {
    expect(torchExtinguishers(2, 25)).toBe(4);
    expect(torchExtinguishers(2, 15)).toBe(2);
  });

  it.each([
    { hotWork: { kettleToOpeningFt: 19 }, id: 'kettle-distance', holds: true },
    { hotWork: { kettleToOpeningFt: 20 }, id: 'kettle-distance', holds: false },
    { hotWork: { fuelToBurnerFt: 8, fuelShielded: false }, id: 'kettle-fuel', holds: true },
    { hotWork: { fuelToBurnerFt: 3, fuelShielded: true }, id: 'kettle-fuel', holds: false },
  ])('$hotWork: $id $holds (IFC section 303, found)', ({ hotWork, id, holds }) => {
    expect(ids(jobFacts({ work: { methods: ['hot-asphalt'] }, hotWork })).includes(id)).toBe(holds);
  });

  it('6,000 sq ft: 2; 7,400 sq ft: 3 (29 CFR 1926.150(c), found)', () => {
    expect(areaExtinguishers(6000)).toBe(2);
    expect(areaExtinguishers(7400)).toBe(3);
  });
});

describe('asbestos (40 CFR 61 Subpart M; number of the cutter rule from memory, the rule found)', () => {
  const job = (tearOffSqFt: number, severalBuildings: boolean) =>
    ids(
      jobFacts({
        building: { use: 'dwelling', dwellingUnits: 2, severalBuildings, yearBuilt: 1970 },
        work: { asbestos: 'present', roofCutter: true, tearOffSqFt },
      }),
    );

  it('5,579 sq ft with a cutter is below the rule, 5,580 is in it', () => {
    expect(job(5579, false)).not.toContain('asbestos-cutter');
    expect(job(5580, false)).toContain('asbestos-cutter');
  });

  it('an isolated duplex keeps sampling and work rules; two under one owner get the notice (60 FR 38725, found)', () => {
    expect(job(900, false)).toEqual(
      expect.arrayContaining(['asbestos-small-house', 'asbestos-sample', 'asbestos-work']),
    );
    expect(job(900, false)).not.toContain('asbestos-notice');
    expect(job(900, true)).toContain('asbestos-notice');
  });

  it('a new building with a clear sample is left alone', () => {
    const clear = ids(jobFacts({ building: { yearBuilt: 1960 }, work: { asbestos: 'clear' } }));
    expect(clear.filter((id) => id.startsWith('asbestos'))).toEqual([]);
  });
});

describe('heat, cold, wind', () => {
  // Regression of the National Weather Service (coefficients from memory; values computed from them elsewhere).
  it.each([
    [90, 60, 99.7],
    [90, 70, 105.9],
    [95, 50, 105.2],
    [86, 50, 87.9],
    [84, 60, 87.5],
  ])('heat index at %d F and %d percent: %d F', (t, r, index) => {
    expect(Math.abs(heatIndexF(t, r) - index)).toBeLessThan(0.5);
  });

  it('84 F and 60 percent asks for water and shade, 90 and 60 for the breaks (federal proposal of 2024, found)', () => {
    const at = (temperatureF: number) => ids(jobFacts({ weather: { temperatureF, relativeHumidityPercent: 60 } }));
    expect(at(84)).toContain('heat');
    expect(at(84)).not.toContain('high-heat');
    expect(at(90)).toContain('high-heat');
    expect(at(75)).not.toContain('heat');
  });

  // Wind chill of 2001, National Weather Service (from memory).
  it.each([
    [30, 15, 19.0],
    [20, 20, 4.2],
    [0, 15, -19.4],
  ])('wind chill at %d F and %d mph: %d F', (t, v, chill) => {
    expect(windChillF(t, v)).toBeCloseTo(chill, 1);
  });

  it.each([
    [15, 18.4],
    [25, 51.2],
    [30, 73.7],
    [40, 131.1],
  ])('4 x 8 ft board in %d mph: %d lb (arithmetic)', (mph, lb) => {
    expect(windForceLb(mph, 32)).toBeCloseTo(lb, 1);
  });
});

describe('lines, loads, screws, cords', () => {
  it.each([
    [13, 10.0],
    [69, 10.63],
    [115, 12.17],
    [138, 12.93],
    [230, 16.0],
  ])('%d kV: %d ft (state twin of 29 CFR 1926.451(f)(6), found)', (kV, ft) => {
    expect(Math.abs(lineClearanceFt(kV) - ft)).toBeLessThan(0.006);
  });

  it('a 1,900-lb pallet of 40 x 48 in presses 142.5 psf and wants 95 sq ft at 20 psf (weights common practice)', () => {
    const psf = palletPsf(1900, (40 * 48) / 144);
    expect(psf).toBeCloseTo(142.5, 6);
    expect(spreadAreaSqFt(1900, 20)).toBe(95);
    expect(ids(jobFacts({ work: { stockPsf: psf } }))).toContain('stock-spread');
    expect(ids(jobFacts({ work: { stockPsf: 20 } }))).not.toContain('stock-spread');
  });

  it('five workers close 1,400 sq ft in a 9-hour day, 700 with rain at 30 percent (rate common practice)', () => {
    expect(openAreaSqFt(5, 9, 0)).toBe(1400);
    expect(openAreaSqFt(5, 9, 30)).toBe(700);
  });

  it.each([
    { length: 5, thickness: 3, into: 2, below: 0.5 },
    { length: 5, thickness: 4, into: 1, below: -0.5 },
    { length: 8, thickness: 3, into: 5, below: 3.5 },
  ])('screw of $length in over $thickness in, flute 1.5 in (arithmetic)', ({ length, thickness, into, below }) => {
    expect(screwTipIn(length, thickness, 1.5)).toEqual({ intoDeckIn: into, belowDeckIn: below });
  });

  it.each([
    { amps: 29.1, feet: 100, gauge: 10, volts: 7.2, percent: 3.1 },
    { amps: 29.1, feet: 200, gauge: 12, volts: 23.1, percent: 10.0 },
  ] as const)('$feet ft of $gauge gauge at $amps A: $volts V of 230 (resistance from memory)', (row) => {
    const lost = cordDropV(row.amps, row.feet, row.gauge);
    expect(Math.abs(lost - row.volts)).toBeLessThan(0.2);
    expect(Math.abs((100 * lost) / 230 - row.percent)).toBeLessThan(0.1);
  });
});
