import { pondLimit } from '../../reference/drying.ts';
import { signedAreaSqFt } from './geometry/vector.ts';
import { heatReport } from './heat/heat-report.ts';
import { alternativesFor } from './layout/alternatives/alternatives.ts';
import { type AsBuiltReading, judgeAsBuilt } from './layout/as-built.ts';
import { plansFor, pointsOf } from './layout/candidates.ts';
import { energyAssumed } from './layout/energy-assumed.ts';
import { type EnergyTarget, energyTarget } from './layout/energy-target.ts';
import { flatBoards, keepsItsSlope } from './layout/flat-boards.ts';
import { limitsOf } from './layout/limits.ts';
import { layoutsOf } from './layout/offered.ts';
import { openPartFindings } from './layout/open-parts.ts';
import { relaxationOf } from './layout/relax.ts';
import { finish, searchLayouts } from './layout/search.ts';
import { compareMembranes } from './membrane/compare.ts';
import { whyNotTheSame } from './membrane/why-not-same.ts';
import { dampAnswers } from './moisture/answers.ts';
import { type OverflowAdvice, overflowFor } from './outlets/overflow.ts';
import { type DesignRain, rainFor } from './outlets/rain.ts';
import { flatBoardFindings } from './report/damp-findings.ts';
import { energyFindings, tieInFindings } from './report/energy-findings.ts';
import { existingReport } from './report/existing.ts';
import { membraneFacts, perimeterOf, safetyFacts } from './report/facts.ts';
import { siteFindings } from './report/findings.ts';
import { headlineOf } from './report/headline.ts';
import { planReport } from './report/plan.ts';
import { ruleComparison } from './report/rule-comparison.ts';
import { sameWhichever } from './report/same-whichever.ts';
import { statedSlopeFindings } from './report/slope-findings.ts';
import { snowAssumed, snowFindings } from './report/snow-findings.ts';
import type {
  AsBuiltReport,
  Assessment,
  Assumption,
  Budget,
  ExistingReport,
  Finding,
  Layout,
  RoofToday,
  SearchProgress,
} from './report/types.ts';
import type { Outlet, Roof } from './roof.ts';
import type { RuleSet } from './rule-set.ts';
import { deferral, evaluateCautions } from './safety/cautions.ts';
import { inspectionOf } from './scope/inspection.ts';
import { plannedReport } from './scope/planned.ts';
import { scopeOf } from './scope/scope.ts';
import { isOpenEdge } from './site/offers.ts';
import { outletsThere, type Site, siteOf } from './site/site.ts';
import { takeOff } from './takeoff/take-off.ts';
import { workDaysOf } from './takeoff/work-days.ts';

interface OverflowContext {
  roof: Roof;
  site: Site;
  ruleSet: RuleSet;
  rain: DesignRain;
}

/** Ways out of one finished (or existing) roof, judged for a second one. */
function overflowOf(
  context: OverflowContext,
  layout: Pick<Layout, 'outlets'> | ExistingReport,
  drains: boolean,
): OverflowAdvice {
  const { roof, site, ruleSet, rain } = context;
  const open = site.edges.filter(isOpenEdge).length > 0 || layout.outlets.some(({ kind }) => kind === 'edge');
  const given = new Map<string, Outlet>(roof.outlets.map((outlet) => [outlet.id, outlet]));
  const ways = layout.outlets.map((report) => {
    const { id, label, role, inletAboveSurfaceIn = null } = report;
    const outlet = given.get(id);
    const inletIn = outlet?.inletIn ?? null;
    const inletAboveLowIn = report.inletAboveLowIn ?? inletIn;
    return { id, label, role, working: outlet?.working ?? true, inletIn, inletAboveLowIn, inletAboveSurfaceIn };
  });
  const shut = outletsThere(site)
    .filter((outlet) => !layout.outlets.some(({ id }) => id === outlet.id))
    .map((outlet) => ({
      id: outlet.id,
      label: `${outlet.kind} ${outlet.id}`,
      role: outlet.role,
      working: false,
      inletIn: outlet.inletIn,
      inletAboveLowIn: outlet.inletIn,
      inletAboveSurfaceIn: null,
    }));
  const drainSizes = roof.outlets.flatMap((outlet) =>
    outlet.kind === 'drain' && outlet.sizeIn !== null ? [outlet.sizeIn] : [],
  );
  return overflowFor({
    id: 'section',
    where: 'the section',
    ruleSet,
    rain,
    enclosed: !open,
    drainsSqFt: site.section.areaSqFt,
    addedSqFt: layout.outlets.reduce((sum, { addedSqFt }) => sum + addedSqFt, 0),
    ways: [...ways, ...shut],
    primaryDrainSizeIn: drainSizes.length === 0 ? null : Math.max(...drainSizes),
    asKind: site.edges.some(({ edge }) => edge.kind === 'parapet') ? 'scupper' : 'drain',
    openingHeightIn: null,
    reRoof: true,
    drainage: drains ? 'drains' : 'not-shown',
    liveLoadPsf: roof.deck.liveLoadPsf,
  });
}

const withoutTwins = <T>(items: readonly T[], key: (item: T) => string): T[] => [
  ...new Map(items.map((item) => [key(item), item])).values(),
];

function ruleAssumptions(roof: Roof, ruleSet: RuleSet, energy: EnergyTarget): Assumption[] {
  const ask = 'ask the building office which editions it enforces';
  return [
    ...(roof.ruleSet.building === null
      ? [
          {
            path: 'ruleSet.building',
            value: ruleSet.building.title,
            because: 'no building code was named',
            findOut: ask,
          },
        ]
      : []),
    ...(roof.ruleSet.plumbing === null
      ? [
          {
            path: 'ruleSet.plumbing',
            value: ruleSet.plumbing.title,
            because: 'no plumbing code was named',
            findOut: ask,
          },
        ]
      : []),
    ...energyAssumed(roof, energy),
  ];
}

const budgetOf = ({ allowedIn: _, ...budget }: Budget & { allowedIn: unknown }): Budget => budget;

/** Everything that stands before a layout is built: rain, the old roof, ideas for outlets, heights. */
function groundwork(roof: Roof, ruleSet: RuleSet) {
  const rain = rainFor(roof.place, ruleSet);
  const bare = siteOf(roof);
  const old = existingReport(bare, ruleSet, rain);
  const plans = keepsItsSlope(roof, old.report) ? [] : plansFor(bare, old.judgement);
  const site = siteOf(roof, pointsOf(bare, plans));
  return {
    roof,
    ruleSet,
    rain,
    old,
    plans,
    site,
    limits: limitsOf(site, ruleSet),
    energy: energyTarget(site, ruleSet),
  };
}

/**
 * Heights read on the finished roof, judged like every other surface.
 * @param layoutId of the layout that was laid
 * @param readings heights in in above the lowest outlet at numbered check points; points without a reading keep the design
 * @returns null when the layout or none of the points is known
 */
export function assessAsBuilt(
  roof: Roof,
  ruleSet: RuleSet,
  layoutId: string,
  readings: readonly AsBuiltReading[],
): AsBuiltReport | null {
  const context = groundwork(roof, ruleSet);
  const { built: all } = finish(searchLayouts(context, context.plans));
  const built = all.find(({ plan }) => plan.id === layoutId);
  return built === undefined ? null : judgeAsBuilt(context, built, readings);
}

function todayOf(site: Site, ruleSet: RuleSet, existing: ExistingReport): RoofToday {
  const areaSqFt = Math.abs(signedAreaSqFt(site.roof.outline));
  return {
    section: { areaSqFt, perimeterFt: perimeterOf(site), squares: areaSqFt / 100 },
    plan: planReport(site, ruleSet),
    existing,
    inspection: inspectionOf(site),
  };
}

/** The roof as it is, for whoever draws it while it is still being measured: no layout is searched. */
export function assessToday(roof: Roof, ruleSet: RuleSet): RoofToday {
  const site = siteOf(roof);
  return todayOf(site, ruleSet, existingReport(site, ruleSet, rainFor(roof.place, ruleSet)).report);
}

/**
 * The whole answer for one roof section under one rule set: pure, the same roof gives the same answer.
 * Order of thought: heights, ways out for the water, surface, layouts, membrane, materials, cautions.
 * @param roof as parsed; what is null is assumed, and listed
 * @param ruleSet from `ruleSetFor`
 */
export const assess = (roof: Roof, ruleSet: RuleSet): Assessment => finish(assessInSteps(roof, ruleSet));

/**
 * The same answer step by step, for whoever shows how far it is.
 * @returns a generator that yields the progress of the search and ends with the answer of `assess`
 */
export function* assessInSteps(roof: Roof, ruleSet: RuleSet): Generator<SearchProgress, Assessment> {
  const { old, plans, limits, ...context } = groundwork(roof, ruleSet);
  const { site, rain, energy } = context;
  const searched = { site, limits, ruleSet, rain, energy };
  const { built, search } = yield* searchLayouts(searched, plans);
  const reports = yield* layoutsOf(searched, built, search);
  const layouts = reports.map((layout): Layout => {
    const { required, note, inletAboveLowIn, source } = overflowOf(context, layout, layout.rejected === null);
    return { ...layout, overflow: { required, note, inletIn: inletAboveLowIn, source } };
  });
  const chosen = layouts.find(({ rejected }) => rejected === null) ?? null;
  const overflow = overflowOf(context, chosen ?? old.report, chosen !== null);
  const facts = membraneFacts(site, old.report, chosen, ruleSet);
  const membranes = compareMembranes(facts);
  const budgets = limits.map(budgetOf);
  const flat = flatBoards(site, old.report);
  const damp = dampAnswers({ site, ruleSet, layout: chosen, membrane: membranes.chosen, energy, budgets });
  const materials =
    chosen === null
      ? { lines: [], findings: [] }
      : takeOff({
          site,
          layout: chosen,
          membrane: membranes.chosen,
          attachment: membranes.attachment,
          deckSheet: damp.report.moisture.deckSheet,
        });
  const { chosen: membrane, attachment } = membranes;
  const timed = (layout: Layout): Layout =>
    layout.rejected === null ? { ...layout, workDays: workDaysOf({ site, layout, membrane, attachment }) } : layout;
  const scope = scopeOf({ site, existing: old.report, chosen, ruleSet, budgets });
  const planned = plannedReport(site, scope.report);
  const findings: Finding[] = [
    ...scope.findings,
    ...planned.findings,
    ...siteFindings({ site, existing: old.report, layouts, chosen, limits, ruleSet, search }),
    ...overflow.findings,
    ...statedSlopeFindings(roof),
    ...(chosen?.shutFindings ?? []),
    ...(chosen === null ? [] : energyFindings(chosen, site.section.areaSqFt, energy.commercial)),
    ...(chosen?.newHeights === undefined ? [] : tieInFindings(chosen.newHeights)),
    ...openPartFindings(site, chosen?.workParts ?? [], ruleSet.birdBathIn),
    ...snowFindings(site, (chosen ?? old.report).leastFaceSlopeInPerFt ?? 0),
    ...old.findings,
    ...rain.findings,
    ...membranes.notes,
    ...materials.findings,
    ...(flat === null ? [] : flatBoardFindings(flat)),
    ...damp.findings,
  ];
  const heat = heatReport({
    site,
    layout: chosen,
    membranes: membranes.reports,
    chosenMembrane: membranes.chosen,
  });
  const level = { stop: 0, fix: 1, note: 2 };
  return {
    resultVersion: 1,
    label: roof.label,
    invented: roof.invented,
    place: [roof.place.city, roof.place.state].filter((part) => part !== null).join(', ') || 'place not known',
    headline: headlineOf({
      existing: old.report,
      chosen,
      layouts,
      comesTo: scope.report.comesTo,
      instead: damp.instead ?? flat,
    }),
    ruleSet: {
      building: { id: ruleSet.building.id, title: ruleSet.building.title },
      plumbing: { id: ruleSet.plumbing.id, title: ruleSet.plumbing.title },
      slopeRule: {
        faceInPerFt: site.given.faceInPerFt,
        valleyInPerFt: site.given.valleyInPerFt,
        strict: site.given.strict,
      },
      local: ruleSet.localNotes,
      ponds: {
        listedFromIn: pondLimit.listIn,
        flaggedOverIn: ruleSet.birdBathIn,
        flaggedOverSqFt: ruleSet.birdBathSqFt,
      },
    },
    rain: {
      primaryInPerHr: rain.primaryInPerHr,
      primaryBasis: rain.primaryBasis,
      overflowInPerHr: rain.overflowInPerHr,
      overflowBasis: rain.overflowBasis,
      source: rain.source,
    },
    ...todayOf(site, ruleSet, old.report),
    budgets,
    layouts: layouts.map(timed),
    search,
    chosenLayout: chosen?.id ?? null,
    alternatives: alternativesFor({ site, existing: old.report, layouts, chosen, limits }),
    scope: scope.report,
    planned: planned.report,
    relax:
      damp.report.moisture.relax[0]?.text ?? (chosen === null ? (relaxationOf(search, layouts)?.text ?? null) : null),
    membranes: membranes.reports,
    chosenMembrane: membranes.chosen,
    membraneWeighing: membranes.weighing,
    sameWhichever: sameWhichever(chosen, scope.report),
    whyNotTheSame: whyNotTheSame(facts, membranes),
    materials: materials.lines,
    cautions: evaluateCautions(safetyFacts(site, old.report, chosen, membranes.attachment)),
    deferral,
    flatBoards: flat,
    ...damp.report,
    findings: withoutTwins(findings, ({ id, where, message }) => `${id}|${where}|${message}`).sort(
      (a, b) => level[a.level] - level[b.level],
    ),
    assumed: withoutTwins(
      [
        ...ruleAssumptions(roof, ruleSet, energy),
        ...site.assumed,
        ...snowAssumed(site),
        ...rain.assumed,
        ...old.assumed,
        ...overflow.assumed,
        ...damp.assumed,
        ...heat.assumed,
      ],
      ({ path, value }) => `${path}|${value}`,
    ),
    workings: [...old.workings, ...overflow.workings],
    heat,
    ruleComparison: ruleComparison({
      site,
      ruleSet,
      existing: old.report,
      chosen,
      verdictUnder: old.verdictUnder,
      outletsUnder: old.outletsUnder,
      overflowUnder: (set, storm) =>
        overflowOf({ ...context, ruleSet: set, rain: storm }, chosen ?? old.report, chosen !== null),
    }),
  };
}
