import { intersect, type Region, subtract, unite } from '../geometry/boolean.ts';
import { planeOfTriangle } from '../geometry/plane.ts';
import { triangulate } from '../geometry/triangulation.ts';
import { centroid, distanceFt, isInside, signedAreaSqFt, toSegment } from '../geometry/vector.ts';
import type { Point, Ring, SeenPond } from '../roof.ts';
import type { RuleSet } from '../rule-set.ts';
import type { Site } from '../site/site.ts';
import { meshOf } from '../surface/mesh.ts';
import type { Patch } from '../surface/patch.ts';
import { surveyOf } from '../survey/survey.ts';
import type { Assumption, PondReport } from './types.ts';
import { pondReport } from './water.ts';

/** A spot of a seen pond this near its shore lies on it (a pond against a wall is deepest there). */
const ON_SHORE_FT = 0.02;

const areaOf = ({ outer, holes }: Region): number =>
  signedAreaSqFt(outer) + holes.reduce((sum, hole) => sum + signedAreaSqFt(hole), 0);

/** The part of the drawn outline that is roof: on the section and not on a curb; the largest where it falls apart. */
function onSection(outline: Ring, site: Site): Region | null {
  const within = intersect([outline], [site.outline]).map(({ outer }) => outer);
  const curbs = site.roof.curbs.map((curb) => curb.outline);
  const regions = curbs.length === 0 ? unite(within) : subtract(within, curbs);
  return regions.sort((a, b) => areaOf(b) - areaOf(a))[0] ?? null;
}

/** A ring with a point of one of its sides as a further corner. */
function withCorner(ring: Ring, p: Point): Ring {
  return ring.flatMap((a, i) => {
    const b = ring[(i + 1) % ring.length];
    const near = toSegment(p, a, b);
    const atEnd = Math.min(distanceFt(p, a), distanceFt(p, b)) < ON_SHORE_FT;
    return near.distanceFt < ON_SHORE_FT && !atEnd ? [a, p] : [a];
  });
}

/** Where it is deepest: as it was given, else in its middle. */
function deepestSpot({ at }: SeenPond, { outer, holes }: Region): Point {
  const rings = [outer, ...holes];
  const onShore = (p: Point) =>
    rings.some((ring) => ring.some((a, i) => toSegment(p, a, ring[(i + 1) % ring.length]).distanceFt < ON_SHORE_FT));
  if (at !== null && (isInside(at, rings) || onShore(at))) return at;
  const middle = centroid(outer);
  if (isInside(middle, rings)) return middle;
  const { points, corners } = triangulate(rings);
  const triangles = Array.from({ length: corners.length / 3 }, (_, t) =>
    [0, 1, 2].map((k) => points[corners[3 * t + k]]),
  );
  return centroid(triangles.sort((a, b) => signedAreaSqFt(b) - signedAreaSqFt(a))[0]);
}

/** A bowl: level at the shore, straight down to the deepest spot. Volume in sq ft in. */
function bowl({ outer, holes }: Region, deepest: Point, depthIn: number): { patches: Patch[]; volumeSqFtIn: number } {
  const rings = [outer, ...holes].map((ring) => withCorner(ring, deepest));
  const { points, corners } = triangulate(rings, [deepest]);
  const z = points.map((p) => (distanceFt(p, deepest) < ON_SHORE_FT ? -depthIn : 0));
  let volumeSqFtIn = 0;
  const patches: Patch[] = [];
  for (let i = 0; i < corners.length; i += 3) {
    const ids = [corners[i], corners[i + 1], corners[i + 2]];
    const [a, b, c] = ids.map((id) => points[id]);
    const [za, zb, zc] = ids.map((id) => z[id]);
    volumeSqFtIn -= (signedAreaSqFt([a, b, c]) * (za + zb + zc)) / 3;
    patches.push({ ring: [a, b, c], plane: planeOfTriangle(a, b, c, za, zb, zc), outlet: '' });
  }
  return { patches, volumeSqFtIn };
}

/** The readings that would settle a pond of which only the shore and the depth are known. */
function settledBy(site: Site, deepest: Point): string {
  const mark = surveyOf(site.roof).marks.find(({ at }) => distanceFt(at, deepest) < 1);
  const there =
    mark === undefined ? 'at its deepest spot' : `at its deepest spot (mark ${mark.id} of the survey sheet)`;
  return `readings ${there}, at four spots of its shore and at the way out that is nearest`;
}

/**
 * Ponds of which only an outline and a depth are known, on a surface that was not measured: area, volume and load of a
 * bowl of that outline and depth. The rest of the surface stays undecided.
 * Correctness: tests/unit/survey/seen-ponds.test.ts
 */
export function seenPondReports(site: Site, limits: RuleSet): { ponds: PondReport[]; assumed: Assumption[] } {
  const { existing, place } = site.roof;
  const ponds: PondReport[] = [];
  const assumed: Assumption[] = [];
  if (existing.surface.kind !== 'unknown') return { ponds, assumed };
  existing.seenPonds.forEach((seen, i) => {
    const { outline, depthIn } = seen;
    const region = outline === null ? null : onSection(outline, site);
    if (region === null || depthIn === null || depthIn <= 0) return;
    const deepest = deepestSpot(seen, region);
    const { patches, volumeSqFtIn } = bowl(region, deepest, depthIn);
    const areaSqFt = areaOf(region);
    const pond = {
      ...{ triangles: Int32Array.from(patches, (_, t) => t), levelIn: 0, areaSqFt, greatestDepthIn: depthIn },
      ...{ deepestAt: deepest, volumeSqFtIn },
    };
    const report = pondReport(meshOf(patches), pond, limits, site.edges, place.climateZone);
    ponds.push({ ...report, outline: region.outer, holes: region.holes });
    assumed.push({
      path: `existing.seenPonds[${i}]`,
      value: 'a bowl, level at its shore and straight down to its deepest spot',
      because:
        'only its outline and depth were given; a flat bottom holds up to three times as much, and the surface round it is not decided',
      findOut: settledBy(site, deepest),
    });
  });
  return { ponds, assumed };
}
