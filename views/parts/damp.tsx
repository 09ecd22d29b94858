import {
  constraintWords,
  dampVerdictWords,
  monthWords,
  optionRows,
  profileRows,
  testStateWords,
  winterWords,
} from '../../src/core/report/page-damp.ts';
import type { SourceBook } from '../../src/core/report/page-sources.ts';
import type { MoistureReport } from '../../src/core/report/types.ts';
import { SourceMark } from './source-mark.tsx';
import { Table } from './table.tsx';

export interface DampProps {
  moisture: MoistureReport;
  book: SourceBook;
}

function Points({ title, items }: { title: string; items: readonly string[] }) {
  if (items.length === 0) return null;
  return (
    <>
      <p>
        <b>{title}</b>
      </p>
      <ul>
        {items.map((item) => (
          <li>{item}</li>
        ))}
      </ul>
    </>
  );
}

function Tests({ moisture, book }: DampProps) {
  if (moisture.tests.length === 0) return null;
  return (
    <Table
      caption="Tests against damp, the deciding ones first"
      columns={[{ head: 'Test' }, { head: 'Stands' }, { head: 'Asked' }, { head: 'There' }]}
      rows={moisture.tests.map(({ title, state, asked, found, note, source }) => ({
        cells: [
          <>
            {title}
            <SourceMark book={book} note={source} />
            <span class="why">{note}</span>
          </>,
          state === 'fails' ? <b>{testStateWords[state]}</b> : testStateWords[state],
          asked,
          found,
        ],
      }))}
    />
  );
}

function Options({ moisture, book }: DampProps) {
  if (moisture.options.length < 2) return null;
  const asked = constraintWords(moisture);
  return (
    <>
      {asked === null ? null : <p>{asked}</p>}
      {moisture.relax.length === 0 ? null : (
        <Points
          title="Nothing keeps all of that. What to relax first:"
          items={moisture.relax.map(({ text }) => text)}
        />
      )}
      <Table
        caption="Ways to place the insulation"
        columns={[
          { head: 'Way' },
          { head: 'R', kind: 'figure' },
          { head: 'Stays dry' },
          { head: 'Code' },
          { head: 'R asked for' },
        ]}
        rows={optionRows(moisture).map(({ option, r, dry, code, target, breaks }) => ({
          cells: [
            <>
              {option.title}
              <SourceMark book={book} note={option.source} />
              <span class="why">{option.why}</span>
              {breaks === '' ? null : <span class="why">Against: {breaks}</span>}
            </>,
            r,
            dry,
            code,
            target,
          ],
        }))}
      />
    </>
  );
}

function InFull({ moisture }: { moisture: MoistureReport }) {
  const rows = profileRows(moisture);
  const months = monthWords(moisture);
  if (rows.length === 0) return null;
  return (
    <details>
      <summary>January through the roof, and the year</summary>
      <Table
        caption="At the thinnest place in January, outside first, by steady diffusion"
        columns={[
          { head: 'Face' },
          { head: 'Temperature', kind: 'figure' },
          { head: 'Dew point there', kind: 'figure' },
        ]}
        rows={rows.map(({ face, air, dew }) => ({ cells: [face, air, dew] }))}
      />
      <p>
        A steady picture makes every roof that is sealed on top look wet under its covering; the tests above decide, and
        what the months bring.
      </p>
      {months === null ? null : <p>{months}</p>}
    </details>
  );
}

/** Whether water gathers inside the roof: the answer first, then what to do, then the tests. */
export function Damp({ moisture, book }: DampProps) {
  const { verdict, answer, reasons, todo, notKnown, retarder, venting } = moisture;
  const winter = winterWords(moisture);
  return (
    <>
      <p>
        <b>{dampVerdictWords[verdict]}</b> {answer}
      </p>
      <Points title="Do" items={todo} />
      <Points title="Not known" items={notKnown} />
      <Tests moisture={moisture} book={book} />
      <Options moisture={moisture} book={book} />
      {winter === null ? null : <p>{winter}</p>}
      {verdict === 'not-asked' ? null : (
        <>
          <p>
            {retarder.text}
            <SourceMark book={book} note={retarder.source} />
          </p>
          <p>
            {venting.text}
            <SourceMark book={book} note={venting.source} />
          </p>
        </>
      )}
      <Points title="Why" items={reasons} />
      <InFull moisture={moisture} />
    </>
  );
}
