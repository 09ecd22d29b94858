import { inches, slopeInWords } from '../../units/print.ts';
import { type Judgement, judge } from '../drainage/judge.ts';
import { planeOfTriangle } from '../geometry/plane.ts';
import type { AsBuiltReport } from '../report/types.ts';
import { pondReport } from '../report/water.ts';
import { areaWords } from '../report/words.ts';
import type { Point } from '../roof.ts';
import { waysOut } from '../site/offers.ts';
import { between } from '../site/readings.ts';
import { meshOf } from '../surface/mesh.ts';
import type { Patch } from '../surface/patch.ts';
import type { Built } from './build.ts';
import { checkPointsOf } from './check-points.ts';
import type { LayoutContext } from './report.ts';

export interface AsBuiltReading {
  /** Number of the check point. */
  id: string;
  heightIn: number;
}

/** Laid within this of the design: common practice for boards and spot levels. */
const TOLERANCE_IN = 0.25;

/** The designed surface moved by what was read; between check points the difference runs straight. */
function movedSurface(built: Built, marks: readonly Point[], differenceAt: (p: Point) => number): Patch[] {
  const mesh = meshOf([...new Set(built.judgement.mesh.patch)], marks);
  return Array.from({ length: mesh.corners.length / 3 }, (_, t): Patch => {
    const ids = [0, 1, 2].map((k) => mesh.corners[3 * t + k]);
    const [a, b, c] = ids.map((id) => mesh.points[id]);
    const [za, zb, zc] = ids.map((id) => mesh.z[id] + differenceAt(mesh.points[id]));
    return { ring: [a, b, c], plane: planeOfTriangle(a, b, c, za, zb, zc), outlet: mesh.patch[t].outlet };
  });
}

function sentence(judgement: Judgement, birdBathIn: number): string {
  const pond = judgement.ponds.find(({ greatestDepthIn }) => greatestDepthIn > birdBathIn);
  if (pond !== undefined)
    return `As laid, water would stand ${inches(pond.greatestDepthIn)} deep over ${areaWords(pond.areaSqFt)}: stop and correct it before the covering.`;
  const shallow = judgement.ponds.find(({ greatestDepthIn }) => greatestDepthIn > 1 / 64);
  if (shallow !== undefined)
    return `As laid, a bird bath of ${inches(shallow.greatestDepthIn)} stays over ${areaWords(shallow.areaSqFt)}: correct it if it is easy.`;
  const face = judgement.leastFaceSlopeInPerFt ?? 0;
  return `As laid it drains; the flattest plane falls ${slopeInWords(Math.round(face * 1000) / 1000)}.`;
}

/** Heights read at the check points against the design, judged by the same water rules as the design. */
export function judgeAsBuilt(
  context: LayoutContext,
  built: Built,
  readings: readonly AsBuiltReading[],
): AsBuiltReport | null {
  const { site, ruleSet } = context;
  const read = new Map(readings.map(({ id, heightIn }) => [id, heightIn]));
  const points = checkPointsOf(site, built).flatMap((point) => {
    const readIn = read.get(point.id);
    if (readIn === undefined) return [];
    const differenceIn = readIn - point.heightIn;
    return [{ ...point, readIn, differenceIn, outOfTolerance: Math.abs(differenceIn) > TOLERANCE_IN + 1e-9 }];
  });
  if (points.length === 0) return null;
  const differences = checkPointsOf(site, built).map((point) => ({
    at: point.at,
    zIn: (read.get(point.id) ?? point.heightIn) - point.heightIn,
  }));
  const difference = between(differences);
  const mesh = meshOf(
    movedSurface(
      built,
      differences.map(({ at }) => at),
      (p) => difference(p).zIn,
    ),
  );
  const { offers, openAt } = waysOut(site, mesh, {
    outlets: built.plan.outlets,
    opened: new Set(built.plan.edges.map(({ id }) => id)),
  });
  const judgement = judge(mesh, offers, openAt);
  const worst = points
    .filter(({ outOfTolerance }) => outOfTolerance)
    .sort((a, b) => Math.abs(b.differenceIn) - Math.abs(a.differenceIn));
  return {
    layoutId: built.plan.id,
    points: points.map(({ id, where, heightIn, readIn, differenceIn, outOfTolerance }) => ({
      id,
      where,
      designIn: heightIn,
      readIn,
      differenceIn,
      outOfTolerance,
    })),
    drained:
      judgement.ponds.every(({ greatestDepthIn }) => greatestDepthIn <= ruleSet.birdBathIn) &&
      judgement.trappedSqFt < 1e-3,
    judgement: sentence(judgement, ruleSet.birdBathIn),
    ponds: judgement.ponds
      .filter(({ greatestDepthIn }) => greatestDepthIn > 1 / 64)
      .map((pond) => pondReport(judgement.mesh, pond, ruleSet, site.edges)),
    leastFaceSlopeInPerFt: judgement.leastFaceSlopeInPerFt,
    leastValleySlopeInPerFt: judgement.leastValleySlopeInPerFt,
    advice: worst.map(({ id, where, differenceIn }) =>
      differenceIn < 0
        ? `Point ${id} (${where}) lies ${inches(-differenceIn)} low: lift that board and shim it.`
        : `Point ${id} (${where}) lies ${inches(differenceIn)} high: look for a wrong board or fill there.`,
    ),
  };
}
