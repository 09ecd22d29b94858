import { safetyLimits } from '../../../reference/safety/limits.ts';

/** Clearance to an overhead line, ft: 10 ft to 50 kV and 0.4 in more for each kV above. */
export function lineClearanceFt(kV: number): number {
  const { lineClearanceFt: base, lineClearanceKv, lineClearanceInPerKv } = safetyLimits;
  return base.value + (Math.max(0, kV - lineClearanceKv.value) * lineClearanceInPerKv.value) / 12;
}

/** Pressure under a pallet, psf. */
export function palletPsf(weightLb: number, footprintSqFt: number): number {
  return weightLb / footprintSqFt;
}

/** Area over which a load has to be spread for a pressure, sq ft. */
export function spreadAreaSqFt(weightLb: number, psf: number): number {
  return weightLb / psf;
}

/** What a crew makes watertight in a day, sq ft: rate per worker and hour times the hours that remain for it; half in doubtful weather. */
export function openAreaSqFt(
  workers: number,
  shiftHours: number,
  rainPercent: number,
  rateSqFtPerWorkerHour = 40,
  setUpAndTieInHours = 2,
): number {
  const dry = workers * rateSqFtPerWorkerHour * Math.max(0, shiftHours - setUpAndTieInHours);
  return rainPercent >= safetyLimits.rainPercent.value ? dry / 2 : dry;
}

/** How far a screw tip stands below the top of the deck and below the deck itself (negative = still inside), in. */
export function screwTipIn(
  lengthIn: number,
  thicknessIn: number,
  deckDepthIn: number,
): { intoDeckIn: number; belowDeckIn: number } {
  const intoDeckIn = lengthIn - thicknessIn;
  return { intoDeckIn, belowDeckIn: intoDeckIn - deckDepthIn };
}

/** Ohms per 1,000 ft of copper; from memory. */
const OHMS_PER_KFT = { 10: 1.24, 12: 1.98 } as const;

/** Voltage lost in a cord, V: there and back. */
export function cordDropV(amps: number, lengthFt: number, gaugeAwg: 10 | 12): number {
  return ((2 * OHMS_PER_KFT[gaugeAwg] * lengthFt) / 1000) * amps;
}

export type MaintenanceAnswer = 'protection' | 'designated-area' | 'nothing';

/**
 * What later work on a finished low-slope roof needs, by its distance from an open edge.
 * Source: 29 CFR 1910.28(b)(13). Correctness: tests/published/safety-fall.test.ts
 */
export function maintenanceNeeds(
  edgeFt: number,
  infrequentAndTemporary: boolean,
  ruleToStayBack: boolean,
): MaintenanceAnswer {
  if (edgeFt < 6) return 'protection';
  if (edgeFt < safetyLimits.maintenanceFt.value) return infrequentAndTemporary ? 'designated-area' : 'protection';
  return infrequentAndTemporary && ruleToStayBack ? 'nothing' : 'designated-area';
}
