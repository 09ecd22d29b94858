import type { SourceBook } from '../../src/core/report/page-sources.ts';
import { flatWords, loadRows, outletRows, pondRows } from '../../src/core/report/page-water.ts';
import type { FlatReport, LoadStep, OutletReport, PondReport } from '../../src/core/report/types.ts';
import { SourceMark } from './source-mark.tsx';
import { PlaceName, Table } from './table.tsx';

export function Ponds({ ponds }: { ponds: readonly PondReport[] }) {
  if (ponds.length === 0) return null;
  return (
    <Table
      caption="Standing water"
      columns={[
        { head: 'Where' },
        { head: 'Deepest', kind: 'figure' },
        { head: 'Area', kind: 'figure' },
        { head: 'Water', kind: 'figure' },
        { head: 'Weight', kind: 'figure' },
        { head: 'Load', kind: 'figure' },
      ]}
      rows={pondRows(ponds).map(({ place, name, where, depth, area, volume, weight, load, birdBath }) => ({
        place,
        cells: [
          <>
            <PlaceName place={place}>{name}</PlaceName>, {where}
            {birdBath ? ' (a bird bath: listed, not failed)' : ''}
          </>,
          depth,
          area,
          volume,
          weight,
          load,
        ],
      }))}
    />
  );
}

export function Flats({ flats }: { flats: readonly FlatReport[] }) {
  const words = flatWords(flats);
  if (words.length === 0) return null;
  return (
    <ul>
      {words.map((each) => (
        <li>{each}</li>
      ))}
    </ul>
  );
}

export interface OutletsProps {
  caption: string;
  outlets: readonly OutletReport[];
  book: SourceBook;
}

export function Outlets({ caption, outlets, book }: OutletsProps) {
  if (outlets.length === 0) return <p>No way out for water is known.</p>;
  return (
    <Table
      caption={caption}
      columns={[
        { head: 'Outlet' },
        { head: 'Kind' },
        { head: 'Drains', kind: 'figure' },
        { head: 'Walls and steep roofs', kind: 'figure' },
        { head: 'Flow', kind: 'figure' },
        { head: 'Carries', kind: 'figure' },
        { head: 'Verdict' },
        { head: 'What it takes' },
      ]}
      rows={outletRows(outlets).map((row) => ({
        place: row.place,
        cells: [
          <PlaceName place={row.place}>{row.label}</PlaceName>,
          row.role,
          row.drains,
          row.added,
          row.flow,
          row.capacity,
          row.adequate === false ? <b>{row.verdict}</b> : row.verdict,
          <>
            {row.needs}
            <SourceMark book={book} note={row.source} />
            <span class="why">{row.basis}</span>
          </>,
        ],
      }))}
    />
  );
}

export function Loads({ loads }: { loads: readonly LoadStep[] }) {
  if (loads.length === 0) return null;
  return (
    <Table
      caption="How deep water gets, and what it weighs, when ways out are shut"
      columns={[
        { head: 'What is shut' },
        { head: 'Depth', kind: 'figure' },
        { head: 'Load', kind: 'figure' },
        { head: 'Against the deck' },
      ]}
      rows={loadRows(loads).map(({ label, depth, load, exceeds, verdict }) => ({
        cells: [label, depth, load, exceeds === true ? <b class="stop">{verdict}: engineer first</b> : verdict],
      }))}
    />
  );
}
