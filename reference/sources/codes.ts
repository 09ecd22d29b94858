import type { Source } from '../source.ts';

export const codeSources = {} as const satisfies Record<string, Source>;
