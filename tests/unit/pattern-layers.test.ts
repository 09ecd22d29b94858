import { describe, expect, test } from 'vitest';
import { cricketSlopes, fourWay, pyramid, slopedValley, twoWayWithCrickets } from '../../src/core/taper/pattern.ts';

const lengths = (layers: readonly (readonly [number, number])[]): number[] =>
  layers.map(([x, y]) => Math.hypot(x, y)).sort((a, b) => a - b);

describe('planes of a pattern as layers of boards', () => {
  const shape = { fieldInPerFt: 0.25, boardInPerFt: 0.5, widthToLength: 0.5 };
  const patterns = {
    'four-way': [fourWay(0.25, 30), [[0.25]]],
    pyramid: [pyramid(0.125, 0.25, 10), [[0.125], [0.25]]],
    'sloped valley': [slopedValley(0.125, 0.25, 20), [[0.125, 0.25]]],
    crickets: [twoWayWithCrickets(shape, 40), [[0.25], [0.25, 0.5]]],
  } as const;
  for (const [name, [pattern, allowed]] of Object.entries(patterns)) {
    test(`${name}: layers add up to the plane and have catalogue slopes`, () => {
      for (const { gx, gy, layers } of pattern.sectors) {
        expect(layers.reduce((sum, [x]) => sum + x, 0)).toBeCloseTo(gx, 12);
        expect(layers.reduce((sum, [, y]) => sum + y, 0)).toBeCloseTo(gy, 12);
        const own = lengths(layers);
        const fits = allowed.some(
          (list) => list.length === own.length && list.every((v, i) => Math.abs(v - own[i]) < 1e-9),
        );
        expect(fits, `${own}`).toBe(true);
      }
    });
  }

  test('a cricket rises along its ridge and its edge as its slopes say', () => {
    const pattern = twoWayWithCrickets(shape, 0);
    const { valleyInPerFt, faceInPerFt, ridgeInPerFt } = cricketSlopes(shape);
    expect(pattern.leastRiseInPerFt).toBeCloseTo(valleyInPerFt, 12);
    const faces = pattern.sectors.filter(({ layers }) => layers.length === 2);
    expect(faces).toHaveLength(4);
    for (const { gx, gy, from } of faces) {
      expect(Math.hypot(gx, gy)).toBeCloseTo(faceInPerFt, 12);
      const along = Math.abs(from[1]) > 0.999 ? ridgeInPerFt : valleyInPerFt;
      expect(gx * from[0] + gy * from[1]).toBeCloseTo(along, 12);
    }
  });

  test('boards too flat to shed are refused', () => {
    expect(() => twoWayWithCrickets({ fieldInPerFt: 0.25, boardInPerFt: 0.125, widthToLength: 0.5 })).toThrow(
      RangeError,
    );
  });
});
