const DEG = Math.PI / 180;

/** Optical depths of a clear sky, beam and diffuse; null = none is known of the place. */
export type SkyDepths = readonly [beam: number, diffuse: number] | null;

/** Sun on a level surface under a clear sky, W/m2. */
export interface SkyLight {
  /** Square to the beam. */
  beam: number;
  diffuse: number;
  total: number;
}

const NIGHT: SkyLight = { beam: 0, diffuse: 0, total: 0 };

/** Air that a beam passes against the zenith. Source: Kasten and Young 1989, as the handbook takes it, from memory. */
const airMass = (sine: number, heightDeg: number): number => 1 / (sine + 0.50572 * (6.07995 + heightDeg) ** -1.6364);

/** Sun outside the air, W/m2. */
const outsideWPerM2 = (day: number): number => 1367 * (1 + 0.033 * Math.cos((360 * DEG * (day - 3)) / 365));

/**
 * Clear sky by two optical depths.
 * Source: ASHRAE Handbook 2009, coefficients of that edition. Correctness: tests/published/heat-sky.test.ts
 */
function byDepths([beamDepth, diffuseDepth]: readonly [number, number], sine: number, day: number): SkyLight {
  const m = airMass(sine, Math.asin(sine) / DEG);
  const ab = 1.219 - 0.043 * beamDepth - 0.151 * diffuseDepth - 0.204 * beamDepth * diffuseDepth;
  const ad = 0.202 + 0.852 * beamDepth - 0.007 * diffuseDepth - 0.357 * beamDepth * diffuseDepth;
  const out = outsideWPerM2(day);
  const beam = out * Math.exp(-beamDepth * m ** ab);
  const diffuse = out * Math.exp(-diffuseDepth * m ** ad);
  return { beam, diffuse, total: beam * sine + diffuse };
}

/** Clear sky on a level surface, W/m2, from the sun's height alone. Source: Haurwitz 1945; up to 6 percent high at noon in damp air. */
export const haurwitzWPerM2 = (sine: number): number => (sine <= 0 ? 0 : 1098 * sine * Math.exp(-0.059 / sine));

/**
 * Sun under a clear sky.
 * @param sine of the sun's height over the horizon
 * @param day of the year
 * @param depths null = by the sun's height alone, all of it counted as diffuse
 */
export function skyLight(sine: number, day: number, depths: SkyDepths): SkyLight {
  if (sine <= 0) return NIGHT;
  if (depths !== null) return byDepths(depths, sine, day);
  const total = haurwitzWPerM2(sine);
  return { beam: 0, diffuse: total, total };
}
