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
    ...change,
  };
}
