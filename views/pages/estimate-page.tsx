import {
  baseSentence,
  differenceSentence,
  layoutRow,
  shownLayout,
  sumpSentence,
} from '../../src/core/report/page-layouts.ts';
import { SourceBook } from '../../src/core/report/page-sources.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import { planPair } from '../../src/drawing/plan-pair.ts';
import type { PageSetting } from '../page-setting.ts';
import { Assumptions } from '../parts/assumptions.tsx';
import { BeforeAfter } from '../parts/before-after.tsx';
import { BoardTables } from '../parts/board-tables.tsx';
import { EnergyRules } from '../parts/energy-rules.tsx';
import { Findings } from '../parts/findings.tsx';
import { Layouts } from '../parts/layouts.tsx';
import { Limits } from '../parts/limits.tsx';
import { Materials } from '../parts/materials.tsx';
import { CoveringEvidence, CoveringsCompared, SameUnderAll } from '../parts/membranes.tsx';
import { Planned } from '../parts/planned.tsx';
import { RulesAndRain } from '../parts/rules.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { NewHeightsTable, Thermal } from '../parts/thermal.tsx';
import { Outlets, RainAssumed } from '../parts/water-tables.tsx';
import { WorkDays } from '../parts/work-days.tsx';
import { Workings } from '../parts/workings.tsx';

export interface EstimatePageProps {
  assessment: Assessment;
  setting: PageSetting;
}

function Figures({ assessment }: { assessment: Assessment }) {
  const layout = shownLayout(assessment);
  if (layout === null) return null;
  const row = layoutRow(assessment, layout);
  const said = [sumpSentence(layout), baseSentence(layout)].filter((line) => line !== null);
  return (
    <>
      <dl class="terms">
        <dt>Layout</dt>
        <dd>{row.title}</dd>
        <dt>Planes, valleys</dt>
        <dd>
          {row.planes}; {row.valleys}
        </dd>
        <dt>Boards</dt>
        <dd>
          {row.thickness}, {row.meanThickness} on average, {row.volume}
        </dd>
        <dt>Levelling</dt>
        <dd>{row.levelling}</dd>
        <dt>R</dt>
        <dd>
          thinnest {row.thinnestR}, effective {row.effectiveR}
        </dd>
        <dt>Added load</dt>
        <dd>{row.addedLoad}</dd>
        <dt>Slope in service</dt>
        <dd>{layout.inServiceNote}</dd>
      </dl>
      {said.map((line) => (
        <p>{line}</p>
      ))}
    </>
  );
}

/** The estimator's paper: figures, quantities, alternatives, what was assumed, sources. */
export function EstimatePage({ assessment, setting }: EstimatePageProps) {
  const layout = shownLayout(assessment);
  const book = new SourceBook(assessment, layout);
  const pair = planPair(assessment, layout);
  return (
    <Sheet assessment={assessment} setting={setting} page="estimate" extraCss={pair.css} places={pair.places}>
      <h1 class="quiet">Estimate: {assessment.label}</h1>
      <p class="headline">{assessment.headline}</p>
      <Planned assessment={assessment} />
      <Findings findings={assessment.findings.filter(({ level }) => level === 'stop')} book={book} />
      <BeforeAfter pair={pair} links={setting.links} />
      {layout === null ? null : <p class="difference">{differenceSentence(assessment.existing, layout)}</p>}
      <h2>Figures</h2>
      <Figures assessment={assessment} />
      {layout === null ? null : (
        <>
          <h2>Insulation</h2>
          <Thermal layout={layout} book={book} />
        </>
      )}
      {assessment.energyRules === undefined ? null : (
        <>
          <h2>Energy and cool-roof rules</h2>
          <EnergyRules rules={assessment.energyRules} book={book} />
        </>
      )}
      <RulesAndRain assessment={assessment} book={book} />
      <h2>Heights</h2>
      <Limits assessment={assessment} layout={layout} book={book} />
      {layout === null ? null : <NewHeightsTable layout={layout} ground={assessment.planned.ground} />}
      <h2>Alternatives</h2>
      <Layouts assessment={assessment} shown={layout} links={setting.links} />
      <h2>Outlets</h2>
      <RainAssumed assessment={assessment} />
      {layout === null ? null : <Outlets caption="New roof" outlets={layout.outlets} book={book} />}
      <h2>Quantities</h2>
      {layout === null || layout.rejected !== null ? null : <BoardTables layout={layout} />}
      <Materials assessment={assessment} book={book} />
      {layout === null ? null : <WorkDays layout={layout} book={book} />}
      <h2>Covering</h2>
      <CoveringsCompared assessment={assessment} />
      <CoveringEvidence assessment={assessment} book={book} />
      <SameUnderAll assessment={assessment} />
      <h2>To do and to know</h2>
      <Findings findings={assessment.findings.filter(({ level }) => level !== 'stop')} book={book} />
      <h2>What was assumed</h2>
      <Assumptions assumed={assessment.assumed} />
      <Workings workings={assessment.workings} book={book} />
      <p>{assessment.deferral}</p>
    </Sheet>
  );
}
