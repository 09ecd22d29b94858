import type { SourceBook } from '../../src/core/report/page-sources.ts';
import type { Alternative } from '../../src/core/report/types.ts';
import { SourceMark } from './source-mark.tsx';
import { Table } from './table.tsx';

export interface AlternativesProps {
  alternatives: readonly Alternative[];
  book: SourceBook;
}

/** What else could be done than lay tapered boards, by what fits this roof best. */
export function Alternatives({ alternatives, book }: AlternativesProps) {
  if (alternatives.length === 0) return <p>Nothing about this roof speaks for another way than tapered boards.</p>;
  return (
    <Table
      caption="The first to think of stands first"
      columns={[{ head: 'Way' }, { head: 'On this roof' }, { head: 'Figures' }, { head: 'Watch' }]}
      rows={alternatives.map(({ title, why, when, watch, figures, source }) => ({
        cells: [
          title,
          <>
            {why}
            <span class="why">{when}</span>
          </>,
          figures.length === 0
            ? 'none'
            : figures.map(({ name, value }) => (
                <span class="why">
                  {name}: {value}
                </span>
              )),
          <>
            {watch}
            <SourceMark book={book} note={source} />
          </>,
        ],
      }))}
    />
  );
}
