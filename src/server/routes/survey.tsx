import type { Hono } from 'hono';
import { SectionPage, type SectionPageProps } from '../../../views/forms/section-page.tsx';
import { SurveySheetPage } from '../../../views/pages/survey-sheet-page.tsx';
import { type ReadyRoof, readRoofText } from '../../answer.ts';
import type { RoofToday } from '../../core/report/types.ts';
import { type Survey, surveyOf } from '../../core/survey/survey.ts';
import { surveyPlan } from '../../drawing/survey-plan.ts';
import type { SavedRoof } from '../../store/store.ts';
import { postedBy, roofOf, type Shop } from '../context.ts';
import {
  elsewhere,
  inHand,
  type Kept,
  keep,
  linksOf,
  objectOf,
  READINGS,
  reread,
  SAVED,
  workingText,
} from '../edited-file.ts';
import { applySection, fileText } from '../forms/apply.ts';
import { applyMarks, aroundMarks, marksView } from '../forms/marks.ts';
import { sectionView } from '../forms/section-view.ts';
import { desk, goTo, respond, settingOfRoof } from '../respond.tsx';
import { answerForPage, unreadable } from './answer-of.ts';

function lastReadable({ text }: SavedRoof): ReadyRoof {
  const ready = readRoofText(text);
  if (!ready.ok) throw unreadable();
  return ready;
}

function todayOf({ answers }: Shop, { text }: SavedRoof): RoofToday {
  const today = answers.today(text);
  if (today === null) throw unreadable();
  return today;
}

/** Marks of the plan as it was typed last; of the last good plan while that cannot be read. */
function surveyInHand(roof: SavedRoof): Survey {
  const typed = readRoofText(workingText(roof));
  return surveyOf(typed.ok ? typed.roof : lastReadable(roof).roof);
}

function readingsProps(shop: Shop, roof: SavedRoof, kept: Kept, saved: string | null): SectionPageProps {
  const survey = surveyInHand(roof);
  const file = objectOf(kept.text);
  const marks = marksView(survey, file, kept.problems);
  const rest = kept.problems.filter((problem) => !marks.placed.has(problem));
  const section = aroundMarks(survey, READINGS);
  const view = sectionView(section, file, rest, elsewhere(roof.id));
  const [how, ...others] = view.groups;
  return {
    roof: inHand(roof),
    title: section.title,
    lead: section.lead,
    action: `/roofs/${roof.id}/edit/${READINGS.slug}`,
    links: linksOf(roof.id, READINGS.slug),
    plan: surveyPlan(todayOf(shop, roof), survey),
    groups: [how, marks.group, ...others],
    problems: [...marks.problems, ...view.problems],
    saved,
    supposed: [],
  };
}

const readingsPage = (props: SectionPageProps) =>
  desk({ title: `${props.title}, ${props.roof.label}`, roof: props.roof.id }, <SectionPage {...props} />);

/** The survey sheet of a roof, and the form that takes its readings. */
export function surveyRoutes(app: Hono, shop: Shop): void {
  app.get('/roofs/:id/survey', (c) => {
    const roof = roofOf(shop, c);
    const { assessment, ready } = answerForPage(shop, c, roof);
    const setting = settingOfRoof(roof);
    const survey = surveyOf(ready.roof);
    return respond(c, { page: () => <SurveySheetPage assessment={assessment} survey={survey} setting={setting} /> });
  });

  app.get(`/roofs/:id/edit/${READINGS.slug}`, async (c) => {
    const roof = roofOf(shop, c);
    const kept = reread(roof);
    if (objectOf(kept.text) === null) return c.redirect(`/roofs/${roof.id}/edit/text`, 302);
    const props = readingsProps(shop, roof, kept, null);
    return respond(c, { page: () => readingsPage(props) });
  });

  app.post(`/roofs/:id/edit/${READINGS.slug}`, async (c) => {
    const roof = roofOf(shop, c);
    const before = objectOf(workingText(roof));
    if (before === null) return goTo(c, `/roofs/${roof.id}/edit/text`);
    const posted = await postedBy(c);
    const section = aroundMarks(surveyInHand(roof), READINGS);
    const after = applySection(section, applyMarks(before, posted), posted);
    const same = JSON.stringify(after) === JSON.stringify(before);
    const kept = keep(shop, roof, same ? workingText(roof) : fileText(after));
    if (kept.problems.length === 0 && posted.next === 'result') return goTo(c, `/roofs/${roof.id}`);
    const props = readingsProps(shop, roofOf(shop, c), kept, kept.problems.length === 0 ? SAVED : null);
    return respond(c, {
      status: kept.problems.length === 0 ? 200 : 422,
      page: () => readingsPage(props),
      fragment: () => <SectionPage {...props} />,
    });
  });
}
