import type { SourceBook } from '../../src/core/report/page-sources.ts';
import { workDaysRows, workDaysSentence } from '../../src/core/report/page-work-days.ts';
import type { Layout } from '../../src/core/report/types.ts';
import { SourceMark } from './source-mark.tsx';
import { Table } from './table.tsx';

/** How long the crew is on the roof, part by part. */
export function WorkDays({ layout, book }: { layout: Layout; book: SourceBook }) {
  const { workDays } = layout;
  if (workDays === undefined) return null;
  return (
    <>
      <Table
        caption="Days of work"
        columns={[{ head: 'Work' }, { head: 'Days', kind: 'figure' }, { head: 'Basis' }]}
        rows={workDaysRows(workDays).map(({ what, days, basis }) => ({ cells: [what, days, basis] }))}
      />
      <p>
        {workDaysSentence(workDays)}
        <SourceMark book={book} note={workDays.source} />
      </p>
    </>
  );
}
