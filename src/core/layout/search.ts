import { taperGroups } from '../../../reference/boards.ts';
import { slopeInPerFt } from '../geometry/plane.ts';
import type { Layout } from '../report/types.ts';
import type { Site } from '../site/site.ts';
import { type Built, build } from './build.ts';
import { buildUpAt, faceRule, heightRejection, usesOf, waterRejection } from './check.ts';
import { groundsOf } from './ground.ts';
import { openParts } from './open-parts.ts';
import type { LayoutPlan } from './plan.ts';
import { type LayoutContext, layoutReport } from './report.ts';

const slopes = taperGroups.map((group) => group.slopeInPerFt);

/** Catalogue slopes that could reach the rule on this ground, gentlest first. */
function slopesFor(
  site: Site,
  patches: readonly { plane: { atOriginIn: number; gx: number; gy: number } }[],
): number[] {
  const own = Math.max(...patches.map(({ plane }) => slopeInPerFt(plane)));
  return slopes.filter((slope) => slope + own >= faceRule(site) - 1e-9 && slope <= 0.5);
}

/** A ground that levelling would make better. */
const isUneven = ({ measured }: Site): boolean => measured.readings.length > 0 || measured.sag !== undefined;

/**
 * The gentlest boards and the simplest ground with which a plan drains in both senses.
 * Where nothing drains, the attempt at 1/4 in per ft on the last ground is given back, so that the reason can be told.
 */
export function buildPlan(site: Site, plan: LayoutPlan): Built {
  let last: Built | null = null;
  for (const ground of groundsOf(site)) {
    for (const slope of slopesFor(site, ground.patches)) {
      // Laid as read, steep boards would only pay for what levelling does better.
      if (ground.how === 'as-read' && isUneven(site) && slope > site.given.faceInPerFt) break;
      const built = build(site, plan, slope, 0, ground);
      if (waterRejection(site, built) === null) return built;
      if (
        last === null ||
        Math.abs(slope - site.given.faceInPerFt) <= Math.abs(last.slopeInPerFt - site.given.faceInPerFt)
      )
        last = built;
    }
  }
  return last ?? build(site, plan, site.given.faceInPerFt, 0, groundsOf(site)[0]);
}

/** The next steeper boards, where they lift the valleys of a plan to a better grade. */
function steeperVariant(context: LayoutContext, built: Built): Built | null {
  const { site } = context;
  const valley = built.judgement.leastValleySlopeInPerFt;
  if (valley === null || valley >= site.given.faceInPerFt - 1e-9) return null;
  const next = slopes.find((slope) => slope > built.slopeInPerFt + 1e-9);
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
  if (heightRejection(usesOf(site, limits, buildUpAt(built.thickness))) === null) return null;
  const next = slopes.filter((slope) => slope < built.slopeInPerFt - 1e-9 && slope >= 0.125).pop();
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
