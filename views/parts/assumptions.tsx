import type { Assumption } from '../../src/core/report/types.ts';
import { Table } from './table.tsx';

/** What was not given and had to be taken, with the cheapest way to find out. */
export function Assumptions({ assumed }: { assumed: readonly Assumption[] }) {
  if (assumed.length === 0) return <p>Nothing had to be assumed.</p>;
  return (
    <Table
      caption="Assumed, and how to find out"
      columns={[{ head: 'Taken' }, { head: 'Because' }, { head: 'Find out' }, { head: 'In the roof file' }]}
      rows={assumed.map(({ path, value, because, findOut }) => ({
        cells: [value, because, findOut, <code>{path}</code>],
      }))}
    />
  );
}
