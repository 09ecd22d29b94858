import type { SearchProgress, SearchReport } from '../report/types.ts';
import type { Site } from '../site/site.ts';
import { type Built, build, overBase } from './build.ts';
import { buildPlan, slopesFor, slopesOf } from './build-plan.ts';
import { buildUpAt, heightRejection, usesOf, waterRejection } from './check.ts';
import { nonDominated } from './frontier.ts';
import { isStopped } from './offered.ts';
import { type LayoutPlan, otherAxes } from './plan.ts';
import { groundKey, MANY_OUTLETS, proven } from './proofs.ts';
import { newOutletsOf, ratesOf } from './rank.ts';
import { Rejects } from './rejects.ts';
import type { LayoutContext } from './report.ts';
import { fourWayShape, shapes, type TaperShape } from './shape.ts';
import { type Sketch, Sketcher } from './sketch.ts';
import { order, weighSketch } from './weigh.ts';

/** Candidates that are looked at before a search stops by itself. */
export const SEARCH_BUDGET = 3000;

/** Flat layers under the taper that are tried where none is asked for, in: half inches as the trade stocks them. */
const BASES_IN = [0, 0.5, 1, 1.5, 2, 2.5, 3, 3.5, 4];

const basesOf = ({ roof }: Site): readonly number[] =>
  roof.insulation.baseIn === null ? BASES_IN : [roof.insulation.baseIn];

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

/** Runs a search to its end. */
export function finish<T>(steps: Generator<unknown, T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
