import { intakeRule, oneExhaust, type ReducedVentRule } from '../../../reference/attic-vents.ts';
import { ventedOrNot } from '../../../reference/vapor.ts';
import { atLeast, atMost } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { MoistureReport, VentReport } from '../report/types.ts';
import type { Below } from '../roof.ts';
import { areaOf, nameOf, notCountedOf, type Vent } from './pieces.ts';
import { type Areas, SAME, splitFor } from './rules.ts';

type Warnings = VentReport['warnings'];

const namesOf = (vents: readonly Vent[]): string[] => [...new Set(vents.map(({ kind }) => nameOf(kind)))];
const theEach = (names: readonly string[]): string => names.map((name) => `the ${name}`).join(' and ');

/** Outlets to close, by name. */
export const toCloseOf = (vents: readonly Vent[]): string[] => namesOf(vents.filter(({ stays }) => !stays));

export function warningsOf(vents: readonly Vent[]): Warnings {
  const outlets = namesOf(vents.filter(({ outlet }) => outlet));
  const kept = vents.filter(({ stays }) => stays);
  const [outSqIn, inSqIn] = [areaOf(kept.filter(({ outlet }) => outlet)), areaOf(kept.filter(({ outlet }) => !outlet))];
  const closed = toCloseOf(vents);
  const left = closed.length === 0 ? '' : ` with ${theEach(closed)} closed`;
  return [
    ...(closed.length === 0
      ? []
      : [
          {
            text: `${outlets.length === 2 ? 'Two' : 'Several'} kinds of outlet in one attic (${outlets.join(', ')}): air takes the shortest way from one to the other, the eaves stand idle, and rain or snow can be drawn in. Keep ${theEach(outlets.filter((name) => !closed.includes(name)))} and close ${theEach(closed)}.`,
            source: sourceNote(oneExhaust),
          },
        ]),
    ...(outSqIn > inSqIn + SAME && notCountedOf(kept.filter(({ outlet }) => !outlet)).length === 0
      ? [
          {
            text: `More air can leave${left} (${atMost(outSqIn)} sq in) than comes in at the eaves (${atMost(inSqIn)} sq in): the rest is drawn from the house. Add eave vents.`,
            source: sourceNote(intakeRule),
          },
        ]
      : []),
    ...(kept.some(({ kind }) => kind === 'power-fan')
      ? [
          {
            text: 'A powered fan needs eave vents of its own and can draw flue gas and room air into the attic.',
            source: sourceNote(oneExhaust),
          },
        ]
      : []),
  ];
}

/** What to add to reach 1/150: at the eaves at least so much that no less comes in than leaves. */
function usualWords(missing: number, { highSqIn, eaveSqIn, betweenSqIn }: Areas): string {
  const out = highSqIn + betweenSqIn;
  const add = Math.max(missing, out - eaveSqIn);
  const atEaves = Math.max(0, (out + add - eaveSqIn) / 2);
  const where = atEaves >= add - SAME ? 'at the eaves' : `at least ${atLeast(atEaves)} of it at the eaves`;
  return `Add ${atLeast(add)} sq in of net free area, ${where}, to reach 1/150.`;
}

/** What to add for 1/300. */
function reducedWords(need: number, rule: ReducedVentRule, areas: Areas, retarder: string): string {
  const split = splitFor(need, rule, areas);
  const adds = [
    [split.highSqIn - areas.highSqIn, 'high'],
    [split.eaveSqIn - areas.eaveSqIn, 'at the eaves'],
  ] as const;
  const parts = adds.flatMap(([sqIn, where]) => (sqIn > SAME ? [`${atLeast(sqIn)} sq in ${where}`] : []));
  const all = `${atLeast(split.highSqIn)} sq in high and ${atLeast(split.eaveSqIn)} at the eaves`;
  const gable =
    areas.betweenSqIn > 0
      ? ' Vents between, as in a gable, do not count for it, and close once there are high ones.'
      : '';
  const what = parts.length === 0 ? `the vents are enough (${all})` : `add ${parts.join(' and ')}, which makes ${all}`;
  return `Or by the 1/300 rule: ${what}.${retarder}${gable}`;
}

const retarderWords: Readonly<Record<VentReport['conditions'][number]['state'], string>> = {
  met: '',
  'not-known': ' It also hangs on the vapor retarder of the ceiling, which is not known.',
  'not-met': ' It takes the vapor retarder of the ceiling as well, which is not there.',
};

export interface TodoInput {
  verdict: VentReport['verdict'];
  rule: ReducedVentRule;
  usualSqIn: number | null;
  reducedSqIn: number | null;
  areas: Areas;
  conditions: VentReport['conditions'];
  toClose: readonly string[];
  notCounted: readonly string[];
}

/** What to do, in order; every figure counts what is left once the outlets to close are closed. */
export function todoOf(input: TodoInput): string[] {
  const { verdict, rule, usualSqIn, reducedSqIn, areas, conditions, toClose, notCounted } = input;
  const close = toClose.length === 0 ? [] : [`Close ${theEach(toClose)}.`];
  const count = notCounted.length === 0 ? [] : [`Count or measure ${theEach(notCounted)}.`];
  if (usualSqIn === null || reducedSqIn === null)
    return [...close, ...count, 'Measure the attic floor: length by width, level.'];
  if (verdict !== 'short') return [...close, ...(verdict === 'not-known' ? count : [])];
  const missing = usualSqIn - areas.highSqIn - areas.eaveSqIn - areas.betweenSqIn;
  const retarder = retarderWords[conditions[1].state];
  return [...close, usualWords(missing, areas), reducedWords(reducedSqIn, rule, areas, retarder)];
}

export interface AnswerInput {
  verdict: VentReport['verdict'];
  thereSqIn: number;
  countedSqIn: number;
  usualSqIn: number | null;
  reducedSqIn: number | null;
  toClose: readonly string[];
  notCounted: readonly string[];
}

export function answerOf({
  verdict,
  thereSqIn,
  countedSqIn,
  usualSqIn,
  reducedSqIn,
  toClose,
  notCounted,
}: AnswerInput): string {
  if (usualSqIn === null || reducedSqIn === null)
    return 'The floor area of the attic beside the section is not known, so its vents cannot be judged.';
  const closing = toClose.length > 0;
  const attic = closing ? `With ${theEach(toClose)} closed, the attic beside it` : 'The attic beside it';
  const today = closing ? ` Today ${atMost(thereSqIn)} are there, of outlets that work against each other.` : '';
  const besides = notCounted.length === 0 ? '' : ` (${theEach(notCounted)} not counted)`;
  const has = `${atMost(countedSqIn)} sq in of net free vent area${besides}`;
  switch (verdict) {
    case 'enough':
      return `${attic} has enough vents: ${has}, ${atLeast(usualSqIn)} needed by the 1/150 rule.${today}`;
    case 'enough-by-exception':
      return `${attic} has enough vents by the 1/300 rule: ${has}, ${atLeast(reducedSqIn)} needed.${today}`;
    case 'short':
      return `${attic} has too few vents: ${has}, ${atLeast(usualSqIn)} needed (${atLeast(reducedSqIn)} where both conditions of the 1/300 rule hold).${today}`;
    default:
      return `Whether ${has} is enough for the attic beside it hangs on what is not known yet; by the 1/150 rule ${atLeast(usualSqIn)} is needed.${today}`;
  }
}

/** The flat part beside the attic. */
export interface FlatPart {
  below: Below;
  kind: MoistureReport['below']['kind'];
}

const JOINT =
  'Block and air-seal the line where the two roofs meet. Where the flat roof cuts off the eave of the steep roof, its intake must come from that line, or the steep part stays unvented by its own rule.';

function flatWords({ below, kind }: FlatPart): string {
  if (below === 'attic')
    return 'An attic lies under the flat part too. Where it is one space with this one, measure both floors together and count the vents of both; where it is not, it needs vents of its own.';
  if (below === 'unheated' || below === 'outdoors')
    return `Nobody heats the space under the flat part: nothing of it has to be vented into this attic. ${JOINT}`;
  if (below === 'living-exposed-deck' || kind === 'none')
    return `The flat part is not vented, neither to the outside nor into this attic: its insulation lies above the deck, and over so little height air does not move by itself. ${JOINT}`;
  if (kind === 'closed-cell' || kind === 'open-cell')
    return `The flat part is not vented, neither to the outside nor into this attic: the foam lies against its deck, and there is nothing to vent. ${JOINT}`;
  const what = kind === 'batts' ? 'the batts under its deck' : 'what lies under its deck';
  return `The flat part is not vented into this attic: over so little height air does not move by itself. What becomes of ${what} and of vents of its own is said under damp inside the roof. ${JOINT}`;
}

export const flatPartOf = (flat: FlatPart): VentReport['flatPart'] => ({
  text: flatWords(flat),
  source: sourceNote(ventedOrNot),
});
