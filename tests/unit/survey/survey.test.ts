import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distanceFt, isInside, toSegment } from '../../../src/core/geometry/vector.ts';
import type { Point, Ring, Roof } from '../../../src/core/roof.ts';
import { type SurveyMark, surveyOf } from '../../../src/core/survey/survey.ts';
import { parseRoofObject } from '../../../src/input/parse-roof.ts';
import { randomRoof } from '../../laws/random-roofs.ts';

function roofOf(file: object): Roof {
  const parsed = parseRoofObject({ version: 1, ...file });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return parsed.roof;
}

const boundaryFt = (p: Point, ring: Ring): number =>
  Math.min(...ring.map((a, i) => toSegment(p, a, ring[(i + 1) % ring.length]).distanceFt));

/** Length of a walk from mark to mark. */
const walkFt = (marks: readonly SurveyMark[]): number =>
  marks.slice(1).reduce((sum, { at }, i) => sum + distanceFt(marks[i].at, at), 0);

const roofs = randomRoof.map(({ outline, curbs, outlets }): Roof => {
  const bare = roofOf({ outline });
  const drain = roofOf({ outline, outlets: [{ kind: 'drain', at: outlets[0].at }] }).outlets[0];
  return {
    ...bare,
    curbs: curbs.map((ring, i) => ({ id: `curb-${i}`, kind: 'other', outline: ring, heightIn: null })),
    outlets: outlets.map(({ id, at }) => ({ ...drain, id, at }) as Roof['outlets'][number]),
  };
});

describe('where to measure', () => {
  test('law: every mark is on the section and off the curbs, no two are one, every corner and outlet is there', () => {
    fc.assert(
      fc.property(roofs, (roof) => {
        const { marks, gridFt } = surveyOf(roof);
        expect(marks.map(({ id }) => id)).toEqual(marks.map((_, i) => i + 1));
        for (const { at } of marks) {
          expect(isInside(at, [roof.outline]) || boundaryFt(at, roof.outline) < 1e-6).toBe(true);
          for (const { outline } of roof.curbs)
            expect(isInside(at, [outline]) && boundaryFt(at, outline) > 1e-6).toBe(false);
        }
        for (const [i, { at }] of marks.entries())
          for (const other of marks.slice(i + 1)) expect(distanceFt(at, other.at)).toBeGreaterThan(0.2);
        const nearest = (p: Point): number => Math.min(...marks.map(({ at }) => distanceFt(at, p)));
        const onCurb = (p: Point): boolean => roof.curbs.some(({ outline }) => isInside(p, [outline]));
        for (const p of roof.outline) if (!onCurb(p)) expect(nearest(p)).toBeLessThan(1e-6);
        for (const outlet of roof.outlets)
          if (outlet.kind === 'drain' && !onCurb(outlet.at)) expect(nearest(outlet.at)).toBeLessThan(0.25);
        expect(gridFt).toBeGreaterThanOrEqual(4);
        expect(gridFt).toBeLessThanOrEqual(8);
        // Nowhere on the section is a mark farther off than the diagonal of one grid square.
        for (let x = -30; x < 70; x += 3.7)
          for (let y = -20; y < 70; y += 3.3) {
            const p: Point = [x, y];
            if (!isInside(p, [roof.outline]) || onCurb(p)) continue;
            const nearCurb = roof.curbs.some(({ outline }) => boundaryFt(p, outline) < gridFt);
            if (!nearCurb) expect(nearest(p)).toBeLessThan(1.1 * Math.SQRT2 * gridFt);
          }
      }),
      { numRuns: 60 },
    );
  });

  test('law: the marks do not depend on what was read, and come out the same every time', () => {
    fc.assert(
      fc.property(roofs, (roof) => {
        const read: Roof = {
          ...roof,
          existing: {
            ...roof.existing,
            surface: {
              ...{ kind: 'readings', sense: 'height', referenceIn: null, strings: [], errorIn: null },
              readings: [[...roof.outline[0], 1.5]],
            },
          },
        };
        expect(surveyOf(read)).toEqual(surveyOf(roof));
      }),
      { numRuns: 15 },
    );
  });

  const back = roofOf({
    outline: [
      [0, 0],
      [30, 0],
      [30, 24],
      [0, 24],
    ],
    edges: [
      { side: 0, kind: 'gutter' },
      { side: 1, fromFt: 0, toFt: 10, kind: 'parapet' },
      { side: 1, fromFt: 10, toFt: 24, kind: 'wall', openings: [{ kind: 'door', fromFt: 14, toFt: 17, heightIn: 4 }] },
    ],
    curbs: [
      {
        id: 'skylight',
        outline: [
          [9, 13],
          [13, 13],
          [13, 17],
          [9, 17],
        ],
        heightIn: null,
      },
    ],
    outlets: [
      { id: 'D1', kind: 'drain', at: [15, 8] },
      { id: 'S1', kind: 'scupper', side: 1, alongFt: 5 },
      { id: 'S2', kind: 'scupper', side: 1, alongFt: 7, status: 'proposed' },
    ],
    existing: {
      seenPonds: [
        { at: [21, 5], depthIn: 1 },
        {
          outline: [
            [2, 18],
            [6, 18],
            [6, 22],
            [2, 22],
          ],
          depthIn: 0.5,
        },
      ],
    },
  });
  const { marks, heights } = surveyOf(back);
  const at = (x: number, y: number): SurveyMark | undefined => marks.find((mark) => distanceFt(mark.at, [x, y]) < 1e-6);

  test('ends of edge parts, middles, scuppers, curb corners, seen ponds and the roof beside a drain are marked', () => {
    expect(at(30, 10)?.why).toMatch(/end of the (parapet|wall)/);
    expect(at(15, 0)?.why).toContain('middle of the gutter side');
    expect(at(30, 5)?.why).toBe('roof at scupper S1');
    expect(at(15, 8)?.why).toContain('drain D1');
    expect(at(17, 8)?.kind).toBe('beside-outlet');
    for (const [x, y] of [
      [9, 13],
      [13, 13],
      [13, 17],
      [9, 17],
    ])
      expect(at(x, y)?.kind).toBe('curb');
    expect(at(21, 5)?.kind).toBe('pond');
    expect(at(4, 20)?.kind).toBe('pond');
    // The grid point of the plan at 20, 4 lies 1.4 ft from the pond's deepest spot and stays; one within a foot goes.
    expect(at(20, 4)?.kind).toBe('grid');
    expect(at(16, 8)).toBeUndefined();
  });

  test('a place is told along a side, from one numbered corner toward the next', () => {
    const corner = at(0, 0)!;
    const next = at(30, 0)!;
    expect(at(12, 4)?.place).toBe(
      `12′-0″ along the gutter side from mark ${corner.id} toward mark ${next.id}, then 4′-0″ straight in`,
    );
    expect(at(30, 10)?.place).toBe(
      `10′-0″ along the parapet and wall from mark ${next.id} toward mark ${at(30, 24)!.id}`,
    );
    expect([corner.id, corner.place]).toEqual([1, 'where the wall meets the gutter side']);
  });

  test('the walk goes round first and then back and forth: hardly longer than the shortest there could be', () => {
    const inside = marks.slice(marks.findIndex(({ at: [x, y] }) => x > 0 && x < 30 && y > 0 && y < 24));
    expect(inside.every(({ at: [x, y] }) => x > 0 && x < 30 && y > 0 && y < 24)).toBe(true);
    // No walk through n spots that lie a grid apart is shorter than n - 1 grids; spots off the rows cost some steps more.
    expect(walkFt(inside)).toBeLessThan(1.6 * 4 * inside.length);
  });

  test('sills, curbs and inlets that are there are heights for the tape, with the place in the roof file', () => {
    expect(heights.map(({ id, path, knownIn }) => [id, path, knownIn])).toEqual([
      ['H1', 'edges[2].openings[0].heightIn', 4],
      ['H2', 'curbs[0].heightIn', null],
      ['H3', 'outlets[0].inletIn', null],
      ['H4', 'outlets[1].inletIn', null],
    ]);
  });

  test('a large roof is read on a wider grid rather than in a thousand spots', () => {
    const large = surveyOf(
      roofOf({
        outline: [
          [0, 0],
          [250, 0],
          [250, 200],
          [0, 200],
        ],
      }),
    );
    expect(large.gridFt).toBeGreaterThan(8);
    expect(large.marks.length).toBeLessThan(220);
    const small = surveyOf(
      roofOf({
        outline: [
          [0, 0],
          [12, 0],
          [12, 8],
          [0, 8],
        ],
      }),
    );
    expect(small.gridFt).toBe(4);
  });

  test('an outline walked clockwise has its rows inside too', () => {
    const clockwise = surveyOf(
      roofOf({
        outline: [
          [0, 0],
          [0, 24],
          [30, 24],
          [30, 0],
        ],
      }),
    );
    expect(clockwise.marks.filter(({ kind }) => kind === 'grid').length).toBe(35);
  });
});
