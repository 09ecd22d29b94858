import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'libsql';
import type { AsBuiltReading } from '../core/layout/as-built.ts';
import type { Photo, PhotoType } from '../photos/photo.ts';
import { demoRoofs } from './demo-roofs.ts';
import { photoStore } from './photo-store.ts';
import { migrate } from './tables.ts';

/** A roof as it is kept. `text` is the last roof file that could be read, exactly as it was typed or sent. */
export interface SavedRoof {
  id: string;
  label: string;
  text: string;
  /** A later edit that cannot be read yet, exactly as it was typed; null where there is none. */
  draft: string | null;
  /** The six first answers that the roof began with, as JSON; null for a roof that came as a file. */
  answers: string | null;
  created: string;
  updated: string;
}

export interface RoofInList {
  id: string;
  label: string;
  hasDraft: boolean;
  updated: string;
}

/** Heights as they were typed at the check points of one layout: point number to text. */
export interface SavedReadings {
  typed: Readonly<Record<string, string>>;
  read: readonly AsBuiltReading[];
  saved: string;
}

export interface NewRoof {
  label: string;
  text: string;
  answers?: string | null;
}

export interface Store {
  list(): RoofInList[];
  /** Roofs that were taken off the list, the last one first. */
  deleted(): RoofInList[];
  get(id: string): SavedRoof | null;
  /** Id of the roof that was saved last; the first invented one in a new database. */
  lastTouched(): string | null;
  add(roof: NewRoof): SavedRoof;
  /** Keeps a readable roof file; a draft that stood beside it is done with. */
  saveText(id: string, label: string, text: string): void;
  /** Keeps what was typed beside the last readable file. */
  saveDraft(id: string, text: string): void;
  dropDraft(id: string): void;
  /** Takes a roof off the list; everything of it is kept. */
  delete(id: string): void;
  /** Puts a roof back on the list as it was. */
  putBack(id: string): void;
  addReadings(id: string, layoutId: string, typed: Record<string, string>, read: readonly AsBuiltReading[]): void;
  /** The last heights typed for a layout; the earlier ones stay in the file. */
  readingsOf(id: string, layoutId: string): SavedReadings | null;
  /** Keeps a photo beside a roof. @returns its id, which is the same for the same picture */
  addPhoto(id: string, photo: Photo): string;
  /** A photo of a roof that is on the list. */
  photoOf(id: string, photoId: string): StoredPhoto | null;
  /** Ids of all photos kept beside a roof, the oldest first. */
  photosOf(id: string): string[];
  /** Throws the picture away. */
  dropPhoto(id: string, photoId: string): void;
  close(): void;
}

export interface StoredPhoto {
  type: PhotoType;
  bytes: Uint8Array;
}

export interface StoreOptions {
  /** Path of the database file, or `:memory:`. */
  file: string;
  /** The time as ISO text; given by tests. */
  now?: () => string;
}

const IN_MEMORY = ':memory:';

/** "Back section, invented house" as part of an address: `back-section-invented-house`. */
export function slugOf(label: string): string {
  const slug = label
    .toLowerCase()
    .normalize('NFKD')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 40)
    .replace(/-+$/, '');
  return slug === '' ? 'roof' : slug;
}

interface RoofRow extends SavedRoof {}

/**
 * Opens (and where it is new, makes) the database of saved roofs. A new one starts with the three invented roofs.
 * @throws the database's own error when the file cannot be opened
 */
export function openStore({ file, now = () => new Date().toISOString() }: StoreOptions): Store {
  if (file !== IN_MEMORY) mkdirSync(dirname(file), { recursive: true });
  const db = new Database(file);
  const isNew = migrate(db);
  const byId = db.prepare('SELECT * FROM roofs WHERE id = ? AND deleted IS NULL');
  const taken = db.prepare('SELECT 1 FROM roofs WHERE id = ?');
  const insert = db.prepare(
    'INSERT INTO roofs (id, label, text, draft, answers, created, updated) VALUES (?, ?, ?, NULL, ?, ?, ?)',
  );

  const get = (id: string): SavedRoof | null => (byId.get(id) as RoofRow | undefined) ?? null;

  const freeId = (label: string): string => {
    const slug = slugOf(label);
    const isFree = (id: string): boolean => taken.get(id) === undefined;
    if (isFree(slug)) return slug;
    for (let n = 2; ; n++) if (isFree(`${slug}-${n}`)) return `${slug}-${n}`;
  };

  const put = (id: string, { label, text, answers = null }: NewRoof, at = now()): SavedRoof => {
    insert.run(id, label, text, answers, at, at);
    return { id, label, text, draft: null, answers, created: at, updated: at };
  };

  const keep = db.prepare(
    'INSERT INTO past_texts (roof_id, text, saved) SELECT id, text, updated FROM roofs WHERE id = ?',
  );

  const rows = (which: string): RoofInList[] =>
    (
      db.prepare(`SELECT id, label, draft IS NOT NULL AS hasDraft, updated FROM roofs WHERE ${which}`).all() as {
        id: string;
        label: string;
        hasDraft: number;
        updated: string;
      }[]
    ).map((row) => ({ ...row, hasDraft: row.hasDraft === 1 }));

  const store: Store = {
    list: () => rows('deleted IS NULL ORDER BY rowid'),
    deleted: () => rows('deleted IS NOT NULL ORDER BY deleted DESC, rowid DESC'),
    get,
    lastTouched: () =>
      (
        db.prepare('SELECT id FROM roofs WHERE deleted IS NULL ORDER BY updated DESC, rowid LIMIT 1').get() as
          | { id: string }
          | undefined
      )?.id ?? null,
    add: (roof) => put(freeId(roof.label), roof),
    saveText: db.transaction((id: string, label: string, text: string) => {
      keep.run(id);
      db.prepare('UPDATE roofs SET label = ?, text = ?, draft = NULL, updated = ? WHERE id = ?').run(
        label,
        text,
        now(),
        id,
      );
    }),
    saveDraft: (id, text) => {
      db.prepare('UPDATE roofs SET draft = ?, updated = ? WHERE id = ?').run(text, now(), id);
    },
    dropDraft: (id) => {
      db.prepare('UPDATE roofs SET draft = NULL, updated = ? WHERE id = ?').run(now(), id);
    },
    delete: (id) => {
      db.prepare('UPDATE roofs SET deleted = ? WHERE id = ? AND deleted IS NULL').run(now(), id);
    },
    putBack: (id) => {
      db.prepare('UPDATE roofs SET deleted = NULL WHERE id = ?').run(id);
    },
    addReadings: (id, layoutId, typed, read) => {
      db.prepare('INSERT INTO as_built (roof_id, layout_id, typed, read, saved) VALUES (?, ?, ?, ?, ?)').run(
        id,
        layoutId,
        JSON.stringify(typed),
        JSON.stringify(read),
        now(),
      );
    },
    readingsOf: (id, layoutId) => {
      const row = db
        .prepare(
          'SELECT typed, read, saved FROM as_built WHERE roof_id = ? AND layout_id = ? ORDER BY rowid DESC LIMIT 1',
        )
        .get(id, layoutId) as { typed: string; read: string; saved: string } | undefined;
      if (row === undefined) return null;
      return { typed: JSON.parse(row.typed), read: JSON.parse(row.read), saved: row.saved };
    },
    ...photoStore(db, now),
    close: () => {
      db.close();
    },
  };
  if (isNew) {
    const at = now();
    for (const { id, label, text } of demoRoofs()) put(id, { label, text }, at);
  }
  return store;
}
