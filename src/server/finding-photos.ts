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

/** Photos that are kept and that no finding names. */
export function loosePhotos({ store }: Shop, roof: SavedRoof): KeptPhoto[] {
  const named = new Set(entriesOf(objectOf(workingText(roof))).flatMap(namedIn));
  return store
    .photosOf(roof.id)
    .filter((photo) => !named.has(photo))
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

/** Takes a photo off one finding, and throws the picture away where no other finding names it. */
export function removePhoto(shop: Shop, roof: SavedRoof, number: number, photo: string): void {
  const entries = entriesOf(objectOf(workingText(roof)));
  const own = namedIn(entries[number - 1]);
  if (own.includes(photo)) {
    const rest = own.filter((one) => one !== photo);
    namePhotos(shop, roof, number, rest);
  }
  const elsewhere = entries.some((entry, i) => i !== number - 1 && namedIn(entry).includes(photo));
  if (!elsewhere) shop.store.dropPhoto(roof.id, photo);
}
