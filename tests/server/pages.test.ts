import { expect, test } from 'vitest';
import { readRoofText } from '../../src/answer.ts';
import { demoText } from '../../src/store/demo-roofs.ts';
import { testShop } from './shop.ts';

const shop = testShop();

test('the start leads to the first invented roof, already assessed', async () => {
  const start = await shop.get('/');
  expect([start.status, start.headers.get('location')]).toEqual([302, '/roofs/back-section']);
  const page = await (await shop.get('/roofs/back-section')).text();
  expect(page).toContain('Water stands 7/8″ deep');
  expect(page).toContain('Invented roof');
});

test.each([
  '/roofs',
  '/new',
  '/import',
  '/roofs/back-section',
  '/roofs/back-section?layout=open-side-1',
  '/roofs/back-section/estimate',
  '/roofs/back-section/crew',
  '/roofs/back-section/owner',
  '/roofs/back-section/kitchen-table',
  '/roofs/back-section/supplier',
  '/roofs/back-section/rules',
  '/roofs/back-section/delete',
  '/roofs/back-section/edit/text',
  '/roofs/corner-drain/edit/today',
])('%s is a whole page with its headers', async (path) => {
  const response = await shop.get(path);
  expect(response.status).toBe(200);
  expect(response.headers.get('content-type')).toBe('text/html; charset=UTF-8');
  const policy = response.headers.get('content-security-policy');
  expect(policy).toContain("default-src 'none'");
  expect(policy).toContain("script-src 'self';");
  expect(response.headers.get('x-content-type-options')).toBe('nosniff');
  expect(response.headers.get('vary')).toBe('HX-Request');
  const html = await response.text();
  expect(html).toMatch(/^<!DOCTYPE html><html lang="en">/);
  expect(html.match(/<h1[ >]/g)).toHaveLength(1);
  // Nothing inline that the policy would stop, nothing from another host.
  expect(html.match(/<script(?![^>]*src="\/assets\/)[^>]*>/g)).toBeNull();
  expect(html.match(/\son[a-z]+="/g)).toBeNull();
  expect(html.match(/(?:src|href)="https?:/g)).toBeNull();
});

test('every link and style of the pages leads somewhere', async () => {
  const start = ['/roofs', '/new', '/import', '/roofs/back-section', '/roofs/back-section/edit/plan'];
  const pages = await Promise.all(start.map(async (path) => (await shop.get(path)).text()));
  const addresses = pages.flatMap((html) => [...html.matchAll(/(?:href|src)="(\/[^"#]*)/g)].map(([, path]) => path));
  const unique = [...new Set(addresses)].map((path) => path.replaceAll('&amp;', '&'));
  expect(unique.length).toBeGreaterThan(20);
  const broken: string[] = [];
  for (const path of unique) if ((await shop.get(path)).status >= 400) broken.push(path);
  expect(broken).toEqual([]);
});

test('the result and the schema come as JSON, the drawings as SVG', async () => {
  const result = await shop.get('/roofs/back-section/result.json');
  expect(result.headers.get('content-type')).toBe('application/json; charset=utf-8');
  expect(await result.json()).toMatchObject({ resultVersion: 1, section: { areaSqFt: 720 } });
  const schema = (await (await shop.get('/schema.json')).json()) as { title: string };
  expect(schema.title).toContain('roof file, version 1');
  const drawing = await shop.get('/roofs/back-section/drawings/after.svg');
  expect(drawing.headers.get('content-type')).toBe('image/svg+xml; charset=utf-8');
  expect(await drawing.text()).toMatch(/^<svg .*<style>/);
  for (const name of ['before', 'boards', 'water-today', 'water-new', 'levels']) {
    expect([name, (await shop.get(`/roofs/back-section/drawings/${name}.svg`)).status]).toEqual([name, 200]);
  }
  expect((await shop.get('/roofs/back-section/drawings/other.svg')).status).toBe(404);
});

test('what is not there is said plainly', async () => {
  for (const path of ['/nowhere', '/roofs/nobody', '/roofs/nobody/crew', '/roofs/back-section/edit/nothing']) {
    const response = await shop.get(path);
    const html = await response.text();
    expect([path, response.status]).toEqual([path, 404]);
    expect(html).toContain('<h1>Not found</h1>');
    expect(html).not.toMatch(/\bat .*\.tsx?:\d+|Error:/);
  }
});

test('a fault of the program shows no detail and is written to the log', async () => {
  const broken = testShop();
  broken.store.get = () => {
    throw new Error('disk on fire');
  };
  const response = await broken.get('/roofs/back-section');
  const html = await response.text();
  expect(response.status).toBe(500);
  expect(html).toContain('A fault of the program');
  expect(html).not.toContain('disk on fire');
  expect(broken.log.join()).toContain('disk on fire');
});

test('a form from another place is not taken', async () => {
  const response = await shop.post('/import', { file: demoText('back-section') }, { Origin: 'http://elsewhere.test' });
  expect(response.status).toBe(403);
  expect(shop.store.list()).toHaveLength(3);
});

test('import and export: the same text comes back, typed or sent as a file', async () => {
  const text = demoText('corner-drain').replace('"label": "', '"label": "Copy of ');
  const typed = await shop.post('/import', { file: text.replaceAll('\n', '\r\n') });
  expect(typed.status).toBe(303);
  const address = typed.headers.get('location')!;
  const back = await shop.get(`${address}/roof.json`);
  expect(back.headers.get('content-disposition')).toMatch(/^attachment; filename="copy-of-[a-z0-9-]+\.roof\.json"$/);
  expect(await back.text()).toBe(text);

  const form = new FormData();
  form.set('upload', new File([text], 'x.roof.json', { type: 'application/json' }));
  form.set('file', '');
  const sent = await shop.send('/import', { method: 'POST', body: form, headers: { Origin: 'http://localhost' } });
  expect(sent.status).toBe(303);
  expect(sent.headers.get('location')).not.toBe(address);
  expect(await (await shop.get(`${sent.headers.get('location')}/roof.json`)).text()).toBe(text);
});

test('a file that cannot be read is refused with every sentence, and its text stands', async () => {
  const text = '{ "version": 1, "outline": [[0,0],[30,0],[0,24],[30,24]], "colour": "red" }';
  const response = await shop.post('/import', { file: text });
  const html = await response.text();
  expect(response.status).toBe(422);
  expect(html).toContain(text.replaceAll('"', '&quot;'));
  const reading = readRoofText(text);
  if (reading.ok) throw new Error('the crossed outline was read');
  expect(reading.problems.length).toBeGreaterThan(1);
  // Each stands in the summary, linked to the box, and at the box.
  expect(html.match(/<a href="#file">/g)).toHaveLength(reading.problems.length);
  expect(html.match(/id="file-problem"/g)).toHaveLength(1);
});

test('more than 10 MB is refused with a sentence', async () => {
  const response = await shop.post('/import', { file: 'x'.repeat(10_600_000) });
  expect(response.status).toBe(413);
  expect(await response.text()).toContain('at most 10 MB');
  const justOver = await shop.post('/import', { file: 'x'.repeat(10_200_000) });
  expect(justOver.status).toBe(422);
  expect(await justOver.text()).toContain('at most 10 MB');
});
