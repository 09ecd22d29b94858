import type { AreaPiece } from '../drainage/areas.ts';
import { NOWHERE } from '../drainage/areas.ts';
import type { Judgement } from '../drainage/judge.ts';
import { between, boxOf, isInside } from '../geometry/vector.ts';
import type { Assumption, Finding, OutletReport, Working } from '../report/types.ts';
import type { Gutter, Outlet, Point } from '../roof.ts';
import type { RuleSet } from '../rule-set.ts';
import type { SiteEdge } from '../site/edges.ts';
import { outletPoint, type Site } from '../site/site.ts';
import type { DesignRain } from './rain.ts';
import type { OutletRating } from './rating.ts';
import { sizeOutlet } from './size-outlets.ts';
import { wallShareSqFt } from './wall-share.ts';

/** A new gutter is planned with downspouts at both ends. */
const END_FT = 1;

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

/** Downspouts are counted from the side's first corner, as the file counts them. */
const newGutter = ({ fromFt, toFt }: SiteEdge): Gutter => ({
  profile: 'k',
  sizeIn: null,
  slopeInPerFt: null,
  downspouts: [fromFt + END_FT, Math.max(fromFt + END_FT, toFt - END_FT)],
  downspoutSizeIn: null,
});

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
    const base = duty(outlet.id, label, outlet.role, outlet.working);
    const rating =
      outlet.kind === 'drain'
        ? sizeOutlet({
            ...base,
            kind: 'drain',
            sizeIn: outlet.sizeIn,
            insertBoreIn: outlet.insertBoreIn,
            strainer: outlet.strainer,
            strainerFreeSqIn: outlet.strainerFreeSqIn,
            usableHeadIn: null,
            horizontalSlopeInPerFt: null,
            makersCurve: null,
          })
        : sizeOutlet({
            ...base,
            kind: 'scupper',
            widthIn: outlet.widthIn,
            heightIn: outlet.heightIn,
            usableHeadIn: null,
          });
    const { role, status, id } = outlet;
    const { drainsSqFt, addedSqFt } = base;
    keep(rating, {
      id,
      label,
      kind: outlet.kind,
      role,
      status,
      at: outletPoint(site.roof, outlet),
      to: null,
      drainsSqFt,
      addedSqFt,
    });
  }
  for (const edge of open) {
    const base = duty(edge.id, edge.label, 'primary', true);
    const isNew = newEdges.has(edge.id);
    const gutter = edge.edge.gutter ?? (edge.edge.kind === 'drip' && !isNew ? null : newGutter(edge));
    const rating = sizeOutlet({
      ...base,
      kind: 'edge',
      fromFt: edge.fromFt,
      toFt: edge.toFt,
      gutter,
      pitchIn12: steepestPitch(site),
    });
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

function steepestPitch(site: Site): number | null {
  const pitches = site.edges.flatMap(({ edge }) => (edge.shedsSqFt && edge.pitchIn12 !== null ? [edge.pitchIn12] : []));
  return pitches.length === 0 ? null : Math.max(...pitches);
}
