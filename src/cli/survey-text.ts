import { EDGE_MARKS, heightRows, surveyRows, surveySentence, waysToRead } from '../core/report/page-survey.ts';
import type { Roof } from '../core/roof.ts';
import { surveyOf } from '../core/survey/survey.ts';
import { part, table, wrapped } from './lines.ts';

const BLANK = '________';

/** Where to measure a roof and how, as text to print and write on. */
export function surveyText(roof: Roof): string {
  const survey = surveyOf(roof);
  const heights = heightRows(survey);
  const lines = [
    roof.invented ? `${roof.label} (an invented roof)` : roof.label,
    ...wrapped(surveySentence(survey)),
    '',
    ...wrapped(EDGE_MARKS),
    ...part(
      'How to read',
      waysToRead().flatMap(({ title, lines: steps, good }) => wrapped(`${title}: ${[...steps, good].join(' ')}`, 2, 2)),
    ),
    ...part(
      'Marks',
      table(surveyRows(survey), [
        { head: 'mark', right: true, text: ({ id }) => id },
        { head: 'read', text: () => BLANK },
        { head: 'where and what', text: ({ where, why }) => `${where}: ${why}` },
      ]),
    ),
    ...part(
      'Heights to tape',
      heights.length === 0
        ? []
        : table(heights, [
            { head: '', right: true, text: ({ id }) => id },
            { head: 'taped', text: () => BLANK },
            { head: 'what', text: ({ what, known }) => `${what} (in the file: ${known})` },
          ]),
    ),
  ];
  return `${lines.join('\n')}\n`;
}
