import {
  isRecommended,
  repairFigures,
  standingWords,
  woodFigures,
  woodKnown,
} from '../../src/core/report/page-scope.ts';
import type { SourceBook } from '../../src/core/report/page-sources.ts';
import type { PlannedReport, RepairWork, ScopeReport, WoodAllowance } from '../../src/core/report/types.ts';
import { SourceMark } from './source-mark.tsx';
import { Table } from './table.tsx';

function Repairs({ repairs, book }: { repairs: readonly RepairWork[]; book: SourceBook }) {
  return repairs.map((work) => (
    <>
      <h3>
        {work.title}
        <SourceMark book={book} note={work.source} />
      </h3>
      <ul>
        {[...work.places, ...work.lines, ...repairFigures(work)].map((text) => (
          <li>{text}</li>
        ))}
      </ul>
    </>
  ));
}

function Wood({ wood, known, book }: { wood: WoodAllowance; known: string; book: SourceBook }) {
  return (
    <>
      <h3>Wood that may have to be replaced</h3>
      <Table
        caption={`A range, not a number: ${known}`}
        columns={[
          { head: 'Wood' },
          { head: 'Most likely', kind: 'figure' },
          { head: 'Passed by one job in ten', kind: 'figure' },
          { head: 'How it came about' },
        ]}
        rows={wood.rows.map((row) => {
          const { what, likely, oneInTen, basis } = woodFigures(row);
          return {
            cells: [
              what,
              likely,
              oneInTen,
              <>
                {basis}
                <SourceMark book={book} note={row.source} />
              </>,
            ],
          };
        })}
      />
      <p>
        {wood.assumption} {wood.carry}
      </p>
    </>
  );
}

/** Repair, coat, re-cover or tear off: the answer, then what settles it, then every way with its reasons. */
export function Scope({ scope, planned, book }: { scope: ScopeReport; planned: PlannedReport; book: SourceBook }) {
  const { answer, ways, tests, repairs, wood } = scope;
  return (
    <>
      <p class="difference">{answer}</p>
      {tests.length === 0 ? null : (
        <ul>
          {tests.map(({ what, how, source }) => (
            <li>
              <b>{what}.</b> {how}
              <SourceMark book={book} note={source} />
            </li>
          ))}
        </ul>
      )}
      <Repairs repairs={repairs} book={book} />
      <details open={tests.length > 0}>
        <summary>The four ways, and why</summary>
        <Table
          caption="From the least to the most"
          columns={[{ head: 'Way' }, { head: 'Standing' }, { head: 'Why' }]}
          rows={ways.map((way) => ({
            tone: isRecommended(scope, way) ? 'chosen' : 'plain',
            cells: [
              way.title,
              isRecommended(scope, way) ? 'this one' : standingWords[way.standing],
              way.reasons.map(({ text, source }) => (
                <span class="why">
                  {text}
                  <SourceMark book={book} note={source} />
                </span>
              )),
            ],
          }))}
        />
      </details>
      {wood === null ? null : <Wood wood={wood} known={woodKnown(scope, planned)} book={book} />}
    </>
  );
}
