import { describe, expect, it } from 'vitest';
import { assessReady, readRoofText } from '../../src/answer.ts';
import { judge } from '../../src/core/drainage/judge.ts';
import { buildSection } from '../../src/core/geometry/section.ts';
import { momentsOf } from '../../src/core/layout/thermal.ts';
import { sumpSentence } from '../../src/core/report/page-layouts.ts';
import type { Layout } from '../../src/core/report/types.ts';
import type { Point, Ring } from '../../src/core/roof.ts';
import { meshOf } from '../../src/core/surface/mesh.ts';
import { envelope } from '../../src/core/taper/envelope.ts';
import { fourWay } from '../../src/core/taper/pattern.ts';
import { type Sump, withSumps } from '../../src/core/taper/sump.ts';

const square: Ring = [
  [0, 0],
  [20, 0],
  [20, 20],
  [0, 20],
];
const taper = (at: Point, outline: Ring = square, curbs: Ring[] = []) =>
  envelope(buildSection(outline, curbs, [at]), [{ id: 'D1', kind: 'point', at, levelIn: 1.5, pattern: fourWay(0.25) }]);
/** Twice the field's 1/4 over 2 ft: sunk by 1/2 in. */
const sump = (at: Point): Sump => ({ outlet: 'D1', at, levelIn: 1, riseInPerFt: 0.5, halfFt: 2, turnDeg: 0 });

describe('a sump in a taper', () => {
  it('takes out area x drop / 3 in the middle of a field, a half against a wall, a quarter in a corner', () => {
    for (const [at, share] of [
      [[10, 10], 1],
      [[0, 10], 1 / 2],
      [[0, 0], 1 / 4],
    ] as const) {
      const field = taper(at);
      const { patches, made } = withSumps(field, [sump(at)]);
      expect(made).toHaveLength(1);
      const out = momentsOf(field).boardFt - momentsOf(patches).boardFt;
      expect(out).toBeCloseTo((share * 16 * 0.5) / 3, 6);
      expect(momentsOf(patches).areaSqFt).toBeCloseTo(400, 6);
      expect(momentsOf(patches).leastIn).toBeCloseTo(1, 9);
    }
  });

  it('drains, and leaves no step at its rim', () => {
    const { patches } = withSumps(taper([10, 10]), [sump([10, 10])]);
    const mesh = meshOf(patches, [[10, 10]]);
    const drain = mesh.points.findIndex(([x, y]) => Math.hypot(x - 10, y - 10) < 1e-6);
    const judged = judge(mesh, [{ vertex: drain, levelIn: Number.NEGATIVE_INFINITY, outlet: 'D1' }], () => null);
    expect(judged.drained).toBe(true);
    expect(judged.leastFaceSlopeInPerFt).toBeCloseTo(0.25, 9);
    expect(judged.leastValleySlopeInPerFt).toBeCloseTo(0.25 / Math.SQRT2, 6);
  });

  it('is left out where the taper stands over its rim: behind a curb', () => {
    const wall: Ring = [
      [10.5, 6],
      [11, 6],
      [11, 14],
      [10.5, 14],
    ];
    const { made } = withSumps(taper([10, 10], square, [wall]), [sump([10, 10])]);
    expect(made).toHaveLength(0);
  });
});

/** Layouts of a roof of 20 x 20 ft with a drain in its middle. */
function layoutsWith(parts: object): readonly Layout[] {
  const ready = readRoofText(
    JSON.stringify({
      version: 1,
      label: 'Invented square',
      outline: square,
      outlets: [{ id: 'D1', kind: 'drain', at: [10, 10], role: 'primary' }],
      existing: { surface: 'level', readOn: 'deck' },
      ...parts,
    }),
  );
  if (!ready.ok) throw new Error(ready.problems.map(({ message }) => message).join('; '));
  return assessReady(ready).layouts.filter(({ rejected }) => rejected === null);
}

const fourWayOf = (parts: object): Layout => layoutsWith(parts).find(({ id }) => id === 'existing-outlets')!;
const laidSqFt = (lines: Layout['boards']): number =>
  lines.reduce((sum, { net, runFt, widthFt }) => sum + net * runFt * widthFt, 0);

describe('sumps of layouts', () => {
  it('without a flat layer there is none, nor where none is wanted or less than an inch would be left', () => {
    expect(fourWayOf({}).sumps).toEqual([]);
    expect(sumpSentence(fourWayOf({}))).toContain('less than 1 in of board');
    expect(sumpSentence(fourWayOf({ boards: { sumpFt: 0 } }))).toContain('none are wanted');
    expect(fourWayOf({ insulation: { baseIn: 2 }, boards: { sumpFt: 0 } }).sumps).toEqual([]);
    expect(fourWayOf({ insulation: { baseIn: 0.5 } }).sumps).toEqual([]);
    // 3 in at the drain, sunk by 1/4 over 1 ft, on boards that start at 1/2: 2 1/4 in of flat would be left.
    const odd = fourWayOf({ insulation: { baseIn: 2.5 }, boards: { sumpFt: 2 } });
    expect(odd.sumps).toEqual([]);
    expect(sumpSentence(odd)).toContain('no flat boards of the list make the 2 1/4″ that would be left');
  });

  it('boards of a sump are in the order, on what is left of the base, and cover its planes once', () => {
    const layout = fourWayOf({ insulation: { baseIn: 2 } });
    expect(layout.sumps).toEqual([{ outlet: 'D1', sideFt: 4, slopeInPerFt: 0.5, atDrainIn: 2 }]);
    const sump = layout.boards.filter(({ slopeInPerFt }) => slopeInPerFt === 0.5);
    expect(laidSqFt(sump)).toBeCloseTo(16, 6);
    expect(sump.every(({ fillLayersIn }) => fillLayersIn.join() === '1.5')).toBe(true);
    expect(laidSqFt(layout.boards)).toBeCloseTo(400, 6);
    expect(layout.fill.find(({ thicknessIn }) => thicknessIn === 1.5)?.areaSqFt).toBeCloseTo(16, 6);
    expect(layout.boardWork.unmade).toEqual([]);
    expect(layout.bound!.ratio).toBeGreaterThanOrEqual(1);
  });

  it('one that is asked for goes down to nothing where no flat layer lies, with boards that start there', () => {
    const layout = fourWayOf({ boards: { sumpFt: 4 } });
    expect(layout.sumps?.[0]?.atDrainIn).toBeCloseTo(0, 9);
    expect(layout.leastThicknessIn).toBeCloseTo(0, 9);
    const sump = layout.boards.filter(({ slopeInPerFt }) => slopeInPerFt === 0.5);
    expect(sump.map(({ lowIn, fillLayersIn }) => [lowIn, fillLayersIn.length])).toEqual([[0, 0]]);
    expect(laidSqFt(sump)).toBeCloseTo(16, 6);
    expect(layout.boardWork.unmade).toEqual([]);
    expect(layout.leastFaceSlopeInPerFt).toBeCloseTo(0.25, 9);
  });

  it('a sump of 8 ft is as large as it says', () => {
    const layout = fourWayOf({ insulation: { baseIn: 2 }, boards: { sumpFt: 8 } });
    expect(layout.sumps?.[0]?.atDrainIn).toBeCloseTo(1.5, 9);
    expect(laidSqFt(layout.boards.filter(({ slopeInPerFt }) => slopeInPerFt === 0.5))).toBeCloseTo(64, 6);
  });

  it('the flat layer that was asked for lies under every layout', () => {
    for (const { fill, leastThicknessIn } of layoutsWith({ insulation: { baseIn: 1.5 }, boards: { sumpFt: 0 } })) {
      expect(leastThicknessIn).toBeCloseTo(2, 9);
      expect(fill.find(({ thicknessIn }) => thicknessIn === 1.5)?.areaSqFt).toBeGreaterThan(400 - 1e-6);
    }
  });
});
