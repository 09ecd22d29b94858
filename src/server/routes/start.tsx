import type { Hono } from 'hono';
import { NewRoofForm, NewRoofPage, type NewRoofProps } from '../../../views/forms/new-roof-page.tsx';
import { DeleteRoofPage, RoofListPage } from '../../../views/forms/roof-list-page.tsx';
import { ImportPage, type TextFormProps } from '../../../views/forms/text-page.tsx';
import { readRoofText } from '../../answer.ts';
import type { InputProblem } from '../../input/problems.ts';
import { type AnswersRead, blankAnswers, roofFromAnswers, type SixAnswers } from '../../input/six-answers.ts';
import type { RoofInList } from '../../store/store.ts';
import { NotThere, postedBy, roofOf, type Shop } from '../context.ts';
import { answersOf, answersView } from '../forms/answers-view.ts';
import { fileText } from '../forms/apply.ts';
import { desk, goTo, respond } from '../respond.tsx';
import { textProblems } from './edit.tsx';

const dayOf = (iso: string): string => iso.slice(0, 16).replace('T', ' ');

function newProps(answers: SixAnswers, read: AnswersRead | null, problems: readonly InputProblem[]): NewRoofProps {
  return { ...answersView(answers, read, problems), readBack: read !== null && problems.length === 0 };
}

const importProps = (text: string, problems: readonly InputProblem[]): TextFormProps => ({
  action: '/import',
  text,
  problems: textProblems(problems),
  notes: [],
  saved: null,
  upload: true,
});

const newPage = (props: NewRoofProps) => desk({ title: 'New roof', here: 'new' }, <NewRoofPage {...props} />);

const importPage = (props: TextFormProps) =>
  desk({ title: 'Bring in a roof file', here: 'import' }, <ImportPage {...props} />);

/** The list, the six questions, and bringing in a roof file. */
export function startRoutes(app: Hono, shop: Shop): void {
  app.get('/', (c) => {
    const last = shop.store.lastTouched();
    return c.redirect(last === null ? '/roofs' : `/roofs/${last}`, 302);
  });

  app.get('/roofs', (c) => {
    const withDay = (roof: RoofInList) => ({ ...roof, saved: dayOf(roof.updated) });
    const deleted = shop.store.deleted().map(withDay);
    const justDeleted = deleted.find(({ id }) => id === c.req.query('taken-off')) ?? null;
    const props = { roofs: shop.store.list().map(withDay), deleted, justDeleted };
    return respond(c, { page: () => desk({ title: 'Roofs', here: 'roofs' }, <RoofListPage {...props} />) });
  });

  app.get('/roofs/:id/delete', (c) => {
    const { id, label } = roofOf(shop, c);
    return respond(c, {
      page: () => desk({ title: `Take off ${label}`, roof: id }, <DeleteRoofPage id={id} label={label} />),
    });
  });

  app.post('/roofs/:id/delete', (c) => {
    const { id } = roofOf(shop, c);
    shop.store.delete(id);
    return goTo(c, `/roofs?taken-off=${encodeURIComponent(id)}`);
  });

  app.post('/roofs/:id/put-back', (c) => {
    const id = c.req.param('id');
    if (!shop.store.deleted().some((roof) => roof.id === id)) {
      throw new NotThere('No roof that was taken off the list has this address.');
    }
    shop.store.putBack(id);
    return goTo(c, `/roofs/${id}`);
  });

  app.get('/new', (c) => {
    const props = newProps(blankAnswers(), null, []);
    return respond(c, { page: () => newPage(props) });
  });

  app.post('/new', async (c) => {
    const posted = await postedBy(c);
    const answers = answersOf(posted);
    const read = roofFromAnswers(answers);
    const text = read.file === null ? null : fileText(read.file);
    const reading = text === null ? null : readRoofText(text);
    const problems = [...read.problems, ...(reading === null || reading.ok ? [] : reading.problems)];
    if (text !== null && reading?.ok && posted.next !== 'read') {
      const { id } = shop.store.add({ label: reading.roof.label, text, answers: JSON.stringify(answers) });
      return goTo(c, `/roofs/${id}`);
    }
    const props = newProps(answers, read, problems);
    return respond(c, {
      status: problems.length === 0 ? 200 : 422,
      page: () => newPage(props),
      fragment: () => <NewRoofForm {...props} />,
    });
  });

  app.get('/import', (c) => {
    const props = importProps('', []);
    return respond(c, { page: () => importPage(props) });
  });

  app.post('/import', async (c) => {
    const { upload, file } = await c.req.parseBody();
    const typed = typeof file === 'string' ? file.replaceAll('\r\n', '\n') : '';
    // A file goes before the text box; its text is taken byte for byte.
    const text = upload instanceof File && upload.size > 0 ? await upload.text() : typed;
    const reading = readRoofText(text);
    if (reading.ok) return goTo(c, `/roofs/${shop.store.add({ label: reading.roof.label, text }).id}`);
    const props = importProps(text, reading.problems);
    return respond(c, {
      status: 422,
      page: () => importPage(props),
      fragment: () => <ImportPage {...props} />,
    });
  });
}
