import { firstSentence } from './owner/covering.ts';
import { type KitchenRow, type Option, rowsOf } from './owner/kitchen-rows.ts';
import { plannedStatements } from './owner/planned.ts';
import { type KeptCall, keepsOldRoof, type Situation, situationOf } from './owner/situation.ts';
import { type OwnerStatement, say, standingOn, type Taker, takerOf } from './owner/statement.ts';
import { wishStatements } from './owner/wishes.ts';
import { woodStatements } from './owner/work.ts';
import type { Assessment, Layout } from './types.ts';

/** Two options side by side, as two people would weigh them at a table. */

/** Which two are set side by side. */
export type KitchenChoice =
  | 'leave-or-new'
  | 'keep-or-new'
  | 'coat-or-new'
  | 'edge-or-boards'
  | 'wishes'
  | 'two-layouts'
  | 'two-coverings'
  | 'one'
  | 'nothing-fits';

export interface KitchenTable {
  choice: KitchenChoice;
  /** Why these two. */
  lead: OwnerStatement;
  options: readonly string[];
  /** Numbers of the layouts that the options build; null = none. */
  layouts: readonly (number | null)[];
  rows: readonly KitchenRow[];
  /** What work the figures stand for. */
  planned: readonly OwnerStatement[];
  /** What was asked for, and what the plan makes of it. */
  wishes: readonly OwnerStatement[];
  wood: readonly OwnerStatement[];
}

/** A step in thickness that can be seen from the yard. */
const SEEN_IN = 1;

const lookAlike = (a: Layout, b: Layout): boolean =>
  a.newOutlets === b.newOutlets &&
  a.valleyGrade === b.valleyGrade &&
  Math.abs(a.greatestThicknessIn - b.greatestThicknessIn) < SEEN_IN;

const indexOrNull = (index: number): number | null => (index < 0 ? null : index);

const numberOfLayout = ({ assessment, layout }: Situation): number | null =>
  layout === null ? null : indexOrNull(assessment.layouts.indexOf(layout));

const firstCovering = ({ assessment }: Situation): number | null =>
  indexOrNull(assessment.membranes.findIndex(({ id }) => id === assessment.chosenMembrane));

/** The covering that comes next, of those that are not ruled out. */
function nextCovering({ assessment }: Situation): number | null {
  const scored = assessment.membranes.flatMap(({ id, score, veto }, i) =>
    score === null || veto !== null || id === assessment.chosenMembrane ? [] : [{ i, score }],
  );
  return scored.sort((a, b) => b.score - a.score)[0]?.i ?? null;
}

function boards(situation: Situation, take: Taker, layout: number, title = 'New roof on sloped boards'): Option {
  const path = `layouts.${layout}`;
  return {
    title,
    does: say`${take.quote('answer-layouts', 'The layout', `${path}.title`)}.`,
    why: say`${take.quote('answer-layouts', 'Why one would choose it', `${path}.why`)}`,
    layout,
    covering: firstCovering(situation),
  };
}

const kept = (title: string, does: OwnerStatement, why = say`The least work.`): Option => ({
  title,
  does,
  why,
  layout: null,
  covering: null,
});

const keptOptions: Readonly<Record<KeptCall, { choice: KitchenChoice; title: string; does: string; why: string }>> = {
  upkeep: {
    choice: 'leave-or-new',
    title: 'Leave it as it is',
    does: 'Nothing is done but upkeep.',
    why: 'Nothing is broken.',
  },
  repair: { choice: 'keep-or-new', title: 'Mend it', does: 'What is broken is mended.', why: 'The least work.' },
  coat: {
    choice: 'coat-or-new',
    title: 'Coat it',
    does: 'Seams are mended, then the old roof gets a new coat.',
    why: 'It shields the worn surface again. No roof comes off.',
  },
};

function layoutsSideBySide(situation: Situation, take: Taker, first: number): Option[] {
  const { layouts } = situation.assessment;
  const others = layouts.flatMap((other, i) =>
    i === first || other.rejected !== null || lookAlike(layouts[first], other) ? [] : [i],
  );
  // Another way out for the water is a choice that everybody sees; a steeper board is not.
  const second = others.find((i) => layouts[i].newOutlets !== layouts[first].newOutlets) ?? others[0];
  return [first, ...(second === undefined ? [] : [second])].map((i, k) =>
    boards(situation, take, i, k === 0 ? 'First choice' : 'The other way'),
  );
}

function coveringsSideBySide(situation: Situation, take: Taker): Option[] {
  const layout = numberOfLayout(situation);
  return [firstCovering(situation), nextCovering(situation)].flatMap((covering, k) =>
    covering === null
      ? []
      : [
          {
            title: k === 0 ? 'First choice' : 'The other covering',
            does: say`New roof, covered with ${take.quote('answer-covering', 'Covering', `membranes.${covering}.name`)}.`,
            why: say`${take.quote('answer-covering', 'What it is', `membranes.${covering}.plain`, firstSentence)}`,
            layout,
            covering,
          },
        ],
  );
}

/** The two that a person would choose between: keep or replace first, then two shapes of a new roof, then two coverings. */
function optionsOf(situation: Situation, take: Taker): { choice: KitchenChoice; options: Option[] } {
  const { assessment, plan, call } = situation;
  const layout = numberOfLayout(situation);
  const fresh = layout === null ? [] : [boards(situation, take, layout)];
  if (plan === 'edge-first') {
    const edge = say`${take.quote('answer-layouts', 'What to do first', 'existing.edgeFirst')}`;
    return { choice: 'edge-or-boards', options: [kept('Correct the edge, keep the roof', edge), ...fresh] };
  }
  if (plan === 'wishes-clash') {
    const options = (assessment.moisture?.relax ?? [])
      .slice(0, 2)
      .map((_, i) =>
        kept(
          i === 0 ? 'Give up first' : 'Or give up',
          say`${take.quote('answer-damp', 'What to give up', `moisture.relax.${i}.text`)}`,
          say`The rest of what was asked for is kept.`,
        ),
      );
    return { choice: 'wishes', options };
  }
  if (keepsOldRoof(call) && layout !== null) {
    const answer = take.quote('answer-scope', 'What to do with the old roof', 'scope.answer');
    const { choice, title, does, why } = keptOptions[call];
    return {
      choice,
      options: [kept(title, standingOn(say`${does}`, answer), say`${why}`), ...fresh],
    };
  }
  if (layout === null && plan !== 'flat-boards') return { choice: 'nothing-fits', options: [] };
  const two = layout === null ? [] : layoutsSideBySide(situation, take, layout);
  if (two.length === 2) return { choice: 'two-layouts', options: two };
  const coverings = coveringsSideBySide(situation, take);
  if (coverings.length === 2) return { choice: 'two-coverings', options: coverings };
  return { choice: 'one', options: fresh };
}

const leads: Readonly<Record<KitchenChoice, string>> = {
  'leave-or-new': 'Nothing that was found asks for work. A new roof is set beside that to compare.',
  'keep-or-new': 'The choice is between mending what is there and a new roof.',
  'coat-or-new': 'The choice is between a new coat on what is there and a new roof.',
  'edge-or-boards': 'The choice is between the edge alone and a new roof on sloped boards.',
  wishes: 'What was asked for cannot all be kept. The choice is what to give up.',
  'two-layouts': 'Both ways drain by our figures. They differ in what is seen and in what it takes.',
  'two-coverings': 'The slope is the same in both. The choice is the covering.',
  one: 'Only one way is left here, so there is nothing to set beside it.',
  'nothing-fits': 'No plan fits yet, so there is nothing to price. See the owner’s page for what stands in the way.',
};

export function kitchenTable(assessment: Assessment): KitchenTable {
  const situation = situationOf(assessment);
  const take = takerOf(assessment);
  const { choice, options } = optionsOf(situation, take);
  return {
    choice,
    lead: standingOn(say`${leads[choice]}`, take.quote('answer-layouts', 'The answer', 'headline')),
    options: options.map(({ title }) => title),
    layouts: options.map(({ layout }) => layout),
    rows: options.length === 0 ? [] : rowsOf(situation, take, choice !== 'wishes', options),
    planned: choice === 'edge-or-boards' || choice === 'wishes' ? [] : plannedStatements(situation),
    wishes: wishStatements(situation),
    wood: woodStatements(situation),
  };
}

/** Every statement of the page, in its order. */
export const kitchenStatements = ({ lead, planned, wishes, rows, wood }: KitchenTable): OwnerStatement[] => [
  lead,
  ...planned,
  ...wishes,
  ...rows.flatMap(({ cells }) => cells.filter((cell) => cell !== null)),
  ...wood,
];
