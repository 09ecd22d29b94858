import { describe, expect, it } from 'vitest';
import { unite } from '../../src/core/geometry/boolean.ts';
import { orient, signedAreaSqFt } from '../../src/core/geometry/vector.ts';
import type { Point } from '../../src/core/roof.ts';
import { parseRoofText } from '../../src/input/parse-roof.ts';
import { caseRoof, caseRows, caseText, existingOf } from './case-roof.ts';

const SQ_M_PER_SQ_FT = 0.3048 ** 2;

const n03 = caseRoof('n03');

// Case N03 of the project's case collection: an outline in mm with its first corner repeated at the end.
caseRows('N03: small change in one corner', [
  {
    key: 'area_mm2',
    got: () => n03.answer.section.areaSqFt * SQ_M_PER_SQ_FT * 1e6,
    value: 14_354_817,
    tol: 1,
    basis: 'C',
  },
  { key: 'area_m2', got: () => n03.answer.section.areaSqFt * SQ_M_PER_SQ_FT, value: 14.355, tol: 0.001, basis: 'C' },
  { key: 'unique_vertices', got: () => n03.roof.outline.length, value: 8, tol: 0, basis: 'C' },
]);

describe('N03: whatever way the corner turns', () => {
  it.each([-40, -1, 0, 1, 40])('corner moved by %d mm: a taper over the whole section', (by) => {
    const moved = caseRoof('n03', caseText('n03').replace('"10509 mm", "115 mm"', `"10509 mm", "${115 + by} mm"`));
    const layout = moved.answer.layouts.find(({ rejected }) => rejected === null)!;
    const covered = layout.areas.reduce((sum, { areaSqFt }) => sum + areaSqFt, 0);
    expect(covered).toBeCloseTo(moved.answer.section.areaSqFt, 3);
  });

  it('the closing point is not a ninth corner, and that is said', () => {
    const parsed = parseRoofText(caseText('n03'));
    expect(parsed.notes.some(({ path }) => path.startsWith('outline'))).toBe(true);
  });
});

const n05 = caseRoof('n05');
// Water of the grid may step to all eight neighbours: between 100 and 205 the way is open, so its middle is read as asked.
const asked = JSON.parse(caseText('n05'));
asked.existing.readings.push([2.5, 1.5, (100 + 205) / 2]);
const settled = caseRoof('n05', JSON.stringify(asked));
const { mesh, water } = existingOf(settled).judgement;
const levelAt = (at: Point): number => water.levelIn[mesh.points.findIndex(([x, y]) => x === at[0] && y === at[1])];

// Case N05: a drain in the pit of a grid is an outlet.
caseRows('N05: an interior drain is no pit to be filled', [
  { key: 'ponded_cells', got: () => settled.answer.existing.ponds.length, value: 0, tol: 0, basis: 'C' },
  { key: 'level_(1,2)', got: () => levelAt([2, 1]), value: 100, tol: 0, basis: 'C' },
]);

describe('N05: the drain and the open diagonal', () => {
  it('the drain takes the whole section and holds no water over it', () => {
    expect(settled.answer.existing.outlets[0].drainsSqFt).toBeCloseTo(6, 9);
    expect(levelAt([1, 1])).toBe(90);
  });

  it('without the middle readings one corner stays undecided, and the reading that decides it is named', () => {
    expect(n05.answer.existing.verdict).toBe('undecided');
    expect(n05.answer.existing.decidedBy).toContain('2.5, 1.5 ft');
  });
});

const parts = [
  [5520.606601717798, 5530.606601717798],
  [5530.606601717799, 5540.606601717799],
].map(([x0, x1]): Point[] => [
  [x0, 0],
  [x1, 0],
  [x1, 10],
  [x0, 10],
]);
const joined = unite(parts);
const turns = (ring: readonly Point[]): number =>
  ring.filter((p, i) => Math.abs(orient(p, ring[(i + 1) % ring.length], ring[(i + 2) % ring.length])) > 1e-6).length;
const n07 = caseRoof('n07');

// Case N07: two parts whose common side differs in the sixteenth digit.
caseRows('N07: corners that differ in the sixteenth digit', [
  {
    key: 'union_area',
    got: () => joined.reduce((sum, { outer }) => sum + signedAreaSqFt(outer), 0),
    value: 200,
    tol: 1e-6,
    basis: 'C',
  },
  {
    key: 'union_corners',
    got: () => joined[0].outer.length,
    value: 4,
    tol: 0,
    basis: 'C',
    doesNotReproduce:
      'the two points where the parts met stay on the straight sides, so that neighbours can be joined there',
  },
  { key: 'union_corners (where it turns)', got: () => turns(joined[0].outer), value: 4, tol: 0, basis: 'C' },
  { key: 'slivers', got: () => joined.length - 1 + joined[0].holes.length, value: 0, tol: 0, basis: 'C' },
  { key: 'area of the section', got: () => n07.answer.section.areaSqFt, value: 200, tol: 1e-6, basis: 'C' },
]);

describe('N07: the section of two parts', () => {
  it('drops neither: its surface covers it without a gap and meets the rule', () => {
    const surface = n07.answer.existing.surface.reduce((sum, { a, b, c }) => sum + signedAreaSqFt([a, b, c]), 0);
    expect(surface).toBeCloseTo(200, 4);
    expect(n07.answer.existing.verdict).toBe('meets-minimum');
  });
});
