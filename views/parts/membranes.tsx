import { membraneRows, weighedRows } from '../../src/core/report/page-membranes.ts';
import type { SourceBook } from '../../src/core/report/page-sources.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import { SourceMark } from './source-mark.tsx';
import { Table } from './table.tsx';

/** Which covering and why: the winner in words, then all of them, then what would change the answer. */
export function Membranes({ assessment, book }: { assessment: Assessment; book: SourceBook }) {
  const rows = membraneRows(assessment);
  const chosen = assessment.membranes.find(({ id }) => id === assessment.chosenMembrane);
  return (
    <>
      {chosen === undefined ? (
        <p>
          <b class="stop">Stop</b> No covering passes as the job stands.
        </p>
      ) : (
        <>
          <p>
            <b>{chosen.name}.</b> {chosen.plain}
          </p>
          <Table
            caption={`Why ${chosen.name}`}
            columns={[
              { head: 'Counts' },
              { head: 'Weight', kind: 'figure' },
              { head: 'Points of 10', kind: 'figure' },
              { head: 'Reason' },
            ]}
            rows={weighedRows(chosen).map(({ criterion, weight, score, text }) => ({
              cells: [criterion, weight, score, text],
            }))}
          />
          {chosen.flips.length === 0 ? null : (
            <>
              <h3>What would change the answer</h3>
              <ul>
                {chosen.flips.map((flip) => (
                  <li>{flip}</li>
                ))}
              </ul>
            </>
          )}
        </>
      )}
      <h3>Why not the same again</h3>
      <p>{assessment.whyNotTheSame}</p>
      <Table
        caption="Coverings compared"
        columns={[{ head: 'Covering' }, { head: 'Points of 10', kind: 'figure' }, { head: 'In words' }]}
        rows={rows.map(({ id, name, score, words, veto }) => ({
          tone: id === assessment.chosenMembrane ? 'chosen' : 'plain',
          cells: [
            name,
            score,
            <>
              {words}
              <SourceMark book={book} note={veto} />
            </>,
          ],
        }))}
      />
    </>
  );
}
