import type { Layout } from '../types.ts';
import { firstSentence } from './covering.ts';
import type { Option } from './kitchen-cells.ts';
import { type KeptCall, keepsOldRoof, type Situation } from './situation.ts';
import { type OwnerStatement, say, standingOn, type Taker } from './statement.ts';

/** The two options of the kitchen table, and why these two. */

/** Which two are set side by side. */
export type KitchenChoice =
  | 'leave-or-new'
  | 'keep-or-new'
  | 'coat-or-new'
  | 'not-settled'
  | 'edge-or-boards'
  | 'wishes'
  | 'two-layouts'
  | 'two-coverings'
  | 'one'
  | 'barred'
  | 'nothing-fits';

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

const MENDED_THEN_COATED = 'What is broken and the seams are mended, then the old roof gets a new coat.';

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

/** Whether to mend it is still open: nothing rules a repair out, and something has to be found out first. */
const mayBeMended = ({ assessment: { scope }, call }: Situation): boolean =>
  call === 'open' && scope?.ways.some(({ id, standing }) => id === 'repair' && standing !== 'barred') === true;

/** The two that a person would choose between: keep or replace first, then two shapes of a new roof, then two coverings. */
export function optionsOf(situation: Situation, take: Taker): { choice: KitchenChoice; options: Option[] } {
  const { assessment, plan, call, barred } = situation;
  const layout = numberOfLayout(situation);
  // A new roof that may not be laid so is set beside nothing.
  const fresh = layout === null || barred ? [] : [boards(situation, take, layout)];
  if (plan === 'edge-first') {
    const edge = say`${take.quote('answer-layouts', 'What to do first', 'existing.edgeFirst')}`;
    return {
      choice: barred ? 'one' : 'edge-or-boards',
      options: [kept('Correct the edge, keep the roof', edge), ...fresh],
    };
  }
  if (plan === 'wishes-clash') {
    const relax = (assessment.moisture?.relax ?? []).slice(0, 2);
    const options = relax.map((_, i) =>
      kept(
        relax.length === 1 ? 'Give up this' : i === 0 ? 'Give up first' : 'Or give up',
        say`${take.quote('answer-damp', 'What to give up', `moisture.relax.${i}.text`)}`,
        say`The rest of what was asked for is kept.`,
      ),
    );
    return { choice: 'wishes', options };
  }
  if (keepsOldRoof(call) && layout !== null) {
    const answer = take.quote('answer-scope', 'What to do with the old roof', 'scope.answer');
    const { choice, title, does, why } = keptOptions[call];
    const done = call === 'coat' && assessment.scope?.mends ? MENDED_THEN_COATED : does;
    const mend = kept(title, standingOn(say`${done}`, answer), say`${why}`);
    return {
      choice: barred ? 'one' : choice,
      options: [{ ...mend, ...(call === 'coat' ? { coat: true } : {}) }, ...fresh],
    };
  }
  if (mayBeMended(situation) && (layout !== null || (plan === 'flat-boards' && !barred))) {
    const answer = take.quote('answer-scope', 'What to do with the old roof', 'scope.answer');
    const mend = kept(
      'Mend it',
      standingOn(say`What is found broken is mended.`, answer),
      say`The least work, if it turns out to be enough.`,
    );
    const instead = layout === null ? coveringsSideBySide(situation, take).slice(0, 1) : fresh;
    return { choice: 'not-settled', options: [mend, ...instead] };
  }
  if (barred) return { choice: 'barred', options: [] };
  if (layout === null && plan !== 'flat-boards') return { choice: 'nothing-fits', options: [] };
  const two = layout === null ? [] : layoutsSideBySide(situation, take, layout);
  if (two.length === 2) return { choice: 'two-layouts', options: two };
  const coverings = coveringsSideBySide(situation, take);
  if (coverings.length === 2) return { choice: 'two-coverings', options: coverings };
  return { choice: 'one', options: fresh };
}
