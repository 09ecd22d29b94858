import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { demoText } from '../../../src/store/demo-roofs.ts';
import { openStore, slugOf } from '../../../src/store/store.ts';

const folder = mkdtempSync(join(tmpdir(), 'rainpath-store-'));
afterAll(() => rmSync(folder, { recursive: true }));

const inMemory = () => openStore({ file: ':memory:', now: () => '2026-01-02T03:04:05.000Z' });

test('a new database starts with the three invented roofs, their text byte for byte', () => {
  const store = inMemory();
  expect(store.list().map(({ id }) => id)).toEqual(['back-section', 'corner-drain', 'twenty-drains']);
  expect(store.get('back-section')?.text).toBe(demoText('back-section'));
  expect(store.get('nobody')).toBeNull();
});

test('an edit that cannot be read stands beside the last good text and never replaces it', () => {
  const store = inMemory();
  const { id } = store.add({ label: 'Porch', text: '{ "version": 1 }' });
  store.saveDraft(id, '{ "version": 1, oops');
  expect(store.get(id)).toMatchObject({ text: '{ "version": 1 }', draft: '{ "version": 1, oops' });
  expect(store.list().find((roof) => roof.id === id)?.hasDraft).toBe(true);
  store.saveText(id, 'Porch', '{ "version": 1, "label": "Porch" }');
  expect(store.get(id)).toMatchObject({ text: '{ "version": 1, "label": "Porch" }', draft: null });
});

test('two roofs of one name get ids of their own', () => {
  const store = inMemory();
  const ids = [1, 2, 3].map(() => store.add({ label: 'Back  porch!', text: '{}' }).id);
  expect(ids).toEqual(['back-porch', 'back-porch-2', 'back-porch-3']);
  expect(slugOf('¿?')).toBe('roof');
});

test('the last heights of a layout come back as typed; other layouts are apart', () => {
  const store = inMemory();
  store.addReadings('back-section', 'a', { 1: '2', 2: '' }, [{ id: '1', heightIn: 2 }]);
  store.addReadings('back-section', 'a', { 1: '2 1/4"', 2: '' }, [{ id: '1', heightIn: 2.25 }]);
  expect(store.readingsOf('back-section', 'a')).toMatchObject({
    typed: { 1: '2 1/4"' },
    read: [{ id: '1', heightIn: 2.25 }],
  });
  expect(store.readingsOf('back-section', 'b')).toBeNull();
});

test('what was saved is there after the file is opened again, and the invented roofs are not put in twice', () => {
  const file = join(folder, 'deep', 'roofs.sqlite');
  const first = openStore({ file });
  const { id } = first.add({ label: 'Shed', text: '{ "a": "24\'-6 1/2\\"" }', answers: '{"town":"x"}' });
  first.close();
  const second = openStore({ file });
  expect(second.get(id)).toMatchObject({ text: '{ "a": "24\'-6 1/2\\"" }', answers: '{"town":"x"}' });
  expect(second.list()).toHaveLength(4);
  second.close();
});
