import { expect, test } from 'vitest';
import { readRoofText } from '../../src/answer.ts';
import { joined } from '../../src/photos/photo.ts';
import { bytesOf, cameraBlock, holds, jpeg, PLACE, segment } from '../unit/photos/picture-bytes.ts';
import { boxValue, ORIGIN, type TestShop, testShop } from './shop.ts';

const ID = 'back-section';
const FORM = `/roofs/${ID}/edit/findings`;
const PHOTOS = `${FORM}/2/photos`;

const phonePhoto = (): Uint8Array => jpeg({ before: [segment(0xe1, joined([bytesOf('Exif\0\0'), cameraBlock(6)]))] });

async function upload(shop: TestShop, bytes: Uint8Array, name = 'eave.jpg'): Promise<Response> {
  const body = new FormData();
  body.set('photo', new File([new Uint8Array(bytes)], name, { type: 'image/jpeg' }));
  return shop.send(PHOTOS, { method: 'POST', body, headers: { Origin: ORIGIN } });
}

const findings = (shop: TestShop) => {
  const reading = readRoofText(shop.store.get(ID)!.text);
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.roof.findings;
};

test('the findings stand as a form with their numbers on the plan beside it', async () => {
  const html = await (await testShop().get(FORM)).text();
  expect(boxValue(html, 'findings[1].kind')).toBe('rotten-eave');
  expect(boxValue(html, 'findings[1].severity')).toBe('plain');
  expect(html).toContain('What was found');
  expect(html).toContain('place-finding-2');
  // "Not known" is a choice of every list of words.
  expect(html).toMatch(/id="findings\[0\]\.foundBy"[^>]*>\s*<option value="" selected[^>]*>not known/);
});

test('a finding is added, changed and taken out; what cannot be read is kept as it was typed', async () => {
  const shop = testShop();
  await shop.post(FORM, { 'findings[4].kind': 'bridging', 'findings[4].side': '2', 'findings[4].sizeIn': '2 1/2"' });
  expect(findings(shop)[4]).toMatchObject({ kind: 'bridging', side: 2, sizeIn: 2.5, at: null });
  await shop.post(FORM, { 'findings[0].remove': 'yes', 'findings[2].note': 'wet again' });
  expect(findings(shop).map(({ kind, note }) => [kind, note])).toEqual([
    ['rotten-eave', 'fascia soft behind the gutter'],
    ['leak-below', 'wet again'],
    ['soft-deck', 'the awl sinks in at the low spot'],
    ['bridging', null],
  ]);
  const bad = await shop.post(FORM, { 'findings[0].at': 'by the big tree', 'findings[0].note': 'still here' });
  const html = await bad.text();
  expect(bad.status).toBe(422);
  expect(boxValue(html, 'findings[0].at')).toContain('by the big tree');
  expect(boxValue(html, 'findings[0].note')).toBe('still here');
});

test('a photo is kept without its place, named by its finding, and served as a picture alone', async () => {
  const shop = testShop();
  const kept = await upload(shop, phonePhoto(), 'whatever.exe');
  expect([kept.status, kept.headers.get('location')]).toEqual([303, `${PHOTOS}?kept=1`]);
  const [photo] = findings(shop)[1].photos;
  const page = await (await shop.get(PHOTOS)).text();
  expect(page).toContain(`<img src="/roofs/${ID}/photos/${photo}"`);
  const served = await shop.get(`/roofs/${ID}/photos/${photo}`);
  expect(served.headers.get('content-type')).toBe('image/jpeg');
  expect(served.headers.get('x-content-type-options')).toBe('nosniff');
  expect(served.headers.get('content-security-policy')).toContain("default-src 'none'; sandbox");
  const bytes = new Uint8Array(await served.arrayBuffer());
  expect(bytes.subarray(0, 2)).toEqual(Uint8Array.of(0xff, 0xd8));
  expect(holds(bytes, PLACE)).toBe(false);
  // On the answer too; sent twice it is kept once.
  expect(await (await shop.get(`/roofs/${ID}`)).text()).toContain(`/roofs/${ID}/photos/${photo}`);
  await upload(shop, phonePhoto());
  expect(findings(shop)[1].photos).toEqual([photo]);
});

test.each<[string, Uint8Array, number, string]>([
  ['a file of 40 MB', new Uint8Array(40_000_000), 413, 'at most 12 MB'],
  ['just over the limit', joined([phonePhoto(), new Uint8Array(12_000_000)]), 413, 'at most 12 MB'],
  ['a program called eave.jpg', joined([bytesOf('MZ'), new Uint8Array(500)]), 422, 'The file is a program'],
  ['a bomb', jpeg({ widthPx: 65_000, heightPx: 65_000, dataBytes: 1 }), 422, '65000 x 65000 pixels'],
  ['half a photo', phonePhoto().subarray(0, 120), 422, 'ends in the middle'],
  ['no file', new Uint8Array(), 422, 'No file came'],
])('%s is refused with the reason, and nothing is lost', async (_, bytes, status, words) => {
  const shop = testShop();
  const before = shop.store.get(ID)!.text;
  const response = await upload(shop, bytes);
  const html = await response.text();
  expect(response.status).toBe(status);
  expect(html).toContain(words);
  expect(html).toContain('The finding and its other photos are kept');
  expect(html).toContain('fascia soft behind the gutter');
  expect(shop.store.get(ID)!.text).toBe(before);
  expect(shop.store.photosOf(ID)).toEqual([]);
});

test('40 MB are refused by the length that the request tells, before any of it is read', async () => {
  const shop = testShop();
  let asked = 0;
  const body = new ReadableStream({
    pull(controller) {
      asked++;
      controller.enqueue(new Uint8Array(1_000_000));
      if (asked > 40) controller.close();
    },
  });
  const headers = { Origin: ORIGIN, 'Content-Type': 'multipart/form-data; boundary=x', 'Content-Length': '40000000' };
  const response = await shop.send(PHOTOS, { method: 'POST', body, headers, duplex: 'half' } as RequestInit);
  expect(response.status).toBe(413);
  expect(await response.text()).toContain('The file has 40 MB');
  // A stream fetches its first piece by itself.
  expect(asked).toBeLessThan(3);
});

test('an upload that breaks off is said to have broken off', async () => {
  const shop = testShop();
  const headers = { Origin: ORIGIN, 'Content-Type': 'multipart/form-data; boundary=xyz' };
  const body = '--xyz\r\nContent-Disposition: form-data; name="photo"; filename="a.jpg"\r\n\r\nabc';
  const response = await shop.send(PHOTOS, { method: 'POST', body, headers });
  expect(response.status).toBe(422);
  expect(await response.text()).toContain('broke off');
});

test('the way to the photos keeps the form first; what cannot be read is said before the photos', async () => {
  const shop = testShop();
  const there = await shop.post(FORM, { 'findings[1].note': 'typed just now', next: 'photos-2' });
  expect([there.status, there.headers.get('location')]).toEqual([303, PHOTOS]);
  expect(findings(shop)[1].note).toBe('typed just now');
  const wrong = await shop.post(FORM, { 'findings[1].toFt': 'far', next: 'photos-2' });
  expect(wrong.status).toBe(422);
  expect(await wrong.text()).toMatch(/One thing has to be put right.*far&quot; cannot be used/s);
  expect((await upload(shop, phonePhoto())).status).toBe(303);
  const draft = JSON.parse(shop.store.get(ID)!.draft!) as { findings: { toFt: unknown; photos: string[] }[] };
  expect(draft.findings[1].toFt).toBe('far');
  expect(draft.findings[1].photos).toHaveLength(1);
  // A removal before it moves the number.
  const moved = await shop.post(FORM, { 'findings[0].remove': 'yes', 'findings[1].toFt': '26', next: 'photos-2' });
  expect(moved.headers.get('location')).toBe(`${FORM}/1/photos`);
});

test('a photo is thrown away; one whose finding was taken out is listed until then', async () => {
  const shop = testShop();
  await upload(shop, phonePhoto());
  const [photo] = findings(shop)[1].photos;
  await shop.post(FORM, { 'findings[1].remove': 'yes' });
  const html = await (await shop.get(FORM)).text();
  expect(html).toContain('Photos that no finding names');
  await shop.post(`${FORM}/loose/${photo}/remove`, {});
  expect((await shop.get(`/roofs/${ID}/photos/${photo}`)).status).toBe(404);
  await upload(shop, phonePhoto());
  const [again] = findings(shop)[1].photos;
  // Nobody throws away by that address what a finding names.
  await shop.post(`${FORM}/loose/${again}/remove`, {});
  expect((await shop.get(`/roofs/${ID}/photos/${again}`)).status).toBe(200);
  await shop.post(`${PHOTOS}/${again}/remove`, {});
  expect(findings(shop)[1].photos).toEqual([]);
  expect(shop.store.photosOf(ID)).toEqual([]);
});

test('a fault in another part of the file bars no photo', async () => {
  const shop = testShop();
  await shop.post(`/roofs/${ID}/edit/build-up`, { 'covering.ageYears': 'old' });
  expect(shop.store.get(ID)!.draft).not.toBeNull();
  const there = await shop.post(FORM, { 'findings[1].note': 'typed just now', next: 'photos-2' });
  expect([there.status, there.headers.get('location')]).toEqual([303, PHOTOS]);
});

test('the Enter key saves: the first button of the form leads nowhere else', async () => {
  const html = await (await testShop().get(FORM)).text();
  const form = html.slice(html.indexOf(`<form method="post" action="${FORM}"`));
  const [first] = /<button[^>]*type="submit"[^>]*>[^<]*/.exec(form)!;
  expect(first).toMatch(/>\s*Save$/);
  expect(first).not.toContain('name=');
  expect(first).toContain('tabindex="-1"');
});

test('a photo that is taken off while an edit waits stays for the last good file, until neither names it', async () => {
  const shop = testShop();
  await upload(shop, phonePhoto());
  const [photo] = findings(shop)[1].photos;
  await shop.post(FORM, { 'findings[1].toFt': 'far' });
  await shop.post(`${PHOTOS}/${photo}/remove`, {});
  const draft = JSON.parse(shop.store.get(ID)!.draft!) as { findings: { photos?: string[] }[] };
  expect(draft.findings[1].photos).toBeUndefined();
  expect(findings(shop)[1].photos).toEqual([photo]);
  expect((await shop.get(`/roofs/${ID}/photos/${photo}`)).status).toBe(200);
  // Not offered to be thrown away, and not thrown away by its address.
  expect(await (await shop.get(FORM)).text()).not.toContain('Photos that no finding names');
  await shop.post(`${FORM}/loose/${photo}/remove`, {});
  expect(shop.store.photosOf(ID)).toEqual([photo]);
  // Once the edit is good it is the roof: the picture is left over, and may go.
  await shop.post(FORM, { 'findings[1].toFt': '26' });
  expect(shop.store.get(ID)!.draft).toBeNull();
  expect(await (await shop.get(FORM)).text()).toContain('Photos that no finding names');
  await shop.post(`${FORM}/loose/${photo}/remove`, {});
  expect(shop.store.photosOf(ID)).toEqual([]);
});

test('a photo that only an edit of no readable text names is kept', async () => {
  const shop = testShop();
  await upload(shop, phonePhoto());
  const { text, id } = shop.store.get(ID)!;
  const [photo] = findings(shop)[1].photos;
  shop.store.saveText(id, 'without', text.replace(/,\s*"photos": \[[^\]]*\]/, ''));
  shop.store.saveDraft(id, `{ half a file "photos": ["${photo}"]`);
  await shop.post(`${FORM}/loose/${photo}/remove`, {});
  expect(shop.store.photosOf(ID)).toEqual([photo]);
});

test('photos go off the list and come back with their roof, and belong to it alone', async () => {
  const shop = testShop();
  await upload(shop, phonePhoto());
  const [photo] = findings(shop)[1].photos;
  expect((await shop.get(`/roofs/corner-drain/photos/${photo}`)).status).toBe(404);
  await shop.post(`/roofs/${ID}/delete`, {});
  expect(shop.store.photoOf(ID, photo)).toBeNull();
  expect((await shop.get(`/roofs/${ID}/photos/${photo}`)).status).toBe(404);
  await shop.post(`/roofs/${ID}/put-back`, {});
  expect((await shop.get(`/roofs/${ID}/photos/${photo}`)).status).toBe(200);
});

test('a form from another place sends no photo', async () => {
  const shop = testShop();
  const body = new FormData();
  body.set('photo', new File([new Uint8Array(phonePhoto())], 'a.jpg'));
  const response = await shop.send(PHOTOS, { method: 'POST', body, headers: { Origin: 'http://elsewhere.test' } });
  expect(response.status).toBe(403);
  expect(shop.store.photosOf(ID)).toEqual([]);
});

test('a finding that is not there has no photos', async () => {
  expect((await testShop().get(`${FORM}/9/photos`)).status).toBe(404);
});

test('the answer says what to do with the old roof first, then what was found, numbered', async () => {
  const shop = testShop();
  const html = await (await shop.get(`/roofs/${ID}`)).text();
  expect(html.indexOf('What to do with the old roof')).toBeLessThan(html.indexOf('>What was found<'));
  expect(html).toContain('Tear it off to the deck.');
  expect(html).toContain('2. Rotten eave');
  expect(html).toContain('Passed by one job in ten');
  expect((await shop.get(`/roofs/${ID}/drawings/findings.svg`)).status).toBe(200);
  expect((await shop.get('/roofs/corner-drain/drawings/findings.svg')).status).toBe(404);
});
