import { boxOf, centroid, distanceFt, isInside, toSegment } from '../geometry/vector.ts';
import type { Point, Ring, Roof } from '../roof.ts';
import { onSide, type SiteEdge, sideLengthFt } from '../site/edges.ts';
import { outletPoint } from '../site/site.ts';
import { type BaseLine, fromBase, offBase } from './base-line.ts';
import type { MarkKind, Spot } from './survey.ts';

/** A spot this near one that is kept already tells nothing new; ft. Corners are always kept. */
const TOO_NEAR_FT: Record<MarkKind, number> = {
  corner: 0,
  outlet: 0.25,
  'edge-end': 0.25,
  pond: 0.5,
  curb: 0.75,
  'beside-outlet': 0.75,
  'edge-middle': 1,
  grid: 1.25,
};

/** Longest stretch of an edge between two marks where the grid is closer, and the shortest edge that has a middle worth a mark. */
const LONGEST_STRETCH_FT = 12;
const SHORTEST_WITH_MIDDLE_FT = 3;

/** How far from an outlet the roof beside it is read. */
const BESIDE_FT = 2;

const boundaryFt = (p: Point, ring: Ring): number =>
  Math.min(...ring.map((a, i) => toSegment(p, a, ring[(i + 1) % ring.length]).distanceFt));

const inCurb = ({ curbs }: Roof, p: Point): boolean =>
  curbs.some((curb) => isInside(p, [curb.outline]) && boundaryFt(p, curb.outline) > 1e-6);

/** On the roof that one can read: in or on the outline, not on a curb. */
const onRoof = (roof: Roof, p: Point): boolean =>
  (isInside(p, [roof.outline]) || boundaryFt(p, roof.outline) < 1e-6) && !inCurb(roof, p);

/** Marks round the perimeter: corners, ends of edge parts, middles, scuppers. */
function perimeterSpots({ outline, outlets }: Roof, edges: readonly SiteEdge[], gridFt: number): Spot[] {
  const on = (kind: MarkKind, side: number, alongFt: number, why: string): Spot => ({
    at: onSide(outline, side, alongFt),
    ...{ kind, why, on: { side, alongFt } },
  });
  const corners = outline.map((_, side) => ({ ...on('corner', side, 0, 'corner of the section'), at: outline[side] }));
  const ends = edges.flatMap(({ edge, fromFt, toFt, label }) =>
    [fromFt, toFt]
      .filter((ft) => ft > 1e-3 && ft < sideLengthFt(outline, edge.side) - 1e-3)
      .map((ft) => on('edge-end', edge.side, ft, `end of the ${label.split(',')[0]}`)),
  );
  const scuppers = outlets.flatMap((outlet) =>
    outlet.kind === 'scupper' ? [on('outlet', outlet.side, outlet.alongFt, `roof at scupper ${outlet.id}`)] : [],
  );
  const middles = edges.flatMap(({ edge, fromFt, lengthFt, label }) => {
    if (lengthFt < SHORTEST_WITH_MIDDLE_FT) return [];
    const parts = 2 * Math.ceil(lengthFt / (2 * Math.max(LONGEST_STRETCH_FT, gridFt)));
    const name = label.split(',')[0];
    return Array.from({ length: parts - 1 }, (_, i) =>
      on(
        'edge-middle',
        edge.side,
        fromFt + ((i + 1) * lengthFt) / parts,
        2 * (i + 1) === parts ? `middle of the ${name}` : `along the ${name}`,
      ),
    );
  });
  return [...corners, ...ends, ...scuppers, ...middles];
}

const inside = (at: Point, kind: MarkKind, why: string): Spot => ({ at, kind, why, on: null });

/** The roof beside an outlet, off the sump: along the rows where there is room, else on the first side that has some. */
function besideOutlets(roof: Roof, base: BaseLine): Spot[] {
  return roof.outlets.flatMap((outlet) => {
    const at = outletPoint(roof, outlet);
    const { alongFt, inFt } = offBase(base, at);
    const tries: Point[] = [
      [BESIDE_FT, 0],
      [-BESIDE_FT, 0],
      [0, BESIDE_FT],
      [0, -BESIDE_FT],
    ];
    const beside = tries
      .map(([du, dv]) => fromBase(base, alongFt + du, inFt + dv))
      .find((p) => onRoof(roof, p) && boundaryFt(p, roof.outline) > 1);
    return beside === undefined
      ? []
      : [inside(beside, 'beside-outlet', `roof beside ${outlet.kind} ${outlet.id}: does it fall to it?`)];
  });
}

function drainSpots({ outlets }: Roof): Spot[] {
  return outlets.flatMap((outlet) =>
    outlet.kind === 'drain' ? [inside(outlet.at, 'outlet', `rim of drain ${outlet.id}, strainer off`)] : [],
  );
}

function pondSpots({ existing }: Roof): Spot[] {
  return existing.seenPonds.flatMap(({ at, outline }) => {
    const deepest = at ?? (outline === null ? null : centroid(outline));
    return deepest === null ? [] : [inside(deepest, 'pond', 'deepest spot of the water that was seen')];
  });
}

function curbSpots({ curbs }: Roof): Spot[] {
  return curbs.flatMap(({ id, outline }) =>
    outline.map((at) => inside(at, 'curb', `roof at a corner of the curb “${id}”`)),
  );
}

/** A grid along the base line from its first corner, kept a foot off edges and curbs. */
function gridSpots(roof: Roof, base: BaseLine, gridFt: number): Spot[] {
  const rings = [roof.outline, ...roof.curbs.map((curb) => curb.outline)];
  const box = boxOf(
    roof.outline.map((p): Point => {
      const { alongFt, inFt } = offBase(base, p);
      return [alongFt, inFt];
    }),
  );
  const spots: Spot[] = [];
  for (let row = Math.ceil(box.minY / gridFt); row * gridFt < box.maxY; row++) {
    for (let k = Math.ceil(box.minX / gridFt); k * gridFt < box.maxX; k++) {
      const at = fromBase(base, k * gridFt, row * gridFt);
      if (!onRoof(roof, at) || rings.some((ring) => boundaryFt(at, ring) < TOO_NEAR_FT.grid)) continue;
      spots.push(inside(at, 'grid', 'grid'));
    }
  }
  return spots;
}

/** A spot inside that lies on the perimeter after all belongs to the walk round it. */
function onPerimeter(spot: Spot, outline: Ring): Spot {
  if (spot.on !== null) return spot;
  const side = outline.findIndex((a, i) => toSegment(spot.at, a, outline[(i + 1) % outline.length]).distanceFt < 1e-6);
  return side < 0 ? spot : { ...spot, on: { side, alongFt: distanceFt(outline[side], spot.at) } };
}

/** Every spot worth a reading, each once; what is more telling goes before what lies near it. */
export function spotsOf(roof: Roof, edges: readonly SiteEdge[], base: BaseLine, gridFt: number): Spot[] {
  const round = perimeterSpots(roof, edges, gridFt);
  const rank = (spot: Spot): number => Object.keys(TOO_NEAR_FT).indexOf(spot.kind);
  const all = [
    ...round,
    ...drainSpots(roof),
    ...pondSpots(roof),
    ...curbSpots(roof),
    ...besideOutlets(roof, base),
    ...gridSpots(roof, base, gridFt),
  ]
    .map((spot) => onPerimeter(spot, roof.outline))
    .sort((a, b) => rank(a) - rank(b));
  const kept: Spot[] = [];
  for (const spot of all) {
    // What lies on a side of the outline needs no search for it.
    if (spot.on === null ? !onRoof(roof, spot.at) : inCurb(roof, spot.at)) continue;
    if (kept.some(({ at }) => distanceFt(at, spot.at) < TOO_NEAR_FT[spot.kind])) continue;
    kept.push(spot);
  }
  return kept;
}
