import { backfalls, withEdgesLowered } from '../drainage/backfall.ts';
import { compareRuleSets } from '../drainage/compare-rules.ts';
import type { Judgement } from '../drainage/judge.ts';
import { judge } from '../drainage/judge.ts';
import { differenceErrorIn, slopeErrorInPerFt } from '../drainage/reading-error.ts';
import { coveringClassOf } from '../drainage/slope-rule.ts';
import { type ReadingError, seenAfter48h, type VerdictOf, verdictOf } from '../drainage/verdict.ts';
import { planeOfTriangle, slopeInPerFt } from '../geometry/plane.ts';
import { centroid } from '../geometry/vector.ts';
import { groundsOf } from '../layout/ground.ts';
import { levelAreas } from '../layout/level-areas.ts';
import { blockedWater } from '../outlets/blocked.ts';
import { liveLoadOf } from '../outlets/live-load.ts';
import type { DesignRain } from '../outlets/rain.ts';
import { rateOutlets } from '../outlets/rate-all.ts';
import type { RuleSet } from '../rule-set.ts';
import { isOpenEdge, waysOut } from '../site/offers.ts';
import { outletsThere, type Site } from '../site/site.ts';
import { meshOf, type SurfaceMesh } from '../surface/mesh.ts';
import type { Patch } from '../surface/patch.ts';
import { type EdgeTrouble, edgeFindings, edgeFirstWords } from './edge-findings.ts';
import { withLoads } from './outlet-loads.ts';
import { outsideWater, phasingFindings } from './outside-water.ts';
import { seenPondReports } from './seen-ponds.ts';
import { surfaceFindings } from './surface-findings.ts';
import type { Assumption, ExistingReport, Finding, OutletReport, Working } from './types.ts';
import { areaReports, arrowsOf, flatReports, pondReport, trianglesOf } from './water.ts';
import { placeWords } from './words.ts';

/** Square grids with more free diagonals than this are judged by the higher ones alone. */
const MOST_CHOICES = 60;

function judgeSurface(site: Site, patches: readonly Patch[]): Judgement {
  return judgeMesh(site, meshOf(patches));
}

function judgeMesh(site: Site, mesh: SurfaceMesh): Judgement {
  const { offers, openAt } = waysOut(site, mesh, { outlets: outletsThere(site) });
  return judge(mesh, offers, openAt);
}

const holdsWater = (judgement: Judgement, birdBathIn: number): boolean =>
  (judgement.ponds[0]?.greatestDepthIn ?? 0) > birdBathIn;

/** A square of level readings whose other diagonal would turn the answer, and the reading that would settle it. */
function openChoice(site: Site, judgement: Judgement, birdBathIn: number): string | null {
  const { choices, patches } = site.measured;
  if (choices.length > MOST_CHOICES) return null;
  const wet = holdsWater(judgement, birdBathIn);
  for (const choice of choices) {
    const replaced = new Set(choice.patches);
    const other = [...patches.filter((patch) => !replaced.has(patch)), ...choice.otherDiagonal];
    if (holdsWater(judgeSurface(site, other), birdBathIn) === wet) continue;
    const [x, y] = choice.centre;
    return `Take one more reading at ${x.toFixed(1)}, ${y.toFixed(1)} ft (${placeWords(site.edges, choice.centre)}): it decides which way that square falls.`;
  }
  return null;
}

/** Error of the flattest plane and of a depth, from the error of the readings. */
function readingError(site: Site, judgement: Judgement): ReadingError | null {
  const { readings } = site.measured;
  if (readings.length === 0) return null;
  const { mesh } = judgement;
  const slopes = mesh.patch.map(({ plane }) => slopeInPerFt(plane));
  const t = slopes.indexOf(Math.min(...slopes));
  const flattest = centroid([0, 1, 2].map((k) => mesh.points[mesh.corners[3 * t + k]]));
  const readingIn = site.given.readingErrorIn;
  return {
    readingIn,
    slopeInPerFt: slopeErrorInPerFt(readings, flattest, readingIn) ?? 0,
    depthIn: differenceErrorIn(readingIn),
  };
}

/** Edges that stand proud, and what lowering them alone would do. */
function edgesOf(site: Site, judgement: Judgement, birdBathIn: number): EdgeTrouble {
  const { openAt } = waysOut(site, judgement.mesh, { outlets: outletsThere(site) });
  const found = backfalls(judgement.mesh, openAt);
  const lowered = withEdgesLowered(judgement.mesh, openAt, found);
  if (lowered === null) return { backfalls: found, lowered: null };
  const { mesh } = judgement;
  const patches = Array.from({ length: mesh.corners.length / 3 }, (_, t): Patch => {
    const ids = [0, 1, 2].map((k) => mesh.corners[3 * t + k]);
    const [a, b, c] = ids.map((id) => mesh.points[id]);
    return { ring: [a, b, c], plane: planeOfTriangle(a, b, c, ...heightsAt(lowered.z, ids)), outlet: '' };
  });
  const after = judgeSurface(site, patches);
  const drains = !holdsWater(after, birdBathIn) && after.trappedSqFt < 1e-3 && after.flats.areaSqFt < 1e-3;
  return {
    backfalls: found,
    lowered: { cutIn: lowered.greatestCutIn, drains, leastFaceSlopeInPerFt: after.leastFaceSlopeInPerFt },
  };
}

const heightsAt = (z: Float64Array, [a, b, c]: readonly number[]): [number, number, number] => [z[a], z[b], z[c]];

export interface ExistingResult {
  report: ExistingReport;
  judgement: Judgement;
  findings: readonly Finding[];
  assumed: readonly Assumption[];
  workings: readonly Working[];
  /** The same surface under another rule set, its limits of standing water kept. */
  verdictUnder: (other: RuleSet) => VerdictOf;
  /** The same outlets under another rule set. */
  outletsUnder: (other: RuleSet, otherRain: DesignRain) => readonly OutletReport[];
}

/** Height of an outlet's inlet above the roof there: a primary one of which nothing is said is level with it. */
function inletIn({ roof }: Site, id: string, role: OutletReport['role']): number | null {
  return roof.outlets.find((outlet) => outlet.id === id)?.inletIn ?? (role === 'primary' ? 0 : null);
}

/** The roof as it is: where water stands and why, what its outlets carry, and the verdict under the rule set. */
export function existingReport(site: Site, ruleSet: RuleSet, rain: DesignRain): ExistingResult {
  const flooded = judgeSurface(site, site.measured.patches);
  const level = levelAreas(site, flooded);
  const judgement = level?.judgement ?? flooded;
  const { climateZone } = site.roof.place;
  const seen = seenPondReports(site, ruleSet);
  const computed = judgement.ponds
    .filter(({ greatestDepthIn }) => greatestDepthIn > 1e-3)
    .map((pond) => pondReport(judgement.mesh, pond, ruleSet, site.edges, climateZone));
  const ponds = [...seen.ponds, ...computed];
  const error = readingError(site, judgement);
  const edges = edgesOf(site, judgement, ruleSet.birdBathIn);
  const open = site.edges.filter(isOpenEdge);
  const rateAs = (set: RuleSet, storm: DesignRain) =>
    rateOutlets(site, judgement, outletsThere(site), open, new Set(), set, storm);
  const rated = rateAs(ruleSet, rain);
  const verdictInput = {
    existing: site.roof.existing,
    judgement,
    ponds,
    covering: site.given.covering,
    strict: site.given.strict,
    openChoice: openChoice(site, judgement, ruleSet.birdBathIn),
    error,
  };
  const live = liveLoadOf(site.roof.deck.liveLoadPsf);
  const ways = { outlets: outletsThere(site) };
  const ladder = blockedWater(site, judgement.mesh, ways, rated.ratings, open.length === 0);
  const fitted = groundsOf(site).find(({ how }) => how !== 'as-read');
  const areaSqFt = site.section.areaSqFt;
  // A surface that is taken for level for want of a measure has no slope and no level place to tell of.
  const measured = site.roof.existing.surface.kind !== 'unknown';
  const report: ExistingReport = {
    ...verdictOf({ ...verdictInput, ruleSet }),
    leastFaceSlopeInPerFt: measured ? judgement.leastFaceSlopeInPerFt : null,
    leastValleySlopeInPerFt: measured ? judgement.leastValleySlopeInPerFt : null,
    ponds,
    flats: measured ? flatReports(judgement) : [],
    undrainedAreaSqFt: measured ? judgement.undrainedSqFt : judgement.trappedSqFt,
    outlets: withLoads(rated.reports, rated.ratings, ({ id, role }) => inletIn(site, id, role)),
    areas: areaReports(judgement),
    surface: trianglesOf(judgement),
    arrows: arrowsOf(judgement, areaSqFt / 80),
    loads: ladder.steps,
    liveLoad: { psf: live.psf, assumed: live.assumed.length > 0 },
    levelling:
      fitted === undefined ? null : { volumeBoardFt: fitted.levellingBoardFt, greatestIn: fitted.greatestFillIn },
    slopeErrorInPerFt: error?.slopeInPerFt ?? null,
    passes48h: seenAfter48h(site.roof.existing, ruleSet.building.drainsWithin.hours),
    edgeFirst: edgeFirstWords(site, edges),
    ruleStandings: compareRuleSets(
      judgement.leastFaceSlopeInPerFt ?? 0,
      coveringClassOf(site.given.covering),
      site.given.strict,
      ruleSet,
    ),
  };
  const outside = outsideWater(site, rated.reports, rain);
  return {
    report,
    judgement,
    findings: [
      ...edgeFindings(site, edges, report),
      ...surfaceFindings(site, report, ruleSet),
      ...outside.findings,
      ...phasingFindings(site, rain, open.length === 0),
      ...rated.findings,
      ...ladder.findings,
    ],
    assumed: [...seen.assumed, ...rated.assumed, ...ladder.assumed, ...(level === null ? [] : [level.assumed])],
    workings: [...rated.workings, ...outside.workings],
    verdictUnder: (other) => verdictOf({ ...verdictInput, ruleSet: other }),
    outletsUnder: (other, otherRain) => rateAs(other, otherRain).reports,
  };
}
