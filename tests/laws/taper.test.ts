import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judge } from '../../src/core/drainage/judge.ts';
import { heightIn } from '../../src/core/geometry/plane.ts';
import { buildSection } from '../../src/core/geometry/section.ts';
import { centroid, distanceFt, signedAreaSqFt } from '../../src/core/geometry/vector.ts';
import { meshOf } from '../../src/core/surface/mesh.ts';
import { envelope } from '../../src/core/taper/envelope.ts';
import { directHeights, isPinched } from './direct-heights.ts';
import { type RandomRoof, randomRoof } from './random-roofs.ts';

function built({ outline, curbs, outlets }: RandomRoof) {
  const section = buildSection(
    outline,
    curbs,
    outlets.map(({ at }) => at),
  );
  const patches = envelope(section, outlets);
  const mesh = meshOf(
    patches,
    outlets.map(({ at }) => at),
  );
  return { section, patches, mesh };
}

/** Parts of the section that no outlet reaches are a finding of their own; the laws are about the rest. */
const isWhole = ({ section, patches }: ReturnType<typeof built>): boolean =>
  section.regions.length === 1 && patches.length > 0;

describe('taper surfaces on random roofs', () => {
  test('2,000 roofs: planes cover the section once, neighbours agree, water leaves from everywhere', () => {
    fc.assert(
      fc.property(randomRoof, (roof) => {
        const made = built(roof);
        fc.pre(isWhole(made));
        const { section, mesh, patches } = made;
        const covered = patches.reduce((sum, { ring }) => sum + signedAreaSqFt(ring), 0);
        // A part that hangs on a point alone has no way out and is a finding.
        if (!isPinched(section.rings)) expect(Math.abs(covered - section.areaSqFt)).toBeLessThan(1e-4);
        for (let slot = 0; slot < mesh.corners.length; slot++) {
          const own = heightIn(mesh.patch[Math.floor(slot / 3)].plane, mesh.points[mesh.corners[slot]]);
          expect(own - mesh.z[mesh.corners[slot]]).toBeLessThan(0.002);
        }
        const offers = roof.outlets.flatMap(({ id, at }) =>
          mesh.points.flatMap((p, vertex) =>
            distanceFt(p, at) < 1e-3 ? [{ vertex, levelIn: Number.NEGATIVE_INFINITY, outlet: id }] : [],
          ),
        );
        const judgement = judge(mesh, offers, () => null);
        expect(judgement.ponds.filter(({ greatestDepthIn }) => greatestDepthIn > 0.001)).toEqual([]);
        expect(judgement.trappedSqFt).toBeLessThan(1e-3);
        expect(judgement.flats.areaSqFt).toBeLessThan(1e-3);
        expect(judgement.flats.lengthFt).toBeLessThan(0.05);
        const least = Math.min(...roof.outlets.map(({ pattern }) => pattern.leastRiseInPerFt));
        expect(judgement.leastFaceSlopeInPerFt ?? 1).toBeGreaterThan(least - 1e-6);
        const sum = [...judgement.areaSqFt.values()].reduce((a, b) => a + b, 0);
        expect(Math.abs(sum - covered)).toBeLessThan(1e-2);
      }),
      { numRuns: 2000 },
    );
  });

  test('random points agree with a plain evaluation to 0.001 in', () => {
    fc.assert(
      fc.property(randomRoof, (roof) => {
        const made = built(roof);
        const { section, patches } = made;
        fc.pre(isWhole(made) && !isPinched(section.rings));
        const direct = directHeights(section.rings, roof);
        const step = Math.max(1, Math.floor(patches.length / 12));
        for (let i = 0; i < patches.length; i += step) {
          const { ring, plane } = patches[i];
          if (signedAreaSqFt(ring) < 1e-3) continue;
          const p = centroid(ring);
          expect(Math.abs(heightIn(plane, p) - direct(p))).toBeLessThan(0.001);
        }
      }),
      { numRuns: 120 },
    );
  });
});
