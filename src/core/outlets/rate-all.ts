import { scupperFreeboard } from '../../../reference/scuppers.ts';
import { type AreaPiece, areaByOutlet, NOWHERE } from '../drainage/areas.ts';
import type { Judgement } from '../drainage/judge.ts';
import { depthForLoadIn } from '../drainage/rain-load.ts';
import { between, boxOf, isInside } from '../geometry/vector.ts';
import type { Assumption, Finding, OutletReport, Working } from '../report/types.ts';
import type { Gutter, Outlet, Point, ScupperOutlet } from '../roof.ts';
import type { RuleSet } from '../rule-set.ts';
import type { SiteEdge } from '../site/edges.ts';
import { outletPoint, type Site } from '../site/site.ts';
import type { SurfaceMesh } from '../surface/mesh.ts';
import { shutBasis } from './blocked.ts';
import { liveLoadOf } from './live-load.ts';
import type { DesignRain } from './rain.ts';
import type { OutletRating } from './rating.ts';
import { gutterAsNeeded } from './size-edge.ts';
import { sizeOutlet } from './size-outlets.ts';
import type { OpenWays } from './spill-places.ts';
import { wallShareSqFt } from './wall-share.ts';
import { inletLevelIn, type ShutSurface, shutAreas, shutSurface, vertexAt } from './when-shut.ts';

/** Water from walls, steep roofs and downspouts that falls onto each outlet's area, sq ft. */
function addedAreas(site: Site, pieces: readonly AreaPiece[], ruleSet: RuleSet): Map<string, number> {
  const sums = new Map<string, number>();
  const boxed = pieces.map((piece) => ({ piece, box: boxOf(piece.ring) }));
  const outletAt = ([x, y]: Point): string =>
    boxed.find(
      ({ piece, box }) =>
        x >= box.minX && x <= box.maxX && y >= box.minY && y <= box.maxY && isInside([x, y], [piece.ring]),
    )?.piece.outlet ?? NOWHERE;
  const add = (outlet: string, areaSqFt: number): void => {
    sums.set(outlet, (sums.get(outlet) ?? 0) + areaSqFt);
  };
  for (const { at, fromSqFt } of site.roof.inflows) add(outletAt(at), fromSqFt);
  const walls = site.edges.filter(({ edge }) => edge.wallHeightFt !== null);
  const wallArea = ({ edge, lengthFt }: SiteEdge): number => (edge.wallHeightFt ?? 0) * lengthFt;
  const facing = ({ from, to }: SiteEdge): number => {
    const n: Point = [from[1] - to[1], to[0] - from[0]];
    return (Math.atan2(n[0], n[1]) * 180) / Math.PI;
  };
  const whole = walls.reduce((sum, wall) => sum + wallArea(wall), 0);
  const share = wallShareSqFt(
    walls.map((wall) => ({ areaSqFt: wallArea(wall), facingDeg: facing(wall) })),
    ruleSet,
  ).areaSqFt;
  const samples = 24;
  for (const edge of site.edges) {
    const shed = (edge.edge.shedsSqFt ?? 0) + (whole > 0 ? (share * wallArea(edge)) / whole : 0);
    if (shed === 0) continue;
    for (let i = 0; i < samples; i++) {
      const p = between(edge.from, edge.to, (i + 0.5) / samples);
      const inside: Point = [p[0] - (edge.to[1] - edge.from[1]) * 1e-3, p[1] + (edge.to[0] - edge.from[0]) * 1e-3];
      add(outletAt(inside), shed / samples);
    }
  }
  return sums;
}

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
    const label = outlet.status === 'proposed' ? `new ${outlet.kind}` : `${outlet.kind} ${outlet.id}`;
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

/** What the surface does with its main outlets shut. */
interface MainsShut {
  overflows: ReadonlyMap<string, OverflowSetting>;
  /** Depth over a main outlet before an overflow takes water, not more than the roof bears; null = no overflow takes it. */
  headOver: (outlet: Outlet) => number | null;
}

interface OverflowSetting {
  areaSqFt: number;
  addedSqFt: number;
  /** null = the height of its inlet is not known. */
  inletAboveLowIn: number | null;
  inletAboveSurfaceIn: number | null;
}

function mainsShut(site: Site, mesh: SurfaceMesh, ways: OpenWays, ruleSet: RuleSet): MainsShut {
  const relief = ways.outlets.filter(({ role, working }) => role === 'overflow' && working);
  if (relief.length === 0) return { overflows: new Map(), headOver: () => null };
  const shut = shutSurface(site, mesh, ways, ({ role }) => role === 'primary');
  const pieces = shutAreas(shut);
  const added = addedAreas(site, pieces, ruleSet);
  const areas = areaByOutlet(pieces);
  const bearsIn = depthForLoadIn(liveLoadOf(site.roof.deck.liveLoadPsf).psf);
  const byId = new Set(relief.map(({ id }) => id));
  return {
    overflows: new Map(
      relief.map((outlet) => [
        outlet.id,
        {
          areaSqFt: areas.get(outlet.id) ?? 0,
          addedSqFt: added.get(outlet.id) ?? 0,
          ...overflowHeights(site, mesh, shut, outlet),
        },
      ]),
    ),
    headOver: (outlet) => {
      const vertex = vertexAt(mesh, outletPoint(site.roof, outlet));
      const inletIn = inletLevelIn(site, mesh, outlet);
      if (vertex === null || inletIn === null || shut.water.offer[vertex] < 0) return null;
      if (!byId.has(shut.offers[shut.water.offer[vertex]].outlet)) return null;
      const headIn = shut.water.levelIn[vertex] - inletIn;
      return headIn > SAME_LEVEL_IN ? Math.min(headIn, bearsIn) : null;
    },
  };
}

/** Where an overflow's inlet stands: over the low point of what runs to it, and over the surface at its own spot. */
function overflowHeights(site: Site, mesh: SurfaceMesh, shut: ShutSurface, outlet: Outlet) {
  const at = outletPoint(site.roof, outlet);
  const vertex = vertexAt(mesh, at);
  if (vertex === null || outlet.inletIn === null) return { inletAboveLowIn: null, inletAboveSurfaceIn: null };
  const floorIn = site.measured.at(at) + outlet.inletIn;
  const own = mesh.z.filter(
    (_, v) => shut.water.offer[v] >= 0 && shut.offers[shut.water.offer[v]].outlet === outlet.id,
  );
  const lowPointIn = own.length === 0 ? mesh.z[vertex] : Math.min(...own);
  return { inletAboveLowIn: floorIn - lowPointIn, inletAboveSurfaceIn: floorIn - mesh.z[vertex] };
}

/** Levels nearer than this are one level. */
const SAME_LEVEL_IN = 1e-6;

function steepestPitch(site: Site): number | null {
  const pitches = site.edges.flatMap(({ edge }) => (edge.shedsSqFt && edge.pitchIn12 !== null ? [edge.pitchIn12] : []));
  return pitches.length === 0 ? null : Math.max(...pitches);
}
