import { asBuiltRows } from '../../src/core/report/page-as-built.ts';
import { checkRows } from '../../src/core/report/page-crew.ts';
import type { Assessment, Layout } from '../../src/core/report/types.ts';
import { placesDrawn } from '../../src/drawing/place-css.ts';
import { planAsLaid } from '../../src/drawing/plan-after.ts';
import type { AsBuiltForm, AsBuiltResult } from '../as-built-types.ts';
import { ProblemSummary } from '../forms/problem-summary.tsx';
import type { PageLinks } from '../page-setting.ts';
import { Figure } from './figure.tsx';
import { Places } from './places.ts';
import { Table } from './table.tsx';
import { Ponds } from './water-tables.tsx';

interface JudgedProps {
  assessment: Assessment;
  layout: Layout;
  result: AsBuiltResult;
}

function Judged({ assessment, layout, result }: JudgedProps) {
  const laid = planAsLaid(assessment, layout, result.ponds);
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
      {result.ponds.length === 0 ? null : (
        <>
          <div class="wide">
            <Figure list={laid} id="laid" />
          </div>
          <Places.Provider value={placesDrawn([laid])}>
            <Ponds ponds={result.ponds} />
          </Places.Provider>
        </>
      )}
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
  assessment: Assessment;
  layout: Layout;
  /** Null on saved papers: then the table of check points has the blanks. */
  links: PageLinks | null;
  form: AsBuiltForm | null;
}

/** Heights as laid, typed in as they are read, and what they come to. */
export function AsBuilt({ assessment, layout, links, form }: AsBuiltProps) {
  if (links === null) return null;
  return (
    <section id="as-laid" class="screen" aria-label="As laid">
      <h2>As laid</h2>
      <ProblemSummary
        problems={(form?.problems ?? []).map(({ field, message }) => ({
          href: `#${field}`,
          where: `Point ${field.replace('height-', '')}`,
          text: message,
        }))}
        kept="Nothing that was typed is lost; the heights are judged when all of them can be read."
      />
      {form?.result == null ? null : <Judged assessment={assessment} layout={layout} result={form.result} />}
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
    </section>
  );
}
