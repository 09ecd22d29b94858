import { slopeInPerFt } from '../geometry/plane.ts';
import type { Layout } from '../report/types.ts';
import type { Site } from '../site/site.ts';
import { type Built, build, builtBoardFt, filled, overBase } from './build.ts';
import { catalogueOf } from './catalogue.ts';
import { buildUpAt, faceRule, heightRejection, usesOf, waterRejection } from './check.ts';
import { asRead, type BoardGround, deadLevel, groundsOf } from './ground.ts';
import { openParts } from './open-parts.ts';
import type { LayoutPlan } from './plan.ts';
import { type LayoutContext, layoutReport } from './report.ts';

/** Steeper boards than this are for crickets. */
const STEEPEST_IN_PER_FT = 0.5;

const slopesOf = (site: Site): readonly number[] => catalogueOf(site.roof).slopesInPerFt;

/** Catalogue slopes that could reach the rule on this ground, gentlest first. */
function slopesFor(
  site: Site,
  patches: readonly { plane: { atOriginIn: number; gx: number; gy: number } }[],
): number[] {
  const own = Math.max(...patches.map(({ plane }) => slopeInPerFt(plane)));
  return slopesOf(site).filter((slope) => slope + own >= faceRule(site) - 1e-9 && slope <= STEEPEST_IN_PER_FT);
}

/** Fill never asks for more than this along the ways of the water: common practice for a slow but certain fall. */
const FILL_WAY_IN_PER_FT = 0.125;

/** A simpler ground is kept unless a more laborious one saves more than this share: common practice, no source. */
const WORTH_MORE_WORK = 0.1;

/** Tried slopes on one ground: the gentlest that passes, else the one nearest to the rule. */
function gentlest(
  site: Site,
  plan: LayoutPlan,
  ground: BoardGround,
  steepest: number,
): { built: Built; passes: boolean } {
  const rule = site.given.faceInPerFt;
  let last: Built | null = null;
  for (const slope of slopesFor(site, ground.patches)) {
    if (slope > steepest + 1e-9) break;
    const built = build(site, plan, slope, 0, ground);
    if (waterRejection(site, built) === null) return { built, passes: true };
    if (last === null || Math.abs(slope - rule) <= Math.abs(last.slopeInPerFt - rule)) last = built;
  }
  return { built: last ?? build(site, plan, rule, 0, ground), passes: false };
}

/** The base filled only where the boards alone would not carry the water away. */
function filledVariant(site: Site, plain: Built): Built | null {
  const { faceInPerFt, valleyInPerFt, strict } = site.given;
  const face = faceRule(site);
  const wayInPerFt = strict ? faceInPerFt : Math.min(FILL_WAY_IN_PER_FT, valleyInPerFt, face);
  const one = filled(site, plain, { wayInPerFt, faceInPerFt: face });
  return one !== null && waterRejection(site, one) === null ? one : null;
}

/** Grounds that a crew could make of the base, the simplest first. */
function otherGrounds(site: Site): BoardGround[] {
  const others = groundsOf(site).slice(1);
  const sloped = site.base.some(({ plane }) => slopeInPerFt(plane) > 1e-9);
  return others.length > 0 || !sloped ? others : [deadLevel(site)];
}

/**
 * The gentlest boards and the simplest ground with which a plan drains in both senses.
 * Where the boards on the base as read do not do it at the slope of the rule, steeper boards, levelling and fill by the
 * least-path rule are tried; the one with the least board and fill is taken, a simpler one where it costs little more.
 * Where nothing drains, the attempt nearest to the rule is given back, so that the reason can be told.
 */
export function buildPlan(site: Site, plan: LayoutPlan): Built {
  const rule = site.given.faceInPerFt;
  const plain = gentlest(site, plan, asRead(site), rule);
  if (plain.passes) return plain.built;
  // On readings steep boards would only pay for what levelling does better.
  const uneven = site.measured.readings.length > 0 || site.measured.sag !== undefined;
  const tries = [
    ...(uneven ? [] : [gentlest(site, plan, asRead(site), STEEPEST_IN_PER_FT)]),
    ...otherGrounds(site).map((ground) => gentlest(site, plan, ground, STEEPEST_IN_PER_FT)),
  ];
  const fill = filledVariant(site, plain.built);
  const passing = [...tries.filter(({ passes }) => passes).map(({ built }) => built), ...(fill === null ? [] : [fill])];
  if (passing.length === 0) return tries.at(-1)?.built ?? plain.built;
  return passing.reduce((best, one) => (builtBoardFt(one) < builtBoardFt(best) * (1 - WORTH_MORE_WORK) ? one : best));
}

/** The next steeper boards, where they lift the valleys of a plan to a better grade. */
function steeperVariant(context: LayoutContext, built: Built): Built | null {
  const { site } = context;
  const valley = built.judgement.leastValleySlopeInPerFt;
  if (valley === null || valley >= site.given.faceInPerFt - 1e-9) return null;
  const next = slopesOf(site).find((slope) => slope > built.slopeInPerFt + 1e-9);
  if (next === undefined) return null;
  const plan: LayoutPlan = {
    ...built.plan,
    id: `${built.plan.id}-steeper`,
    why: 'Steeper valleys that dry faster and forgive a board laid badly, for a thicker roof.',
  };
  const steeper = build(site, plan, next, 0, built.ground);
  return waterRejection(site, steeper) === null ? steeper : null;
}

/** A gentler taper that only a re-roof exception would allow, when the full one does not fit under the heights. */
function gentlerVariant(context: LayoutContext, built: Built): Built | null {
  const { site, limits } = context;
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
  return build(site, plan, next, 0, built.ground);
}

/** Every plan built, with the variants that the first one suggests. */
export function builtLayouts(context: LayoutContext, plans: readonly LayoutPlan[]): Built[] {
  const built = plans.map((plan) => buildPlan(context.site, plan));
  const first = built[0];
  const variants = first === undefined ? [] : [steeperVariant(context, first), gentlerVariant(context, first)];
  return [...built, ...variants.filter((v): v is Built => v !== null)];
}

/** All layouts: offered ones first, the best of them leading, then the rejected ones with what they break. */
export function layoutsFor(context: LayoutContext, plans: readonly LayoutPlan[]): Layout[] {
  const ranked = builtLayouts(context, plans)
    .map((one) => ({ plan: one.plan, layout: layoutReport(context, one) }))
    .sort((a, b) => rank(a) - rank(b));
  const lead = ranked.find(({ layout }) => layout.rejected === null);
  return ranked.map((one) => {
    const { layout, plan } = one;
    if (one !== lead) return layout;
    return { ...layout, workParts: openParts(context.site, layout, plan.outlets, plan.newEdges) };
  });
}

/** Board feet that the work at the edges is worth: common practice, no source. */
const workBoardFt = { scupper: 800, drain: 2500, edgeFt: 25, parapetFt: 80 };

function edgeWorkBoardFt(plan: LayoutPlan): number {
  const edges = plan.edges.filter(({ id }) => plan.newEdges.has(id));
  const opened = edges.reduce(
    (sum, { edge, lengthFt }) =>
      sum + lengthFt * (edge.kind === 'parapet' ? workBoardFt.parapetFt : workBoardFt.edgeFt),
    0,
  );
  return plan.outlets.reduce((sum, { status, kind }) => sum + (status === 'proposed' ? workBoardFt[kind] : 0), opened);
}

/** A new way out that saves less of the boards than this does not lead: common practice, no source. */
const WORTH_CHANGING = 0.03;

/** Offered before rejected, good valleys before slow ones, then by boards, levelling and work at the edges. */
function rank({ layout, plan }: { layout: Layout; plan: LayoutPlan }): number {
  const changes = plan.newEdges.size + plan.outlets.filter(({ status }) => status === 'proposed').length;
  const cost = layout.volumeBoardFt * (1 + WORTH_CHANGING * changes) + layout.levellingBoardFt + edgeWorkBoardFt(plan);
  // What needs somebody's leave first never leads.
  const unasked = plan.edges.some(({ id, edge }) => plan.newEdges.has(id) && edge.mayDrain !== 'yes');
  const grade = (layout.valleyGrade === 'good' ? 0 : 1e7) + (unasked ? 1e8 : 0);
  return (layout.rejected === null ? 0 : 1e9) + grade + cost;
}
