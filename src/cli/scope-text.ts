import { extentWords, isRecommended, repairFigures, standingWords, woodFigures } from '../core/report/page-scope.ts';
import type { Assessment, ScopeReport } from '../core/report/types.ts';
import { part, wrapped } from './lines.ts';

function ways(scope: ScopeReport): string[] {
  return scope.ways.flatMap((way) => {
    const standing = isRecommended(scope, way) ? 'this one' : standingWords[way.standing];
    const why = way.reasons.map(({ text, source }) => `${text} [${source.text}]`).join(' ');
    return wrapped(`${way.title}: ${standing}. ${why}`, 2, 2);
  });
}

const wood = ({ wood: allowance }: ScopeReport): string[] =>
  allowance === null
    ? []
    : [
        ...allowance.rows.flatMap((row) => {
          const { what, likely, oneInTen, basis } = woodFigures(row);
          return wrapped(`Wood: ${what}: most likely ${likely}, one job in ten more than ${oneInTen} (${basis})`, 2, 2);
        }),
        ...wrapped(`${allowance.assumption} ${allowance.carry}`, 2, 2),
      ];

const found = ({ inspection = [] }: Assessment): string[] =>
  inspection.flatMap((finding) => {
    const { number, title, where, note, tells, tellsNot } = finding;
    const noted = note === null ? '' : ` Noted: ${note}.`;
    return wrapped(
      `${number}. ${title}, ${where} (${extentWords(finding)}).${noted} ${tells} It does not tell: ${tellsNot}`,
      2,
      2,
    );
  });

/** What to do with the old roof, and what was found on it, for the terminal. */
export function scopeText(assessment: Assessment): string[] {
  const { scope } = assessment;
  const decided =
    scope === undefined
      ? []
      : [
          ...wrapped(scope.answer, 2, 2),
          ...scope.tests.flatMap(({ what, how }) => wrapped(`To find out: ${what}. ${how}`, 2, 2)),
          ...scope.repairs.flatMap((work) =>
            wrapped(
              `${work.title} (${work.places.join('; ')}): ${[...work.lines, ...repairFigures(work)].join(' ')}`,
              2,
              2,
            ),
          ),
          ...ways(scope),
          ...wood(scope),
        ];
  return [...part('What to do with the old roof', decided), ...part('What was found', found(assessment))];
}
