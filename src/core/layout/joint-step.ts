/**
 * How far uphill a step that faces uphill holds water back, ft: step over slope. Source: arithmetic.
 * Correctness: tests/published/taper-heat.test.ts, 50
 */
export const stepReachFt = (stepIn: number, slopeInPerFt: number): number => stepIn / slopeInPerFt;

/**
 * Slope that a difference in thickness of two boards adds or takes over a run, in/ft. Source: arithmetic.
 * Correctness: tests/published/taper-heat.test.ts, 50
 */
export const stepSlopeInPerFt = (stepIn: number, runFt: number): number => stepIn / runFt;
