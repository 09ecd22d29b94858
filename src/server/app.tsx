import { Hono } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { csrf } from 'hono/csrf';
import { HTTPException } from 'hono/http-exception';
import { secureHeaders } from 'hono/secure-headers';
import { PlainPage } from '../../views/forms/plain-page.tsx';
import { WorkingPage } from '../../views/forms/working-page.tsx';
import { progressLines } from '../core/report/page-search.ts';
import { roofFileJsonSchema } from '../input/schema.ts';
import type { Store } from '../store/store.ts';
import { Answers } from './answers.ts';
import { assetRoutes } from './assets.ts';
import { NotThere, type Shop, StillWorking } from './context.ts';
import { desk, respond, type Status, settingOf } from './respond.tsx';
import { asBuiltRoutes } from './routes/as-built.tsx';
import { editRoutes } from './routes/edit.tsx';
import { fileRoutes } from './routes/files.ts';
import { bringsPhoto, findingRoutes } from './routes/findings.tsx';
import { paperRoutes } from './routes/papers.tsx';
import { startRoutes } from './routes/start.tsx';
import { surveyRoutes } from './routes/survey.tsx';

/** Largest request that is read: a roof file of 10 MB with what a form puts round it. */
const LARGEST_BYTES = 10_500_000;

const plain = (title: string, says: string) => desk({ title }, <PlainPage title={title} says={says} />);

/**
 * The web pages over a store, without a port: requests go in, responses come out.
 * @param log takes one line per defect; the page itself shows no detail
 */
export function createApp({
  store,
  log = (line) => console.error(line),
}: {
  store: Store;
  log?: (line: string) => void;
}): Hono {
  const app = new Hono();
  const shop: Shop = { store, answers: new Answers() };

  // A photo is shown and nothing else: whatever a viewer takes it for, it may load and run nothing.
  app.use('/roofs/:id/photos/:photo', async (c, next) => {
    await next();
    c.res.headers.set('Content-Security-Policy', "default-src 'none'; sandbox; frame-ancestors 'none'");
  });
  app.use(
    secureHeaders({
      contentSecurityPolicy: {
        defaultSrc: ["'none'"],
        scriptSrc: ["'self'"],
        styleSrc: ["'self'", "'unsafe-inline'"],
        imgSrc: ["'self'", 'data:'],
        connectSrc: ["'self'"],
        formAction: ["'self'"],
        baseUri: ["'none'"],
        frameAncestors: ["'none'"],
      },
      strictTransportSecurity: false,
    }),
  );
  app.use(csrf());
  const ordinary = bodyLimit({
    maxSize: LARGEST_BYTES,
    onError: (c) =>
      respond(c, {
        status: 413,
        page: () => plain('Too large', 'A roof file may have at most 10 MB: send one section per file.'),
      }),
  });
  app.use((c, next) => (bringsPhoto(c.req) ? next() : ordinary(c, next)));

  assetRoutes(app);
  startRoutes(app, shop);
  surveyRoutes(app, shop);
  findingRoutes(app, shop);
  editRoutes(app, shop);
  asBuiltRoutes(app, shop);
  fileRoutes(app, shop);
  paperRoutes(app, shop);
  app.get('/schema.json', (c) => c.json(roofFileJsonSchema()));

  const missing = 'Nothing is kept under this address.';
  app.notFound((c) => respond(c, { status: 404, page: () => plain('Not found', missing) }));
  app.onError((error, c) => {
    const say = (status: Status, title: string, says: string) => respond(c, { status, page: () => plain(title, says) });
    if (error instanceof StillWorking) {
      const { progress } = error;
      c.header('Refresh', '1');
      const page = () => <WorkingPage lines={progressLines(progress)} here={c.req.path} setting={settingOf(null)} />;
      return respond(c, { page });
    }
    if (error instanceof NotThere) return say(404, 'Not found', error.message);
    if (error instanceof HTTPException && error.status === 403) {
      return say(403, 'Not taken', 'This form was sent from another place. Open the page here and send it again.');
    }
    log(`${c.req.method} ${c.req.path}: ${error.stack ?? error.message}`);
    return say(
      500,
      'A fault of the program',
      'This is not your doing, and nothing that you saved is lost. Go back and try again.',
    );
  });
  return app;
}
