import { coverBoard, insulationPsfPerIn } from '../../../reference/insulation.ts';
import { inServiceSlope } from '../drainage/sag.ts';
import { slopeInPerFt } from '../geometry/plane.ts';
import { distanceFt } from '../geometry/vector.ts';
import { blockedWater, NO_SECOND_WAY } from '../outlets/blocked.ts';
import type { DesignRain } from '../outlets/rain.ts';
import { rateOutlets } from '../outlets/rate-all.ts';
import { withLoads } from '../report/outlet-loads.ts';
import type { FacetReport, Layout, OutletReport, Rejection } from '../report/types.ts';
import { areaReports, arrowsOf, creaseReports, flatReports, pondReport } from '../report/water.ts';
import type { RuleSet } from '../rule-set.ts';
import { isOpenEdge } from '../site/offers.ts';
import type { Site } from '../site/site.ts';
import { boardRejection } from './board-rejection.ts';
import { boardsOf } from './boards.ts';
import { boundOf } from './bound.ts';
import { type Built, overBase } from './build.ts';
import { catalogueOf } from './catalogue.ts';
import { buildUpAt, gradeOf, heightRejection, type LimitUse, usesOf, waterRejection } from './check.ts';
import { checkPointsOf } from './check-points.ts';
import { thermalReport } from './energy.ts';
import type { EnergyTarget } from './energy-target.ts';
import { facetsOf } from './facets.ts';
import { groundFillOf } from './ground-report.ts';
import type { Limit } from './limits.ts';
import { nailersOf } from './nailers.ts';
import { newHeightsOf } from './new-heights.ts';
import { layoutTitle } from './plan.ts';
import { costOf, ratesOf } from './rank.ts';
import { momentsOf } from './thermal.ts';

const FACET_LEAST_SQ_FT = 0.05;

export interface LayoutContext {
  site: Site;
  limits: readonly Limit[];
  ruleSet: RuleSet;
  rain: DesignRain;
  energy: EnergyTarget;
}

/** Height left at the tightest place that must hold; null where none is known. */
function roomOf(uses: readonly LimitUse[]): number | null {
  const left = uses.filter(({ limit }) => limit.hardness === 'stop').map(({ leftIn }) => leftIn);
  return left.length === 0 ? null : Math.min(...left);
}

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

/** Weight [psf] of boards of a mean thickness [in] with the cover board. */
export const addedPsf = (meanIn: number): number => meanIn * insulationPsfPerIn.value + coverBoard.psf;

/** Depth [in] of the roof under an outlet's inlet where its water stands: a main outlet of a new roof lies flush. */
const inletDepthIn = ({ role, inletAboveLowIn = null }: OutletReport): number | null =>
  role === 'primary' ? 0 : inletAboveLowIn;

/** A built plan as the pages, papers and exports read it. */
export function layoutReport(context: LayoutContext, built: Built): Layout {
  const { site, limits, ruleSet, rain } = context;
  const { plan, judgement, thickness, ground } = built;
  const buildUp = buildUpAt(overBase(built));
  const uses = usesOf(site, limits, buildUp);
  const moments = momentsOf(thickness);
  const { work: boardWork, ...tiling } = boardsOf(built, catalogueOf(site.roof));
  const open = site.edges.filter((edge) => isOpenEdge(edge) || plan.newEdges.has(edge.id));
  const rated = rateOutlets(site, judgement, plan.outlets, open, plan.newEdges, ruleSet, rain);
  const mean = moments.boardFt / moments.areaSqFt;
  const psf = addedPsf(mean);
  const least = judgement.leastFaceSlopeInPerFt;
  const service = inServiceSlope({
    slopeInPerFt: least ?? 0,
    joists: site.roof.deck.joists,
    fallBearingDeg: null,
    addedDeadPsf: psf,
    unreadDeadPsf: 0,
    liveLoadPsf: site.roof.deck.liveLoadPsf ?? 20,
  });
  const thermal = thermalReport({
    thickness,
    slopeInPerFt: built.slopeInPerFt,
    target: context.energy,
    taperRule: ruleSet.local.taperRule,
    roomIn: roomOf(uses),
  });
  const [label] = thermal.bases;
  const nailers = nailersOf(site, built, buildUp);
  const tooHigh = heightRejection(uses);
  const rejected: Rejection | null =
    plan.barred === null
      ? (waterRejection(site, built) ?? tooHigh ?? boardRejection(boardWork, catalogueOf(site.roof)))
      : {
          where: plan.title,
          neededIn: null,
          availableIn: null,
          why: plan.barred.why,
          relax: tooHigh === null ? plan.barred.relax : `${plan.barred.relax} It is too high as well. ${tooHigh.relax}`,
        };
  const ways = { outlets: plan.outlets, opened: plan.newEdges };
  const enclosed = open.length === 0 && rejected === null;
  const shut = blockedWater(site, judgement.mesh, ways, rated.ratings, enclosed, 'the finished roof');
  // What stands for want of an overflow is said by the overflow's own advice, which adds one.
  const relieved = plan.outlets.some(({ role, working }) => role === 'overflow' && working);
  return {
    id: plan.id,
    title: layoutTitle(plan, built.slopeInPerFt),
    why: plan.why,
    strict: site.given.strict,
    slopeInPerFt: built.slopeInPerFt,
    leastFaceSlopeInPerFt: least,
    leastValleySlopeInPerFt: judgement.leastValleySlopeInPerFt,
    inServiceSlopeInPerFt: service.slopeInPerFt,
    inServiceNote: service.note,
    valleyGrade: gradeOf(judgement.leastValleySlopeInPerFt, site.given.valleyInPerFt),
    outlets: withLoads(rated.reports, rated.ratings, inletDepthIn),
    areas: areaReports(judgement),
    newOutlets:
      plan.newEdges.size +
      plan.outlets.filter(({ status, role }) => status === 'proposed' && role === 'primary').length,
    meanThicknessIn: mean,
    leastThicknessIn: moments.leastIn,
    greatestThicknessIn: moments.greatestIn,
    volumeBoardFt: moments.boardFt,
    addedPsf: psf,
    cost: costOf(
      { plan, boardFt: moments.boardFt, levellingBoardFt: ground.levellingBoardFt },
      ratesOf(site.roof.prices),
    ),
    baseIn: built.baseIn,
    noSumps: built.noSumps,
    sumps: built.sumps.map(({ outlet, halfFt, riseInPerFt, levelIn }) => ({
      outlet,
      sideFt: 2 * halfFt,
      slopeInPerFt: riseInPerFt,
      atDrainIn: levelIn,
    })),
    bound: boundOf(site, built),
    thinnestR: label.thinnestR,
    averageR: label.averageR,
    effectiveR: label.effectiveR,
    baseForTargetIn: label.baseForTargetIn,
    baseForTargetFits: label.baseFits,
    thermal,
    facets: facetReports(built),
    creases: creaseReports(judgement),
    arrows: arrowsOf(judgement, moments.areaSqFt / 60),
    ...tiling,
    boardWork,
    checkPoints: checkPointsOf(site, built),
    nailers,
    newHeights: newHeightsOf({
      site,
      limits,
      buildUp,
      nailers,
      inlets: rated.reports,
      opened: plan.newEdges,
      ruleSet,
    }),
    cornerHeights: site.outline.flatMap((at) => {
      const thicknessIn = buildUp(at);
      const vertex = judgement.mesh.points.findIndex((p) => distanceFt(p, at) < 1e-3);
      return thicknessIn === null || vertex < 0 ? [] : [{ at, heightIn: judgement.mesh.z[vertex], thicknessIn }];
    }),
    ponds: judgement.ponds.map((pond) => pondReport(judgement.mesh, pond, ruleSet, site.edges)),
    flats: flatReports(judgement),
    levellingBoardFt: ground.levellingBoardFt,
    groundFill: groundFillOf(site, built),
    overflow: { required: false, note: '', inletIn: null, source: null },
    loads: shut.steps,
    shutFindings: shut.findings.filter(({ id }) => relieved || id === NO_SECOND_WAY),
    budgets: uses.map(({ limit, usedIn, leftIn }) => ({ id: limit.id, where: limit.where, usedIn, leftIn })),
    rejected,
  };
}
