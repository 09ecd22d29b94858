import type { Layout, SearchProgress, SearchReport } from '../report/types.ts';
import { type Built, overBase } from './build.ts';
import { buildUpAt, heightRejection, usesOf, waterRejection } from './check.ts';
import { nonDominated } from './frontier.ts';
import { openParts } from './open-parts.ts';
import type { LayoutPlan } from './plan.ts';
import { rank, ratesOf } from './rank.ts';
import { type LayoutContext, layoutReport } from './report.ts';
import { weighBuilt } from './weigh.ts';

interface Ranked {
  built: Built;
  plan: LayoutPlan;
  layout: Layout;
}

/** What stops a surface before its boards are counted. */
export const isStopped = ({ site, limits }: LayoutContext, built: Built): boolean =>
  built.plan.barred !== null ||
  waterRejection(site, built) !== null ||
  heightRejection(usesOf(site, limits, buildUpAt(overBase(built)))) !== null;

/**
 * Reports of what a search has built: offered ones first, the best of them leading and no other that something beats,
 * then the rejected ones with what they break. What another beats is not reported: counting its boards takes longest.
 */
export function* layoutsOf(
  context: LayoutContext,
  built: readonly Built[],
  { tried, budget }: Pick<SearchReport, 'tried' | 'budget'>,
): Generator<SearchProgress, Layout[]> {
  const rates = ratesOf(context.site.roof.prices);
  const weigh = weighBuilt(context.site.given.faceInPerFt, rates);
  const stopped = new Set(built.filter((one) => isStopped(context, one)));
  const told = new Map<Built, Ranked>();
  const report = function* (list: readonly Built[]): Generator<SearchProgress> {
    const fresh = list.filter((one) => !told.has(one));
    const toTell = told.size + fresh.length;
    for (const one of fresh) {
      told.set(one, { built: one, plan: one.plan, layout: layoutReport(context, one) });
      yield { tried, budget, doing: 'reports', told: told.size, toTell };
    }
  };
  let left = built.filter((one) => !stopped.has(one));
  let offered = nonDominated(left, weigh);
  for (;;) {
    yield* report(offered);
    // Boards that nobody makes stop a layout only now; what it had beaten is then looked at again.
    const unmade = offered.filter((one) => told.get(one)?.layout.rejected !== null);
    if (unmade.length === 0) break;
    for (const one of unmade) stopped.add(one);
    left = left.filter((one) => !stopped.has(one));
    offered = nonDominated(left, weigh);
  }
  // Of two ideas at once that do not hold nothing is learnt that each of them alone does not tell.
  const rejected = built.filter((one) => stopped.has(one) && !one.plan.pair);
  yield* report(rejected);
  const rankedOf = (list: readonly Built[]): Ranked[] => list.flatMap((one) => told.get(one) ?? []);
  const ranked = rankedOf([...offered, ...rejected]).sort((a, b) => rank(a, rates) - rank(b, rates));
  const lead = ranked.find(({ layout }) => layout.rejected === null);
  const best = distinctions(rankedOf(offered).map(({ layout }) => layout));
  return ranked.map((one) => {
    const { plan } = one;
    const layout = { ...one.layout, why: [...(best.get(one.layout.id) ?? []), one.layout.why].join(' ') };
    if (one !== lead) return layout;
    return { ...layout, workParts: openParts(context.site, layout, plan.outlets, plan.newEdges) };
  });
}

/** A layout without a valley has none that could be flat. */
const NO_VALLEY_IN_PER_FT = 1;

/** In what each of the offered layouts is the first of all. */
function distinctions(offered: readonly Layout[]): Map<string, string[]> {
  const out = new Map<string, string[]>();
  if (offered.length < 2) return out;
  const first = (value: (layout: Layout) => number, words: string): void => {
    const least = Math.min(...offered.map(value));
    const holders = offered.filter((layout) => value(layout) < least + 1e-6);
    if (holders.length === 1) out.set(holders[0].id, [...(out.get(holders[0].id) ?? []), words]);
  };
  first(({ volumeBoardFt, levellingBoardFt }) => volumeBoardFt + levellingBoardFt, 'The least board of all.');
  first(({ greatestThicknessIn }) => greatestThicknessIn, 'The thinnest at its thickest.');
  const dry = offered.some(({ leastValleySlopeInPerFt: valley }) => valley === null);
  first(
    ({ leastValleySlopeInPerFt }) => -(leastValleySlopeInPerFt ?? NO_VALLEY_IN_PER_FT),
    dry ? 'The only one without a valley.' : 'The steepest valleys.',
  );
  first(({ newOutlets }) => newOutlets, 'The fewest new ways out.');
  return out;
}
