import { describe, expect, it } from 'vitest';
import { heightIn, slopeInPerFt } from '../../src/core/geometry/plane.ts';
import { distanceFt, isInside, signedAreaSqFt } from '../../src/core/geometry/vector.ts';
import type { Assessment, Layout, Point } from '../../src/core/report/types.ts';
import { type Contour, contourStepIn, contoursOf } from '../../src/drawing/contours.ts';
import type { DrawList } from '../../src/drawing/draw-list.ts';
import { lowestIn } from '../../src/drawing/new-roof.ts';
import { fillZones, heightsCaption, planHeights } from '../../src/drawing/plan-heights.ts';
import { planPair } from '../../src/drawing/plan-pair.ts';
import { sectionCut } from '../../src/drawing/section-cut.ts';
import { cutsThrough } from '../../src/drawing/section-profile.ts';
import { printSvg } from '../../src/drawing/svg.ts';
import { byHand, demo, handLayout } from './drawing-fixture.ts';
import { wordsOf } from './drawing-svg-reading.ts';

const lengthOf = ({ points }: Contour): number =>
  points.slice(1).reduce((sum, p, i) => sum + distanceFt(points[i], p), 0);

/** Four planes at 1/4 in/ft about the middle of 20 x 20 ft. */
const bay = (
  [
    [0.25, 0, [20, 0], [20, 20]],
    [0, 0.25, [20, 20], [0, 20]],
    [-0.25, 0, [0, 20], [0, 0]],
    [0, -0.25, [0, 0], [20, 0]],
  ] as const
).map(([gx, gy, a, b]) => ({
  outline: [[10, 10], a, b] as Point[],
  holes: [],
  plane: { atOriginIn: -10 * (gx + gy), gx, gy },
}));

const textsOf = (list: DrawList | null | undefined): string[] =>
  list?.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])) ?? [];

describe('lines of equal height', () => {
  it('are squares about the drain of a four-way bay, as long as the plane says', () => {
    const lines = contoursOf(bay, 0, 2.5, 0.5);
    expect(lines.map((line) => line.heightIn)).toEqual([0.5, 1, 1.5, 2, 2.5]);
    for (const line of lines) {
      expect(lengthOf(line)).toBeCloseTo(8 * (line.heightIn / 0.25), 2);
      expect(line.points).toHaveLength(5);
    }
  });

  it('lie at their height everywhere and stay inside the roof, on real roofs', () => {
    for (const name of ['back-section', 'corner-drain'] as const) {
      const { layout } = shown(demo(name));
      const low = lowestIn(layout);
      for (const { heightIn: z, points } of contoursOf(layout.facets, low, low + 20, 1)) {
        for (const [i, b] of points.slice(1).entries()) {
          const middle: Point = [(points[i][0] + b[0]) / 2, (points[i][1] + b[1]) / 2];
          const at = layout.facets.filter(({ outline, holes }) => isInside(middle, [outline, ...holes]));
          expect(at.length).toBeGreaterThan(0);
          for (const { plane } of at) expect(heightIn(plane, middle) - low).toBeCloseTo(z, 3);
        }
      }
    }
  });

  it('are met once where a level ridge has the height itself', () => {
    const gable = [
      {
        outline: [
          [0, 0],
          [8, 0],
          [8, 4],
          [0, 4],
        ] as Point[],
        holes: [],
        plane: { atOriginIn: 0, gx: 0, gy: 0.25 },
      },
      {
        outline: [
          [0, 4],
          [8, 4],
          [8, 8],
          [0, 8],
        ] as Point[],
        holes: [],
        plane: { atOriginIn: 2, gx: 0, gy: -0.25 },
      },
    ];
    const top = contoursOf(gable, 0, 1, 1);
    expect(top).toHaveLength(1);
    expect(lengthOf(top[0])).toBeCloseTo(8, 6);
  });

  it('take the finest step that stays apart on the sheet', () => {
    expect(contourStepIn(6, 0.25, 1.5)).toBe(0.5);
    expect(contourStepIn(9, 0.25, 1.5)).toBe(1);
    expect(contourStepIn(6, 0.25, 3)).toBe(1);
    expect(contourStepIn(60, 0.25, 1)).toBe(6);
  });
});

function shown(assessment: Assessment): { assessment: Assessment; layout: Layout } {
  const layout = assessment.layouts.find(({ id }) => id === assessment.chosenLayout);
  if (layout === undefined) throw new Error('nothing chosen');
  return { assessment, layout };
}

describe('plan of the heights', () => {
  const list = planHeights(byHand, handLayout);

  it('numbers its lines, and names fill by its thickness', () => {
    const words = textsOf(list);
    expect(words).toEqual(expect.arrayContaining(['1″', '3″', '5″', 'fill 2″', 'fill 4″', '1/4 in/ft']));
    expect(heightsCaption(byHand, handLayout)).toContain('A line for every 1/2″');
  });

  it('greys as much ground as lies on fill', () => {
    const zones = fillZones(handLayout);
    const byFill = zones.map(({ fillIn, pieces }) => [
      fillIn,
      pieces.reduce((sum, { outline }) => sum + signedAreaSqFt(outline), 0),
    ]);
    // Two rows of 30 x 4 ft on each thickness.
    expect(byFill).toEqual([
      [2, 240],
      [4, 240],
    ]);
  });

  it('draws lines on the roof alone, at a distance that the slope gives', () => {
    const ys = list?.marks.flatMap((mark) =>
      mark.kind === 'polyline' && mark.pen?.startsWith('contour') ? [mark.points[0][1]] : [],
    );
    const steps = [...new Set((ys ?? []).map((y) => Math.round(y * 100) / 100))].sort((a, b) => a - b);
    expect(steps[0]).toBeCloseTo(2, 2);
    for (let i = 1; i < steps.length; i++) expect(steps[i] - steps[i - 1]).toBeCloseTo(2, 2);
    expect(steps.at(-1)).toBeLessThanOrEqual(24);
  });

  it('is sound on every demo roof', () => {
    for (const name of ['back-section', 'corner-drain', 'twenty-drains'] as const) {
      const { assessment, layout } = shown(demo(name));
      const plan = planHeights(assessment, layout, cutsThrough(assessment, layout));
      if (plan === null) throw new Error('no plan');
      const svg = printSvg(plan, { id: name });
      expect(svg).not.toMatch(/NaN|undefined|Infinity/);
      expect(wordsOf(svg)).toEqual(expect.arrayContaining(['A', 'B']));
      expect(Math.max(...layout.facets.map(({ plane }) => slopeInPerFt(plane)))).toBeGreaterThan(0);
    }
  });
});

describe('sections through the worst water', () => {
  const pair = planPair(byHand, handLayout);

  it('are two, along and across, and their ends stand on both plans', () => {
    expect(pair.sections.map(({ name }) => name)).toEqual(['A', 'B']);
    const [a, b] = cutsThrough(byHand, handLayout);
    expect(Math.abs(a.ray.toward[0] * b.ray.toward[0] + a.ray.toward[1] * b.ray.toward[1])).toBeLessThan(1e-9);
    for (const list of [pair.before, pair.after]) {
      expect(list?.marks.filter((mark) => mark.kind === 'line' && mark.pen === 'cut')).toHaveLength(4);
      expect(textsOf(list).filter((text) => text === 'A')).toHaveLength(2);
    }
  });

  it('state their scale and their letter', () => {
    for (const { name, before, after } of pair.sections) {
      for (const list of [before, after]) {
        expect(list?.title).toContain(`Section ${name}`);
        expect(textsOf(list).some((text) => /heights drawn \d+ times/.test(text))).toBe(true);
      }
    }
  });

  it('draw a door and a parapet at the end of the cut, with what is left, red where it is short', () => {
    const { assessment, layout } = shown(demo('corner-drain'));
    const [cut] = cutsThrough(assessment, layout);
    const before = sectionCut(assessment, null, cut);
    const after = sectionCut(assessment, layout, cut);
    expect(textsOf(before).some((text) => /^door.* up/.test(text))).toBe(true);
    expect(textsOf(after).some((text) => /^door.* left/.test(text))).toBe(true);
    expect(textsOf(after).some((text) => /^parapet.* left/.test(text))).toBe(true);
    const broken = {
      ...layout,
      budgets: layout.budgets.map((use) => ({ ...use, leftIn: -2 })),
    };
    const red = sectionCut(assessment, broken, cut);
    expect(red?.marks.some((mark) => mark.kind === 'line' && mark.pen === 'stop')).toBe(true);
    expect(textsOf(red).some((text) => text.includes('2″ short'))).toBe(true);
  });

  it('fill a level roof between walls to the depth that the pond has', () => {
    const [pond] = byHand.existing.ponds;
    const level: Assessment = {
      ...byHand,
      existing: {
        ...byHand.existing,
        surface: [
          { a: [0, 0], b: [30, 0], c: [30, 24], z: [0, 0, 0] },
          { a: [0, 0], b: [30, 24], c: [0, 24], z: [0, 0, 0] },
        ],
        ponds: [{ ...pond, outline: byHand.plan.outline, greatestDepthIn: 3, deepestAt: [0, 0] }],
      },
    };
    const [cut] = cutsThrough(level, null);
    const water = sectionCut(level, null, cut)?.marks.find(
      (mark) => mark.kind === 'polygon' && mark.fill === 'water-2',
    );
    const areaSqFt = water?.kind === 'polygon' ? Math.abs(signedAreaSqFt(water.outline)) : 0;
    expect(areaSqFt).toBeCloseTo((cut.toFt - cut.fromFt) * (3 / 12) * cut.scale, 3);
  });
});
