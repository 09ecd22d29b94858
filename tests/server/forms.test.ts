import { expect, test } from 'vitest';
import { sections } from '../../src/server/forms/sections.ts';
import { demoText } from '../../src/store/demo-roofs.ts';
import { boxValue, testShop } from './shop.ts';

/** Everything that a browser would send from a form of a page. */
function sentBy(html: string): Record<string, string> {
  const names = [...html.matchAll(/<(?:input type="text"|input|select|textarea)[^>]*\sid="([^"]+)" name="\1"/g)];
  return Object.fromEntries(names.map(([, id]) => [id, boxValue(html, id) ?? '']));
}

test.each(['back-section', 'corner-drain', 'twenty-drains'])(
  'every section of %s sent back as it came changes not one byte',
  async (id) => {
    const shop = testShop();
    for (const { slug } of sections) {
      const html = await (await shop.get(`/roofs/${id}/edit/${slug}`)).text();
      const sent = sentBy(html);
      expect(Object.keys(sent).length).toBeGreaterThan(5);
      const response = await shop.post(`/roofs/${id}/edit/${slug}`, sent);
      expect([slug, response.status]).toEqual([slug, 200]);
      expect([slug, shop.store.get(id)!.text]).toEqual([slug, demoText(id as 'back-section')]);
    }
  },
);

test('a measurement is kept as it was typed and shown as it was understood', async () => {
  const shop = testShop();
  const path = '/roofs/back-section/edit/curbs';
  const sent = sentBy(await (await shop.get(path)).text());
  const response = await shop.post(path, { ...sent, 'curbs[0].heightIn': '9 1/2"' });
  expect(response.status).toBe(200);
  const html = await response.text();
  expect(boxValue(html, 'curbs[0].heightIn')).toBe('9 1/2"');
  expect(html).toContain('read as 9 1/2″');
  const file = JSON.parse(shop.store.get('back-section')!.text);
  expect(file.curbs[0]).toMatchObject({
    heightIn: '9 1/2"',
    outline: [
      [9, 13],
      [13, 13],
      [13, 17],
      [9, 17],
    ],
  });
});

test('what cannot be read comes back with 422: all that was typed, the same sentence twice, a link to the box', async () => {
  const shop = testShop();
  const path = '/roofs/back-section/edit/curbs';
  const sent = sentBy(await (await shop.get(path)).text());
  const wrong = { ...sent, 'curbs[0].heightIn': '6 apples', 'pipes[1].topIn': '11' };
  const response = await shop.post(path, wrong);
  expect(response.status).toBe(422);
  const html = await response.text();
  for (const [id, text] of Object.entries(wrong)) expect([id, boxValue(html, id)]).toEqual([id, text]);
  const summary = /<a href="#curbs\[0\]\.heightIn">[^<]+<\/a>: ([^<]+)<\/li>/.exec(html)?.[1];
  const beside = /id="curbs\[0\]\.heightIn-problem"><span>([^<]+?) ?<\/span>/.exec(html)?.[1];
  expect(summary).toBeTruthy();
  expect(beside).toBe(summary);
  expect(html).toMatch(/id="curbs\[0\]\.heightIn"[^>]*aria-invalid="true"/);
  // The last good roof still answers; the edit waits beside it and comes back when the page is opened again.
  const roof = shop.store.get('back-section')!;
  expect(roof.text).toBe(demoText('back-section'));
  expect(roof.draft).toContain('6 apples');
  expect((await shop.get('/roofs/back-section')).status).toBe(200);
  const again = await (await shop.get(path)).text();
  expect(boxValue(again, 'curbs[0].heightIn')).toBe('6 apples');
  expect(boxValue(again, 'pipes[1].topIn')).toBe('11');
  // Put right in another visit: draft and good text become one.
  await shop.post(path, { ...wrong, 'curbs[0].heightIn': '6' });
  expect(shop.store.get('back-section')).toMatchObject({ draft: null });
  expect(JSON.parse(shop.store.get('back-section')!.text).pipes[1].topIn).toBe(11);
});

test('entries are added, left blank and taken out', async () => {
  const shop = testShop();
  const path = '/roofs/back-section/edit/curbs';
  const sent = sentBy(await (await shop.get(path)).text());
  const added = await shop.post(path, {
    ...sent,
    'pipes[3].kind': 'flue',
    'pipes[3].at': `26', 3'-6"`,
    'curbs[1].outline': '2 x 3 at 20, 15',
    'pipes[0].remove': 'yes',
  });
  expect(added.status).toBe(200);
  const file = JSON.parse(shop.store.get('back-section')!.text);
  expect(file.curbs.map(({ outline }: { outline: unknown }) => outline)[1]).toEqual([
    [20, 15],
    [22, 15],
    [22, 18],
    [20, 18],
  ]);
  expect(file.pipes.map(({ kind }: { kind: string }) => kind)).toEqual(['exhaust', 'gas-vent', 'flue']);
  expect(file.pipes[2].at).toEqual([`26'`, `3'-6"`]);
});

test('a script gets the form alone, a reader the page; a change of page is told to both', async () => {
  const shop = testShop();
  const path = '/roofs/back-section/edit/wishes';
  const asked = { 'HX-Request': 'true' };
  const fragment = await shop.post(path, { 'preferences.grease': 'no' }, asked);
  expect(await fragment.text()).toMatch(/^<div class="edit" id="form">/);
  expect(await (await shop.post(path, { 'preferences.grease': 'no' })).text()).toMatch(/^<!DOCTYPE html>/);
  const onward = await shop.post(path, { 'preferences.grease': 'no', next: 'result' });
  expect([onward.status, onward.headers.get('location')]).toEqual([303, '/roofs/back-section']);
  const told = await shop.post(path, { 'preferences.grease': 'no', next: 'result' }, asked);
  expect([told.status, told.headers.get('HX-Redirect')]).toEqual([200, '/roofs/back-section']);
});

test('the file as text: an edit that is no JSON is kept, and the sections wait until it is one', async () => {
  const shop = testShop();
  const typed = demoText('back-section').replace('"version": 1,', '"version": 1');
  const response = await shop.post('/roofs/back-section/edit/text', { file: typed });
  const html = await response.text();
  expect(response.status).toBe(422);
  expect(boxValue(html, 'file')).toBe(typed);
  const section = await shop.get('/roofs/back-section/edit/plan');
  expect([section.status, section.headers.get('location')]).toEqual([302, '/roofs/back-section/edit/text']);
  expect(boxValue(await (await shop.get('/roofs/back-section/edit/text')).text(), 'file')).toBe(typed);
});

test('a problem of another section leads there', async () => {
  const shop = testShop();
  const text = demoText('back-section').replace('"heightIn": 6', '"heightIn": "6 apples"');
  expect((await shop.post('/roofs/back-section/edit/text', { file: text })).status).toBe(422);
  const html = await (await shop.get('/roofs/back-section/edit/plan')).text();
  expect(html).toContain('href="/roofs/back-section/edit/curbs#curbs[0].heightIn"');
});

const six = {
  label: 'Porch',
  lengthText: `24'-6"`,
  depthText: 'about 12 ft',
  leavesNow: 'gutter-side',
  town: 'Nashville, TN',
};

test('six answers make a roof; two of them are enough', async () => {
  const shop = testShop();
  const read = await shop.post('/new', { ...six, next: 'read' });
  const html = await read.text();
  expect(read.status).toBe(200);
  expect(html).toContain('read as about 12′-0″');
  expect(boxValue(html, 'lengthText')).toBe(`24'-6"`);
  expect(shop.store.list()).toHaveLength(3);

  const made = await shop.post('/new', { ...six, next: 'result' });
  expect([made.status, made.headers.get('location')]).toEqual([303, '/roofs/porch']);
  const page = await shop.get('/roofs/porch');
  expect(page.status).toBe(200);
  expect(await page.text()).toContain('294 sq ft');

  const least = await shop.post('/new', { lengthText: '30', depthText: '20' });
  expect(least.status).toBe(303);
  expect((await shop.get(least.headers.get('location')!)).status).toBe(200);
});

test('answers that cannot be read stand as typed, with the sentence at the answer', async () => {
  const shop = testShop();
  const typed = { ...six, lengthText: '30 cubits', depthText: '', town: 'Nowhere & <b>' };
  const response = await shop.post('/new', typed);
  const html = await response.text();
  expect(response.status).toBe(422);
  for (const [id, text] of Object.entries(typed)) expect([id, boxValue(html, id)]).toEqual([id, text]);
  expect(html).toContain('href="#lengthText"');
  expect(html).toContain('href="#depthText"');
  expect(html).not.toContain('<b>');
});
