import { expect, test } from 'vitest';
import { DrainSpots } from '../../src/core/layout/drain-spots.ts';
import type { Point, Ring } from '../../src/core/roof.ts';
import { siteOf } from '../../src/core/site/site.ts';
import { roofOf } from './takeoff-roofs.ts';

const spotsOn = (outline: Ring, parts: object = {}) =>
  new DrainSpots(
    siteOf(
      roofOf({
        version: 1,
        label: 'Invented',
        outline,
        edges: outline.map((_, side) => ({ side, kind: 'wall', mayDrain: 'no' })),
        existing: { surface: 'level', readOn: 'deck' },
        ...parts,
      }),
    ),
  );
const rectangle = (w: number, d: number): Ring => [
  [0, 0],
  [w, 0],
  [w, d],
  [0, d],
];
const L: Ring = [
  [0, 0],
  [36, 0],
  [36, 16],
  [16, 16],
  [16, 30],
  [0, 30],
];
const drain = (at: Point) => ({ id: 'D1', kind: 'drain', at, role: 'primary' });
/** Longest way over the section, the longer of the two axes counting, to the nearest of the spots; sampled by the foot. */
function farthest(outline: Ring, spots: readonly Point[], inside: (p: Point) => boolean): number {
  let most = 0;
  for (let x = 0.5; x < 36; x++)
    for (let y = 0.5; y < 30; y++)
      if (inside([x, y]))
        most = Math.max(most, Math.min(...spots.map((s) => Math.max(Math.abs(s[0] - x), Math.abs(s[1] - y)))));
  expect(outline.length).toBeGreaterThan(3);
  return most;
}
const inL = ([x, y]: Point): boolean => x < 16 || y < 16;

test('an empty rectangle: its middle, and the middles of its halves along the longer way', () => {
  expect(spotsOn(rectangle(40, 20)).one()).toEqual([20, 10]);
  expect(spotsOn(rectangle(40, 20)).two()).toEqual([
    [10, 10],
    [30, 10],
  ]);
  expect(spotsOn(rectangle(20, 44)).two()).toEqual([
    [10, 11],
    [10, 33],
  ]);
});

test('beside a drain that is there new ones go where the ways are longest', () => {
  // The right half of the rectangle has its drain: one more in the middle of the left.
  expect(spotsOn(rectangle(40, 20), { outlets: [drain([30, 10])] }).one()).toEqual([10, 10]);
  const two = spotsOn(L, { outlets: [drain([8, 8])] }).two()!;
  expect(two).toHaveLength(2);
  expect(farthest(L, [[8, 8], ...two], inL)).toBeLessThanOrEqual(10.5);
  // Without an eye for the drain that is there the halves would leave a way of 15 ft.
  expect(farthest(L, [[8, 8]], inL)).toBeGreaterThan(20);
});

test('beside a gutter a new drain stands in the upper part', () => {
  const edges = [0, 1, 2, 3].map((side) => ({
    side,
    kind: side === 0 ? 'gutter' : 'wall',
    mayDrain: side ? 'no' : 'yes',
  }));
  const spot = spotsOn(rectangle(20, 30), { edges }).one()!;
  expect(spot[1]).toBeGreaterThan(15);
});

test('spots turn with the building, lie on the roof and keep 3 ft off its edges', () => {
  const turn = (deg: number, [x, y]: Point): Point => {
    const a = (deg * Math.PI) / 180;
    return [1000 + x * Math.cos(a) - y * Math.sin(a), x * Math.sin(a) + y * Math.cos(a)];
  };
  const back = (deg: number, [x, y]: Point): Point => {
    const a = (-deg * Math.PI) / 180;
    return [(x - 1000) * Math.cos(a) - y * Math.sin(a), (x - 1000) * Math.sin(a) + y * Math.cos(a)];
  };
  for (const deg of [5, 17, 45]) {
    const two = spotsOn(L.map((p) => turn(deg, p)))
      .two()!
      .map((p) => back(deg, p));
    for (const [x, y] of two) {
      expect(inL([x + 3, y]) || inL([x, y + 3])).toBe(true);
      expect(Math.min(x, y)).toBeGreaterThan(3);
    }
    expect(farthest(L, two, inL)).toBeLessThanOrEqual(16);
  }
});

test('a section without room for a drain has no spot', () => {
  expect(spotsOn(rectangle(5, 5)).one()).toBeNull();
  expect(spotsOn(rectangle(9, 7)).two()).toBeNull();
});
