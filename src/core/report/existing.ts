import type { Judgement } from '../drainage/judge.ts';
import { judge } from '../drainage/judge.ts';
import { verdictOf } from '../drainage/verdict.ts';
import { groundsOf } from '../layout/ground.ts';
import { loadLadder, type SpillPlace } from '../outlets/load-ladder.ts';
import type { DesignRain } from '../outlets/rain.ts';
import { rateOutlets } from '../outlets/rate-all.ts';
import type { RuleSet } from '../rule-set.ts';
import { isOpenEdge, waysOut } from '../site/offers.ts';
import type { Site } from '../site/site.ts';
import { meshOf } from '../surface/mesh.ts';
import type { Patch } from '../surface/patch.ts';
import type { Assumption, ExistingReport, Finding, Working } from './types.ts';
import { areaReports, arrowsOf, flatReports, pondReport, trianglesOf } from './water.ts';
import { placeWords } from './words.ts';

/** Square grids with more free diagonals than this are judged by the higher ones alone. */
const MOST_CHOICES = 60;

function judgeSurface(site: Site, patches: readonly Patch[]): Judgement {
  const mesh = meshOf(patches);
  const { offers, openAt } = waysOut(site, mesh, { outlets: site.roof.outlets });
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

function spills(site: Site, judgement: Judgement): SpillPlace[] {
  const { mesh } = judgement;
  const { offers } = waysOut(site, mesh, { outlets: site.roof.outlets });
  const lowest = new Map<string, number>();
  for (const { vertex, levelIn, outlet } of offers) {
    const at = Math.max(levelIn, mesh.z[vertex]);
    lowest.set(outlet, Math.min(lowest.get(outlet) ?? Number.POSITIVE_INFINITY, at));
  }
  return [...lowest].map(([id, heightIn]): SpillPlace => {
    const outlet = site.roof.outlets.find((o) => o.id === id);
    const edge = site.edges.find((e) => e.id === id);
    if (outlet !== undefined) return { label: `${outlet.kind} ${id}`, kind: outlet.role, heightIn, headIn: null };
    if (edge !== undefined && isOpenEdge(edge)) return { label: edge.label, kind: 'primary', heightIn, headIn: 0 };
    const door = edge?.edge.openings.some(({ kind }) => kind === 'door') ?? false;
    const kind = edge?.edge.kind === 'parapet' ? 'parapet' : door ? 'door' : 'other';
    return { label: edge?.label ?? id, kind, heightIn, headIn: 0 };
  });
}

export interface ExistingResult {
  report: ExistingReport;
  judgement: Judgement;
  findings: readonly Finding[];
  assumed: readonly Assumption[];
  workings: readonly Working[];
}

/** The roof as it is: where water stands and why, what its outlets carry, and the verdict under the rule set. */
export function existingReport(site: Site, ruleSet: RuleSet, rain: DesignRain): ExistingResult {
  const judgement = judgeSurface(site, site.measured.patches);
  const ponds = judgement.ponds
    .filter(({ greatestDepthIn }) => greatestDepthIn > 1e-3)
    .map((pond) => pondReport(judgement.mesh, pond, ruleSet.birdBathIn, site.edges));
  const open = site.edges.filter(isOpenEdge);
  const rated = rateOutlets(site, judgement, site.roof.outlets, open, new Set(), ruleSet, rain);
  const verdict = verdictOf({
    existing: site.roof.existing,
    judgement,
    ponds,
    covering: site.given.covering,
    strict: site.given.strict,
    ruleSet,
    openChoice: openChoice(site, judgement, ruleSet.birdBathIn),
  });
  const ladder = loadLadder({
    where: 'the section',
    lowPointIn: Math.min(...judgement.mesh.z),
    spills: spills(site, judgement),
    liveLoadPsf: site.roof.deck.liveLoadPsf,
  });
  const fitted = groundsOf(site).find(({ how }) => how !== 'as-read');
  const areaSqFt = site.section.areaSqFt;
  const report: ExistingReport = {
    ...verdict,
    leastFaceSlopeInPerFt: judgement.leastFaceSlopeInPerFt,
    leastValleySlopeInPerFt: judgement.leastValleySlopeInPerFt,
    ponds,
    flats: flatReports(judgement),
    undrainedAreaSqFt: judgement.flats.areaSqFt + judgement.trappedSqFt,
    outlets: rated.reports,
    areas: areaReports(judgement),
    surface: trianglesOf(judgement),
    arrows: arrowsOf(judgement, areaSqFt / 80),
    loads: ladder.steps,
    levelling:
      fitted === undefined ? null : { volumeBoardFt: fitted.levellingBoardFt, greatestIn: fitted.greatestFillIn },
  };
  return {
    report,
    judgement,
    findings: [...rated.findings, ...(open.length === 0 ? ladder.findings : [])],
    assumed: [...rated.assumed, ...ladder.assumed],
    workings: rated.workings,
  };
}
