import type { Cited } from '../sources.ts';

export type CautionMoment = 'as-is' | 'during' | 'finished';

/** In the order in which they are printed. */
export const cautionTopics = [
  'fall protection',
  'hot work',
  'deck and loads',
  'water',
  'weather',
  'utilities',
  'people below',
  'health',
  'afterwards',
] as const;

export type CautionTopic = (typeof cautionTopics)[number];

export interface CautionRow extends Cited {
  /** Stable; the core holds one trigger under the same name. */
  id: string;
  /** 4 stop, do not start until settled; 3 duty by law or code; 2 strong practice; 1 information. */
  severity: 1 | 2 | 3 | 4;
  topic: CautionTopic;
  /** On which state of the roof it is looked for. */
  when: readonly CautionMoment[];
  text: string;
}
