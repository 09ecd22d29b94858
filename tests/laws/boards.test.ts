import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildSection } from '../../src/core/geometry/section.ts';
import { signedAreaSqFt } from '../../src/core/geometry/vector.ts';
import { startsForTiling } from '../../src/core/layout/boards.ts';
import { type Catalogue, tradeCatalogue } from '../../src/core/layout/catalogue.ts';
import { layerParts } from '../../src/core/layout/layers.ts';
import { momentsOf } from '../../src/core/layout/thermal.ts';
import { tile } from '../../src/core/layout/tiling.ts';
import { envelope } from '../../src/core/taper/envelope.ts';
import { type RandomRoof, randomRoof } from './random-roofs.ts';

const RUNS = Number(process.env.LAW_RUNS ?? 120);
const LOW_IN = 0.5;

/** The roof as it is built: every outlet starts at the thinnest edge or above. */
function laid({ outline, curbs, outlets }: RandomRoof) {
  const section = buildSection(
    outline,
    curbs,
    outlets.map(({ at }) => at),
  );
  const starts = outlets.map((outlet) => ({ ...outlet, levelIn: outlet.levelIn + LOW_IN }));
  return { patches: envelope(section, starts), starts };
}

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

/** Every board, strip and flat board is one that the catalogue has. */
function offCatalogue(catalogue: Catalogue, tiling: ReturnType<typeof tile>): string[] {
  const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-9;
  const boards = tiling.boards
    .filter(
      ({ slopeInPerFt, lowIn, highIn, runFt, widthFt }) =>
        !catalogue.groups.some(
          (group) =>
            near(group.slopeInPerFt, slopeInPerFt) &&
            near(group.runFt, runFt) &&
            near(group.widthFt, widthFt) &&
            group.lowEdgesIn.some((low) => near(low, lowIn) && near(low + slopeInPerFt * runFt, highIn)),
        ),
    )
    .map(({ mark, slopeInPerFt }) => `board ${mark} at ${slopeInPerFt}`);
  const layers = [
    ...tiling.fill.map(({ thicknessIn }) => thicknessIn),
    ...tiling.boards.flatMap((b) => b.fillLayersIn),
  ];
  const flat = layers.filter((t) => !catalogue.flat.some(({ thicknessIn }) => near(thicknessIn, t)));
  const strips = tiling.work.strips.filter(
    ({ highIn, runIn }) => !catalogue.strips.some((s) => near(s.highIn, highIn) && Math.abs(s.runIn - runIn) < 1e-4),
  );
  return [
    ...boards,
    ...flat.map((t) => `fill ${t}`),
    ...strips.map(({ highIn, runIn }) => `strip ${highIn} in ${runIn}`),
  ];
}

describe('boards of random roofs: four-way, pyramids, sloped valleys, crickets', () => {
  test('layers add up to the thickness, and the boards of each cover its planes once', () => {
    fc.assert(
      fc.property(randomRoof, (roof) => {
        const { patches, starts } = laid(roof);
        if (patches.length === 0) return;
        const job = { patches, catalogue: tradeCatalogue, baseIn: 0, ...startsForTiling(starts) };
        const parts = layerParts(patches, job.layersAt);
        const whole = momentsOf(patches);
        expect(sum(parts.map((part) => momentsOf([part]).boardFt))).toBeCloseTo(whole.boardFt, 4);
        const tiling = tile(job);
        for (const layer of [0, 1]) {
          const own = parts.filter((part) => part.layer === layer);
          const unmade = sum(tiling.work.unmade.filter((u) => u.layer === layer).map(({ areaSqFt }) => areaSqFt));
          const pieces = tiling.pieces.filter((piece) => piece.layer === layer);
          const laidSqFt = sum(pieces.map(({ outline }) => signedAreaSqFt(outline)));
          expect(laidSqFt + unmade).toBeCloseTo(sum(own.map(({ ring }) => signedAreaSqFt(ring))), 1);
        }
        expect(offCatalogue(tradeCatalogue, tiling)).toEqual([]);
      }),
      { numRuns: RUNS },
    );
  }, 60_000);

  test('no layer is thinner than nothing, the one on the ground never thinner than its boards', () => {
    fc.assert(
      fc.property(randomRoof, (roof) => {
        const { patches, starts } = laid(roof);
        const { layersAt } = startsForTiling(starts);
        for (const { ring, plane, layer } of layerParts(patches, layersAt))
          for (const [x, y] of ring)
            expect(plane.atOriginIn + plane.gx * x + plane.gy * y).toBeGreaterThan(layer === 0 ? LOW_IN - 1e-3 : -1e-6);
      }),
      { numRuns: RUNS },
    );
  }, 60_000);

  test('boards are taken for all pieces, and re-use never saves more than is left over', () => {
    fc.assert(
      fc.property(randomRoof, (roof) => {
        const { patches, starts } = laid(roof);
        const { boards } = tile({ patches, catalogue: tradeCatalogue, baseIn: 0, ...startsForTiling(starts) });
        for (const line of boards) {
          expect(line.boards).toBeGreaterThanOrEqual(line.net - 0.01);
          expect(line.order).toBeGreaterThanOrEqual(line.boards + Math.ceil(line.boards / 10 - 1e-9));
          expect(line.cut).toBeLessThanOrEqual(line.boards);
          expect(line.boards - line.reusable).toBeGreaterThanOrEqual(line.net - line.sliverSqFt / 16 - 0.1);
        }
      }),
      { numRuns: RUNS },
    );
  }, 60_000);
});
