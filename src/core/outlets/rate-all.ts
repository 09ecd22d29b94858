import { scupperFreeboard } from '../../../reference/scuppers.ts';
import type { Judgement } from '../drainage/judge.ts';
import type { Assumption, Finding, OutletReport, Working } from '../report/types.ts';
import type { Gutter, Outlet, ScupperOutlet } from '../roof.ts';
import type { RuleSet } from '../rule-set.ts';
import type { SiteEdge } from '../site/edges.ts';
import { outletPoint, type Site } from '../site/site.ts';
import { addedAreas } from './added-areas.ts';
import { shutBasis } from './blocked.ts';
import { mainsShut } from './mains-shut.ts';
import { outletName } from './outlet-name.ts';
import type { DesignRain } from './rain.ts';
import type { OutletRating } from './rating.ts';
import { gutterAsNeeded } from './size-edge.ts';
import { sizeOutlet } from './size-outlets.ts';

export interface RatedOutlets {
  reports: OutletReport[];
  ratings: ReadonlyMap<string, OutletRating>;
  workings: Working[];
  findings: Finding[];
  assumed: Assumption[];
}

/** A gutter of which nothing is known but that it is there. */
const someGutter: Gutter = {
  profile: 'k',
  sizeIn: null,
  slopeInPerFt: null,
  downspouts: null,
  downspoutSizeIn: null,
};

/**
 * Every outlet of one surface with its own drainage area, flow, capacity and what it needs.
 * @param open edges over which water leaves; those of kind drip stay free, the others are taken as gutters
 */
export function rateOutlets(
  site: Site,
  judgement: Judgement,
  outlets: readonly Outlet[],
  open: readonly SiteEdge[],
  newEdges: ReadonlySet<string>,
  ruleSet: RuleSet,
  rain: DesignRain,
): RatedOutlets {
  const added = addedAreas(site, judgement.areas, ruleSet);
  const shut = mainsShut(site, judgement.mesh, { outlets, opened: newEdges }, ruleSet);
  const out: RatedOutlets = { reports: [], ratings: new Map(), workings: [], findings: [], assumed: [] };
  const ratings = new Map<string, OutletRating>();
  const duty = (id: string, label: string, role: Outlet['role'], working: boolean) => ({
    id,
    label,
    role,
    working,
    drainsSqFt: judgement.areaSqFt.get(id) ?? 0,
    addedSqFt: added.get(id) ?? 0,
    rain,
    ruleSet,
  });
  const keep = (
    rating: OutletRating,
    base: Omit<OutletReport, 'flowGpm' | 'capacityGpm' | 'adequate' | 'needs' | 'basis' | 'source'>,
  ): void => {
    const { flowGpm, capacityGpm, adequate, needs, basis, source } = rating;
    ratings.set(base.id, rating);
    out.reports.push({ ...base, flowGpm, capacityGpm, adequate, needs, basis, source });
    out.workings.push(...rating.workings);
    if (base.status === 'existing') out.findings.push(...rating.findings);
    out.assumed.push(...rating.assumed);
  };
  for (const outlet of outlets) {
    const label = outletName(outlet, outlets);
    const relief = outlet.role === 'overflow' ? (shut.overflows.get(outlet.id) ?? null) : null;
    const normal = duty(outlet.id, label, outlet.role, outlet.working);
    const base = relief === null ? normal : { ...normal, drainsSqFt: relief.areaSqFt, addedSqFt: relief.addedSqFt };
    const usableHeadIn = outlet.role === 'primary' ? shut.headOver(outlet) : null;
    const rating =
      outlet.kind === 'drain'
        ? sizeOutlet({
            ...base,
            kind: 'drain',
            sizeIn: outlet.sizeIn,
            insertBoreIn: outlet.insertBoreIn,
            strainer: outlet.strainer,
            strainerFreeSqIn: outlet.strainerFreeSqIn,
            usableHeadIn,
            horizontalSlopeInPerFt: null,
            makersCurve: null,
          })
        : sizeOutlet({
            ...base,
            kind: 'scupper',
            widthIn: outlet.widthIn,
            heightIn: outlet.heightIn,
            usableHeadIn: underTheOpening(outlet, usableHeadIn, ruleSet),
          });
    const { role, status, id } = outlet;
    const { drainsSqFt, addedSqFt } = normal;
    keep(relief === null ? rating : { ...rating, basis: `${rating.basis}; ${shutBasis(relief.areaSqFt)}` }, {
      id,
      label,
      kind: outlet.kind,
      role,
      status,
      at: outletPoint(site.roof, outlet),
      to: null,
      drainsSqFt,
      addedSqFt,
      ...(relief === null
        ? {}
        : {
            shutSqFt: relief.areaSqFt,
            inletAboveLowIn: relief.inletAboveLowIn,
            inletAboveSurfaceIn: relief.inletAboveSurfaceIn,
          }),
    });
  }
  for (const edge of open) {
    const base = duty(edge.id, edge.label, 'primary', true);
    const isNew = newEdges.has(edge.id);
    const gutter = edge.edge.gutter ?? (edge.edge.kind === 'drip' && !isNew ? null : someGutter);
    const edgeOf = (as: Gutter | null) =>
      sizeOutlet({
        ...base,
        kind: 'edge',
        fromFt: edge.fromFt,
        toFt: edge.toFt,
        gutter: as,
        pitchIn12: steepestPitch(site),
      });
    const first = edgeOf(gutter);
    // A new gutter is planned as it is needed, and rated as it is planned.
    const planned = isNew && first.needed?.kind === 'gutter' ? first.needed : null;
    const rating = planned === null ? first : edgeOf(gutterAsNeeded(planned, edge.fromFt, edge.toFt));
    const { id, label, drainsSqFt, addedSqFt } = base;
    const status = isNew ? 'proposed' : 'existing';
    keep(rating, {
      id,
      label: isNew ? `new gutter on the ${label}` : label,
      kind: 'edge',
      role: 'primary',
      status,
      at: edge.from,
      to: edge.to,
      drainsSqFt,
      addedSqFt,
    });
  }
  return { ...out, ratings };
}

/** A scupper never uses more than its opening less the freeboard. */
function underTheOpening({ heightIn }: ScupperOutlet, headIn: number | null, ruleSet: RuleSet): number | null {
  const openIn = (heightIn ?? ruleSet.building.overflowScupper.leastOpeningIn) - scupperFreeboard.freeboardIn;
  return headIn === null ? null : Math.min(Math.max(0, openIn), headIn);
}

function steepestPitch(site: Site): number | null {
  const pitches = site.edges.flatMap(({ edge }) => (edge.shedsSqFt && edge.pitchIn12 !== null ? [edge.pitchIn12] : []));
  return pitches.length === 0 ? null : Math.max(...pitches);
}
