import { describe, expect, it } from 'vitest';
import { boxesOverlap, perimeterFt, signedAreaSqFt } from '../../src/core/geometry/vector.ts';
import type { Assessment, Layout } from '../../src/core/report/types.ts';
import { hatchLines } from '../../src/drawing/crossings.ts';
import { type DrawList, type Lettering, roomOf } from '../../src/drawing/draw-list.ts';
import { blues, waterDepthsIn } from '../../src/drawing/pens.ts';
import { placeCss, placesDrawn } from '../../src/drawing/place-css.ts';
import { planAfter, planAsLaid } from '../../src/drawing/plan-after.ts';
import { planBefore } from '../../src/drawing/plan-before.ts';
import { printSvg } from '../../src/drawing/svg.ts';
import { byHand, demo, handLayout, handRejected, pitDepthIn, pitSqFt } from './drawing-fixture.ts';
import { drawnWith, wordsOf } from './drawing-svg-reading.ts';

const areaOf = (svg: string, name: string): number =>
  drawnWith(svg, name).reduce((sum, ring) => sum + signedAreaSqFt(ring), 0);

const demos = (['back-section', 'corner-drain', 'twenty-drains'] as const).map((name) => [name, demo(name)] as const);

describe('plan of the roof as it is', () => {
  const svg = printSvg(planBefore(byHand), { id: 'before' });

  it('draws the pond as large as the report says', () => {
    expect(areaOf(svg, 'fill-water-0')).toBeCloseTo(pitSqFt, 2);
  });

  it('draws deeper water darker: a pit with straight sides shrinks with the square of the depth', () => {
    for (const [i, depthIn] of waterDepthsIn.entries()) {
      const expected = depthIn >= pitDepthIn ? 0 : pitSqFt * (1 - depthIn / pitDepthIn) ** 2;
      expect(areaOf(svg, `fill-water-${i}`)).toBeCloseTo(expected, 1);
    }
  });

  it('prints the depth, the edges in words and the lengths with prime marks', () => {
    const words = wordsOf(svg);
    expect(words).toContain('1″ deep');
    expect(words).toEqual(expect.arrayContaining(['gutter side', 'rake', 'shingles above', 'wall', 'N']));
    expect(words.filter((text) => text === '30′-0″')).toHaveLength(2);
    expect(words.filter((text) => text === '24′-0″')).toHaveLength(2);
  });

  it('draws a scale bar as long as it says', () => {
    const text = wordsOf(svg).find((word) => /^\d+′$/.test(word));
    const [bar] = drawnWith(svg, 'pen-scale');
    expect(text).toBe(`${perimeterFt(bar) / 2}′`);
  });

  it('says in words what it shows', () => {
    const [, description] = svg.match(/<desc[^>]*>([^<]*)/) ?? [];
    expect(description).toContain('30′-0″ by 24′-0″');
    expect(description).toContain('Water 1″ deep over 80 sq ft');
    expect(svg).toMatch(/role="img" aria-labelledby="before-title before-desc"/);
  });

  it('hatches level ground evenly: lines of one spacing over a square', () => {
    const square = [
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ] as const;
    const long = hatchLines([square], 0.5).reduce((sum, [a, b]) => sum + Math.hypot(b[0] - a[0], b[1] - a[1]), 0);
    expect(long * 0.5).toBeCloseTo(100, 0);
  });
});

describe('plan of the new roof', () => {
  const svg = printSvg(planAfter(byHand, handLayout), { id: 'after' });

  it('prints falls, corner heights above the outlet, and what is left at every tight height', () => {
    expect(wordsOf(svg)).toEqual(
      expect.arrayContaining(['1/4 in/ft', '+0″', '+6″', 'door: 2 1/4″ left', 'curb: raise 1 1/2″']),
    );
  });

  it('draws a broken limit red and with its word, and only that', () => {
    expect(svg).not.toContain('pen-stop');
    const broken = printSvg(planAfter(byHand, handRejected), { id: 'after' });
    expect(broken).toContain('pen-stop');
    expect(broken).toMatch(/<text[^>]*class="[^"]*stop[^"]*"[^>]*>door: 3\/4″ short</);
  });

  it('points its arrows downhill, towards the gutter', () => {
    for (const head of drawnWith(svg, 'fill-ink')) {
      const [tip, ...back] = head;
      if (tip[1] > 24 || tip[1] < 0) continue;
      expect(tip[1]).toBeLessThan(Math.min(...back.map(([, y]) => y)));
    }
  });

  it('is drawn at the scale of the plan before', () => {
    expect(planAfter(byHand, handLayout).box).toEqual(planBefore(byHand).box);
  });

  it('shows the water that stands on a roof as laid', () => {
    const laid = printSvg(planAsLaid(byHand, handLayout, byHand.existing.ponds), { id: 'laid' });
    expect(areaOf(laid, 'fill-water-0')).toBeCloseTo(pitSqFt, 2);
  });
});

const listsOf = (assessment: Assessment): DrawList[] => {
  const layouts: readonly (Layout | undefined)[] = [assessment.layouts[0], assessment.layouts.at(-1)];
  return [planBefore(assessment), ...layouts.flatMap((layout) => (layout ? [planAfter(assessment, layout)] : []))];
};

describe.each(demos)('plans of %s', (_, assessment) => {
  const lists = listsOf(assessment);

  it('hold finite numbers only, inside the sheet', () => {
    for (const list of lists) {
      const svg = printSvg(list, { id: 'x', standalone: true });
      expect(svg).not.toMatch(/NaN|undefined|Infinity/);
      expect(svg.length).toBeLessThan(60_000);
      for (const mark of list.marks) {
        if (mark.kind !== 'text') continue;
        const room = roomOf(mark, list.letterFt);
        expect(boxesOverlap(room, list.box)).toBe(true);
      }
    }
  });

  it('stand at one scale, before and after', () => {
    for (const list of lists) expect(list.box).toEqual(lists[0].box);
  });

  it('keep words off words', () => {
    for (const list of lists) {
      const rooms = list.marks
        .filter((mark): mark is Lettering & { kind: 'text' } => mark.kind === 'text')
        .map((mark) => ({ text: mark.text, box: roomOf(mark, list.letterFt) }));
      const clashes = rooms.flatMap((a, i) =>
        rooms.slice(i + 1).flatMap((b) => (boxesOverlap(a.box, b.box) ? [`${a.text} / ${b.text}`] : [])),
      );
      expect(clashes).toEqual([]);
    }
  });

  it('draw every pond of the report at its size', () => {
    const [before] = lists;
    const svg = printSvg(before, { id: 'x' });
    const ponds = assessment.existing.ponds.reduce((sum, { areaSqFt }) => sum + areaSqFt, 0);
    // To the square foot that is printed; the outline of a pond is its main part.
    expect(Math.abs(areaOf(svg, 'fill-water-0') - ponds)).toBeLessThan(1);
  });
});

describe('SVG', () => {
  it('escapes what people typed', () => {
    const list = { ...planBefore(byHand), title: 'a<b>&"c"', description: '<script>' };
    const svg = printSvg(list, { id: 'x' });
    expect(svg).toContain('a&lt;b&gt;&amp;&quot;c&quot;');
    expect(svg).not.toContain('<script>');
  });

  it('marks places by class, and the page can point at them', () => {
    const list = planBefore(byHand);
    expect(printSvg(list, { id: 'before' })).toContain('class="place place-pond-1"');
    expect([...placesDrawn([list])]).toEqual(expect.arrayContaining(['pond-1', 'side-0', 'outlet-side-0']));
    expect(placeCss(placesDrawn([list]))).toContain('[data-place="pond-1"]:is(:hover,:focus-within)) .place-pond-1');
  });

  it('holds no colour outside its style, so that sun and print can change it', () => {
    const svg = printSvg(planBefore(byHand), { id: 'x' });
    expect(svg).not.toMatch(/#[0-9a-f]{3,6}\b|fill="|stroke="/i);
    expect(printSvg(planBefore(byHand), { id: 'x', standalone: true })).toContain(blues[0]);
  });
});
