import type { Cited } from './sources.ts';

/** What heat does in a material. */
export interface ThermalMaterial extends Cited {
  id: string;
  name: string;
  kWPerMK: number;
  densityKgPerM3: number;
  heatJPerKgK: number;
}

/**
 * Properties of what a roof is made of. Conductivity of the foam, the cover board and unknown old boards is not here: it
 * follows from their R per inch. Rows `memory` matter little where foam lies above them, and more on a bare deck.
 */
export const thermalMaterials = [
  {
    id: 'plywood',
    name: 'plywood',
    kWPerMK: 0.12,
    densityKgPerM3: 544,
    heatJPerKgK: 1210,
    source: 'ashrae-hof-2005',
    at: 'plywood, 16 mm',
    grade: 'found',
  },
  {
    id: 'osb',
    name: 'OSB',
    kWPerMK: 0.13,
    densityKgPerM3: 650,
    heatJPerKgK: 1880,
    source: 'memory',
    at: 'oriented strand board',
    grade: 'memory',
  },
  {
    id: 'plank',
    name: 'softwood plank',
    kWPerMK: 0.12,
    densityKgPerM3: 450,
    heatJPerKgK: 1630,
    source: 'memory',
    at: 'softwood decking',
    grade: 'memory',
  },
  {
    id: 'steel',
    name: 'steel',
    kWPerMK: 45,
    densityKgPerM3: 7800,
    heatJPerKgK: 500,
    source: 'memory',
    at: 'carbon steel',
    grade: 'memory',
  },
  {
    id: 'concrete',
    name: 'concrete',
    kWPerMK: 1.95,
    densityKgPerM3: 2240,
    heatJPerKgK: 900,
    source: 'ashrae-hof-2005',
    at: 'structural concrete, 140 pcf',
    grade: 'found',
  },
  {
    id: 'lightweight-concrete',
    name: 'lightweight concrete',
    kWPerMK: 0.35,
    densityKgPerM3: 800,
    heatJPerKgK: 900,
    source: 'memory',
    at: 'insulating fill, 50 pcf',
    grade: 'memory',
  },
  {
    id: 'gypsum',
    name: 'gypsum board',
    kWPerMK: 0.16,
    densityKgPerM3: 800,
    heatJPerKgK: 1090,
    source: 'ashrae-hof-2005',
    at: 'gypsum board',
    grade: 'found',
  },
  {
    id: 'cement-fiber',
    name: 'cement-fiber plank',
    kWPerMK: 0.08,
    densityKgPerM3: 450,
    heatJPerKgK: 1300,
    source: 'memory',
    at: 'wood wool in cement',
    grade: 'memory',
  },
  {
    id: 'bitumen',
    name: 'bituminous covering',
    kWPerMK: 0.16,
    densityKgPerM3: 1120,
    heatJPerKgK: 1460,
    source: 'ashrae-hof-2005',
    at: 'built-up roofing, 9.5 mm',
    grade: 'found',
  },
  {
    id: 'sheet',
    name: 'single-ply sheet',
    kWPerMK: 0.19,
    densityKgPerM3: 1250,
    heatJPerKgK: 1800,
    source: 'memory',
    at: 'plastic or rubber sheet, 60 mil',
    grade: 'memory',
  },
] as const satisfies readonly ThermalMaterial[];

export type MaterialId = (typeof thermalMaterials)[number]['id'];

/** Foam and old boards for the summer: R per inch comes with the basis, weight and heat from here. */
export const foamStock = {
  densityKgPerM3: 32,
  heatJPerKgK: 1470,
  source: 'ashrae-hof-2005',
  at: 'polyisocyanurate board, 2 pcf',
  grade: 'found',
} as const satisfies Cited & Record<string, unknown>;

/**
 * What an old build-up holds beside its covering where nobody cut a core: boards of perlite or wood fiber, R-2.78 per inch,
 * stand between nothing at all and foam.
 */
export const oldBoards = {
  rPerIn: 2.78,
  densityKgPerM3: 160,
  heatJPerKgK: 1260,
  source: 'ashrae-hof-2005',
  at: 'perlite board; its density from memory',
  grade: 'found',
} as const satisfies Cited & Record<string, unknown>;

/** Air between a deck and the ceiling under it, heat going down, and the ceiling itself. */
export const ceilingUnderDeck = {
  airR: 0.9,
  boardIn: 0.5,
  source: 'memory',
  at: 'plain air space of 3 1/2 in or more, heat flow down',
  grade: 'memory',
} as const satisfies Cited & Record<string, unknown>;

export interface OldSurface extends Cited {
  covering: string;
  reflectance: number;
  /** In which age and color put it. */
  range: readonly [number, number];
  emittance: number;
  /** Of one layer. */
  thicknessIn: number;
  material: MaterialId;
}

/**
 * Old coverings whose color nobody told: a middle value, and the range in which it may lie. A granule surface goes from
 * dark to white, which is why its range is wide. Thicknesses of one layer are common practice.
 */
export const oldSurfaces = [
  {
    covering: 'sbs-granule',
    reflectance: 0.22,
    range: [0.08, 0.3],
    emittance: 0.91,
    thicknessIn: 0.3,
    material: 'bitumen',
    source: 'lbnl-materials',
    at: 'grey granules (grey shingle)',
    grade: 'found',
  },
  {
    covering: 'app',
    reflectance: 0.22,
    range: [0.06, 0.28],
    emittance: 0.91,
    thicknessIn: 0.3,
    material: 'bitumen',
    source: 'lbnl-materials',
    at: 'grey granules; smooth sheet as low as .06',
    grade: 'found',
  },
  {
    covering: 'roll-roofing',
    reflectance: 0.22,
    range: [0.08, 0.28],
    emittance: 0.91,
    thicknessIn: 0.12,
    material: 'bitumen',
    source: 'lbnl-materials',
    at: 'grey granules (grey shingle)',
    grade: 'found',
  },
  {
    covering: 'bur-gravel',
    reflectance: 0.23,
    range: [0.12, 0.34],
    emittance: 0.9,
    thicknessIn: 0.75,
    material: 'bitumen',
    source: 'practice',
    at: 'gravel, dark to light',
    grade: 'practice',
  },
  {
    covering: 'bur-smooth',
    reflectance: 0.08,
    range: [0.05, 0.12],
    emittance: 0.9,
    thicknessIn: 0.375,
    material: 'bitumen',
    source: 'practice',
    at: 'bare asphalt',
    grade: 'practice',
  },
  {
    covering: 'tpo',
    reflectance: 0.62,
    range: [0.55, 0.7],
    emittance: 0.86,
    thicknessIn: 0.06,
    material: 'sheet',
    source: 'practice',
    at: 'white single-ply, aged',
    grade: 'practice',
  },
  {
    covering: 'pvc',
    reflectance: 0.62,
    range: [0.55, 0.7],
    emittance: 0.86,
    thicknessIn: 0.06,
    material: 'sheet',
    source: 'practice',
    at: 'white single-ply, aged',
    grade: 'practice',
  },
  {
    covering: 'epdm',
    reflectance: 0.06,
    range: [0.06, 0.1],
    emittance: 0.86,
    thicknessIn: 0.06,
    material: 'sheet',
    source: 'lbnl-materials',
    at: 'black EPDM',
    grade: 'found',
  },
  {
    covering: 'coating',
    reflectance: 0.59,
    range: [0.5, 0.7],
    emittance: 0.88,
    thicknessIn: 0.3,
    material: 'bitumen',
    source: 'ca-title-24',
    at: 'white coating of .80, aged',
    grade: 'computed',
  },
  {
    covering: 'spray-foam',
    reflectance: 0.59,
    range: [0.5, 0.7],
    emittance: 0.88,
    thicknessIn: 0.03,
    material: 'sheet',
    source: 'ca-title-24',
    at: 'white coating of .80, aged',
    grade: 'computed',
  },
  {
    covering: 'metal',
    reflectance: 0.3,
    range: [0.1, 0.6],
    emittance: 0.85,
    thicknessIn: 0.03,
    material: 'steel',
    source: 'memory',
    at: 'painted metal of middle color',
    grade: 'memory',
  },
  {
    covering: 'other',
    reflectance: 0.22,
    range: [0.06, 0.6],
    emittance: 0.91,
    thicknessIn: 0.3,
    material: 'bitumen',
    source: 'practice',
    at: 'taken as grey granules',
    grade: 'practice',
  },
] as const satisfies readonly OldSurface[];

/** Thickness of a new covering, in; sheets that are welded, glued or rolled in two plies against one layer of sheet. */
export const newCoveringIn = {
  asphaltic: 0.3,
  sheet: 0.06,
  source: 'practice',
  at: 'two plies of modified bitumen; 60-mil sheet',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;
