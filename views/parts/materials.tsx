import { flatInstead } from '../../src/core/report/flat-words.ts';
import { materialGroups } from '../../src/core/report/page-materials.ts';
import type { SourceBook } from '../../src/core/report/page-sources.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import { SourceMark } from './source-mark.tsx';
import { Table } from './table.tsx';

/** What to buy, group by group, every line with how its number came about. */
export function Materials({ assessment, book }: { assessment: Assessment; book: SourceBook }) {
  const { materials, moisture } = assessment;
  const held = moisture?.deckSheetHeld ?? null;
  if (materials.length === 0) return <p>{flatInstead(assessment) ?? 'No list before a layout fits.'}</p>;
  return (
    <>
      {held === null ? null : <p>{held}</p>}
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
