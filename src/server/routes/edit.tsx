import type { Hono } from 'hono';
import type { ProblemView } from '../../../views/forms/form-view.ts';
import { SectionPage, type SectionPageProps } from '../../../views/forms/section-page.tsx';
import { TextPage, type TextPageProps } from '../../../views/forms/text-page.tsx';
import type { DrawList } from '../../drawing/draw-list.ts';
import { planBefore } from '../../drawing/plan-before.ts';
import type { InputNote, InputProblem } from '../../input/problems.ts';
import { roofFromAnswers, type SixAnswers } from '../../input/six-answers.ts';
import type { SavedRoof } from '../../store/store.ts';
import { NotThere, postedBy, roofOf, type Shop } from '../context.ts';
import { elsewhere, inHand, type Kept, keep, linksOf, objectOf, reread, SAVED, workingText } from '../edited-file.ts';
import { applySection, fileText } from '../forms/apply.ts';
import { problemSentence } from '../forms/problems.ts';
import { sectionView } from '../forms/section-view.ts';
import { sectionOf } from '../forms/sections.ts';
import type { SectionSpec } from '../forms/spec.ts';
import { desk, goTo, respond } from '../respond.tsx';

/** The plan of the last good file; null where a file that was kept can no longer be read. */
function planOf({ answers }: Shop, { text }: SavedRoof): DrawList | null {
  const today = answers.today(text);
  return today === null ? null : planBefore(today);
}

function sectionProps(
  shop: Shop,
  roof: SavedRoof,
  section: SectionSpec,
  kept: Kept,
  saved: string | null,
): SectionPageProps {
  const view = sectionView(section, objectOf(kept.text), kept.problems, elsewhere(roof.id));
  return {
    roof: inHand(roof),
    title: section.title,
    lead: section.lead,
    action: `/roofs/${roof.id}/edit/${section.slug}`,
    links: linksOf(roof.id, section.slug),
    plan: planOf(shop, roof),
    groups: view.groups,
    problems: view.problems,
    saved,
    supposed: roof.answers === null ? [] : roofFromAnswers(JSON.parse(roof.answers) as SixAnswers).supposed,
  };
}

const noteLine = ({ path, message }: InputNote): string => `${path}: ${message}`;

function textProps(shop: Shop, roof: SavedRoof, kept: Kept, saved: string | null): TextPageProps {
  return {
    roof: inHand(roof),
    links: linksOf(roof.id, 'text'),
    plan: planOf(shop, roof),
    action: `/roofs/${roof.id}/edit/text`,
    text: kept.text,
    problems: textProblems(kept.problems),
    notes: kept.notes.map(noteLine),
    saved,
    upload: false,
  };
}

/** Problems of a file as text: all of them stand at its one box, each with its place. */
export const textProblems = (problems: readonly InputProblem[]): ProblemView[] =>
  problems.map((problem) => ({ href: '#file', where: problem.path, text: problemSentence(problem) }));

const sectionPage = (props: SectionPageProps) =>
  desk({ title: `${props.title}, ${props.roof.label}`, roof: props.roof.id }, <SectionPage {...props} />);

const textPage = (props: TextPageProps) =>
  desk({ title: `The file as text, ${props.roof.label}`, roof: props.roof.id }, <TextPage {...props} />);

/** Edit a roof: section by section, or its file as text. */
export function editRoutes(app: Hono, shop: Shop): void {
  app.get('/roofs/:id/edit', (c) => c.redirect(`/roofs/${roofOf(shop, c).id}/edit/plan`, 302));

  app.get('/roofs/:id/edit/text', (c) => {
    const props = textProps(shop, roofOf(shop, c), reread(roofOf(shop, c)), null);
    return respond(c, { page: () => textPage(props) });
  });

  app.post('/roofs/:id/edit/text', async (c) => {
    const roof = roofOf(shop, c);
    const posted = await postedBy(c);
    const kept = keep(shop, roof, posted.file ?? '');
    if (kept.problems.length === 0 && posted.next === 'result') return goTo(c, `/roofs/${roof.id}`);
    const props = textProps(shop, roofOf(shop, c), kept, kept.problems.length === 0 ? SAVED : null);
    return respond(c, {
      status: kept.problems.length === 0 ? 200 : 422,
      page: () => textPage(props),
      fragment: () => <TextPage {...props} />,
    });
  });

  const sectionIn = (slug: string): SectionSpec => {
    const section = sectionOf(slug);
    if (section === null) throw new NotThere('This roof has no part of that name.');
    return section;
  };

  app.get('/roofs/:id/edit/:section', async (c) => {
    const roof = roofOf(shop, c);
    const section = sectionIn(c.req.param('section'));
    const kept = reread(roof);
    // A text that is no JSON has no sections: only the text itself can be put right.
    if (objectOf(kept.text) === null) return c.redirect(`/roofs/${roof.id}/edit/text`, 302);
    const props = sectionProps(shop, roof, section, kept, null);
    return respond(c, { page: () => sectionPage(props) });
  });

  app.post('/roofs/:id/edit/:section', async (c) => {
    const roof = roofOf(shop, c);
    const section = sectionIn(c.req.param('section'));
    const before = objectOf(workingText(roof));
    if (before === null) return goTo(c, `/roofs/${roof.id}/edit/text`);
    const posted = await postedBy(c);
    const after = applySection(section, before, posted);
    // The text stays byte for byte as it was typed where the form changed nothing.
    const same = JSON.stringify(after) === JSON.stringify(before);
    const kept = keep(shop, roof, same ? workingText(roof) : fileText(after));
    if (kept.problems.length === 0 && posted.next === 'result') return goTo(c, `/roofs/${roof.id}`);
    const props = sectionProps(shop, roofOf(shop, c), section, kept, kept.problems.length === 0 ? SAVED : null);
    return respond(c, {
      status: kept.problems.length === 0 ? 200 : 422,
      page: () => sectionPage(props),
      fragment: () => <SectionPage {...props} />,
    });
  });
}
