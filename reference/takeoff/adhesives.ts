import type { MembraneId } from '../membranes/options.ts';
import type { Cited } from '../sources.ts';

/** Finished area of one gallon with both faces coated. A county specification holds 100 sq ft, trade ones 60. */
export const contactAdhesive = {
  sqFtPerGal: 60,
  thinnerSqFtPerGal: 100,
  pailGal: 5,
  source: 'practice',
  at: 'bonding adhesive, both faces',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/** Asphalt primer under self-adhered sheet. */
export const asphaltPrimer = {
  galPerSq: 0.75,
  pailGal: 5,
  source: 'ufgs-07550',
  at: 'primer',
  grade: 'found',
} as const satisfies Cited & Record<string, unknown>;

/** Cold adhesive, one ply: by product and by how rough the board is. */
export const coldAdhesive = {
  galPerSq: 2,
  mostGalPerSq: 2.5,
  pailGal: 5,
  source: 'practice',
  at: 'cold adhesive 1.5 to 2.5 gal per square and ply',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/** EPDM splice: 3 in tape and primer on both faces. */
export const seamTape = {
  rollFt: 100,
  primerGalPer100Ft: 0.25,
  source: 'practice',
  at: '3 in tape splice',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/** Cartridge and the usual bead diameters of the sealants. */
export const sealant = {
  cartridgeOz: 10.1,
  cutEdgeIn: 0.125,
  lapIn: 0.3125,
  waterBlockIn: 0.4375,
  tubesPerPipe: 0.1,
  source: 'practice',
  at: 'bead sizes',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/**
 * Low-rise foam in ribbons, one application for every interface of the stack. The cartridge is 1,500 mL, two-part,
 * and covers 200 to 250 sq ft at 12 in; the lower figure is held.
 */
export const foamRibbons = {
  fieldIn: 12,
  perimeterIn: 6,
  cornerIn: 4,
  cartridgeFt: 200,
  allowance: 0.1,
  source: 'practice',
  at: 'ribbon spacing and coverage of a 1,500 mL cartridge',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

export interface LiquidCoat extends Cited {
  membrane: MembraneId;
  /** Film when dry, all coats together. */
  dryMil: number;
  /** Volume that stays in the film. */
  solids: number;
  /** Extra fleece for its laps; null = no fleece over the field. */
  fleeceLaps: number | null;
}

/** Liquids by the film they leave. Resin that cures whole has solids 1. */
export const liquidCoats = [
  {
    membrane: 'pmma',
    dryMil: 100,
    solids: 1,
    fleeceLaps: 0.1,
    source: 'memory',
    at: 'reinforced film of 80 to 120 mil',
    grade: 'memory',
  },
  {
    membrane: 'silicone',
    dryMil: 30,
    solids: 0.95,
    fleeceLaps: null,
    source: 'practice',
    at: 'coating 20 to 30 mil dry',
    grade: 'practice',
  },
  {
    membrane: 'acrylic',
    dryMil: 30,
    solids: 0.55,
    fleeceLaps: null,
    source: 'practice',
    at: 'coating 20 to 30 mil dry',
    grade: 'practice',
  },
] as const satisfies readonly LiquidCoat[];

/** Built-up roof: four shingled felts in hot asphalt, flood coat and gravel. */
export const builtUp = {
  plies: 4,
  feltWidthIn: 36,
  feltRollFt: 144,
  feltLapIn: 2,
  asphaltLbPerSqPly: 25,
  floodLbPerSq: 60,
  gravelLbPerSq: 400,
  kegLb: 100,
  source: 'memory',
  at: 'four plies of felt with flood coat and gravel',
  grade: 'memory',
} as const satisfies Cited & Record<string, unknown>;
