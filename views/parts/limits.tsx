import { limitRows } from '../../src/core/report/page-limits.ts';
import type { SourceBook } from '../../src/core/report/page-sources.ts';
import type { Assessment, Layout } from '../../src/core/report/types.ts';
import { placeName } from '../../src/drawing/svg.ts';
import { SourceMark } from './source-mark.tsx';
import { PlaceName, Table } from './table.tsx';

export interface LimitsProps {
  assessment: Assessment;
  layout: Layout | null;
  book: SourceBook;
}

/** What is left at every limit, one line each, the broken ones first. */
export function LimitLines({ assessment, layout }: Pick<LimitsProps, 'assessment' | 'layout'>) {
  const rows = limitRows(assessment, layout);
  if (rows.length === 0) return <p>No height limits the build-up: no door, wall, curb or pipe is listed.</p>;
  return (
    <ul class="limits">
      {rows.map(({ id, where, left, state, before }) => (
        <li data-place={placeName(`limit-${id}`)}>
          <PlaceName place={`limit-${id}`}>{where}</PlaceName>:{' '}
          {state === 'short' ? <b class="stop">{left}</b> : state === 'raise' ? <b>{left}</b> : left}
          <span class="why">{before}</span>
        </li>
      ))}
    </ul>
  );
}

/** Heights decide first: what every door, wall, curb and pipe allows, and what the layout leaves. */
export function Limits({ assessment, layout, book }: LimitsProps) {
  const rows = limitRows(assessment, layout);
  if (rows.length === 0) return <p>No height limits the build-up: no door, wall, curb or pipe is listed.</p>;
  return (
    <Table
      caption={`Heights over ${assessment.planned.ground}`}
      columns={[
        { head: 'Where' },
        { head: 'Left' },
        { head: 'Height', kind: 'figure' },
        { head: 'Must stay clear', kind: 'figure' },
        { head: 'Allows', kind: 'figure' },
        { head: 'Taper may run', kind: 'figure' },
        { head: 'Used', kind: 'figure' },
        { head: 'Allows R', kind: 'figure' },
      ]}
      rows={rows.map((row) => ({
        place: `limit-${row.id}`,
        cells: [
          <>
            <PlaceName place={`limit-${row.id}`}>{row.where}</PlaceName>
            <SourceMark book={book} note={row.source} />
          </>,
          row.state === 'short' ? <b class="stop">{row.left}</b> : row.state === 'raise' ? <b>{row.left}</b> : row.left,
          row.height,
          row.clear,
          row.available,
          row.run,
          row.used,
          row.allowsR,
        ],
      }))}
    />
  );
}
