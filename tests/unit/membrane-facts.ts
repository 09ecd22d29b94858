import fc from 'fast-check';
import type { MembraneFacts } from '../../src/core/membrane/facts.ts';

/** A common house re-roof: plywood deck seen from below, granule sheet taken off, new boards that drain. Invented. */
export function membraneFacts(change: Partial<MembraneFacts>): MembraneFacts {
  return {
    deck: { kind: 'plywood', combustible: null, thicknessIn: 0.5, undersideExposed: true },
    eaveWood: true,
    reRoofException: true,
    leastSlopeInPerFt: 0.25,
    residualPondIn: 0,
    birdBathIn: 0.25,
    existing: { covering: 'sbs-granule', layers: 1, wet: null, ponds: true },
    base: 'new-boards',
    coverBoard: true,
    residueRemovedOrCovered: null,
    grease: null,
    noFlame: null,
    debris: null,
    footTraffic: null,
    shade: null,
    tightBudget: null,
    workTemperatureF: 70,
    climateZone: '3B',
    livingSpaceBelow: true,
    coolRoofRule: null,
    askedFor: null,
    ownWeights: null,
    ...change,
  };
}

const maybe = fc.constantFrom(true, false, null);
/** Random facts of a job, also those that no roof file can hold yet. */
export const anyFacts: fc.Arbitrary<MembraneFacts> = fc.record({
  deck: fc.record({
    kind: fc.constantFrom('plywood', 'osb', 'plank', 'steel', 'concrete', 'gypsum', null),
    combustible: maybe,
    thicknessIn: fc.constantFrom(null, 0.375, 0.5, 0.75, 2.5),
    undersideExposed: maybe,
  }),
  eaveWood: maybe,
  reRoofException: fc.boolean(),
  leastSlopeInPerFt: fc.constantFrom(null, 0.1, 0.24, 0.25, 0.5, 0.999, 1, 1.2),
  residualPondIn: fc.constantFrom(null, 0, 0.25, 0.26, 1.5),
  birdBathIn: fc.constant(0.25),
  existing: fc.record({
    covering: fc.constantFrom(
      'sbs-granule',
      'app',
      'bur-gravel',
      'bur-smooth',
      'roll-roofing',
      'tpo',
      'coating',
      'metal',
      null,
    ),
    layers: fc.constantFrom(1, 2, null),
    wet: maybe,
    ponds: maybe,
  }),
  base: fc.constantFrom('new-boards', 'old-covering'),
  coverBoard: fc.boolean(),
  residueRemovedOrCovered: maybe,
  grease: maybe,
  noFlame: maybe,
  debris: maybe,
  footTraffic: maybe,
  shade: maybe,
  tightBudget: maybe,
  workTemperatureF: fc.constantFrom(null, 10, 38, 45, 70),
  climateZone: fc.constantFrom(null, '2A', '5', '7', 'marine'),
  livingSpaceBelow: maybe,
  coolRoofRule: fc.constantFrom(null, 'iecc-zones-1-3', 'ca-title-24'),
  askedFor: fc.constantFrom(null, 'tpo', 'sbs-torch', 'x'),
  ownWeights: fc.option(
    fc.record(
      { ignition: fc.integer({ min: 0, max: 40 }), heat: fc.integer({ min: 0, max: 60 }) },
      { requiredKeys: [] },
    ),
  ),
});
