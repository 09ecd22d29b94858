import type { WorkMethod } from '../../../reference/work-methods.ts';
import type { DeckKind, EdgeKind, PipeKind, Ring } from '../roof.ts';

/**
 * Facts of one job that cautions hang on. `null` = not known, and then the caution is given: nothing is hidden because
 * nobody measured it. Lengths ft in plan, heights and thicknesses in, unless the name says otherwise.
 */
export interface SafetyFacts {
  building: BuildingFacts;
  roof: RoofFacts;
  work: WorkFacts;
  hotWork: HotWorkFacts;
  weather: WeatherFacts;
}

export interface SafetyEdge {
  /** As people say it: "gutter side, 30 ft". */
  label: string;
  kind: EdgeKind;
  /** From the surface as it is down to the next lower level (ground, lower roof). */
  dropFt: number | null;
  /** Top of a parapet above the surface as it is, at its lowest. Read for parapets only. */
  parapetIn: number | null;
  /** Build-up over the bare deck today. */
  oldBuildUpIn: number | null;
  /** Greatest build-up of the new roof along this edge. */
  newBuildUpIn: number | null;
}

export interface SafetyOpening {
  label: string;
  kind: 'skylight' | 'hatch' | 'deck-cut' | 'drain' | 'other';
  /** Fall through it. */
  dropFt: number | null;
  cover: 'fixed' | 'loose' | 'none' | null;
  guarded: boolean | null;
}

export interface SafetyEquipment {
  label: string;
  edgeFt: number | null;
  /** Drop at that edge. */
  dropFt: number | null;
  /** Height of the parapet at that edge over the finished surface; 0 = none. */
  parapetFinishedIn: number | null;
}

export interface BuildingFacts {
  /** Two letters. */
  state: string | null;
  use: 'dwelling' | 'other' | null;
  dwellingUnits: number | null;
  /** One of several buildings on the site under the same owner, or part of a larger project. */
  severalBuildings: boolean | null;
  yearBuilt: number | null;
  occupied: boolean | null;
  /** The underside of the deck is the ceiling of the rooms below. */
  ceilingIsDeck: boolean | null;
  publicBelow: boolean | null;
  airIntakeFt: number | null;
}

export interface RoofFacts {
  outline: Ring;
  areaSqFt: number;
  /** Steepest part, rise in 12, as it is and as it will be. */
  slopeIn12: number | null;
  edges: readonly SafetyEdge[];
  openings: readonly SafetyOpening[];
  equipment: readonly SafetyEquipment[];
  pipes: readonly PipeKind[];
  /** Finished outlets that have to be cleaned, with the distance to the nearest open edge. */
  outlets: readonly { label: string; openEdgeFt: number | null }[];
  parapetStrengthShown: boolean | null;
  looseMasonry: boolean | null;
  pondDepthIn: number | null;
  finishedPondDepthIn: number | null;
  /** No second way out for the water once the first is blocked. */
  overflowMissing: boolean | null;
  snowOrWater: boolean | null;
  wetInsulation: boolean | null;
  ballast: boolean | null;
  birdDroppings: boolean | null;
  leadFlashing: boolean | null;
  solar: boolean | null;
  antennas: boolean | null;
  /** Overhead line nearest to the work, the ladder or the hoist. */
  powerLine: { distanceFt: number | null; kV: number | null } | 'none' | null;
  deck: {
    kind: DeckKind | null;
    /** Soft, rotten or springy anywhere. */
    soft: boolean | null;
    /** Sheets of it are replaced in this job. */
    replaced: boolean | null;
    /** Conduit, pipes and lights below it have been located. */
    servicesLocated: boolean | null;
  };
}

export type FallProtection = 'guardrail' | 'net' | 'personal-arrest' | 'restraint' | 'warning-line' | 'monitor';

export interface WorkFacts {
  methods: readonly WorkMethod[] | null;
  /** null = nobody has chosen yet; an empty list = none. */
  fallProtection: readonly FallProtection[] | null;
  /** Wheeled equipment, pushed or driven (cutter, seam welder, cart); wheelbarrows and mop carts apart. */
  wheeledEquipment: boolean | null;
  crewSize: number | null;
  monitorOnlyWatches: boolean | null;
  /** Lanyard length and height of the anchor above the feet. */
  arrest: { lanyardFt: number; anchorHeightFt: number } | null;
  /** Reach of the restraint rope and the least distance from the anchor to an edge or hole. */
  restraint: { reachFt: number; leastDistanceFt: number } | null;
  rescuePlan: boolean | null;
  trainingRecords: boolean | null;
  ladderUsed: boolean | null;
  materialsToEdgeFt: number | null;
  otherTrades: boolean | null;
  darkOrAlone: boolean | null;
  newNailers: boolean | null;
  asbestos: 'clear' | 'present' | null;
  roofCutter: boolean | null;
  tearOffSqFt: number | null;
  paintDisturbedSqFt: number | null;
  cutsMasonry: boolean | null;
  generatorToOpeningFt: number | null;
  stockPsf: number | null;
  stockOnWeakParts: boolean | null;
  addedLoadPsf: number | null;
  /** Dead load of the existing roof. */
  deadLoadPsf: number | null;
  openTodaySqFt: number | null;
  /** What the crew can make watertight in one day. */
  watertightPerDaySqFt: number | null;
  debrisDropFt: number | null;
  hoist: boolean | null;
  movesUnits: boolean | null;
  /** Field screws: one length, over a least and a greatest build-up above the deck; deck thickness or flute depth. */
  screws: { lengthIn: number; leastThicknessIn: number; greatestThicknessIn: number; deckDepthIn: number } | null;
  tapered: boolean | null;
  whiteSurface: boolean | null;
}

export interface HotWorkFacts {
  thermalBarrier: boolean | null;
  /** Eave, soffit, wood curb, wall, crack or vent within reach of the flame. */
  woodInReach: boolean | null;
  torches: number | null;
  torchSpacingFt: number | null;
  extinguishers: number | null;
  /** Minutes between the last flame and the moment the site closes. */
  lastFlameBeforeCloseMin: number | null;
  onlyIntakesShut: boolean | null;
  infraredThermometer: boolean | null;
  alarmsOff: boolean | null;
  canSeeBelow: boolean | null;
  kettleToOpeningFt: number | null;
  fuelToBurnerFt: number | null;
  fuelShielded: boolean | null;
  propaneStoredInside: boolean | null;
  cylinderToTorchFt: number | null;
  cylinderToHeaterFt: number | null;
  ignitionToSolventFt: number | null;
  /** Grinding, cutting or powder fasteners. */
  sparks: boolean | null;
  /** Cord from the generator to the welder. */
  cord: { lengthFt: number; gaugeAwg: 10 | 12; amps: number; volts: number } | null;
}

export interface WeatherFacts {
  windMph: number | null;
  gustMph: number | null;
  temperatureF: number | null;
  relativeHumidityPercent: number | null;
  rainPercent: number | null;
  minutesSinceThunder: number | null;
  wetOrFrosted: boolean | null;
}
