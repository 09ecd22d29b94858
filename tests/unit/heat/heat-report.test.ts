import { describe, expect, it } from 'vitest';
import { boxesOverlap } from '../../../src/core/geometry/vector.ts';
import { heatReport } from '../../../src/core/heat/heat-report.ts';
import { evenFoamIn } from '../../../src/core/heat/new-roofs.ts';
import { newLayers, oldBuildUp, oldLayers } from '../../../src/core/heat/roof-layers.ts';
import { membranes } from '../../../src/core/membrane/options.ts';
import {
  clock,
  heatDaySentence,
  heatOptionRows,
  heatRows,
  heatSentence,
  winterSentence,
} from '../../../src/core/report/page-heat.ts';
import type { HeatReport } from '../../../src/core/report/types.ts';
import type { Roof } from '../../../src/core/roof.ts';
import { siteOf } from '../../../src/core/site/site.ts';
import { roomOf } from '../../../src/drawing/draw-list.ts';
import { heatDayDrawing } from '../../../src/drawing/heat-day.ts';
import { pens } from '../../../src/drawing/pens.ts';
import { resultJson } from '../../../src/export/result-json.ts';
import { parseRoofText } from '../../../src/input/parse-roof.ts';
import { demoText } from '../../../src/store/demo-roofs.ts';
import { demo } from '../drawing-fixture.ts';

const whole = demo('back-section');
const layout = whole.layouts.find(({ id }) => id === whole.chosenLayout)!;
const parsed = parseRoofText(demoText('back-section'));
if (!parsed.ok) throw new Error('the invented roof cannot be read');
const { roof } = parsed;

const heatOf = (part: Partial<Roof> = {}, withLayout = true): HeatReport =>
  heatReport({
    site: siteOf({ ...roof, ...part }),
    layout: withLayout ? layout : null,
    membranes: whole.membranes,
    chosenMembrane: 'tpo',
  });
const below = (kind: Roof['building']['below']): Partial<Roof> => ({ building: { ...roof.building, below: kind } });

describe('heat of a whole roof', () => {
  const heat = heatOf();

  it('is in the answer and in its file, the same figures', () => {
    const { heat: kept } = JSON.parse(resultJson(whole)) as { heat: HeatReport };
    expect(kept.figures.peakSurfaceOldF).toBeCloseTo(whole.heat!.old.peakSurfaceF, 5);
    expect(kept.figures.dayNewBtu).toBeCloseTo(whole.heat!.new!.dayBtu, 3);
    expect(kept.old.surfaceF).toHaveLength(25);
    expect(whole.assumed).toEqual(expect.arrayContaining([...whole.heat!.assumed]));
  });

  it('orders thin, even, mean and thick, and the whole taper lets through more than its mean thickness', () => {
    const [thin, mean, thick] = heat.taper;
    expect(thin.dayBtuPerSqFt).toBeGreaterThan(heat.new!.dayBtuPerSqFt);
    expect(heat.new!.dayBtuPerSqFt).toBeGreaterThan(mean.dayBtuPerSqFt);
    expect(mean.dayBtuPerSqFt).toBeGreaterThan(thick.dayBtuPerSqFt);
    expect(heat.old.dayBtuPerSqFt).toBeGreaterThan(thin.dayBtuPerSqFt);
    expect(evenFoamIn(layout)).toBeLessThan(layout.meanThicknessIn);
    expect(evenFoamIn(layout)).toBeGreaterThan(layout.leastThicknessIn);
  });

  it('counts the section, hits its peaks within the hours, and its corners are its ends', () => {
    const { old, new: next, split, windRangeF } = heat;
    expect(old.dayBtu / old.dayBtuPerSqFt).toBeCloseTo(siteOf(roof).section.areaSqFt, 6);
    expect(old.peakBtuPerHr / old.peakBtuPerHrSqFt).toBeCloseTo(siteOf(roof).section.areaSqFt, 6);
    expect(Math.max(...old.surfaceF)).toBeLessThanOrEqual(old.peakSurfaceF + 1e-9);
    expect(old.peakSurfaceF - Math.max(...old.surfaceF)).toBeLessThan(2);
    expect(old.surfaceF[24]).toBeCloseTo(old.surfaceF[0], 2);
    expect(split!.oldBtu).toBe(old.dayBtuPerSqFt);
    expect(split!.bothBtu).toBe(next!.dayBtuPerSqFt);
    expect(split!.insulationShare! + split!.colorShare!).toBeCloseTo(1, 12);
    expect(windRangeF.old[0]).toBeLessThan(old.peakSurfaceF);
    expect(windRangeF.old[1]).toBeGreaterThan(old.peakSurfaceF);
  });

  it('holds every membrane once, the chosen one as the new roof, and draws the farthest color that may be laid', () => {
    expect(heat.options.map(({ membrane }) => membrane)).toEqual(membranes.map(({ id }) => id));
    const chosen = heat.options.find(({ membrane }) => membrane === 'tpo')!;
    expect(chosen.dayBtuPerSqFt).toBe(heat.new!.dayBtuPerSqFt);
    expect(heat.otherColor).toBe('option-epdm-black');
    const vetoed = whole.membranes.flatMap(({ id, veto }) => (veto === null ? [] : [id]));
    expect(
      heat.options
        .filter((option) => option.vetoed)
        .map(({ membrane }) => membrane)
        .sort(),
    ).toEqual(vetoed.sort());
    const days = heatOptionRows(heat).map(({ day }) => Number(day));
    expect(days).toEqual([...days].sort((a, b) => a - b));
  });

  it('lists color and old boards as assumed, and the weather where the town is not in the table', () => {
    expect(heat.assumed.map(({ path }) => path)).toEqual(['covering.kind', 'covering.layers']);
    const elsewhere = heatOf({ place: { ...roof.place, city: 'Alder Bend', state: null, climateZone: '6A' } });
    expect(elsewhere.assumed[0]).toMatchObject({ path: 'place.city', value: 'weather of Minneapolis, MN' });
    expect(elsewhere.day.town).toBe('Minneapolis, MN');
    expect(elsewhere.old.peakSurfaceF).not.toBeCloseTo(heat.old.peakSurfaceF, 1);
  });

  it('insulation under the deck keeps heat out of both roofs; without a word about it none is taken, and that is listed', () => {
    const bare = heatOf(below('living-ceiling'));
    expect(bare.assumed.map(({ path }) => path)).toContain('insulation.below');
    const batts = { kind: 'batts', thicknessIn: 5.5, r: null, vented: 'no' } as const;
    const filled = heatOf({ ...below('living-ceiling'), insulation: { ...roof.insulation, below: batts } });
    expect(filled.assumed.map(({ path }) => path)).not.toContain('insulation.below');
    expect(filled.old.layersR - bare.old.layersR).toBeCloseTo(5.5 * 3.7, 6);
    expect(filled.old.dayBtuPerSqFt).toBeLessThan(0.5 * bare.old.dayBtuPerSqFt);
  });

  it('says that nobody cools a carport, and asks nothing of its winter', () => {
    const open = heatOf(below('outdoors'));
    expect(open.day.roomF).toBeNull();
    expect(open.winter).toBeNull();
    expect(winterSentence(open)).toBeNull();
    expect(heatDaySentence(open)).toContain('as warm as the air outside');
    expect(heatSentence(open)).toContain('into the space below');
  });

  it('without a layout tells of the old roof alone', () => {
    const alone = heatOf({}, false);
    expect([alone.new, alone.split, alone.winter, alone.otherColor]).toEqual([null, null, null, null]);
    expect(alone.taper).toEqual([]);
    expect(heatSentence(alone)).toContain('no new roof to set beside it yet');
    expect(heatRows(alone).map(({ id }) => id)).toEqual(['old']);
  });

  it('what is not torn off stays in the new roof, from the deck up', () => {
    const facts = (removedIn: number) => {
      const { roof: read, given } = siteOf({ ...roof, removedIn });
      return { roof: read, given };
    };
    const names = (removedIn: number) => newLayers(facts(removedIn), 'tpo', 3, 5.6).map(({ name }) => name);
    const { coveringIn, boardsIn } = oldBuildUp(facts(1.5));
    expect(coveringIn + boardsIn).toBeCloseTo(1.5, 9);
    expect(names(1.5)).toEqual(['single-ply sheet', 'cover board', 'foam boards', 'plywood']);
    expect(names(coveringIn)).toEqual(['single-ply sheet', 'cover board', 'foam boards', 'old boards', 'plywood']);
    expect(names(0)).toContain('bituminous covering');
    expect(oldLayers(facts(0)).map(({ name }) => name)).toEqual(['bituminous covering', 'old boards', 'plywood']);
  });

  it('in winter a lighter color costs, a darker one helps', () => {
    expect(heat.winter!.colorPenaltyBtuPerSqFt).toBeGreaterThan(0);
    expect(winterSentence(heat)).toContain('the new color costs');
    const darker = heatReport({
      site: siteOf(roof),
      layout,
      membranes: whole.membranes,
      chosenMembrane: 'epdm-black',
    });
    expect(darker.winter!.colorPenaltyBtuPerSqFt).toBeLessThan(0);
    expect(winterSentence(darker)).toContain('the new color helps');
    expect(darker.split!.colorShare).toBeLessThan(0);
  });

  it('prints hours as a clock does', () => {
    expect([0, 5.5, 12, 12.5, 23.99, 24].map(clock)).toEqual([
      '12:00 am',
      '5:30 am',
      '12:00 pm',
      '12:30 pm',
      '11:59 pm',
      '12:00 am',
    ]);
  });
});

describe('the hot day drawn', () => {
  const heat = heatOf();
  const list = heatDayDrawing(heat);
  const curves = list.marks.flatMap((mark) =>
    mark.kind === 'polyline' && mark.pen !== 'dimension' ? [{ pen: mark.pen, points: mark.points }] : [],
  );

  it('tells its lines apart by stroke, in ink alone', () => {
    expect(curves).toHaveLength(4);
    const styles = curves.map(({ pen }) => JSON.stringify([pens[pen].dashMm, pens[pen].widthMm]));
    expect(new Set(styles).size).toBe(4);
    for (const { pen } of curves) expect(['ink', 'soft']).toContain(pens[pen].tone);
  });

  it('stands temperatures to scale and names each highest point', () => {
    const height = (value: number): number => {
      const tick = (f: string) => list.marks.find((mark) => mark.kind === 'text' && mark.text === f);
      const [low, high] = [tick('100'), tick('120')];
      if (low?.kind !== 'text' || high?.kind !== 'text') throw new Error('the scale is not drawn');
      return low.at[1] + ((value - 100) * (high.at[1] - low.at[1])) / 20;
    };
    const tops = curves.map(({ points }) => Math.max(...points.map(([, y]) => y)));
    expect(tops[0]).toBeCloseTo(height(heat.old.peakSurfaceF), 6);
    expect(tops[1]).toBeCloseTo(height(heat.new!.peakSurfaceF), 6);
    const words = list.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
    expect(words).toContain(`${Math.round(heat.old.peakSurfaceF)} °F, ${clock(heat.old.peakSurfaceAtH)}`);
  });

  it('lets no words stand on others or off the sheet', () => {
    for (const each of [heat, whole.heat!, heatOf({}, false), demo('corner-drain').heat!]) {
      const drawn = heatDayDrawing(each);
      const rooms = drawn.marks.flatMap((mark) => (mark.kind === 'text' ? [roomOf(mark, drawn.letterFt)] : []));
      rooms.forEach((a, i) => {
        expect(a.minX).toBeGreaterThanOrEqual(drawn.box.minX - 0.2);
        expect(a.maxX).toBeLessThanOrEqual(drawn.box.maxX + 0.2);
        expect(a.minY).toBeGreaterThanOrEqual(drawn.box.minY);
        expect(a.maxY).toBeLessThanOrEqual(drawn.box.maxY);
        for (const b of rooms.slice(i + 1)) expect(boxesOverlap(a, b), JSON.stringify([a, b])).toBe(false);
      });
    }
  });
});
