import { describe, expect, it } from 'vitest';
import { codeCricketHeightIn } from '../../src/core/drainage/code-cricket.ts';
import { slopeMinimum } from '../../src/core/drainage/slope-rule.ts';
import { buildSection } from '../../src/core/geometry/section.ts';
import { distanceFt } from '../../src/core/geometry/vector.ts';
import { build } from '../../src/core/layout/build.ts';
import { buildUpAt } from '../../src/core/layout/check.ts';
import { asRead } from '../../src/core/layout/ground.ts';
import type { LayoutPlan } from '../../src/core/layout/plan.ts';
import { runToLimit } from '../../src/core/layout/run-to-limit.ts';
import { momentsOf, perInch } from '../../src/core/layout/thermal.ts';
import type { Layout } from '../../src/core/report/types.ts';
import type { Point } from '../../src/core/roof.ts';
import { envelope } from '../../src/core/taper/envelope.ts';
import { slopePattern } from '../../src/core/taper/pattern.ts';
import { distanceTo } from '../shapes.ts';
import { type CaseRoof, caseRoof, caseRows, everythingSaid, findingIds, said } from './case-roof.ts';

const MM_PER_IN = 25.4;
const layoutOf = ({ answer }: CaseRoof, id: string): Layout => answer.layouts.find((layout) => layout.id === id)!;
const budget = ({ answer }: CaseRoof, words: string) => answer.budgets.find(({ where }) => where.includes(words))!;

// Case C10: an L between parapets of 12 in, one drain beside the inside corner; boards from 1/2 in at 1/4 in per ft.
const c10 = caseRoof('c10');
const dogLeg = layoutOf(c10, 'existing-outlets');
caseRows('C10: dog-leg row house', [
  { key: 'area_sf', got: () => c10.answer.section.areaSqFt, value: 680, tol: 0.1, basis: 'C' },
  { key: 'perimeter_ft', got: () => c10.answer.section.perimeterFt, value: 132, tol: 0.1, basis: 'C' },
  { key: 'max_thickness_in', got: () => dogLeg.greatestThicknessIn, min: 8, max: 8.9, basis: 'C' },
  { key: 'parapet_left_in', got: () => 12 - dogLeg.rejected!.neededIn!, min: 3.1, max: 4, basis: 'C' },
  {
    key: 'longest_path_ft',
    got: () => distanceTo(c10.roof.outline, [8, 30], [16, 0]),
    value: 31.05,
    tol: 0.1,
    basis: 'C',
  },
]);

describe('C10: what is said', () => {
  it('nothing fits under the parapet, and there is no second way out', () => {
    expect(c10.answer.chosenLayout).toBeNull();
    expect(c10.answer.headline).toContain('top of the parapet');
    expect(findingIds(c10)).toEqual(expect.arrayContaining(['nothing-fits', 'no-second-way-out']));
  });

  it('water goes round the inside corner, never across the notch', () => {
    for (const layout of c10.answer.layouts)
      for (const { outline } of layout.facets)
        for (const [x, y] of outline) expect(x <= 10 + 1e-4 || y <= 30 + 1e-4).toBe(true);
  });
});

// Case C12: right triangle with the drain at the centre of its inscribed circle, and a quarter round of 16 straight pieces.
const c12 = caseRoof('c12');
const corners: readonly Point[] = c12.roof.outline;
const centre: Point = [10, 10];
/** Every side level, 2.5 in above the drain: creases run to the corners. */
const toSides = slopePattern(
  corners.map((p) => ({
    bearingDeg: (Math.atan2(p[0] - centre[0], p[1] - centre[1]) * 180) / Math.PI,
    riseInPerFt: 2.5 / distanceFt(p, centre),
  })),
);
const triangle = envelope(buildSection(corners, [], [centre]), [
  { id: 'D1', kind: 'point', at: centre, levelIn: 0, pattern: toSides },
]);
const tri = momentsOf(triangle);
const heights = triangle.flatMap(({ ring, plane }) =>
  ring.filter((p) => distanceFt(p, centre) > 1e-3).map(([x, y]) => plane.atOriginIn + plane.gx * x + plane.gy * y),
);
const round = Array.from({ length: 17 }, (_, i): Point => {
  const angle = (Math.PI / 2) * (i / 16);
  return [20 * Math.cos(angle), 20 * Math.sin(angle)];
});
const quarter = buildSection([[0, 0], ...round], [], []);
caseRows('C12: triangle and quarter round', [
  { key: 'triangle_area_sf', got: () => c12.answer.section.areaSqFt, value: 600, tol: 0.01, basis: 'C' },
  { key: 'triangle_edge_height_in (least)', got: () => Math.min(...heights), value: 2.5, tol: 0.05, basis: 'C' },
  { key: 'triangle_edge_height_in (greatest)', got: () => Math.max(...heights), value: 2.5, tol: 0.05, basis: 'C' },
  { key: 'triangle_mean_height_in', got: () => tri.boardFt / tri.areaSqFt, value: 1.667, tol: 0.03, basis: 'C' },
  {
    key: 'triangle_sharp_corner_distance_ft',
    got: () => distanceTo(corners, centre, [40, 0]),
    value: 31.62,
    tol: 0.02,
    basis: 'C',
  },
  {
    key: 'triangle_sharp_valley_slope_in_per_ft',
    got: () => Math.max(...heights) / distanceTo(corners, centre, [40, 0]),
    value: 0.0791,
    tol: 0.001,
    basis: 'C',
  },
  {
    key: 'quarter_true_area_sf',
    got: () => quarter.areaSqFt,
    value: 314.16,
    tol: 0.01,
    basis: 'C',
    doesNotReproduce: 'a roof file holds straight sides; the round is measured as its pieces',
  },
  { key: 'quarter_polyline_area_sf', got: () => quarter.areaSqFt, value: 313.65, tol: 0.05, basis: 'C' },
]);

describe('C12: what is said', () => {
  it('valleys are told apart from planes, and every figure is finite', () => {
    const chosen = layoutOf(c12, c12.answer.chosenLayout!);
    expect(chosen.leastValleySlopeInPerFt!).toBeLessThan(chosen.leastFaceSlopeInPerFt!);
    expect(c12.answer.headline).toContain('valleys 0.177 in per ft');
    for (const { plane } of chosen.facets) expect(Number.isFinite(plane.gx + plane.gy + plane.atOriginIn)).toBe(true);
  });
});

// Case C14: cricket behind a chimney 60 in wide. Heights: IRC R1003.20 (from memory), carried on to low slopes.
const c14 = caseRoof('c14');
caseRows('C14: cricket behind a wide chimney', [
  { key: 'cricket_required', got: () => findingIds(c14).includes('cricket-needed'), value: true, basis: 'F' },
  { key: 'height_3_12_in', got: () => codeCricketHeightIn(60, 3), value: 7.5, tol: 0.05, basis: 'M' },
  { key: 'height_2_12_in', got: () => codeCricketHeightIn(60, 2), value: 5, tol: 0.05, basis: 'C' },
  {
    key: 'height_quarter_12_equal_slope_in',
    got: () => codeCricketHeightIn(60, 0.25),
    value: 0.625,
    tol: 0.01,
    basis: 'C',
  },
  {
    key: 'height_quarter_12_double_slope_in',
    got: () => codeCricketHeightIn(60, 0.5),
    value: 1.25,
    tol: 0.02,
    basis: 'C',
  },
]);

it('C14: a cricket of 5/8 in is said to be within what a deck is out by', () => {
  expect(said(c14, 'cricket-needed')).toContain('5/8″ high, which a deck may be out by');
  expect(said(c14, 'cricket-needed')).toContain('1 1/4″');
});

// Case C31: a door 30 mm above a level roof, 75 mm the reduced minimum, 2.4 m to the gutter; BS 6229:2018.
const c31 = caseRoof('c31');
const door = budget(c31, 'door');
const runFt = 2400 / MM_PER_IN / 12;
const uk = slopeMinimum(c31.ruleSet, null);
const riseMm = (slopeInPerFt: number): number => slopeInPerFt * runFt * MM_PER_IN;
caseRows('C31: patio door', [
  { key: 'door_shortfall_mm', got: () => -door.availableIn! * MM_PER_IN, value: 45, tol: 0.1, basis: 'F' },
  { key: 'rise_1_80_mm', got: () => riseMm(uk.finishedInPerFt), value: 30, tol: 0.1, basis: 'C' },
  { key: 'rise_1_40_mm', got: () => riseMm(uk.designInPerFt), value: 60, tol: 0.1, basis: 'C' },
  {
    key: 'upstand_after_1_80_mm',
    got: () => door.heightIn! * MM_PER_IN - riseMm(uk.finishedInPerFt),
    value: 0,
    tol: 0.1,
    basis: 'C',
  },
  {
    key: 'upstand_after_1_40_mm',
    got: () => door.heightIn! * MM_PER_IN - riseMm(uk.designInPerFt),
    value: -30,
    tol: 0.1,
    basis: 'C',
  },
]);

describe('C31: what is said', () => {
  it('the door stops it before any board, and no taper is offered into it', () => {
    expect(c31.answer.chosenLayout).toBeNull();
    expect(c31.answer.headline).toContain('short before any board is laid');
    expect(findingIds(c31)).toEqual(expect.arrayContaining(['nothing-fits', 'slope-below-minimum']));
    expect(layoutOf(c31, 'existing-outlets').rejected!.where).toContain('door');
  });

  it('where no flashing would be left, none is offered as a way out', () => {
    expect(layoutOf(c31, 'existing-outlets').rejected!.relax).not.toContain('accepted');
  });
});

// Case C34: terrace, 1 in of fall in 14 ft, door sill 5 in, 4 in of flashing asked for.
const c34 = caseRoof('c34');
const fall = c34.answer.existing.leastFaceSlopeInPerFt!;
const terrace = layoutOf(c34, 'existing-outlets');
const sill = budget(c34, 'door');
caseRows('C34: terrace over a room', [
  { key: 'slope_in_per_ft', got: () => fall, min: 0.071, max: 0.084, basis: 'F' },
  { key: 'slope_pct', got: () => (fall / 12) * 100, min: 0.59, max: 0.7, basis: 'C' },
  {
    key: 'rise_needed_quarter_in',
    got: () => 14 * slopeMinimum(c34.ruleSet, null).designInPerFt,
    value: 3.5,
    tol: 0.01,
    basis: 'C',
  },
  {
    key: 'taper_to_add_at_house_in',
    got: () => terrace.greatestThicknessIn - terrace.leastThicknessIn,
    value: 2.5,
    tol: 0.02,
    basis: 'C',
    doesNotReproduce: 'boards come in catalogue slopes: 3/16 on the fall that is there adds 2.625 in',
  },
  {
    key: 'upstand_after_in',
    got: () => sill.heightIn! - terrace.rejected!.neededIn!,
    value: 2.5,
    tol: 0.02,
    basis: 'C',
    doesNotReproduce: 'with the 1/2 in low edge, the 1/2 in cover board and 3/16 boards 1 3/8 in are left',
  },
  {
    key: 'upstand_after_eighth_total_in',
    got: () => sill.heightIn! - layoutOf(c34, 'existing-outlets-gentler').greatestThicknessIn - 0.5,
    value: 4.25,
    tol: 0.02,
    basis: 'C',
    doesNotReproduce: 'no board makes 1/8 in all of a fall of 1/14: 1/8 boards give 0.196 and leave 2 1/4 in',
  },
]);

it('C34: the door and the slope stop it, and no covering is offered as the cure', () => {
  expect(c34.answer.chosenLayout).toBeNull();
  expect(findingIds(c34)).toEqual(expect.arrayContaining(['nothing-fits', 'slope-below-minimum', 'slope-too-flat']));
  expect(everythingSaid(c34)).toContain('door');
});

// Case C35: 6 in of flat R-30, then 1/4 in per ft over 30 ft to a parapet of 18 in.
const c35 = caseRoof('c35');
const wall = budget(c35, 'parapet');
const BASE_IN = 6;
const plan: LayoutPlan = {
  id: 'c35',
  title: 'to the gutter on a base of 6 in',
  why: '',
  outlets: [],
  edges: c35.site.edges.filter(({ edge }) => edge.kind === 'gutter'),
  newEdges: new Set(),
  barred: null,
};
const onBase = build(c35.site, plan, 0.25, BASE_IN, asRead(c35.site));
const atWallIn = buildUpAt(onBase.thickness)([20, 30])!;
caseRows('C35: R-30 and a taper against a parapet', [
  { key: 'thickness_at_wall_in', got: () => atWallIn, value: 14.5, tol: 0.02, basis: 'C' },
  { key: 'upstand_left_in', got: () => wall.heightIn! - atWallIn, value: 3.5, tol: 0.02, basis: 'C' },
  { key: 'R_base_at_5_7', got: () => perInch(5.7).rIn(BASE_IN, BASE_IN), value: 34.2, tol: 0.1, basis: 'C' },
  { key: 'R_base_at_5_0', got: () => perInch(5).rIn(BASE_IN, BASE_IN), value: 30, tol: 0.1, basis: 'C' },
  {
    key: 'run_that_fits_8in_ft',
    got: () => runToLimit(wall.boardsIn!, BASE_IN + 0.5, 0.25).runFt,
    value: 12,
    tol: 0.1,
    basis: 'C',
  },
]);

it('C35: the parapet is told before any layout; R-30 flat under the taper breaks it, less base does not', () => {
  expect(wall.availableIn).toBeCloseTo(10, 6);
  expect(atWallIn).toBeGreaterThan(wall.boardsIn!);
  const chosen = layoutOf(c35, c35.answer.chosenLayout!);
  expect(chosen.baseForTargetIn!).toBeLessThan(BASE_IN);
  expect(findingIds(c35)).toContain('insulation-below-target');
});
