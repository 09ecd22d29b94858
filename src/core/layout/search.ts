import type { Layout, SearchProgress, SearchReport } from '../report/types.ts';
import type { Site } from '../site/site.ts';
import { type Built, build, overBase } from './build.ts';
import { buildPlan, slopesFor, slopesOf } from './build-plan.ts';
import { buildUpAt, heightRejection, usesOf, waterRejection } from './check.ts';
import { nonDominated, type Weighed } from './frontier.ts';
import { openParts } from './open-parts.ts';
import { type LayoutPlan, otherAxes } from './plan.ts';
import { needsLeave, newOutletsOf, type Rates, rank, ratesOf, weighedCost } from './rank.ts';
import { Rejects } from './rejects.ts';
import { addedPsf, type LayoutContext, layoutReport } from './report.ts';
import { fourWayShape, shapes, type TaperShape } from './shape.ts';
import { type Sketch, Sketcher } from './sketch.ts';
import { momentsOf } from './thermal.ts';

/** Candidates that are looked at before a search stops by itself. */
export const SEARCH_BUDGET = 3000;

/** Flat layers under the taper that are tried where none is asked for, in: half inches as the trade stocks them. */
const BASES_IN = [0, 0.5, 1, 1.5, 2, 2.5, 3, 3.5, 4];

const basesOf = ({ roof }: Site): readonly number[] =>
  roof.insulation.baseIn === null ? BASES_IN : [roof.insulation.baseIn];

/** With more outlets than this the ways are short and forms differ little: fewer of them are tried. */
const MANY_OUTLETS = 8;

/** Sketches that are built and flooded at most; those that hold become layouts. */
const MOST_PROOFS = 12;
const mostVariants = (outlets: number): number => (outlets > MANY_OUTLETS ? 2 : 5);

/** Steeper boards than four times the rule are for crickets alone. */
const STEEPEST_FIELD_IN_PER_FT = 0.5;

/** A gentler taper that only a re-roof exception would allow, when the full one does not fit under the heights. */
function gentlerVariant({ site, limits }: LayoutContext, built: Built): Built | null {
  if (heightRejection(usesOf(site, limits, buildUpAt(overBase(built)))) === null) return null;
  const next = slopesOf(site)
    .filter((slope) => slope < built.slopeInPerFt - 1e-9 && slope >= 0.125)
    .pop();
  if (next === undefined) return null;
  const plan: LayoutPlan = {
    ...built.plan,
    id: `${built.plan.id}-gentler`,
    why: 'Thinner at the tight spot; only where the building office accepts less slope for a re-roof that drains.',
  };
  return build(site, plan, next, built.baseIn, built.ground);
}

const turnWords = (turnDeg: number): string =>
  turnDeg === 0 ? '' : turnDeg === 90 ? '-across' : `-turned-${Math.round(turnDeg)}`;

/** The same outlets in another form of taper. */
function inForm(plan: LayoutPlan, shape: TaperShape, turnDeg: number): LayoutPlan {
  if (shape === fourWayShape && turnDeg === 0) return plan;
  const id = `${plan.id}-${shape.id}${turnWords(turnDeg)}`;
  return { ...plan, id, why: `${shape.why} ${plan.why}`, form: { shape, turnDeg } };
}

/** Forms that are tried about the outlets of a plan, each with its turns. */
function* formsOf(site: Site, { starts, plan }: Built): Generator<{ shape: TaperShape; turnDeg: number }> {
  // Where nothing but an edge takes water the form about a point makes no difference.
  const pointed = starts.some(({ kind }) => kind === 'point');
  const many = starts.length > MANY_OUTLETS;
  for (const shape of pointed ? shapes : [fourWayShape]) {
    if (many && (!shape.forMany || (shape !== fourWayShape && newOutletsOf(plan) > 0))) continue;
    const turns = many ? shape.turnsDeg.slice(0, 1) : shape.turnsDeg;
    for (const turnDeg of turns) yield { shape, turnDeg };
  }
  if (pointed && !many) for (const turnDeg of otherAxes(site)) yield { shape: fourWayShape, turnDeg };
}

/** Every candidate of one plan: forms, turns, slopes and bases, told from few surfaces. */
function* sketchesOf({ site, limits }: LayoutContext, base: Built): Generator<Sketch> {
  const made = slopesOf(site);
  const has = (slope: number): boolean => made.some((one) => Math.abs(one - slope) < 1e-9);
  const fields = slopesFor(site, base.ground.patches).filter((slope) => slope <= STEEPEST_FIELD_IN_PER_FT);
  for (const { shape, turnDeg } of formsOf(site, base)) {
    const sketcher = new Sketcher(site, inForm(base.plan, shape, turnDeg), base.ground, limits);
    for (const slope of fields) {
      if (!shape.boardShares.every((share) => has(share * slope))) continue;
      // The floors of scuppers hold a taper up: bases below them make one and the same.
      let last = '';
      for (const baseIn of basesOf(site)) {
        const sketch = sketcher.at(slope, baseIn);
        const levels = sketch?.levelsIn.join(' ') ?? '';
        if (sketch !== null && levels !== last) yield sketch;
        last = levels;
      }
    }
  }
}

/** Valleys steeper than the rule are no better for it. */
const flatness = (valleyInPerFt: number, ruleInPerFt: number): number => -Math.min(valleyInPerFt, ruleInPerFt);

/** Cost in board feet of the same worth. */
const costBoardFt = (
  { plan, boardFt }: Pick<Sketch, 'plan' | 'boardFt'>,
  levellingBoardFt: number,
  rates: Rates,
): number => weighedCost({ plan, boardFt, levellingBoardFt }, rates) / rates.boardFt;

const weighSketch =
  (ruleInPerFt: number, rates: Rates, levellingOf: (sketch: Sketch) => number) =>
  (sketch: Sketch): Weighed => ({
    costBoardFt: costBoardFt(sketch, levellingOf(sketch), rates),
    greatestIn: sketch.greatestIn,
    flatnessPerFt: flatness(sketch.valleyInPerFt, ruleInPerFt),
    addedPsf: 0,
    newOutlets: newOutletsOf(sketch.plan),
  });

/** The same of a surface that was built, before anything is told about its boards. */
const weighBuilt =
  (ruleInPerFt: number, rates: Rates) =>
  ({ plan, thickness, ground, judgement }: Built): Weighed => {
    const { boardFt, greatestIn, areaSqFt } = momentsOf(thickness);
    return {
      costBoardFt: costBoardFt({ plan, boardFt }, ground.levellingBoardFt, rates),
      greatestIn,
      flatnessPerFt: flatness(judgement.leastValleySlopeInPerFt ?? ruleInPerFt, ruleInPerFt),
      addedPsf: addedPsf(boardFt / areaSqFt),
      newOutlets: newOutletsOf(plan),
    };
  };

interface Ranked {
  built: Built;
  plan: LayoutPlan;
  layout: Layout;
}

const STEEPER_WHY = 'Steeper valleys that dry faster and forgive a board laid badly, for a thicker roof.';

/** Of one plan at one slope the thinnest base: what lies under more is thicker and dearer, and nothing else. */
const thinnestOf = (sketches: readonly Sketch[]): Sketch[] => [
  ...new Map([...sketches].reverse().map((sketch) => [`${sketch.plan.id} ${sketch.slopeInPerFt}`, sketch])).values(),
];

/** Whether one that did not drain tells the same of another: the same form on the same ground, no steeper. */
const failsLike = (failed: Sketch, other: Sketch): boolean =>
  failed.plan.id === other.plan.id && other.slopeInPerFt <= failed.slopeInPerFt + 1e-9;

/**
 * Sketches turned into surfaces and flooded, the most promising of those that no other beats first, until enough of them
 * hold. One that does not hold leaves the field, so that what it had beaten is looked at again.
 */
function* proven(
  context: LayoutContext,
  fitting: readonly Sketch[],
  grounds: ReadonlyMap<string, Built>,
  front: (sketches: readonly Sketch[]) => Sketch[],
) {
  const { site, limits } = context;
  const most = mostVariants(context.site.roof.outlets.length);
  const done = new Set<Sketch>();
  let left = thinnestOf(fitting);
  let found = 0;
  for (let proofs = 0; proofs < MOST_PROOFS && found < most; proofs++) {
    const sketch = front(left).find((one) => !done.has(one));
    if (sketch === undefined) return;
    done.add(sketch);
    const { plan, slopeInPerFt, baseIn } = sketch;
    const base = grounds.get(groundKey(plan));
    if (base === undefined) continue;
    const why = slopeInPerFt > base.slopeInPerFt + 1e-9 ? `${STEEPER_WHY} ${plan.why}` : plan.why;
    const on = baseIn === base.baseIn ? '' : `-on-${baseIn}`;
    const named = { ...plan, id: `${plan.id}-${Math.round(slopeInPerFt * 16)}-16${on}`, why };
    const built = build(site, named, slopeInPerFt, baseIn, base.ground);
    if (waterRejection(site, built) !== null) {
      left = left.filter((other) => !failsLike(sketch, other));
      continue;
    }
    if (heightRejection(usesOf(site, limits, buildUpAt(overBase(built)))) !== null) {
      left = left.filter((other) => other !== sketch);
      continue;
    }
    found++;
    yield built;
  }
}

/** Plans that differ in the form of their taper alone lie on one ground. */
const groundKey = ({ outlets, newEdges }: LayoutPlan): string =>
  [...outlets.map(({ id }) => id), '|', ...newEdges].join(' ');

/**
 * Every layout worth showing: each plan in its plainest form, with the forms, slopes and bases that no other beats; all
 * of them built and judged. Step by step, so that whoever waits can say how far it is and stop.
 * @param budget candidates that are looked at; the same budget gives the same answer
 */
export function* searchLayouts(
  context: LayoutContext,
  plans: readonly LayoutPlan[],
  budget = SEARCH_BUDGET,
): Generator<SearchProgress, { built: Built[]; search: SearchReport }> {
  const { site } = context;
  const rates = ratesOf(site.roof.prices);
  const bases: Built[] = [];
  for (const plan of plans) {
    bases.push(buildPlan(site, plan));
    yield { tried: bases.length, budget, doing: 'plans', told: 0, toTell: plans.length };
  }
  const grounds = new Map(bases.map((base) => [groundKey(base.plan), base]));
  const rejects = new Rejects();
  const fitting: Sketch[] = [];
  let tried = bases.length;
  let complete = true;
  search: for (const base of bases) {
    for (const sketch of sketchesOf(context, base)) {
      if (tried === budget) {
        complete = false;
        break search;
      }
      tried++;
      if (base.plan.barred !== null) rejects.bar(sketch, base.plan.barred);
      else if (sketch.short === null) fitting.push(sketch);
      else rejects.add(sketch, sketch.short);
      if (tried % 50 === 0) yield { tried, budget, doing: 'sketches', told: 0, toTell: bases.length };
    }
  }
  const levellingOf = ({ plan }: Sketch): number => grounds.get(groundKey(plan))?.ground.levellingBoardFt ?? 0;
  const known = new Set(bases.map(({ plan, slopeInPerFt, baseIn }) => `${plan.id} ${slopeInPerFt} ${baseIn}`));
  // What the plainest forms show already is no proof worth its time, but it beats what it beats.
  const front = (sketches: readonly Sketch[]): Sketch[] =>
    nonDominated(sketches, weighSketch(site.given.faceInPerFt, rates, levellingOf))
      .filter(({ plan, slopeInPerFt, baseIn }) => !known.has(`${plan.id} ${slopeInPerFt} ${baseIn}`))
      .sort((a, b) => order(a, levellingOf(a), rates) - order(b, levellingOf(b), rates));
  const variants: Built[] = [];
  for (const built of proven(context, fitting, grounds, front)) {
    variants.push(built);
    yield { tried, budget, doing: 'proofs', told: 0, toTell: bases.length + variants.length };
  }
  const gentler = bases[0] === undefined ? null : gentlerVariant(context, bases[0]);
  const built = [...bases, ...variants, ...(gentler === null ? [] : [gentler])];
  const offered = variants.length > 0 || bases.some((base) => !isStopped(context, base));
  const holds = ({ plan, slopeInPerFt, baseIn }: Sketch): boolean => {
    const base = grounds.get(groundKey(plan));
    return base !== undefined && waterRejection(site, build(site, plan, slopeInPerFt, baseIn, base.ground)) === null;
  };
  return { built, search: { tried, budget, complete, ...rejects.report(fitting.length, offered, holds) } };
}

const order = (sketch: Sketch, levellingBoardFt: number, rates: Rates): number =>
  (sketch.valleyInPerFt < 0.125 - 1e-9 ? 1e7 : 0) +
  (needsLeave(sketch.plan) ? 1e8 : 0) +
  costBoardFt(sketch, levellingBoardFt, rates);

/** Runs a search to its end. */
export function finish<T>(steps: Generator<unknown, T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** What stops a surface before its boards are counted. */
const isStopped = ({ site, limits }: LayoutContext, built: Built): boolean =>
  built.plan.barred !== null ||
  waterRejection(site, built) !== null ||
  heightRejection(usesOf(site, limits, buildUpAt(overBase(built)))) !== null;

/**
 * Reports of what a search has built: offered ones first, the best of them leading and no other that something beats,
 * then the rejected ones with what they break. What another beats is not reported: counting its boards takes longest.
 */
export function* layoutsOf(
  context: LayoutContext,
  built: readonly Built[],
  { tried, budget }: Pick<SearchReport, 'tried' | 'budget'>,
): Generator<SearchProgress, Layout[]> {
  const rates = ratesOf(context.site.roof.prices);
  const weigh = weighBuilt(context.site.given.faceInPerFt, rates);
  const stopped = new Set(built.filter((one) => isStopped(context, one)));
  const told = new Map<Built, Ranked>();
  const report = function* (list: readonly Built[]): Generator<SearchProgress> {
    const fresh = list.filter((one) => !told.has(one));
    const toTell = told.size + fresh.length;
    for (const one of fresh) {
      told.set(one, { built: one, plan: one.plan, layout: layoutReport(context, one) });
      yield { tried, budget, doing: 'reports', told: told.size, toTell };
    }
  };
  let left = built.filter((one) => !stopped.has(one));
  let offered = nonDominated(left, weigh);
  for (;;) {
    yield* report(offered);
    // Boards that nobody makes stop a layout only now; what it had beaten is then looked at again.
    const unmade = offered.filter((one) => told.get(one)?.layout.rejected !== null);
    if (unmade.length === 0) break;
    for (const one of unmade) stopped.add(one);
    left = left.filter((one) => !stopped.has(one));
    offered = nonDominated(left, weigh);
  }
  // Of two ideas at once that do not hold nothing is learnt that each of them alone does not tell.
  const rejected = built.filter((one) => stopped.has(one) && !one.plan.pair);
  yield* report(rejected);
  const rankedOf = (list: readonly Built[]): Ranked[] => list.flatMap((one) => told.get(one) ?? []);
  const ranked = rankedOf([...offered, ...rejected]).sort((a, b) => rank(a, rates) - rank(b, rates));
  const lead = ranked.find(({ layout }) => layout.rejected === null);
  const best = distinctions(rankedOf(offered).map(({ layout }) => layout));
  return ranked.map((one) => {
    const { plan } = one;
    const layout = { ...one.layout, why: [...(best.get(one.layout.id) ?? []), one.layout.why].join(' ') };
    if (one !== lead) return layout;
    return { ...layout, workParts: openParts(context.site, layout, plan.outlets, plan.newEdges) };
  });
}

/** A layout without a valley has none that could be flat. */
const NO_VALLEY_IN_PER_FT = 1;

/** In what each of the offered layouts is the first of all. */
function distinctions(offered: readonly Layout[]): Map<string, string[]> {
  const out = new Map<string, string[]>();
  if (offered.length < 2) return out;
  const first = (value: (layout: Layout) => number, words: string): void => {
    const least = Math.min(...offered.map(value));
    const holders = offered.filter((layout) => value(layout) < least + 1e-6);
    if (holders.length === 1) out.set(holders[0].id, [...(out.get(holders[0].id) ?? []), words]);
  };
  first(({ volumeBoardFt, levellingBoardFt }) => volumeBoardFt + levellingBoardFt, 'The least board of all.');
  first(({ greatestThicknessIn }) => greatestThicknessIn, 'The thinnest at its thickest.');
  const dry = offered.some(({ leastValleySlopeInPerFt: valley }) => valley === null);
  first(
    ({ leastValleySlopeInPerFt }) => -(leastValleySlopeInPerFt ?? NO_VALLEY_IN_PER_FT),
    dry ? 'The only one without a valley.' : 'The steepest valleys.',
  );
  first(({ newOutlets }) => newOutlets, 'The fewest new ways out.');
  return out;
}
