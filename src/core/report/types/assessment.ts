import type { Assumption, Finding, Point, Ring, SourceNote, Working } from './basics.ts';
import type { MaterialLine } from './boards.ts';
import type { EnergyRulesReport, FlatBoardsReport, MoistureReport, VentReport } from './damp.ts';
import type { HeatReport } from './heat.ts';
import type { Alternative, Budget, Layout, SearchReport } from './layout.ts';
import type { MembraneReport, MembraneWeighing, SameWhichever } from './membranes.ts';
import type { RainReport, RuleComparison, RuleSetReport } from './rules.ts';
import type { InspectedFinding, PlannedReport, ScopeReport } from './scope.ts';
import type { ExistingReport } from './water.ts';

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
  /** "gutter side" */
  what: string;
  /** Its name on this roof and its length: "gutter side, 30'-0""; of several alike with the side it faces. */
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
  /** The work that the figures stand for. */
  planned: PlannedReport;
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

/** The roof as it is, without anything that is planned: what forms and the survey draw. */
export type RoofToday = Pick<Assessment, 'section' | 'plan' | 'existing' | 'inspection'>;
