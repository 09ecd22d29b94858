import type { Source } from './source.ts';
import { codeSources } from './sources/codes.ts';
import { heatSources } from './sources/heat.ts';
import { materialSources } from './sources/materials.ts';
import { moistureSources } from './sources/moisture.ts';
import { safetySources } from './sources/safety.ts';

/** The only bibliography of the project: every table row names one of these ids. */
export const sources = {
  practice: { title: 'Common practice, no source', publisher: 'the trade', edition: null },
  memory: { title: 'From memory, verify', publisher: 'unverified', edition: null },
  arithmetic: { title: 'Computed here from the definitions', publisher: 'Rainpath', edition: null },
  ...codeSources,
  ...materialSources,
  ...moistureSources,
  ...heatSources,
  ...safetySources,
} as const satisfies Record<string, Source>;

export type SourceId = keyof typeof sources;

/** How far a row may be trusted: read in the document, remembered, trade habit, or computed here. */
export type Grade = 'found' | 'memory' | 'practice' | 'computed';

/** What every table row carries. A row without it does not compile. */
export interface Cited {
  source: SourceId;
  /** Section, table or page inside the source. */
  at: string;
  grade: Grade;
}
