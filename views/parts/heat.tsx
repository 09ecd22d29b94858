import {
  EVEN_SENTENCE,
  heatDaySentence,
  heatOptionRows,
  heatRows,
  heatSentence,
  splitSentence,
  winterSentence,
} from '../../src/core/report/page-heat.ts';
import type { SourceBook } from '../../src/core/report/page-sources.ts';
import type { HeatReport } from '../../src/core/report/types.ts';
import { heatDayDrawing } from '../../src/drawing/heat-day.ts';
import { Figure } from './figure.tsx';
import { SourceMark } from './source-mark.tsx';
import { Table } from './table.tsx';

/** The roof on a hot clear day: the surface hour by hour, heat into the room, and what insulation and color share. */
export function Heat({ heat, book }: { heat: HeatReport; book: SourceBook }) {
  const winter = winterSentence(heat);
  const options = heatOptionRows(heat);
  return (
    <>
      <p>{heatSentence(heat)}</p>
      <div class="ladder">
        <Figure list={heatDayDrawing(heat)} id="heat-day">
          {heatDaySentence(heat)}
          {heat.sources.map((note) => (
            <SourceMark book={book} note={note} />
          ))}
        </Figure>
      </div>
      <Table
        caption="Surface at its hottest, and heat into the space below per sq ft: Btu in the hottest hour, Btu in the day"
        columns={[
          { head: 'Roof' },
          { head: 'Surface', kind: 'figure' },
          { head: 'Btu an hour', kind: 'figure' },
          { head: 'Btu a day', kind: 'figure' },
          { head: 'Whole section, Btu a day', kind: 'figure' },
        ]}
        rows={heatRows(heat).map(({ name, made, surface, surfaceAt, peak, peakAt, day, section }) => ({
          cells: [
            <>
              {name}
              <span class="why">{made}</span>
            </>,
            <>
              {surface}
              <span class="why">{surfaceAt}</span>
            </>,
            <>
              {peak}
              <span class="why">{peakAt}</span>
            </>,
            <b>{day}</b>,
            section,
          ],
        }))}
      />
      {heat.new === null ? null : <p class="quiet">{EVEN_SENTENCE}</p>}
      {heat.split === null ? null : <p>{splitSentence(heat.split)}</p>}
      {winter === null ? null : <p>{winter}</p>}
      {options.length === 0 ? null : (
        <details>
          <summary>The new roof in every other covering</summary>
          <Table
            caption="The same boards under each covering, as aged; SRI by ASTM E1980; Btu per sq ft"
            columns={[
              { head: 'Covering' },
              { head: 'Reflects', kind: 'figure' },
              { head: 'SRI', kind: 'figure' },
              { head: 'Surface', kind: 'figure' },
              { head: 'Btu a day', kind: 'figure' },
            ]}
            rows={options.map(({ name, ruledOut, reflects, sri, surface, day }) => ({
              cells: [ruledOut ? `${name} (out on this roof)` : name, reflects, sri, surface, day],
            }))}
          />
        </details>
      )}
    </>
  );
}
