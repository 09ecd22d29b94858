import { describe, expect, it } from 'vitest';
import { signedAreaSqFt } from '../../src/core/geometry/vector.ts';
import { boardPlan, MANY_BOARDS } from '../../src/drawing/board-plan.ts';
import { boardKey } from '../../src/drawing/board-shade.ts';
import { boardSheets } from '../../src/drawing/board-sheets.ts';
import { chalkLines } from '../../src/drawing/chalk.ts';
import { chalkRows } from '../../src/drawing/chalk-rows.ts';
import { greys, greysInSun } from '../../src/drawing/pens.ts';
import { sectionCut } from '../../src/drawing/section-cut.ts';
import { cutsThrough } from '../../src/drawing/section-profile.ts';
import { printSvg } from '../../src/drawing/svg.ts';
import { byHand, demo, handLayout, pitDepthIn } from './drawing-fixture.ts';
import { drawnWith, wordsOf } from './drawing-svg-reading.ts';

describe('board plan', () => {
  const svg = printSvg(boardPlan(byHand, handLayout), { id: 'boards' });

  it('draws every piece, and together they cover the section', () => {
    const pieces = drawnWith(svg, 'pen-board');
    expect(pieces).toHaveLength(handLayout.pieces.length);
    expect(pieces.reduce((sum, ring) => sum + signedAreaSqFt(ring), 0)).toBeCloseTo(720, 2);
  });

  it('names whole boards by their thickness and fill', () => {
    const named = wordsOf(svg).filter((word) => word === '0.5-1.5 +2');
    expect(named.length).toBeGreaterThanOrEqual(7);
  });

  it('is darker where it is thicker', () => {
    const order = boardKey(handLayout).map(({ fill }) => Number(fill.split('-')[1]));
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(new Set(order).size).toBe(6);
    expect(boardKey(handLayout)[0].mark).toBe('0.5-1.5');
  });

  it('numbers the check points and gives the wood its height at both ends', () => {
    expect(wordsOf(svg)).toEqual(expect.arrayContaining(['1', '2', '1″', '7″']));
  });

  it('snaps a line at the end of every row, measured from the gutter', () => {
    const lines = chalkLines(handLayout, byHand.plan.edges);
    expect(lines.map(({ offFt }) => offFt).sort((a, b) => (a ?? 0) - (b ?? 0))).toEqual([4, 8, 12, 16, 20]);
    expect(chalkRows(handLayout, byHand.plan.edges)).toEqual([
      { start: 'gutter side, 30′-0″', distances: '4′-0″, 8′-0″, 12′-0″, 16′-0″, 20′-0″' },
    ]);
  });

  it('does not snap the joints inside a row', () => {
    const one = { ...handLayout, pieces: handLayout.pieces.map((piece) => ({ ...piece, mark: 'same' })) };
    expect(chalkLines(one, byHand.plan.edges)).toEqual([]);
  });
});

describe('a roof of thousands of boards', () => {
  const assessment = demo('twenty-drains');
  const layout = assessment.layouts.find(({ rejected }) => rejected === null) ?? assessment.layouts[0];
  const sheets = boardSheets(assessment, layout);

  it('draws each board once in the whole and once on the sheet of its drainage area', () => {
    expect(layout.pieces.length).toBeGreaterThan(MANY_BOARDS);
    const whole = printSvg(sheets.whole, { id: 'w' });
    expect(whole.length).toBeLessThan(400_000);
    const drawn = Array.from({ length: greys.length }, (_, i) => drawnWith(whole, `fill-grey-${i}`)).flat();
    expect(drawn).toHaveLength(layout.pieces.length);
    const onSheets = sheets.parts.flatMap(({ id, list }) => drawnWith(printSvg(list, { id }), 'pen-board'));
    expect(Math.abs(onSheets.length - layout.pieces.length)).toBeLessThan(0.02 * layout.pieces.length);
  });

  it('names most boards of a sheet', () => {
    const { id, list } = sheets.parts[0];
    const svg = printSvg(list, { id });
    const named = wordsOf(svg).filter((word) => /^[\d.]+-[\d.]+( \+[\d.]+)?$/.test(word)).length;
    expect(named).toBeGreaterThan(0.7 * drawnWith(svg, 'pen-board').length);
    expect(svg).not.toMatch(/NaN|undefined/);
  });
});

describe('section', () => {
  const [cut] = cutsThrough(byHand, handLayout);
  const [before, after] = [sectionCut(byHand, null, cut), sectionCut(byHand, handLayout, cut)];

  it('goes through the deepest water, along the fall of the new roof', () => {
    expect(cut?.ray.at[0]).toBeCloseTo(15, 1);
    expect(Math.abs(cut?.ray.toward[1] ?? 0)).toBe(1);
    expect((cut?.toFt ?? 0) - (cut?.fromFt ?? 0)).toBeCloseTo(24, 6);
  });

  it('states its scale and keeps to it, the same before and after', () => {
    const scale = cut?.scale ?? 0;
    for (const list of [before, after]) {
      expect(
        list?.marks.some((mark) => mark.kind === 'text' && mark.text.includes(`heights drawn ${scale} times`)),
      ).toBe(true);
    }
    const surface = after?.marks.find((mark) => mark.kind === 'polyline' && mark.pen === 'surface');
    const ys = surface?.kind === 'polyline' ? surface.points.map(([, y]) => y) : [];
    expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo((6 / 12) * scale, 6);
  });

  it('draws the water: a triangle 8 ft wide and 1 in deep', () => {
    const water = before?.marks.find((mark) => mark.kind === 'polygon' && mark.fill === 'water-2');
    const areaSqFt = water?.kind === 'polygon' ? Math.abs(signedAreaSqFt(water.outline)) : 0;
    expect(areaSqFt).toBeCloseTo((8 * (pitDepthIn / 12) * (cut?.scale ?? 0)) / 2, 2);
    expect(after?.marks.some((mark) => mark.kind === 'polygon' && mark.fill === 'water-2')).toBe(false);
  });
});

/** Contrast ratio of two colours. Source: WCAG 2.1, definitions of relative luminance and contrast ratio. */
function contrast(a: string, b: string): number {
  const luminance = (hex: string): number => {
    const full = hex.length === 4 ? [...hex.slice(1)].map((d) => d + d).join('') : hex.slice(1);
    const [red, green, blue] = [0, 2, 4]
      .map((i) => Number.parseInt(full.slice(i, i + 2), 16) / 255)
      .map((c) => (c <= 0.03928 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const [light, dark] = [luminance(a), luminance(b)].sort((p, q) => q - p);
  return (light + 0.05) / (dark + 0.05);
}

describe('greys', () => {
  it('bear ink letters (WCAG 2.1, 1.4.3: at least 4.5 to 1) and grow darker step by step', () => {
    for (const grey of greys) expect(contrast(grey, '#1d1c1a')).toBeGreaterThan(4.5);
    for (const grey of greysInSun) expect(contrast(grey, '#000')).toBeGreaterThan(4.5);
    for (let i = 1; i < greys.length; i++)
      expect(contrast(greys[i], '#ffffff')).toBeGreaterThan(contrast(greys[i - 1], '#ffffff'));
  });
});
