import { boardNotes, boardRows, fillRows } from '../../src/core/report/page-materials.ts';
import type { Layout } from '../../src/core/report/types.ts';
import { Table } from './table.tsx';

/** Boards and fill by thickness, with an empty column for the mark on the bundle. */
export function BoardTables({ layout }: { layout: Layout }) {
  return (
    <>
      <Table
        caption="Tapered boards, named by their edges and the fill under them"
        columns={[
          { head: 'Mark on the plan' },
          { head: 'Low to high edge' },
          { head: 'Fill under it' },
          { head: 'Order', kind: 'figure' },
          { head: 'Net', kind: 'figure' },
          { head: 'Cut', kind: 'figure' },
          { head: 'Left over', kind: 'figure' },
          { head: 'Mark on the bundle', kind: 'blank' },
        ]}
        rows={boardRows(layout).map(({ mark, edges, fill, order, net, cut, waste }) => ({
          cells: [mark, edges, fill, order, net, cut, waste, ''],
        }))}
      />
      <ul>
        {boardNotes(layout).map((note) => (
          <li>{note}</li>
        ))}
      </ul>
      {layout.fill.length === 0 ? null : (
        <Table
          caption="Flat fill"
          columns={[
            { head: 'Thickness' },
            { head: 'Boards' },
            { head: 'Area', kind: 'figure' },
            { head: 'Order', kind: 'figure' },
            { head: 'Mark on the bundle', kind: 'blank' },
          ]}
          rows={fillRows(layout).map(({ thickness, size, area, order }) => ({
            cells: [thickness, size, area, order, ''],
          }))}
        />
      )}
    </>
  );
}
