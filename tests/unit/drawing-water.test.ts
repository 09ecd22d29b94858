import { describe, expect, it } from 'vitest';
import { boxesOverlap, boxOf, signedAreaSqFt } from '../../src/core/geometry/vector.ts';
import { mapKey, waterMapWords } from '../../src/core/report/page-map.ts';
import type { Assessment, DrainageArea, ExistingReport, Ring } from '../../src/core/report/types.ts';
import { looksOf } from '../../src/drawing/area-looks.ts';
import { type DrawList, type Mark, roomOf } from '../../src/drawing/draw-list.ts';
import { loadLadderDrawing } from '../../src/drawing/load-ladder.ts';
import { printSvg } from '../../src/drawing/svg.ts';
import { waterMap } from '../../src/drawing/water-map.ts';
import { caseRoof } from '../cases/case-roof.ts';
import { byHand, demo, handLayout } from './drawing-fixture.ts';
import { wordsOf } from './drawing-svg-reading.ts';

const words = (list: DrawList): string[] => wordsOf(printSvg(list, { id: 'x' }));

const tile = (x: number, y: number): Ring => [
  [x, y],
  [x + 10, y],
  [x + 10, y + 10],
  [x, y + 10],
];

describe('where the water goes', () => {
  const c11 = caseRoof('c11').answer;

  it('names every outlet with its own ground, and the grounds make up the section', () => {
    const list = waterMap(c11, null);
    expect(words(list).filter((text) => text.includes('sq ft') && !text.startsWith('+'))).toHaveLength(4);
    const drawn = list.marks.filter(
      (mark) => mark.place?.startsWith('outlet-') && mark.kind === 'polygon' && !mark.pen,
    );
    const sum = drawn.reduce(
      (total, mark) => total + (mark.kind === 'polygon' ? Math.abs(signedAreaSqFt(mark.outline)) : 0),
      0,
    );
    expect(sum).toBeCloseTo(c11.section.areaSqFt, 3);
  });

  it('shows and names the water from the steep roof above', () => {
    expect(words(waterMap(c11, null))).toContain('+480 sq ft from shingles');
    expect(waterMapWords(c11, null)).toContain('480 sq ft of steep roof shed over the shingles above, 20′-0″.');
    expect(mapKey(c11.plan).map(({ sign }) => sign)).toEqual(['shed']);
  });

  it('tells neighbours apart by tone or lines', () => {
    for (const { areas } of [c11.existing, demo('twenty-drains').existing]) {
      const looks = looksOf(areas);
      const near = ([a, b]: DrainageArea[]) => {
        const grown = boxOf(b.outline);
        const by = -0.5;
        return boxesOverlap(boxOf(a.outline), {
          minX: grown.minX - by,
          maxX: grown.maxX + by,
          minY: grown.minY - by,
          maxY: grown.maxY + by,
        });
      };
      for (const a of areas) {
        for (const b of areas) {
          if (a.outlet === b.outlet || !near([a, b])) continue;
          expect([a.outlet, b.outlet, looks.get(a.outlet) === looks.get(b.outlet)]).toEqual([
            a.outlet,
            b.outlet,
            false,
          ]);
        }
      }
    }
    const nine = [0, 1, 2].flatMap((i) =>
      [0, 1, 2].map((k) => ({ outlet: `D${i}${k}`, outline: tile(10 * i, 10 * k), holes: [], areaSqFt: 100 })),
    );
    const looks = looksOf(nine);
    expect(looks.get('D11')).not.toBe(looks.get('D12'));
  });

  const withInflow = (kind: string): Assessment => ({
    ...byHand,
    plan: { ...byHand.plan, inflows: [{ at: [6, 18], kind, fromSqFt: 350 }] },
    existing: { ...byHand.existing, areas: handLayout.areas },
  });

  it('marks a shingled valley apart from a downspout, with the way its flow takes', () => {
    const valley = withInflow('valley');
    expect(words(waterMap(valley, handLayout))).toContain('valley dumps here, 350 sq ft');
    expect(mapKey(valley.plan)[0]).toMatchObject({ sign: 'valley' });
    expect(mapKey(valley.plan)[0].words).toContain('concentrated flow');
    // Down the new plane, which falls toward the gutter: straight south of the spot.
    const arrows = waterMap(valley, handLayout).marks.filter(
      (mark): mark is Mark & { kind: 'line' } => mark.kind === 'line' && mark.pen === 'shore',
    );
    expect(arrows).toHaveLength(1);
    expect(arrows[0].from[0]).toBeCloseTo(arrows[0].to[0], 9);
    expect(arrows[0].to[1]).toBeLessThan(arrows[0].from[1]);
    const spout = withInflow('downspout');
    expect(words(waterMap(spout, handLayout))).toContain('downspout, 350 sq ft');
    expect(mapKey(spout.plan).map(({ sign }) => sign)).toEqual(['downspout']);
  });

  it('draws no boundary inside the ground of one outlet', () => {
    const list = waterMap(demo('back-section'), null);
    expect(list.marks.filter((mark) => mark.kind === 'line' && mark.pen === 'area')).toEqual([]);
  });
});

describe('levels of water drawn to scale', () => {
  const existing: ExistingReport = {
    ...byHand.existing,
    liveLoad: { psf: 20.8, assumed: true },
    loads: [
      { label: 'to run into drain D1', depthIn: 2, loadPsf: 10.4, exceedsLiveLoad: false },
      { label: 'primary outlets shut: to run out at scupper S1', depthIn: 3, loadPsf: 15.6, exceedsLiveLoad: false },
      { label: 'all outlets shut: over parapet, 20′-0″', depthIn: 8, loadPsf: 41.6, exceedsLiveLoad: true },
    ],
  };
  const list = loadLadderDrawing(existing)!;

  it('stands every level at its depth: heights are in proportion', () => {
    const heights = list.marks.flatMap((mark) => (mark.kind === 'line' && mark.pen === 'shore' ? [mark.from[1]] : []));
    const [first] = heights;
    expect(heights.map((y) => y / first)).toEqual([1, 2, 3, 8].map((depth) => expect.closeTo(depth, 9)));
  });

  it('draws the live load at the depth that weighs as much: 20.8 psf is 4 in at 5.2 psf to the inch', () => {
    const limit = list.marks.find((mark) => mark.kind === 'line' && mark.pen === 'old');
    const pondLevel = list.marks.find((mark) => mark.kind === 'line' && mark.pen === 'shore');
    if (limit?.kind !== 'line' || pondLevel?.kind !== 'line') throw new Error('a level is not drawn');
    expect(limit.from[1] / pondLevel.from[1]).toBeCloseTo(4, 9);
  });

  it('prints the load at every step, and what is over in red with its word', () => {
    const all = words(list);
    for (const text of ['1″, 5.2 psf', '2″, 10.4 psf', '3″, 15.6 psf', '8″, 41.6 psf: over'])
      expect(all).toContain(text);
    const over = list.marks.filter((mark) => mark.kind === 'text' && mark.tone === 'stop');
    expect(over).toHaveLength(1);
  });

  it('lets no words stand on others or off the sheet', () => {
    for (const each of [existing, caseRoof('c26').answer.existing, demo('twenty-drains').existing]) {
      const drawn = loadLadderDrawing(each)!;
      const rooms = drawn.marks.flatMap((mark) => (mark.kind === 'text' ? [roomOf(mark, drawn.letterFt)] : []));
      rooms.forEach((a, i) => {
        expect(a.minX).toBeGreaterThanOrEqual(drawn.box.minX - 0.2);
        expect(a.maxX).toBeLessThanOrEqual(drawn.box.maxX);
        for (const b of rooms.slice(i + 1)) expect(boxesOverlap(a, b)).toBe(false);
      });
    }
  });

  it('is not drawn where no level is known', () => {
    expect(loadLadderDrawing({ ...byHand.existing, ponds: [], loads: [] })).toBeNull();
  });
});
