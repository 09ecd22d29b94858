import { describe, expect, test } from 'vitest';
import { readRoofText } from '../../src/answer.ts';
import { surveyOf } from '../../src/core/survey/survey.ts';
import { demoText } from '../../src/store/demo-roofs.ts';
import { boxValue, testShop } from './shop.ts';

const path = '/roofs/back-section/edit/readings';

/** Everything that a browser would send from the form of a page. */
function sentBy(html: string): Record<string, string> {
  const names = [...html.matchAll(/<(?:input|select|textarea)[^>]*\sid="([^"]+)" name="\1"/g)];
  return Object.fromEntries(names.map(([, id]) => [id, boxValue(html, id) ?? '']));
}

const fileOf = (shop: ReturnType<typeof testShop>) => JSON.parse(shop.store.get('back-section')!.text);

function surveyOfDemo() {
  const ready = readRoofText(demoText('back-section'));
  if (!ready.ok) throw new Error('the demo roof cannot be read');
  return surveyOf(ready.roof);
}

/** Box of a mark: its place in millionths of a foot. */
const boxOf = (at: readonly [number, number]): string => `spot_${at.map((ft) => Math.round(ft * 1e6)).join('_')}`;

describe('survey sheet', () => {
  test('every mark has a line with a blank, a dot and a number on the plan, and a place on it that its line marks', async () => {
    const shop = testShop();
    const html = await (await shop.get('/roofs/back-section/survey')).text();
    const { marks } = surveyOfDemo();
    expect(marks.length).toBeGreaterThan(30);
    for (const { id, place } of marks) {
      expect(html).toContain(`<tr data-place="mark-${id}"><th scope="row">${id}</th>`);
      expect(html).toMatch(new RegExp(`class="place place-mark-${id}"><path[^>]*/><text[^>]*>${id}</text>`));
      expect(html).toContain(place.replaceAll('&', '&amp;'));
    }
    expect(html.match(/class="blank-cell"/g)!.length).toBeGreaterThan(marks.length);
  });

  test('it says which way each instrument counts, defers to the competent person, and leaves who and when open', async () => {
    const html = await (await testShop().get('/roofs/corner-drain/survey')).text();
    expect(html).toContain('A higher reading is a lower point');
    expect(html).toContain('A larger gap is a lower point');
    expect(html).toContain('A higher mark is a lower point');
    expect(html).toContain('competent person');
    expect(html).toContain('fall protection');
    for (const blank of ['Taken on', 'By', 'A reading is good to'])
      expect(html).toContain(`<dt>${blank}</dt><dd class="blank"></dd>`);
  });

  test('the answer and the edit pages lead to it', async () => {
    const shop = testShop();
    for (const from of ['/roofs/back-section', '/roofs/back-section/edit/today', path])
      expect(await (await shop.get(from)).text()).toContain('href="/roofs/back-section/survey"');
    expect(await (await shop.get('/roofs/back-section/survey')).text()).toContain(`href="${path}"`);
  });
});

describe('readings beside the marks', () => {
  test.each(['back-section', 'corner-drain', 'twenty-drains'])(
    '%s sent back as it came changes not one byte',
    async (id) => {
      const shop = testShop();
      const page = `/roofs/${id}/edit/readings`;
      const sent = sentBy(await (await shop.get(page)).text());
      expect(Object.keys(sent).filter((name) => name.startsWith('spot_')).length).toBeGreaterThan(30);
      expect((await shop.post(page, sent)).status).toBe(200);
      expect(shop.store.get(id)!.text).toBe(demoText(id as 'back-section'));
    },
  );

  /** A shop in which the demo roof was not read yet. */
  async function unread() {
    const shop = testShop();
    const file = JSON.parse(demoText('back-section'));
    for (const key of ['readings', 'sense', 'surface', 'planes']) delete file.existing[key];
    await shop.post('/roofs/back-section/edit/text', { file: JSON.stringify(file) });
    expect(shop.store.get('back-section')!.draft).toBeNull();
    return shop;
  }
  const { marks } = surveyOfDemo();
  const [first, second, third] = [marks[0], marks[6], marks[20]].map(({ at }) => boxOf(at));

  test('a half-filled sheet is kept, read, and filled further later', async () => {
    const shop = await unread();
    const sent = sentBy(await (await shop.get(path)).text());
    const half = await shop.post(path, { ...sent, [first]: '48', [second]: '48 1/2', 'existing.sense': 'rod' });
    expect(half.status).toBe(200);
    const html = await half.text();
    expect(html).toContain(`2 of ${marks.length} read.`);
    expect(html).toContain('read as 48 1/2″');
    expect(fileOf(shop).existing).toMatchObject({
      sense: 'rod',
      readings: [
        [...marks[0].at, 48],
        [...marks[6].at, '48 1/2"'],
      ],
    });
    expect((await shop.get('/roofs/back-section')).status).toBe(200);

    const later = { ...sentBy(html), [third]: '4 ft', [first]: '' };
    await shop.post(path, later);
    expect(fileOf(shop).existing.readings).toEqual([
      [...marks[6].at, '48 1/2"'],
      [...marks[20].at, '4 ft'],
    ]);
    await shop.post(path, { ...later, [second]: '', [third]: 'not known' });
    expect(fileOf(shop).existing.readings).toBeUndefined();
  });

  test('what cannot be read comes back beside its mark with everything else that was typed', async () => {
    const shop = await unread();
    const sent = sentBy(await (await shop.get(path)).text());
    const typed = { ...sent, [first]: '48', [second]: '6 apples', [third]: '47 3/4"', 'existing.sense': 'rod' };
    const response = await shop.post(path, typed);
    expect(response.status).toBe(422);
    const html = await response.text();
    for (const [id, text] of Object.entries(typed)) expect([id, boxValue(html, id)]).toEqual([id, text]);
    expect(html).toContain(`<a href="#${second}">Mark ${marks[6].id}</a>`);
    expect(html).toMatch(new RegExp(`id="${second}"[^>]*aria-invalid="true"`));
    // It waits beside the last good roof, and is put right in another visit.
    const again = await (await shop.get(path)).text();
    expect([boxValue(again, second), boxValue(again, third)]).toEqual(['6 apples', '47 3/4"']);
    expect((await shop.post(path, { ...sentBy(again), [second]: '48.5' })).status).toBe(200);
    expect(fileOf(shop).existing.readings).toHaveLength(3);
  });

  test('which way the readings count is asked, never guessed', async () => {
    const shop = await unread();
    const sent = sentBy(await (await shop.get(path)).text());
    const response = await shop.post(path, { ...sent, [first]: '48', [second]: '47' });
    expect(response.status).toBe(422);
    expect(await response.text()).toContain('<a href="#existing.sense">');
  });

  test('heights taped and strings go to their place in the file; readings taken elsewhere stay', async () => {
    const shop = await unread();
    const file = fileOf(shop);
    const away = { ...file, existing: { ...file.existing, sense: 'height', readings: [[5.5, 6.5, 0.25]] } };
    await shop.post('/roofs/back-section/edit/text', { file: JSON.stringify(away) });
    const html = await (await shop.get(path)).text();
    expect(html).toContain('1 more were taken elsewhere');
    const response = await shop.post(path, {
      ...sentBy(html),
      [first]: '1/2',
      'curbs[0].heightIn': '9',
      'existing.strings[0].from': '0, 12',
      'existing.strings[0].to': '30, 12',
      'existing.strings[0].fromIn': '4',
      'existing.strings[0].toIn': '4',
      'existing.strings[0].readings': '4, 3 1/2"\n8, 4',
    });
    expect(response.status).toBe(200);
    const kept = fileOf(shop);
    expect(kept.curbs[0].heightIn).toBe(9);
    expect(kept.existing.readings).toEqual([
      [5.5, 6.5, 0.25],
      [...marks[0].at, '1/2"'],
    ]);
    expect(kept.existing.strings).toEqual([
      {
        from: [0, 12],
        to: [30, 12],
        fromIn: 4,
        toIn: 4,
        readings: [
          [4, '3 1/2"'],
          [8, 4],
        ],
      },
    ]);
  });

  test('a string without its other end comes back with the missing end named at its box', async () => {
    const shop = await unread();
    const sent = sentBy(await (await shop.get(path)).text());
    const wrong = { ...sent, 'existing.strings[0].from': '0, 12', 'existing.strings[0].readings': '4, 3' };
    const response = await shop.post(path, wrong);
    expect(response.status).toBe(422);
    const html = await response.text();
    expect(html).toContain('<a href="#existing.strings[0].to">');
    expect(boxValue(html, 'existing.strings[0].readings')).toBe('4, 3');
  });

  test('a script gets the form alone', async () => {
    const shop = testShop();
    const sent = sentBy(await (await shop.get(path)).text());
    const part = await (await shop.post(path, sent, { 'HX-Request': 'true' })).text();
    expect(part).toMatch(/^<div class="edit" id="form">/);
  });
});
