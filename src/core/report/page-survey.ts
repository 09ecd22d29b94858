import { readingErrors } from '../../../reference/reading-errors.ts';
import { inches, plainNumber } from '../../units/print.ts';
import { sourceNote } from '../finding.ts';
import type { Survey } from '../survey/survey.ts';
import { counted } from './page-figures.ts';
import type { Caution } from './types.ts';

export type { Survey } from '../survey/survey.ts';

/** The survey sheet as it is printed and carried onto the roof. */

export interface SurveyRow {
  id: string;
  /** Key of the mark on the drawing. */
  place: string;
  where: string;
  why: string;
}

export const markPlace = (id: number): string => `mark-${id}`;

export const surveyRows = ({ marks }: Survey): SurveyRow[] =>
  marks.map(({ id, place, why }) => ({ id: String(id), place: markPlace(id), where: place, why }));

export interface HeightRow {
  id: string;
  what: string;
  /** What the roof file has for it today. */
  known: string;
}

export const heightRows = ({ heights }: Survey): HeightRow[] =>
  heights.map(({ id, what, knownIn }) => ({ id, what, known: knownIn === null ? 'not known' : inches(knownIn) }));

/** What is on the sheet, in one sentence. */
export function surveySentence({ marks, heights, gridFt }: Survey): string {
  const taped = heights.length === 0 ? '' : ` and ${counted(heights.length, 'height')} to tape`;
  const wide =
    gridFt > 8 ? ' The grid is wider than 8 ft because the roof is large: read closer where water stands.' : '';
  return `${counted(marks.length, 'mark')} to read${taped}: once round the edge, then back and forth on a ${plainNumber(gridFt)} ft grid.${wide}`;
}

export interface WayToRead {
  title: string;
  lines: readonly string[];
  /** How far one reading may be off when nobody says otherwise. */
  good: string;
}

const words = {
  laser: {
    title: 'Laser and rod',
    lines: [
      'Set the laser where it sees every mark and nobody walks, off soft or springy deck. Let it level, then leave it alone.',
      'Stand the rod upright on each mark and write what it reads. A higher reading is a lower point.',
      'If it has to be moved, read two marks from both places. Read mark 1 again at the end: if it has changed, start over.',
    ],
  },
  'string-line': {
    title: 'String line',
    lines: [
      'Pull it tight from mark to mark on two blocks of one height, clear of the roof. Write down both marks and the height of the blocks.',
      'Write how far along you are and the gap from the string down to the roof. A larger gap is a lower point.',
      'A string hangs, most in its middle, and wind moves it: keep it short and sight along it. Write down how far it hangs.',
    ],
  },
  'water-level': {
    title: 'Water level',
    lines: [
      'Fill the tube until no bubble is left, both ends open. One end stays at mark 1: the reference tube.',
      'Hold the other end upright at each mark and write how much higher its mark stands than that of the reference tube, lower as minus. A higher mark is a lower point.',
      'Wait until the water is still, and keep the tube out of the sun: warm water stands higher.',
    ],
  },
} as const;

export const waysToRead = (): WayToRead[] =>
  readingErrors.map((row) => ({
    ...words[row.instrument],
    good: `A careful reading is good to about ${inches(row.errorIn)} (${sourceNote(row).text}).`,
  }));

/** What to mind on a roof that is only looked at and measured, the nearest danger first. */
const onTheRoof = [
  'inspection-stand-back',
  'skylight',
  'open-hole',
  'deck-strength',
  'ladder',
  'power-line',
  'ladder-near-power',
  'dark-or-alone',
  'parapet-loose',
  'solar',
  'antennas',
];

export const surveyCautions = (cautions: readonly Caution[]): Caution[] =>
  onTheRoof.flatMap((id) => cautions.filter((caution) => caution.id === id));

export const EDGE_MARKS =
  'Marks at the edge lie where people fall. Nobody reads them without fall protection: hold the rod out from inside, or leave them empty. The competent person on the site decides who goes up and how; a homeowner stays off the roof.';
