import type { Cited } from './sources.ts';

/**
 * Share of the daily range by which the air stays under its design temperature, clock hours 0 to 23 of standard time.
 * Handbook of 2009 and later; the table of 2005 differs by up to 0.18 in the forenoon.
 */
export const designDayFractions = {
  shares: [
    0.82, 0.88, 0.92, 0.95, 0.98, 1, 0.98, 0.91, 0.74, 0.55, 0.38, 0.23, 0.13, 0.05, 0, 0, 0.06, 0.14, 0.24, 0.39, 0.5,
    0.59, 0.68, 0.75,
  ],
  source: 'ashrae-sky-2009',
  at: 'shares of the daily range',
  grade: 'found',
} as const satisfies Cited & { shares: readonly number[] };

/** Day of the year on which the sun stands as on the design day: 21 July and 21 January. */
export const designDays = { hot: 202, cold: 21 } as const;

export interface FilmRow extends Cited {
  heatGoes: 'down' | 'up';
  wPerM2K: number;
}

/** Inside surface films of a level surface: with heat going down, R-0.61 with heat going up. */
export const insideFilms = [
  { heatGoes: 'down', wPerM2K: 6.13, source: 'air-film-table', at: 'horizontal, heat flow down', grade: 'found' },
  { heatGoes: 'up', wPerM2K: 9.26, source: 'air-film-table', at: 'horizontal, heat flow up', grade: 'found' },
] as const satisfies readonly FilmRow[];

/** Room air: what a cooling and a heating system usually hold. */
export const roomAir = {
  summerF: 75,
  winterF: 70,
  source: 'practice',
  at: 'room air for design',
  grade: 'practice',
} as const satisfies Cited & Record<string, unknown>;

/**
 * Film of the sol-air temperature, light and dark alike, and what a level roof loses to the sky in it. Secondary and from
 * memory: used to start the calculation and for the hand check, never for a result.
 */
export const solAirFilm = {
  wPerM2K: 17,
  skyLossK: 3.9,
  source: 'sol-air-note',
  at: '3.0 Btu/(h ft2 F); 7 F off on roofs',
  grade: 'memory',
} as const satisfies Cited & Record<string, unknown>;

/** Thermal emittance of the clear sky from the dew point: a + b ln(Tdp / 273.15 K). */
export const clearSkyEmittance = {
  a: 0.787,
  b: 0.764,
  source: 'clark-allen-1978',
  at: 'clear sky',
  grade: 'found',
} as const satisfies Cited & Record<string, unknown>;
