import type { Cited } from './sources.ts';

/** A value of an energy code for climate zones; "4C" stands before "4". */
export interface ZoneRow extends Cited {
  zones: readonly string[];
  value: number;
}

export interface ZoneTable {
  id: string;
  title: string;
  rows: readonly ZoneRow[];
}

const ceiling = (edition: string) =>
  ({ source: 'iecc-ceilings', at: `ceiling R, ${edition} edition`, grade: 'found' }) as const;
const remembered = (source: 'iecc-residential' | 'iecc-commercial' | 'ashrae-90-1', at: string) =>
  ({ source, at, grade: 'memory' }) as const;

/**
 * Least R of a residential ceiling, prescriptive. Editions disagree by up to R-22 in one zone, and adoption differs from
 * town to town. A part of the 2024 column was seen on secondary pages only and stands as memory.
 */
export const residentialR = {
  '2018': {
    id: 'iecc-r-2018',
    title: 'residential ceiling, IECC 2018',
    rows: [
      { zones: ['1'], value: 30, ...ceiling('2018') },
      { zones: ['2', '3'], value: 38, ...ceiling('2018') },
      { zones: ['4', '4C', '5', '6', '7', '8'], value: 49, ...ceiling('2018') },
    ],
  },
  '2021': {
    id: 'iecc-r-2021',
    title: 'residential ceiling, IECC 2021',
    rows: [
      { zones: ['1'], value: 30, ...ceiling('2021') },
      { zones: ['2', '3'], value: 49, ...ceiling('2021') },
      { zones: ['4', '4C', '5', '6', '7', '8'], value: 60, ...ceiling('2021') },
    ],
  },
  '2024': {
    id: 'iecc-r-2024',
    title: 'residential ceiling, IECC 2024',
    rows: [
      { zones: ['1'], value: 30, ...remembered('iecc-residential', '2024 ceiling R') },
      { zones: ['2', '3'], value: 38, ...remembered('iecc-residential', '2024 ceiling R') },
      { zones: ['4', '4C', '5', '6', '7', '8'], value: 49, ...remembered('iecc-residential', '2024 ceiling R') },
    ],
  },
} as const satisfies Record<string, ZoneTable>;

/** Least continuous R of a commercial roof with its insulation above the deck, all other occupancies. From memory. */
export const commercialR = {
  '2018': {
    id: 'iecc-c-2018',
    title: 'commercial roof, IECC 2018',
    rows: [
      { zones: ['0', '1'], value: 20, ...remembered('iecc-commercial', '2018 Table C402.1.3') },
      { zones: ['2', '3'], value: 25, ...remembered('iecc-commercial', '2018 Table C402.1.3') },
      { zones: ['4', '4C', '5', '6'], value: 30, ...remembered('iecc-commercial', '2018 Table C402.1.3') },
      { zones: ['7', '8'], value: 35, ...remembered('iecc-commercial', '2018 Table C402.1.3') },
    ],
  },
  '2021': {
    id: 'iecc-c-2021',
    title: 'commercial roof, IECC 2021',
    rows: [
      { zones: ['0', '1', '2', '3'], value: 25, ...remembered('iecc-commercial', '2021 Table C402.1.3') },
      { zones: ['4', '4C', '5', '6'], value: 30, ...remembered('iecc-commercial', '2021 Table C402.1.3') },
      { zones: ['7', '8'], value: 35, ...remembered('iecc-commercial', '2021 Table C402.1.3') },
    ],
  },
} as const satisfies Record<string, ZoneTable>;

/** The same by ASHRAE 90.1-2019, read in a public copy of its tables; a commercial job may be held to it instead. */
const table901 = {
  source: 'ashrae-90-1',
  at: 'nonresidential, insulation entirely above deck',
  grade: 'found',
} as const;
export const ashrae901R: ZoneTable = {
  id: 'ashrae-90-1-2019-r',
  title: 'commercial roof, ASHRAE 90.1-2019',
  rows: [
    { zones: ['0'], value: 25, ...table901 },
    { zones: ['1'], value: 20, ...table901 },
    { zones: ['2', '3'], value: 25, ...table901 },
    { zones: ['4', '4C', '5', '6'], value: 30, ...table901 },
    { zones: ['7', '8'], value: 35, ...table901 },
  ],
};

/** IECC 2009, still in force here and there. */
const table2009 = { source: 'iecc-2009-commercial', at: 'Table 502.2(1)', grade: 'found' } as const;
export const commercialR2009: ZoneTable = {
  id: 'iecc-c-2009',
  title: 'commercial roof, IECC 2009',
  rows: [
    { zones: ['1'], value: 15, ...table2009 },
    { zones: ['2', '3', '4', '4C', '5', '6'], value: 20, ...table2009 },
    { zones: ['7', '8'], value: 25, ...table2009 },
  ],
};

/** U that stands for a ceiling R in the same editions; insulation above the deck has no joists in it and gains by it. */
export const ceilingU = [
  { r: 49, u: 0.026, source: 'iecc-residential', at: 'U-factor alternative to R-49', grade: 'memory' },
  { r: 60, u: 0.024, source: 'iecc-residential', at: 'U-factor alternative to R-60, 2021', grade: 'memory' },
] as const satisfies readonly (Cited & { r: number; u: number })[];

/**
 * Wood between insulation that lies in joist spaces: heat takes both ways side by side. The width is that of dressed lumber;
 * the spacing is the usual one, taken where none is known.
 */
export const joistFraming = {
  widthIn: 1.5,
  usualSpacingIn: 16,
  woodRPerIn: 1.25,
  source: 'ca-title-24',
  at: 'Joint Appendix JA4, Table 4.5.2: softwood, 4 in, R-5.00; width and spacing common practice',
  grade: 'found',
} as const satisfies Cited & Record<string, unknown>;

/** Group R (dwellings of commercial buildings) in zone 1 asks more than the rest. */
export const groupRZone1 = {
  r: 25,
  source: 'iecc-commercial',
  at: '2018 Table C402.1.3, Group R',
  grade: 'memory',
} as const satisfies Cited & Record<string, unknown>;

/** Residential re-roofs that the code lets off: covering alone, or joist spaces that are full. */
export const residentialRelief = {
  source: 'iecc-residential',
  at: 'R503.1.1; earlier R101.4.3',
  grade: 'memory',
} as const satisfies Cited;

/**
 * Greatest U of a commercial roof with its insulation above the deck. Zones 0 and 5 were read in a public copy of the tables,
 * the others are from memory. All equal 1 / (R + 0.78) to three digits; 0.032 as printed needs R 30.5, not R 30.
 */
export const commercialU: ZoneTable = {
  id: 'ashrae-90-1-2019',
  title: 'commercial roof, ASHRAE 90.1-2019',
  rows: [
    { zones: ['0'], value: 0.048, source: 'ashrae-90-1', at: 'zone 0, nonresidential', grade: 'found' },
    { zones: ['1'], value: 0.048, ...remembered('ashrae-90-1', 'zone 1, nonresidential') },
    { zones: ['2', '3'], value: 0.039, ...remembered('ashrae-90-1', 'zones 2 and 3, nonresidential') },
    { zones: ['4', '4C'], value: 0.032, ...remembered('ashrae-90-1', 'zone 4, nonresidential') },
    { zones: ['5'], value: 0.032, source: 'ashrae-90-1', at: 'zone 5, nonresidential', grade: 'found' },
    { zones: ['6'], value: 0.032, ...remembered('ashrae-90-1', 'zone 6, nonresidential') },
    { zones: ['7', '8'], value: 0.028, ...remembered('ashrae-90-1', 'zones 7 and 8, nonresidential') },
  ],
};

/**
 * Least R of rigid insulation above the deck where air-permeable insulation lies under it in an unvented roof. Two public
 * summaries print rows shifted by one zone (5 = R-15); those are wrong against the published cases.
 */
const r806 = { source: 'irc-r806-5', at: 'Table R806.5', grade: 'found' } as const;
export const foamForCondensation: ZoneTable = {
  id: 'irc-r806-5',
  title: 'foam above the deck against condensation, IRC R806.5',
  rows: [
    { zones: ['1', '2', '3'], value: 5, ...r806 },
    { zones: ['4C'], value: 10, ...r806 },
    { zones: ['4'], value: 15, ...r806 },
    { zones: ['5'], value: 20, ...r806 },
    { zones: ['6'], value: 25, ...r806 },
    { zones: ['7'], value: 30, ...r806 },
    { zones: ['8'], value: 35, ...r806 },
  ],
};

/**
 * Two readings of the energy code for insulation that tapers; they disagree, and the building office decides.
 * One-inch: the R may be met with the thickness varying by up to 1 in from the least. Some offices forbid any averaging
 * beyond that; with averaging, half to two thirds of a roof can lie below the average. Average U: the U is averaged by
 * area, in some states by their own table only, with the square at each drain left out and R-13 there.
 */
export const oneInchRule = {
  riseIn: 1,
  source: 'iecc-502-taper',
  at: '502.2.1 exception (2006, 2009); the same words in C402.2 later',
  grade: 'found',
} as const satisfies Cited & { riseIn: number };

export const averageURule = {
  source: 'state-energy-taper',
  at: 'area-weighted U of tapered insulation',
  grade: 'found',
} as const satisfies Cited;

/** Least thickness of insulation at the lowest point (gutter edge, drain, scupper); commercial. */
export const leastAtLowPoint = {
  thicknessIn: 1,
  source: 'state-energy-replacement',
  at: 'C402.2.1.1; the same in the model code of 2018, from memory',
  grade: 'found',
} as const satisfies Cited & { thicknessIn: number };

/** What a re-roof may ask for where equipment, low doors or glazing, parapets or flashing heights limit the thickness. */
export const reRoofRelief = {
  source: 'minn-1323',
  at: '1323.0402, roof replacement',
  grade: 'found',
} as const satisfies Cited;

/** When a re-roof must meet the tables at all. */
export const replacementRule = {
  source: 'iecc-c503',
  at: 'C503.3.1, 2015 edition on',
  grade: 'found',
} as const satisfies Cited;

/** Ceilings without an attic may drop to this R over this area, or so much of all ceilings if that is less. */
export const smallCeiling = {
  r: 30,
  areaSqFt: 500,
  share: 0.2,
  source: 'iecc-residential',
  at: 'R402.2.2, ceilings without attics',
  grade: 'memory',
} as const satisfies Cited & Record<string, unknown>;
