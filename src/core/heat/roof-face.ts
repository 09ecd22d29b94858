import { kOfC } from './degrees.ts';
import type { Outside } from './design-day.ts';
import type { OuterFace } from './march.ts';

const STEFAN_BOLTZMANN = 5.67e-8;

/** How a surface takes sun and gives off heat. */
export interface Surface {
  reflectance: number;
  emittance: number;
}

/**
 * Balance of a roof's surface: sun taken in, less convection, less radiation to the sky.
 * Source: the balance of ASTM E1980 with the day's own sun, air and sky.
 * @param windWPerM2K convection; 5 in low, 12 in medium, 30 in high wind
 */
export function roofFace({ reflectance, emittance }: Surface, outside: Outside, windWPerM2K: number): OuterFace {
  const { sunWPerM2, airC, skyK } = outside;
  const radiates = emittance * STEFAN_BOLTZMANN;
  return (step, faceC, out) => {
    const face = kOfC(faceC);
    const cubed = face * face * face;
    const sky = skyK[step];
    out.wPerM2 =
      (1 - reflectance) * sunWPerM2[step] -
      windWPerM2K * (faceC - airC[step]) -
      radiates * (cubed * face - sky * sky * sky * sky);
    out.perK = -windWPerM2K - 4 * radiates * cubed;
  };
}

/** Sol-air temperature, C: air plus what the sun adds through a film, less what the sky takes. A hand check and a start. */
export const solAirC = (airC: number, sunWPerM2: number, absorptance: number, film: number, skyLossK: number): number =>
  airC + (absorptance * sunWPerM2) / film - skyLossK;
