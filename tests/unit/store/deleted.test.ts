import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'libsql';
import { afterAll, expect, test } from 'vitest';
import { openStore } from '../../../src/store/store.ts';

const folder = mkdtempSync(join(tmpdir(), 'rainpath-deleted-'));
afterAll(() => rmSync(folder, { recursive: true }));

test('a roof taken off the list is nowhere but among the deleted, and comes back as it was', () => {
  const store = openStore({ file: ':memory:' });
  const { id } = store.add({ label: 'Porch', text: '{ "version": 1 }' });
  store.saveDraft(id, '{ oops');
  store.addReadings(id, 'a', { 1: '2' }, [{ id: '1', heightIn: 2 }]);
  const before = store.get(id)!;
  store.delete(id);
  expect(store.get(id)).toBeNull();
  expect(store.list().map((roof) => roof.id)).not.toContain(id);
  expect(store.lastTouched()).not.toBe(id);
  expect(store.deleted().map((roof) => roof.id)).toEqual([id]);
  // Its address is not given to another roof meanwhile.
  expect(store.add({ label: 'Porch', text: '{}' }).id).toBe('porch-2');
  store.putBack(id);
  const { label, text, draft, created, updated } = before;
  expect(store.get(id)).toMatchObject({ id, label, text, draft, created, updated });
  expect(store.readingsOf(id, 'a')?.typed).toEqual({ 1: '2' });
  expect(store.deleted()).toEqual([]);
});

test('the last one taken off stands first', () => {
  let hour = 0;
  const store = openStore({ file: ':memory:', now: () => `2026-01-02T0${hour++}:00:00.000Z` });
  store.delete('corner-drain');
  store.delete('back-section');
  expect(store.deleted().map(({ id }) => id)).toEqual(['back-section', 'corner-drain']);
  expect(store.lastTouched()).toBe('twenty-drains');
});

test('a database of version 1 is brought up to now with all its roofs', () => {
  const file = join(folder, 'old.sqlite');
  openStore({ file }).close();
  const old = new Database(file);
  old.exec('ALTER TABLE roofs DROP COLUMN deleted; DROP TABLE photos; PRAGMA user_version = 1;');
  old.close();
  const store = openStore({ file });
  expect(store.list()).toHaveLength(3);
  store.delete('back-section');
  expect(store.list()).toHaveLength(2);
  store.close();
});
