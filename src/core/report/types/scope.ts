import type { Point, Ring, SourceNote } from './basics.ts';

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
  /** Numbers of the findings that it comes from; none = from all of them. */
  findingNumbers: readonly number[];
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
  /** "3. 10′-0″ in from the gutter side; 2′-0″ along": every place of it, by its number on the plan. */
  places: readonly string[];
  /** The cure is often got wrong, so the answer itself names it. */
  oftenWrong: boolean;
  lines: readonly string[];
  figures: readonly { name: string; value: number; unit: string; assumed: string | null }[];
  source: SourceNote;
}

/** What becomes of the old roof in the heights, boards and materials of the answer. */
export interface PlannedReport {
  work: 'tear-off' | 'partly' | 're-cover';
  /** What the boards lie on: "the bare deck". */
  ground: string;
  /** The deck is off already, down to the joists: it is built anew, and no list counts it. */
  stripped: boolean;
  /** Nobody said how much is torn off. */
  assumed: boolean;
  /** Where the plan is not what the findings ask for, or leaves the old roof: what the figures stand for. */
  note: string | null;
}

/** What to do with the roof, and what has to be known before it is said. */
export interface ScopeReport {
  /** One or two sentences, the answer first. */
  answer: string;
  recommended: ScopeWay['id'] | null;
  /** What that comes to: a repair of a roof on which nothing is broken is upkeep, and one that is off is laid anew. */
  comesTo: ScopeWay['id'] | 'upkeep' | 'off' | null;
  /** Something is broken, wet or rotten in one place: it is mended, whatever else is done. */
  mends: boolean;
  ways: readonly ScopeWay[];
  /** What settles the open questions, the cheapest first. */
  tests: readonly { id: string; what: string; how: string; source: SourceNote }[];
  repairs: readonly RepairWork[];
  wood: WoodAllowance | null;
  /** What the deck is made of, and whether it was found soft. */
  deck: { name: string; isWood: boolean; soft: boolean };
}
