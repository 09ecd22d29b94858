import { rainFlowFactor } from '../../../reference/rain-flow.ts';

/** Flow of one square foot at one inch per hour [gpm] as the codes print it. */
export const PRINTED_GPM_PER_SQ_FT = rainFlowFactor.gpmPerSqFtInPerHr;

/** The same from the definitions: 144 cubic inches an hour, 231 cubic inches a gallon, 60 minutes; 1 / 96.25. */
export const EXACT_GPM_PER_SQ_FT = 144 / 231 / 60;

/** Comparisons of flows allow for the last bit of a double, nothing more. */
export const SAME_FLOW_GPM = 1e-9;

/**
 * Rain flow [gpm] of an area: Q = 0.0104 A i.
 * @param areaSqFt plan area plus what sheds onto it [sq ft]
 * @param inPerHr rain rate [in/h]
 * @param gpmPerSqFt 0.0104 to meet printed numbers (0.1 % over the exact factor)
 * Source: ASCE 7-05 commentary C8. Correctness: tests/published/drainage-outlets.test.ts
 */
export function flowGpm(areaSqFt: number, inPerHr: number, gpmPerSqFt: number = PRINTED_GPM_PER_SQ_FT): number {
  return gpmPerSqFt * areaSqFt * inPerHr;
}

/** Area [sq ft] that a flow [gpm] serves at a rain rate [in/h]. Correctness: tests/published/drainage-outlets.test.ts */
export function areaForFlowSqFt(gpm: number, inPerHr: number, gpmPerSqFt: number = PRINTED_GPM_PER_SQ_FT): number {
  return gpm / (gpmPerSqFt * inPerHr);
}
