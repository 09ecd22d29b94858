import { waterLoadPerInch } from '../../../reference/deflection.ts';
import { pondLimit } from '../../../reference/drying.ts';
import { leftAfter48hIn } from '../drainage/drying.ts';
import type { Judgement } from '../drainage/judge.ts';
import { unite } from '../geometry/boolean.ts';
import { heightIn, slopeInPerFt } from '../geometry/plane.ts';
import { centroid, signedAreaSqFt } from '../geometry/vector.ts';
import type { Point } from '../roof.ts';
import type { RuleSet } from '../rule-set.ts';
import type { SiteEdge } from '../site/edges.ts';
import type { SurfaceMesh } from '../surface/mesh.ts';
import { type Pond, pondRings } from '../surface/ponds.ts';
import type { CreaseReport, DrainageArea, FlatReport, FlowArrow, PondReport, SurfaceTriangle } from './types.ts';
import { placeWords } from './words.ts';

/** 231 cu in to the gallon: one sq ft an inch deep is 144/231 gal. */
const GAL_PER_SQ_FT_IN = 144 / 231;

/**
 * @param limits from when water is flagged
 * @param climateZone of the place, for what dries in 48 h; null = not known
 */
export function pondReport(
  mesh: SurfaceMesh,
  pond: Pond,
  limits: Pick<RuleSet, 'birdBathIn' | 'birdBathSqFt'>,
  edges: readonly SiteEdge[],
  climateZone: string | null = null,
): PondReport {
  const psf = waterLoadPerInch.psf;
  const [main] = unite(pondRings(mesh, pond)).sort((a, b) => signedAreaSqFt(b.outer) - signedAreaSqFt(a.outer));
  return {
    outline: main?.outer ?? [],
    holes: main?.holes ?? [],
    areaSqFt: pond.areaSqFt,
    greatestDepthIn: pond.greatestDepthIn,
    deepestAt: pond.deepestAt,
    volumeGal: pond.volumeSqFtIn * GAL_PER_SQ_FT_IN,
    weightLb: pond.volumeSqFtIn * psf,
    greatestLoadPsf: pond.greatestDepthIn * psf,
    leftAfter48hIn: leftAfter48hIn(pond.greatestDepthIn, climateZone),
    birdBath: pond.greatestDepthIn <= limits.birdBathIn,
    flagged: [
      ...(pond.greatestDepthIn > limits.birdBathIn ? (['depth'] as const) : []),
      // A film too thin to be listed is not flagged for its area.
      ...(pond.greatestDepthIn >= pondLimit.listIn && pond.areaSqFt > limits.birdBathSqFt ? (['area'] as const) : []),
    ],
    where: placeWords(edges, pond.deepestAt),
  };
}

export function flatReports({ flats }: Judgement): FlatReport[] {
  const regions = flats.rings.length === 0 ? [] : unite(flats.rings);
  return [
    ...regions.map(({ outer, holes }) => ({
      areaSqFt: signedAreaSqFt(outer) + holes.reduce((sum, hole) => sum + signedAreaSqFt(hole), 0),
      lengthFt: null,
      outline: outer,
      line: null,
    })),
    ...flats.lines.map((line) => ({
      areaSqFt: null,
      lengthFt: Math.hypot(line[1][0] - line[0][0], line[1][1] - line[0][1]),
      outline: null,
      line,
    })),
  ];
}

export function areaReports(judgement: Judgement): DrainageArea[] {
  const byOutlet = new Map<string, (readonly Point[])[]>();
  for (const { ring, outlet } of judgement.areas) byOutlet.set(outlet, [...(byOutlet.get(outlet) ?? []), ring]);
  return [...byOutlet].flatMap(([outlet, rings]) =>
    unite(rings).map(({ outer, holes }) => ({
      outlet,
      outline: outer,
      holes,
      areaSqFt: signedAreaSqFt(outer) + holes.reduce((sum, hole) => sum + signedAreaSqFt(hole), 0),
    })),
  );
}

export function trianglesOf({ mesh }: Judgement): SurfaceTriangle[] {
  return Array.from({ length: mesh.corners.length / 3 }, (_, t) => {
    const ids = [0, 1, 2].map((k) => mesh.corners[3 * t + k]);
    const [a, b, c] = ids.map((id) => mesh.points[id]);
    return { a, b, c, z: [mesh.z[ids[0]], mesh.z[ids[1]], mesh.z[ids[2]]] };
  });
}

export function creaseReports({ creases }: Judgement): CreaseReport[] {
  return creases.map(({ from, to, kind, slopeInPerFt: slope, lengthFt }) => ({
    from,
    to,
    kind,
    slopeInPerFt: slope,
    lengthFt,
  }));
}

/** One arrow to each group of triangles with one plane that is large enough to carry it. */
export function arrowsOf({ mesh }: Judgement, leastAreaSqFt: number): FlowArrow[] {
  const groups = new Map<string, { areaSqFt: number; x: number; y: number; gx: number; gy: number }>();
  for (let t = 0; t < mesh.corners.length / 3; t++) {
    const ring = [0, 1, 2].map((k) => mesh.points[mesh.corners[3 * t + k]]);
    const { plane } = mesh.patch[t];
    const key = `${plane.gx.toFixed(5)},${plane.gy.toFixed(5)},${heightIn(plane, [0, 0]).toFixed(3)}`;
    const areaSqFt = signedAreaSqFt(ring);
    const [x, y] = centroid(ring);
    const group = groups.get(key) ?? { areaSqFt: 0, x: 0, y: 0, gx: plane.gx, gy: plane.gy };
    groups.set(key, {
      ...group,
      areaSqFt: group.areaSqFt + areaSqFt,
      x: group.x + x * areaSqFt,
      y: group.y + y * areaSqFt,
    });
  }
  return [...groups.values()]
    .filter(({ areaSqFt, gx, gy }) => areaSqFt >= leastAreaSqFt && Math.hypot(gx, gy) > 1e-4)
    .map(({ areaSqFt, x, y, gx, gy }) => {
      const slope = slopeInPerFt({ atOriginIn: 0, gx, gy });
      return { at: [x / areaSqFt, y / areaSqFt], toward: [-gx / slope, -gy / slope], slopeInPerFt: slope };
    });
}
