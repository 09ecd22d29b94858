import { describe, expect, test } from 'vitest';
import { judge } from '../../src/core/drainage/judge.ts';
import { buildSection } from '../../src/core/geometry/section.ts';
import { distanceFt, signedAreaSqFt } from '../../src/core/geometry/vector.ts';
import type { Point, Ring } from '../../src/core/roof.ts';
import { meshOf } from '../../src/core/surface/mesh.ts';
import { envelope } from '../../src/core/taper/envelope.ts';
import { fourWay } from '../../src/core/taper/pattern.ts';
import { lShape } from '../shapes.ts';

const SIXTEENTH_FT = 1 / 16 / 12;

const rectangle: Ring = [
  [0, 0],
  [40, 0],
  [40, 30],
  [0, 30],
];
/** A corner cut off by a sixteenth, and a jog of a sixteenth in a side. */
const jogged: Ring = [
  [0, 0],
  [20, 0],
  [20, SIXTEENTH_FT],
  [40, SIXTEENTH_FT],
  [40, 30 - SIXTEENTH_FT],
  [40 - SIXTEENTH_FT, 30],
  [0, 30],
];

const outlines = { rectangle, 'inside corner': lShape, 'corners a sixteenth apart': jogged };
const drains: Record<string, readonly Point[]> = {
  'on an edge': [[12, 0]],
  'at a corner': [[0, 0]],
  'two at one spot': [
    [10, 10],
    [10, 10],
  ],
  'three in a line': [
    [5, 10],
    [10, 10],
    [15, 10],
  ],
  'a sixteenth apart': [
    [10, 10],
    [10 + SIXTEENTH_FT, 10],
  ],
};
const moves = {
  'as drawn': [0, 0],
  'turned 5 degrees': [5, 0],
  'turned 17 degrees': [17, 0],
  'far away': [17, 40_000],
};

const moved = ([x, y]: Point, [deg, off]: readonly number[]): Point => {
  const a = (deg * Math.PI) / 180;
  return [x * Math.cos(a) - y * Math.sin(a) + off, x * Math.sin(a) + y * Math.cos(a) - off];
};

describe('awkward roofs still drain', () => {
  for (const [where, move] of Object.entries(moves))
    for (const [outline, ring] of Object.entries(outlines))
      for (const [place, ats] of Object.entries(drains))
        test(`${outline}, drains ${place}, ${where}`, () => {
          const points = ats.map((p) => moved(p, move));
          const section = buildSection(
            ring.map((p) => moved(p, move)),
            [],
            points,
          );
          const outlets = points.map((at, i) => ({
            id: `D${i + 1}`,
            kind: 'point' as const,
            at,
            levelIn: 0.5,
            pattern: fourWay(0.25, move[0]),
          }));
          const patches = envelope(section, outlets);
          const covered = patches.reduce((sum, { ring: piece }) => sum + signedAreaSqFt(piece), 0);
          expect(Math.abs(covered - section.areaSqFt)).toBeLessThan(1e-3);
          const mesh = meshOf(patches, points);
          const offers = mesh.points.flatMap((p, vertex) =>
            points.some((at) => distanceFt(at, p) < 1e-3)
              ? [{ vertex, levelIn: Number.NEGATIVE_INFINITY, outlet: 'D' }]
              : [],
          );
          const { drained, ponds, trappedSqFt } = judge(mesh, offers, () => null);
          expect(ponds.filter(({ greatestDepthIn }) => greatestDepthIn > 0.001)).toEqual([]);
          expect(trappedSqFt).toBeLessThan(1e-3);
          expect(drained).toBe(true);
        });
});
