import { waterLoadPerInch } from '../../../reference/deflection.ts';
import { rainLoadPsf } from '../drainage/rain-load.ts';
import { sourceNote } from '../finding.ts';
import { intersectConvex } from '../geometry/convex.ts';
import { triangulate } from '../geometry/triangulation.ts';
import { isInside, toSegment } from '../geometry/vector.ts';
import { liveLoadOf, SAME_LOAD_PSF } from '../outlets/live-load.ts';
import { inch } from '../outlets/rating.ts';
import type { DrainageArea, Finding, Layout, WorkPart } from '../report/types.ts';
import { listed } from '../report/words.ts';
import type { Outlet, Point, Ring } from '../roof.ts';
import { waysOut } from '../site/offers.ts';
import { comesOff } from '../site/planned-work.ts';
import { outletPoint, type Site } from '../site/site.ts';
import { flood } from '../surface/flood.ts';
import { meshOf } from '../surface/mesh.ts';
import type { Patch } from '../surface/patch.ts';
import { pondsOf } from '../surface/ponds.ts';

/** Smaller pieces of a drainage area are opened together with what lies beside them. */
const LEAST_PART_SQ_FT = 20;

/** The bare deck under one drainage area. */
function bareDeck(site: Site, { outline, holes }: DrainageArea): Patch[] {
  const { points, corners } = triangulate([outline, ...holes]);
  const cells: Ring[] = [];
  for (let i = 0; i < corners.length; i += 3) cells.push([0, 1, 2].map((k) => points[corners[i + k]]));
  return site.base.flatMap((patch) =>
    cells.flatMap((cell): Patch[] => {
      const ring = intersectConvex(patch.ring, cell);
      return ring.length === 0 ? [] : [{ ...patch, ring }];
    }),
  );
}

const AT_THE_EDGE_FT = 1e-3;

/** In a drainage area or on its outline. */
function liesIn({ outline, holes }: DrainageArea, p: Point): boolean {
  const rings = [outline, ...holes];
  const onOutline = rings.some((ring) =>
    ring.some((a, i) => toSegment(p, a, ring[(i + 1) % ring.length]).distanceFt < AT_THE_EDGE_FT),
  );
  return onOutline || isInside(p, rings);
}

/** On the bare deck a main drain takes water at the deck; scuppers and overflows stay where they are. */
const onTheDeck = (outlet: Outlet): Outlet =>
  outlet.kind === 'drain' && outlet.role === 'primary' ? { ...outlet, inletIn: null } : outlet;

/**
 * The parts in which the deck is laid open, one for each drainage area of the finished roof, as they stand at the end of a work day:
 * the old roof around a part dams it, so water leaves by what lies in the part alone.
 * @param outlets of the layout; what is new is made before its part is opened
 * @param opened ids of edges that the layout opens
 * Correctness: tests/unit/open-parts.test.ts
 */
export function openParts(
  site: Site,
  layout: Pick<Layout, 'areas' | 'outlets'>,
  outlets: readonly Outlet[],
  opened: ReadonlySet<string>,
): WorkPart[] {
  // Where no old roof comes off no deck is laid open beside one.
  if (!comesOff(site)) return [];
  const stripped = outlets.map(onTheDeck);
  const labelOf = (id: string): string => layout.outlets.find((each) => each.id === id)?.label ?? id;
  return layout.areas
    .filter(({ areaSqFt, outlet }) => areaSqFt >= LEAST_PART_SQ_FT && outlet !== '')
    .map((area): WorkPart => {
      const here = stripped.filter((outlet) => liesIn(area, outletPoint(site.roof, outlet)));
      const mesh = meshOf(
        bareDeck(site, area),
        here.map((outlet) => outletPoint(site.roof, outlet)),
      );
      const { offers, openAt } = waysOut(site, mesh, { outlets: here, opened });
      const edges = new Set<string>();
      for (let slot = 0; slot < mesh.corners.length; slot++) {
        const edge = mesh.across[slot] < 0 ? openAt(slot) : null;
        if (edge !== null) edges.add(edge);
      }
      const points = new Set(offers.map(({ outlet }) => outlet).filter((id) => here.some((each) => each.id === id)));
      const { ponds } = pondsOf(mesh, flood(mesh, offers));
      return {
        outlet: area.outlet,
        label: labelOf(area.outlet),
        areaSqFt: area.areaSqFt,
        waysOut: [...edges, ...points].map(labelOf),
        overAnEdge: edges.size > 0,
        holdsIn: Math.max(0, ...ponds.map(({ greatestDepthIn }) => greatestDepthIn)),
        damIn: site.roof.existing.readOn === 'deck' ? (site.roof.existing.buildUpIn ?? 0) : site.given.removedIn,
      };
    });
}

const names = (parts: readonly WorkPart[]): string => listed(parts.map(({ label }) => label));

/** What is wrong with the open parts at the end of a work day. Correctness: tests/unit/open-parts.test.ts */
export function openPartFindings(site: Site, parts: readonly WorkPart[], birdBathIn: number): Finding[] {
  const live = liveLoadOf(site.roof.deck.liveLoadPsf);
  const source = sourceNote(waterLoadPerInch);
  const alone = parts.filter(({ overAnEdge, waysOut: ways }) => !overAnEdge && ways.length < 2);
  const wet = parts.filter(({ holdsIn }) => holdsIn > birdBathIn);
  const damPsf = rainLoadPsf(alone[0]?.damIn ?? 0, 0);
  const dam =
    damPsf > 0
      ? `${inch(alone[0].damIn)} deep, ${damPsf.toFixed(1)} psf`
      : 'as deep as the old roof beside it is thick (not given)';
  const deepest = Math.max(0, ...wet.map(({ holdsIn }) => holdsIn));
  return [
    ...(alone.length === 0
      ? []
      : [
          {
            id: 'open-part-one-way-out',
            level: damPsf > live.psf + SAME_LOAD_PSF ? ('stop' as const) : ('fix' as const),
            where: `while the area of ${names(alone)} lies open`,
            message: `The old roof around the bare deck is a dam. At the end of a work day the open area of ${names(alone)} has one way out at most: if it plugs overnight, water stands ${dam}, and runs under the old roof. Make a second way out of that area first, or cover it watertight before the crew leaves.`,
            value: '1',
            limit: '2',
            source,
          },
        ]),
    ...(wet.length === 0
      ? []
      : [
          {
            id: 'open-part-holds-water',
            level: 'fix' as const,
            where: `while the area of ${names(wet)} lies open`,
            message: `The bare deck itself holds water: up to ${inch(deepest)} in the area of ${names(wet)}. Open it only as far as boards and a first ply are laid the same day.`,
            value: inch(deepest),
            limit: inch(birdBathIn),
            source,
          },
        ]),
  ];
}
