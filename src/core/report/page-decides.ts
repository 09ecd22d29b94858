import { inches } from '../../units/print.ts';
import { slopeFigure } from './page-figures.ts';
import type { Assessment, Assumption, Finding, RuleStanding } from './types.ts';
import { measuredSlope, sentence } from './words.ts';

/** What decides the answer, in at most two facts, and the cheapest look that could change it. */
export interface Decides {
  facts: readonly string[];
  look: string;
  /** What was taken for now about the surface where nobody looked, and how to find out. */
  takenForNow: string | null;
}

/** The tightest rule on the old slope under the job's own building code. */
function ownStanding({ existing, ruleSet }: Assessment): RuleStanding | null {
  return existing.ruleStandings?.find(({ id, stage }) => id === ruleSet.building.id && stage !== 'design') ?? null;
}

function slopeFact(assessment: Assessment): string | null {
  const { leastFaceSlopeInPerFt: least, verdict } = assessment.existing;
  const standing = ownStanding(assessment);
  if (least === null || standing === null || verdict === 'meets-minimum') return null;
  if (standing.passes)
    return `The flattest plane has the ${slopeFigure(standing.limitInPerFt)} of ${standing.title}: slope is not what is missing.`;
  const falls = measuredSlope(assessment.existing, (slope) => (slope < 5e-3 ? 'nowhere' : slopeFigure(slope)));
  return `The flattest plane falls ${falls}; ${standing.title} asks for ${slopeFigure(standing.limitInPerFt)}.`;
}

/** What stands in the way of every layout, or leaves the chosen one least. */
function heightFact({ layouts, chosenLayout, budgets }: Assessment): string | null {
  const chosen = layouts.find(({ id }) => id === chosenLayout);
  if (chosen === undefined) {
    const first = layouts.find(({ rejected }) => rejected !== null)?.rejected;
    return first == null ? null : sentence(`No layout fits: ${first.why}`);
  }
  const hard = new Set(budgets.filter(({ hardness }) => hardness === 'stop').map(({ id }) => id));
  const tightest = chosen.budgets.filter(({ id }) => hard.has(id)).sort((a, b) => a.leftIn - b.leftIn)[0];
  if (tightest === undefined) return null;
  return `The new roof leaves ${inches(Math.max(0, tightest.leftIn))} at its tightest height, ${tightest.where}.`;
}

const stopFact = (findings: readonly Finding[]): string | null =>
  findings
    .find(({ level }) => level === 'stop')
    ?.message.split(/(?<=[.:]) /)[0]
    .replace(/:$/, '.') ?? null;

/** What was taken for now about the surface itself: that alone can turn the verdict. */
const openQuestion = (assumed: readonly Assumption[]): Assumption | null =>
  assumed.find(({ path, findOut }) => findOut !== null && /^(existing|removedIn)/.test(path)) ?? null;

const LOOK_AGAIN =
  'Look again 48 h after the next rain, with the ways out clear: if it is dry then, the slope alone is judged.';
const LOOK_FIRST = 'Look 48 h after a rain: water that stands then outranks every slope.';

function cheapestLook({ verdict, decidedBy, passes48h, ponds }: Assessment['existing']): string {
  if (decidedBy !== null) return decidedBy;
  if (verdict !== 'ponds') return LOOK_FIRST;
  if (passes48h === false) return LOOK_AGAIN;
  const worst = ponds.find(({ birdBath }) => !birdBath);
  const where = worst === undefined ? 'the low spot' : `the low spot (${worst.where})`;
  return `Look 48 h after a rain, with the ways out clear. If it is dry, read ${where} and the way out again: a reading is wrong.`;
}

/** The block under the verdict: why it is so, and what would turn it. */
export function whatDecides(assessment: Assessment): Decides {
  const { existing, findings, assumed } = assessment;
  const slope = existing.verdict === 'undecided' ? null : slopeFact(assessment);
  const second = slope ?? heightFact(assessment) ?? stopFact(findings);
  const open = openQuestion(assumed);
  return {
    facts: [existing.why, second].filter((fact) => fact !== null),
    look: cheapestLook(existing),
    takenForNow:
      open?.findOut == null
        ? null
        : `${sentence(`${open.value}: ${open.because}`)} To find out: ${sentence(open.findOut)}`,
  };
}
