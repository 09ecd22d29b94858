import type { SourceNote } from './basics.ts';

/** One test of a roof against damp. */
export interface MoistureTest {
  id: 'share-above' | 'table-foam' | 'foam-class' | 'deck-plane' | 'year-balance';
  title: string;
  /** It asks what a table of the code asks, not whether water gathers by the figures here. */
  byCode: boolean;
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
  /** Dry by the tests of this tool; null = the winter is not known. */
  dry: boolean | null;
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

/** A sheet on the deck under all boards. */
export interface DeckSheet {
  /** The retarder stops vapor and air, the other stops air alone and lets the roof dry to the room. */
  kind: 'vapor-retarder' | 'air-sheet';
  /** Greatest permeance of a retarder, perms; null = the sheet lets vapor through. */
  mostPerm: number | null;
  /** "the deck" */
  on: string;
  why: string;
  source: SourceNote;
}

export type RetarderKind = 'none' | 'sheet' | 'foil';

/** What keeps vapor out of the cold layers. */
export interface Lining {
  /** Vapor retarder under the new boards; the foil-faced one is several times as tight. */
  retarder: RetarderKind;
  /** Foam below the deck is coated on its room side, as a retarder of class II. */
  coat: boolean;
}

/** What makes a roof that fails a test of damp hold all of them, each way recomputed. */
export interface MoistureCure extends Lining {
  /** Flat board that it takes above the deck besides the layout's; 0 = none, null = 16 in are not enough. */
  moreIn: number | null;
  /** Winter R above the deck with it, at the thinnest place. */
  aboveR: number | null;
  /** Where nothing makes it hold: what slows it most, and the years until it holds more water than is let pass. */
  slows: (Lining & { moreIn: number; peakGPerM2: number; leftGPerM2: number; years: number }) | null;
  /** Height left at the tightest place that must hold; null = none is known to limit. */
  tightest: { where: string; leftIn: number } | null;
  /** Board is planned above the deck. */
  planned: boolean;
  /** Whether the heights that must hold bear it; null = a height is not known, or no board is planned or asked for. */
  fits: boolean | null;
  /** Heights that must hold and would be broken. */
  broken: readonly { where: string; shortIn: number }[];
  /** Curbs, pipes and inlets that go up with it. */
  raised: readonly { where: string; byIn: number }[];
  /** Heights that must hold and are not known. */
  notMeasured: readonly string[];
  /** Most R of the batts that may stay under what is planned; null = fewer of them do not help, or there are none. */
  fewerBatts: (Lining & { mostR: number }) | null;
  /** What closed-cell foam takes that fills the space in place of the batts; null = it does not cure it, or there are none. */
  sprayed: Lining | null;
  /** Board that it takes besides the layout's once nothing of the old roof is left; null = 16 in are not enough, or nothing stays of it. */
  tornOff: (Lining & { moreIn: number }) | null;
  /** Most humidity of the rooms with which the boards of the layout are enough; null = no such of 30 % and more. */
  drierRoom: (Lining & { mostPct: number }) | null;
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
  winter: { place: string; standsIn: boolean; climateZone: string | null; januaryF: number; coldF: number } | null;
  /** Air of the rooms in January: all three belong together. */
  room: { airF: number; humidityPct: number; given: boolean; dewPointF: number } | null;
  /** At the thinnest place: R in winter with the cover board, and by the label without it. */
  above: { winterR: number; labelR: number; what: string };
  below: { kind: 'none' | 'batts' | 'open-cell' | 'closed-cell' | null; r: number | null; what: string };
  /** Where nobody knows what lies below: most R of batts that stays dry by the figures here; null = no limit, or not known. */
  mostBelowR: number | null;
  /** Least label R above the deck over the batts below it with which every test holds; null = not known, or none is enough. */
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
    /** The same with the lining that cures it, else with the plainest. */
    withLining: { what: string; peakGPerM2: number; leftGPerM2: number };
  } | null;
  /** What makes it dry where a test fails; null = none fails, or it cannot be computed yet. */
  cure: MoistureCure | null;
  /** Sheet that goes on the deck under all boards; null = none is called for, or it is not known yet. */
  deckSheet: DeckSheet | null;
  /** Why no sheet is on the order yet; null = what is called for is on it. */
  deckSheetHeld: string | null;
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
  /** What would settle a rule that is not known; null = it is settled. */
  settledBy: string | null;
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
  answer: string;
  /** Insulation that a rule passes by and that the answer on damp does not let stand; null = none. */
  dampStop: string | null;
  /** The target set for the job beside what the code asks; null = none is set, the code's is taken. */
  targetNote: string | null;
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
  /** All that is there today. */
  thereSqIn: number;
  /** Outlets to close, for two kinds in one attic work against each other. */
  toClose: readonly string[];
  /** What is left once those are closed: the verdict counts this. */
  countedSqIn: number;
  /** Of what is counted: high, at the eaves, and between, as a gable louver is. */
  highSqIn: number;
  eaveSqIn: number;
  betweenSqIn: number;
  vents: readonly {
    kind: string;
    name: string;
    /** null = nobody counted it: it adds nothing. */
    count: number | null;
    eachSqIn: number;
    totalSqIn: number;
    where: 'high' | 'eaves' | 'between';
    /** Lets air out; the others let it in. */
    outlet: boolean;
    /** False: to be closed, and not counted. */
    stays: boolean;
    given: boolean;
    source: SourceNote;
  }[];
  conditions: readonly { text: string; state: 'met' | 'not-met' | 'not-known'; source: SourceNote }[];
  warnings: readonly { text: string; source: SourceNote }[];
  todo: readonly string[];
  flatPart: { text: string; source: SourceNote };
  source: SourceNote;
}
