import { inches, plainNumber } from '../../../units/print.ts';
import type { Layout } from '../types.ts';
import { dampCell, standInTown } from './heat.ts';
import { energyCell, rFigure } from './insulation.ts';
import {
  coatCell,
  daysCell,
  foamCell,
  lookCell,
  notWorkedOut,
  type Option,
  ofNewRoof,
  raisedCell,
  shinglesCell,
  sunCell,
} from './kitchen-cells.ts';
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

const wayCount = (value: number): string => (value === 0 ? 'none' : plainNumber(value));

const unchanged = say`as it is`;

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
    of('covering', 'Covering', ({ covering, coat }) =>
      coat
        ? coatCell(situation, take)
        : covering === null
          ? unchanged
          : say`${take.quote('answer-covering', 'Covering', `membranes.${covering}.name`)}`,
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
function pieceHead({ assessment: { scope }, call }: Situation, wood: string): string {
  if (call === 'off') return 'Price of the new deck';
  return scope === undefined || scope.deck.isWood ? wood : 'Price of mending the deck, by the square foot';
}

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
