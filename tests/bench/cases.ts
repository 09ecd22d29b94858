import { assessReady, type ReadyRoof, readRoofText } from '../../src/answer.ts';
import { heightIn } from '../../src/core/geometry/plane.ts';
import { buildSection, type Section } from '../../src/core/geometry/section.ts';
import { centroid, signedAreaSqFt } from '../../src/core/geometry/vector.ts';
import { hotRun } from '../../src/core/heat/days.ts';
import { newRoof } from '../../src/core/heat/new-roofs.ts';
import { weatherFor } from '../../src/core/heat/place-weather.ts';
import { type HeatRoof, roofDay } from '../../src/core/heat/roof-day.ts';
import { oldLayers, oldSurfaceOf } from '../../src/core/heat/roof-layers.ts';
import { build } from '../../src/core/layout/build.ts';
import { buildPlan } from '../../src/core/layout/build-plan.ts';
import { plansFor, pointsOf } from '../../src/core/layout/candidates.ts';
import { energyTarget } from '../../src/core/layout/energy-target.ts';
import { limitsOf } from '../../src/core/layout/limits.ts';
import { finish, searchLayouts } from '../../src/core/layout/search.ts';
import type { MembraneId } from '../../src/core/membrane/options.ts';
import { rainFor } from '../../src/core/outlets/rain.ts';
import { existingReport } from '../../src/core/report/existing.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import type { Point, Ring } from '../../src/core/roof.ts';
import { siteOf } from '../../src/core/site/site.ts';
import type { Patch } from '../../src/core/surface/patch.ts';
import { envelope } from '../../src/core/taper/envelope.ts';
import { fourWay } from '../../src/core/taper/pattern.ts';
import type { TaperOutlet } from '../../src/core/taper/sources.ts';
import { type demoNames, demoText } from '../../src/store/demo-roofs.ts';

export function readyDemo(name: (typeof demoNames)[number]): ReadyRoof {
  const ready = readRoofText(demoText(name));
  if (!ready.ok) throw new Error(`the invented roof ${name} cannot be read`);
  return ready;
}

export const wholeAnswer = (name: (typeof demoNames)[number]): (() => Assessment) => {
  const ready = readyDemo(name);
  return () => assessReady(ready);
};

/** The answer for one layout that is known: the roof as it is, and one surface built and judged; no search. */
export function withoutSearch(name: (typeof demoNames)[number]) {
  const { roof, ruleSet } = readyDemo(name);
  const rain = rainFor(roof.place, ruleSet);
  const bare = siteOf(roof);
  const plans = plansFor(bare, existingReport(bare, ruleSet, rain).judgement);
  const points = pointsOf(bare, plans);
  const known = buildPlan(siteOf(roof, points), plans[0]);
  return () => {
    const site = siteOf(roof, points);
    const { report } = existingReport(site, ruleSet, rain);
    const built = build(site, known.plan, known.slopeInPerFt, known.baseIn, known.ground);
    return { site, report, built };
  };
}

export const areaOf = (patches: readonly Patch[]): number =>
  patches.reduce((sum, { ring }) => sum + Math.abs(signedAreaSqFt(ring)), 0);

/** Mean height over a surface: exact, because a plane's mean over a ring is its height at the ring's centroid. */
export const meanHeightIn = (patches: readonly Patch[]): number =>
  patches.reduce((sum, { ring, plane }) => sum + Math.abs(signedAreaSqFt(ring)) * heightIn(plane, centroid(ring)), 0) /
  areaOf(patches);

const rectangle = (wideFt: number, deepFt: number, [x, y]: Point = [0, 0]): Ring => [
  [x, y],
  [x + wideFt, y],
  [x + wideFt, y + deepFt],
  [x, y + deepFt],
];

const SLOPE_IN_PER_FT = 0.25;
const START_IN = 0.5;

export interface EnvelopeCase {
  section: Section;
  /** Mean height that is known without the program; null where none is. */
  meanIn: number | null;
  run: () => Patch[];
}

function caseOf(outline: Ring, curbs: readonly Ring[], drains: readonly Point[], meanIn: number | null): EnvelopeCase {
  const section = buildSection(outline, curbs, drains);
  const pattern = fourWay(SLOPE_IN_PER_FT);
  const outlets = drains.map(
    (at, i): TaperOutlet => ({ id: `D${i + 1}`, kind: 'point', at, levelIn: START_IN, pattern }),
  );
  return { section, meanIn, run: () => envelope(section, outlets) };
}

const DRAIN_GRID_FT = 50;

/** An open rectangle with a drain in the middle of every 50 x 50 ft. */
export function drainGrid(across: number, deep: number): EnvelopeCase {
  const drains = Array.from({ length: across * deep }, (_, i): Point => {
    const [column, row] = [i % across, Math.floor(i / across)];
    return [(column + 0.5) * DRAIN_GRID_FT, (row + 0.5) * DRAIN_GRID_FT];
  });
  // Four-way over a square: two thirds of the rise from the drain to the edge (handbook mean of a tapered square).
  const meanIn = START_IN + ((2 / 3) * SLOPE_IN_PER_FT * DRAIN_GRID_FT) / 2;
  return caseOf(rectangle(across * DRAIN_GRID_FT, deep * DRAIN_GRID_FT), [], drains, meanIn);
}

const CURB_FT = 4;
const [WIDE_FT, DEEP_FT] = [500, 250];
const fiveDrains: readonly Point[] = [
  [50, 125],
  [150, 60],
  [250, 190],
  [350, 60],
  [450, 125],
];

/** 500 x 250 ft with five drains and so many 4 x 4 ft curbs in rows, none of them on a drain. */
export function curbField(count: number): EnvelopeCase {
  const across = Math.ceil(Math.sqrt(count * (WIDE_FT / DEEP_FT)));
  const deep = Math.ceil(count / across);
  const curbs: Ring[] = [];
  for (let i = 0; curbs.length < count && i < across * deep; i++) {
    const at: Point = [
      ((i % across) + 0.5) * (WIDE_FT / across) - CURB_FT / 2,
      (Math.floor(i / across) + 0.5) * (DEEP_FT / deep) - CURB_FT / 2,
    ];
    const onDrain = fiveDrains.some(([x, y]) => Math.hypot(x - at[0] - CURB_FT / 2, y - at[1] - CURB_FT / 2) < CURB_FT);
    curbs.push(rectangle(CURB_FT, CURB_FT, onDrain ? [at[0] + 2 * CURB_FT, at[1]] : at));
  }
  return caseOf(rectangle(WIDE_FT, DEEP_FT), curbs, fiveDrains, null);
}

/** Drains and curbs mixed: so many drains in the open grid, a curb at the corner between four of them. */
export function drainsAndCurbs(across: number, deep: number, count: number): EnvelopeCase {
  const drains = Array.from(
    { length: across * deep },
    (_, i): Point => [((i % across) + 0.5) * DRAIN_GRID_FT, (Math.floor(i / across) + 0.5) * DRAIN_GRID_FT],
  );
  const places = (across - 1) * (deep - 1);
  const curbs = Array.from({ length: count }, (_, i): Ring => {
    const place = Math.floor((i * places) / count);
    const [x, y] = [(place % (across - 1)) + 1, Math.floor(place / (across - 1)) + 1];
    return rectangle(CURB_FT, CURB_FT, [x * DRAIN_GRID_FT - CURB_FT / 2, y * DRAIN_GRID_FT - CURB_FT / 2]);
  });
  return caseOf(rectangle(across * DRAIN_GRID_FT, deep * DRAIN_GRID_FT), curbs, drains, null);
}

/** The search alone: ideas built, forms sketched, the best proven. */
export function searchOf(name: (typeof demoNames)[number]) {
  const { roof, ruleSet } = readyDemo(name);
  const rain = rainFor(roof.place, ruleSet);
  const bare = siteOf(roof);
  const plans = plansFor(bare, existingReport(bare, ruleSet, rain).judgement);
  const site = siteOf(roof, pointsOf(bare, plans));
  const context = { site, limits: limitsOf(site, ruleSet), ruleSet, rain, energy: energyTarget(site, ruleSet) };
  return () => finish(searchLayouts(context, plans)).search;
}

/** One hot day over eight roofs: demo (a) as it is and under seven other thicknesses and coverings. */
export function eightRoofs() {
  const { roof } = readyDemo('back-section');
  const site = siteOf(roof);
  const run = hotRun(weatherFor(roof.place).row, true);
  const covering = (id: MembraneId, foamIn: number) => newRoof(site, id, foamIn, { id, title: id });
  const roofs: readonly HeatRoof[] = [
    { layers: oldLayers(site), surface: oldSurfaceOf(site) },
    covering('tpo', 1),
    covering('tpo', 3),
    covering('tpo', 6),
    covering('epdm-black', 3),
    covering('sbs-cold', 3),
    covering('bur-hot', 3),
    covering('pmma', 8),
  ];
  return () => roofs.map((each) => roofDay(each, run));
}
