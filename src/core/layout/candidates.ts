import { feetInches } from '../../units/print.ts';
import type { Judgement } from '../drainage/judge.ts';
import { between, boxOf, distanceFt, isInside, toSegment } from '../geometry/vector.ts';
import type { DrainOutlet, Outlet, Point, ScupperOutlet } from '../roof.ts';
import type { SiteEdge } from '../site/edges.ts';
import { isOpenEdge } from '../site/offers.ts';
import { outletPoint, type Site } from '../site/site.ts';
import type { Barred, LayoutPlan } from './plan.ts';

/** How many edges of each sort are tried, the likeliest first; a roof with many outlets has less to gain from one more. */
const mostEdges = (site: Site): number =>
  site.roof.outlets.filter(({ role }) => role === 'primary').length >= 4 ? 1 : 3;
const FAR_IN_FT = 3;

const name = (edge: SiteEdge): string => edge.label.split(',')[0];
const asked = (edge: SiteEdge): string =>
  edge.edge.mayDrain === 'unknown' ? ' Whether this edge may drain was not said: ask first.' : '';

const working = (site: Site): Outlet[] => site.roof.outlets.filter((outlet) => outlet.working);

const NO_ROUTE: Barred = {
  why: 'The deck is the ceiling of the room below, and no route for the leader of an inside drain is marked.',
  relax: 'Find a way down for the pipe of a drain with a plumber (a closet, a chase, along a wall) and mark it.',
};

/** An edge over which no water may leave. */
const shutEdge = (edge: SiteEdge): Barred | null =>
  edge.edge.mayDrain === 'no'
    ? {
        why: `The ${edge.label} may not drain (a neighbour, a walk or a door below).`,
        relax: `Ask whether water may leave over the ${edge.label} after all, to a gutter and a leader that take it away.`,
      }
    : null;

/** Under an exposed deck the leader of a new drain would be seen: it takes a marked route. */
const lacksRoute = ({ given }: Site, { leaderRoute }: DrainOutlet): boolean =>
  given.below === 'living-exposed-deck' && leaderRoute !== 'yes';

/** The plan with what is there: the least work at the edges. */
function existingPlan(site: Site, open: readonly SiteEdge[]): LayoutPlan | null {
  const outlets = working(site);
  const primary = outlets.filter(({ role }) => role === 'primary');
  if (primary.length === 0 && open.length === 0) return null;
  const what = [...primary.map((o) => `${o.kind} ${o.id}`), ...open.map(name)];
  const few = what.length > 3 ? `the ${what.length} outlets that are there` : what.join(' and ');
  const wished = primary.filter(({ status }) => status === 'proposed');
  if (wished.length > 0) {
    const named = wished.map(({ kind, id }) => `${kind} ${id}`).join(' and ');
    return {
      id: 'existing-outlets',
      title: `With what is wished for (${named}): ${few}`,
      why: 'The new ways out that were asked for, and what is there.',
      outlets,
      edges: open,
      newEdges: new Set(),
      barred: wished.some((outlet) => outlet.kind === 'drain' && lacksRoute(site, outlet)) ? NO_ROUTE : null,
    };
  }
  return {
    id: 'existing-outlets',
    title: `Water leaves where it does now: ${few}`,
    why: 'Nothing new at the edges: the least work outside the section.',
    outlets,
    edges: open,
    newEdges: new Set(),
    barred: null,
  };
}

/** Opening one more edge to a gutter. */
function edgePlans(site: Site, open: readonly SiteEdge[]): LayoutPlan[] {
  const canOpen = (edge: SiteEdge): boolean =>
    !isOpenEdge(edge) && (edge.edge.kind === 'rake' || (edge.edge.mayDrain === 'yes' && edge.edge.kind === 'parapet'));
  return site.edges
    .filter((edge) => canOpen(edge) && edge.edge.openings.length === 0)
    .sort((a, b) => b.lengthFt - a.lengthFt)
    .slice(0, mostEdges(site))
    .map((edge) => ({
      id: `open-${edge.id}`,
      title: `The ${edge.label} opened to a new gutter as well`,
      why: `Shorter ways for the water and less board, for a new gutter and its downspouts.${asked(edge)}`,
      outlets: working(site),
      edges: [...open, edge],
      newEdges: new Set([edge.id]),
      barred: shutEdge(edge),
    }));
}

/** One more scupper through a parapet, where it shortens the ways most: at the middle, or near the low spot. */
function scupperPlans(site: Site, open: readonly SiteEdge[], low: Point): LayoutPlan[] {
  return site.edges
    .filter(({ edge }) => edge.kind === 'parapet')
    .sort((a, b) => toSegment(low, a.from, a.to).distanceFt - toSegment(low, b.from, b.to).distanceFt)
    .slice(0, mostEdges(site))
    .map((edge) => {
      const t = Math.min(0.85, Math.max(0.15, toSegment(low, edge.from, edge.to).t));
      const at = between(edge.from, edge.to, t);
      const alongFt = Math.round(distanceFt(site.roof.outline[edge.edge.side], at) * 2) / 2;
      const scupper: ScupperOutlet = {
        id: `new-scupper-${edge.id}`,
        kind: 'scupper',
        role: 'primary',
        status: 'proposed',
        side: edge.edge.side,
        alongFt,
        widthIn: null,
        heightIn: null,
        inletIn: null,
        working: true,
      };
      return {
        id: `scupper-${edge.id}`,
        title: `A new scupper in the ${edge.label}, ${feetInches(alongFt)} along`,
        why: `A second way out near the low spot, without a pipe through the rooms.${asked(edge)}`,
        outlets: [...working(site), scupper],
        edges: open,
        newEdges: new Set<string>(),
        barred: shutEdge(edge),
      };
    });
}

/** Drains at these spots, where none of them is on an edge, in a curb or at an outlet. */
function drainPlan(
  site: Site,
  open: readonly SiteEdge[],
  spots: readonly Point[],
  words: Pick<LayoutPlan, 'id' | 'title' | 'why'>,
): LayoutPlan | null {
  const clear = spots.every(
    (spot) =>
      site.edges.every((edge) => toSegment(spot, edge.from, edge.to).distanceFt > FAR_IN_FT) &&
      isInside(spot, site.section.rings) &&
      site.roof.outlets.every((outlet) => distanceFt(outletPoint(site.roof, outlet), spot) >= FAR_IN_FT),
  );
  if (!clear) return null;
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
    outlets: [...working(site), ...drains],
    edges: open,
    newEdges: new Set(),
    barred: exposed && !routed ? NO_ROUTE : null,
  };
}

/** New drains: at the low spot; in the middle; two along the middle of the long side. */
function drainPlans(site: Site, open: readonly SiteEdge[], low: Point): LayoutPlan[] {
  const box = boxOf(site.outline);
  const at = (x: number, y: number): Point =>
    roundedInside(site, [box.minX + (box.maxX - box.minX) * x, box.minY + (box.maxY - box.minY) * y]);
  const wide = box.maxX - box.minX > box.maxY - box.minY;
  const middle = at(0.5, 0.5);
  const halves = wide ? [at(0.25, 0.5), at(0.75, 0.5)] : [at(0.5, 0.25), at(0.5, 0.75)];
  const few = site.roof.outlets.filter(({ role }) => role === 'primary').length < FEW_OUTLETS;
  const plans = [
    drainPlan(site, open, [low], {
      id: 'drain-at-low-spot',
      title: 'A new drain at the low spot',
      why: 'Short ways for the water and less board, for a drain with its leader inside the house.',
    }),
    few && distanceFt(middle, low) > FAR_IN_FT
      ? drainPlan(site, open, [middle], {
          id: 'drain-in-the-middle',
          title: 'A new drain in the middle',
          why: 'Equal ways from all sides, for a drain away from the old low spot.',
        })
      : null,
    few
      ? drainPlan(site, open, halves, {
          id: 'two-drains',
          title: 'Two new drains along the middle',
          why: 'Half the way for the water and less board, and each drain is a second way out for the other.',
        })
      : null,
  ];
  return plans.filter((plan): plan is LayoutPlan => plan !== null);
}

/** With fewer outlets than this another one shortens the ways much. */
const FEW_OUTLETS = 3;

/** The lowest spot of the old surface that is not at an outlet: its deepest pond, else the lowest point well inside. */
function lowSpot(site: Site, existing: Judgement): Point {
  const pond = existing.ponds[0];
  if (pond !== undefined) return roundedInside(site, pond.deepestAt);
  const seen = site.roof.existing.seenPonds.find(({ at }) => at !== null)?.at;
  if (seen) return roundedInside(site, seen);
  const { points } = site.section.triangulation;
  const sum = points.reduce((s, p) => [s[0] + p[0], s[1] + p[1]] as const, [0, 0] as readonly [number, number]);
  return roundedInside(site, [sum[0] / points.length, sum[1] / points.length]);
}

/** To the half foot, as it would be marked on the deck. */
function roundedInside(site: Site, p: Point): Point {
  const near: Point = [Math.round(p[0] * 2) / 2, Math.round(p[1] * 2) / 2];
  return isInside(near, site.section.rings) ? near : p;
}

/** Two ideas at once, where both may be made: the likeliest edges and scuppers, and one of each. */
function pairPlans(ideas: readonly LayoutPlan[]): LayoutPlan[] {
  const open = ideas.filter(({ barred }) => barred === null).slice(0, MOST_IN_PAIRS);
  return open.flatMap((a, i) =>
    open.slice(i + 1).map(
      (b): LayoutPlan => ({
        id: `${a.id}-and-${b.id}`,
        title: `${a.title}, and ${lowerFirst(b.title)}`,
        why: 'Two new ways out: short ways for the water and less board, and each is a second way out for the other.',
        outlets: [...a.outlets, ...b.outlets.filter(({ id }) => !a.outlets.some((outlet) => outlet.id === id))],
        edges: [...a.edges, ...b.edges.filter(({ id }) => !a.edges.some((edge) => edge.id === id))],
        newEdges: new Set([...a.newEdges, ...b.newEdges]),
        barred: null,
        pair: true,
      }),
    ),
  );
}

const MOST_IN_PAIRS = 3;

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** Ideas worth building, the plainest first. */
export function plansFor(site: Site, existing: Judgement): LayoutPlan[] {
  const open = site.edges.filter(isOpenEdge);
  const low = lowSpot(site, existing);
  const more = [...edgePlans(site, open), ...scupperPlans(site, open, low), ...drainPlans(site, open, low)];
  const plain = existingPlan(site, open);
  // A roof with many outlets has short ways already.
  const few = site.roof.outlets.length <= MANY_OUTLETS;
  return [...(plain === null ? [] : [plain]), ...more, ...(few ? pairPlans(more) : [])];
}

const MANY_OUTLETS = 8;

/** Points that the plans need as vertices of the section. */
export function pointsOf(site: Site, plans: readonly LayoutPlan[]): Point[] {
  return plans.flatMap((plan) => plan.outlets.map((outlet) => outletPoint(site.roof, outlet)));
}
