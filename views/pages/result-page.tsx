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
import { Planned } from '../parts/planned.tsx';
import { RulesAndRain } from '../parts/rules.tsx';
import { Scope } from '../parts/scope.tsx';
import { Sections } from '../parts/sections.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { SourceMark } from '../parts/source-mark.tsx';
import { NewHeightsTable, Thermal } from '../parts/thermal.tsx';
import { WaterMaps } from '../parts/water-map.tsx';
import { Flats, Loads, Outlets, Ponds, RainAssumed } from '../parts/water-tables.tsx';
import { WorkDays } from '../parts/work-days.tsx';
import { Workings } from '../parts/workings.tsx';

export interface ResultPageProps {
  assessment: Assessment;
  setting: PageSetting;
  /** Layout to draw; the chosen one where none is asked for. */
  layoutId?: string | null;
}

/** Sections of the page in their order. */
const heads = {
  scope: 'What to do with the old roof',
  found: 'What was found',
  water: 'Standing water',
  heights: 'Heights decide first',
  layouts: 'Layouts',
  insulation: 'Insulation',
  'other-ways': 'Other ways',
  outlets: 'Ways out for the water',
  load: 'What the water weighs',
  covering: 'Covering',
  heat: 'A hot day on this roof',
  damp: 'Damp inside the roof',
  energy: 'Energy and cool-roof rules',
  attic: 'The attic beside it',
  'to-do': 'To do and to know',
  materials: 'Materials',
  cautions: 'Cautions',
  assumed: 'What was assumed',
  rules: 'Rules, rain, sources',
} as const;

type HeadName = keyof typeof heads;

const Head = ({ to }: { to: HeadName }) => <h2 id={`answer-${to}`}>{heads[to]}</h2>;

/** The page is long: from its top every section is one step away. */
function OnThisPage({ without }: { without: readonly HeadName[] }) {
  const shown = (Object.keys(heads) as HeadName[]).filter((name) => !without.includes(name));
  return (
    <nav class="jump" aria-label="On this page">
      <ul>
        {shown.map((name) => (
          <li>
            <a href={`#answer-${name}`}>{heads[name]}</a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

/** Sections that a roof without what they are about does not have. */
function absent({ scope, heat, moisture, energyRules, vents }: Assessment, layout: Layout | null): HeadName[] {
  return [
    ...(scope === undefined ? (['scope'] as const) : []),
    ...(layout === null ? (['insulation'] as const) : []),
    ...(heat === undefined ? (['heat'] as const) : []),
    ...(moisture === undefined ? (['damp'] as const) : []),
    ...(energyRules === undefined ? (['energy'] as const) : []),
    ...(vents == null ? (['attic'] as const) : []),
  ];
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
export function ResultPage({ assessment, setting, layoutId = null }: ResultPageProps) {
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
        <section class="say" aria-label="Answer" id="answer-stops">
          <h1 class="quiet">{assessment.label}</h1>
          <p class="headline">{assessment.headline}</p>
          <Planned assessment={assessment} />
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
          <OnThisPage without={absent(assessment, layout)} />
          <Decides assessment={assessment} links={setting.links} />
          {assessment.scope === undefined ? null : (
            <>
              <Head to="scope" />
              <Scope scope={assessment.scope} planned={assessment.planned} book={book} />
            </>
          )}
          <Head to="found" />
          <Inspection assessment={assessment} book={book} links={setting.links} />
          <Head to="water" />
          <Sections sections={pair.sections.slice(0, 1)} />
          {pair.sections.length < 2 ? null : (
            <details>
              <summary>The section across it</summary>
              <Sections sections={pair.sections.slice(1)} />
            </details>
          )}
          <Ponds ponds={existing.ponds} limits={assessment.ruleSet.ponds} />
          <Flats flats={existing.flats} />

          <Head to="heights" />
          <LimitLines assessment={assessment} layout={layout} />
          <details>
            <summary>Heights in full</summary>
            <Limits assessment={assessment} layout={layout} book={book} />
          </details>
          {layout === null ? null : <NewHeightsTable layout={layout} ground={assessment.planned.ground} />}

          <Head to="layouts" />
          <Layouts assessment={assessment} shown={layout} links={setting.links} />
          {layout === null ? null : <HeightsPlan assessment={assessment} layout={layout} links={setting.links} />}
          {layout === null ? null : <LayoutWords layout={layout} book={book} />}
          {layout === null ? null : (
            <>
              <Head to="insulation" />
              <Thermal layout={layout} book={book} />
            </>
          )}
          {bound === null ? null : (
            <details>
              <summary>How good is it?</summary>
              <p>{bound}</p>
            </details>
          )}

          <Head to="other-ways" />
          <Alternatives alternatives={assessment.alternatives ?? []} book={book} />

          <Head to="outlets" />
          <RainAssumed assessment={assessment} />
          <WaterMaps assessment={assessment} layout={layout} links={setting.links} />
          {layout === null ? null : <Outlets caption="New roof" outlets={layout.outlets} book={book} />}
          <details>
            <summary>The roof as it is</summary>
            <Outlets caption="Outlets there now" outlets={existing.outlets} book={book} />
          </details>
          <Head to="load" />
          <Loads existing={existing} />

          <Head to="covering" />
          <Membranes assessment={assessment} book={book} />

          {assessment.heat === undefined ? null : (
            <>
              <Head to="heat" />
              <Heat heat={assessment.heat} book={book} />
            </>
          )}

          {assessment.moisture === undefined ? null : (
            <>
              <Head to="damp" />
              <Damp moisture={assessment.moisture} book={book} />
            </>
          )}
          {assessment.energyRules === undefined ? null : (
            <>
              <Head to="energy" />
              <EnergyRules rules={assessment.energyRules} book={book} />
            </>
          )}
          {assessment.vents == null ? null : (
            <>
              <Head to="attic" />
              <AtticVents vents={assessment.vents} book={book} />
            </>
          )}

          <Head to="to-do" />
          <Findings findings={rest} book={book} />

          <Head to="materials" />
          <Materials assessment={assessment} book={book} />
          {layout === null ? null : <WorkDays layout={layout} book={book} />}

          <Head to="cautions" />
          <Cautions cautions={assessment.cautions.filter(({ severity }) => severity === 4)} book={book} />
          <details>
            <summary>The other cautions</summary>
            <Cautions cautions={assessment.cautions.filter(({ severity }) => severity < 4)} book={book} />
          </details>
          <p>{assessment.deferral}</p>

          <Head to="assumed" />
          <Assumptions assumed={assessment.assumed} />

          <Head to="rules" />
          <RulesAndRain assessment={assessment} book={book} />
          <Workings workings={assessment.workings} book={book} />
        </div>
      </div>
    </Sheet>
  );
}
