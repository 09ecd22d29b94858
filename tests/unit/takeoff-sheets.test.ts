import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Point, Ring } from '../../src/core/roof.ts';
import { siteOf } from '../../src/core/site/site.ts';
import { coveredRegion } from '../../src/core/takeoff/covered.ts';
import { rollsForPieces, rollsRunOn, splitRow } from '../../src/core/takeoff/roll-cutting.ts';
import { chooseSheets, layoutSheets } from '../../src/core/takeoff/sheet-layout.ts';
import { takeOff } from '../../src/core/takeoff/take-off.ts';
import { gutterRoof, layoutOf, roofOf, wayOf } from './takeoff-roofs.ts';

const size = { widthFt: 10, rollFt: 100, sideLapFt: 0.25, endLapFt: 0.25 };
const rectangle = (w: number, d: number): Ring => [
  [0, 0],
  [w, 0],
  [w, d],
  [0, d],
];
const turn =
  (deg: number) =>
  ([x, y]: Point): Point => {
    const [c, s] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
    return [c * x - s * y, s * x + c * y];
  };
const region = (ring: Ring) => [{ outer: ring, holes: [] }];
const ft = fc.double({ min: 3, max: 260, noNaN: true });

describe('sheets on the plan', () => {
  it('rolls hold the net area, no piece is longer than a roll, more depth never takes less', () => {
    fc.assert(
      fc.property(ft, ft, fc.double({ min: 0, max: 30, noNaN: true }), (w, d, more) => {
        const plan = layoutSheets({ covered: region(rectangle(w, d)), curbs: [], uphill: [0, 1] }, size);
        const deeper = layoutSheets({ covered: region(rectangle(w, d + more)), curbs: [], uphill: [0, 1] }, size);
        expect(plan.grossSqFt).toBeGreaterThanOrEqual(plan.netSqFt - 1e-3);
        expect(Math.max(...plan.cutsFt)).toBeLessThanOrEqual(size.rollFt);
        expect(deeper.rows).toBeGreaterThanOrEqual(plan.rows);
        expect(deeper.netSqFt).toBeGreaterThanOrEqual(plan.netSqFt - 1e-3);
        expect(deeper.seamFt).toBeGreaterThanOrEqual(plan.seamFt - 0.1);
      }),
      { numRuns: 100 },
    );
  });

  it('a roof turned on the plan takes the same sheets', () => {
    fc.assert(
      fc.property(ft, ft, fc.double({ min: 1, max: 359, noNaN: true }), (w, d, deg) => {
        const plan = layoutSheets({ covered: region(rectangle(w, d)), curbs: [], uphill: [0, 1] }, size);
        const turned = layoutSheets(
          { covered: region(rectangle(w, d).map(turn(deg))), curbs: [], uphill: turn(deg)([0, 1]) },
          size,
        );
        expect(turned.netSqFt).toBeCloseTo(plan.netSqFt, 1);
        expect(Math.abs(turned.seamFt - plan.seamFt)).toBeLessThan(0.05 + plan.seamFt * 1e-3);
      }),
      { numRuns: 60 },
    );
  });

  it('an L takes short sheets in its short part; a curb across a row cuts it in two', () => {
    const l: Ring = [
      [0, 0],
      [40, 0],
      [40, 20],
      [20, 20],
      [20, 40],
      [0, 40],
    ];
    const plan = layoutSheets({ covered: region(l), curbs: [], uphill: [0, 1] }, { ...size, sideLapFt: 0.5 });
    expect(plan.runsFt.map((run) => Math.round(run))).toEqual([40, 40, 40, 20, 20]);
    const curb: Ring = [
      [10, 8],
      [14, 8],
      [14, 22],
      [10, 22],
    ];
    const cut = layoutSheets({ covered: region(l), curbs: [curb], uphill: [0, 1] }, size);
    expect(cut.runsFt.map((run) => Math.round(run)).slice(1, 3)).toEqual([10, 26]);
  });

  it('a wider roll is taken for fewer seams only while it does not waste a quarter more', () => {
    const task = { covered: region(rectangle(30, 26)), curbs: [], uphill: [0, 1] as Point };
    const sizes = [90, 120, 240, 480].map((w) => ({ ...size, widthFt: w / 12 }));
    expect(chooseSheets(task, sizes).size.widthFt).toBe(10);
  });
});

describe('what goes past the edges', () => {
  it('corners are covered where both edges are passed, not where the outline turns in', () => {
    const l: Ring = [
      [0, 0],
      [4, 0],
      [4, 2],
      [2, 2],
      [2, 4],
      [0, 4],
    ];
    const edges = l.map((from, i) => ({ from, to: l[(i + 1) % 6]!, pastFt: 1 }));
    const [only, ...others] = coveredRegion(l, edges);
    expect(others).toEqual([]);
    // The L grown by 1 ft with square corners: 12 + perimeter 16 + 5 corners out - 1 in.
    let twice = 0;
    only!.outer.forEach(([x, y], i) => {
      const [a, b] = only!.outer[(i + 1) % only!.outer.length]!;
      twice += x * b - a * y;
    });
    expect(twice / 2).toBeCloseTo(12 + 16 + 5 - 1, 4);
  });

  it('a plan walked clockwise gives the same list', () => {
    const lists = [roofOf(gutterRoof(30, 20)), roofOf({ ...(gutterRoof(30, 20) as object), ...clockwise })].map(
      (roof) => {
        const { lines } = takeOff({
          site: siteOf(roof),
          layout: layoutOf(roof),
          membrane: 'tpo',
          attachment: wayOf('tpo'),
        });
        const line = lines.find(({ id }) => id === 'membrane-field')!;
        return [line.quantity, line.orderQuantity];
      },
    );
    expect(lists[1]![0]).toBeCloseTo(lists[0]![0]!, 3);
    expect(lists[1]![1]).toBe(lists[0]![1]);
  });
});

const clockwise = {
  outline: [
    [0, 0],
    [0, 20],
    [30, 20],
    [30, 0],
  ],
  edges: [
    { side: 3, kind: 'gutter', mayDrain: 'yes' },
    { side: 2, kind: 'rake', mayDrain: 'no' },
    { side: 1, kind: 'wall', mayDrain: 'no' },
    { side: 0, kind: 'rake', mayDrain: 'no' },
  ],
};

describe('cutting rolls', () => {
  it('pieces of a split row cover it with their laps', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 500, noNaN: true }), fc.boolean(), (run, half) => {
        const pieces = splitRow(run, 32.81, 0.5, half);
        expect(pieces.every((piece) => piece > 0 && piece <= 32.81 + 1e-9)).toBe(true);
        expect(pieces.reduce((s, p) => s + p, 0) - (pieces.length - 1) * 0.5).toBeCloseTo(run, 6);
      }),
    );
  });

  it('never fewer rolls than the length asks, never more than one for each piece', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.5, max: 100, noNaN: true }), { minLength: 1, maxLength: 40 }),
        (pieces) => {
          const rolls = rollsForPieces(pieces, 100);
          expect(rolls).toBeGreaterThanOrEqual(Math.ceil(pieces.reduce((s, p) => s + p, 0) / 100 - 1e-9));
          expect(rolls).toBeLessThanOrEqual(pieces.length);
        },
      ),
    );
  });

  it('rolls that run on', () => {
    expect([0, 1, 108, 108.1, 215.5, 215.6].map((laid) => rollsRunOn(laid, 108, 0.5))).toEqual([0, 1, 1, 2, 2, 3]);
  });
});
