import {
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
        caption="Heat into the room on that day"
        columns={[
          { head: 'Roof' },
          { head: 'Surface at its hottest', kind: 'figure' },
          { head: 'Most heat, Btu/h per sq ft', kind: 'figure' },
          { head: 'In the day, Btu per sq ft', kind: 'figure' },
          { head: 'Whole section like this, Btu', kind: 'figure' },
        ]}
        rows={heatRows(heat).map(({ name, made, surface, peak, day, section }) => ({
          cells: [
            <>
              {name}
              <span class="why">{made}</span>
            </>,
            surface,
            peak,
            <b>{day}</b>,
            section,
          ],
        }))}
      />
      {heat.split === null ? null : <p>{splitSentence(heat.split)}</p>}
      {winter === null ? null : <p>{winter}</p>}
      {options.length === 0 ? null : (
        <details>
          <summary>The new roof in every other covering</summary>
          <Table
            caption="The same boards under each covering, as aged; SRI by ASTM E1980"
            columns={[
              { head: 'Covering' },
              { head: 'Reflects', kind: 'figure' },
              { head: 'SRI', kind: 'figure' },
              { head: 'Surface', kind: 'figure' },
              { head: 'Most heat, Btu/h per sq ft', kind: 'figure' },
              { head: 'In the day, Btu per sq ft', kind: 'figure' },
            ]}
            rows={options.map(({ name, ruledOut, reflects, sri, surface, peak, day }) => ({
              cells: [ruledOut ? `${name} (out on this roof)` : name, reflects, sri, surface, peak, day],
            }))}
          />
        </details>
      )}
    </>
  );
}
