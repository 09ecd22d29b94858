import type { Source } from '../source.ts';

export const materialSources = {} as const satisfies Record<string, Source>;
