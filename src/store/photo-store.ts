import { createHash } from 'node:crypto';
import type Database from 'libsql';
import type { Photo } from '../photos/photo.ts';
import type { Store, StoredPhoto } from './store.ts';

const ID_LETTERS = 20;

/** The same picture has the same id, so that sending it twice keeps it once. */
const idOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex').slice(0, ID_LETTERS);

type PhotoStore = Pick<Store, 'addPhoto' | 'photoOf' | 'photosOf' | 'dropPhoto'>;

/** The photos of a database of roofs. */
export function photoStore(db: InstanceType<typeof Database>, now: () => string): PhotoStore {
  return {
    addPhoto: (roofId, { type, widthPx, heightPx, bytes }: Photo) => {
      const id = idOf(bytes);
      db.prepare(
        'INSERT OR IGNORE INTO photos (roof_id, id, type, width_px, height_px, bytes, saved) VALUES (?, ?, ?, ?, ?, ?, ?)',
      ).run(roofId, id, type, widthPx, heightPx, Buffer.from(bytes), now());
      return id;
    },
    photoOf: (roofId, id) => {
      const row = db
        .prepare(
          'SELECT type, bytes FROM photos JOIN roofs ON roofs.id = roof_id WHERE roof_id = ? AND photos.id = ? AND deleted IS NULL',
        )
        .get(roofId, id) as StoredPhoto | undefined;
      return row === undefined ? null : { type: row.type, bytes: new Uint8Array(row.bytes) };
    },
    photosOf: (roofId) =>
      (db.prepare('SELECT id FROM photos WHERE roof_id = ? ORDER BY rowid').all(roofId) as { id: string }[]).map(
        ({ id }) => id,
      ),
    dropPhoto: (roofId, id) => {
      db.prepare('DELETE FROM photos WHERE roof_id = ? AND id = ?').run(roofId, id);
    },
  };
}
