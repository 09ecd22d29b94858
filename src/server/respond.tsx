import type { Context } from 'hono';
import type { Child } from 'hono/jsx';
import type { HtmlEscapedString } from 'hono/utils/html';
import { DeskPage, type DeskPageProps } from '../../views/forms/desk-page.tsx';
import { type PageLinks, type PageSetting, roofLinks } from '../../views/page-setting.ts';
import type { SavedRoof } from '../store/store.ts';

export type Markup = HtmlEscapedString | Promise<HtmlEscapedString>;

export type Status = 200 | 403 | 404 | 413 | 422 | 500;

export interface Answered {
  /** The whole document. */
  page: () => Markup;
  /** What replaces the part that a script asked for; the page where a route has no parts. */
  fragment?: () => Markup;
  status?: Status;
}

/** Fragment or page: the one place that looks whether a script asked. */
export async function respond(c: Context, { page, fragment, status = 200 }: Answered): Promise<Response> {
  c.header('Vary', 'HX-Request');
  c.header('Cache-Control', 'no-store');
  if (fragment !== undefined && c.req.header('HX-Request') === 'true') return c.html(fragment(), status);
  return c.html(await documentText(page()), status);
}

/** A page as the text of a document. */
export const documentText = async (page: Markup): Promise<string> => `<!DOCTYPE html>${await page}`;

/** On to another page; a script is told to go there itself, because it would put the page into a part of this one. */
export function goTo(c: Context, address: string): Response {
  if (c.req.header('HX-Request') === 'true') return c.body(null, 200, { 'HX-Redirect': address });
  return c.redirect(address, 303);
}

/** Addresses of one roof's pages. The name at the head of a page leads to the list. */
export const linksOfRoof = (id: string): PageLinks => ({
  ...roofLinks(id),
  home: '/roofs',
  file: `/roofs/${encodeURIComponent(id)}/roof.json`,
});

export const settingOf = (links: PageLinks | null): PageSetting => ({
  links,
  style: { href: '/assets/style.css' },
  dateText: null,
});

/** What the papers of a saved roof need: they are made from its last readable file, also while an edit waits. */
export const settingOfRoof = ({ id, draft }: SavedRoof): PageSetting => ({
  ...settingOf(linksOfRoof(id)),
  draftHref: draft === null ? null : `/roofs/${encodeURIComponent(id)}/edit/text`,
});

/** A page for entering or choosing something; `roof` is the id of the roof in hand. */
export const desk = (
  { title, here = null, roof = null }: { title: string; here?: DeskPageProps['here']; roof?: string | null },
  content: Child,
): Markup => (
  <DeskPage title={title} here={here} setting={settingOf(roof === null ? null : linksOfRoof(roof))}>
    {content}
  </DeskPage>
);
