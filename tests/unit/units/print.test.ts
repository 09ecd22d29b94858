import { expect, test } from 'vitest';
import {
  area,
  compassPoint,
  feetInches,
  inches,
  pair,
  plan,
  slope,
  slopeInWords,
  slopePercent,
  squares,
} from '../../../src/units/print.ts';

test('feet and inches to the nearest sixteenth, carried into the next foot', () => {
  expect(feetInches(24 + 6.5 / 12)).toBe('24′-6 1/2″');
  expect(feetInches(23.999)).toBe('24′-0″');
  expect(feetInches(0)).toBe('0′-0″');
  expect(feetInches(-2.25)).toBe('-2′-3″');
  expect(feetInches(-0.001)).toBe('0′-0″');
});

test('inches with the smallest fraction', () => {
  expect(inches(6.5)).toBe('6 1/2″');
  expect(inches(0.1875)).toBe('3/16″');
  expect(inches(-0.75)).toBe('-3/4″');
  expect(inches(11.99)).toBe('12″');
});

test('slopes in decimals, in words, in percent', () => {
  expect(slope(0.25)).toBe('0.25 in/ft');
  expect(slope(0.25 / Math.SQRT2)).toBe('0.177 in/ft');
  expect(slopeInWords(0.25)).toBe('1/4 in per ft');
  expect(slopeInWords(0.24)).toBe('0.24 in per ft');
  expect(slopeInWords(-0.125)).toBe('-1/8 in per ft');
  expect(slopePercent(0.25)).toBe('2.08 %');
});

test('areas, pairs, bearings', () => {
  expect(area(720)).toBe('720 sq ft');
  expect(area(3150)).toBe('3,150 sq ft');
  expect(area(1.04)).toBe('1 sq ft');
  expect(squares(720)).toBe('7.2 squares');
  expect(pair([6, 4])).toBe('6″ x 4″');
  expect(plan([30, 24.5])).toBe('30′-0″ x 24′-6″');
  expect(compassPoint(47)).toBe('NE');
  expect(compassPoint(-5)).toBe('N');
});
