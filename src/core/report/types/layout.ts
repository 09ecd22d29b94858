import type { Finding, Point, SourceNote } from './basics.ts';
import type {
  BoardLine,
  BoardPiece,
  BoardWork,
  CheckPoint,
  CreaseReport,
  FacetReport,
  FillLine,
  GroundFill,
  NailerPiece,
  WorkDays,
} from './boards.ts';
import type { DrainageArea, FlatReport, FlowArrow, LoadStep, OutletReport, PondReport } from './water.ts';

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
    /** A flue or gas vent: its listed height over the roof decides, not the flashing. */
    vents?: boolean;
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
  /** `own`: set for this job in the roof file; else it is the code's table by `title`. */
  target: { r: number; u: number; title: string; own: boolean } | null;
  /** What the code's table asks in this place, whatever target is set; null = no table is known to bind. */
  codeTarget: { r: number; title: string } | null;
  /** Why there is no target; null = there is one. */
  noTarget: string | null;
  taperRule: { id: 'one-inch' | 'average-u'; given: boolean };
  checks: readonly EnergyCheck[];
  /** Where the two readings of the code lead to different roofs. */
  disagreement: string | null;
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
  /** Why there are no sumps; null where there are. */
  noSumps?: string | null;
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
  /** How long the work takes with the chosen covering; of layouts that can be built. */
  workDays?: WorkDays;
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
  /** Those whose outlets may not be made, by the reason: what would lift it, and the least boards that would buy. */
  barred: readonly {
    why: string;
    relax: string;
    count: number;
    /** Whether the nearest of them keeps every hard height. */
    fits: boolean;
    nearest: string;
    boardFt: number;
  }[];
  /** Those that do not, by the height they break most. */
  rejected: readonly { limit: string; where: string; count: number; leastShortIn: number; nearest: string }[];
  /** Where nothing fits: the least that has to give, and what it opens. */
  relaxation: { limit: string; where: string; byIn: number; opens: string; text: string } | null;
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
