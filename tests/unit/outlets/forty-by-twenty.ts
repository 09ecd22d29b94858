import type { Roof } from '../../../src/core/roof.ts';
import { parseRoofObject } from '../../../src/input/parse-roof.ts';

/** A section of 40 x 20 ft with its first corner at 0, 0, read from these parts of a roof file. */
export function fortyByTwenty(parts: object): Roof {
  const outline = [
    [0, 0],
    [40, 0],
    [40, 20],
    [0, 20],
  ];
  const parsed = parseRoofObject({ version: 1, outline, ...parts });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return parsed.roof;
}
