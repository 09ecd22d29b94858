import { boardRows, fillRows } from '../../src/core/report/page-materials.ts';
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
          { head: 'Mark on the bundle', kind: 'blank' },
        ]}
        rows={boardRows(layout).map(({ mark, edges, fill, order, net }) => ({
          cells: [mark, edges, fill, order, net, ''],
        }))}
      />
      {layout.fill.length === 0 ? null : (
        <Table
          caption="Flat fill, 4 x 8 ft boards"
          columns={[
            { head: 'Thickness' },
            { head: 'Area', kind: 'figure' },
            { head: 'Order', kind: 'figure' },
            { head: 'Mark on the bundle', kind: 'blank' },
          ]}
          rows={fillRows(layout).map(({ thickness, area, order }) => ({ cells: [thickness, area, order, ''] }))}
        />
      )}
    </>
  );
}
