import type { Source } from '../source.ts';

export const safetySources = {} as const satisfies Record<string, Source>;
