import { expect, test } from 'vitest';
import { demoText } from '../../src/store/demo-roofs.ts';
import { testShop } from './shop.ts';

const papers = ['', '/estimate', '/crew', '/owner', '/kitchen-table', '/supplier', '/survey', '/rules'].map(
  (paper) => `/roofs/back-section${paper}`,
);
const note = /An edit waits that cannot be read yet\.[^<]*<a href="\/roofs\/back-section\/edit\/text">/;

test('every paper of a roof says that an edit waits, once, and leads to it', async () => {
  const shop = testShop();
  shop.store.saveDraft('back-section', '{ "version": 1, oops');
  for (const path of papers) {
    const page = await (await shop.get(path)).text();
    expect([path, page.match(new RegExp(note, 'g'))?.length]).toEqual([path, 1]);
    // Before anything that the paper says of the roof.
    expect(page.search(note)).toBeLessThan(page.indexOf('<h1'));
  }
  const sent = await (await shop.post('/roofs/back-section/as-built', {})).text();
  expect(sent).toMatch(note);
  // Kept as it was typed, and gone from the papers when it is put right.
  expect(shop.store.get('back-section')?.text).toBe(demoText('back-section'));
  shop.store.dropDraft('back-section');
  for (const path of papers) expect(await (await shop.get(path)).text()).not.toMatch(note);
}, 60_000);
