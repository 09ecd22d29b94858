import type { SourceBook } from '../../src/core/report/page-sources.ts';
import { basisRows, energyCaption, energyRows, heightRows, ruleSentence } from '../../src/core/report/page-thermal.ts';
import type { Layout } from '../../src/core/report/types.ts';
import { SourceMark } from './source-mark.tsx';
import { Table } from './table.tsx';

/** R on three bases side by side, and the rules of the energy code, which disagree. */
export function Thermal({ layout, book }: { layout: Layout; book: SourceBook }) {
  const { thermal } = layout;
  if (thermal === undefined) return null;
  const checks = energyRows(thermal);
  return (
    <>
      <p>{ruleSentence(thermal)}</p>
      {thermal.disagreement === null ? null : <p>{thermal.disagreement}</p>}
      <Table
        caption="R of boards and cover board, by what an inch is worth"
        columns={[
          { head: 'Basis' },
          { head: 'Thinnest', kind: 'figure' },
          { head: 'At the mean', kind: 'figure' },
          { head: 'Effective', kind: 'figure' },
          { head: 'Flat layer to the target' },
        ]}
        rows={basisRows(thermal).map(({ name, thinnest, average, effective, u, layer, source }) => ({
          cells: [
            <>
              {name}
              <SourceMark book={book} note={source} />
            </>,
            thinnest,
            average,
            <>
              <b>{effective}</b>
              <span class="why">U {u}</span>
            </>,
            layer,
          ],
        }))}
      />
      {checks.length === 0 ? null : (
        <Table
          caption={energyCaption(thermal)}
          columns={[
            { head: 'Rule' },
            { head: 'Stands' },
            { head: 'Asked', kind: 'figure' },
            { head: 'There', kind: 'figure' },
            { head: 'Flat layer it takes' },
          ]}
          rows={checks.map(({ title, state, standing, asked, found, layer, note, source }) => ({
            cells: [
              <>
                {title}
                <SourceMark book={book} note={source} />
                <span class="why">{note}</span>
              </>,
              <>
                {state === 'short' ? <b>short</b> : 'holds'}
                <span class="why">{standing}</span>
              </>,
              asked,
              found,
              layer,
            ],
          }))}
        />
      )}
    </>
  );
}

/** Curbs, pipes, parapets, tie-ins and edge metal after the new roof. */
export function NewHeightsTable({ layout, ground }: { layout: Layout; ground: string }) {
  const rows = heightRows(layout);
  if (rows.length === 0) return null;
  return (
    <Table
      caption={`New heights: curbs, pipes and inlets over ${ground}; parapets over the roof at their lowest`}
      columns={[{ head: 'What' }, { head: 'Now', kind: 'figure' }, { head: 'Then' }, { head: 'To do' }]}
      rows={rows.map(({ what, now, after, todo }) => ({ cells: [what, now, after, todo] }))}
    />
  );
}
