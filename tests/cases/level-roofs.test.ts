import { describe, expect, it } from 'vitest';
import { tieIn } from '../../reference/takeoff/flashings.ts';
import { caseRoof, caseRows, findingIds, said } from './case-roof.ts';

const c11 = caseRoof('c11');
const u = c11.answer.existing;
const drains = (id: string): number => u.outlets.find((outlet) => outlet.id === id)?.drainsSqFt ?? Number.NaN;
const total = (f: (o: (typeof u.outlets)[number]) => number): number => u.outlets.reduce((sum, o) => sum + f(o), 0);

// Case C11 of the project's case collection: a level U round a steeper block that sheds 480 sq ft, four drains.
caseRows('C11: U-shaped flat roof, four drains', [
  { key: 'area_sf', got: () => c11.answer.section.areaSqFt, value: 1920, tol: 0.1, basis: 'C' },
  { key: 'nearest_drain_area_D1_sf', got: () => drains('D1'), value: 540, tol: 8, basis: 'C' },
  { key: 'nearest_drain_area_D3_sf', got: () => drains('D3'), value: 420, tol: 8, basis: 'C' },
  { key: 'sum_of_drain_areas_sf', got: () => total((o) => o.drainsSqFt), value: 1920, tol: 1, basis: 'C' },
  {
    key: 'hydraulic_area_total_sf',
    got: () => total((o) => o.drainsSqFt + o.addedSqFt),
    value: 2400,
    tol: 1,
    basis: 'C',
  },
]);

describe('C11: what is said', () => {
  it('water of the upper roof, and no overflow', () => {
    expect(said(c11, 'upper-roof-water')).toContain('480 sq ft');
    expect(said(c11, 'no-overflow')).toContain('4 primary outlets');
  });

  it('the areas partition the section, the nearest drain is marked as assumed', () => {
    expect(u.areas.reduce((sum, { areaSqFt }) => sum + areaSqFt, 0)).toBeCloseTo(1920, 6);
    expect(c11.answer.assumed.map(({ path }) => path)).toContain('existing (drainage areas)');
  });
});

const c20 = caseRoof('c20');
const [d1] = c20.answer.existing.outlets;
const working = (id: string): number => c20.answer.workings.find((each) => each.id === id)?.value ?? Number.NaN;

// Case C20: 30 x 20 ft under a wall of 30 x 18 ft and the downspout of 900 sq ft, 4 in/h.
caseRows('C20: lower roof takes a wall and a downspout', [
  { key: 'effective_area_sf', got: () => d1.drainsSqFt + d1.addedSqFt, value: 1770, tol: 1, basis: 'C' },
  { key: 'flow_gpm', got: () => d1.flowGpm, value: 73.6, tol: 0.4, basis: 'C' },
  { key: 'flow_if_forgotten_gpm', got: () => working('section.flow-if-forgotten'), value: 24.9, tol: 0.2, basis: 'C' },
  {
    key: 'understatement_factor',
    got: () => working('section.flow') / working('section.flow-if-forgotten'),
    value: 2.95,
    tol: 0.02,
    basis: 'C',
  },
]);

describe('C20: what is said', () => {
  it('wall and upper roof, each by name', () => {
    expect(said(c20, 'wall-water')).toContain('1,770 sq ft, not for the 600 sq ft');
    expect(said(c20, 'upper-roof-water')).toContain('900 sq ft');
  });

  it('every layout is sized with them', () => {
    for (const layout of c20.answer.layouts) {
      const added = layout.outlets.reduce((sum, { addedSqFt }) => sum + addedSqFt, 0);
      expect(added).toBeCloseTo(1170, 6);
    }
  });
});

const c39 = caseRoof('c39');
const [pan] = c39.answer.existing.outlets;
const chosen = c39.answer.layouts.find(({ id }) => id === c39.answer.chosenLayout)!;
const pitch = c39.roof.edges.find(({ pitchIn12 }) => pitchIn12 !== null)?.pitchIn12 ?? Number.NaN;

// Case C39: a level pan, 12 x 4 ft, between two slopes of 6 in 12 with 560 sq ft of shingles.
caseRows('C39: flat valley pan between two shingled slopes', [
  { key: 'hydraulic_area_sf', got: () => pan.drainsSqFt + pan.addedSqFt, value: 608, tol: 1, basis: 'C' },
  { key: 'flow_gpm', got: () => pan.flowGpm, value: 25.3, tol: 0.2, basis: 'C' },
  {
    key: 'rise_along_pan_quarter_in',
    got: () => chosen.greatestThicknessIn - chosen.leastThicknessIn,
    value: 3,
    tol: 0.02,
    basis: 'C',
  },
  {
    key: 'membrane_height_gain_24in_upslope_in',
    got: () => tieIn.leastRunIn * Math.sin(Math.atan(pitch / 12)),
    value: 10.7,
    tol: 0.2,
    basis: 'C',
  },
]);

describe('C39: what is said', () => {
  it('the slopes above are counted', () => {
    expect(said(c39, 'upper-roof-water')).toContain('608 sq ft, not for the 48 sq ft');
  });

  it('too flat, for the rule and for the roll roofing on it', () => {
    expect(findingIds(c39)).toEqual(
      expect.arrayContaining(['slope-below-minimum', 'covering-slope-limit', 'undrained-flat']),
    );
    expect(said(c39, 'covering-slope-limit')).toContain('roll roofing');
  });
});
