import type { SourceBook } from '../../src/core/report/page-sources.ts';
import {
  flatWords,
  liveLoadWords,
  loadRows,
  outletRows,
  pondNote,
  pondRows,
  rainAssumedSentence,
} from '../../src/core/report/page-water.ts';
import type {
  Assessment,
  ExistingReport,
  FlatReport,
  OutletReport,
  PondReport,
  RuleSetReport,
} from '../../src/core/report/types.ts';
import { loadLadderDrawing } from '../../src/drawing/load-ladder.ts';
import { Figure } from './figure.tsx';
import { SourceMark } from './source-mark.tsx';
import { PlaceName, Table } from './table.tsx';

export interface PondsProps {
  ponds: readonly PondReport[];
  /** From when water is listed and flagged. */
  limits?: RuleSetReport['ponds'];
}

/** Every pond that is listed, with what is left of it after 48 h, and the settings that it is held against. */
export function Ponds({ ponds, limits }: PondsProps) {
  if (ponds.length === 0) return null;
  const rows = pondRows(ponds, limits);
  const note = pondNote(ponds, limits);
  return (
    <>
      {rows.length === 0 ? null : <PondTable rows={rows} />}
      {note === null ? null : <p class="quiet">{note}</p>}
    </>
  );
}

function PondTable({ rows }: { rows: ReturnType<typeof pondRows> }) {
  return (
    <Table
      caption="Every pond: how deep, how wide, how heavy"
      columns={[
        { head: 'Where' },
        { head: 'Deepest', kind: 'figure' },
        { head: 'Area', kind: 'figure' },
        { head: 'Water', kind: 'figure' },
        { head: 'Weight', kind: 'figure' },
        { head: 'Load', kind: 'figure' },
        { head: 'Left after 48 h' },
        { head: 'Standing' },
      ]}
      rows={rows.map(({ place, name, where, depth, area, volume, weight, load, left, standing, flagged }) => ({
        place,
        cells: [
          <>
            <PlaceName place={place}>{name}</PlaceName>, {where}
          </>,
          depth,
          area,
          volume,
          weight,
          load,
          left,
          flagged ? <b>{standing}</b> : standing,
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
        { head: 'Spare', kind: 'figure' },
        { head: 'Verdict' },
        { head: 'Water there' },
        { head: 'What it takes' },
        { head: 'What decides it' },
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
          row.spare,
          row.adequate === false ? <b>{row.verdict}</b> : row.verdict,
          row.load,
          row.needs,
          <>
            {row.basis}
            <SourceMark book={book} note={row.source} />
          </>,
        ],
      }))}
    />
  );
}

/** Levels of water to scale against what the deck bears; the table says the same in words. */
export function Loads({ existing }: { existing: ExistingReport }) {
  const list = loadLadderDrawing(existing);
  if (list === null) return null;
  const live = liveLoadWords(existing);
  return (
    <>
      <div class="ladder">
        <Figure list={list} id="levels">
          {live}
        </Figure>
      </div>
      <LoadTable existing={existing} />
    </>
  );
}

function LoadTable({ existing }: { existing: ExistingReport }) {
  return (
    <Table
      caption="The same in a table: depth and weight when ways out are shut"
      columns={[
        { head: 'Level' },
        { head: 'Depth', kind: 'figure' },
        { head: 'Load', kind: 'figure' },
        { head: 'Against the deck' },
      ]}
      rows={loadRows(existing).map(({ label, depth, load, exceeds, verdict }) => ({
        cells: [label, depth, load, exceeds === true ? <b class="stop">{verdict}: engineer first</b> : verdict],
      }))}
    />
  );
}

/** That the flows stand on the rain of another place, where they do. */
export function RainAssumed({ assessment }: { assessment: Assessment }) {
  const sentence = rainAssumedSentence(assessment);
  return sentence === null ? null : <p>{sentence}</p>;
}
