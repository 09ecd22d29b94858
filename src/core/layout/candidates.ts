import { feetInches } from '../../units/print.ts';
import type { Judgement } from '../drainage/judge.ts';
import { between, distanceFt, toSegment } from '../geometry/vector.ts';
import type { Point, ScupperOutlet } from '../roof.ts';
import type { SiteEdge } from '../site/edges.ts';
import { isOpenEdge } from '../site/offers.ts';
import { outletPoint, type Site } from '../site/site.ts';
import { drainPlans, lacksRoute, lowSpot, NO_ROUTE } from './drain-plans.ts';
import { type Barred, type LayoutPlan, workingOutlets } from './plan.ts';

/** How many edges of each sort are tried, the likeliest first; a roof with many outlets has less to gain from one more. */
const mostEdges = (site: Site): number =>
  site.roof.outlets.filter(({ role }) => role === 'primary').length >= 4 ? 1 : 3;

const name = (edge: SiteEdge): string => edge.label.split(',')[0];
/** What must be asked before water leaves over an edge; nothing where it may, or may not. */
const asked = (edge: SiteEdge): { asks?: string } =>
  edge.edge.mayDrain === 'unknown' ? { asks: `Whether the ${edge.label} may drain was not said: ask first.` } : {};

const withAsks = (why: string, { asks }: { asks?: string }): string => (asks === undefined ? why : `${why} ${asks}`);

/** An edge over which no water may leave. */
const shutEdge = (edge: SiteEdge): Barred | null =>
  edge.edge.mayDrain === 'no'
    ? {
        why: `The ${edge.label} may not drain (a neighbour, a walk or a door below).`,
        relax: `Ask whether water may leave over the ${edge.label} after all, to a gutter and a leader that take it away.`,
      }
    : null;

/** The plan with what is there: the least work at the edges. */
function existingPlan(site: Site, open: readonly SiteEdge[]): LayoutPlan | null {
  const outlets = workingOutlets(site);
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
      ...asked(edge),
      why: withAsks('Shorter ways for the water and less board, for a new gutter and its downspouts.', asked(edge)),
      outlets: workingOutlets(site),
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
        ...asked(edge),
        why: withAsks('A second way out near the low spot, without a pipe through the rooms.', asked(edge)),
        outlets: [...workingOutlets(site), scupper],
        edges: open,
        newEdges: new Set<string>(),
        barred: shutEdge(edge),
      };
    });
}

/** Two ideas at once, where both may be made: the likeliest edges and scuppers, and one of each. */
function pairPlans(ideas: readonly LayoutPlan[]): LayoutPlan[] {
  const open = ideas.filter(({ barred }) => barred === null).slice(0, MOST_IN_PAIRS);
  return open.flatMap((a, i) =>
    open.slice(i + 1).map((b): LayoutPlan => {
      const asks = [...new Set([a.asks, b.asks])].filter((each) => each !== undefined).join(' ');
      const why =
        'Two new ways out: short ways for the water and less board, and each is a second way out for the other.';
      return {
        id: `${a.id}-and-${b.id}`,
        title: `${a.title}, and ${lowerFirst(b.title)}`,
        why: asks === '' ? why : `${why} ${asks}`,
        ...(asks === '' ? {} : { asks }),
        outlets: [...a.outlets, ...b.outlets.filter(({ id }) => !a.outlets.some((outlet) => outlet.id === id))],
        edges: [...a.edges, ...b.edges.filter(({ id }) => !a.edges.some((edge) => edge.id === id))],
        newEdges: new Set([...a.newEdges, ...b.newEdges]),
        barred: null,
        pair: true,
      };
    }),
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
