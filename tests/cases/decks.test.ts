import { describe, expect, it } from 'vitest';
import { leastBoards } from '../../src/core/layout/bound.ts';
import { build, builtBoardFt, filled } from '../../src/core/layout/build.ts';
import { buildPlan } from '../../src/core/layout/build-plan.ts';
import { waterRejection } from '../../src/core/layout/check.ts';
import { asRead, groundsOf } from '../../src/core/layout/ground.ts';
import type { LayoutPlan } from '../../src/core/layout/plan.ts';
import { isOpenEdge } from '../../src/core/site/offers.ts';
import { type Site, siteOf } from '../../src/core/site/site.ts';
import { parseRoofText } from '../../src/input/parse-roof.ts';
import { caseRoof } from './case-roof.ts';

interface DeckFile {
  size: readonly [number, number];
  existing: object;
  outlets?: readonly object[];
  gutters?: readonly number[];
  slopeRule?: object;
}

/** An invented roof file: a rectangle between parapets, gutters on some sides, measured on the bare deck. */
const fileOf = ({ size: [a, b], existing, outlets = [], gutters = [], slopeRule = {} }: DeckFile): string =>
  JSON.stringify({
    version: 1,
    label: 'Invented deck',
    invented: true,
    outline: [
      [0, 0],
      [a, 0],
      [a, b],
      [0, b],
    ],
    edges: [0, 1, 2, 3].map((side) =>
      gutters.includes(side)
        ? { side, kind: 'gutter', mayDrain: 'yes' }
        : { side, kind: 'parapet', topIn: 30, mayDrain: 'no' },
    ),
    outlets,
    existing: { ...existing, readOn: 'deck' },
    slopeRule,
  });

function siteFrom(text: string): Site {
  const parsed = parseRoofText(text);
  if (!parsed.ok) throw new Error(parsed.problems.map(({ path, message }) => `${path}: ${message}`).join('\n'));
  return siteOf(parsed.roof);
}

const planOf = (site: Site): LayoutPlan => ({
  id: 'there',
  title: '',
  why: '',
  outlets: site.roof.outlets,
  edges: site.edges.filter(isOpenEdge),
  newEdges: new Set(),
  barred: null,
});

const drain = (x: number, y: number) => ({ id: 'D1', kind: 'drain', at: [x, y], sizeIn: 3, role: 'primary' });

const gable = {
  planes: [
    {
      slopeInPerFt: 0.125,
      fallsToward: { side: 0 },
      where: [
        [0, 0],
        [30, 0],
        [30, 12],
        [0, 12],
      ],
    },
    {
      slopeInPerFt: 0.125,
      fallsToward: { side: 2 },
      where: [
        [0, 24],
        [30, 24],
        [30, 12],
        [0, 12],
      ],
    },
  ],
};
const hip = {
  planes: [
    {
      slopeInPerFt: 0.125,
      fallsToward: { side: 0 },
      where: [
        [0, 0],
        [40, 0],
        [30, 10],
        [10, 10],
      ],
    },
    {
      slopeInPerFt: 0.125,
      fallsToward: { side: 1 },
      where: [
        [40, 0],
        [40, 20],
        [30, 10],
      ],
    },
    {
      slopeInPerFt: 0.125,
      fallsToward: { side: 2 },
      where: [
        [40, 20],
        [0, 20],
        [10, 10],
        [30, 10],
      ],
    },
    {
      slopeInPerFt: 0.125,
      fallsToward: { side: 3 },
      where: [
        [0, 20],
        [0, 0],
        [10, 10],
      ],
    },
  ],
};

describe('decks of several planes, from roof files', () => {
  it('a gable at 1/8 to two gutters takes boards at 1/8 and reaches 1/4 everywhere', () => {
    const site = siteFrom(fileOf({ size: [30, 24], existing: gable, gutters: [0, 2] }));
    expect(site.measured.at([15, 12])).toBeCloseTo(1.5, 9);
    const built = buildPlan(site, planOf(site));
    expect([built.slopeInPerFt, built.ground.how]).toEqual([0.125, 'as-read']);
    expect(built.judgement.leastFaceSlopeInPerFt).toBeCloseTo(0.25, 9);
    expect(waterRejection(site, built)).toBeNull();
  });

  it('a hip at 1/8 to four gutters: four planes, hips and a ridge, and no valley', () => {
    const site = siteFrom(fileOf({ size: [40, 20], existing: hip, gutters: [0, 1, 2, 3] }));
    const built = buildPlan(site, planOf(site));
    expect(built.slopeInPerFt).toBe(0.125);
    expect(built.judgement.leastValleySlopeInPerFt).toBeNull();
    expect(built.judgement.leastFaceSlopeInPerFt).toBeCloseTo(0.25, 9);
  });

  it('a gable turned inwards holds its water at the valley until boards are laid to a drain', () => {
    const inward = {
      planes: gable.planes.map((plane, i) => ({ ...plane, fallsToward: { side: i === 0 ? 2 : 0 } })),
    };
    const { answer } = caseRoof('decks', fileOf({ size: [30, 24], existing: inward, outlets: [drain(15, 12)] }));
    expect(answer.existing.flats.some(({ lengthFt }) => (lengthFt ?? 0) > 29)).toBe(true);
    const offered = answer.layouts.filter(({ rejected }) => rejected === null);
    expect(offered.length).toBeGreaterThan(0);
    for (const { ponds, flats } of offered) expect([ponds.length, flats.length]).toEqual([0, 0]);
  });

  it.each([
    ['a gap', { planes: [gable.planes[0]] }, 'existing.planes', 'no plane covers 360 sq ft'],
    [
      'an overlap',
      {
        planes: [
          gable.planes[0],
          {
            ...gable.planes[1],
            where: [
              [0, 24],
              [30, 24],
              [30, 10],
              [0, 10],
            ],
          },
        ],
      },
      'existing.planes[1].where',
      'lies over existing.planes[0] on 60 sq ft',
    ],
    [
      'a step',
      { planes: [gable.planes[0], { ...gable.planes[1], through: [0, 24, 2] }] },
      'existing.planes[1]',
      'with a step of 2″',
    ],
  ])('%s between planes is named with its place', (_, existing, path, words) => {
    const parsed = parseRoofText(fileOf({ size: [30, 24], existing, gutters: [0, 2] }));
    expect(parsed.ok).toBe(false);
    const said = parsed.ok ? [] : parsed.problems.map((problem) => `${problem.path}: ${problem.message}`);
    expect(said.join('\n')).toContain(`${path}: `);
    expect(said.join('\n')).toContain(words);
  });
});

describe('20 x 20 ft, centre drain, four-way at 1/4 on a deck that falls 3/16 to one corner', () => {
  const text = fileOf({
    size: [20, 20],
    existing: { planes: [{ slopeInPerFt: 0.1875, fallsToward: 'SW' }] },
    outlets: [drain(10, 10)],
  });
  const site = siteFrom(text);
  const plan = planOf(site);
  const bare = build(site, plan, 0.25, 0, asRead(site));

  it('stands 0.152 in deep and is rejected', () => {
    expect(bare.judgement.ponds[0].greatestDepthIn).toBeCloseTo(0.15165, 4);
    expect(waterRejection(site, bare)?.why).toContain('water would still stand');
  });

  it('filled by the least-path rule it drains, every way and plane as steep as asked', () => {
    const fill = filled(site, bare, { wayInPerFt: 0.125, faceInPerFt: 0.25 });
    if (fill === null) throw new Error('nothing was filled');
    expect(waterRejection(site, fill)).toBeNull();
    expect(fill.judgement.leastValleySlopeInPerFt).toBeGreaterThanOrEqual(0.125 - 1e-9);
    expect(fill.judgement.leastFaceSlopeInPerFt).toBeGreaterThanOrEqual(0.25 - 1e-9);
    // The low corner rises from 0.1517 in under the drain to 1/8 x 14.14 ft over it.
    expect(fill.ground.greatestFillIn).toBeCloseTo(0.15165 + 0.125 * Math.hypot(10, 10), 3);
    const corner = fill.judgement.mesh.points.findIndex(([x, y]) => Math.hypot(x, y) < 1e-6);
    const outlet = fill.judgement.mesh.points.findIndex(([x, y]) => Math.hypot(x - 10, y - 10) < 1e-6);
    const { z } = fill.judgement.mesh;
    expect(z[corner] - z[outlet]).toBeGreaterThanOrEqual(0.125 * Math.hypot(10, 10) - 1e-9);
  });

  it('what is offered there is never the bare taper at 1/4', () => {
    const { answer } = caseRoof('decks', text);
    for (const layout of answer.layouts) {
      if (layout.rejected !== null) continue;
      expect([layout.ponds.length, layout.flats.length]).toEqual([0, 0]);
      expect(layout.slopeInPerFt > 0.25 || layout.levellingBoardFt > 0).toBe(true);
    }
  });
});

describe('readings with one hollow', () => {
  const grid = [0, 4, 8, 12, 16, 20, 24].flatMap((x) =>
    [0, 4, 8, 12, 16, 20].map((y) => [x, y, x === 16 && y === 12 ? -1 : 0]),
  );
  const text = (depthIn: number) =>
    fileOf({
      size: [24, 20],
      existing: { readings: grid.map(([x, y, z]) => [x, y, z * depthIn]), sense: 'height' },
      gutters: [0],
    });

  it('deeper than the boards carry: the fill stays in the hollow, less than levelling would take', () => {
    const site = siteFrom(text(1.25));
    const built = build(site, planOf(site), 0.25, 0, asRead(site));
    expect(waterRejection(site, built)).not.toBeNull();
    const fill = filled(site, built, { wayInPerFt: 0.125, faceInPerFt: 0.125 });
    const level = groundsOf(site).find(({ how }) => how === 'level');
    expect(fill?.judgement.drained).toBe(true);
    expect(fill?.ground.levellingBoardFt).toBeLessThan(level?.levellingBoardFt ?? 0);
    expect(fill?.judgement.ponds).toEqual([]);
  });

  it('the plan takes whichever needs least and leaves no water', () => {
    const site = siteFrom(text(1.25));
    const built = buildPlan(site, planOf(site));
    expect(built.ground.how).not.toBe('as-read');
    expect(waterRejection(site, built)).toBeNull();
    expect(built.ground.greatestFillIn).toBeCloseTo(1.25, 6);
  });
});

describe('least boards on sloped decks', () => {
  it('24 ft one-way on a deck at 1/8: 1.5 in mean over the thin edge, not 3.0', () => {
    const site = siteFrom(
      fileOf({
        size: [30, 24],
        existing: { planes: [{ slopeInPerFt: 0.125, fallsToward: { side: 0 } }] },
        gutters: [0],
      }),
    );
    const built = buildPlan(site, planOf(site));
    const least = leastBoards(site, built, 0.25);
    expect(least.boardFt / 720 - 0.5).toBeCloseTo(1.5, 6);
    expect(least.errorBoardFt).toBeLessThan(1e-6);
    expect(builtBoardFt(built)).toBeCloseTo(least.boardFt, 6);
  });

  it('where the deck falls away from the gutter the boards make up for it: 4.5 in mean', () => {
    const site = siteFrom(
      fileOf({
        size: [30, 24],
        existing: { planes: [{ slopeInPerFt: 0.125, fallsToward: { side: 2 } }] },
        gutters: [0],
      }),
    );
    const built = build(site, planOf(site), 0.375, 0, asRead(site));
    expect(leastBoards(site, built, 0.25).boardFt / 720 - 0.5).toBeCloseTo(4.5, 6);
  });
});
