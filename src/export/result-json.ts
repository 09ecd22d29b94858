import type { Assessment } from '../core/report/types.ts';

const GRID = 1e6;

/** Rounded to 1e-6; what is not a finite number is null; -0 is 0. */
function tidyNumber(value: number): number | null {
  if (!Number.isFinite(value)) return null;
  const rounded = Math.round(value * GRID) / GRID;
  return Number.isFinite(rounded) ? rounded + 0 : value;
}

function tidy(value: unknown): unknown {
  if (typeof value === 'number') return tidyNumber(value);
  if (Array.isArray(value)) return value.map(tidy);
  if (typeof value !== 'object' || value === null) return value ?? null;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, inner]) => inner !== undefined)
      .map(([key, inner]) => [key, tidy(inner)]),
  );
}

/**
 * The answer as one JSON object (`resultVersion` 1): finite numbers to 1e-6 or null, the same text for the same roof.
 * @param assessment from `assess`
 */
export const resultJson = (assessment: Assessment): string => partJson(assessment);

/** One part of the answer as JSON, by the same rules. */
export const partJson = (part: unknown): string => `${JSON.stringify(tidy(part))}\n`;
