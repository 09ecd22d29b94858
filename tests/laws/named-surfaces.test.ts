import { describe, expect, test } from 'vitest';
import { assess } from '../../src/core/assess.ts';
import { judge } from '../../src/core/drainage/judge.ts';
import { heightIn } from '../../src/core/geometry/plane.ts';
import { buildSection } from '../../src/core/geometry/section.ts';
import { distanceFt, signedAreaSqFt } from '../../src/core/geometry/vector.ts';
import { momentsOf } from '../../src/core/layout/thermal.ts';
import type { Point, Ring } from '../../src/core/roof.ts';
import { noLocalRules, ruleSetFor } from '../../src/core/rule-set.ts';
import type { Offer } from '../../src/core/surface/flood.ts';
import { meshOf, type SurfaceMesh } from '../../src/core/surface/mesh.ts';
import type { Patch } from '../../src/core/surface/patch.ts';
import { envelope } from '../../src/core/taper/envelope.ts';
import { fourWay } from '../../src/core/taper/pattern.ts';
import type { TaperOutlet } from '../../src/core/taper/sources.ts';
import { parseRoofObject } from '../../src/input/parse-roof.ts';
import { lShape, uShape } from '../shapes.ts';

const drain = (id: string, at: Point, levelIn = 0, slope = 0.25, turn = 0): TaperOutlet & { kind: 'point' } => ({
  id,
  kind: 'point',
  at,
  levelIn,
  pattern: fourWay(slope, turn),
});

function surface(outline: Ring, curbs: readonly Ring[], outlets: readonly (TaperOutlet & { kind: 'point' })[]) {
  const points = outlets.map(({ at }) => at);
  const section = buildSection(outline, curbs, points);
  const patches = envelope(section, outlets);
  const mesh = meshOf(patches, points);
  const offers: Offer[] = outlets.flatMap(({ id, at }) =>
    mesh.points.flatMap((p, vertex) =>
      distanceFt(p, at) < 1e-3 ? [{ vertex, levelIn: Number.NEGATIVE_INFINITY, outlet: id }] : [],
    ),
  );
  return { section, patches, mesh, judgement: judge(mesh, offers, () => null) };
}

/** Greatest difference between a patch and the least height at its corners. */
function greatestStepIn(mesh: SurfaceMesh): number {
  let most = 0;
  for (let slot = 0; slot < mesh.corners.length; slot++) {
    const v = mesh.corners[slot];
    most = Math.max(most, heightIn(mesh.patch[Math.floor(slot / 3)].plane, mesh.points[v]) - mesh.z[v]);
  }
  return most;
}

const areaOf = (patches: readonly Patch[], outlet: string): number =>
  patches.filter((patch) => patch.outlet === outlet).reduce((sum, { ring }) => sum + signedAreaSqFt(ring), 0);

const meanIn = (patches: readonly Patch[]): number => {
  const { boardFt, areaSqFt } = momentsOf(patches);
  return boardFt / areaSqFt;
};

describe('the six named surfaces', () => {
  test('1: L-shape, A(38,10) at 3 in and 1/8, B(18,18) at 0 and 1/2: no jump near (0.5, 30.83)', () => {
    const { mesh, section, patches } = surface(
      lShape,
      [],
      [drain('A', [38, 10], 3, 0.125), drain('B', [18, 18], 0, 0.5)],
    );
    expect(greatestStepIn(mesh)).toBeLessThan(0.002);
    expect(momentsOf(patches).areaSqFt).toBeCloseTo(section.areaSqFt, 6);
  });

  test('2: same lShape, A(38,10) turned 0, B(22,10) at 2.3 in turned 45 degrees: no jump', () => {
    const { mesh } = surface(lShape, [], [drain('A', [38, 10]), drain('B', [22, 10], 2.3, 0.25, 45)]);
    expect(greatestStepIn(mesh)).toBeLessThan(0.002);
  });

  test('3: U of 60 x 40 ft, scupper at (10, 40): defined everywhere', () => {
    const { section, patches, judgement } = surface(uShape, [], [drain('S', [10, 40])]);
    expect(momentsOf(patches).areaSqFt).toBeCloseTo(section.areaSqFt, 6);
    expect(judgement.drained).toBe(true);
  });

  test('4: 40 x 20 two-way with a level valley at y = 10 and drains at its ends: 40 ft undrained, depth 0', () => {
    const plane = (gy: number, at: number) => ({ atOriginIn: at, gx: 0, gy });
    const patches: Patch[] = [
      {
        ring: [
          [0, 0],
          [40, 0],
          [40, 10],
          [0, 10],
        ],
        plane: plane(-0.25, 2.5),
        outlet: '',
      },
      {
        ring: [
          [0, 10],
          [40, 10],
          [40, 20],
          [0, 20],
        ],
        plane: plane(0.25, -2.5),
        outlet: '',
      },
    ];
    const mesh = meshOf(patches);
    const offers = mesh.points.flatMap((p, vertex) =>
      Math.abs(p[1] - 10) < 1e-9 ? [{ vertex, levelIn: Number.NEGATIVE_INFINITY, outlet: p[0] < 1 ? 'D1' : 'D2' }] : [],
    );
    const { flats, ponds, drained } = judge(mesh, offers, () => null);
    expect(flats.lengthFt).toBeCloseTo(40, 6);
    expect(flats.areaSqFt).toBe(0);
    expect(ponds).toEqual([]);
    expect(drained).toBe(false);
  });

  test('5: 60 x 20, A(20,10) at 0 and 1/4, C(10,10) at 1 in and 1/8: governed 464 / 736, drained 936 / 264 sq ft', () => {
    const { patches, judgement } = surface(
      [
        [0, 0],
        [60, 0],
        [60, 20],
        [0, 20],
      ],
      [],
      [drain('A', [20, 10]), drain('C', [10, 10], 1, 0.125)],
    );
    expect(areaOf(patches, 'A')).toBeCloseTo(464, 6);
    expect(areaOf(patches, 'C')).toBeCloseTo(736, 6);
    expect(judgement.areaSqFt.get('A')).toBeCloseTo(936, 6);
    expect(judgement.areaSqFt.get('C')).toBeCloseTo(264, 6);
  });

  test('6: four readings 0 1 0 1 with a drain at a low corner: undecided, and the middle reading is named', () => {
    const parsed = parseRoofObject({
      version: 1,
      label: 'four readings',
      outline: [
        [0, 0],
        [10, 0],
        [10, 10],
        [0, 10],
      ],
      edges: [0, 1, 2, 3].map((side) => ({ side, kind: 'wall', mayDrain: 'no' })),
      outlets: [{ id: 'D1', kind: 'drain', at: [0, 0], role: 'primary' }],
      existing: {
        readings: [
          [0, 0, 0],
          [10, 0, 1],
          [10, 10, 0],
          [0, 10, 1],
        ],
        sense: 'height',
        readOn: 'deck',
      },
    });
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
    const rules = ruleSetFor(null, null, noLocalRules);
    if (!rules.ok) throw new Error('default rules');
    const { existing } = assess(parsed.roof, rules.ruleSet);
    expect(existing.verdict).toBe('undecided');
    expect(existing.decidedBy).toContain('5.0, 5.0');
  });
});

describe('curbs at the limits', () => {
  test('a curb that touches a wall', () => {
    const { mesh, section, patches, judgement } = surface(
      lShape,
      [
        [
          [0, 8],
          [4, 8],
          [4, 14],
          [0, 14],
        ],
      ],
      [drain('D', [38, 10])],
    );
    expect(section.areaSqFt).toBeCloseTo(1200 - 24, 6);
    expect(momentsOf(patches).areaSqFt).toBeCloseTo(1176, 6);
    expect(greatestStepIn(mesh)).toBeLessThan(0.002);
    expect(judgement.drained).toBe(true);
  });

  test('two curbs corner to corner: no water passes the point where they touch', () => {
    const curbs: Ring[] = [
      [
        [10, 10],
        [14, 10],
        [14, 14],
        [10, 14],
      ],
      [
        [14, 14],
        [18, 14],
        [18, 18],
        [14, 18],
      ],
    ];
    const { mesh, section, patches, judgement } = surface(
      [
        [0, 0],
        [30, 0],
        [30, 30],
        [0, 30],
      ],
      curbs,
      [drain('D', [16, 12])],
    );
    expect(momentsOf(patches).areaSqFt).toBeCloseTo(section.areaSqFt, 6);
    expect(greatestStepIn(mesh)).toBeLessThan(0.002);
    expect(judgement.drained).toBe(true);
    // Behind the touching corners the water has to go round, not through.
    const behind = patches.filter(({ ring }) =>
      ring.every(([x, y]) => x < 14 + 1e-6 && y > 14 - 1e-6 && x > 10 && y < 18),
    );
    expect(Math.min(...behind.flatMap(({ ring, plane }) => ring.map((p) => heightIn(plane, p))))).toBeGreaterThan(
      0.25 * 6,
    );
  });

  test('a curb across the whole roof: the far part has no way out, and that is said', () => {
    const { section, patches, judgement } = surface(
      [
        [0, 0],
        [40, 0],
        [40, 20],
        [0, 20],
      ],
      [
        [
          [18, 0],
          [22, 0],
          [22, 20],
          [18, 20],
        ],
      ],
      [drain('D', [8, 10])],
    );
    expect(section.regions).toHaveLength(2);
    expect(momentsOf(patches).areaSqFt).toBeCloseTo(360, 6);
    expect(judgement.drained).toBe(true);
  });
});

describe('mean heights', () => {
  const square: Ring = [
    [0, 0],
    [40, 0],
    [40, 40],
    [0, 40],
  ];
  test('40 x 40 ft, centre drain, 1/4: mean 3.3333 in, four planes of 400 sq ft', () => {
    const { patches } = surface(square, [], [drain('D', [20, 20])]);
    expect(meanIn(patches)).toBeCloseTo(10 / 3, 6);
    expect(patches.map(({ ring }) => Math.round(signedAreaSqFt(ring) * 1e6) / 1e6)).toEqual([400, 400, 400, 400]);
  });
  test('L-shape with a drain at (38, 10): 5.7311 in; with a curb (8,8)-(14,12): 5.7109 in', () => {
    expect(meanIn(surface(lShape, [], [drain('D', [38, 10])]).patches)).toBeCloseTo(5.7311, 4);
    expect(
      meanIn(
        surface(
          lShape,
          [
            [
              [8, 8],
              [14, 8],
              [14, 12],
              [8, 12],
            ],
          ],
          [drain('D', [38, 10])],
        ).patches,
      ),
    ).toBeCloseTo(5.7109, 4);
  });
});
