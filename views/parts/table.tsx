import type { Child } from 'hono/jsx';
import { placeName } from '../../src/drawing/svg.ts';
import { useIsDrawn } from './places.ts';

export interface Column {
  head: string;
  /** `figure` stands to the right; `blank` is written in by hand. */
  kind?: 'words' | 'figure' | 'blank';
}

export interface Row {
  /** First cell is the row's name. */
  cells: readonly Child[];
  /** Place on the drawings that this row speaks of. */
  place?: string;
  tone?: 'chosen' | 'plain';
}

const classOf = (kind: Column['kind']): string | undefined =>
  kind === 'figure' ? 'figure' : kind === 'blank' ? 'blank-cell' : undefined;

/** Tables of more columns than this need a wide page to stand as tables. */
const MOST_ABREAST = 5;

export interface TableProps {
  caption: string;
  columns: readonly Column[];
  rows: readonly Row[];
}

/** A plain table: caption, heads, the first cell names the row. On a phone every row stands as a short list. */
export function Table({ caption, columns, rows }: TableProps) {
  return (
    <table class={columns.length > MOST_ABREAST ? 'many' : 'few'}>
      <caption>{caption}</caption>
      <thead>
        <tr>
          {columns.map(({ head, kind }) => (
            <th scope="col" class={kind === 'figure' ? 'figure' : undefined}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ cells, place, tone }) => (
          <tr
            data-place={place === undefined ? undefined : placeName(place)}
            class={tone === 'chosen' ? 'chosen' : undefined}
          >
            {cells.map((cell, i) =>
              i === 0 ? (
                <th scope="row">{cell}</th>
              ) : (
                <td class={classOf(columns[i].kind)} data-head={columns[i].head}>
                  {cell}
                </td>
              ),
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

export interface PlaceNameProps {
  place: string;
  children?: Child;
}

/** Name of something that may be drawn: pointing at it, tapping it or reaching it by keyboard marks its place. */
export function PlaceName({ place, children }: PlaceNameProps) {
  if (!useIsDrawn(placeName(place))) return children;
  return (
    <button type="button" class="place-name" title="Mark it on the drawing">
      {children}
    </button>
  );
}
