const STEP_IN = 1 / 16;

/** A height to raise, on to the next sixteenth: nobody can raise less, and less does not do. */
export const roundedUpIn = (byIn: number): number => Math.ceil(byIn / STEP_IN - 1e-6) * STEP_IN;
