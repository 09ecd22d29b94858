import type { RoofInHand, SectionLink } from '../../views/forms/form-view.ts';
import { readRoofText } from '../answer.ts';
import type { InputNote, InputProblem } from '../input/problems.ts';
import type { SavedRoof } from '../store/store.ts';
import type { Shop } from './context.ts';
import { sections } from './forms/sections.ts';

/** A roof file while it is edited: what was typed last goes before the last good file. */

export const inHand = ({ id, label, draft }: SavedRoof): RoofInHand => ({ id, label, hasDraft: draft !== null });

/** The text that is being worked on: an edit that cannot be read yet goes before the last good file. */
export const workingText = ({ draft, text }: SavedRoof): string => draft ?? text;

/** The object of a file's text; null where the text is no JSON object. */
export function objectOf(text: string): unknown {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null && !Array.isArray(value) ? value : null;
  } catch {
    return null;
  }
}

/** The part of the edit pages where readings stand beside the marks of the survey. */
export const READINGS = { slug: 'readings', title: 'Readings at the marks' } as const;

export function linksOf(id: string, here: string): SectionLink[] {
  const links = sections.map(({ slug, title }) => ({ slug, title }));
  const at = links.findIndex(({ slug }) => slug === 'today') + 1;
  const all = [...links.slice(0, at), READINGS, ...links.slice(at), { slug: 'text', title: 'The file as text' }];
  return all.map(({ slug, title }) => ({ slug, title, href: `/roofs/${id}/edit/${slug}`, here: slug === here }));
}

/** Link to the box of a problem that stands in another section; to the text where no section has it. */
export function elsewhere(id: string): (path: string) => string {
  return (path) => {
    const first = /^[^.[]+/.exec(path)?.[0] ?? '';
    const home = sections.find(({ groups }) =>
      groups.some(({ at, fields }) => at === first || (at === '' && fields.some(({ key }) => key === first))),
    );
    return home === undefined ? `/roofs/${id}/edit/text#file` : `/roofs/${id}/edit/${home.slug}#${path}`;
  };
}

export interface Kept {
  text: string;
  problems: readonly InputProblem[];
  notes: readonly InputNote[];
}

/** Keeps what was typed: as the roof where it can be read, beside it where it cannot. */
export function keep({ store }: Shop, roof: SavedRoof, text: string): Kept {
  const reading = readRoofText(text);
  if (!reading.ok) {
    store.saveDraft(roof.id, text);
    return { text, problems: reading.problems, notes: [] };
  }
  if (text === roof.text) store.dropDraft(roof.id);
  else store.saveText(roof.id, reading.roof.label, text);
  return { text, problems: [], notes: reading.notes };
}

/** What was typed last, read again. */
export function reread(roof: SavedRoof): Kept {
  const text = workingText(roof);
  const reading = readRoofText(text);
  return reading.ok ? { text, problems: [], notes: reading.notes } : { text, problems: reading.problems, notes: [] };
}

/** Said after a form was kept and everything in it could be read. */
export const SAVED = 'Saved, and everything could be read.';
