import { SourceBook } from '../../src/core/report/page-sources.ts';
import {
  EDGE_MARKS,
  heightRows,
  type Survey,
  surveyCautions,
  surveyRows,
  surveySentence,
  waysToRead,
} from '../../src/core/report/page-survey.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import { placeCss, placesDrawn } from '../../src/drawing/place-css.ts';
import { surveyPlan } from '../../src/drawing/survey-plan.ts';
import type { PageSetting } from '../page-setting.ts';
import { Cautions } from '../parts/cautions.tsx';
import { Figure } from '../parts/figure.tsx';
import { Sheet } from '../parts/sheet.tsx';
import { SourceList } from '../parts/source-mark.tsx';
import { Table } from '../parts/table.tsx';

export interface SurveySheetPageProps {
  assessment: Assessment;
  survey: Survey;
  setting: PageSetting;
}

const blanks = [
  'Taken on',
  'By',
  'Instrument',
  'A reading is good to',
  'Read on: old covering or bare deck',
  'Weather',
] as const;

function WrittenOnTheRoof() {
  return (
    <dl class="title-block written">
      {blanks.map((name) => (
        <div>
          <dt>{name}</dt>
          <dd class="blank" />
        </div>
      ))}
    </dl>
  );
}

function WaysToRead() {
  return (
    <div class="ways">
      {waysToRead().map(({ title, lines, good }) => (
        <section aria-label={title}>
          <h3>{title}</h3>
          <ul>
            {lines.map((line) => (
              <li>{line}</li>
            ))}
            <li>{good}</li>
          </ul>
        </section>
      ))}
    </div>
  );
}

/** What is carried onto the roof to measure it: the marks on the plan, how to read them, and blanks to write in. */
export function SurveySheetPage({ assessment, survey, setting }: SurveySheetPageProps) {
  const book = new SourceBook(assessment, null);
  const list = surveyPlan(assessment, survey);
  const places = placesDrawn([list]);
  const taped = heightRows(survey);
  return (
    <Sheet assessment={assessment} setting={setting} page="survey" extraCss={placeCss(places)} places={places}>
      <h1 class="quiet">Survey sheet: {assessment.label}</h1>
      <p class="headline">{surveySentence(survey)}</p>
      {setting.links === null ? null : (
        <p class="screen">
          Print this page, or <a href={setting.links.readings}>type the readings in beside the marks</a>: a half-filled
          sheet is worth keeping. On this page: <a href="#survey-plan">the plan</a>, <a href="#readings">the marks</a>.
        </p>
      )}
      <h2>Before anybody goes up</h2>
      <p>{EDGE_MARKS}</p>
      <Cautions cautions={surveyCautions(assessment.cautions)} book={book} />
      <p>{assessment.deferral}</p>
      <h2>How to read</h2>
      <WaysToRead />
      <div class="sheet-break survey-plan" id="survey-plan">
        <WrittenOnTheRoof />
        <Figure list={list} id="survey">
          Dots are where to read. The bar under the plan is the scale; lengths of the sides stand outside it.
        </Figure>
      </div>
      <h2 class="sheet-break" id="readings">
        Readings
      </h2>
      <Table
        caption="One line to a mark, in the order of the walk. Leave empty what was not read."
        columns={[
          { head: 'Mark' },
          { head: 'Where' },
          { head: 'What' },
          { head: 'Read', kind: 'blank' },
          { head: 'Again', kind: 'blank' },
        ]}
        rows={surveyRows(survey).map(({ id, place, where, why }) => ({ place, cells: [id, where, why, '', ''] }))}
      />
      {taped.length === 0 ? null : (
        <>
          <h2>Heights to tape</h2>
          <Table
            caption="From the roof right under it, straight up"
            columns={[
              { head: '' },
              { head: 'What' },
              { head: 'In the file', kind: 'figure' },
              { head: 'Taped', kind: 'blank' },
            ]}
            rows={taped.map(({ id, what, known }) => ({ cells: [id, what, known, ''] }))}
          />
        </>
      )}
      <details>
        <summary>Sources</summary>
        <SourceList book={book} />
      </details>
    </Sheet>
  );
}
