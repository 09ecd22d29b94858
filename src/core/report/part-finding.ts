import type { Finding } from './types.ts';

/** A finding with only what it has to say. */
export const finding = (part: Partial<Finding> & Pick<Finding, 'id' | 'level' | 'where' | 'message'>): Finding => ({
  value: null,
  limit: null,
  source: null,
  ...part,
});
