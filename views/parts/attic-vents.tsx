import { ventFigures, ventPieceRows, ventStateWords } from '../../src/core/report/page-damp.ts';
import type { SourceBook } from '../../src/core/report/page-sources.ts';
import type { VentReport } from '../../src/core/report/types.ts';
import { SourceMark } from './source-mark.tsx';
import { Table } from './table.tsx';

/** Vents of the attic beside the section: the answer, what is needed and there, what to watch. */
export function AtticVents({ vents, book }: { vents: VentReport; book: SourceBook }) {
  return (
    <>
      <p>
        {vents.answer}
        <SourceMark book={book} note={vents.source} />
      </p>
      {vents.warnings.map(({ text, source }) => (
        <p>
          <b>Watch:</b> {text}
          <SourceMark book={book} note={source} />
        </p>
      ))}
      {vents.todo.length === 0 ? null : <p>{vents.todo.join(' ')}</p>}
      <Table
        caption="Net free vent area"
        columns={[{ head: 'What' }, { head: 'Area', kind: 'figure' }]}
        rows={ventFigures(vents).map(({ what, value }) => ({ cells: [what, value] }))}
      />
      {vents.vents.length === 0 ? null : (
        <Table
          caption="Vents that are there"
          columns={[
            { head: 'Vent' },
            { head: 'How many', kind: 'figure' },
            { head: 'Each', kind: 'figure' },
            { head: 'Together', kind: 'figure' },
            { head: 'Where' },
          ]}
          rows={ventPieceRows(vents).map(({ name, count, each, total, where, source }) => ({
            cells: [
              <>
                {name}
                <SourceMark book={book} note={source} />
              </>,
              count,
              each,
              total,
              where,
            ],
          }))}
        />
      )}
      {vents.verdict === 'enough' ? null : (
        <Table
          caption="Conditions of the 1/300 rule"
          columns={[{ head: 'Condition' }, { head: 'Stands' }]}
          rows={vents.conditions.map(({ text, state, source }) => ({
            cells: [
              <>
                {text}
                <SourceMark book={book} note={source} />
              </>,
              ventStateWords[state],
            ],
          }))}
        />
      )}
      <p>
        {vents.flatPart.text}
        <SourceMark book={book} note={vents.flatPart.source} />
      </p>
    </>
  );
}
