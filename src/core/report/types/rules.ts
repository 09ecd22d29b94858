import type { SourceNote } from './basics.ts';
import type { Verdict } from './water.ts';

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
