import { inches } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import { pipeNames } from '../kind-names.ts';
import type { Limit } from '../layout/limits.ts';
import { relaxationOf } from '../layout/relax.ts';
import { carriesFlueGas } from '../roof.ts';
import type { RuleSet } from '../rule-set.ts';
import type { Site } from '../site/site.ts';
import { outletPoint } from '../site/site.ts';
import { finding } from './part-finding.ts';
import type { ExistingReport, Finding, Layout, PondReport, SearchReport } from './types.ts';
import { areaWords, depthWords } from './words.ts';

interface Context {
  site: Site;
  existing: ExistingReport;
  layouts: readonly Layout[];
  chosen: Layout | null;
  limits: readonly Limit[];
  ruleSet: RuleSet;
  search: SearchReport;
}

function waterFindings({ existing, ruleSet }: Context): Finding[] {
  const source = sourceNote(ruleSet.building.drainsWithin);
  const out: Finding[] = existing.ponds
    .filter(({ birdBath }) => !birdBath)
    .map((pond) =>
      finding({
        id: 'pond',
        level: 'fix',
        where: pond.where,
        message: `Water stands ${depthWords(pond.greatestDepthIn)} deep over ${areaWords(pond.areaSqFt)}: ${Math.round(pond.volumeGal)} gal, ${Math.round(pond.weightLb)} lb. ${dryingWords(pond)}A roof that ponds has lost the re-roof exception for slope.`,
        value: depthWords(pond.greatestDepthIn),
        limit: depthWords(ruleSet.birdBathIn),
        source,
      }),
    );
  if (existing.undrainedAreaSqFt > 1) {
    out.push(
      finding({
        id: 'undrained-flat',
        level: 'fix',
        where: 'the section',
        message: `${areaWords(existing.undrainedAreaSqFt)} lie level: water there has nowhere to run.`,
        source,
      }),
    );
  }
  if (existing.outlets.length === 0) {
    out.push(
      finding({
        id: 'no-outlet-known',
        level: 'stop',
        where: 'the section',
        message: 'No outlet and no open edge is known: find where the water leaves before anything is planned.',
      }),
    );
  }
  return out;
}

/** How much of a pond 48 h can dry, in the best and in the worst season. */
function dryingWords({ leftAfter48hIn, greatestDepthIn }: PondReport): string {
  if (leftAfter48hIn === undefined) return '';
  const [warm, cool] = leftAfter48hIn.map((leftIn) => (leftIn < 1e-3 ? 'none' : depthWords(leftIn)));
  const dries = `${(greatestDepthIn - leftAfter48hIn[1]).toFixed(2)} to ${(greatestDepthIn - leftAfter48hIn[0]).toFixed(2)} in`;
  return `In 48 h ${dries} of it can dry (cool and warm season, from memory): ${cool} or ${warm} is left. `;
}

/** Water at the level of the inlet is held by the outlet itself. */
const SAME_LEVEL_IN = 0.01;

/** An outlet that holds a pond back by its own height is the high point of its bay. */
function proudOutlets({ site, existing }: Context): Finding[] {
  return site.roof.outlets.flatMap((outlet) => {
    if (outlet.role !== 'primary' || !outlet.working) return [];
    const at = outletPoint(site.roof, outlet);
    const inlet = site.measured.at(at) + (outlet.inletIn ?? 0);
    const held = existing.ponds.find(
      ({ greatestDepthIn, areaSqFt, deepestAt }) =>
        greatestDepthIn > 0.25 &&
        areaSqFt > 10 &&
        Math.abs(site.measured.at(deepestAt) + greatestDepthIn - inlet) < SAME_LEVEL_IN,
    );
    if (held === undefined) return [];
    return [
      finding({
        id: 'outlet-proud',
        level: 'fix',
        where: `${outlet.kind} ${outlet.id}`,
        message: `${outlet.kind} ${outlet.id} stands ${depthWords(held.greatestDepthIn)} above the low spot of its area: an outlet is not a low point because it is an outlet. Lower it, or give the low spot one of its own.`,
        value: depthWords(held.greatestDepthIn),
        limit: 'the lowest spot of its area',
      }),
    ];
  });
}

function heightFindings({ limits, chosen }: Context): Finding[] {
  const tight = limits
    .filter(({ availableIn, hardness }) => availableIn !== null && availableIn < 0 && hardness === 'stop')
    .map((limit) =>
      finding({
        id: 'height-short',
        level: 'fix',
        where: limit.where,
        message: `${limit.where} is ${inches(-(limit.availableIn ?? 0))} short of ${inches(limit.clearIn)} of flashing before any board is laid.`,
        value: inches(limit.heightIn ?? 0),
        limit: inches(limit.clearIn),
        source: limit.source,
      }),
    );
  const unknown = limits
    .filter(({ heightIn }) => heightIn === null)
    .map(({ where }) =>
      finding({
        id: 'height-not-known',
        level: 'note',
        where,
        message: `The height of ${where} was not given: measure it before the boards are ordered.`,
      }),
    );
  const raise = (chosen?.budgets ?? [])
    .filter(({ id, leftIn }) => leftIn < 0 && limits.find((limit) => limit.id === id)?.hardness === 'raise')
    .map(({ id, where, leftIn }) => {
      const kind = limits.find((limit) => limit.id === id)?.kind;
      const who = kind === 'pipe' ? ' by a licensed trade' : '';
      return finding({
        id: `raise-${kind}`,
        level: 'fix',
        where,
        message: `Raise ${where} by ${inches(-leftIn)}${who}: the new roof comes up to it.`,
        value: inches(leftIn),
      });
    });
  return [...tight, ...raise, ...unknown];
}

function gasPipes({ site, chosen, limits }: Context): Finding[] {
  return site.roof.pipes.flatMap((pipe, i) => {
    if (!carriesFlueGas(pipe)) return [];
    const use = chosen?.budgets.find(({ id }) => id === `pipe-${i}`);
    const top = limits.find(({ id }) => id === `pipe-${i}`)?.heightIn ?? null;
    const buried = use !== undefined && top !== null && use.usedIn >= top;
    const where = `${pipeNames[pipe.kind]} ${i + 1}`;
    const message = buried
      ? `The new roof would bury the ${where}: a licensed trade raises it before the boards are laid.`
      : `Keep the listed clearance of the ${where} to foam and wood, and its height above the new roof: the listed height is not known here. A licensed trade looks at it before the boards are ordered, and changes it.`;
    return [finding({ id: buried ? 'flue-buried' : 'flue-clearance', level: buried ? 'stop' : 'fix', where, message })];
  });
}

function layoutFindings({ layouts, chosen, site, existing, search }: Context): Finding[] {
  const out: Finding[] = [];
  if (chosen === null && layouts.length > 0) {
    const least = relaxationOf(search, layouts);
    out.push(
      finding({
        id: 'nothing-fits',
        level: 'stop',
        where: least?.where ?? 'the section',
        message: `No layout fits the heights and the rules. ${least?.text ?? ''}`.trim(),
      }),
    );
  }
  if (chosen?.valleyGrade === 'slow') {
    out.push(
      finding({
        id: 'slow-valley',
        level: 'note',
        where: 'valleys',
        message:
          'The valleys fall between 1/16 and 1/8 in per ft: they drain slowly. It is said so that nobody is surprised.',
      }),
    );
  }
  if (chosen !== null && chosen.levellingBoardFt > 0 && !existing.edgeFirst) {
    out.push(
      finding({
        id: 'levelling',
        level: 'fix',
        where: 'the deck',
        message:
          `The deck is ${chosen.groundFill?.how === 'filled' ? 'filled' : 'levelled'} first with about ${Math.round(chosen.levellingBoardFt)} board feet of fill: laid as read, it would come through the taper. ${chosen.groundFill?.note ?? ''}`.trimEnd(),
      }),
    );
  }
  const undecided = site.edges.filter(
    ({ edge }) =>
      edge.mayDrain === 'unknown' &&
      edge.kind !== 'wall' &&
      edge.kind !== 'party-wall' &&
      edge.kind !== 'gutter' &&
      edge.kind !== 'drip',
  );
  if (undecided.length > 0) {
    out.push(
      finding({
        id: 'may-drain-unknown',
        level: 'note',
        where: undecided.map(({ label }) => label).join('; '),
        message: 'Whether these edges may drain was not said: a neighbour, a walk or a door below may forbid it.',
      }),
    );
  }
  return out;
}

/** Everything about this roof that somebody must act on, beside what the single parts say themselves. */
export function siteFindings(context: Context): Finding[] {
  return [
    ...waterFindings(context),
    ...proudOutlets(context),
    ...heightFindings(context),
    ...gasPipes(context),
    ...layoutFindings(context),
  ];
}
