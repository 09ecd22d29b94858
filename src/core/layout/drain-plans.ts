import type { Judgement } from '../drainage/judge.ts';
import { distanceFt, isInside } from '../geometry/vector.ts';
import type { DrainOutlet, Point } from '../roof.ts';
import type { SiteEdge } from '../site/edges.ts';
import type { Site } from '../site/site.ts';
import { DrainSpots, FAR_IN_FT, isClear, isOffCurbs, roundedInside } from './drain-spots.ts';
import { type Barred, type LayoutPlan, workingOutlets } from './plan.ts';

export const NO_ROUTE: Barred = {
  why: 'The deck is the ceiling of the room below, and no route for the leader of an inside drain is marked.',
  relax: 'Find a way down for the pipe of a drain with a plumber (a closet, a chase, along a wall) and mark it.',
};

/** Under an exposed deck the leader of a new drain would be seen: it takes a marked route. */
export const lacksRoute = ({ given }: Site, { leaderRoute }: DrainOutlet): boolean =>
  given.below === 'living-exposed-deck' && leaderRoute !== 'yes';

/** Drains at these spots, where none of them is on an edge, in a curb or at an outlet. */
function drainPlan(
  site: Site,
  open: readonly SiteEdge[],
  spots: readonly Point[],
  words: Pick<LayoutPlan, 'id' | 'title' | 'why'>,
): LayoutPlan | null {
  if (!spots.every((spot) => isClear(site, spot))) return null;
  const exposed = site.given.below === 'living-exposed-deck';
  const routed = site.roof.outlets.some((outlet) => outlet.kind === 'drain' && outlet.leaderRoute === 'yes');
  const drains = spots.map(
    (at, i): DrainOutlet => ({
      id: spots.length === 1 ? `new-${words.id}` : `new-${words.id}-${i + 1}`,
      kind: 'drain',
      role: 'primary',
      status: 'proposed',
      at,
      sizeIn: null,
      insertBoreIn: null,
      strainer: null,
      strainerFreeSqIn: null,
      inletIn: null,
      working: true,
      leaderRoute: routed ? 'yes' : 'unknown',
    }),
  );
  return {
    ...words,
    outlets: [...workingOutlets(site), ...drains],
    edges: open,
    newEdges: new Set(),
    barred: exposed && !routed ? NO_ROUTE : null,
  };
}

/** New drains: at the low spot; in the middle; two along the longer way. */
export function drainPlans(site: Site, open: readonly SiteEdge[], low: Point): LayoutPlan[] {
  const spots = new DrainSpots(site);
  const middle = spots.one();
  const halves = spots.two();
  const few = site.roof.outlets.filter(({ role }) => role === 'primary').length < FEW_OUTLETS;
  const plans = [
    drainPlan(site, open, [low], {
      id: 'drain-at-low-spot',
      title: 'A new drain at the low spot',
      why: 'Short ways for the water and less board, for a drain with its leader inside the house.',
    }),
    few && middle !== null && distanceFt(middle, low) > FAR_IN_FT
      ? drainPlan(site, open, [middle], {
          id: 'drain-in-the-middle',
          title: 'A new drain where the ways are longest',
          why: 'The longest ways for the water are cut, for a drain away from the old low spot.',
        })
      : null,
    few && halves !== null
      ? drainPlan(site, open, halves, {
          id: 'two-drains',
          title: 'Two new drains where the ways are longest',
          why: 'Half the way for the water and less board, and each drain is a second way out for the other.',
        })
      : null,
  ];
  return plans.filter((plan): plan is LayoutPlan => plan !== null);
}

/** With fewer outlets than this another one shortens the ways much. */
const FEW_OUTLETS = 3;

/** The lowest spot of the old surface that is not at an outlet: its deepest pond, else the middle; beside a curb, not at it. */
export function lowSpot(site: Site, existing: Judgement): Point {
  const pond = existing.ponds[0]?.deepestAt ?? site.roof.existing.seenPonds.find(({ at }) => at !== null)?.at;
  const { points } = site.section.triangulation;
  const sum = points.reduce((s, p) => [s[0] + p[0], s[1] + p[1]] as const, [0, 0] as readonly [number, number]);
  const low = roundedInside(site, pond ?? [sum[0] / points.length, sum[1] / points.length]);
  if (pond == null && !isInside(low, site.section.rings)) return new DrainSpots(site).one() ?? low;
  return isOffCurbs(site, low) ? low : (new DrainSpots(site).nearest(low) ?? low);
}
