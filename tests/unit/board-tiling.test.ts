import { describe, expect, test } from 'vitest';
import { buildSection } from '../../src/core/geometry/section.ts';
import { signedAreaSqFt } from '../../src/core/geometry/vector.ts';
import { layersOf } from '../../src/core/layout/bands.ts';
import { boardRejection } from '../../src/core/layout/board-rejection.ts';
import { startsForTiling } from '../../src/core/layout/boards.ts';
import { type Catalogue, catalogueOf, tradeCatalogue } from '../../src/core/layout/catalogue.ts';
import { isTooSmall } from '../../src/core/layout/pieces.ts';
import { boardsSaved } from '../../src/core/layout/reuse.ts';
import { tile } from '../../src/core/layout/tiling.ts';
import type { Point, Ring } from '../../src/core/roof.ts';
import { envelope } from '../../src/core/taper/envelope.ts';
import { fourWay, pyramid, type SlopePattern, slopedValley, twoWayWithCrickets } from '../../src/core/taper/pattern.ts';
import type { TaperOutlet } from '../../src/core/taper/sources.ts';
import { boardSheets } from '../../src/drawing/board-sheets.ts';
import type { DrawList } from '../../src/drawing/draw-list.ts';
import { printSvg } from '../../src/drawing/svg.ts';
import { lShape } from '../shapes.ts';
import { byHand, handLayout } from './drawing-fixture.ts';
import { drawnWith, wordsOf } from './drawing-svg-reading.ts';

const rectangle = (a: number, b: number): Ring => [
  [0, 0],
  [a, 0],
  [a, b],
  [0, b],
];
const gutter = (lengthFt: number): TaperOutlet => ({
  id: 'side-0',
  kind: 'edge',
  from: [0, 0],
  to: [lengthFt, 0],
  levelIn: 0.5,
  pattern: fourWay(0.25),
});
const drain = (at: Point, pattern: SlopePattern, levelIn = 0.5): TaperOutlet => ({
  id: 'D1',
  kind: 'point',
  at,
  levelIn,
  pattern,
});

function tiled(outline: Ring, starts: TaperOutlet[], catalogue: Catalogue = tradeCatalogue, curbs: Ring[] = []) {
  const points = starts.flatMap((start) => (start.kind === 'point' ? [start.at] : []));
  const patches = envelope(buildSection(outline, curbs, points), starts);
  return tile({ patches, catalogue, baseIn: 0, ...startsForTiling(starts) });
}
const supplier = (boards: Partial<Parameters<typeof catalogueOf>[0]['boards']>): Catalogue =>
  catalogueOf({ boards: { groups: null, flat: null, strips: null, leastPieceIn: null, sumpFt: null, ...boards } });

describe('rows that start inside a board', () => {
  test('behind the inside corner of an L: the upper 2 ft of a 0.5-1.5 board on 4 in of fill', () => {
    // The corner (20, 20) stands 4.5 in over the drain (18 ft at 1/4), whose boards start at 0.5: 5.0 in there.
    const { pieces, work } = tiled(lShape, [drain([38, 10], fourWay(0.25))]);
    const first = pieces.filter(({ outline, fromIn, mark }) => {
      const low = Math.min(...outline.map(([, y]) => y));
      return mark === '0.5-1.5 +4' && Math.abs(fromIn - 1) < 1e-6 && Math.abs(low - 20) < 1e-6;
    });
    expect(first.length).toBeGreaterThanOrEqual(1);
    expect(work.rips).toContainEqual(
      expect.objectContaining({
        mark: '0.5-1.5 +4',
        part: 'upper',
        fromIn: expect.closeTo(1, 6),
        useFt: expect.closeTo(2, 6),
      }),
    );
  });

  test('an outlet higher than a board edge: the first row is ripped, no board is made up', () => {
    const { pieces, work } = tiled(rectangle(16, 16), [drain([8, 8], fourWay(0.25), 0.75)]);
    expect(new Set(pieces.map(({ mark }) => mark))).toEqual(new Set(['0.5-1.5', '1.5-2.5', '0.5-1.5 +2']));
    expect(
      work.rips.some(
        ({ mark, part, useFt }) => mark === '0.5-1.5 +2' && part === 'lower' && Math.abs(useFt - 1) < 1e-6,
      ),
    ).toBe(true);
  });
});

describe('layers', () => {
  test('a sloped valley: boards along the valley under boards across it, feathered by strips', () => {
    const { boards, work, fill } = tiled(rectangle(40, 20), [drain([20, 10], slopedValley(0.125, 0.25, 90))]);
    const slopes = new Map(boards.map(({ layer, slopeInPerFt }) => [layer, slopeInPerFt]));
    expect([...slopes]).toEqual([
      [0, 0.125],
      [1, 0.25],
    ]);
    // Both sides of a 40 ft valley.
    expect(work.strips).toEqual([{ highIn: 0.5, runIn: 24, lengthFt: expect.closeTo(80, 6), order: 20 }]);
    expect(work.unmade).toEqual([]);
    expect(fill.length).toBeGreaterThan(0);
  });

  test('boards under a cricket run on from the field', () => {
    const shape = { fieldInPerFt: 0.25, boardInPerFt: 0.5, widthToLength: 0.5 };
    const outline = rectangle(24, 12);
    const starts = [0, 24].map((x, i) => ({ ...drain([x, 0], twoWayWithCrickets(shape, 90)), id: `S${i}` }));
    const { pieces, boards } = tiled(outline, starts);
    // Without a joint at the cricket: 6 whole boards to each of 3 rows.
    expect(pieces.filter(({ layer }) => layer === 0)).toHaveLength(18);
    expect(boards.filter(({ layer }) => layer === 0).every(({ cut }) => cut === 0)).toBe(true);
    const covered = pieces.reduce((sum, { coveredSqFt }) => sum + coveredSqFt, 0);
    const upper = pieces.filter(({ layer }) => layer === 1);
    expect(covered).toBeCloseTo(72, 6);
    expect(upper.reduce((sum, { outline: ring }) => sum + signedAreaSqFt(ring), 0)).toBeCloseTo(72, 6);
    // 0.5 in at the wall and 2.683 in of cricket at its peak.
    expect(Math.max(...upper.map(({ stackIn }) => stackIn))).toBeCloseTo(0.5 + 2.6833, 3);
  });

  test('the plan shows the cricket on top, and the boards under it on a sheet of their own', () => {
    const shape = { fieldInPerFt: 0.25, boardInPerFt: 0.5, widthToLength: 0.5 };
    const starts = [0, 30].map((x, i) => ({ ...drain([x, 0], twoWayWithCrickets(shape, 90)), id: `S${i}` }));
    const { pieces, boards, fill, work } = tiled(rectangle(30, 24), starts);
    const layout = { ...handLayout, pieces, boards, fill, boardWork: work, creases: [] };
    const { whole, parts, key } = boardSheets(byHand, layout);
    const drawn = (list: DrawList): number => drawnWith(printSvg(list, { id: 'x' }), 'pen-board').length;
    expect(drawn(whole)).toBe(pieces.length);
    expect(parts.map(({ id }) => id)).toEqual(['boards-ground']);
    expect(drawn(parts[0].list)).toBe(pieces.filter(({ layer }) => layer === 0).length);
    // Six rows of the field are named on the lower sheet, also where the cricket hides them.
    expect(wordsOf(printSvg(parts[0].list, { id: 'y' })).filter((word) => word === '0.5-1.5')).toHaveLength(8);
    expect(key.map(({ mark }) => mark)).toContain('0-2, on the boards below');
    expect(boardSheets(byHand, handLayout).parts).toEqual([]);
  });

  test('a pyramid of two slopes takes each face from its own boards', () => {
    const { boards } = tiled(rectangle(40, 20), [drain([20, 10], pyramid(0.125, 0.25, 90))]);
    expect(new Set(boards.map(({ slopeInPerFt }) => slopeInPerFt))).toEqual(new Set([0.125, 0.25]));
  });
});

describe('planes that the supplier does not make', () => {
  const bay = [drain([8, 8], fourWay(0.25))];

  test('a slope off the list', () => {
    const { pieces, work } = tiled(rectangle(16, 16), [drain([8, 8], fourWay(0.3))]);
    expect(pieces).toEqual([]);
    expect(work.unmade).toEqual([expect.objectContaining({ cause: 'slope', areaSqFt: expect.closeTo(256, 6) })]);
    const rejection = boardRejection(work, tradeCatalogue);
    expect(rejection?.why).toContain('256 sq ft would need boards of');
    expect(rejection?.relax).toMatch(/^The list has tapered boards of .*1\/4 in per ft.*: add boards of/);
  });

  test('thinner than the thinnest edge', () => {
    const thick = supplier({
      groups: [{ slopeInPerFt: 0.25, runFt: 4, widthFt: 4, lowEdgesIn: [1, 2], fillStepIn: 2 }],
    });
    const { work } = tiled(rectangle(16, 16), bay, thick);
    // The square within 2 ft of the drain is under 1 in.
    expect(work.unmade).toEqual([expect.objectContaining({ cause: 'too-thin', areaSqFt: expect.closeTo(16, 6) })]);
  });

  test('no strip to feather an upper layer, no flat stock for the fill', () => {
    const valley = [drain([20, 10], slopedValley(0.125, 0.25, 90))];
    const noStrips = supplier({ strips: [{ highIn: 1, runIn: 24 }] });
    expect(tiled(rectangle(40, 20), valley, noStrips).work.unmade.map(({ cause }) => cause)).toContain('no-strip');
    const thirds = supplier({ flat: [{ thicknessIn: 0.75, lengthFt: 8, widthFt: 4 }] });
    expect(
      tiled(rectangle(40, 40), [drain([20, 20], fourWay(0.25))], thirds).work.unmade.map(({ cause }) => cause),
    ).toContain('no-fill');
    expect(boardRejection(tiled(rectangle(16, 16), bay).work, tradeCatalogue)).toBeNull();
  });

  test('three boards of a supplier on 3 in of fill', () => {
    const three = supplier({
      groups: [{ slopeInPerFt: 0.25, runFt: 4, widthFt: 4, lowEdgesIn: [0.5, 1.5, 2.5], fillStepIn: 3 }],
    });
    const { boards } = tiled(rectangle(32, 32), [drain([16, 16], fourWay(0.25))], three);
    expect(boards.map(({ mark }) => mark)).toEqual(['0.5-1.5', '1.5-2.5', '2.5-3.5', '0.5-1.5 +3']);
    expect(boards[3].fillLayersIn).toEqual([1.5, 1.5]);
  });
});

describe('small pieces', () => {
  const square = (side: number): Ring => rectangle(side, side);

  test('a circle decides, not the area', () => {
    expect(isTooSmall(square(0.3), 1 / 3, true)).toBe(true);
    expect(isTooSmall(square(0.35), 1 / 3, true)).toBe(false);
    expect(isTooSmall(rectangle(4, 0.3), 1 / 3, true)).toBe(true);
    // Right triangle with legs 1: inscribed diameter 2 - sqrt 2 = 0.586.
    const right: Ring = [
      [0, 0],
      [1, 0],
      [0, 1],
    ];
    expect(isTooSmall(right, 0.585, true)).toBe(false);
    expect(isTooSmall(right, 0.587, true)).toBe(true);
    expect(isTooSmall(right, 0.587, false)).toBe(true);
    expect(isTooSmall(right, 0.585, false)).toBe(false);
  });

  test('a strip of 3 in past the last row comes out of offcuts, and is listed', () => {
    const start = gutter(10);
    const { boards, pieces } = tiled(rectangle(10, 4.25), [start]);
    const last = boards.find(({ mark }) => mark === '1.5-2.5');
    expect(last).toMatchObject({ slivers: 3, sliverSqFt: expect.closeTo(2.5, 6), boards: 1 });
    expect(pieces.filter(({ sliver }) => sliver)).toHaveLength(3);
    // The least piece is the supplier's own: 2 in, and the strip is laid as three boards.
    const small = tiled(rectangle(10, 4.25), [start], supplier({ leastPieceIn: 2 }));
    expect(small.boards.find(({ mark }) => mark === '1.5-2.5')).toMatchObject({ slivers: 0, boards: 3 });
  });

  test('a board round a curb keeps its area', () => {
    const start = gutter(12);
    const curb: Ring = [
      [5, 5],
      [7, 5],
      [7, 7],
      [5, 7],
    ];
    const { pieces } = tiled(rectangle(12, 12), [start], tradeCatalogue, [curb]);
    expect(pieces.reduce((sum, { outline }) => sum + signedAreaSqFt(outline), 0)).toBeCloseTo(140, 4);
  });
});

describe('re-use of offcuts', () => {
  const valley: Ring = [
    [4, 0],
    [4, 4],
    [0, 4],
  ].map(([u, w]): Point => [u, w]);
  const hip: Ring = [
    [0, 0],
    [4, 0],
    [0, 4],
  ];

  test('two valley pieces need a board each, a valley and a hip piece share one', () => {
    const one = (outline: Ring) => ({ outlines: [outline] });
    expect(boardsSaved([one(valley), one(valley)], 4, 4)).toBe(0);
    // Less the width of the saw: the pair is a little over 4 ft.
    expect(boardsSaved([one(valley), one(hip)], 4, 4 + 1 / 48)).toBe(1);
  });

  test('half boards share', () => {
    const half = { outlines: [rectangle(4, 1.9)] };
    expect(boardsSaved([half, half, half], 4, 4)).toBe(1);
  });
});

describe('fill in stock layers', () => {
  test.each([
    [0, []],
    [2, [2]],
    [3, [1.5, 1.5]],
    [4, [2, 2]],
    [6, [2, 2, 2]],
    [2.75, null],
  ])('%s in', (fillIn, layers) => {
    expect(layersOf(tradeCatalogue, fillIn)).toEqual(layers);
  });

  test('of a supplier with one thickness', () => {
    const one = supplier({ flat: [{ thicknessIn: 1, lengthFt: 4, widthFt: 4 }] });
    expect(layersOf(one, 3)).toEqual([1, 1, 1]);
    expect(layersOf(one, 2.5)).toBeNull();
  });
});
