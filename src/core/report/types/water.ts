import type { Point, Ring, SourceNote } from './basics.ts';
import type { RuleStanding } from './rules.ts';

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
