import { crewFindings } from '../../src/core/report/crew-damp.ts';
import { repairOrder } from '../../src/core/report/crew-repair.ts';
import type { WorkStep } from '../../src/core/report/crew-step.ts';
import { checkRows, crewCautions, nailerRows, orderOfWork, spotTolerance } from '../../src/core/report/page-crew.ts';
import { shownLayout } from '../../src/core/report/page-layouts.ts';
import { SourceBook } from '../../src/core/report/page-sources.ts';
import type { Assessment, Layout } from '../../src/core/report/types.ts';
import { chalkRows } from '../../src/drawing/chalk-rows.ts';
import { planPair } from '../../src/drawing/plan-pair.ts';
import { inches } from '../../src/units/print.ts';
import type { AsBuiltForm } from '../as-built-types.ts';
import type { PageSetting } from '../page-setting.ts';
import { AsBuilt } from '../parts/as-built.tsx';
import { BoardPlans } from '../parts/board-plans.tsx';
import { BoardTables } from '../parts/board-tables.tsx';
import { Cautions } from '../parts/cautions.tsx';
import { Findings } from '../parts/findings.tsx';
import { HeightsPlan } from '../parts/heights-plan.tsx';
import { Inspection } from '../parts/inspection.tsx';
import { NothingLaid } from '../parts/nothing-laid.tsx';
import { Planned } from '../parts/planned.tsx';
import { Sections } from '../parts/sections.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { SourceList } from '../parts/source-mark.tsx';
import { Table } from '../parts/table.tsx';
import { NewHeightsTable } from '../parts/thermal.tsx';

export interface CrewSheetPageProps {
  assessment: Assessment;
  setting: PageSetting;
  /** What came back from the as-built form; null before anything was typed. */
  asBuilt?: AsBuiltForm | null;
}

function Order({ steps }: { steps: readonly WorkStep[] }) {
  return (
    <ol class="steps">
      {steps.map(({ title, lines, hold }) => (
        <li>
          {hold ? <span class="hold">Hold point</span> : null}
          <b>{title}</b>
          <ul>
            {lines.map((text) => (
              <li>{text}</li>
            ))}
          </ul>
        </li>
      ))}
    </ol>
  );
}

function Lines({ assessment, layout }: { assessment: Assessment; layout: Layout }) {
  const chalk = chalkRows(layout, assessment.plan.edges);
  return (
    <>
      {chalk.length === 0 ? null : (
        <Table
          caption="Chalk lines at the rows, measured square off the outlet or edge"
          columns={[{ head: 'From' }, { head: 'Lines at' }]}
          rows={chalk.map(({ start, distances }) => ({ cells: [start, distances] }))}
        />
      )}
      <Table
        caption={`Wood at the edges: height over ${assessment.planned.ground} at both ends`}
        columns={[
          { head: 'Edge' },
          { head: 'Length', kind: 'figure' },
          { head: 'Starts at', kind: 'figure' },
          { head: 'Ends at', kind: 'figure' },
          { head: 'Set', kind: 'blank' },
        ]}
        rows={nailerRows(layout).map(({ edge, length, start, end }) => ({ cells: [edge, length, start, end, ''] }))}
      />
    </>
  );
}

function Survey({ layout, ground }: { layout: Layout; ground: string }) {
  const { withinIn } = spotTolerance();
  return (
    <Table
      caption={`Check points, good within ${inches(withinIn)}. Ground: ${ground}, against point 1. Finished: above the lowest outlet, cover board on.`}
      columns={[
        { head: 'Point' },
        { head: 'Where' },
        { head: 'Ground', kind: 'figure' },
        { head: 'Ground read', kind: 'blank' },
        { head: 'Build-up', kind: 'figure' },
        { head: 'Finished', kind: 'figure' },
        { head: 'Finished read', kind: 'blank' },
      ]}
      rows={checkRows(layout).map(({ id, place, where, base, buildUp, finished }) => ({
        place,
        cells: [id, where, base, '', buildUp, finished, ''],
      }))}
    />
  );
}

/** What the crew lead works from: cautions, order of work, boards, lines, heights to check, and the heights as laid. */
export function CrewSheetPage({ assessment, setting, asBuilt = null }: CrewSheetPageProps) {
  const layout = shownLayout(assessment);
  const book = new SourceBook(assessment, layout);
  const repair = repairOrder(assessment);
  const { top, rest } = crewCautions(assessment.cautions);
  return (
    <Sheet assessment={assessment} setting={setting} page="crew">
      <h1 class="quiet">Crew sheet: {assessment.label}</h1>
      <p class="headline">Provisional until {assessment.planned.ground} is shot.</p>
      <Planned assessment={assessment} />
      <Findings findings={crewFindings(assessment.findings)} book={book} />
      <h2>Before anybody goes up</h2>
      <Cautions cautions={top} book={book} />
      <p>{assessment.deferral}</p>
      {repair === null ? null : (
        <>
          <h2>Order of work: the roof that is there</h2>
          <Order steps={repair} />
          <h2>What was found</h2>
          <Inspection assessment={assessment} book={book} links={setting.links} />
          <h2 class="sheet-break">If a new roof is decided on after all</h2>
          <p>Nothing below belongs to the work above.</p>
        </>
      )}
      {layout === null || layout.rejected !== null ? (
        <NothingLaid assessment={assessment} to="lay" />
      ) : (
        <>
          <h2>Order of work{repair === null ? '' : ': a new roof'}</h2>
          <Order steps={orderOfWork(assessment, layout)} />
          <h2 class="sheet-break">Boards</h2>
          <p>{layout.title}.</p>
          <BoardPlans assessment={assessment} layout={layout} />
          <BoardTables layout={layout} />
          <h2>Lines and wood</h2>
          <Lines assessment={assessment} layout={layout} />
          <NewHeightsTable layout={layout} ground={assessment.planned.ground} />
          <h2>Heights</h2>
          <HeightsPlan assessment={assessment} layout={layout} links={setting.links} />
          <Sections sections={planPair(assessment, layout).sections} />
          <h2>Check points</h2>
          <Survey layout={layout} ground={assessment.planned.ground} />
          <AsBuilt assessment={assessment} layout={layout} links={setting.links} form={asBuilt} />
        </>
      )}
      <h2>The other cautions</h2>
      <Cautions cautions={rest} book={book} />
      <details>
        <summary>Sources</summary>
        <SourceList book={book} />
      </details>
    </Sheet>
  );
}
