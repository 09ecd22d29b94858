import { materialGroups } from '../../src/core/report/page-materials.ts';
import type { SourceBook } from '../../src/core/report/page-sources.ts';
import type { MaterialLine } from '../../src/core/report/types.ts';
import { SourceMark } from './source-mark.tsx';
import { Table } from './table.tsx';

/** What to buy, group by group, every line with how its number came about. */
export function Materials({ materials, book }: { materials: readonly MaterialLine[]; book: SourceBook }) {
  if (materials.length === 0) return <p>No list before a layout fits.</p>;
  return (
    <>
      {materialGroups(materials).map(({ group, lines }) => (
        <Table
          caption={group}
          columns={[
            { head: 'Item' },
            { head: 'Order', kind: 'figure' },
            { head: 'Net', kind: 'figure' },
            { head: 'Basis' },
          ]}
          rows={lines.map(({ item, order, net, basis, source }) => ({
            cells: [
              item,
              order,
              net,
              <>
                {basis}
                <SourceMark book={book} note={source} />
              </>,
            ],
          }))}
        />
      ))}
    </>
  );
}
