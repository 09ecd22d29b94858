import { describe, expect, it } from 'vitest';
import { slopeLeftInPerFt, slopeToBuildInPerFt } from '../../src/core/drainage/sag.ts';
import { build } from '../../src/core/layout/build.ts';
import { groundsOf } from '../../src/core/layout/ground.ts';
import type { LayoutPlan } from '../../src/core/layout/plan.ts';
import { envelope } from '../../src/core/taper/envelope.ts';
import { fourWay } from '../../src/core/taper/pattern.ts';
import { parseRoofText } from '../../src/input/parse-roof.ts';
import { caseRoof, caseRows, caseText, everythingSaid, findingIds, said } from './case-roof.ts';

const GAL_PER_SQ_FT_IN = 144 / 231;

const c03 = caseRoof('c03');
const side = c03.site.edges.find(({ edge }) => edge.side === 3)!;
const { outlets } = c03.roof;
const plan = (edges: LayoutPlan['edges']): LayoutPlan => ({
  id: 'as-read',
  title: '',
  why: '',
  outlets,
  edges,
  newEdges: new Set(edges.map(({ id }) => id)),
  barred: null,
});
const [asRead] = groundsOf(c03.site);
// The taper of the account rises from the whole low side; the scupper's own four-way taper is the second.
const laid = build(c03.site, plan([side]), 0.25, 0, asRead).judgement.ponds[0];
const byScupper = build(c03.site, plan([]), 0.25, 0, asRead).judgement.ponds[0];
const bareTaper = envelope(c03.site.section, [
  { id: 'low', kind: 'edge', from: side.from, to: side.to, levelIn: 0, pattern: fourWay(0.25) },
]);

// Case C03 of the project's case collection: 40 x 16 ft between walls, deck z = -16 (x/40)(1 - x/40) in, read every 1.25 ft.
caseRows('C03: a taper laid on a sagged deck inherits the sag', [
  {
    key: 'initial_slope_at_scupper_in_per_ft',
    got: () => slopeLeftInPerFt(0.25, 4, 40, 'parabola'),
    value: -0.15,
    tol: 0.005,
    basis: 'C',
  },
  { key: 'residual_pond_depth_in', got: () => laid.greatestDepthIn, value: 0.5625, tol: 0.02, basis: 'C' },
  {
    key: 'residual_pond_depth_in (scupper taper)',
    got: () => byScupper.greatestDepthIn,
    value: 0.5625,
    tol: 0.02,
    basis: 'C',
  },
  { key: 'residual_pond_at_x_ft', got: () => laid.deepestAt[0], value: 7.5, tol: 0.3, basis: 'C' },
  {
    key: 'residual_pond_length_ft',
    got: () => laid.areaSqFt / 16,
    value: 15,
    tol: 0.3,
    basis: 'C',
  },
  { key: 'residual_volume_gal', got: () => laid.volumeSqFtIn * GAL_PER_SQ_FT_IN, value: 56.1, tol: 1.5, basis: 'C' },
  {
    key: 'uniform_taper_needed_for_quarter_in_per_ft',
    got: () => slopeToBuildInPerFt(0.25, 4, 40),
    value: 0.65,
    tol: 0.01,
    basis: 'C',
  },
  { key: 'rise_over_22ft_at_quarter_in', got: () => bareTaper[0].plane.gx * 22, value: 5.5, tol: 0.01, basis: 'C' },
]);

describe('C03: what is said', () => {
  it('ponds: 4 in between the walls, 20.8 psf, engineer first', () => {
    expect(c03.answer.existing.verdict).toBe('ponds');
    expect(c03.answer.existing.ponds[0].greatestDepthIn).toBeCloseTo(4, 6);
    expect(said(c03, 'engineer-ponding')).toContain('20.8 psf');
  });

  it('sag, pond, and no second way out', () => {
    expect(findingIds(c03)).toEqual(expect.arrayContaining(['sagged-deck', 'levelling', 'pond', 'no-second-way-out']));
    expect(said(c03, 'sagged-deck')).toContain('hangs 4″ below');
  });

  it('a layout is never passed on the slope of its boards: what is offered was levelled first and holds nothing', () => {
    const offered = c03.answer.layouts.filter(({ rejected }) => rejected === null);
    expect(offered.length).toBeGreaterThan(0);
    for (const layout of offered) expect([layout.ponds.length, layout.levellingBoardFt > 1000]).toEqual([0, true]);
    expect(everythingSaid(c03)).toContain('does not make a roof of 1/4 in per ft');
  });
});

const planned = caseRoof('c03-planes');
const [left] = planned.answer.existing.ponds;

// The same deck as a plan of planes with the sag named in the roof file: no readings.
caseRows('C03: planes at 1/4 in per ft on joists that sag 4 in hold the residual pond', [
  { key: 'residual_pond_depth_in', got: () => left.greatestDepthIn, value: 0.5625, tol: 1e-6, basis: 'C' },
  { key: 'residual_pond_at_x_ft', got: () => left.deepestAt[0], value: 7.5, tol: 1e-6, basis: 'C' },
  { key: 'residual_pond_length_ft', got: () => left.areaSqFt / 16, value: 15, tol: 1e-6, basis: 'C' },
]);

describe('C03 as planes with sag: what is said', () => {
  it('ponds, and the sag is named from the file', () => {
    expect(planned.answer.existing.verdict).toBe('ponds');
    expect(said(planned, 'sagged-deck')).toContain('hangs 4″ below');
  });

  it('layouts fill the hollow first: two thirds of 4 in over 640 sq ft', () => {
    const offered = planned.answer.layouts.filter(({ rejected }) => rejected === null);
    expect(offered.length).toBeGreaterThan(0);
    for (const layout of offered) {
      expect(layout.ponds).toEqual([]);
      expect(layout.levellingBoardFt).toBeCloseTo((2 / 3) * 4 * 640, -1);
    }
  });

  it('without the sag the same planes drain', () => {
    const text = caseText('c03-planes').replace(/,\s*"sag": \{[^}]*\}/, '');
    expect(caseRoof('c03-planes', text).answer.existing.ponds).toEqual([]);
  });

  it('readings hold their sag: a sag beside them is left out with a note', () => {
    const parsed = parseRoofText(caseText('c03').replace('"sense"', '"sag": { "depthIn": 4 }, "sense"'));
    expect(parsed.ok && parsed.roof.existing.sag).toBeNull();
    expect(parsed.notes.map(({ path }) => path)).toContain('existing.sag');
  });
});

const c04 = caseRoof('c04');
const [bay] = c04.answer.existing.ponds;

// Case C04: 40 x 40 ft steel bay that sags 1.0 and 0.75 in, drain in the corner by the column, 1/4 in above the deck.
caseRows('C04: the drain is the high point of its bay', [
  { key: 'max_pond_depth_in', got: () => bay.greatestDepthIn, value: 2, tol: 0.05, basis: 'C' },
  { key: 'load_at_max_psf', got: () => bay.greatestLoadPsf, value: 10.4, tol: 0.3, basis: 'C' },
  {
    key: 'mean_depth_in',
    got: () => bay.volumeGal / GAL_PER_SQ_FT_IN / bay.areaSqFt,
    value: 1.417,
    tol: 0.03,
    basis: 'C',
  },
  { key: 'volume_gal', got: () => bay.volumeGal, value: 1413, tol: 40, basis: 'C' },
  {
    key: 'net_slope_near_drain_with_quarter_taper_in_per_ft',
    got: () => slopeLeftInPerFt(0.25, 1, 40, 'parabola'),
    value: 0.15,
    tol: 0.01,
    basis: 'C',
  },
]);

describe('C04: what is said', () => {
  it('the drain stands proud: it is not taken for the low point', () => {
    expect(said(c04, 'outlet-proud')).toMatch(/drain D1 stands 2″ above the low spot/);
    expect(c04.answer.existing.ponds[0].deepestAt).toEqual([20, 20]);
  });

  it('the deck hangs, and an engineer looks at it first', () => {
    expect(said(c04, 'sagged-deck')).toContain('1 3/4″');
    expect(c04.answer.findings.find(({ id }) => id === 'engineer-ponding')).toMatchObject({
      level: 'stop',
      value: '10.4 psf',
    });
  });

  it('boards laid to that drain on the sag still pond: what is offered there is filled first', () => {
    const [ground] = groundsOf(c04.site);
    const bare = build(c04.site, { ...plan([]), outlets: c04.roof.outlets }, 0.25, 0, ground);
    expect(bare.judgement.ponds[0].greatestDepthIn).toBeCloseTo(0.75, 6);
    const there = c04.answer.layouts.find(({ id }) => id === 'existing-outlets');
    expect(there?.ponds).toEqual([]);
    expect(there?.levellingBoardFt).toBeGreaterThan(1000);
  });
});
