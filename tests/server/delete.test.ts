import { expect, test } from 'vitest';
import { testShop } from './shop.ts';

test('a roof is taken off after one question, and undone from the list', async () => {
  const shop = testShop();
  const ask = await (await shop.get('/roofs/corner-drain/delete')).text();
  expect(ask).toContain('Take this roof off the list?');
  expect(ask).toContain('<form method="post" action="/roofs/corner-drain/delete"');
  // Asking alone changes nothing.
  expect(shop.store.get('corner-drain')).not.toBeNull();

  const done = await shop.post('/roofs/corner-drain/delete', {});
  expect([done.status, done.headers.get('location')]).toEqual([303, '/roofs?taken-off=corner-drain']);
  expect((await shop.get('/roofs/corner-drain')).status).toBe(404);
  const list = await (await shop.get('/roofs?taken-off=corner-drain')).text();
  expect(list).toContain('was taken off the list.');
  expect(list).toContain('action="/roofs/corner-drain/put-back"');
  expect(list).not.toContain('href="/roofs/corner-drain"');

  const back = await shop.post('/roofs/corner-drain/put-back', {});
  expect([back.status, back.headers.get('location')]).toEqual([303, '/roofs/corner-drain']);
  expect((await shop.get('/roofs/corner-drain')).status).toBe(200);
  expect((await shop.post('/roofs/corner-drain/put-back', {})).status).toBe(404);
});

test('the list stands when every roof is off it, and the start leads to it', async () => {
  const shop = testShop();
  for (const { id } of shop.store.list()) await shop.post(`/roofs/${id}/delete`, {});
  const list = await (await shop.get('/roofs')).text();
  expect(list).toContain('No roof is on the list.');
  expect(list.match(/put-back/g)).toHaveLength(3);
  expect((await shop.get('/')).headers.get('location')).toBe('/roofs');
});

test('a form from another place takes no roof off', async () => {
  const shop = testShop();
  const response = await shop.post('/roofs/corner-drain/delete', {}, { Origin: 'http://elsewhere.test' });
  expect(response.status).toBe(403);
  expect(shop.store.get('corner-drain')).not.toBeNull();
});

test('the answer says that an edit waits, and leads to it', async () => {
  const shop = testShop();
  expect(await (await shop.get('/roofs/corner-drain')).text()).not.toContain('An edit waits');
  shop.store.saveDraft('corner-drain', '{ "version": 1, oops');
  const page = await (await shop.get('/roofs/corner-drain')).text();
  expect(page).toContain('An edit waits that cannot be read yet');
  expect(page).toContain('<a href="/roofs/corner-drain/edit/text">Put the edit right</a>');
});
