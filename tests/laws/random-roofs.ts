import fc from 'fast-check';
import { isInside, toSegment } from '../../src/core/geometry/vector.ts';
import type { Point, Ring } from '../../src/core/roof.ts';
import { fourWay, pyramid, type SlopePattern, slopedValley, twoWayWithCrickets } from '../../src/core/taper/pattern.ts';
import type { TaperOutlet } from '../../src/core/taper/sources.ts';
import { lShape, uShape } from '../shapes.ts';

export interface RandomRoof {
  outline: Ring;
  curbs: readonly Ring[];
  outlets: readonly (TaperOutlet & { kind: 'point' })[];
}

const shapes: readonly Ring[] = [
  [
    [0, 0],
    [40, 0],
    [40, 30],
    [0, 30],
  ],
  lShape,
  uShape,
  [
    [0, 0],
    [50, 0],
    [50, 12],
    [32, 12],
    [32, 35],
    [18, 35],
    [18, 12],
    [0, 12],
  ],
  [
    [0, 0],
    [48, 0],
    [48, 30],
    [40, 30],
    [40, 10],
    [32, 10],
    [32, 30],
    [24, 30],
    [24, 10],
    [16, 10],
    [16, 30],
    [0, 30],
  ],
  [
    [0, 0],
    [44, 6],
    [38, 34],
    [-4, 26],
  ],
];

const curb = fc
  .record({
    x: fc.integer({ min: 0, max: 44 }),
    y: fc.integer({ min: 0, max: 30 }),
    w: fc.integer({ min: 2, max: 7 }),
    h: fc.integer({ min: 2, max: 7 }),
  })
  .map(
    ({ x, y, w, h }): Ring => [
      [x, y],
      [x + w, y],
      [x + w, y + h],
      [x, y + h],
    ],
  );

const outlet = fc.record({
  x: fc.integer({ min: 0, max: 60 }),
  y: fc.integer({ min: 0, max: 40 }),
  quarters: fc.integer({ min: 0, max: 8 }),
  slope: fc.constantFrom(0.125, 0.25, 0.5),
  turn: fc.constantFrom(0, 0, 22.5, 45, 67.5),
  kind: fc.constantFrom('four', 'four', 'four', 'pyramid', 'valley', 'cricket'),
});

const crickets = { widthToLength: 0.5, boardInPerFt: 0.5 };

const patternOf = (kind: string, slope: number, turn: number): SlopePattern => {
  if (kind === 'pyramid') return pyramid(slope / 2, slope, turn);
  if (kind === 'valley') return slopedValley(slope / 2, slope, turn);
  if (kind === 'cricket') return twoWayWithCrickets({ ...crickets, fieldInPerFt: Math.min(slope, 0.25) }, turn);
  return fourWay(slope, turn);
};

const turned = (p: Point, angle: number): Point => [
  p[0] * Math.cos(angle) - p[1] * Math.sin(angle),
  p[0] * Math.sin(angle) + p[1] * Math.cos(angle),
];

const onRing = (p: Point, ring: Ring): boolean =>
  ring.some((a, i) => toSegment(p, a, ring[(i + 1) % ring.length]).distanceFt < 1e-9);

/** Roofs on a foot grid, most of them square, some turned: edges that coincide, corners that touch, drains on walls. */
export const randomRoof: fc.Arbitrary<RandomRoof> = fc
  .record({
    shape: fc.constantFrom(...shapes),
    angle: fc.constantFrom(0, 0, 0, (5 * Math.PI) / 180, (17 * Math.PI) / 180, 0.6),
    curbs: fc.array(curb, { maxLength: 4 }),
    outlets: fc.array(outlet, { minLength: 1, maxLength: 12 }),
  })
  .map(({ shape, angle, curbs, outlets }) => {
    const free = outlets.filter(({ x, y }) => {
      const p: Point = [x, y];
      const within = isInside(p, [shape]) || onRing(p, shape);
      return within && !curbs.some((ring) => isInside(p, [ring]) || onRing(p, ring));
    });
    return {
      outline: shape.map((p) => turned(p, angle)),
      curbs: curbs.map((ring) => ring.map((p) => turned(p, angle))),
      outlets: free.map(({ x, y, quarters, slope, turn, kind }, i) => ({
        id: `D${i + 1}`,
        kind: 'point' as const,
        at: turned([x, y], angle),
        levelIn: quarters / 4,
        pattern: patternOf(kind, slope, turn),
      })),
    };
  })
  .filter(({ outlets }) => outlets.length > 0);
