import type { KeptPhoto } from '../../views/forms/photos-page.tsx';
import type { PhotoLink } from '../../views/parts/photos.tsx';
import type { SavedRoof } from '../store/store.ts';
import type { Shop } from './context.ts';
import { keep, objectOf, workingText } from './edited-file.ts';
import { fileText } from './forms/apply.ts';
import { valueAt, withValueAt } from './forms/paths.ts';

/** Photos of the findings of a roof in hand, as its file names them and as the store keeps them. */

/** A finding may have so many; the roof file says the same. */
export const MOST_PHOTOS = 20;

export const findingsPath = (id: string): string => `/roofs/${id}/edit/findings`;
export const photosPath = (id: string, number: number): string => `${findingsPath(id)}/${number}/photos`;
const photoSrc = (id: string, photo: string): string => `/roofs/${id}/photos/${photo}`;

const strings = (value: unknown): string[] =>
  Array.isArray(value) ? value.filter((one): one is string => typeof one === 'string') : [];

/** Entries of the file's list of findings, whatever stands in them. */
export function entriesOf(file: unknown): readonly unknown[] {
  const list = valueAt(file, 'findings');
  return Array.isArray(list) ? list : [];
}

/** Photos that an entry of the file names. */
export const namedIn = (entry: unknown): string[] => strings((entry as { photos?: unknown } | null)?.photos);

export const photoLinks = (id: string, entry: unknown, words: string): PhotoLink[] =>
  namedIn(entry).map((photo, i) => ({ src: photoSrc(id, photo), alt: `Photo ${i + 1} of ${words}` }));

export const keptPhotos = (id: string, number: number, entry: unknown, words: string): KeptPhoto[] =>
  namedIn(entry).map((photo, i) => ({
    src: photoSrc(id, photo),
    alt: `Photo ${i + 1} of ${words}`,
    remove: `${photosPath(id, number)}/${photo}/remove`,
  }));

/**
 * Whether the last good file or an edit that waits beside it names a photo. Either may become the roof again, and an edit may
 * be no file yet, so that its text alone is asked.
 */
const isNamed = ({ text, draft }: SavedRoof, photo: string): boolean =>
  text.includes(photo) || (draft?.includes(photo) ?? false);

/** Photos that are kept and that neither the last good file nor an edit that waits names. */
export function loosePhotos({ store }: Shop, roof: SavedRoof): KeptPhoto[] {
  return store
    .photosOf(roof.id)
    .filter((photo) => !isNamed(roof, photo))
    .map((photo, i) => ({
      src: photoSrc(roof.id, photo),
      alt: `Photo ${i + 1} without a finding`,
      remove: `${findingsPath(roof.id)}/loose/${photo}/remove`,
    }));
}

/** Writes the photos of one finding into the file in hand, as a form would. */
export function namePhotos(shop: Shop, roof: SavedRoof, number: number, photos: readonly string[]): void {
  const file = objectOf(workingText(roof));
  const path = `findings[${number - 1}].photos`;
  keep(shop, roof, fileText(withValueAt(file, path, photos.length === 0 ? undefined : photos)));
}

/** Throws a picture away that nothing names; one that is named somewhere stays. */
export function dropLoose({ store }: Shop, id: string, photo: string): void {
  const roof = store.get(id);
  if (roof !== null && !isNamed(roof, photo)) store.dropPhoto(id, photo);
}

/** Takes a photo off one finding of the file in hand, and throws the picture away once nothing names it. */
export function removePhoto(shop: Shop, roof: SavedRoof, number: number, photo: string): void {
  const own = namedIn(entriesOf(objectOf(workingText(roof)))[number - 1]);
  const rest = own.filter((one) => one !== photo);
  if (rest.length < own.length) namePhotos(shop, roof, number, rest);
  dropLoose(shop, roof.id, photo);
}
