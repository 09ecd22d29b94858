import { inches, plainNumber } from '../../units/print.ts';
import { firstSentence } from './owner/covering.ts';
import { dampCell, standInTown } from './owner/heat.ts';
import { energyCell, rFigure } from './owner/insulation.ts';
import { keepsOldRoof, type Situation, situationOf } from './owner/situation.ts';
import { alsoSaying, noun, type OwnerStatement, say, standingOn, type Taker, takerOf } from './owner/statement.ts';
import { fallWords } from './owner/today.ts';
import { wishStatements } from './owner/wishes.ts';
import { woodStatements } from './owner/work.ts';
import { boardFeet } from './page-figures.ts';
import { degreesF } from './page-heat.ts';
import type { Assessment, Layout } from './types.ts';

/** Two options side by side, as two people would weigh them at a table. */

/** Which two are set side by side. */
export type KitchenChoice =
  | 'keep-or-new'
  | 'edge-or-boards'
  | 'wishes'
  | 'two-layouts'
  | 'two-coverings'
  | 'one'
  | 'nothing-fits';

export interface KitchenRow {
  id: string;
  head: string;
  /** One cell for each option; null = a line to fill in. */
  cells: readonly (OwnerStatement | null)[];
}

export interface KitchenTable {
  choice: KitchenChoice;
  /** Why these two. */
  lead: OwnerStatement;
  options: readonly string[];
  /** Numbers of the layouts that the options build; null = none. */
  layouts: readonly (number | null)[];
  rows: readonly KitchenRow[];
  /** What was asked for, and what the plan makes of it. */
  wishes: readonly OwnerStatement[];
  wood: readonly OwnerStatement[];
}

interface Option {
  title: string;
  does: OwnerStatement;
  /** Why somebody would choose it. */
  why: OwnerStatement;
  /** Number of the layout that is built; null = none. */
  layout: number | null;
  /** Number of the covering; null = the old one stays, or none can be named. */
  covering: number | null;
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
    const does = call === 'repair' ? say`What is broken is mended.` : say`The old roof is mended and coated.`;
    return {
      choice: 'keep-or-new',
      options: [kept(call === 'repair' ? 'Mend it' : 'Coat it', standingOn(does, answer)), ...fresh],
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
  'keep-or-new': 'The choice is between mending what is there and a new roof.',
  'edge-or-boards': 'The choice is between the edge alone and a new roof on sloped boards.',
  wishes: 'What was asked for cannot all be kept. The choice is what to give up.',
  'two-layouts': 'Both ways drain by our figures. They differ in what is seen and in what it takes.',
  'two-coverings': 'The slope is the same in both. The choice is the covering.',
  one: 'Only one way is left here, so there is nothing to set beside it.',
  'nothing-fits': 'No plan fits yet, so there is nothing to price. See the owner’s page for what stands in the way.',
};

const wayCount = (value: number): string => (value === 0 ? 'none' : plainNumber(value));

const unchanged = say`as it is`;
const notWorkedOut = say`not worked out`;

function lookCell(layout: Layout, path: string, take: Taker): OwnerStatement {
  const faces = layout.newHeights?.faces ?? [];
  if (faces.length === 0) return say`no open edge with new metal`;
  const paths = (key: string): string[] => faces.map((_, i) => `${path}.newHeights.faces.${i}.${key}`);
  const low = take.figure('answer-heights', 'Lowest metal face', 'least', paths('lowIn'), inches);
  const high = take.figure('answer-heights', 'Highest metal face', 'greatest', paths('highIn'), inches);
  return low.shown === high.shown ? say`metal face ${high} high` : say`metal face from ${low} to ${high} high`;
}

/** Boards, and the boards that level the deck under them. */
function foamCell({ levellingBoardFt }: Layout, path: string, take: Taker): OwnerStatement {
  const of = (label: string, how: 'is' | 'sum', ...keys: readonly string[]) =>
    take.figure(
      'answer-layouts',
      label,
      how,
      keys.map((key) => `${path}.${key}`),
      boardFeet,
    );
  const boards = of('Boards of the slope', 'is', 'volumeBoardFt');
  if (levellingBoardFt < 0.5) return say`${boards}`;
  const all = of('Foam in all', 'sum', 'volumeBoardFt', 'levellingBoardFt');
  return say`${all}: ${boards} for the slope, and ${of('Levelling', 'is', 'levellingBoardFt')} to level the deck first`;
}

function raisedCell(layout: Layout, path: string, take: Taker): OwnerStatement {
  const raised = (layout.newHeights?.raised ?? []).flatMap(({ raiseIn }, i) =>
    raiseIn !== null && raiseIn > 1 / 32 ? [`${path}.newHeights.raised.${i}.raiseIn`] : [],
  );
  const count = take.count('answer-heights', 'Curbs and pipes made higher', raised);
  return raised.length === 0 ? say`nothing` : say`${count} ${noun(count, 'curb or pipe', 'curbs and pipes')}`;
}

function sunCell({ assessment, layout: chosen }: Situation, take: Taker, { layout, covering }: Option): OwnerStatement {
  const { heat } = assessment;
  const figure = (label: string, path: string) => take.figure('answer-heat', label, 'is', [path], degreesF);
  if (heat === undefined) return say`not worked out`;
  if (covering === null) return say`about ${figure('Old surface at its hottest', 'heat.figures.peakSurfaceOldF')}`;
  const own = chosen !== null && layout !== null && assessment.layouts[layout] === chosen;
  const option = heat.options.findIndex(({ membrane }) => membrane === assessment.membranes[covering].id);
  if (!own || option < 0) return say`not worked out for this one`;
  return say`about ${figure('New surface at its hottest', `heat.options.${option}.peakSurfaceF`)}`;
}

/** What was worked out for the offered new roof alone. */
function ofNewRoof({ assessment, layout, plan }: Situation, option: Option, cell: OwnerStatement): OwnerStatement {
  if (option.covering === null && option.layout === null) return notWorkedOut;
  const own = option.layout === null ? plan === 'flat-boards' : assessment.layouts[option.layout] === layout;
  return own ? cell : say`not worked out for this one`;
}

/** What differs in the roof itself; empty where the options are about something else. */
function roofRows(situation: Situation, take: Taker, of: RowMaker): KitchenRow[] {
  const { layouts } = situation.assessment;
  const figure = (label: string, path: string, print: (value: number) => string) =>
    take.figure('answer-layouts', label, 'is', [path], print);
  const built =
    (cell: (layout: Layout, path: string) => OwnerStatement, keeps: OwnerStatement, flat = notWorkedOut) =>
    ({ layout, covering }: Option): OwnerStatement =>
      layout !== null ? cell(layouts[layout], `layouts.${layout}`) : covering === null ? keeps : flat;
  const flatBoards =
    situation.plan === 'flat-boards'
      ? say`flat, ${figure('Flat boards', 'flatBoards.thicknessIn', inches)}`
      : notWorkedOut;
  return [
    of(
      'slope',
      'Least slope',
      built(
        ({ leastFaceSlopeInPerFt }, path) =>
          leastFaceSlopeInPerFt === null
            ? say`not known`
            : say`${figure('Least slope', `${path}.leastFaceSlopeInPerFt`, fallWords)}`,
        unchanged,
        unchanged,
      ),
    ),
    of(
      'boards',
      'Foam boards',
      built(
        (_, path) =>
          say`${figure('Thinnest board', `${path}.leastThicknessIn`, inches)} to ${figure('Thickest board', `${path}.greatestThicknessIn`, inches)}`,
        say`none`,
        flatBoards,
      ),
    ),
    of(
      'foam',
      'Foam in all',
      built((layout, path) => foamCell(layout, path, take), say`none`),
    ),
    of(
      'ways',
      'New ways out for water',
      built((_, path) => say`${figure('New ways out', `${path}.newOutlets`, wayCount)}`, say`none`, say`none`),
    ),
    of(
      'raised',
      'Made higher',
      built((layout, path) => raisedCell(layout, path, take), say`nothing`),
    ),
    of(
      'look',
      'The edge from the yard',
      built((layout, path) => lookCell(layout, path, take), unchanged),
    ),
    of('covering', 'Covering', ({ covering }) =>
      covering === null ? unchanged : say`${take.quote('answer-covering', 'Covering', `membranes.${covering}.name`)}`,
    ),
    of('insulation', 'Worth of the boards', ({ layout, covering }) => {
      const r = (label: string, path: string) => take.figure('answer-insulation', label, 'is', [path], rFigure);
      if (layout !== null)
        return say`R-${r('R of the boards', `layouts.${layout}.effectiveR`)}, and R-${r('R where they are thinnest', `layouts.${layout}.thinnestR`)} where they are thinnest`;
      if (covering !== null && situation.plan === 'flat-boards')
        return say`R-${take.figure('answer-layouts', 'R of the boards', 'is', ['flatBoards.labelR'], rFigure)}`;
      return unchanged;
    }),
    of('energy', 'Energy code', (option) => ofNewRoof(situation, option, energyCell(situation, take))),
    of('damp', 'Damp inside the roof', (option) => ofNewRoof(situation, option, dampCell(situation, take))),
    of('sun', 'Surface on a hot clear day', (option) => {
      const town = standInTown(situation);
      const cell = sunCell(situation, take, option);
      return town === null || cell.because.length === 0 ? cell : alsoSaying(cell, say`, by the weather of ${town}`);
    }),
  ];
}

type RowMaker = (id: string, head: string, cell: (option: Option) => OwnerStatement | null) => KitchenRow;

const blanks: readonly (readonly [id: string, head: string])[] = [
  ['days', 'Days of work'],
  ['price', 'Price'],
  ['wood', 'Price of each piece of wood beyond the amount'],
  ['lead', 'Can start, and time until boards come'],
  ['not-in', 'Not in the price'],
];

function rowsOf(situation: Situation, take: Taker, choice: KitchenChoice, options: readonly Option[]): KitchenRow[] {
  const of: RowMaker = (id, head, cell) => ({ id, head, cells: options.map(cell) });
  return [
    of('does', 'What is done', ({ does }) => does),
    of('why', 'Why one would choose it', ({ why }) => why),
    ...(choice === 'wishes' ? [] : roofRows(situation, take, of)),
    ...blanks.map(([id, head]) => of(id, head, () => null)),
  ];
}

export function kitchenTable(assessment: Assessment): KitchenTable {
  const situation = situationOf(assessment);
  const take = takerOf(assessment);
  const { choice, options } = optionsOf(situation, take);
  return {
    choice,
    lead: standingOn(say`${leads[choice]}`, take.quote('answer-layouts', 'The answer', 'headline')),
    options: options.map(({ title }) => title),
    layouts: options.map(({ layout }) => layout),
    rows: options.length === 0 ? [] : rowsOf(situation, take, choice, options),
    wishes: wishStatements(situation),
    wood: woodStatements(situation),
  };
}

/** Every statement of the page, in its order. */
export const kitchenStatements = ({ lead, wishes, rows, wood }: KitchenTable): OwnerStatement[] => [
  lead,
  ...wishes,
  ...rows.flatMap(({ cells }) => cells.filter((cell) => cell !== null)),
  ...wood,
];
