import { foamForCondensation, type ZoneRow } from '../../../reference/energy.ts';
import { filmsR } from '../../../reference/insulation.ts';
import { condensingPlane } from '../../../reference/vapor.ts';
import { rowForZone } from '../layout/energy-target.ts';

/** Outside film of the sum in `filmsR`, h ft2 F/Btu. */
const OUTSIDE_FILM_R = 0.17;

/**
 * Share of all R that must lie above the deck, so that its underside keeps 45 F in the mean of the three coldest months with
 * 68 F indoors; films not counted. 0 = the place asks for none. Correctness: tests/published/moisture-vapor.test.ts, 28
 * @param coldF mean outdoor air of the three coldest months
 */
export function shareAbove(coldF: number): number {
  const { leastF, roomF } = condensingPlane;
  return coldF >= leastF ? 0 : (leastF - coldF) / (roomF - coldF);
}

/** R above the deck that the share asks for over what lies below; films not counted. */
export function rAboveFor(coldF: number, belowR: number): number {
  const share = shareAbove(coldF);
  return (belowR * share) / (1 - share);
}

export interface PlaneInput {
  aboveR: number;
  belowR: number;
  outdoorF: number;
  indoorF: number;
}

/**
 * Temperature of the underside of the deck, F: the room less what the R on the room side takes off, with films of
 * and. Correctness: tests/published/moisture-vapor.test.ts, 29
 */
export function deckPlaneF({ aboveR, belowR, outdoorF, indoorF }: PlaneInput): number {
  const insideR = belowR + filmsR.value - OUTSIDE_FILM_R;
  const totalR = insideR + aboveR + OUTSIDE_FILM_R;
  return indoorF - ((indoorF - outdoorF) * insideR) / totalR;
}

/** Least R of foam above the deck by the code's table; null where the zone is not known. */
export const tableFoam = (climateZone: string | null): ZoneRow | null => rowForZone(foamForCondensation, climateZone);
