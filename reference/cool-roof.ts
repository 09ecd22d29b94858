import type { Cited } from './sources.ts';

/** A rule for cool low-slope roofs: by aged reflectance with emittance, or by aged SRI. */
export interface CoolRoofRequirement extends Cited {
  id: string;
  title: string;
  /** Whom it binds. */
  kind: 'commercial' | 'residential';
  state: 'CA' | null;
  /** Zones of the model code, or of California where `state` says so; null = all. */
  zones: readonly string[] | null;
  /** Slope under which it holds, in per ft; null = it does not say. */
  underInPerFt: number | null;
  agedReflectance: number;
  emittance: number;
  agedSri: number;
}

const pair = { agedReflectance: 0.55, emittance: 0.75, agedSri: 64 } as const;
const california = { agedReflectance: 0.63, emittance: 0.75, agedSri: 75 } as const;

/**
 * Cool-roof minimums for low slopes. The two routes of a rule are not equal: 0.55 with 0.75 is SRI 60.4 only, and passes.
 * Zone 0 in the model codes of 2021 is from memory. The exceptions (under solar panels, planting, walkways, ballast, shade at
 * midsummer) are from memory too and are said in words. California's sixteen zones are not those of the model code.
 */
export const coolRoofRequirements = [
  {
    id: 'iecc-c402-3',
    title: 'Model energy code, commercial',
    kind: 'commercial',
    state: null,
    zones: ['0', '1', '2', '3'],
    underInPerFt: 2,
    ...pair,
    source: 'iecc-c402-3',
    at: 'Table C402.3',
    grade: 'found',
  },
  {
    id: 'ashrae-90-1-cool',
    title: 'ASHRAE 90.1',
    kind: 'commercial',
    state: null,
    zones: ['0', '1', '2', '3'],
    underInPerFt: 2,
    ...pair,
    source: 'ashrae-90-1',
    at: '5.5.3.1.1',
    grade: 'found',
  },
  {
    id: 'california-nonresidential',
    title: 'California, nonresidential',
    kind: 'commercial',
    state: 'CA',
    zones: null,
    underInPerFt: 2,
    ...california,
    source: 'ca-title-24',
    at: 'low slope, 2013 to 2022',
    grade: 'found',
  },
  {
    id: 'california-residential-2022',
    title: 'California, homes, re-roof of a low slope',
    kind: 'residential',
    state: 'CA',
    zones: ['4', '6', '7', '8', '9', '10', '11', '12', '13', '14', '15'],
    underInPerFt: 2,
    ...california,
    source: 'california-2022',
    at: 'low-slope alterations, climate zones 4 and 6 to 15',
    grade: 'found',
  },
] as const satisfies readonly CoolRoofRequirement[];

/** Insulation above the deck that California asks of a low-slope re-roof of a home. */
export const californiaAboveDeck = {
  r: 14,
  zones: ['1', '2', '4', '8', '9', '10', '11', '12', '13', '14', '15', '16'],
  /** Not where so much continuous insulation is there already. */
  exceptR: 10,
  source: 'california-2022',
  at: 'low-slope alterations, R-14 above the deck in climate zones 1, 2, 4 and 8 to 16',
  grade: 'found',
} as const satisfies Cited & Record<string, unknown>;

/** California asks for insulation in nonresidential re-roofs too; no value of it is held, so nothing is judged by it. */
export const californiaNotHeld = {
  source: 'ca-title-24',
  at: 'nonresidential alterations, insulation of the roof: no value is held here',
  grade: 'memory',
} as const satisfies Cited & Record<string, unknown>;

/** From how much of a roof on California's rules bind a re-roof or a new coat. */
export const californiaTrigger = {
  share: 0.5,
  residentialSqFt: 1000,
  nonresidentialSqFt: 2000,
  source: 'ca-title-24',
  at: 'alterations: half of the roof, or so much area',
  grade: 'found',
} as const satisfies Cited & Record<string, unknown>;
