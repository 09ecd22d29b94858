import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heightIn, LEVEL } from '../../../src/core/geometry/plane.ts';
import { centroid, signedAreaSqFt } from '../../../src/core/geometry/vector.ts';
import type { JoistSag, Joists, Ring } from '../../../src/core/roof.ts';
import { sagAtIn, sagged, sagShape } from '../../../src/core/site/joist-sag.ts';

const outline: Ring = [
  [0, 0],
  [40, 0],
  [40, 16],
  [0, 16],
];
const nothing: JoistSag = { depthIn: null, spanOver: null, spanFt: null, directionDeg: null };
const shape = (sag: Partial<JoistSag>, joists: Joists | null = null) =>
  sagShape({ ...nothing, ...sag }, joists, outline);

describe('sag of joists', () => {
  it('is 4 D t (1 - t): 4 in over 40 ft hang 16 (x/40)(1 - x/40) at every strip end', () => {
    const sag = shape({ depthIn: 4, spanFt: 40, directionDeg: 90 });
    for (const x of [0, 1.25, 7.5, 20, 38.75, 40]) {
      expect(sagAtIn(sag, [x, 5])).toBeCloseTo(-16 * (x / 40) * (1 - x / 40), 12);
    }
    expect(sag.assumed).toEqual([]);
  });

  it('span over a number: 16 ft over 192 are 1 in, and it takes span and direction from the joists', () => {
    const joists: Joists = { spanFt: 16, depthIn: null, spacingIn: null, directionDeg: 0 };
    const sag = shape({ spanOver: 192 }, joists);
    expect(sagAtIn(sag, [10, 8])).toBeCloseTo(-1, 12);
    expect(sag).toMatchObject({ spans: 1, assumed: [] });
  });

  it('spans stand one behind the other, each with its own hollow', () => {
    const sag = shape({ depthIn: 1, spanFt: 20, directionDeg: 90 });
    expect([0, 10, 20, 30, 40].map((x) => sagAtIn(sag, [x, 0]) + 0)).toEqual([0, -1, 0, -1, 0]);
    expect(sag.spans).toBe(2);
  });

  it('what is not said is one span over the shorter way, and listed', () => {
    const sag = shape({ depthIn: 1 });
    expect(sag).toMatchObject({ spanFt: 16, along: [0, 1] });
    expect(sag.assumed.map(({ path }) => path)).toEqual(['existing.sag.directionDeg', 'existing.sag.spanFt']);
  });

  it('law: the sagged pieces cover the same ground, and lie on the sag', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 359, noNaN: true }),
        fc.double({ min: 5, max: 60, noNaN: true }),
        fc.double({ min: 0.1, max: 6, noNaN: true }),
        (directionDeg, spanFt, depthIn) => {
          const sag = shape({ directionDeg, spanFt, depthIn });
          const pieces = sagged([{ ring: outline, plane: LEVEL, outlet: '' }], sag);
          expect(pieces.reduce((sum, { ring }) => sum + signedAreaSqFt(ring), 0)).toBeCloseTo(640, 4);
          for (const { ring, plane } of pieces) {
            const p = centroid(ring);
            if (signedAreaSqFt(ring) > 1e-3) expect(heightIn(plane, p)).toBeCloseTo(sagAtIn(sag, p), 6);
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});
