import {
  baseSentence,
  boundSentence,
  differenceSentence,
  shownLayout,
  sumpSentence,
  todaySentence,
} from '../../src/core/report/page-layouts.ts';
import { SourceBook } from '../../src/core/report/page-sources.ts';
import type { Assessment, Layout } from '../../src/core/report/types.ts';
import { planPair } from '../../src/drawing/plan-pair.ts';
import type { PageSetting } from '../page-setting.ts';
import { Alternatives } from '../parts/alternatives.tsx';
import { Assumptions } from '../parts/assumptions.tsx';
import { AtticVents } from '../parts/attic-vents.tsx';
import { BeforeAfter } from '../parts/before-after.tsx';
import { Cautions } from '../parts/cautions.tsx';
import { Damp } from '../parts/damp.tsx';
import { Decides } from '../parts/decides.tsx';
import { EnergyRules } from '../parts/energy-rules.tsx';
import { Findings } from '../parts/findings.tsx';
import { Heat } from '../parts/heat.tsx';
import { HeightsPlan } from '../parts/heights-plan.tsx';
import { Inspection } from '../parts/inspection.tsx';
import { Layouts } from '../parts/layouts.tsx';
import { LimitLines, Limits } from '../parts/limits.tsx';
import { Materials } from '../parts/materials.tsx';
import { Membranes } from '../parts/membranes.tsx';
import { RulesAndRain } from '../parts/rules.tsx';
import { Scope } from '../parts/scope.tsx';
import { Sections } from '../parts/sections.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { SourceMark } from '../parts/source-mark.tsx';
import { NewHeightsTable, Thermal } from '../parts/thermal.tsx';
import { WaterMaps } from '../parts/water-map.tsx';
import { Flats, Loads, Outlets, Ponds } from '../parts/water-tables.tsx';
import { Workings } from '../parts/workings.tsx';

export interface ResultPageProps {
  assessment: Assessment;
  setting: PageSetting;
  /** Layout to draw; the chosen one where none is asked for. */
  layoutId?: string | null;
  /** Where an edit waits that cannot be read yet; the answer is then for the last readable file. */
  draftHref?: string | null;
}

function LayoutWords({ layout, book }: { layout: Layout; book: SourceBook }) {
  const said = [sumpSentence(layout), baseSentence(layout)].filter((line) => line !== null);
  return (
    <>
      {layout.groundFill == null ? null : <p>{layout.groundFill.note}</p>}
      <p>{layout.inServiceNote}</p>
      {layout.overflow.note === '' ? null : (
        <p>
          Overflow: {layout.overflow.note}
          <SourceMark book={book} note={layout.overflow.source} />
        </p>
      )}
      {said.map((line) => (
        <p>{line}</p>
      ))}
    </>
  );
}

/** The answer for one roof: one sentence, the plan always in sight, then why, then the tables. */
export function ResultPage({ assessment, setting, layoutId = null, draftHref = null }: ResultPageProps) {
  const { existing, findings } = assessment;
  const layout = shownLayout(assessment, layoutId);
  const book = new SourceBook(assessment, layout);
  const pair = planPair(assessment, layout);
  const stops = findings.filter(({ level }) => level === 'stop');
  const rest = findings.filter(({ level }) => level !== 'stop');
  const bound = layout === null ? null : boundSentence(layout);
  return (
    <Sheet assessment={assessment} setting={setting} page="result" extraCss={pair.css} places={pair.places}>
      <div class="answer">
        <section class="say" aria-label="Answer">
          <h1 class="quiet">{assessment.label}</h1>
          {draftHref === null ? null : (
            <p class="draft-note">
              An edit waits that cannot be read yet; this answer is for the last file that could be read.{' '}
              <a href={draftHref}>Put the edit right</a>
            </p>
          )}
          <p class="headline">{assessment.headline}</p>
          {assessment.relax === null ? null : (
            <p>
              <b>What to relax first:</b> {assessment.relax}
            </p>
          )}
          <Findings findings={stops} book={book} />
        </section>
        <section class="plans" aria-label="Plans" id="plans">
          <div class="stay">
            <BeforeAfter pair={pair} links={setting.links} />
          </div>
        </section>
        <div class="body">
          <p class="difference">{layout === null ? todaySentence(existing) : differenceSentence(existing, layout)}</p>
          <Decides assessment={assessment} links={setting.links} />
          {assessment.scope === undefined ? null : (
            <>
              <h2 id="answer-scope">What to do with the old roof</h2>
              <Scope scope={assessment.scope} book={book} />
            </>
          )}
          <h2 id="answer-found">What was found</h2>
          <Inspection assessment={assessment} book={book} links={setting.links} />
          <h2 id="answer-water">Standing water</h2>
          <Sections sections={pair.sections.slice(0, 1)} />
          {pair.sections.length < 2 ? null : (
            <details>
              <summary>The section across it</summary>
              <Sections sections={pair.sections.slice(1)} />
            </details>
          )}
          <Ponds ponds={existing.ponds} limits={assessment.ruleSet.ponds} />
          <Flats flats={existing.flats} />

          <h2 id="answer-heights">Heights decide first</h2>
          <LimitLines assessment={assessment} layout={layout} />
          <details>
            <summary>Heights in full</summary>
            <Limits assessment={assessment} layout={layout} book={book} />
          </details>
          {layout === null ? null : <NewHeightsTable layout={layout} />}

          <h2 id="answer-layouts">Layouts</h2>
          <Layouts assessment={assessment} shown={layout} links={setting.links} />
          {layout === null ? null : <HeightsPlan assessment={assessment} layout={layout} links={setting.links} />}
          {layout === null ? null : <LayoutWords layout={layout} book={book} />}
          {layout === null ? null : (
            <>
              <h2>Insulation</h2>
              <Thermal layout={layout} book={book} />
            </>
          )}
          {bound === null ? null : (
            <details>
              <summary>How good is it?</summary>
              <p>{bound}</p>
            </details>
          )}

          <h2>Other ways</h2>
          <Alternatives alternatives={assessment.alternatives ?? []} book={book} />

          <h2 id="answer-outlets">Ways out for the water</h2>
          <WaterMaps assessment={assessment} layout={layout} links={setting.links} />
          {layout === null ? null : <Outlets caption="New roof" outlets={layout.outlets} book={book} />}
          <details>
            <summary>The roof as it is</summary>
            <Outlets caption="Outlets there now" outlets={existing.outlets} book={book} />
          </details>
          <h2>What the water weighs</h2>
          <Loads existing={existing} />

          <h2 id="answer-covering">Covering</h2>
          <Membranes assessment={assessment} book={book} />

          {assessment.heat === undefined ? null : (
            <>
              <h2 id="answer-heat">A hot day on this roof</h2>
              <Heat heat={assessment.heat} book={book} />
            </>
          )}

          {assessment.moisture === undefined ? null : (
            <>
              <h2 id="answer-damp">Damp inside the roof</h2>
              <Damp moisture={assessment.moisture} book={book} />
            </>
          )}
          {assessment.energyRules === undefined ? null : (
            <>
              <h2>Energy and cool-roof rules</h2>
              <EnergyRules rules={assessment.energyRules} book={book} />
            </>
          )}
          {assessment.vents == null ? null : (
            <>
              <h2>The attic beside it</h2>
              <AtticVents vents={assessment.vents} book={book} />
            </>
          )}

          <h2 id="answer-to-do">To do and to know</h2>
          <Findings findings={rest} book={book} />

          <h2 id="answer-materials">Materials</h2>
          <Materials materials={assessment.materials} book={book} />

          <h2 id="answer-cautions">Cautions</h2>
          <Cautions cautions={assessment.cautions.filter(({ severity }) => severity === 4)} book={book} />
          <details>
            <summary>The other cautions</summary>
            <Cautions cautions={assessment.cautions.filter(({ severity }) => severity < 4)} book={book} />
          </details>
          <p>{assessment.deferral}</p>

          <h2 id="answer-assumed">What was assumed</h2>
          <Assumptions assumed={assessment.assumed} />

          <h2>Rules, rain, sources</h2>
          <RulesAndRain assessment={assessment} book={book} />
          <Workings workings={assessment.workings} book={book} />
        </div>
      </div>
    </Sheet>
  );
}
