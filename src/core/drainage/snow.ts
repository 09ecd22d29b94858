import {
  flatRoofSnow,
  rainOnSnow,
  slidingSnow,
  snowDensity,
  snowDrift,
  windwardDrift,
} from '../../../reference/snow.ts';

/** Even snow on a flat roof [psf] from the ground snow load [psf], all factors 1. Correctness: tests/published/snow.test.ts */
export const flatRoofSnowPsf = (groundPsf: number): number => flatRoofSnow.value * groundPsf;

/** Density of snow [pcf]. Correctness: tests/published/snow.test.ts */
export const snowDensityPcf = (groundPsf: number): number =>
  Math.min(snowDensity.mostPcf, snowDensity.perPsf * groundPsf + snowDensity.basePcf);

/**
 * Height [ft] of a drift that wind from over a roof of the length lu builds behind a step.
 * @param fetchFt lu [ft]; short roofs count as 20 ft
 * Source: ASCE 7-16, 7.7.1. Correctness: tests/published/snow.test.ts
 */
export function driftHeightFt(fetchFt: number, groundPsf: number): number {
  const lu = Math.max(windwardDrift.leastFetchFt, fetchFt);
  const heightFt = snowDrift.factor * Math.cbrt(lu) * (groundPsf + snowDrift.plusPsf) ** (1 / 4) - snowDrift.lessFt;
  return Math.max(0, heightFt);
}

export interface DriftInput {
  groundPsf: number;
  /** Height of the wall or step above the roof; null = not known, taken as high enough. */
  wallFt: number | null;
  /** Length of this roof, from which wind blows snow against the wall. */
  ownFetchFt: number;
  /** Length of the roof on top of the wall, from which snow blows down; null = none or not known. */
  upperFetchFt: number | null;
}

/**
 * Drift at the foot of a wall [psf, over the even snow] and its width [ft]; 0 where the wall is hardly higher than the even snow.
 * For telling whether an engineer is needed, not for a design. Source: ASCE 7-16, 7.7. Correctness: tests/published/snow.test.ts
 */
export function driftAtWall({ groundPsf, wallFt, ownFetchFt, upperFetchFt }: DriftInput): {
  psf: number;
  widthFt: number;
} {
  const density = snowDensityPcf(groundPsf);
  const evenFt = flatRoofSnowPsf(groundPsf) / density;
  const roomFt = wallFt === null ? Number.POSITIVE_INFINITY : wallFt - evenFt;
  if (roomFt < windwardDrift.leastRoom * evenFt) return { psf: 0, widthFt: 0 };
  const windward = windwardDrift.share * driftHeightFt(ownFetchFt, groundPsf);
  const leeward = upperFetchFt === null ? 0 : driftHeightFt(upperFetchFt, groundPsf);
  const heightFt = Math.min(Math.max(windward, leeward), roomFt);
  return { psf: density * heightFt, widthFt: 4 * heightFt };
}

/** Snow that slides from a steep roof onto 15 ft of the lower one [psf]. Source: ASCE 7-16, 7.9, from memory. */
export const slidePsf = (groundPsf: number, eaveToRidgeFt: number): number =>
  (slidingSnow.share * flatRoofSnowPsf(groundPsf) * eaveToRidgeFt) / slidingSnow.widthFt;

/**
 * Rain that a snow pack holds [psf]: 5 where the ground snow load is 20 psf or less and the roof is flat for its length.
 * Source: ASCE 7-16, 7.10, from memory. Correctness: tests/unit/drainage/snow.test.ts
 */
export function rainOnSnowPsf(groundPsf: number, slopeInPerFt: number, lengthFt: number): number {
  if (groundPsf <= 0 || groundPsf > rainOnSnow.upToGroundPsf) return 0;
  const degrees = (Math.atan(slopeInPerFt / 12) * 180) / Math.PI;
  return degrees < lengthFt / rainOnSnow.feetPerDegree ? rainOnSnow.psf : 0;
}
