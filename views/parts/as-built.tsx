import { asBuiltRows } from '../../src/core/report/page-as-built.ts';
import { checkRows } from '../../src/core/report/page-crew.ts';
import type { Layout } from '../../src/core/report/types.ts';
import type { AsBuiltForm, AsBuiltResult } from '../as-built-types.ts';
import type { PageLinks } from '../page-setting.ts';
import { Table } from './table.tsx';
import { Ponds } from './water-tables.tsx';

function Judged({ result }: { result: AsBuiltResult }) {
  return (
    <section aria-label="Judgement of the heights as laid">
      <p class="headline">
        {result.goOn ? null : <b class="stop">Stop. </b>}
        {result.judgement}
      </p>
      {result.advice.length === 0 ? null : (
        <ul>
          {result.advice.map((text) => (
            <li>{text}</li>
          ))}
        </ul>
      )}
      <Ponds ponds={result.ponds} drawing="boards" />
      <Table
        caption="Read against the plan"
        columns={[
          { head: 'Point' },
          { head: 'Plan', kind: 'figure' },
          { head: 'Read', kind: 'figure' },
          { head: 'Difference', kind: 'figure' },
          { head: 'Verdict' },
        ]}
        rows={asBuiltRows(result.points).map(({ id, design, read, difference, verdict, off }) => ({
          place: `check-${id}`,
          cells: [id, design, read, difference, off ? <b>{verdict}</b> : verdict],
        }))}
      />
    </section>
  );
}

interface FieldProps {
  id: string;
  where: string;
  finished: string;
  form: AsBuiltForm | null;
}

function Field({ id, where, finished, form }: FieldProps) {
  const name = `height-${id}`;
  const problem = form?.problems.find(({ field }) => field === name);
  return (
    <>
      <input
        class="reading"
        type="text"
        name={name}
        id={name}
        value={form?.typed[name] ?? ''}
        aria-label={`Height at point ${id}, ${where}; plan ${finished}`}
        aria-invalid={problem === undefined ? undefined : 'true'}
        aria-describedby={problem === undefined ? undefined : `${name}-problem`}
      />
      {problem === undefined ? null : (
        <span id={`${name}-problem`} class="stop">
          {' '}
          {problem.message}
        </span>
      )}
    </>
  );
}

export interface AsBuiltProps {
  layout: Layout;
  /** Null on saved papers: then the table of check points has the blanks. */
  links: PageLinks | null;
  form: AsBuiltForm | null;
}

/** Heights as laid, typed in as they are read, and what they come to. */
export function AsBuilt({ layout, links, form }: AsBuiltProps) {
  if (links === null) return null;
  return (
    <div id="as-laid" class="screen">
      {form?.result == null ? null : <Judged result={form.result} />}
      <form method="post" action={`${links.asBuilt}#as-laid`}>
        <p>
          Heights above the lowest outlet, as a tape or a level reads them: 3 1/4, 3.25, 3-1/4&quot;, 8 cm. Leave empty
          what was not read.
        </p>
        <Table
          caption="Heights as laid"
          columns={[{ head: 'Point' }, { head: 'Where' }, { head: 'Plan', kind: 'figure' }, { head: 'Read' }]}
          rows={checkRows(layout).map(({ id, place, where, finished }) => ({
            place,
            cells: [id, where, finished, <Field id={id} where={where} finished={finished} form={form} />],
          }))}
        />
        <button type="submit">Judge the heights</button>
      </form>
    </div>
  );
}
