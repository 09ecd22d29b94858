import { coveringStatements, sameAgainStatements } from './owner/covering.ts';
import { changeStatements, edgeStatements } from './owner/edges.ts';
import { dampStatements, heatStatements } from './owner/heat.ts';
import { insulationStatements } from './owner/insulation.ts';
import { numbersLead, type OwnerNumber, ownerNumbers } from './owner/numbers.ts';
import { scopeStatements } from './owner/old-roof.ts';
import { type OpenThing, openThings } from './owner/open.ts';
import { planStatements } from './owner/plan.ts';
import { groundShown, plannedStatements } from './owner/planned.ts';
import { isPlanned, keepsOldRoof, type Situation, situationOf } from './owner/situation.ts';
import { type AnswerPlace, answerPlaces, type Because, type OwnerStatement, say, takerOf } from './owner/statement.ts';
import { stopStatements } from './owner/stops.ts';
import { todayStatements } from './owner/today.ts';
import { wishStatements } from './owner/wishes.ts';
import { woodStatements, woodTitle } from './owner/wood.ts';
import { extraStatements, workStatements } from './owner/work.ts';
import type { Assessment } from './types.ts';

/** The owner's page as statements; every one brings the computed values that it stands on. */

export type OwnerSectionId =
  | 'today'
  | 'scope'
  | 'wishes'
  | 'plan'
  | 'covering'
  | 'same-again'
  | 'heat'
  | 'insulation'
  | 'damp'
  | 'changes'
  | 'edges'
  | 'wood'
  | 'work'
  | 'extra';

export interface OwnerSection {
  id: OwnerSectionId;
  title: string;
  statements: readonly OwnerStatement[];
}

/** One finding of the inspection for the owner, with the ids of its photos. */
export interface OwnerFinding {
  number: number;
  title: string;
  statement: OwnerStatement;
  photos: readonly string[];
}

export interface OwnerPageModel {
  /** What people must know before anything else; empty where nothing stops the job. */
  stops: readonly OwnerStatement[];
  /** What is wrong, first. */
  today: OwnerSection;
  numbers: readonly OwnerNumber[];
  /** What the numbers stand for, where no new roof is planned. */
  numbersLead: OwnerStatement | null;
  sections: readonly OwnerSection[];
  findings: readonly OwnerFinding[];
  open: readonly OpenThing[];
  /** What is taken for now and has no line of its own. */
  more: OwnerStatement | null;
  /** Whether the old roof stays, mended or coated. */
  kept: boolean;
  /** When the ground of the new roof is seen: "When the old roof is off". */
  shownWhen: string;
  /** Whether the drawing of a new roof shows what is planned. */
  planned: boolean;
  /** What the second drawing shows, for the line under the two. */
  drawn: string;
}

const planTitle = (situation: Situation): string => {
  const { plan, call } = situation;
  if (keepsOldRoof(call)) return 'If it gets a new roof one day';
  if (plan === 'edge-first' || plan === 'wishes-clash') return 'What comes first';
  if (plan === 'none') return 'A new roof';
  return isPlanned(situation) ? 'What we plan' : 'What a new roof would be';
};

const changesTitle = (situation: Situation): string => {
  if (situation.plan !== 'taper') return 'Room at doors and walls';
  return isPlanned(situation) ? 'What changes at doors and walls' : 'What a new roof would change at doors and walls';
};

const edgesTitle = (situation: Situation): string =>
  isPlanned(situation) ? 'How the edge looks from the yard' : 'How a new edge would look from the yard';

const findingsOf = (assessment: Assessment): OwnerFinding[] =>
  (assessment.inspection ?? []).map(({ number, title, photos }, i) => {
    const take = takerOf(assessment);
    const what = take.quote('answer-found', 'Finding', `inspection.${i}.title`);
    const where = take.quote('answer-found', 'Where', `inspection.${i}.where`, (text) =>
      text.replace(/ from corner \d+$/, ''),
    );
    const tells = take.quote('answer-found', 'What it tells', `inspection.${i}.tells`);
    return { number, title, photos, statement: say`${what}, ${where}. ${tells}` };
  });

function drawnWords(situation: Situation): string {
  if (situation.assessment.layouts.length === 0) return '';
  if (situation.layout === null) return 'The second is a try that does not fit.';
  return isPlanned(situation) ? 'The second is the new roof.' : 'The second is what a new roof would be.';
}

export function ownerPage(assessment: Assessment): OwnerPageModel {
  const situation = situationOf(assessment);
  const { things, more } = openThings(situation);
  const all: readonly OwnerSection[] = [
    { id: 'scope', title: 'What should be done', statements: scopeStatements(situation) },
    { id: 'wishes', title: 'What you asked for', statements: wishStatements(situation) },
    {
      id: 'plan',
      title: planTitle(situation),
      statements: [...plannedStatements(situation), ...planStatements(situation)],
    },
    { id: 'covering', title: 'Why this covering', statements: coveringStatements(situation) },
    { id: 'same-again', title: 'And not the old one again?', statements: sameAgainStatements(situation) },
    { id: 'heat', title: 'Heat and cold', statements: heatStatements(situation) },
    { id: 'insulation', title: 'How well it holds heat', statements: insulationStatements(situation) },
    { id: 'damp', title: 'Damp inside the roof', statements: dampStatements(situation) },
    { id: 'changes', title: changesTitle(situation), statements: changeStatements(situation) },
    { id: 'edges', title: edgesTitle(situation), statements: edgeStatements(situation) },
    { id: 'wood', title: woodTitle(situation), statements: woodStatements(situation) },
    { id: 'work', title: 'While the work goes on', statements: workStatements(situation) },
    { id: 'extra', title: 'What may cost extra', statements: extraStatements(situation) },
  ];
  return {
    stops: stopStatements(situation),
    today: { id: 'today', title: 'What is wrong today', statements: todayStatements(situation) },
    numbers: ownerNumbers(situation),
    numbersLead: numbersLead(situation),
    sections: all.filter(({ statements }) => statements.length > 0),
    findings: findingsOf(assessment),
    open: things,
    more,
    kept: keepsOldRoof(situation.call),
    shownWhen: groundShown(situation),
    planned: isPlanned(situation),
    drawn: drawnWords(situation),
  };
}

/** Every statement of the page that stands on values, in the order of the page. */
export const statementsOf = ({
  stops,
  today,
  numbers,
  numbersLead: lead,
  sections,
  findings,
  open,
  more,
}: OwnerPageModel): OwnerStatement[] => [
  ...stops,
  ...today.statements,
  ...(lead === null ? [] : [lead]),
  ...numbers.flatMap((row) => [row.today, ...(row.next === null ? [] : [row.next])]),
  ...findings.map(({ statement }) => statement),
  ...sections.flatMap(({ statements }) => statements),
  ...open.map(({ what }) => what),
  ...(more === null ? [] : [more]),
];

/** One value behind a statement, and the place of the answer page where it is told in full. */
export interface OriginValue {
  label: string;
  value: string;
  place: AnswerPlace;
  placeTitle: string;
}

export interface OriginLine {
  number: number;
  values: readonly OriginValue[];
}

/** How a value came out of several: " (greatest of 3)". */
const howMany = ({ how, paths }: Because): string =>
  how === 'is' || how === 'count' || paths.length < 2 ? '' : ` (${how} of ${paths.length})`;

const originValue = (because: Because): OriginValue => ({
  label: because.label,
  value: `${because.shown}${howMany(because)}`,
  place: because.place,
  placeTitle: answerPlaces[because.place],
});

const keyOf = ({ because }: OwnerStatement): string =>
  because.map(({ place, how, paths, shown }) => `${place} ${how} ${paths.join()} ${shown}`).join(';');

/** "Where the figures come from": one numbered line for each statement that stands on values. */
export class OriginBook {
  readonly #numbers = new Map<string, number>();
  readonly #lines: OriginLine[] = [];

  /** @param statements everything that a page says, in its order */
  constructor(statements: readonly OwnerStatement[]) {
    for (const statement of statements) {
      const key = keyOf(statement);
      if (key === '' || this.#numbers.has(key)) continue;
      const number = this.#lines.length + 1;
      this.#lines.push({ number, values: statement.because.map(originValue) });
      this.#numbers.set(key, number);
    }
  }

  /** Number of a statement's line; null = it stands on no value, or the page was not told of it. */
  numberOf = (statement: OwnerStatement): number | null => this.#numbers.get(keyOf(statement)) ?? null;

  lines = (): readonly OriginLine[] => this.#lines;
}
