import { inches, plainNumber, slopeInWords } from '../../units/print.ts';

/** Figures as every page and drawing prints them: rounded as the trade does, never more digits than are known. */

/** Slope to 0.01 in/ft, whole sixteenths as a fraction. */
export function slopeFigure(slopeInPerFt: number): string {
  const sixteenth = Math.round(slopeInPerFt * 16) / 16;
  if (sixteenth > 0 && Math.abs(slopeInPerFt - sixteenth) < 5e-4)
    return slopeInWords(sixteenth).replace(' in per ft', ' in/ft');
  return `${plainNumber(slopeInPerFt, 2)} in/ft`;
}

/** Depth of water to 1/16 in. */
export const depthFigure = (depthIn: number): string => (depthIn < 1 / 32 ? 'under 1/16″' : inches(depthIn));

export const gallons = (volumeGal: number): string =>
  volumeGal < 1 ? 'under 1 gal' : `${plainNumber(Math.round(volumeGal))} gal`;

export const pounds = (weightLb: number): string => `${plainNumber(Math.round(weightLb))} lb`;

export const psf = (loadPsf: number): string => `${plainNumber(loadPsf, 1)} psf`;

export const gpm = (flowGpm: number): string => `${plainNumber(Math.round(flowGpm))} gpm`;

export const boardFeet = (volumeBoardFt: number): string => `${plainNumber(Math.round(volumeBoardFt))} board ft`;

export const count = (value: number): string => plainNumber(value, 1);

/** What stands for a number that nobody knows. */
export const NOT_KNOWN = 'not known';

export const orNotKnown = (value: number | null, print: (known: number) => string): string =>
  value === null ? NOT_KNOWN : print(value);

/** "1 drain", "3 drains". */
export const counted = (n: number, one: string, many = `${one}s`): string =>
  `${plainNumber(n)} ${n === 1 ? one : many}`;
