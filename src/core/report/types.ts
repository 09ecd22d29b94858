/**
 * The answer: everything that `assess` gives back, and all that a page may print.
 * Names of version 1 are fixed: add to them, do not rename. Numbers are finite or null.
 * Lengths ft in plan, heights in above the file's height zero, slopes in per ft.
 */

export type Point = readonly [xFt: number, yFt: number];
export type Ring = readonly Point[];
export type Grade = 'found' | 'memory' | 'practice' | 'computed';

/** Where a fact comes from, ready to print. */
export interface SourceNote {
  /** Bibliography id (reference/sources.ts). */
  id: string;
  /** "Document, edition, section" in words. */
  text: string;
  grade: Grade;
}

/** `stop` = do not go on before this is settled; `fix` = the plan must change or it is handled in it; `note` = know it. */
export type FindingLevel = 'stop' | 'fix' | 'note';

/** A fact about this roof that somebody must act on. `id` is stable and test-friendly, e.g. `no-second-way-out`. */
export interface Finding {
  id: string;
  level: FindingLevel;
  where: string;
  message: string;
  value: string | null;
  limit: string | null;
  source: SourceNote | null;
}

export interface Assumption {
  /** Path in the roof file, e.g. `existing.buildUpIn`. */
  path: string;
  value: string;
  because: string;
  /** The cheapest way to find out, where there is one. */
  findOut: string | null;
}

/** One computed number with everything that made it: "where does this come from?" */
export interface Working {
  id: string;
  what: string;
  formula: string;
  inputs: Readonly<Record<string, number | string>>;
  value: number;
  unit: string;
  source: SourceNote;
}

export type Verdict = 'meets-minimum' | 'drains-below-minimum' | 'ponds' | 'undecided';

export interface PondReport {
  outline: Ring;
  holes: readonly Ring[];
  areaSqFt: number;
  greatestDepthIn: number;
  deepestAt: Point;
  volumeGal: number;
  weightLb: number;
  greatestLoadPsf: number;
  /** Depth left at the deepest spot after 48 h, in the best and in the worst season for drying. */
  leftAfter48hIn?: readonly [warmIn: number, coolIn: number];
  /** True when shallow enough to be listed only. */
  birdBath: boolean;
  /** Why it is flagged: deeper or wider than the settings; empty = listed only. */
  flagged?: readonly ('depth' | 'area')[];
  /** Where in words: "middle of the section, 12 ft from the gutter side". */
  where: string;
}

export interface FlatReport {
  areaSqFt: number | null;
  lengthFt: number | null;
  outline: Ring | null;
  line: readonly [Point, Point] | null;
}

export interface OutletReport {
  id: string;
  label: string;
  kind: 'drain' | 'scupper' | 'edge';
  role: 'primary' | 'overflow';
  status: 'existing' | 'proposed';
  at: Point;
  /** For an edge outlet its other end. */
  to: Point | null;
  drainsSqFt: number;
  /** Walls, steep roofs and downspouts that add to it. */
  addedSqFt: number;
  flowGpm: number | null;
  capacityGpm: number | null;
  adequate: boolean | null;
  /** What it takes to carry the flow, in words: "3-in drain", "scupper 8 x 4 in". */
  needs: string;
  basis: string;
  source: SourceNote | null;
  /** What runs to an overflow when the main outlets are shut, sq ft; it is rated for that. */
  shutSqFt?: number;
  /** Inlet of an overflow above the low point of what runs to it then, and above the surface at its own spot; null = not known. */
  inletAboveLowIn?: number | null;
  inletAboveSurfaceIn?: number | null;
  /** Water over its inlet at its flow, and over the roof there with the inlet's own height; null = not known. */
  headIn?: number | null;
  /** What that water weighs on the roof at the outlet. */
  loadPsf?: number | null;
}

export interface DrainageArea {
  outlet: string;
  outline: Ring;
  holes: readonly Ring[];
  areaSqFt: number;
}

export interface SurfaceTriangle {
  a: Point;
  b: Point;
  c: Point;
  /** Heights at the three corners. */
  z: readonly [number, number, number];
}

export interface FlowArrow {
  at: Point;
  /** Unit vector downhill. */
  toward: readonly [number, number];
  slopeInPerFt: number;
}

/** Water level and what it weighs when every way out but the named one is shut. */
export interface LoadStep {
  label: string;
  depthIn: number;
  loadPsf: number;
  exceedsLiveLoad: boolean | null;
}

export interface ExistingReport {
  verdict: Verdict;
  /** One sentence. */
  why: string;
  /** The cheapest observation that would decide an undecided verdict. */
  decidedBy: string | null;
  leastFaceSlopeInPerFt: number | null;
  leastValleySlopeInPerFt: number | null;
  ponds: readonly PondReport[];
  flats: readonly FlatReport[];
  undrainedAreaSqFt: number;
  outlets: readonly OutletReport[];
  areas: readonly DrainageArea[];
  surface: readonly SurfaceTriangle[];
  arrows: readonly FlowArrow[];
  loads: readonly LoadStep[];
  /** What the deck bears in water, as given or as taken for an ordinary flat roof. */
  liveLoad?: { psf: number; assumed: boolean };
  /** Levelling needed to bring the deck to its fitted plane, when readings were given. */
  levelling: { volumeBoardFt: number; greatestIn: number } | null;
  /** Error of `leastFaceSlopeInPerFt` from the error of the readings; null = no readings. */
  slopeErrorInPerFt?: number | null;
  /** What somebody saw 48 h after rain: dry, wet, or nobody looked. */
  passes48h?: boolean | null;
  /** When lowering an edge alone makes the roof drain: what to do, in one sentence. */
  edgeFirst?: string | null;
  /** The old roof's least slope as a new roof under every rule set that is held. */
  ruleStandings?: readonly RuleStanding[];
}

/** How one slope stands under one rule set. */
export interface RuleStanding {
  id: string;
  title: string;
  /** `design` and `finished` where the rule set asks for both apart. */
  stage: 'new' | 'design' | 'finished';
  limitInPerFt: number;
  passes: boolean;
  shortInPerFt: number;
  source: SourceNote;
}

/** How one roof stands under one building code, its plumbing code and local amendments kept. */
export interface BuildingStanding {
  id: string;
  title: string;
  /** The code that the roof file names, or the default. */
  own: boolean;
  /** Margin over the least slope: negative = short by so much; null = no slope is known. */
  slopes: readonly {
    stage: RuleStanding['stage'];
    limitInPerFt: number;
    todayMarginInPerFt: number | null;
    todayPasses: boolean | null;
    plannedMarginInPerFt: number | null;
    plannedPasses: boolean | null;
  }[];
  slopeSource: SourceNote;
  verdict: Verdict;
  why: string;
  slopeException: { applies: boolean; why: string; source: SourceNote | null };
  overflow: { required: boolean; note: string; source: SourceNote };
  scupper: { text: string; needs: string; source: SourceNote };
  rain: { overflowInPerHr: number; basis: string; source: SourceNote };
}

/** How one roof stands under one plumbing code, its building code and local amendments kept. */
export interface PlumbingStanding {
  id: string;
  title: string;
  own: boolean;
  /** Generation of pipe tables. */
  pipes: string;
  source: SourceNote;
  primaryRain: { inPerHr: number; text: string; source: SourceNote };
  overflowRain: { inPerHr: number; text: string; source: SourceNote };
  walls: { text: string; addedSqFt: number; source: SourceNote };
  scupper: { text: string; needs: string; source: SourceNote };
  /** Of all primary outlets there now, and how many of them carry theirs. */
  flowGpm: number;
  carrying: number;
  short: number;
  notKnown: number;
}

/** Least width of an overflow scupper for a drain, by the readings that inspectors take of "three times its size". */
export interface ScupperReadings {
  drainSizeIn: number;
  heightIn: number;
  threeAreasIn: number;
  threeDiametersIn: number;
  circumferenceIn: number;
}

/** One roof under all rule sets that are held. */
export interface RuleComparison {
  todayInPerFt: number | null;
  plannedInPerFt: number | null;
  buildings: readonly BuildingStanding[];
  plumbings: readonly PlumbingStanding[];
  scupperReadings: ScupperReadings | null;
}

/** How much height there is at a place before something is drowned, over the bare deck and over the old covering. */
export interface Budget {
  id: string;
  where: string;
  kind: 'door' | 'window' | 'siding' | 'wall' | 'parapet' | 'curb' | 'tie-in' | 'pipe' | 'overflow' | 'guard';
  at: Point;
  to: Point | null;
  /** Height of the limit above the bare deck. */
  heightIn: number | null;
  /** What must stay clear of it (flashing height). */
  clearIn: number;
  /** Build-up above the bare deck that the place allows (may be negative). */
  availableIn: number | null;
  /** Thickness of insulation alone that this allows at the given rule (cover board taken off). */
  boardsIn: number | null;
  /** R which that thickness gives. */
  rAvailable: number | null;
  /** Height of the limit at its two ends above the file's height zero. */
  topsIn?: readonly [start: number, end: number] | null;
  /** How far a taper may run toward it before it is reached; null = height not known, or it stands free on the roof. */
  run?: { startIn: number; slopeInPerFt: number; riseIn: number; runFt: number } | null;
  /** `stop`: must hold, a layout that breaks it is rejected. `raise`: can be raised (curb, pipe), listed as work. */
  hardness: 'stop' | 'raise';
  source: SourceNote | null;
}

export interface CreaseReport {
  from: Point;
  to: Point;
  kind: 'valley' | 'ridge' | 'wall';
  slopeInPerFt: number;
  lengthFt: number;
}

export interface FacetReport {
  outlet: string;
  outline: Ring;
  holes: readonly Ring[];
  /** Finished surface z = atOriginIn + gx x + gy y. */
  plane: { atOriginIn: number; gx: number; gy: number };
  slopeInPerFt: number;
  areaSqFt: number;
  labelAt: Point;
}

/** One board piece as it lies on the plan. */
export interface BoardPiece {
  outline: Ring;
  kind: 'board' | 'strip';
  /** 0 = boards on the ground; the boards of a cricket are layer 1, on top of those. */
  layer: number;
  lowIn: number;
  highIn: number;
  fillIn: number;
  /** Part of the board that is used, by its own thickness: narrower than low to high where the row is ripped. */
  fromIn: number;
  toIn: number;
  /** Greatest thickness here of all layers with their fill. */
  stackIn: number;
  /** Part of the piece that lies under a further layer. */
  coveredSqFt: number;
  /** Printed mark: the thickness itself, e.g. "0.5-1.5 +2". */
  mark: string;
  whole: boolean;
  /** Smaller than the least piece: cut from an offcut beside it. */
  sliver: boolean;
  labelAt: Point;
}

export interface BoardLine {
  layer: number;
  lowIn: number;
  highIn: number;
  slopeInPerFt: number;
  runFt: number;
  widthFt: number;
  fillLayersIn: readonly number[];
  /** Net boards' worth of area. */
  net: number;
  /** Boards that are taken, every piece from a new one; so many of them are cut. */
  boards: number;
  cut: number;
  /** With one spare per ten. */
  order: number;
  /** Share of the boards taken that is left over. */
  wasteShare: number;
  /** Boards that offcuts could save; not taken off the order. */
  reusable: number;
  /** Small pieces that come out of offcuts. */
  slivers: number;
  sliverSqFt: number;
  mark: string;
}

export interface FillLine {
  thicknessIn: number;
  areaSqFt: number;
  lengthFt: number;
  widthFt: number;
  /** Whole boards by area; pieces left over are laid on. */
  order: number;
}

/** Tapered edge strip that brings a low edge down to nothing. */
export interface StripLine {
  highIn: number;
  runIn: number;
  lengthFt: number;
  /** Pieces of 4 ft. */
  order: number;
}

/** A row that starts or ends inside a board. */
export interface RipLine {
  mark: string;
  fromIn: number;
  toIn: number;
  /** Length of the part along the slope. */
  useFt: number;
  part: 'upper' | 'lower' | 'middle';
  pieces: number;
}

/** A plane that no boards of the catalogue make. */
export interface UnmadePlane {
  outlet: string;
  layer: number;
  slopeInPerFt: number;
  areaSqFt: number;
  cause: 'slope' | 'too-thin' | 'no-strip' | 'no-fill';
  why: string;
}

/** What goes with the boards of a layout. */
export interface BoardWork {
  strips: readonly StripLine[];
  rips: readonly RipLine[];
  unmade: readonly UnmadePlane[];
  /** Net boards, boards taken, and the share of them that is waste. */
  net: number;
  taken: number;
  wasteShare: number;
  /** Boards that offcuts could save; not taken off the order. */
  reusable: number;
  /** How far the joints of one layer stand off those of the layer below. */
  staggerFt: number;
}

/** Finished height to check with a level before the next step. */
export interface CheckPoint {
  id: string;
  at: Point;
  where: string;
  /** Above the height zero of the plan (lowest outlet). */
  heightIn: number;
  thicknessIn: number;
}

export interface NailerPiece {
  edge: string;
  from: Point;
  to: Point;
  lengthFt: number;
  startIn: number;
  endIn: number;
}

/** A part of the deck that lies open at the end of a work day. */
export interface WorkPart {
  /** Id and name of the outlet that takes its water. */
  outlet: string;
  label: string;
  areaSqFt: number;
  /** Ways out that lie in the part, by name. */
  waysOut: readonly string[];
  /** Water leaves over an edge, which cannot plug. */
  overAnEdge: boolean;
  /** Greatest depth that the bare deck itself holds. */
  holdsIn: number;
  /** Height of the old roof around it. */
  damIn: number;
}

/** Every height that a layout changes. Heights in above the bare deck unless said otherwise. */
export interface NewHeights {
  /** Curbs, pipes and overflow inlets: how high each must stand now. */
  raised: readonly {
    id: string;
    where: string;
    kind: Budget['kind'];
    clearIn: number;
    nowIn: number | null;
    neededIn: number;
    raiseIn: number | null;
  }[];
  /** Parapets over the surface that is walked on, at their lowest, before and after; whether they are high enough to guard. */
  parapets: readonly {
    where: string;
    nowIn: number | null;
    newIn: number | null;
    guardNow: boolean | null;
    guardNew: boolean | null;
    guardIn: number;
  }[];
  /** What the build-up buries of a shingled slope, level and along it, and how much to strip with the run-up. */
  tieIns: readonly {
    where: string;
    pitchIn12: number | null;
    buildUpIn: number;
    levelIn: number | null;
    alongIn: number | null;
    stripIn: number | null;
  }[];
  /** Face of the edge metal at the low and the high end of each open edge. */
  faces: readonly { edge: string; lowIn: number; highIn: number }[];
}

export interface Rejection {
  where: string;
  neededIn: number | null;
  availableIn: number | null;
  why: string;
  /** What to relax, and what that buys. */
  relax: string | null;
}

/** R and U of a layout on one basis of R per inch; boards and cover board, films only in U. */
export interface ThermalBasisReport {
  id: string;
  name: string;
  thinnestR: number;
  /** At the mean thickness: what averaging would claim. */
  averageR: number;
  /** R of a uniform roof with the same U. */
  effectiveR: number;
  /** Averaged by area, with films, Btu/(h ft2 F). */
  u: number;
  meetsTarget: boolean | null;
  baseForTargetIn: number | null;
  baseFits: boolean | null;
  source: SourceNote;
}

/** One rule of the energy code on one layout, on the label basis. */
export interface EnergyCheck {
  id: 'one-inch-rule' | 'average-u' | 'low-point-thickness' | 'thin-end-foam';
  title: string;
  /** False: shown beside the reading that is in force. */
  inForce: boolean;
  asked: number;
  found: number;
  unit: 'R' | 'U' | 'in';
  passes: boolean;
  /** Flat layer under the taper with which it holds; null = 16 in are not enough. */
  baseIn: number | null;
  /** Whether the heights that must hold bear that layer. */
  baseFits: boolean | null;
  note: string;
  source: SourceNote;
}

/** What a layout is worth against heat, and what the energy code makes of it. */
export interface ThermalReport {
  bases: readonly ThermalBasisReport[];
  /** Name of the basis that the checks stand on. */
  checksOn: string;
  target: { r: number; u: number; title: string } | null;
  taperRule: { id: 'one-inch' | 'average-u'; given: boolean };
  checks: readonly EnergyCheck[];
  /** Where the two readings of the code lead to different roofs. */
  disagreement: string | null;
}

/** What goes under the boards to make the base fit for them. */
export interface GroundFill {
  how: 'plane' | 'level' | 'filled';
  boardFt: number;
  greatestIn: number;
  /** Where it is thickest. */
  at: Point;
  areaSqFt: number;
  /** One hollow, so small that it is filled by hand. */
  local: boolean;
  outlines: readonly Ring[];
  /** One or two sentences. */
  note: string;
}

export interface Layout {
  id: string;
  title: string;
  /** One sentence: why someone would choose it. */
  why: string;
  strict: boolean;
  slopeInPerFt: number;
  leastFaceSlopeInPerFt: number | null;
  leastValleySlopeInPerFt: number | null;
  /** After creep and load that are still to come; null with a reason when joists are not known. */
  inServiceSlopeInPerFt: number | null;
  inServiceNote: string;
  valleyGrade: 'good' | 'slow' | 'too-flat';
  outlets: readonly OutletReport[];
  areas: readonly DrainageArea[];
  newOutlets: number;
  meanThicknessIn: number;
  leastThicknessIn: number;
  greatestThicknessIn: number;
  volumeBoardFt: number;
  addedPsf: number;
  cost?: LayoutCost;
  /** Flat layer under the taper. */
  baseIn?: number;
  /** Sumps at drains, sunk into the flat layer under the taper. */
  sumps?: readonly { outlet: string; sideFt: number; slopeInPerFt: number; atDrainIn: number }[];
  bound: {
    pathSlopeInPerFt: number;
    boardFt: number;
    errorBoardFt: number;
    ratio: number;
    strictConeBoardFt: number;
  } | null;
  thinnestR: number;
  averageR: number;
  effectiveR: number;
  /** Flat layer under the taper that would meet the target R, where a target is known. */
  baseForTargetIn: number | null;
  /** Whether that base fits under the limits. */
  baseForTargetFits: boolean | null;
  /** R on three bases and the checks of the energy code. */
  thermal?: ThermalReport;
  /** Curbs, parapets, tie-ins and edge metal after it. */
  newHeights?: NewHeights;
  facets: readonly FacetReport[];
  creases: readonly CreaseReport[];
  arrows: readonly FlowArrow[];
  pieces: readonly BoardPiece[];
  boards: readonly BoardLine[];
  fill: readonly FillLine[];
  boardWork: BoardWork;
  checkPoints: readonly CheckPoint[];
  nailers: readonly NailerPiece[];
  cornerHeights: readonly { at: Point; heightIn: number; thicknessIn: number }[];
  ponds: readonly PondReport[];
  flats: readonly FlatReport[];
  /** Levelling that the boards need first (sagged deck). */
  levellingBoardFt: number;
  /** That levelling or fill in full; null = the boards lie on the base as it was read. */
  groundFill?: GroundFill | null;
  overflow: { required: boolean; note: string; inletIn: number | null; source: SourceNote | null };
  /** Levels of water with the outlets shut, from the lowest up. */
  loads?: readonly LoadStep[];
  /** What is wrong with the finished roof when its outlets are shut. */
  shutFindings?: readonly Finding[];
  /** The parts in which the deck is laid open, as they stand at the end of a work day; of the chosen layout only. */
  workParts?: readonly WorkPart[];
  budgets: readonly { id: string; where: string; usedIn: number; leftIn: number }[];
  rejected: Rejection | null;
}

/** What a layout costs, by the user's prices (`own`) or in board feet. */
export interface LayoutCost {
  own: boolean;
  amount: number;
  parts: readonly { what: string; count: number; unit: string; rate: number }[];
}

/** How far a search has come. */
export interface SearchProgress {
  /** Candidates that were looked at. */
  tried: number;
  budget: number;
  doing: 'plans' | 'sketches' | 'proofs' | 'reports';
  /** Layouts that were built, of those that are to be told about in full. */
  told: number;
  toTell: number;
}

/** What was looked at before the layouts were chosen. */
export interface SearchReport {
  /** Candidates: outlets x forms x turns x slopes x bases. */
  tried: number;
  budget: number;
  /** False when the budget ended the search. */
  complete: boolean;
  /** Candidates that keep every hard height. */
  fitting: number;
  /** Those whose outlets may not be made, by the reason, with the least boards that lifting it would buy. */
  barred: readonly { why: string; count: number; nearest: string; boardFt: number }[];
  /** Those that do not, by the height they break most. */
  rejected: readonly { limit: string; where: string; count: number; leastShortIn: number; nearest: string }[];
  /** Where nothing fits: the least that has to give, and what it opens. */
  relaxation: { limit: string; where: string; byIn: number; opens: string; text: string } | null;
}

export interface MembraneReason {
  criterion: string;
  weight: number;
  score: number;
  text: string;
}

/** One cell of the evidence: what is known of one covering on one count, and what that is worth. Points 0 to 10. */
export interface MembraneEvidence {
  /** Id and title of the criterion. */
  criterion: string;
  title: string;
  /** Figure with its range, or what was judged. */
  figure: string;
  /** Points at the bad end, at the likely value and at the good end of the evidence; alike where no range is known. */
  low: number;
  likely: number;
  high: number;
  source: SourceNote;
}

/** Where a covering stands when every range of the evidence is let go from end to end, each by itself. */
export interface MembraneStanding {
  /** Place at the likely values; 1 = first. */
  place: number;
  bestPlace: number;
  worstPlace: number;
  /** Weighted points at the bad and the good ends of its own evidence. */
  lowScore: number;
  highScore: number;
  /** Share of all combinations of low, likely and high values in which nothing stands before it. */
  firstShare: number;
  /** One sentence. */
  words: string;
}

export interface MembraneReport {
  id: string;
  name: string;
  /** 0 to 10; null when vetoed. */
  score: number | null;
  veto: { why: string; source: SourceNote } | null;
  reasons: readonly MembraneReason[];
  /** In words: what weight change makes this option win (or makes the winner lose). */
  flips: readonly string[];
  /** Plain sentences for the owner. */
  plain: string;
  /** One cell for each criterion, also where the covering is out. */
  evidence?: readonly MembraneEvidence[];
  /** null = out, so it has no place. */
  standing?: MembraneStanding | null;
  /** One sentence for a table: where the first stands over the ranges; of the others, why they are not first. */
  short?: string;
  /** A covering that is at least as good on every count; null = there is none. */
  dominatedBy?: { id: string; name: string; whateverTheRanges: boolean } | null;
}

/** How the coverings were weighed. */
export interface MembraneWeighing {
  /** Why these weights, in one or two sentences. */
  why: string;
  /** True where the roof file gives weights of its own. */
  own: boolean;
  /** Heaviest first; shares of 1. `usual` = by the situation alone. */
  weights: readonly { criterion: string; title: string; weight: number; usual: number; given: boolean }[];
  situations: readonly { title: string; source: SourceNote }[];
  shifts: readonly { title: string; times: number; because: string; source: SourceNote }[];
}

/** A thing that is done whichever covering is chosen. */
export interface SameWhichever {
  what: string;
  text: string;
}

export interface MaterialLine {
  id: string;
  group: string;
  item: string;
  quantity: number;
  unit: string;
  orderQuantity: number;
  orderUnit: string;
  /** How the number came about, in words with the figures. */
  basis: string;
  source: SourceNote | null;
}

export interface Caution {
  id: string;
  severity: 1 | 2 | 3 | 4;
  topic: string;
  /** Evaluated on the roof as it is, as it will be, or while the work goes on. */
  when: 'as-is' | 'during' | 'finished';
  /** The fact of this job that triggered it. */
  because: string;
  text: string;
  source: SourceNote;
}

export interface EdgeReport {
  id: string;
  side: number;
  from: Point;
  to: Point;
  kind: string;
  /** "gutter side, 30'-0"" */
  label: string;
  lengthFt: number;
  mayDrain: 'yes' | 'no' | 'unknown';
  /** Water that comes over it onto the section: a share of the wall above, or the steep roof that sheds there. */
  sheds?: readonly { from: 'wall' | 'shingles'; areaSqFt: number }[];
}

/** Everything of the plan that drawings need and that does not depend on a layout. */
export interface PlanReport {
  outline: Ring;
  edges: readonly EdgeReport[];
  curbs: readonly { id: string; kind: string; outline: Ring; heightIn: number | null }[];
  pipes: readonly { at: Point; kind: string; diameterIn: number | null }[];
  inflows: readonly { at: Point; kind: string; fromSqFt: number }[];
  findings: readonly { kind: string; at: Point | null; outline: Ring | null; note: string | null }[];
  /** Water that somebody saw: its extent where it was drawn, else the place alone. */
  seenPonds: readonly {
    at: Point | null;
    outline: Ring | null;
    depthIn: number | null;
    hoursAfterRain: number | null;
  }[];
}

/** Another way than tapered boards to make this roof drain, or to make them thinner. */
export interface Alternative {
  id:
    | 'structure-first'
    | 'ripped-sleepers'
    | 'outlet-at-low-spot'
    | 'more-outlets'
    | 'local-fill'
    | 'edge-lowered'
    | 'steep-conversion';
  title: string;
  /** The fact of this roof that speaks for it. */
  why: string;
  /** When it is chosen at all. */
  when: string;
  /** What to watch. */
  watch: string;
  /** Its geometry on this roof. */
  figures: readonly { name: string; value: string }[];
  source: SourceNote;
}

/** One finding of the inspection as it is numbered, drawn and listed. */
export interface InspectedFinding {
  number: number;
  kind: string;
  title: string;
  /** Where in words; the geometry is one of the three that follow, or none. */
  where: string;
  at: Point | null;
  outline: Ring | null;
  line: readonly [Point, Point] | null;
  /** "8′-0″ along", "32 sq ft", "stands off 2 1/2″"; empty = not said. */
  extent: string;
  severity: 'slight' | 'plain' | 'severe' | null;
  foundBy: string | null;
  tells: string;
  tellsNot: string;
  note: string | null;
  photos: readonly string[];
  source: SourceNote;
}

/** One kind of wood that may have to be replaced. */
export interface WoodRow {
  id: string;
  /** Number of the finding that it comes from; null = from all of them. */
  findingNumber: number | null;
  what: string;
  unit: 'sheets' | 'lots' | 'ft' | 'pieces';
  likely: number;
  /** Passed by one job in ten. */
  oneInTen: number;
  basis: string;
  source: SourceNote;
}

/** Wood as a range, with what was assumed and how a quote carries it. */
export interface WoodAllowance {
  rows: readonly WoodRow[];
  assumption: string;
  carry: string;
}

export interface ScopeReason {
  text: string;
  source: SourceNote;
}

/** One thing that may be done with the roof: `open` = nothing bars it, `not-known` = something has to be found out first. */
export interface ScopeWay {
  id: 'repair' | 'coat' | 're-cover' | 'tear-off';
  title: string;
  standing: 'open' | 'barred' | 'not-known';
  reasons: readonly ScopeReason[];
  /** What would settle it, by the id of the test. */
  settle: readonly string[];
}

/** A repair that the findings ask for, with its lengths. */
export interface RepairWork {
  finding: string;
  title: string;
  lines: readonly string[];
  figures: readonly { name: string; value: number; unit: string; assumed: string | null }[];
  source: SourceNote;
}

/** What to do with the roof, and what has to be known before it is said. */
export interface ScopeReport {
  /** One or two sentences, the answer first. */
  answer: string;
  recommended: ScopeWay['id'] | null;
  ways: readonly ScopeWay[];
  /** What settles the open questions, the cheapest first. */
  tests: readonly { id: string; what: string; how: string; source: SourceNote }[];
  repairs: readonly RepairWork[];
  wood: WoodAllowance | null;
}

export interface RuleSetReport {
  building: { id: string; title: string };
  plumbing: { id: string; title: string };
  slopeRule: { faceInPerFt: number; valleyInPerFt: number; strict: boolean };
  local: readonly string[];
  /** From when standing water is listed, and from when it is flagged. */
  ponds?: { listedFromIn: number; flaggedOverIn: number; flaggedOverSqFt: number };
}

export interface RainReport {
  primaryInPerHr: number;
  primaryBasis: string;
  overflowInPerHr: number;
  overflowBasis: string;
  source: SourceNote;
}

/** One test of a roof against damp. */
export interface MoistureTest {
  id: 'share-above' | 'table-foam' | 'deck-plane' | 'year-balance';
  title: string;
  state: 'holds' | 'fails' | 'not-known' | 'not-asked';
  asked: string;
  found: string;
  note: string;
  source: SourceNote;
}

/** One way to place the insulation, held against the code, against damp and against what must stay. */
export interface InsulationOption {
  id: 'vented-batts' | 'unvented-batts' | 'batts-and-board' | 'closed-cell' | 'all-above';
  title: string;
  r: number;
  /** R above the deck in it. */
  aboveR: number;
  /** What was said must stay, and does not with it. */
  breaks: readonly StatedConstraint['id'][];
  /** Dry by the tests of this tool. */
  dry: boolean;
  allowedByCode: boolean;
  reachesTarget: 'yes' | 'by-exception' | 'no' | 'not-known';
  /** One sentence. */
  why: string;
  source: SourceNote;
}

export interface StatedConstraint {
  id: 'keep-covering' | 'no-spray-foam' | 'no-foam-above';
  /** "the covering stays" */
  words: string;
}

/** What to give up first where nothing keeps everything that was asked for. */
export interface Relaxation {
  giveUp: readonly StatedConstraint['id'][];
  option: InsulationOption['id'];
  text: string;
}

/** Whether water can gather inside the roof. */
export interface MoistureReport {
  verdict: 'safe' | 'safe-if' | 'at-risk' | 'not-known' | 'not-asked';
  /** The answer in one or two plain sentences. */
  answer: string;
  reasons: readonly string[];
  todo: readonly string[];
  notKnown: readonly string[];
  /** The winter that was taken; null = place and zone not known. */
  winter: { place: string; climateZone: string | null; januaryF: number; coldF: number } | null;
  room: { humidityPct: number; given: boolean; dewPointF: number } | null;
  /** At the thinnest place: R in winter with the cover board, and by the label without it. */
  above: { winterR: number; labelR: number; what: string };
  below: { kind: 'none' | 'batts' | 'open-cell' | 'closed-cell' | null; r: number | null; what: string };
  /** Most R below the deck that stays dry under what lies above it; null = no limit or not known. */
  mostBelowR: number | null;
  /** Least R above the deck over what lies below it, the stricter of code table and share; null = not known. */
  leastAboveR: number | null;
  /** Underside of the deck in the mean of the three coldest months, F. */
  deckF: number | null;
  tests: readonly MoistureTest[];
  /** January, outside first: temperature at every face, and the dew point of the vapor there. */
  profile: readonly { face: string; airF: number; dewPointF: number }[];
  /** Water in the roof through the second year, g/m2, from October. */
  balance: {
    peakGPerM2: number;
    leftGPerM2: number;
    alarmGPerM2: number;
    months: readonly { month: number; gPerM2: number }[];
    /** The same with a vapor retarder on the deck. */
    withRetarder: { peakGPerM2: number; leftGPerM2: number };
  } | null;
  retarder: { advice: 'yes' | 'consider' | 'no' | 'not-known'; text: string; source: SourceNote };
  venting: { text: string; source: SourceNote };
  constraints: readonly StatedConstraint[];
  options: readonly InsulationOption[];
  /** True where no option keeps every constraint, the code and the target. */
  noCompliantOption: boolean;
  relax: readonly Relaxation[];
  source: SourceNote;
}

/** Flat boards in place of a taper, where the roof file asks for them. */
export interface FlatBoardsReport {
  thicknessIn: number;
  labelR: number;
  areaSqFt: number;
  /** Boards of 4 x 8 ft in one layer, without waste. */
  boardsPerLayer: number;
  /** Where the deck is seen from below: no longer screw; null = no screw at all, or the deck is not seen. */
  longestScrewIn: number | null;
  /** False where the deck does not drain by itself: the taper is laid out instead. */
  used: boolean;
  text: string;
  source: SourceNote;
}

export type RuleResult = 'pass' | 'fail' | 'not-applicable' | 'not-known';

export interface EnergyRuleRow {
  id: string;
  title: string;
  result: RuleResult;
  asked: string;
  found: string;
  clause: string;
  note: string;
  source: SourceNote;
}

/** One covering against a rule for cool roofs: by reflectance and emittance, or by the index. */
export interface CoolRoofOption {
  id: string;
  name: string;
  chosen: boolean;
  agedReflectance: number;
  emittance: number;
  sri: number;
  passes: boolean;
  by: 'pair' | 'index' | null;
}

export interface CoolRoofRow extends EnergyRuleRow {
  agedReflectance: number;
  emittance: number;
  agedSri: number;
}

/** What the energy rules ask of this roof, one row for each rule, and every covering against the cool-roof rules. */
export interface EnergyRulesReport {
  /** One sentence. */
  answer: string;
  climateZone: string | null;
  rows: readonly EnergyRuleRow[];
  coolRoof: readonly CoolRoofRow[];
  coverings: readonly (CoolRoofOption & { rule: string })[];
  relief: readonly { text: string; source: SourceNote }[];
}

/** Vents of the attic beside the section. */
export interface VentReport {
  verdict: 'enough' | 'enough-by-exception' | 'short' | 'not-known';
  answer: string;
  atticSqFt: number | null;
  needed150SqIn: number | null;
  needed300SqIn: number | null;
  /** Share of the 1/300 area that must be high, sq in. */
  highFromSqIn: number | null;
  highToSqIn: number | null;
  thereSqIn: number;
  highSqIn: number;
  lowSqIn: number;
  vents: readonly {
    kind: string;
    name: string;
    count: number;
    eachSqIn: number;
    totalSqIn: number;
    high: boolean;
    given: boolean;
    source: SourceNote;
  }[];
  conditions: readonly { text: string; state: 'met' | 'not-met' | 'not-known'; source: SourceNote }[];
  warnings: readonly { text: string; source: SourceNote }[];
  todo: readonly string[];
  flatPart: { text: string; source: SourceNote };
  source: SourceNote;
}

/** One roof on one clear day. Temperatures F, heat Btu; heat into the room counts up, out of it down. */
export interface HeatOfRoof {
  /** `old`, `new`, `new-thin`, `new-mean`, `new-thick`, or `option-` with the membrane's id. */
  id: string;
  title: string;
  /** Membrane option; null = the covering that is there. */
  membrane: string | null;
  /** Foam boards; null = the old roof. */
  foamIn: number | null;
  /** All layers together, films not counted. */
  layersR: number;
  /** As aged. */
  reflectance: number;
  emittance: number;
  sri: number;
  /** At the whole hours of standard time, 0 to 24. */
  surfaceF: readonly number[];
  peakSurfaceF: number;
  peakSurfaceAtH: number;
  peakBtuPerHrSqFt: number;
  peakHeatAtH: number;
  dayBtuPerSqFt: number;
  /** The same over the whole section. */
  peakBtuPerHr: number;
  dayBtu: number;
}

/** How much of the heat saved in a day is the insulation's and how much the color's. Btu per sq ft. */
export interface HeatSplit {
  /** Old insulation with old color, then each change alone, then both. */
  oldBtu: number;
  insulationOnlyBtu: number;
  colorOnlyBtu: number;
  bothBtu: number;
  savedBtu: number;
  /** Saved by one change alone. */
  insulationAloneBtu: number;
  colorAloneBtu: number;
  /** What the two alone promise more than both together keep: each has less left to save after the other. */
  overlapBtu: number;
  /** Shares of what is saved, mean of both orders; null where next to nothing is saved. */
  insulationShare: number | null;
  colorShare: number | null;
}

/** A clear January day and a heating season: what color and insulation do then. */
export interface HeatInWinter {
  januaryF: number;
  roomF: number;
  /** Heat out of the room on a clear January day without snow, Btu per sq ft. */
  oldLossBtuPerSqFt: number;
  newLossBtuPerSqFt: number;
  /** Lost more on that day because of the new color; negative = lost less. */
  colorPenaltyBtuPerSqFt: number;
  /** Over a season by degree-days, no sun counted. */
  degreeDays: number;
  insulationSavesBtuPerSqFtYear: number;
}

/** The roof on a hot clear day: old, new, and new under every other membrane. */
export interface HeatReport {
  day: {
    /** Town whose weather is taken. */
    town: string;
    date: string;
    hotF: number;
    rangeF: number;
    dewPointF: number;
    noonWPerM2: number;
    /** Sky by the place's own measured depths, or by the sun's height alone. */
    sky: 'depths' | 'height';
    windWPerM2K: number;
    /** null = nobody cools what lies below: it is as warm as the air outside. */
    roomF: number | null;
    /** At the whole hours of standard time, 0 to 24. */
    airF: readonly number[];
  };
  old: HeatOfRoof;
  /** At the thickness that stands for the whole taper; null = no layout or no membrane. */
  new: HeatOfRoof | null;
  /** The new roof where it is thinnest, at its mean and where it is thickest. */
  taper: readonly HeatOfRoof[];
  /** The new roof under every membrane option, the chosen one too. */
  options: readonly (HeatOfRoof & { vetoed: boolean })[];
  /** Id of the option whose color is farthest from the chosen one's. */
  otherColor: string | null;
  /** Peak of the surface in strong and in light wind. */
  windRangeF: { old: readonly [number, number]; new: readonly [number, number] | null };
  split: HeatSplit | null;
  winter: HeatInWinter | null;
  /** What the owner is told. */
  figures: {
    peakSurfaceOldF: number;
    peakSurfaceNewF: number | null;
    dayOldBtuPerSqFt: number;
    dayNewBtuPerSqFt: number | null;
    dayOldBtu: number;
    dayNewBtu: number | null;
    insulationShare: number | null;
    colorShare: number | null;
  };
  sources: readonly SourceNote[];
  assumed: readonly Assumption[];
}

export interface Assessment {
  resultVersion: 1;
  label: string;
  invented: boolean;
  place: string;
  /** The first sentence of every page. */
  headline: string;
  ruleSet: RuleSetReport;
  rain: RainReport;
  section: { areaSqFt: number; perimeterFt: number; squares: number };
  plan: PlanReport;
  existing: ExistingReport;
  budgets: readonly Budget[];
  layouts: readonly Layout[];
  search: SearchReport;
  chosenLayout: string | null;
  /** Ways that are not foam, or go with it, by what fits this roof best. */
  alternatives?: readonly Alternative[];
  /** What the inspection noted, numbered. */
  inspection?: readonly InspectedFinding[];
  /** Repair, coat, re-cover or tear off. */
  scope?: ScopeReport;
  /** When nothing fits: what to relax first. */
  relax: string | null;
  membranes: readonly MembraneReport[];
  chosenMembrane: string | null;
  /** How they were weighed. */
  membraneWeighing?: MembraneWeighing;
  /** What is the same whichever covering is chosen. */
  sameWhichever?: readonly SameWhichever[];
  /** Why the old covering is not simply laid again, in plain words. */
  whyNotTheSame: string;
  materials: readonly MaterialLine[];
  cautions: readonly Caution[];
  deferral: string;
  findings: readonly Finding[];
  assumed: readonly Assumption[];
  workings: readonly Working[];
  /** The same roof under the other codes that are held. */
  ruleComparison?: RuleComparison;
  /** The roof on a hot clear day. */
  heat?: HeatReport;
  /** Flat boards in place of a taper; null = none were asked for. */
  flatBoards?: FlatBoardsReport | null;
  /** Whether water can gather inside the roof. */
  moisture?: MoistureReport;
  /** Energy and cool-roof rules as pass, fail or not applicable. */
  energyRules?: EnergyRulesReport;
  /** Vents of the attic beside the section; null = no steep roof adjoins, or nothing is said about it. */
  vents?: VentReport | null;
}

/** The roof as it was laid, by the heights that were read at the check points. */
export interface AsBuiltReport {
  layoutId: string;
  points: readonly {
    id: string;
    where: string;
    designIn: number;
    readIn: number;
    differenceIn: number;
    outOfTolerance: boolean;
  }[];
  drained: boolean;
  /** One sentence. */
  judgement: string;
  ponds: readonly PondReport[];
  leastFaceSlopeInPerFt: number | null;
  leastValleySlopeInPerFt: number | null;
  /** What to lift or shave, worst first. */
  advice: readonly string[];
}

/** The roof as it is, without anything that is planned: what forms and the survey draw. */
export type RoofToday = Pick<Assessment, 'section' | 'plan' | 'existing' | 'inspection'>;
