import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { convert } from '../../../src/units/convert.ts';

/** The module build of mathjs is some two thousand files: importing it anywhere makes every start slow. */
test('mathjs is imported by its one-file build, through src/units/mathjs.ts only', () => {
  const importers = readdirSync('src', { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.tsx?$/.test(path) && !path.endsWith('.d.ts'))
    .filter((path) => /from 'mathjs/.test(readFileSync(join('src', path), 'utf8')));
  expect(importers).toEqual([join('units', 'mathjs.ts')]);
});

test('conversions go by the definitions, exactly', () => {
  expect(convert(9, 'in', 'ft')).toBe(0.75);
  expect(convert(24.5, 'ft', 'in')).toBe(294);
  expect(convert(304.8, 'mm', 'ft')).toBe(1);
  expect(convert(1, 'ft', 'm')).toBe(0.3048);
  expect(convert(25.4, 'mm/hour', 'in/hour')).toBe(1);
  expect(() => convert(1, 'in', 'hour')).toThrow();
});
