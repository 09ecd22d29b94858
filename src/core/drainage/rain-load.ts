import { waterLoadPerInch } from '../../../reference/deflection.ts';

/**
 * Rain load [psf] of water on an undeflected roof: R = 5.2 (ds + dh + dp).
 * @param staticIn ds, depth at the low point up to the inlet of the overflow [in]
 * @param headIn dh, head over that inlet at the design flow [in]
 * @param pondingIn dp, head from ponding deflection (ASCE 7-22 only) [in]
 * Source: IBC 1611.1, ASCE 7 chapter 8. Correctness: tests/published/drainage-load.test.ts
 */
export function rainLoadPsf(staticIn: number, headIn: number, pondingIn = 0): number {
  return waterLoadPerInch.psf * (staticIn + headIn + pondingIn);
}

/** Depth of water [in] that weighs as much as a load [psf]. Correctness: tests/published/drainage-load.test.ts */
export const depthForLoadIn = (loadPsf: number): number => loadPsf / waterLoadPerInch.psf;

/** Weight [lb] of a film of water of one depth [in] over an area [sq ft]. Correctness: tests/published/drainage-load.test.ts */
export const waterWeightLb = (areaSqFt: number, depthIn: number): number => areaSqFt * rainLoadPsf(depthIn, 0);
