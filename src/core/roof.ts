import type { FindingKind } from '../../reference/findings.ts';
import type { CriterionId } from '../../reference/membranes/criteria.ts';

/**
 * One roof section as it was measured: what `src/input` hands to the core.
 *
 * Plan lengths are feet (x east, y north), heights and thicknesses inches, slopes inches per foot.
 * `null` always means "not known"; the core then assumes something and lists it (see assumptions.ts).
 * Heights are measured from the surface that `existing.readOn` names, at that spot.
 * Side i runs from corner i to corner i + 1 in the file's own order, clockwise or not.
 */

export type Point = readonly [xFt: number, yFt: number];
export type Ring = readonly Point[];

export type Answer = 'yes' | 'no' | 'unknown';

export type EdgeKind =
  | 'gutter'
  | 'drip'
  | 'rake'
  | 'parapet'
  | 'wall'
  | 'shingles-above'
  | 'roof-below'
  | 'box-gutter'
  | 'party-wall'
  | 'joint';

export type OpeningKind = 'door' | 'window' | 'siding-bottom' | 'weep' | 'louver';

export interface Opening {
  kind: OpeningKind;
  /** Along the side from its first corner; null = not known, the limit then holds along the whole edge entry. */
  fromFt: number | null;
  toFt: number | null;
  /** Height of the sill above the surface at that spot; null = not known. */
  heightIn: number | null;
}

export interface Gutter {
  profile: 'k' | 'half-round' | 'box' | null;
  sizeIn: number | null;
  /** Fall of the gutter itself; null = not known. */
  slopeInPerFt: number | null;
  /** Distances of the downspouts along the side, from its first corner. */
  downspouts: readonly number[] | null;
  downspoutSizeIn: readonly [number, number] | null;
}

export interface Edge {
  side: number;
  /** Part of the side that this entry covers; null = to that end of the side. */
  fromFt: number | null;
  toFt: number | null;
  kind: EdgeKind;
  mayDrain: Answer;
  /** Height of the edge's top (parapet, rake stop) at its two ends; null = not known. */
  topIn: readonly [startIn: number, endIn: number] | null;
  /** Least height above the surface that must stay clear (flashing, siding, shingles) at its two ends. */
  clearIn: readonly [startIn: number, endIn: number] | null;
  gutter: Gutter | null;
  /** Pitch of the shingled slope above, rise in 12. */
  pitchIn12: number | null;
  /** Plan area of the steep roof that sheds onto this edge. */
  shedsSqFt: number | null;
  /** Height of a wall above the section, for the rain it sheds. */
  wallHeightFt: number | null;
  openings: readonly Opening[];
}

export interface Curb {
  id: string;
  kind: 'skylight' | 'hatch' | 'chimney' | 'equipment' | 'other';
  outline: Ring;
  heightIn: number | null;
}

export type PipeKind = 'plumbing' | 'gas-vent' | 'flue' | 'exhaust' | 'air-inlet' | 'conduit';

export interface Pipe {
  at: Point;
  diameterIn: number | null;
  kind: PipeKind;
  topIn: number | null;
}

/** What burns below ends there: how high it must stand is in its listing, and a licensed trade alone changes it. */
export const carriesFlueGas = ({ kind }: Pick<Pipe, 'kind'>): boolean => kind === 'flue' || kind === 'gas-vent';

export interface Inflow {
  at: Point;
  kind: 'downspout' | 'valley';
  fromSqFt: number;
}

export type OutletRole = 'primary' | 'overflow';

interface OutletCommon {
  id: string;
  role: OutletRole;
  status: 'existing' | 'proposed';
  /** Height at which water enters; null = flush with the surface. */
  inletIn: number | null;
  /** False when it is known to be covered or blocked. */
  working: boolean;
}

export type StrainerKind = 'dome' | 'flat' | 'none';

export interface DrainOutlet extends OutletCommon {
  kind: 'drain';
  at: Point;
  /** Nominal drain (pipe) size. */
  sizeIn: number | null;
  /** Inside diameter of a retrofit insert that sits in its pipe; null = none, as far as is known. */
  insertBoreIn: number | null;
  strainer: StrainerKind | null;
  /** Free area of the strainer: all its openings together. */
  strainerFreeSqIn: number | null;
  /** A marked route exists for its leader. */
  leaderRoute: Answer;
}

export interface ScupperOutlet extends OutletCommon {
  kind: 'scupper';
  side: number;
  /** From the side's first corner to the middle of the scupper. */
  alongFt: number;
  widthIn: number | null;
  heightIn: number | null;
}

export type Outlet = DrainOutlet | ScupperOutlet;

export interface DeckPlane {
  slopeInPerFt: number;
  /** Degrees clockwise from north in which the plane falls, or the side towards which it falls. */
  fallsToward: { side: number } | { bearingDeg: number };
  where: Ring | null;
  through: readonly [xFt: number, yFt: number, zIn: number] | null;
  /** Rise that was measured over a run straight up the fall, to check the slope against; null = none was. */
  riseIn: number | null;
  runFt: number | null;
}

/** A string pulled between two spots: a reading is the gap under it, at a distance along it. */
export interface StringLine {
  from: Point;
  to: Point;
  /** Height of the string at its two ends above the height zero of the file; both null = level, at height zero. */
  fromIn: number | null;
  toIn: number | null;
  /** How far the string itself hangs at its middle; null = not known. */
  sagIn: number | null;
  readings: readonly (readonly [alongFt: number, gapIn: number])[];
}

/**
 * Which way readings count. `rod`: a longer reading is a lower point, the lowest is height zero. `water-level`: the mark
 * on the moved tube, a higher mark is a lower point, the spot of the reference tube is height zero.
 */
export type ReadingSense = 'height' | 'rod' | 'water-level';

export type ExistingSurface =
  | { kind: 'level' }
  | { kind: 'planes'; planes: readonly DeckPlane[] }
  | {
      kind: 'readings';
      readings: readonly (readonly [xFt: number, yFt: number, valueIn: number])[];
      sense: ReadingSense;
      /** Mark on the reference tube of a water level; null = the readings are differences from it already. */
      referenceIn: number | null;
      strings: readonly StringLine[];
      errorIn: number | null;
    }
  | { kind: 'unknown' };

export interface SeenPond {
  outline: Ring | null;
  at: Point | null;
  depthIn: number | null;
  hoursAfterRain: number | null;
}

/** Sag of joists that a level surface or a surface of planes does not hold yet. Readings hold it already. */
export interface JoistSag {
  /** Sag at the middle of a span; null = given as span over a number. */
  depthIn: number | null;
  /** Sag as span over this number; null = given as a depth. */
  spanOver: number | null;
  /** null = that of the deck's joists, else the whole section. */
  spanFt: number | null;
  /** Bearing along which the joists run; null = that of the deck's joists, else the shorter way. */
  directionDeg: number | null;
}

export interface Existing {
  surface: ExistingSurface;
  /** null = none is known. */
  sag: JoistSag | null;
  readOn: 'covering' | 'deck';
  /** Thickness of everything above the deck; null = not known. */
  buildUpIn: number | null;
  seenPonds: readonly SeenPond[];
  /** True when somebody looked 48 h after rain and saw no water; null = nobody looked. */
  seenDryAfter48h: boolean | null;
}

export type DeckKind =
  | 'plywood'
  | 'osb'
  | 'plank'
  | 'tongue-and-groove'
  | 'steel'
  | 'concrete'
  | 'gypsum'
  | 'cement-fiber'
  | 'lightweight-concrete';

/** Joists as far as they are known. */
export interface Joists {
  spanFt: number | null;
  depthIn: number | null;
  spacingIn: number | null;
  /** Bearing along which they run. */
  directionDeg: number | null;
}

export interface Deck {
  kind: DeckKind | null;
  thicknessIn: number | null;
  liveLoadPsf: number | null;
  joists: Joists | null;
}

/** Tapered boards of one slope as the supplier has them. */
export interface BoardGroup {
  slopeInPerFt: number;
  /** Length along the slope. */
  runFt: number;
  /** Length of the level side. */
  widthFt: number;
  /** Low edge of every board of the group, thinnest first; each rises slope x run. */
  lowEdgesIn: readonly number[];
  /** Flat fill under the next round of the group. */
  fillStepIn: number;
}

export interface FlatBoard {
  thicknessIn: number;
  lengthFt: number;
  widthFt: number;
}

/** A tapered strip from nothing to a board's low edge. */
export interface StripBoard {
  highIn: number;
  runIn: number;
}

/** What the supplier has; null in a part = the boards that are common to the trade. */
export interface BoardStock {
  groups: readonly BoardGroup[] | null;
  flat: readonly FlatBoard[] | null;
  strips: readonly StripBoard[] | null;
  /** A piece that holds no circle of this diameter is cut from an offcut beside it. */
  leastPieceIn: number | null;
  /** Side of the sump at every drain; 0 = none is wanted, null = that of common practice where there is room for it. */
  sumpFt: number | null;
}

/** What the user pays, in his own money; null = not given. All of it counts only when the price of a board foot is given. */
export interface Prices {
  /** A board foot of board, laid. */
  boardFt: number | null;
  /** A new drain with its leader, and a new scupper, each. */
  drain: number | null;
  scupper: number | null;
  /** A foot of gutter with its downspouts along an edge that is opened, and of a parapet that is cut down for one. */
  edgeFt: number | null;
  parapetFt: number | null;
}

export type CoveringKind =
  | 'sbs-granule'
  | 'app'
  | 'bur-gravel'
  | 'bur-smooth'
  | 'tpo'
  | 'pvc'
  | 'epdm'
  | 'roll-roofing'
  | 'coating'
  | 'spray-foam'
  | 'metal'
  | 'other';

export type Below = 'living-exposed-deck' | 'living-ceiling' | 'attic' | 'unheated' | 'outdoors';

export interface Rain {
  inPerHr: number;
  durationMin: number | null;
  returnYears: number | null;
}

export type FoundBy = 'eye' | 'probe' | 'core' | 'scan' | 'from-below';

/** What an inspection noted: at a spot, along a side, or over an area; nowhere in particular where none is given. */
export interface InspectionFinding {
  kind: FindingKind;
  at: Point | null;
  outline: Ring | null;
  side: number | null;
  fromFt: number | null;
  toFt: number | null;
  /** How much of the roof, where no outline was drawn. */
  areaSqFt: number | null;
  /** The one size that tells most: how far a flashing stands off, how wide a split is. */
  sizeIn: number | null;
  foundBy: FoundBy | null;
  severity: 'slight' | 'plain' | 'severe' | null;
  note: string | null;
  /** Ids of photos that are kept beside the roof. */
  photos: readonly string[];
}

/** What each count of the covering choice weighs for this owner: shares in percent; what is not named keeps its usual part. */
export type OwnWeights = Readonly<Partial<Record<CriterionId, number>>>;

export interface Preferences {
  /** Nobody wants an open flame on this job (owner, insurer, fire official). */
  noFlame: boolean | null;
  /** Old bituminous residue will be taken off or covered before the new sheet. */
  residueRemovedOrCovered: boolean | null;
  /** Kitchen exhaust, oils or animal fat reach the roof. */
  grease: boolean | null;
  debris: boolean | null;
  footTraffic: boolean | null;
  tightBudget: boolean | null;
  /** Lowest surface temperature expected while the work lasts. */
  workTemperatureF: number | null;
  /** Membrane option that the owner asks for. */
  membrane: string | null;
  /** Weights of the covering choice; null = by the situation. */
  weights: OwnWeights | null;
  /** The covering that is there must stay. */
  keepCovering: boolean | null;
  /** No foam may be sprayed. */
  noSprayFoam: boolean | null;
  /** No insulation board may go on above the deck. */
  noFoamAbove: boolean | null;
}

export type BelowInsulationKind = 'none' | 'batts' | 'open-cell' | 'closed-cell';

/** What lies between the deck and the ceiling below it. */
export interface BelowInsulation {
  kind: BelowInsulationKind | null;
  thicknessIn: number | null;
  /** R of all of it; null = by its kind and thickness. */
  r: number | null;
  /** Outside air passes over it. */
  vented: Answer;
}

export type VentKind =
  | 'ridge'
  | 'soffit-strip'
  | 'perforated-soffit'
  | 'under-eave'
  | 'box'
  | 'gable'
  | 'turbine'
  | 'power-fan'
  | 'other';

/** Vents of one kind in the attic beside the section. */
export interface AtticVent {
  kind: VentKind;
  /** Pieces; feet of a ridge or soffit strip; square feet of perforated soffit. */
  count: number | null;
  /** Net free area of one piece, foot or square foot as the label has it; null = the usual one of its kind. */
  netFreeSqIn: number | null;
  /** Within 3 ft of the highest point; null = by its kind. */
  high: boolean | null;
}

/** The attic of the steep roof beside the section. */
export interface Adjoining {
  atticSqFt: number | null;
  /** A vapor retarder of class I or II lies on the warm side of its ceiling. */
  ceilingRetarder: Answer;
  vents: readonly AtticVent[];
}

export interface Roof {
  version: 1;
  label: string;
  /** Said on every paper of a made-up roof. */
  invented: boolean;
  place: {
    city: string | null;
    state: string | null;
    rain: Rain | null;
    climateZone: string | null;
    /** Ground snow load of the place, as its building office gives it. */
    groundSnowPsf: number | null;
    /** One of the sixteen zones of the California energy code, which are not the zones of the model code. */
    californiaZone: number | null;
  };
  ruleSet: { building: string | null; plumbing: string | null; local: LocalRules };
  building: {
    heightFt: number | null;
    below: Below | null;
    yearBuilt: number | null;
    planFt: readonly [number, number] | null;
    /** Relative humidity of the rooms in January at 70 F. */
    winterHumidityPct: number | null;
  };
  deck: Deck;
  outline: Ring;
  edges: readonly Edge[];
  curbs: readonly Curb[];
  pipes: readonly Pipe[];
  inflows: readonly Inflow[];
  outlets: readonly Outlet[];
  existing: Existing;
  covering: { kind: CoveringKind | null; layers: number | null; ageYears: number | null };
  insulation: {
    targetR: number | null;
    keepExisting: boolean | null;
    /** null = nothing is said about it. */
    below: BelowInsulation | null;
    /** Flat layer under the taper that is asked for; null = none. */
    baseIn: number | null;
    /** Flat boards over the whole deck in place of a taper. */
    flatIn: number | null;
    flatRPerIn: number | null;
  };
  /** null = no steep roof adjoins, or nothing is said about it. */
  adjoining: Adjoining | null;
  boards: BoardStock;
  prices: Prices;
  slopeRule: { faceInPerFt: number | null; valleyInPerFt: number | null; strict: boolean | null };
  /** Build-up that is torn off before the new roof; null = all of it. */
  removedIn: number | null;
  wind: { mph: number | null; edition: string | null };
  findings: readonly InspectionFinding[];
  preferences: Preferences;
}

/**
 * How the energy code takes a roof whose insulation tapers. `one-inch`: the R that is asked for must be there where the
 * taper has risen 1 in. `average-u`: the U averaged by area may not be more than the table's.
 */
export type TaperRuleId = 'one-inch' | 'average-u';

/** Local amendments to the named rule sets; null = the rule set's own value. */
export interface LocalRules {
  rainInPerHr: number | null;
  wallShare: number | null;
  minimumFlashingIn: number | null;
  birdBathIn: number | null;
  birdBathSqFt: number | null;
  overflowRequired: boolean | null;
  /** Which of the two readings of the energy code is in force for tapered insulation. */
  taperRule: TaperRuleId | null;
}
