import type { Cited } from './sources.ts';

export interface InsulationBasis extends Cited {
  id: 'label' | 'service-warm' | 'service-cold';
  name: string;
  /** null = by the thickness of every layer (`labelRFit`). */
  rPerIn: number | null;
}

/**
 * R of polyisocyanurate board on three bases. The label value is what codes take, an estimate over 15 years; trade advice
 * for design in service is lower, and lowest in cold. All three are shown because they lead to different thicknesses.
 */
export const insulationBases = [
  {
    id: 'label',
    name: 'label value, by the thickness of the layers',
    rPerIn: null,
    source: 'practice',
    at: 'programme values, ASTM C1289-13',
    grade: 'practice',
  },
  {
    id: 'service-warm',
    name: 'in service, cooling: R-5.6 per in',
    rPerIn: 5.6,
    source: 'practice',
    at: 'trade association advice',
    grade: 'practice',
  },
  {
    id: 'service-cold',
    name: 'in service, heating: R-5 per in',
    rPerIn: 5,
    source: 'practice',
    at: 'trade association advice',
    grade: 'practice',
  },
] as const satisfies readonly InsulationBasis[];

/**
 * Label R of one board by its thickness: R = a t + b t^2 fitted to the programme values since 2014 (5.6, 11.4, 17.4 and
 * 23.6 at 1, 2, 3 and 4 in). Another page prints 5.7 at 1 in.
 */
export const labelRFit = {
  perIn: 5.5,
  perIn2: 0.1,
  source: 'practice',
  at: 'programme values, ASTM C1289-13',
  grade: 'practice',
} as const;

/** Films inside and outside plus deck, h ft2 F/Btu: 0.61 inside (heat up) and 0.17 outside. */
export const filmsR = {
  value: 0.78,
  source: 'memory',
  at: 'handbook surface films 0.61 + 0.17',
  grade: 'memory',
} as const;

export const coverBoard = {
  name: 'high-density cover board, 1/2 in',
  thicknessIn: 0.5,
  r: 2.5,
  psf: 0.5,
  source: 'memory',
  at: 'high-density board, ASTM C1289 Type II Class 4',
  grade: 'memory',
} as const;

/** Weight of insulation board with its facers, psf per inch. */
export const insulationPsfPerIn = {
  value: 0.2,
  source: 'practice',
  at: '2 pcf core and facers',
  grade: 'practice',
} as const;
