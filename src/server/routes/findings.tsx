import type { Context, Hono } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import type { GroupView } from '../../../views/forms/form-view.ts';
import { PhotoList, PhotosPage, type PhotosPageProps } from '../../../views/forms/photos-page.tsx';
import { SectionPage, type SectionPageProps } from '../../../views/forms/section-page.tsx';
import type { DrawList } from '../../drawing/draw-list.ts';
import { findingsPlan } from '../../drawing/findings-plan.ts';
import { findingKinds } from '../../input/choices.ts';
import { checkPhoto, tooLarge } from '../../photos/check-photo.ts';
import { MOST_BYTES, type PhotoProblem } from '../../photos/photo.ts';
import type { SavedRoof } from '../../store/store.ts';
import { NotThere, postedBy, roofOf, type Shop } from '../context.ts';
import { elsewhere, inHand, type Kept, keep, linksOf, objectOf, reread, SAVED, workingText } from '../edited-file.ts';
import {
  dropLoose,
  entriesOf,
  findingsPath,
  keptPhotos,
  loosePhotos,
  MOST_PHOTOS,
  namedIn,
  namePhotos,
  photoLinks,
  photosPath,
  removePhoto,
} from '../finding-photos.ts';
import { applySection, fileText } from '../forms/apply.ts';
import { sectionView } from '../forms/section-view.ts';
import { sectionOf } from '../forms/sections.ts';
import { desk, goTo, respond } from '../respond.tsx';

const SLUG = 'findings';
/** Room for what a form puts round a file. */
const FORM_BYTES = 100_000;
const TAKES = `A JPEG, PNG or WebP of at most ${MOST_BYTES / 1e6} MB. Where and when it was taken, and with what, is not kept. From the ground, a window or a pole where nobody has to be on the roof.`;

function planOf({ answers }: Shop, { text }: SavedRoof): DrawList | null {
  const today = answers.today(text);
  return today === null ? null : findingsPlan(today);
}

/** "finding 2, Rotten eave": an entry of the file by its number and what it is. */
function nameOf(entry: unknown, number: number): string {
  const kind = (entry as { kind?: unknown } | null)?.kind;
  const title = typeof kind === 'string' ? ((findingKinds as Record<string, string>)[kind] ?? kind) : '';
  return title === '' ? `finding ${number}` : `finding ${number}, ${title}`;
}

const isEntry = (view: GroupView): boolean => /^findings\[\d+\]$/.test(view.id);

/** Each finding of the form with its photos and the way to them. */
function withPhotos(group: GroupView, id: string, file: unknown): GroupView {
  const entries = entriesOf(file);
  const groups = group.groups.map((view, i): GroupView => {
    if (!isEntry(view)) return view;
    const name = nameOf(entries[i], i + 1);
    const list = photoLinks(id, entries[i], name);
    const words = list.length === 0 ? 'Save, then add a photo' : 'Save, then add or remove photos';
    const title = view.blank ? view.title : `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
    return { ...view, title, photos: { list, next: `photos-${i + 1}`, words } };
  });
  return { ...group, groups };
}

function pageProps(shop: Shop, roof: SavedRoof, kept: Kept, saved: string | null): SectionPageProps {
  const section = sectionOf(SLUG)!;
  const file = objectOf(kept.text);
  const view = sectionView(section, file, kept.problems, elsewhere(roof.id));
  const loose = loosePhotos(shop, roof);
  return {
    roof: inHand(roof),
    title: section.title,
    lead: section.lead,
    action: findingsPath(roof.id),
    links: linksOf(roof.id, SLUG),
    plan: planOf(shop, roof),
    groups: view.groups.map((group) => withPhotos(group, roof.id, file)),
    problems: view.problems,
    saved,
    supposed: [],
    after:
      loose.length === 0 ? null : (
        <>
          <h2>Photos that no finding names</h2>
          <PhotoList photos={loose} />
        </>
      ),
  };
}

const page = (props: SectionPageProps) =>
  desk({ title: `${props.title}, ${props.roof.label}`, roof: props.roof.id }, <SectionPage {...props} />);

/** Number of the finding whose photos were asked for, as it is once the form's removals are done; null = none. */
function askedFor(posted: Readonly<Record<string, string>>): number | null {
  const found = /^photos-(\d+)$/.exec(posted.next ?? '');
  if (found === null) return null;
  const number = Number(found[1]);
  if (posted[`findings[${number - 1}].remove`] !== undefined) return null;
  const before = Array.from({ length: number - 1 }, (_, i) => posted[`findings[${i}].remove`]);
  return number - before.filter((removed) => removed !== undefined).length;
}

/** The finding that the address numbers, in the file in hand. */
function findingOf(c: Context, roof: SavedRoof): { number: number; entry: unknown } {
  const number = Number(c.req.param('n'));
  const entry = entriesOf(objectOf(workingText(roof)))[number - 1];
  if (entry === undefined) throw new NotThere('This roof has no finding of that number.');
  return { number, entry };
}

function photosProps(shop: Shop, c: Context, problem: PhotoProblem | null, saved: string | null): PhotosPageProps {
  const roof = roofOf(shop, c);
  const { number, entry } = findingOf(c, roof);
  const name = nameOf(entry, number);
  const note = (entry as { note?: unknown }).note;
  return {
    roof: inHand(roof),
    links: linksOf(roof.id, SLUG),
    plan: planOf(shop, roof),
    title: `Photos of ${name}`,
    note: typeof note === 'string' ? note : null,
    action: photosPath(roof.id, number),
    back: `${findingsPath(roof.id)}#findings[${number - 1}]`,
    photos: keptPhotos(roof.id, number, entry, name),
    problems:
      problem === null
        ? []
        : [{ href: '#photo', where: 'The photo', text: `${problem.message} Send instead: ${problem.instead}.` }],
    saved,
    takes: TAKES,
  };
}

function photosPage(shop: Shop, c: Context, problem: PhotoProblem | null, saved: string | null = null) {
  const props = photosProps(shop, c, problem, saved);
  const status = problem === null ? 200 : problem.code === 'too-large' ? 413 : 422;
  const title = `${props.title}, ${props.roof.label}`;
  return respond(c, { status, page: () => desk({ title, roof: props.roof.id }, <PhotosPage {...props} />) });
}

/** The bytes that came, or null where the request broke off before the file was whole. */
async function sentFile(c: Context): Promise<Uint8Array | null> {
  try {
    const { photo } = await c.req.parseBody();
    return photo instanceof File ? new Uint8Array(await photo.arrayBuffer()) : new Uint8Array();
  } catch {
    // The body is no whole form: nothing else can throw here.
    return null;
  }
}

const brokeOff: PhotoProblem = {
  code: 'cut-off',
  message: 'The upload broke off before the file was whole.',
  instead: 'the photo once more',
};

const full: PhotoProblem = {
  code: 'too-large',
  message: `This finding has ${MOST_PHOTOS} photos already.`,
  instead: 'fewer: throw one away first',
};

async function takePhoto(shop: Shop, c: Context): Promise<Response> {
  const roof = roofOf(shop, c);
  const { number, entry } = findingOf(c, roof);
  const bytes = await sentFile(c);
  if (bytes === null) return photosPage(shop, c, brokeOff);
  const reading = await checkPhoto(bytes);
  if (!reading.ok) return photosPage(shop, c, reading.problem);
  const named = namedIn(entry);
  if (named.length >= MOST_PHOTOS) return photosPage(shop, c, full);
  const id = shop.store.addPhoto(roof.id, reading.photo);
  if (!named.includes(id)) namePhotos(shop, roof, number, [...named, id]);
  return c.redirect(`${photosPath(roof.id, number)}?kept=1`, 303);
}

/** Whether a request brings a photo: it may then be longer than a roof file, and has its own limit. */
export const bringsPhoto = ({ method, path }: { method: string; path: string }): boolean =>
  method === 'POST' && /^\/roofs\/[^/]+\/edit\/findings\/\d+\/photos$/.test(path);

function formRoutes(app: Hono, shop: Shop): void {
  app.get('/roofs/:id/edit/findings', async (c) => {
    const roof = roofOf(shop, c);
    const kept = reread(roof);
    if (objectOf(kept.text) === null) return c.redirect(`/roofs/${roof.id}/edit/text`, 302);
    const props = pageProps(shop, roof, kept, null);
    return respond(c, { page: () => page(props) });
  });

  app.post('/roofs/:id/edit/findings', async (c) => {
    const roof = roofOf(shop, c);
    const before = objectOf(workingText(roof));
    if (before === null) return goTo(c, `/roofs/${roof.id}/edit/text`);
    const posted = await postedBy(c);
    const after = applySection(sectionOf(SLUG)!, before, posted);
    const same = JSON.stringify(after) === JSON.stringify(before);
    const kept = keep(shop, roof, same ? workingText(roof) : fileText(after));
    const number = askedFor(posted);
    // What was typed is kept by now. What is wrong in this form is said first; a fault of another part bars no photo.
    const wrongHere = kept.problems.some(({ path }) => path.startsWith(SLUG));
    if (number !== null && !wrongHere && entriesOf(after)[number - 1] !== undefined)
      return goTo(c, photosPath(roof.id, number));
    if (kept.problems.length === 0 && posted.next === 'result') return goTo(c, `/roofs/${roof.id}`);
    const props = pageProps(shop, roofOf(shop, c), kept, kept.problems.length === 0 ? SAVED : null);
    return respond(c, {
      status: kept.problems.length === 0 ? 200 : 422,
      page: () => page(props),
      fragment: () => <SectionPage {...props} />,
    });
  });
}

function photoRoutes(app: Hono, shop: Shop): void {
  app.get('/roofs/:id/edit/findings/:n{[0-9]+}/photos', (c) =>
    photosPage(shop, c, null, c.req.query('kept') === undefined ? null : 'The photo is kept.'),
  );

  app.post(
    '/roofs/:id/edit/findings/:n{[0-9]+}/photos',
    bodyLimit({
      maxSize: MOST_BYTES + FORM_BYTES,
      onError: (c) => photosPage(shop, c, tooLarge(Number(c.req.header('Content-Length') ?? MOST_BYTES + FORM_BYTES))),
    }),
    (c) => takePhoto(shop, c),
  );

  app.post('/roofs/:id/edit/findings/:n{[0-9]+}/photos/:photo/remove', (c) => {
    const roof = roofOf(shop, c);
    const { number } = findingOf(c, roof);
    removePhoto(shop, roof, number, c.req.param('photo'));
    return c.redirect(photosPath(roof.id, number), 303);
  });

  app.post('/roofs/:id/edit/findings/loose/:photo/remove', (c) => {
    const roof = roofOf(shop, c);
    dropLoose(shop, roof.id, c.req.param('photo'));
    return c.redirect(findingsPath(roof.id), 303);
  });

  app.get('/roofs/:id/photos/:photo', (c) => {
    const photo = shop.store.photoOf(roofOf(shop, c).id, c.req.param('photo'));
    if (photo === null) throw new NotThere('No photo is kept under this address.');
    return c.body(new Uint8Array(photo.bytes), 200, {
      'Content-Type': photo.type,
      'Content-Disposition': 'inline',
      'Cache-Control': 'private, no-cache',
    });
  });
}

/** The form of what was found, and the photos of each finding. */
export function findingRoutes(app: Hono, shop: Shop): void {
  formRoutes(app, shop);
  photoRoutes(app, shop);
}
