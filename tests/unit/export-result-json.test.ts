import { expect, test } from 'vitest';
import { assessReady, readRoofText } from '../../src/answer.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import { resultJson } from '../../src/export/result-json.ts';
import { demoText } from '../../src/store/demo-roofs.ts';

function assessment(): Assessment {
  const ready = readRoofText(demoText('back-section'));
  if (!ready.ok) throw new Error(JSON.stringify(ready.problems));
  return assessReady(ready);
}

/** Every number of a JSON value. */
function numbersOf(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersOf) : [];
}

test('the result is one object of version 1, on the 1e-6 grid, and the same every time', () => {
  const first = resultJson(assessment());
  expect(resultJson(assessment())).toBe(first);
  const result = JSON.parse(first);
  expect(result.resultVersion).toBe(1);
  expect(result.section.areaSqFt).toBe(720);
  const numbers = numbersOf(result);
  expect(numbers.length).toBeGreaterThan(1000);
  expect(numbers.filter((n) => Math.abs(n * 1e6 - Math.round(n * 1e6)) > 1e-3)).toEqual([]);
});

test('numbers that are not finite are null, -0 is 0, keys without a value are left out', () => {
  const odd = { a: Number.NaN, b: [Number.POSITIVE_INFINITY, 1 / 3, -0], c: undefined, d: null };
  const result = JSON.parse(resultJson(odd as unknown as Assessment));
  expect(result).toEqual({ a: null, b: [null, 0.333333, 0], d: null });
  expect(Object.is(result.b[2], 0)).toBe(true);
});

test('gradients of planes keep enough digits for a roof that lies miles from the origin', () => {
  const [x, slope] = [40_000, 0.25 / 3];
  const plane = { atOriginIn: 3 - slope * x, gx: slope, gy: 0 };
  const read = JSON.parse(resultJson({ plane } as unknown as Assessment)).plane;
  expect(read.atOriginIn + read.gx * x).toBeCloseTo(3, 5);
});
