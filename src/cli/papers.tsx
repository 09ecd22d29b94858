import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { PageSetting } from '../../views/page-setting.ts';
import { CrewSheetPage } from '../../views/pages/crew-sheet-page.tsx';
import { EstimatePage } from '../../views/pages/estimate-page.tsx';
import { KitchenTablePage } from '../../views/pages/kitchen-table-page.tsx';
import { OwnerPage } from '../../views/pages/owner-page.tsx';
import { ResultPage } from '../../views/pages/result-page.tsx';
import { RulesPage } from '../../views/pages/rules-page.tsx';
import { SupplierRequestPage } from '../../views/pages/supplier-request-page.tsx';
import { SurveySheetPage } from '../../views/pages/survey-sheet-page.tsx';
import { styleSheet } from '../../views/style.ts';
import type { Assessment } from '../core/report/types.ts';
import type { Roof } from '../core/roof.ts';
import { surveyOf } from '../core/survey/survey.ts';
import { resultJson } from '../export/result-json.ts';
import { documentText, type Markup } from '../server/respond.tsx';

type Paper = (props: { assessment: Assessment; setting: PageSetting }) => Markup;

const papers: Readonly<Record<string, Paper>> = {
  answer: ResultPage,
  estimate: EstimatePage,
  'crew-sheet': CrewSheetPage,
  owner: OwnerPage,
  'kitchen-table': KitchenTablePage,
  'supplier-request': SupplierRequestPage,
  rules: RulesPage,
};

const surveySheet =
  (roof: Roof): Paper =>
  (props) => <SurveySheetPage {...props} survey={surveyOf(roof)} />;

/**
 * Writes every paper as a page that stands alone (style inside, links nowhere) and the answer as JSON.
 * @returns the paths that were written
 * @throws the system's error when the folder cannot be written
 */
export async function writePapers(assessment: Assessment, roof: Roof, folder: string): Promise<string[]> {
  mkdirSync(folder, { recursive: true });
  const setting: PageSetting = { links: null, style: { text: styleSheet() }, dateText: null };
  const pages = await Promise.all(
    Object.entries({ ...papers, 'survey-sheet': surveySheet(roof) }).map(async ([name, Paper]) => {
      const text = await documentText(<Paper assessment={assessment} setting={setting} />);
      return [`${name}.html`, `${text}\n`] as const;
    }),
  );
  return [...pages, ['result.json', resultJson(assessment)] as const].map(([name, text]) => {
    const path = join(folder, name);
    writeFileSync(path, text);
    return path;
  });
}
