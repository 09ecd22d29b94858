import type { Cited } from '../sources.ts';

/** Closes every list of cautions. */
export const safetyDeferral = {
  text: "This is a planning aid. Follow the state and local code, the authority having jurisdiction, the permit and the material maker's written instructions; where they differ, the stricter governs. It does not replace the site's competent person, a licensed roofing contractor or a licensed engineer. Rain load, ponding, secondary drainage and whether the structure carries the load are an engineer's work: the tool flags, it does not approve. Thresholds change by edition and state. Asbestos is settled by a laboratory, never by age. Homeowner: stay off the roof. Emergency: 911.",
  source: 'practice',
  at: 'standard closing words',
  grade: 'practice',
} as const satisfies Cited & { text: string };
