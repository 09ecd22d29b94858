import { safetyLimits } from '../../../reference/safety/limits.ts';

export interface ArrestClearance {
  freeFallFt: number;
  /** Room needed below the walking surface. */
  belowSurfaceFt: number;
  belowAnchorFt: number;
  /** False where the free fall is more than 6 ft. */
  allowed: boolean;
}

/**
 * Room that a personal fall arrest needs: lanyard plus (ring height less anchor height) is the free fall; deceleration,
 * stretch and margin follow. Anchor height is above the walking surface. Lengths ft.
 * Source: 29 CFR 1926.502(d)(16) with common practice for stretch and margin. Correctness: tests/published/safety-fall.test.ts
 */
export function arrestClearance(
  lanyardFt: number,
  anchorHeightFt: number,
  marginFt: number = safetyLimits.arrestMarginFt.value,
): ArrestClearance {
  const { harnessRingFt, decelerationFt, harnessStretchFt, freeFallFt: most } = safetyLimits;
  const freeFallFt = lanyardFt + harnessRingFt.value - anchorHeightFt;
  const belowSurfaceFt = freeFallFt + decelerationFt.value + harnessStretchFt.value + marginFt;
  return {
    freeFallFt,
    belowSurfaceFt,
    belowAnchorFt: anchorHeightFt + belowSurfaceFt,
    allowed: freeFallFt <= most.value + 1e-9,
  };
}

/**
 * Ladder to a landing: one foot out for four up along the rails, and three feet above the landing.
 * Source: 29 CFR 1926.1053(b)(1), (5). Correctness: tests/published/safety-fall.test.ts
 */
export function ladderFor(landingFt: number): { workingFt: number; baseFt: number; totalFt: number } {
  const root = Math.sqrt(15);
  return {
    workingFt: (4 * landingFt) / root,
    baseFt: landingFt / root,
    totalFt: ((landingFt + safetyLimits.ladderAboveFt.value) * 4) / root,
  };
}

/** Load a hole cover has to hold: twice the people with tools and the material on it, lb. Source: 29 CFR 1926.502(i)(2). */
export function coverLoadLb(people: number, personAndToolsLb: number, materialLb: number): number {
  return 2 * (people * personAndToolsLb + materialLb);
}
