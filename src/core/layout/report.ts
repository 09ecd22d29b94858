import { coverBoard, insulationPsfPerIn } from '../../../reference/insulation.ts';
import { slopeInWords } from '../../units/print.ts';
import { inServiceSlope } from '../drainage/sag.ts';
import { slopeInPerFt } from '../geometry/plane.ts';
import { distanceFt } from '../geometry/vector.ts';
import type { DesignRain } from '../outlets/rain.ts';
import { rateOutlets } from '../outlets/rate-all.ts';
import type { CheckPoint, FacetReport, Layout, NailerPiece, Rejection } from '../report/types.ts';
import { areaReports, arrowsOf, creaseReports, flatReports, pondReport } from '../report/water.ts';
import { placeWords } from '../report/words.ts';
import type { Point } from '../roof.ts';
import type { RuleSet } from '../rule-set.ts';
import { isOpenEdge } from '../site/offers.ts';
import type { Site } from '../site/site.ts';
import { nextSlot } from '../surface/mesh.ts';
import { groupOf } from './bands.ts';
import { coneBoardFt } from './bound.ts';
import type { Built } from './build.ts';
import { buildUpAt, gradeOf, heightRejection, type LimitUse, usesOf, waterRejection } from './check.ts';
import { facetsOf } from './facets.ts';
import type { Limit } from './limits.ts';
import { effectiveR, momentsOf, rOf } from './thermal.ts';
import { tile } from './tiling.ts';

const FACET_LEAST_SQ_FT = 0.05;

export interface LayoutContext {
  site: Site;
  limits: readonly Limit[];
  ruleSet: RuleSet;
  rain: DesignRain;
  targetR: number | null;
}

/** The flat layer that would lift the effective R to the target, and whether the heights bear it. */
function baseForTarget(
  built: Built,
  uses: readonly LimitUse[],
  targetR: number | null,
): { baseIn: number; fits: boolean } | null {
  if (targetR === null) return null;
  const raised = (byIn: number): number =>
    effectiveR(
      built.thickness.map((patch) => ({
        ...patch,
        plane: { ...patch.plane, atOriginIn: patch.plane.atOriginIn + byIn },
      })),
    );
  for (let baseIn = 0; baseIn <= 16; baseIn += 0.5) {
    if (raised(baseIn) < targetR - 1e-9) continue;
    const left = uses.filter(({ limit }) => limit.hardness === 'stop').map(({ leftIn }) => leftIn);
    return { baseIn, fits: Math.min(Number.POSITIVE_INFINITY, ...left) >= baseIn - 1e-9 };
  }
  return null;
}

/** Marks to check with a level: outlets, corners, ends of valleys and ridges. */
function checkPoints(site: Site, built: Built, buildUp: (p: Point) => number | null): CheckPoint[] {
  const { mesh, creases } = built.judgement;
  const zeroIn = Math.min(...mesh.z);
  const spots: Point[] = [];
  const add = (p: Point): void => {
    if (!spots.some((q) => distanceFt(p, q) < 0.5)) spots.push(p);
  };
  for (const start of built.starts) if (start.kind === 'point') add(start.at);
  for (const p of site.outline) add(p);
  for (const { from, to, lengthFt } of [...creases].sort((a, b) => b.lengthFt - a.lengthFt)) {
    if (lengthFt < 2 || spots.length >= 40) continue;
    add(from);
    add(to);
  }
  return spots.flatMap((at, i): CheckPoint[] => {
    const used = buildUp(at);
    const vertex = mesh.points.findIndex((p) => distanceFt(p, at) < 1e-3);
    if (used === null || vertex < 0) return [];
    return [
      {
        id: String(i + 1),
        at,
        where: placeWords(site.edges, at),
        heightIn: mesh.z[vertex] - zeroIn,
        thicknessIn: used,
      },
    ];
  });
}

/** Wood at the edges: its height at both ends of every straight stretch. */
function nailersOf(site: Site, built: Built, buildUp: (p: Point) => number | null): NailerPiece[] {
  const { mesh } = built.judgement;
  const out: NailerPiece[] = [];
  for (const edge of site.edges) {
    const dir: Point = [(edge.to[0] - edge.from[0]) / edge.lengthFt, (edge.to[1] - edge.from[1]) / edge.lengthFt];
    const place = (p: Point): number => (p[0] - edge.from[0]) * dir[0] + (p[1] - edge.from[1]) * dir[1];
    const on = new Map<string, Point>();
    for (let slot = 0; slot < mesh.corners.length; slot++) {
      if (mesh.across[slot] >= 0) continue;
      for (const id of [mesh.corners[slot], mesh.corners[nextSlot(slot)]]) {
        const p = mesh.points[id];
        const t = place(p);
        const off = Math.abs((p[0] - edge.from[0]) * dir[1] - (p[1] - edge.from[1]) * dir[0]);
        if (off < 1e-3 && t > -1e-3 && t < edge.lengthFt + 1e-3) on.set(t.toFixed(3), p);
      }
    }
    const line = [...on.values()]
      .sort((a, b) => place(a) - place(b))
      .flatMap((p) => {
        const t = buildUp(p);
        return t === null ? [] : [{ p, t }];
      });
    let from = line[0];
    for (let i = 1; i < line.length; i++) {
      const next = line[i + 1];
      const [here, before] = [line[i], line[i - 1]];
      const bends =
        next === undefined ||
        Math.abs(
          (here.t - before.t) / Math.max(distanceFt(before.p, here.p), 1e-9) -
            (next.t - here.t) / Math.max(distanceFt(here.p, next.p), 1e-9),
        ) > 1e-3;
      if (!bends) continue;
      const lengthFt = distanceFt(from.p, here.p);
      if (lengthFt > 0.05)
        out.push({ edge: edge.label, from: from.p, to: here.p, lengthFt, startIn: from.t, endIn: here.t });
      from = here;
    }
  }
  return out;
}

function boundOf(built: Built, boardFt: number): Layout['bound'] {
  const { judgement, starts, section, ground } = built;
  const level = ground.patches.every(({ plane }) => Math.hypot(plane.gx, plane.gy) < 1e-9);
  const least = Math.min(
    judgement.leastFaceSlopeInPerFt ?? 0,
    judgement.leastValleySlopeInPerFt ?? Number.POSITIVE_INFINITY,
  );
  if (!level || !(least > 0)) return null;
  const own = coneBoardFt(section, starts, least);
  const strict = coneBoardFt(section, starts, built.slopeInPerFt);
  return {
    pathSlopeInPerFt: least,
    boardFt: own.boardFt,
    errorBoardFt: own.errorBoardFt,
    ratio: boardFt / own.boardFt,
    strictConeBoardFt: strict.boardFt,
  };
}

const axisOf = (built: Built): ((outlet: string) => Point) => {
  const at = new Map(built.starts.map((start) => [start.id, start.kind === 'point' ? start.at : start.from]));
  return (outlet) => at.get(outlet) ?? [0, 0];
};

function facetReports(built: Built): FacetReport[] {
  return facetsOf(built.judgement.mesh)
    .filter(({ areaSqFt }) => areaSqFt > FACET_LEAST_SQ_FT)
    .map(({ outlet, outer, holes, plane, areaSqFt, labelAt }) => ({
      outlet,
      outline: outer,
      holes,
      plane,
      slopeInPerFt: slopeInPerFt(plane),
      areaSqFt,
      labelAt,
    }));
}

/** A built plan as the pages, papers and exports read it. */
export function layoutReport(context: LayoutContext, built: Built): Layout {
  const { site, limits, ruleSet, rain, targetR } = context;
  const { plan, judgement, thickness, ground } = built;
  const buildUp = buildUpAt(thickness);
  const uses = usesOf(site, limits, buildUp);
  const moments = momentsOf(thickness);
  const group = groupOf(built.slopeInPerFt);
  const tiling =
    group === null ? { pieces: [], boards: [], fill: [] } : tile(thickness, group, axisOf(built), built.baseIn);
  const open = site.edges.filter((edge) => isOpenEdge(edge) || plan.newEdges.has(edge.id));
  const rated = rateOutlets(site, judgement, plan.outlets, open, plan.newEdges, ruleSet, rain);
  const mean = moments.boardFt / moments.areaSqFt;
  const addedPsf = mean * insulationPsfPerIn.value + coverBoard.psf;
  const least = judgement.leastFaceSlopeInPerFt;
  const service = inServiceSlope({
    slopeInPerFt: least ?? 0,
    joists: site.roof.deck.joists,
    fallBearingDeg: null,
    addedDeadPsf: addedPsf,
    unreadDeadPsf: 0,
    liveLoadPsf: site.roof.deck.liveLoadPsf ?? 20,
  });
  const base = baseForTarget(built, uses, targetR);
  const rejected: Rejection | null =
    plan.barred === null
      ? (waterRejection(site, built) ?? heightRejection(uses))
      : { where: plan.title, neededIn: null, availableIn: null, why: plan.barred, relax: null };
  return {
    id: plan.id,
    title: `${plan.title}, boards at ${slopeInWords(built.slopeInPerFt)}`,
    why: plan.why,
    strict: site.given.strict,
    slopeInPerFt: built.slopeInPerFt,
    leastFaceSlopeInPerFt: least,
    leastValleySlopeInPerFt: judgement.leastValleySlopeInPerFt,
    inServiceSlopeInPerFt: service.slopeInPerFt,
    inServiceNote: service.note,
    valleyGrade: gradeOf(judgement.leastValleySlopeInPerFt, site.given.valleyInPerFt),
    outlets: rated.reports,
    areas: areaReports(judgement),
    newOutlets:
      plan.newEdges.size +
      plan.outlets.filter(({ status, role }) => status === 'proposed' && role === 'primary').length,
    meanThicknessIn: mean,
    leastThicknessIn: moments.leastIn,
    greatestThicknessIn: moments.greatestIn,
    volumeBoardFt: moments.boardFt,
    addedPsf,
    bound: boundOf(built, moments.boardFt),
    thinnestR: rOf(moments.leastIn),
    averageR: rOf(mean),
    effectiveR: effectiveR(thickness),
    baseForTargetIn: base?.baseIn ?? null,
    baseForTargetFits: base?.fits ?? null,
    facets: facetReports(built),
    creases: creaseReports(judgement),
    arrows: arrowsOf(judgement, moments.areaSqFt / 60),
    ...tiling,
    checkPoints: checkPoints(site, built, buildUp),
    nailers: nailersOf(site, built, buildUp),
    cornerHeights: site.outline.flatMap((at) => {
      const thicknessIn = buildUp(at);
      const vertex = judgement.mesh.points.findIndex((p) => distanceFt(p, at) < 1e-3);
      return thicknessIn === null || vertex < 0 ? [] : [{ at, heightIn: judgement.mesh.z[vertex], thicknessIn }];
    }),
    ponds: judgement.ponds.map((pond) => pondReport(pond, ruleSet.birdBathIn, site.edges)),
    flats: flatReports(judgement),
    levellingBoardFt: ground.levellingBoardFt,
    overflow: { required: false, note: '', inletIn: null, source: null },
    budgets: uses.map(({ limit, usedIn, leftIn }) => ({ id: limit.id, where: limit.where, usedIn, leftIn })),
    rejected,
  };
}
