import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heightIn } from '../../src/core/geometry/plane.ts';
import { buildSection } from '../../src/core/geometry/section.ts';
import { boundOf, coneBoardFt } from '../../src/core/layout/bound.ts';
import { build, builtBoardFt, filled } from '../../src/core/layout/build.ts';
import { buildPlan } from '../../src/core/layout/build-plan.ts';
import { waterRejection } from '../../src/core/layout/check.ts';
import { asRead } from '../../src/core/layout/ground.ts';
import type { LayoutPlan } from '../../src/core/layout/plan.ts';
import { momentsOf } from '../../src/core/layout/thermal.ts';
import { isOpenEdge } from '../../src/core/site/offers.ts';
import { type Site, siteOf } from '../../src/core/site/site.ts';
import { envelope } from '../../src/core/taper/envelope.ts';
import { parseRoofText } from '../../src/input/parse-roof.ts';
import { randomRoof } from './random-roofs.ts';

const RUNS = { numRuns: 60, seed: 20261125 };

describe('law: no layout takes less than the least boards with its own least path slope', () => {
  it('level decks, any mix of patterns, turns and levels', () => {
    fc.assert(
      fc.property(randomRoof, ({ outline, curbs, outlets }) => {
        const section = buildSection(
          outline,
          curbs,
          outlets.map(({ at }) => at),
        );
        const least = Math.min(...outlets.map(({ pattern }) => pattern.leastRiseInPerFt));
        const own = momentsOf(envelope(section, outlets)).boardFt;
        const bound = coneBoardFt(section, outlets, least);
        expect(own).toBeGreaterThanOrEqual(bound.boardFt - bound.errorBoardFt - 1e-3);
      }),
      RUNS,
    );
  });
});

interface Deck {
  fall: object;
  drain: readonly [number, number];
  gutter: boolean;
}

const plane = fc
  .record({ slopeInPerFt: fc.constantFrom(0, 0.0625, 0.125, 0.1875, 0.25), bearing: fc.integer({ min: 0, max: 23 }) })
  .map(({ slopeInPerFt, bearing }) => ({ planes: [{ slopeInPerFt, fallsToward: bearing * 15 }] }));

/** A sagging deck read every 6 ft, to the eighth of an inch. */
const sag = fc.array(fc.integer({ min: 0, max: 8 }), { minLength: 20, maxLength: 20 }).map((eighths) => ({
  sense: 'height',
  readings: eighths.map((e, i) => [6 * (i % 5), 6 * Math.floor(i / 5), -e / 8]),
}));

const deck = (fall: fc.Arbitrary<object>): fc.Arbitrary<Deck> =>
  fc.record({
    fall,
    drain: fc.tuple(fc.integer({ min: 2, max: 22 }), fc.integer({ min: 2, max: 16 })),
    gutter: fc.boolean(),
  });

function siteOn({ fall, drain, gutter }: Deck): { site: Site; plan: LayoutPlan } {
  const parsed = parseRoofText(
    JSON.stringify({
      version: 1,
      label: 'Invented',
      invented: true,
      outline: [
        [0, 0],
        [24, 0],
        [24, 18],
        [0, 18],
      ],
      edges: [0, 1, 2, 3].map((side) =>
        side === 0 && gutter ? { side, kind: 'gutter', mayDrain: 'yes' } : { side, kind: 'wall', mayDrain: 'no' },
      ),
      outlets: [{ id: 'D1', kind: 'drain', at: drain, sizeIn: 3, role: 'primary' }],
      existing: { ...fall, readOn: 'deck' },
    }),
  );
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  const site = siteOf(parsed.roof);
  const edges = site.edges.filter(isOpenEdge);
  return {
    site,
    plan: { id: 'x', title: '', why: '', outlets: parsed.roof.outlets, edges, newEdges: new Set(), barred: null },
  };
}

function holds(one: Deck): void {
  const { site, plan } = siteOn(one);
  const built = buildPlan(site, plan);
  if (waterRejection(site, built) === null)
    expect([built.judgement.drained, built.judgement.ponds.length]).toEqual([true, 0]);
  const bound = boundOf(site, built);
  if (bound !== null) {
    const own = builtBoardFt(built);
    // Round cones are extrapolated from two many-sided ones: their error is part of what is stated.
    expect(own).toBeGreaterThanOrEqual(bound.boardFt - Math.max(1e-3, Math.min(bound.errorBoardFt, 2e-3 * own)));
    expect(bound.strictConeBoardFt).toBeGreaterThanOrEqual(bound.boardFt - 1e-6);
  }
}

/** Fill raises and never cuts, and what is filled drains by the judge of every surface. */
function fills(one: Deck): void {
  const { site, plan } = siteOn(one);
  const bare = build(site, plan, 0.25, 0, asRead(site));
  const fill = filled(site, bare, { wayInPerFt: 0.125, faceInPerFt: 0.125 });
  if (fill === null) return;
  const { mesh } = fill.judgement;
  mesh.z.forEach((z, i) => {
    expect(z).toBeGreaterThanOrEqual(bare.judgement.mesh.z[i] - 1e-9);
  });
  for (const { ring, plane: by } of fill.ground.fill)
    for (const p of ring) expect(heightIn(by, p)).toBeGreaterThanOrEqual(-1e-6);
  expect(fill.judgement.ponds).toEqual([]);
  expect(fill.judgement.drained).toBe(true);
  expect(fill.judgement.leastValleySlopeInPerFt ?? 1).toBeGreaterThanOrEqual(0.125 - 1e-6);
  expect(fill.judgement.leastFaceSlopeInPerFt ?? 1).toBeGreaterThanOrEqual(0.125 - 1e-6);
}

describe('law: decks that slope or sag', () => {
  it('planes: what is offered is drained, and takes no less than the least', () => {
    fc.assert(fc.property(deck(plane), holds), { ...RUNS, numRuns: 30 });
  });

  it('readings: what is offered is drained, and takes no less than the least', () => {
    fc.assert(fc.property(deck(sag), holds), { ...RUNS, numRuns: 15 });
  });

  it('fill by the least-path rule drains every plane deck', () => {
    fc.assert(fc.property(deck(plane), fills), RUNS);
  });

  it('fill by the least-path rule drains every sagging deck', () => {
    fc.assert(fc.property(deck(sag), fills), { ...RUNS, numRuns: 30 });
  });
});
