import { buildSection, type Section } from '../geometry/section.ts';
import { signedAreaSqFt } from '../geometry/vector.ts';
import type { Assumption } from '../report/types.ts';
import type { Outlet, Point, Ring, Roof } from '../roof.ts';
import { type Patch, raisedBy } from '../surface/patch.ts';
import { assume, type Given } from './assumptions.ts';
import { onSide, type SiteEdge, siteEdges } from './edges.ts';
import { readingsOf } from './readings.ts';
import { type MeasuredSurface, measuredSurface, withSag } from './surface-of.ts';

/** One roof section made ready for water: ground, edges, what is assumed. */
export interface Site {
  roof: Roof;
  given: Given;
  outline: Ring;
  edges: readonly SiteEdge[];
  section: Section;
  measured: MeasuredSurface;
  /** The surface that the new boards lie on: measured surface less what is torn off. */
  base: Patch[];
  assumed: readonly Assumption[];
}

/** Where an outlet sits in plan. */
export function outletPoint(roof: Roof, outlet: Outlet): Point {
  return outlet.kind === 'drain' ? outlet.at : onSide(roof.outline, outlet.side, outlet.alongFt);
}

/** Every point that must be a vertex: outlets, ends of edges and openings, readings. */
function knots(roof: Roof, edges: readonly SiteEdge[]): Point[] {
  return [
    ...roof.outlets.map((outlet) => outletPoint(roof, outlet)),
    ...edges.flatMap(({ from, to }) => [from, to]),
    ...edges.flatMap(({ edge }) =>
      edge.openings.flatMap((opening) =>
        [opening.fromFt, opening.toFt].flatMap((ft) => (ft === null ? [] : [onSide(roof.outline, edge.side, ft)])),
      ),
    ),
    ...readingsOf(roof).map(({ at }) => at),
  ];
}

/** @param more further points that a layout needs as vertices (new scuppers, drains, opened stretches) */
export function siteOf(roof: Roof, more: readonly Point[] = []): Site {
  const { given, assumed } = assume(roof);
  const { edges, assumed: closed } = siteEdges(roof);
  const outline = signedAreaSqFt(roof.outline) > 0 ? roof.outline : [...roof.outline].reverse();
  const section = buildSection(
    outline,
    roof.curbs.map((curb) => curb.outline),
    [...knots(roof, edges), ...more],
  );
  const measured = withSag(measuredSurface(roof, section), roof, outline);
  return {
    roof,
    given,
    outline,
    edges,
    section,
    measured,
    base: raisedBy(measured.patches, roof.existing.readOn === 'deck' ? 0 : -given.removedIn),
    assumed: [...assumed, ...closed, ...measured.assumed],
  };
}

/** Outlets that are there today; one that is only wished for takes no water yet. */
export const outletsThere = ({ roof }: Pick<Site, 'roof'>): Outlet[] =>
  roof.outlets.filter(({ status }) => status === 'existing');
