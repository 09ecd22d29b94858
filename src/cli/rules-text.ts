import { buildingRows, comparisonWords, plumbingRows } from '../core/report/page-rules.ts';
import type { Assessment } from '../core/report/types.ts';
import { part, table, wrapped } from './lines.ts';

const mark = (own: boolean): string => (own ? '*' : '');
const lines = (parts: readonly string[]): string => parts.join('; ');

/** One roof under every code that is held, as text to read on a terminal. */
export function rulesText({ label, invented, ruleComparison: comparison }: Assessment): string {
  if (comparison === undefined) return `${label}: nothing was compared.\n`;
  const buildings = buildingRows(comparison);
  const plumbings = plumbingRows(comparison);
  const out = [
    invented ? `${label} (an invented roof)` : label,
    '',
    ...comparisonWords(comparison).flatMap((words) => wrapped(words)),
    ...wrapped('* is the rule set of this job; the other half of it and the local amendments hold throughout.'),
    ...part(
      'Building codes: slope',
      table(buildings, [
        { head: '', text: ({ own }) => mark(own) },
        { head: 'code', text: ({ code }) => code.split(' (')[0] },
        { head: 'least', text: ({ slopes }) => lines(slopes.map(({ least }) => least)) },
        { head: 'as it is', text: ({ verdict }) => verdict },
        {
          head: 'today / new roof; exception [section]',
          text: ({ slopes, exception, slopeAt }) =>
            `${lines(slopes.map(({ today, planned }) => `${today} / ${planned}`))}; ${exception} [${slopeAt}]`,
        },
      ]),
    ),
    ...part(
      'Building codes: overflow',
      table(buildings, [
        { head: '', text: ({ own }) => mark(own) },
        { head: 'code', text: ({ code }) => code.split(' (')[0] },
        { head: 'overflow', text: ({ overflow }) => overflow },
        {
          head: 'rain behind it; scupper rule; here [section]',
          text: ({ rain, scupper, needs, scupperAt }) => `${rain}. ${scupper} Here: ${needs} [${scupperAt}]`,
        },
      ]),
    ),
    ...part(
      'Plumbing codes',
      table(plumbings, [
        { head: '', text: ({ own }) => mark(own) },
        { head: 'code', text: ({ code }) => code.split(' (')[0] },
        { head: 'rain', right: true, text: ({ mainRain }) => mainRain },
        { head: 'overflow', right: true, text: ({ overflowRain }) => overflowRain },
        { head: 'flow', right: true, text: ({ flow }) => flow },
        {
          head: 'outlets there now; walls and roofs above; pipe tables [section]',
          text: ({ outlets, walls, pipes, codeAt }) => `${outlets}; ${walls} added; ${pipes} [${codeAt}]`,
        },
      ]),
    ),
  ];
  return `${out.join('\n')}\n`;
}
