import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { NOWHERE } from '../../src/core/drainage/areas.ts';
import { type Judgement, judge } from '../../src/core/drainage/judge.ts';
import { planeOfTriangle } from '../../src/core/geometry/plane.ts';
import { nextSlot, triangulate } from '../../src/core/geometry/triangulation.ts';
import { distanceFt, isInside, signedAreaSqFt } from '../../src/core/geometry/vector.ts';
import type { Point } from '../../src/core/roof.ts';
import { between } from '../../src/core/site/readings.ts';
import type { Offer } from '../../src/core/surface/flood.ts';
import { meshOf, type SurfaceMesh } from '../../src/core/surface/mesh.ts';
import type { Patch } from '../../src/core/surface/patch.ts';
import { gridLevels } from './grid-flood.ts';
import { Drop } from './trickle.ts';

/** Drops nearer than this to a boundary of two areas are not compared. */
const NEAR_FT = 0.01;
const [W, H] = [24, 16];

interface Uneven {
  points: readonly Point[];
  z: readonly number[];
  /** Points at which water leaves, and how far their inlets stand proud. */
  drains: readonly { at: number; proudIn: number }[];
  /** The left wall is a gutter. */
  openLeft: boolean;
}

/** Readings on whole feet, some of them equal: flats, equal spills, proud drains. */
const uneven: fc.Arbitrary<Uneven> = fc
  .record({
    inner: fc.uniqueArray(fc.record({ x: fc.integer({ min: 1, max: W - 1 }), y: fc.integer({ min: 1, max: H - 1 }) }), {
      minLength: 6,
      maxLength: 18,
      selector: ({ x, y }) => `${x},${y}`,
    }),
    z: fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 22, maxLength: 22 }),
    drains: fc.array(fc.record({ at: fc.nat({ max: 9 }), proudIn: fc.constantFrom(0, 0, 0, 0.5) }), {
      minLength: 1,
      maxLength: 3,
    }),
    openLeft: fc.boolean(),
  })
  .map(({ inner, z, drains, openLeft }) => {
    const points: Point[] = [[0, 0], [W, 0], [W, H], [0, H], ...inner.map(({ x, y }): Point => [x, y])];
    return { points, z: points.map((_, i) => z[i] / 16), drains, openLeft };
  });

interface Flooded {
  mesh: SurfaceMesh;
  judgement: Judgement;
  offers: Offer[];
  openAt: (slot: number) => string | null;
  steepest: number;
}

function flooded({ points, z, drains, openLeft }: Uneven, moved: (p: Point) => Point = (p) => p): Flooded {
  const at = points.map(moved);
  // One triangulation for the roof as it lies and as it is moved: readings on one circle have a free diagonal.
  const flat = triangulate([points.slice(0, 4)], points.slice(4));
  const ids = flat.points.map((p) => points.findIndex((q) => distanceFt(p, q) < 1e-9));
  const patches: Patch[] = [];
  let steepest = 0;
  for (let i = 0; i < flat.corners.length; i += 3) {
    const corners = [ids[flat.corners[i]], ids[flat.corners[i + 1]], ids[flat.corners[i + 2]]];
    const turned = signedAreaSqFt(corners.map((id) => at[id])) < 0;
    const [a, b, c] = turned ? corners.reverse() : corners;
    const plane = planeOfTriangle(at[a], at[b], at[c], z[a], z[b], z[c]);
    steepest = Math.max(steepest, Math.hypot(plane.gx, plane.gy));
    patches.push({ ring: [at[a], at[b], at[c]], plane, outlet: '' });
  }
  const mesh = meshOf(patches);
  const [p0, p3] = [at[0], at[3]];
  const onLeft = (p: Point): boolean =>
    Math.abs((p3[0] - p0[0]) * (p[1] - p0[1]) - (p3[1] - p0[1]) * (p[0] - p0[0])) / H < 1e-6;
  const openAt = (slot: number): string | null => {
    const ends = [mesh.corners[slot], mesh.corners[nextSlot(slot)]];
    return openLeft && mesh.across[slot] < 0 && ends.every((v) => onLeft(mesh.points[v])) ? 'left' : null;
  };
  const offers: Offer[] = drains.flatMap(({ at: i, proudIn }, k) =>
    mesh.points.flatMap((p, vertex) =>
      distanceFt(p, at[i]) < 1e-6 ? [{ vertex, levelIn: z[i] + proudIn, outlet: `D${k}` }] : [],
    ),
  );
  if (openLeft)
    mesh.points.forEach((p, vertex) => {
      if (onLeft(p)) offers.push({ vertex, levelIn: Number.NEGATIVE_INFINITY, outlet: 'left' });
    });
  return { mesh, judgement: judge(mesh, offers, openAt), offers, openAt, steepest };
}

/** Exact heights of the surface on a grid, by its own triangles. */
function gridOf({ mesh }: Flooded, cellFt: number) {
  const [columns, rows] = [Math.round(W / cellFt) + 1, Math.round(H / cellFt) + 1];
  const z = new Float64Array(columns * rows).fill(Number.NaN);
  for (let t = 0; t < mesh.corners.length / 3; t++) {
    const ring = [0, 1, 2].map((k) => mesh.points[mesh.corners[3 * t + k]]);
    const at = between(ring.map((p, k) => ({ at: p, zIn: mesh.z[mesh.corners[3 * t + k]] })));
    const [x0, x1] = [Math.min(...ring.map((p) => p[0])), Math.max(...ring.map((p) => p[0]))];
    const [y0, y1] = [Math.min(...ring.map((p) => p[1])), Math.max(...ring.map((p) => p[1]))];
    for (let j = Math.ceil(y0 / cellFt - 1e-9); j <= y1 / cellFt + 1e-9; j++) {
      for (let i = Math.ceil(x0 / cellFt - 1e-9); i <= x1 / cellFt + 1e-9; i++) {
        const here = at([i * cellFt, j * cellFt]);
        if (here.inside) z[j * columns + i] = here.zIn;
      }
    }
  }
  return { columns, rows, cellFt, z };
}

function compare(roof: Uneven, cellFt: number): void {
  const own = flooded(roof);
  const grid = gridOf(own, cellFt);
  const offers = own.offers.map(({ vertex, levelIn }) => {
    const [x, y] = own.mesh.points[vertex];
    return { index: Math.round(y / cellFt) * grid.columns + Math.round(x / cellFt), levelIn };
  });
  if (roof.openLeft)
    for (let j = 0; j < grid.rows; j++) offers.push({ index: j * grid.columns, levelIn: Number.NEGATIVE_INFINITY });
  const level = gridLevels(grid, offers);
  let deepest = 0;
  let volume = 0;
  for (let i = 0; i < grid.z.length; i++) {
    const depth = level[i] - grid.z[i];
    deepest = Math.max(deepest, depth);
    const [x, y] = [i % grid.columns, Math.floor(i / grid.columns)];
    const share = (x === 0 || x === grid.columns - 1 ? 0.5 : 1) * (y === 0 || y === grid.rows - 1 ? 0.5 : 1);
    volume += depth * share * cellFt * cellFt;
  }
  const { ponds } = own.judgement;
  const depth = Math.max(0, ...ponds.map(({ greatestDepthIn }) => greatestDepthIn));
  const bound = 2 * own.steepest * cellFt + 1e-6;
  expect(Math.abs(depth - deepest)).toBeLessThan(bound);
  const exact = ponds.reduce((sum, pond) => sum + pond.volumeSqFtIn, 0);
  // Water may stand over all of it: the ponds grown by two cells are no larger than the roof.
  expect(Math.abs(exact - volume)).toBeLessThan(bound * W * H);
}

describe('ponds against a grid flood', () => {
  test('300 random surfaces: depth and volume within 2 G h, and the bound halves with the cell', () => {
    fc.assert(
      fc.property(uneven, (roof) => {
        compare(roof, 1);
        compare(roof, 0.5);
      }),
      { numRuns: 300 },
    );
  });
});

const triangleAt = (mesh: SurfaceMesh, p: Point): number => {
  for (let t = 0; t < mesh.corners.length / 3; t++) {
    if (isInside(p, [[0, 1, 2].map((k) => mesh.points[mesh.corners[3 * t + k]])])) return t;
  }
  return -1;
};

const outletAt = (judgement: Judgement, p: Point): string =>
  judgement.areas.find(({ ring }) => isInside(p, [ring]))?.outlet ?? NOWHERE;

/** Equal heights leave the way of a drop to the order of things: areas are then a matter of the rule for ties. */
const isTied = ({ z, points, drains }: Uneven): boolean => {
  const levels = z.slice(0, points.length);
  const inlets = drains.filter(({ proudIn }) => proudIn > 0).map(({ at, proudIn }) => z[at] + proudIn);
  const places = new Set(drains.map(({ at }) => at));
  return new Set([...levels, ...inlets]).size < levels.length + inlets.length || places.size < drains.length;
};

describe('drainage areas', () => {
  test('they cover the section, and 2,000 drops followed by themselves agree away from the boundaries', () => {
    let [compared, near] = [0, 0];
    fc.assert(
      fc.property(uneven, fc.integer({ min: 1, max: 1e6 }), (roof, seed) => {
        const own = flooded(roof);
        const sum = [...own.judgement.areaSqFt.values()].reduce((a, b) => a + b, 0);
        expect(Math.abs(sum - W * H)).toBeLessThan(1e-6 * W * H);
        if (isTied(roof)) return;
        const drop = new Drop(own.mesh, own.offers, own.openAt);
        for (let i = 0; i < 2000; i++) {
          // A low-discrepancy walk over the roof, moved by the seed.
          const p: Point = [W * ((0.7548776662 * (i + seed)) % 1), H * ((0.5698402909 * (i + seed)) % 1)];
          const around = [0, 1, 2, 3, 4].map(
            (k): Point => [
              p[0] + (k === 1 ? NEAR_FT : k === 2 ? -NEAR_FT : 0),
              p[1] + (k === 3 ? NEAR_FT : k === 4 ? -NEAR_FT : 0),
            ],
          );
          const outlets = new Set(around.map((q) => outletAt(own.judgement, q)));
          if (outlets.size > 1) {
            near++;
            continue;
          }
          compared++;
          expect(drop.from(triangleAt(own.mesh, p), p) ?? NOWHERE, `at ${p}`).toBe([...outlets][0]);
        }
      }),
      { numRuns: 300 },
    );
    expect(compared).toBeGreaterThan(10 * near);
  });

  test('turning and mirroring the roof changes no area, depth or volume', () => {
    const turn =
      (deg: number) =>
      (p: Point): Point => {
        const a = (deg * Math.PI) / 180;
        return [p[0] * Math.cos(a) - p[1] * Math.sin(a) + 300, p[0] * Math.sin(a) + p[1] * Math.cos(a) - 120];
      };
    fc.assert(
      fc.property(uneven, (roof) => {
        const plain = flooded(roof);
        const volume = (f: Flooded): number => f.judgement.ponds.reduce((sum, pond) => sum + pond.volumeSqFtIn, 0);
        const area = (f: Flooded): number[] =>
          ['left', 'D0', 'D1', 'D2'].map((id) => f.judgement.areaSqFt.get(id) ?? 0);
        const mirrored = (p: Point): Point => [-p[0], p[1]];
        for (const moved of [turn(17), turn(90), mirrored]) {
          const other = flooded(roof, moved);
          expect(Math.abs(volume(other) - volume(plain))).toBeLessThan(1e-3 + 1e-5 * volume(plain));
          if (isTied(roof)) continue;
          area(other).forEach((a, i) => {
            expect(Math.abs(a - area(plain)[i])).toBeLessThan(1e-5 * W * H);
          });
        }
      }),
      { numRuns: 100 },
    );
  });
});
