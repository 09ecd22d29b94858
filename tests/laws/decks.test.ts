import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judge } from '../../src/core/drainage/judge.ts';
import { cut } from '../../src/core/geometry/convex.ts';
import { heightIn } from '../../src/core/geometry/plane.ts';
import { buildSection } from '../../src/core/geometry/section.ts';
import { distanceFt, signedAreaSqFt } from '../../src/core/geometry/vector.ts';
import type { Point, Ring } from '../../src/core/roof.ts';
import { meshOf } from '../../src/core/surface/mesh.ts';
import { laidOn, type Patch } from '../../src/core/surface/patch.ts';
import { envelope } from '../../src/core/taper/envelope.ts';
import { isPinched } from './direct-heights.ts';
import { type RandomRoof, randomRoof } from './random-roofs.ts';

const everywhere: Ring = [
  [-200, -200],
  [200, -200],
  [200, 200],
  [-200, 200],
];

interface RandomDeck {
  patches: readonly Patch[];
  steepestInPerFt: number;
}

/** A deck of one plane, a gable of two that meet along a line, or a hip of four that meet in a point. */
const randomDeck: fc.Arbitrary<RandomDeck> = fc
  .record({
    kind: fc.constantFrom('plane', 'gable', 'hip'),
    slopeInPerFt: fc.constantFrom(0.0625, 0.1, 0.125, 0.25),
    bearing: fc.integer({ min: 0, max: 23 }),
    top: fc.tuple(fc.integer({ min: 5, max: 40 }), fc.integer({ min: 5, max: 30 })),
  })
  .map(({ kind, slopeInPerFt, bearing, top }) => {
    const count = { plane: 1, gable: 2, hip: 4 }[kind] ?? 1;
    const ways = Array.from({ length: count }, (_, k): Point => {
      const angle = ((bearing * 15 + (360 * k) / count) * Math.PI) / 180;
      return [Math.sin(angle), Math.cos(angle)];
    });
    // Each plane falls from the top its own way, and holds where it is the lowest of all.
    const planes = ways.map(([x, y]) => {
      const [gx, gy] = [-slopeInPerFt * x, -slopeInPerFt * y];
      return { atOriginIn: -(gx * top[0] + gy * top[1]), gx, gy };
    });
    const patches = planes.map((plane): Patch => {
      const ring = planes.reduce(
        (rest: Ring, other) =>
          other === plane || rest.length < 3
            ? rest
            : cut(rest, (p) => (heightIn(other, p) - heightIn(plane, p)) / slopeInPerFt),
        everywhere,
      );
      return { ring, plane, outlet: '' };
    });
    return { patches: patches.filter(({ ring }) => ring.length >= 3), steepestInPerFt: slopeInPerFt };
  });

function laid({ outline, curbs, outlets }: RandomRoof, deck: RandomDeck) {
  const ats = outlets.map(({ at }) => at);
  const section = buildSection(outline, curbs, ats);
  const boards = envelope(section, outlets);
  const patches = laidOn(deck.patches, boards);
  return { section, boards, patches, mesh: meshOf(patches, ats) };
}

describe('tapers on decks of planes', () => {
  test('1,000 roofs: boards cover the section once, neighbours agree, and what rises more than the deck falls drains', () => {
    let steeper = 0;
    let ponding = 0;
    fc.assert(
      fc.property(randomRoof, randomDeck, (roof, deck) => {
        const { section, boards, patches, mesh } = laid(roof, deck);
        fc.pre(section.regions.length === 1 && boards.length > 0 && !isPinched(section.rings));
        const areaOf = (list: readonly Patch[]): number =>
          list.reduce((sum, { ring }) => sum + signedAreaSqFt(ring), 0);
        expect(Math.abs(areaOf(boards) - section.areaSqFt)).toBeLessThan(1e-4);
        expect(Math.abs(areaOf(patches) - section.areaSqFt)).toBeLessThan(1e-3);
        for (let slot = 0; slot < mesh.corners.length; slot++) {
          const own = heightIn(mesh.patch[Math.floor(slot / 3)].plane, mesh.points[mesh.corners[slot]]);
          expect(own - mesh.z[mesh.corners[slot]]).toBeLessThan(0.002);
        }
        const offers = roof.outlets.flatMap(({ id, at }) =>
          mesh.points.flatMap((p, vertex) =>
            distanceFt(p, at) < 1e-3 ? [{ vertex, levelIn: Number.NEGATIVE_INFINITY, outlet: id }] : [],
          ),
        );
        const judged = judge(mesh, offers, () => null);
        const least = Math.min(...roof.outlets.map(({ pattern }) => pattern.leastRiseInPerFt));
        const stands = judged.ponds.some(({ greatestDepthIn }) => greatestDepthIn > 0.001);
        // Boards that rise more along every way than the deck can fall leave no water anywhere.
        if (least > deck.steepestInPerFt + 1e-6) {
          steeper++;
          expect(stands).toBe(false);
          expect(judged.leastFaceSlopeInPerFt ?? 1).toBeGreaterThan(least - deck.steepestInPerFt - 1e-6);
        } else if (stands) ponding++;
        // What the judge calls drained has neither ponds nor flats.
        if (judged.drained) {
          expect(stands).toBe(false);
          expect(judged.flats.areaSqFt).toBeLessThan(1e-3);
        }
      }),
      { numRuns: 1000 },
    );
    // Both kinds were met, or the law says nothing.
    expect(steeper).toBeGreaterThan(50);
    expect(ponding).toBeGreaterThan(50);
  });
});
