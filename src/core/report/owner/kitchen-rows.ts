import { inches, plainNumber } from '../../../units/print.ts';
import { boardFeet } from '../page-figures.ts';
import { degreesF } from '../page-heat.ts';
import type { Layout } from '../types.ts';
import { raisedNoun } from './edges.ts';
import { dampCell, standInTown } from './heat.ts';
import { energyCell, rFigure } from './insulation.ts';
import type { Situation } from './situation.ts';
import { alsoSaying, type OwnerStatement, say, type Taker } from './statement.ts';
import { fallWords } from './today.ts';

/** The rows of the kitchen table: what differs between the options, and lines to fill in. */

export interface KitchenRow {
  id: string;
  head: string;
  /** One cell for each option; null = a line to fill in. */
  cells: readonly (OwnerStatement | null)[];
}

export interface Option {
  title: string;
  does: OwnerStatement;
  /** Why somebody would choose it. */
  why: OwnerStatement;
  /** Number of the layout that is built; null = none. */
  layout: number | null;
  /** Number of the covering; null = the old one stays, or none can be named. */
  covering: number | null;
}

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
  const rows = (layout.newHeights?.raised ?? []).flatMap(({ raiseIn }, i) =>
    raiseIn !== null && raiseIn > 1 / 32 ? [i] : [],
  );
  const count = take.count(
    'answer-heights',
    'Made higher',
    rows.map((i) => `${path}.newHeights.raised.${i}.raiseIn`),
  );
  return rows.length === 0 ? say`nothing` : say`${count} ${raisedNoun(layout, rows)}`;
}

function daysCell({ workDays }: Layout, path: string, take: Taker): OwnerStatement {
  if (workDays === undefined) return notWorkedOut;
  const figure = (label: string, key: string) =>
    take.figure('answer-materials', label, 'is', [`${path}.workDays.${key}`], (value) => plainNumber(value));
  const [least, most] = [figure('Days of work, least', 'leastDays'), figure('Days of work, most', 'mostDays')];
  const people = figure('People at work', 'people');
  return least.shown === most.shown
    ? say`about ${most}, ${people} people`
    : say`about ${least} to ${most}, ${people} people`;
}

function shinglesCell(layout: Layout, path: string, take: Taker): OwnerStatement {
  const known = (layout.newHeights?.tieIns ?? []).flatMap(({ stripIn }, i) =>
    stripIn === null ? [] : [`${path}.newHeights.tieIns.${i}.stripIn`],
  );
  if (known.length === 0) return say`not known until their slope is measured`;
  return say`at least ${take.figure('answer-heights', 'Shingles to strip, up the slope', 'greatest', known, inches)} up the slope`;
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
    ...(layouts.some(({ newHeights }) => (newHeights?.tieIns.length ?? 0) > 0)
      ? [
          of(
            'shingles',
            'Shingles that come off',
            built((layout, path) => shinglesCell(layout, path, take), say`none`),
          ),
        ]
      : []),
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
    ...(layouts.some(({ workDays }) => workDays !== undefined)
      ? [
          of(
            'planned-days',
            'Dry days of work, for planning',
            built((layout, path) => daysCell(layout, path, take), notWorkedOut),
          ),
        ]
      : []),
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
  ['days', 'Days of work, as your roofer says'],
  ['price', 'Price'],
  ['wood', 'Price of each piece of wood beyond the amount'],
  ['lead', 'Can start, and time until boards come'],
  ['not-in', 'Not in the price'],
];

/** A deck that is not of wood is not paid by the piece. */
const pieceHead = ({ assessment: { scope } }: Situation, wood: string): string =>
  scope === undefined || scope.deck.isWood ? wood : 'Price of mending the deck, by the square foot';

/** @param roof whether the options differ in the roof itself, and not in what is given up alone */
export function rowsOf(situation: Situation, take: Taker, roof: boolean, options: readonly Option[]): KitchenRow[] {
  const of: RowMaker = (id, head, cell) => ({ id, head, cells: options.map(cell) });
  return [
    of('does', 'What is done', ({ does }) => does),
    of('why', 'Why one would choose it', ({ why }) => why),
    ...(roof ? roofRows(situation, take, of) : []),
    ...blanks.map(([id, head]) => of(id, id === 'wood' ? pieceHead(situation, head) : head, () => null)),
  ];
}
