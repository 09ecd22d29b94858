import { nextSlot } from '../geometry/triangulation.ts';
import { distanceFt, between as pointBetween } from '../geometry/vector.ts';
import type { Outlet, Point } from '../roof.ts';
import type { Offer } from '../surface/flood.ts';
import type { SurfaceMesh } from '../surface/mesh.ts';
import { edgeAt, onSide, type SiteEdge, sideLengthFt, valueAlong } from './edges.ts';
import { outletPoint, type Site } from './site.ts';

/** Height of the stop along a rake where nothing else was measured, in. */
export const RAKE_STOP_IN = 1;

/** Edges over which water leaves freely. */
const OPEN_KINDS: ReadonlySet<string> = new Set(['gutter', 'drip', 'roof-below', 'box-gutter']);

export const isOpenEdge = (edge: SiteEdge): boolean => OPEN_KINDS.has(edge.edge.kind);

export interface WaysOut {
  offers: Offer[];
  openAt: (slot: number) => string | null;
}

interface Choice {
  outlets: readonly Outlet[];
  /** Edges opened by a layout, by id, besides those that are open anyway. */
  opened?: ReadonlySet<string>;
}

function boundaryVertices(mesh: SurfaceMesh): Map<number, number[]> {
  const slots = new Map<number, number[]>();
  for (let slot = 0; slot < mesh.corners.length; slot++) {
    if (mesh.across[slot] >= 0) continue;
    for (const v of [mesh.corners[slot], mesh.corners[nextSlot(slot)]]) slots.set(v, [...(slots.get(v) ?? []), slot]);
  }
  return slots;
}

const middle = (mesh: SurfaceMesh, slot: number): Point =>
  pointBetween(mesh.points[mesh.corners[slot]], mesh.points[mesh.corners[nextSlot(slot)]], 0.5);

/** Level at which water spills over a closed edge at a point of it; null where it never does. */
function spillIn(site: Site, edge: SiteEdge, p: Point, surfaceIn: number): number | null {
  const { kind, topIn, side, openings } = edge.edge;
  const along = distanceFt(site.roof.outline[side], p);
  const heights: number[] = [];
  const reference = site.measured.at(p);
  if (kind === 'rake')
    heights.push(
      topIn === null
        ? surfaceIn + RAKE_STOP_IN
        : reference + valueAlong(topIn, sideLengthFt(site.roof.outline, side), along),
    );
  if (kind === 'parapet' && topIn !== null)
    heights.push(reference + valueAlong(topIn, sideLengthFt(site.roof.outline, side), along));
  for (const { kind: opening, heightIn, fromFt, toFt } of openings) {
    if (opening !== 'door' || heightIn === null) continue;
    if (along >= (fromFt ?? edge.fromFt) - 1e-3 && along <= (toFt ?? edge.toFt) + 1e-3)
      heights.push(reference + heightIn);
  }
  return heights.length === 0 ? null : Math.min(...heights);
}

/**
 * Every way water can leave a surface, in the order: outlets of the file, open edges, spills over closed edges.
 * Inlets, tops and sills are measured from the surface that the file names, so they stay where they are when the
 * surface is raised.
 */
export function waysOut(site: Site, mesh: SurfaceMesh, choice: Choice): WaysOut {
  const open = (edge: SiteEdge): boolean => isOpenEdge(edge) || (choice.opened?.has(edge.id) ?? false);
  const edgeOfSlot = new Map<number, SiteEdge | null>();
  const edgeFor = (slot: number): SiteEdge | null => {
    if (!edgeOfSlot.has(slot)) edgeOfSlot.set(slot, edgeAt(site.edges, middle(mesh, slot)));
    return edgeOfSlot.get(slot) ?? null;
  };
  const offers: Offer[] = [];
  for (const outlet of choice.outlets) {
    if (!outlet.working) continue;
    const at = outletPoint(site.roof, outlet);
    const levelIn = outlet.inletIn === null ? Number.NEGATIVE_INFINITY : site.measured.at(at) + outlet.inletIn;
    mesh.points.forEach((p, vertex) => {
      if (distanceFt(p, at) < 1e-3) offers.push({ vertex, levelIn, outlet: outlet.id });
    });
  }
  const spills: Offer[] = [];
  for (const [vertex, slots] of boundaryVertices(mesh)) {
    for (const edge of new Set(slots.map(edgeFor))) {
      if (edge === null) continue;
      if (open(edge)) offers.push({ vertex, levelIn: Number.NEGATIVE_INFINITY, outlet: edge.id });
      else {
        const levelIn = spillIn(site, edge, mesh.points[vertex], mesh.z[vertex]);
        if (levelIn !== null) spills.push({ vertex, levelIn, outlet: edge.id });
      }
    }
  }
  return {
    offers: [...offers, ...spills],
    openAt: (slot) => {
      const edge = edgeFor(slot);
      return edge !== null && open(edge) ? edge.id : null;
    },
  };
}

/** Point on the outline side of an edge, `ft` from the side's first corner. */
export function alongEdge(site: Site, edge: SiteEdge, ft: number): Point {
  return onSide(site.roof.outline, edge.edge.side, ft);
}
