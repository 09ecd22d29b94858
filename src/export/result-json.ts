import type { Assessment } from '../core/report/types.ts';

const GRID = 1e6;
/** Gradients of planes are counted from the file's own origin, which may lie miles off the roof. */
const FINE_GRID = 1e12;
const GRADIENTS: ReadonlySet<string> = new Set(['gx', 'gy']);

/** Rounded to the grid; what is not a finite number is null; -0 is 0. */
function tidyNumber(value: number, grid: number): number | null {
  if (!Number.isFinite(value)) return null;
  const rounded = Math.round(value * grid) / grid;
  return Number.isFinite(rounded) ? rounded + 0 : value;
}

function tidy(value: unknown, grid = GRID): unknown {
  if (typeof value === 'number') return tidyNumber(value, grid);
  if (Array.isArray(value)) return value.map((inner) => tidy(inner, grid));
  if (typeof value !== 'object' || value === null) return value ?? null;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, inner]) => inner !== undefined)
      .map(([key, inner]) => [key, tidy(inner, GRADIENTS.has(key) ? FINE_GRID : GRID)]),
  );
}

/**
 * The answer as one JSON object (`resultVersion` 1): finite numbers to 1e-6 (gradients of planes to 1e-12) or null, the same text for the same roof.
 * @param assessment from `assess`
 */
export const resultJson = (assessment: Assessment): string => partJson(assessment);

/** One part of the answer as JSON, by the same rules. */
export const partJson = (part: unknown): string => `${JSON.stringify(tidy(part))}\n`;
