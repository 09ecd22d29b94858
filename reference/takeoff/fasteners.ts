import type { Cited } from '../sources.ts';

export interface DeckHold extends Cited {
  deck: string;
  /** How boards are held by default. Concrete and poured or fibrous decks are glued: no holes are drilled by default. */
  hold: 'screws' | 'adhesive';
  /** Screw past the top of the deck, on top of the panel's own thickness where it goes through. */
  engagementIn: number;
  /** The screw must come out below the panel. */
  throughPanel: boolean;
  pullTest: boolean;
}

/**
 * Engagement of insulation screws by deck. Some ask 1 in below a panel; panels under 3/4 in give erratic pull-out
 * and are pull-tested. Gypsum, cement-fiber and lightweight concrete have fasteners of their own, by test only.
 */
export const deckHolds = [
  {
    deck: 'plywood',
    hold: 'screws',
    engagementIn: 0.5,
    throughPanel: true,
    pullTest: true,
    source: 'practice',
    at: 'through the sheet by 1/2 in',
    grade: 'practice',
  },
  {
    deck: 'osb',
    hold: 'screws',
    engagementIn: 0.5,
    throughPanel: true,
    pullTest: true,
    source: 'practice',
    at: 'through the sheet by 1/2 in',
    grade: 'practice',
  },
  {
    deck: 'plank',
    hold: 'screws',
    engagementIn: 1,
    throughPanel: false,
    pullTest: false,
    source: 'practice',
    at: '1 in into the wood',
    grade: 'practice',
  },
  {
    deck: 'tongue-and-groove',
    hold: 'screws',
    engagementIn: 1,
    throughPanel: false,
    pullTest: false,
    source: 'practice',
    at: '1 in into the wood',
    grade: 'practice',
  },
  {
    deck: 'steel',
    hold: 'screws',
    engagementIn: 0.75,
    throughPanel: false,
    pullTest: false,
    source: 'practice',
    at: '3/4 in through the top flange',
    grade: 'practice',
  },
  {
    deck: 'concrete',
    hold: 'adhesive',
    engagementIn: 1.25,
    throughPanel: false,
    pullTest: true,
    source: 'practice',
    at: 'boards adhered to concrete',
    grade: 'practice',
  },
  {
    deck: 'gypsum',
    hold: 'adhesive',
    engagementIn: 1.25,
    throughPanel: false,
    pullTest: true,
    source: 'practice',
    at: 'boards adhered to poured gypsum',
    grade: 'practice',
  },
  {
    deck: 'cement-fiber',
    hold: 'adhesive',
    engagementIn: 1.25,
    throughPanel: false,
    pullTest: true,
    source: 'practice',
    at: 'boards adhered to cement fiber planks',
    grade: 'practice',
  },
  {
    deck: 'lightweight-concrete',
    hold: 'adhesive',
    engagementIn: 1.25,
    throughPanel: false,
    pullTest: true,
    source: 'practice',
    at: 'boards adhered to lightweight concrete',
    grade: 'practice',
  },
] as const satisfies readonly DeckHold[];

/** Screws in half inches up to 8 in, then whole inches. */
export const screwStock = {
  stepIn: 0.5,
  upToIn: 8,
  beyondStepIn: 1,
  packCount: 50,
  allowance: 0.05,
  source: 'practice',
  at: 'stock lengths of insulation screws',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/** Screws for one 4 x 8 ft board, kept as a density on other sizes; the uplift calculation of the job governs. */
export const boardDensity = {
  boardSqFt: 32,
  field: 8,
  perimeter: 12,
  corner: 16,
  leastOnWhole: 4,
  leastOnCut: 2,
  cutUnderSqFt: 4,
  source: 'practice',
  at: 'insulation fasteners for a 4 x 8 board: 8 field, 12 perimeter, 16 corner',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

export interface EdgeIncrease extends Cited {
  edition: '2003' | '2006';
  perimeterFactor: number;
  cornerFactor: number;
  /** At most this much area for one screw; null = no such rule in that edition. */
  perimeterSqFt: number | null;
  cornerSqFt: number | null;
}

/** More screws near the edge than in the field, where a loss-prevention rule is followed. ASCE 7 zones replace it for code work. */
export const edgeIncreases = [
  {
    edition: '2003',
    perimeterFactor: 1.5,
    cornerFactor: 1.75,
    perimeterSqFt: null,
    cornerSqFt: null,
    source: 'edge-fastening-2006',
    at: '2003 edition',
    grade: 'found',
  },
  {
    edition: '2006',
    perimeterFactor: 1.5,
    cornerFactor: 2,
    perimeterSqFt: 2,
    cornerSqFt: 1,
    source: 'edge-fastening-2006',
    at: '2006 edition',
    grade: 'found',
  },
] as const satisfies readonly EdgeIncrease[];

/** Width of the windy band along the edges, as a share of the roof height. The corner is its square. */
export const edgeBand = {
  ofHeight: 0.6,
  source: 'memory',
  at: 'ASCE 7-16 low-slope zones, band 0.6 h',
  grade: 'memory',
} as const satisfies Cited & Record<string, unknown>;

/** Plates in the seams of a mechanically attached sheet. */
export const seamPlates = {
  lapIn: 6,
  spacingIn: 12,
  closeSpacingIn: 6,
  source: 'practice',
  at: 'in-seam plates 6 or 12 in on centre, laps 5 to 6 in',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/** Nails of a sheet nailed to wood: along the lap and in two rows between. */
export const sheetNails = {
  lapSpacingIn: 9,
  rowSpacingIn: 18,
  rows: 2,
  source: 'practice',
  at: 'laps 9 in and two rows 18 in on centre',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;
