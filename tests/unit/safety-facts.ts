import type { SafetyEdge, SafetyFacts, SafetyOpening } from '../../src/core/safety/facts.ts';
import { nothingKnown } from '../../src/core/safety/nothing-known.ts';

export type Changes = { [K in keyof SafetyFacts]?: Partial<SafetyFacts[K]> };

/** A rectangle lying on the axes. */
export const rectangle = (lengthFt: number, widthFt: number) =>
  [
    [0, 0],
    [lengthFt, 0],
    [lengthFt, widthFt],
    [0, widthFt],
  ] as const;

/** The same job with some facts changed. */
export function changed(base: SafetyFacts, changes: Changes): SafetyFacts {
  return {
    building: { ...base.building, ...changes.building },
    roof: { ...base.roof, ...changes.roof },
    work: { ...base.work, ...changes.work },
    hotWork: { ...base.hotWork, ...changes.hotWork },
    weather: { ...base.weather, ...changes.weather },
  };
}

/** A job of which only what is given is known. Invented. */
export function jobFacts(changes: Changes = {}, lengthFt = 40, widthFt = 30): SafetyFacts {
  return changed(nothingKnown(rectangle(lengthFt, widthFt), lengthFt * widthFt), changes);
}

export const edge = (changes: Partial<SafetyEdge> = {}): SafetyEdge => ({
  label: 'gutter side, 40 ft',
  kind: 'gutter',
  dropFt: 14,
  parapetIn: null,
  oldBuildUpIn: 2,
  newBuildUpIn: 2,
  ...changes,
});

export const opening = (changes: Partial<SafetyOpening> = {}): SafetyOpening => ({
  label: 'opening 4 x 8 ft',
  kind: 'other',
  dropFt: 14,
  cover: 'none',
  guarded: false,
  ...changes,
});

/** A job on which everything is known and nothing is wrong: low, closed, fitted out, mild weather. Invented. */
export function calm(): SafetyFacts {
  return {
    building: {
      state: 'TX',
      use: 'other',
      dwellingUnits: null,
      severalBuildings: false,
      yearBuilt: 2005,
      occupied: false,
      ceilingIsDeck: false,
      publicBelow: false,
      airIntakeFt: 200,
    },
    roof: {
      outline: rectangle(40, 30),
      areaSqFt: 1200,
      slopeIn12: 0.25,
      edges: [edge({ kind: 'wall' })],
      openings: [],
      equipment: [],
      pipes: [],
      outlets: [{ label: 'drain D1', openEdgeFt: 20 }],
      parapetStrengthShown: true,
      looseMasonry: false,
      pondDepthIn: 0,
      finishedPondDepthIn: 0,
      overflowMissing: false,
      snowOrWater: false,
      wetInsulation: false,
      ballast: false,
      birdDroppings: false,
      leadFlashing: false,
      solar: false,
      antennas: false,
      powerLine: 'none',
      deck: { kind: 'concrete', soft: false, replaced: false, servicesLocated: true },
    },
    work: {
      methods: ['self-adhered'],
      fallProtection: ['guardrail'],
      wheeledEquipment: false,
      crewSize: 4,
      monitorOnlyWatches: true,
      arrest: { lanyardFt: 3, anchorHeightFt: 5 },
      restraint: { reachFt: 5, leastDistanceFt: 8 },
      rescuePlan: true,
      trainingRecords: true,
      ladderUsed: false,
      materialsToEdgeFt: 10,
      otherTrades: false,
      darkOrAlone: false,
      newNailers: false,
      asbestos: 'clear',
      roofCutter: false,
      tearOffSqFt: 0,
      paintDisturbedSqFt: 0,
      cutsMasonry: false,
      generatorToOpeningFt: 30,
      stockPsf: 10,
      stockOnWeakParts: false,
      addedLoadPsf: 0,
      deadLoadPsf: 15,
      openTodaySqFt: 500,
      watertightPerDaySqFt: 900,
      debrisDropFt: 4,
      hoist: false,
      movesUnits: false,
      screws: null,
      tapered: false,
      whiteSurface: false,
    },
    hotWork: {
      thermalBarrier: true,
      woodInReach: false,
      torches: 1,
      torchSpacingFt: 30,
      extinguishers: 2,
      lastFlameBeforeCloseMin: 150,
      onlyIntakesShut: false,
      infraredThermometer: true,
      alarmsOff: false,
      canSeeBelow: true,
      kettleToOpeningFt: 30,
      fuelToBurnerFt: 12,
      fuelShielded: false,
      propaneStoredInside: false,
      cylinderToTorchFt: 12,
      cylinderToHeaterFt: 8,
      ignitionToSolventFt: 60,
      sparks: false,
      cord: { lengthFt: 50, gaugeAwg: 10, amps: 20, volts: 230 },
    },
    weather: {
      windMph: 5,
      gustMph: 8,
      temperatureF: 65,
      relativeHumidityPercent: 40,
      rainPercent: 5,
      minutesSinceThunder: 600,
      wetOrFrosted: false,
    },
  };
}
