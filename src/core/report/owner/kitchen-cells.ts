import { inches, plainNumber } from '../../../units/print.ts';
import { boardFeet } from '../page-figures.ts';
import { degreesF } from '../page-heat.ts';
import type { Layout } from '../types.ts';
import { askedCovering } from './covering.ts';
import { raisedNoun } from './edges.ts';
import type { Situation } from './situation.ts';
import { type OwnerStatement, say, type Taker } from './statement.ts';

/** What one option of the kitchen table is, and its cells. */

export interface Option {
  title: string;
  does: OwnerStatement;
  /** Why somebody would choose it. */
  why: OwnerStatement;
  /** Number of the layout that is built; null = none. */
  layout: number | null;
  /** Number of the covering; null = the old one stays, or none can be named. */
  covering: number | null;
  /** The old covering stays and gets a coat. */
  coat?: true;
}

export const notWorkedOut = say`not worked out`;

export function lookCell(layout: Layout, path: string, take: Taker): OwnerStatement {
  const faces = layout.newHeights?.faces ?? [];
  if (faces.length === 0) return say`no open edge with new metal`;
  const paths = (key: string): string[] => faces.map((_, i) => `${path}.newHeights.faces.${i}.${key}`);
  const low = take.figure('answer-heights', 'Lowest metal face', 'least', paths('lowIn'), inches);
  const high = take.figure('answer-heights', 'Highest metal face', 'greatest', paths('highIn'), inches);
  return low.shown === high.shown ? say`metal face ${high} high` : say`metal face from ${low} to ${high} high`;
}

/** Boards, and the boards that level the deck under them. */
export function foamCell({ levellingBoardFt }: Layout, path: string, take: Taker): OwnerStatement {
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

export function raisedCell(layout: Layout, path: string, take: Taker): OwnerStatement {
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

export function daysCell({ workDays }: Layout, path: string, take: Taker): OwnerStatement {
  if (workDays === undefined) return notWorkedOut;
  const figure = (label: string, key: string) =>
    take.figure('answer-materials', label, 'is', [`${path}.workDays.${key}`], (value) => plainNumber(value));
  const [least, most] = [figure('Days of work, least', 'leastDays'), figure('Days of work, most', 'mostDays')];
  const people = figure('People at work', 'people');
  return least.shown === most.shown
    ? say`about ${most}, ${people} people`
    : say`about ${least} to ${most}, ${people} people`;
}

export function shinglesCell(layout: Layout, path: string, take: Taker): OwnerStatement {
  const known = (layout.newHeights?.tieIns ?? []).flatMap(({ stripIn }, i) =>
    stripIn === null ? [] : [`${path}.newHeights.tieIns.${i}.stripIn`],
  );
  if (known.length === 0) return say`not known until their slope is measured`;
  return say`at least ${take.figure('answer-heights', 'Shingles to strip, up the slope', 'greatest', known, inches)} up the slope`;
}

/** The coat that was asked for by its name, else that there is one. */
export function coatCell(situation: Situation, take: Taker): OwnerStatement {
  const asked = askedCovering(situation);
  return asked?.coat
    ? say`${take.quote('answer-covering', 'What was asked for', `membranes.${asked.at}.name`)}`
    : say`a coating on the old one`;
}

export function sunCell(
  { assessment, layout: chosen }: Situation,
  take: Taker,
  { layout, covering, coat }: Option,
): OwnerStatement {
  const { heat } = assessment;
  const figure = (label: string, path: string) => take.figure('answer-heat', label, 'is', [path], degreesF);
  // A coat changes the color, and no hot day is worked out for the old roof under one.
  if (heat === undefined || coat) return notWorkedOut;
  if (covering === null) return say`about ${figure('Old surface at its hottest', 'heat.figures.peakSurfaceOldF')}`;
  const own = chosen !== null && layout !== null && assessment.layouts[layout] === chosen;
  const option = heat.options.findIndex(({ membrane }) => membrane === assessment.membranes[covering].id);
  if (!own || option < 0) return say`not worked out for this one`;
  return say`about ${figure('New surface at its hottest', `heat.options.${option}.peakSurfaceF`)}`;
}

/** What was worked out for the offered new roof alone. */
export function ofNewRoof(
  { assessment, layout, plan }: Situation,
  option: Option,
  cell: OwnerStatement,
): OwnerStatement {
  if (option.covering === null && option.layout === null) return notWorkedOut;
  const own = option.layout === null ? plan === 'flat-boards' : assessment.layouts[option.layout] === layout;
  return own ? cell : say`not worked out for this one`;
}
