import {
  evidenceTables,
  type MembraneRow,
  membraneRows,
  outRows,
  weighedRows,
  weightRows,
} from '../../src/core/report/page-membranes.ts';
import type { SourceBook } from '../../src/core/report/page-sources.ts';
import type { Assessment, MembraneReport, MembraneWeighing } from '../../src/core/report/types.ts';
import { SourceMark } from './source-mark.tsx';
import { Table } from './table.tsx';

interface PartProps {
  assessment: Assessment;
  book: SourceBook;
}

function Ranking({ caption, rows, chosen }: { caption: string; rows: readonly MembraneRow[]; chosen: string | null }) {
  return (
    <Table
      caption={caption}
      columns={[
        { head: 'Covering' },
        { head: 'Points of 10', kind: 'figure' },
        { head: 'Place', kind: 'figure' },
        { head: 'In a sentence' },
      ]}
      rows={rows.map(({ id, name, points, places, words }) => ({
        tone: id === chosen ? 'chosen' : 'plain',
        cells: [name, points, places, words],
      }))}
    />
  );
}

/** The coverings that may be used: points, how far the evidence moves them, one sentence. Those that never come first are folded. */
export function CoveringsCompared({ assessment }: Pick<PartProps, 'assessment'>) {
  const rows = membraneRows(assessment);
  const first = rows.filter(({ mayBeFirst }) => mayBeFirst);
  const never = rows.filter(({ mayBeFirst }) => !mayBeFirst);
  const chosen = assessment.chosenMembrane;
  if (rows.length === 0) return null;
  return (
    <>
      <Ranking caption="Coverings that may come first" rows={first} chosen={chosen} />
      <p class="quiet">
        In brackets and under place: from the bad to the good end of the evidence on heat, life and first cost.
      </p>
      {never.length === 0 ? null : (
        <details>
          <summary>May be used too, but not first by these weights ({never.length})</summary>
          <Ranking caption="Not first whatever the ranges, by these weights" rows={never} chosen={chosen} />
        </details>
      )}
    </>
  );
}

function RuledOut({ assessment, book }: PartProps) {
  const rows = outRows(assessment);
  if (rows.length === 0) return null;
  return (
    <details>
      <summary>Ruled out on this roof, and why</summary>
      <Table
        caption="Out before anything was weighed"
        columns={[{ head: 'Covering' }, { head: 'Why' }]}
        rows={rows.map(({ names, why, source }) => ({
          cells: [
            names,
            <>
              {why}
              <SourceMark book={book} note={source} />
            </>,
          ],
        }))}
      />
    </details>
  );
}

/** Every cell of the evidence with its points and its source, count by count. */
export function CoveringEvidence({ assessment, book }: PartProps) {
  const tables = evidenceTables(assessment);
  if (tables.length === 0) return null;
  return (
    <details>
      <summary>The evidence, count by count, with its sources</summary>
      <p>
        Points go from 0 to 10; in brackets what the bad and the good end of the evidence would earn. Heat, life and
        first cost are ranges. What was judged without a figure has one value and is held there.
      </p>
      {tables.map(({ title, weight, rows }) => (
        <details>
          <summary>
            {title}: weight {weight}
          </summary>
          <Table
            caption={title}
            columns={[
              { head: 'Coverings' },
              { head: 'What is known' },
              { head: 'Points', kind: 'figure' },
              { head: 'From' },
            ]}
            rows={rows.map(({ names, figure, points, trust, source }) => ({
              cells: [
                names,
                figure,
                points,
                <>
                  {trust}
                  <SourceMark book={book} note={source} />
                </>,
              ],
            }))}
          />
        </details>
      ))}
    </details>
  );
}

function Weighing({ weighing }: { weighing: MembraneWeighing }) {
  return (
    <details>
      <summary>How it was weighed</summary>
      <p>{weighing.why}</p>
      <Table
        caption="Weights"
        columns={[
          { head: 'Counts' },
          { head: 'Weight', kind: 'figure' },
          ...(weighing.own ? [{ head: 'Usual here', kind: 'figure' as const }] : []),
          { head: 'Moved by' },
        ]}
        rows={weightRows(weighing).map(({ title, weight, usual, by }) => ({
          cells: [title, weight, ...(weighing.own ? [usual] : []), by],
        }))}
      />
    </details>
  );
}

function CountByCount({ chosen }: { chosen: MembraneReport }) {
  return (
    <details>
      <summary>Why {chosen.name}, count by count</summary>
      <Table
        caption={`Why ${chosen.name}`}
        columns={[
          { head: 'Counts' },
          { head: 'Weight', kind: 'figure' },
          { head: 'Points of 10', kind: 'figure' },
          { head: 'Reason' },
        ]}
        rows={weighedRows(chosen).map(({ criterion, weight, score, text }) => ({
          cells: [criterion, weight, score, text],
        }))}
      />
    </details>
  );
}

function Chosen({ chosen, weighing }: { chosen: MembraneReport; weighing: MembraneWeighing | undefined }) {
  return (
    <>
      <p>
        <b>{chosen.name}.</b> {chosen.plain}
      </p>
      {weighing?.own === true ? (
        <p>
          <b>Your own weights are used,</b> not the usual ones for such a roof; without them the answer may differ.
        </p>
      ) : null}
      {chosen.flips.length === 0 ? null : (
        <>
          <h3>What would change the answer</h3>
          <ul>
            {chosen.flips.map((flip) => (
              <li>{flip}</li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

/** What is done under every covering alike. */
export function SameUnderAll({ assessment }: Pick<PartProps, 'assessment'>) {
  const rows = assessment.sameWhichever ?? [];
  if (rows.length === 0) return null;
  return (
    <>
      <h3>The same whichever is chosen</h3>
      <ul>
        {rows.map(({ what, text }) => (
          <li>
            <b>{what}.</b> {text}
          </li>
        ))}
      </ul>
    </>
  );
}

/** Which covering and why: the winner once in words, the others in one table, the rest folded. */
export function Membranes({ assessment, book }: PartProps) {
  const chosen = assessment.membranes.find(({ id }) => id === assessment.chosenMembrane);
  const weighing = assessment.membraneWeighing;
  return (
    <>
      {chosen === undefined ? (
        <p>
          <b class="stop">Stop</b> No covering passes as the job stands.
        </p>
      ) : (
        <Chosen chosen={chosen} weighing={weighing} />
      )}
      <CoveringsCompared assessment={assessment} />
      <h3>Why not the same again</h3>
      <p>{assessment.whyNotTheSame}</p>
      <SameUnderAll assessment={assessment} />
      <RuledOut assessment={assessment} book={book} />
      {chosen === undefined ? null : <CountByCount chosen={chosen} />}
      <CoveringEvidence assessment={assessment} book={book} />
      {weighing === undefined ? null : <Weighing weighing={weighing} />}
    </>
  );
}
