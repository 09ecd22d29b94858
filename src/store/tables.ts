import type Database from 'libsql';

const VERSION = 3;

/** A roof that was taken off the list keeps its row: it can be put back. */
const deletable = 'ALTER TABLE roofs ADD COLUMN deleted TEXT;';

/** Texts that were replaced stay in `past_texts`: nothing that was typed is lost. */
const tables = `
  CREATE TABLE roofs (
    id TEXT PRIMARY KEY,
    label TEXT NOT NULL,
    text TEXT NOT NULL,
    draft TEXT,
    answers TEXT,
    created TEXT NOT NULL,
    updated TEXT NOT NULL
  );
  CREATE TABLE past_texts (
    roof_id TEXT NOT NULL REFERENCES roofs (id),
    text TEXT NOT NULL,
    saved TEXT NOT NULL
  );
  CREATE TABLE as_built (
    roof_id TEXT NOT NULL REFERENCES roofs (id),
    layout_id TEXT NOT NULL,
    typed TEXT NOT NULL,
    read TEXT NOT NULL,
    saved TEXT NOT NULL
  );
  CREATE INDEX as_built_of_layout ON as_built (roof_id, layout_id);
`;

/** Photos of findings, as they were kept by `checkPhoto`; they go off the list and come back with their roof. */
const photos = `
  CREATE TABLE photos (
    roof_id TEXT NOT NULL REFERENCES roofs (id),
    id TEXT NOT NULL,
    type TEXT NOT NULL,
    width_px INTEGER NOT NULL,
    height_px INTEGER NOT NULL,
    bytes BLOB NOT NULL,
    saved TEXT NOT NULL,
    PRIMARY KEY (roof_id, id)
  );
`;

/** What each version added to the one before it. */
const steps: readonly string[] = [tables, deletable, photos];

/**
 * Makes the tables in a new database, and brings an older one up to now.
 * @returns true when the database was new
 * @throws Error when the file was written by a later version of this program
 */
export function migrate(db: InstanceType<typeof Database>): boolean {
  const { user_version: version } = db.prepare('PRAGMA user_version').get() as { user_version: number };
  if (version > VERSION) throw new Error(`the database has version ${version}; this program reads up to ${VERSION}`);
  if (version === VERSION) return false;
  db.exec(`BEGIN; ${steps.slice(version).join(' ')} PRAGMA user_version = ${VERSION}; COMMIT;`);
  return version === 0;
}
