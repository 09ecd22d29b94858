import { expect, test } from 'vitest';
import { Answers } from '../../src/server/answers.ts';
import { demoText } from '../../src/store/demo-roofs.ts';
import { testShop } from './shop.ts';

const text = demoText('back-section');

test('an answer that takes long is told by how far it is, and is the same in the end', async () => {
  const answers = new Answers();
  const first = answers.within(text, 0);
  expect(first).toHaveProperty('progress');
  let last = first;
  let looks = 0;
  while ('progress' in last) {
    await new Promise((resolve) => setTimeout(resolve, 20));
    last = answers.within(text, 0);
    looks++;
    expect(looks).toBeLessThan(2000);
  }
  if ('ok' in last) throw new Error('the demo roof cannot be read');
  expect(last.assessment).toEqual((new Answers().of(text) as typeof last).assessment);
});

test('who cannot wait for a page that looks again gets the answer at once', () => {
  const answers = new Answers();
  expect(answers.within(text, 0)).toHaveProperty('progress');
  expect(answers.of(text)).toHaveProperty('assessment');
});

test('a file that cannot be read is told at once', () => {
  expect(new Answers().within('{', 0)).toHaveProperty('problems');
});

test('a browser is told how far it is and looks again by itself; a script and a file wait', async () => {
  const shop = testShop();
  const page = await shop.get('/roofs/twenty-drains', { Accept: 'text/html' });
  const html = await page.text();
  // On a machine that is quick enough the answer itself comes.
  if (page.headers.get('Refresh') !== null) {
    expect(page.status).toBe(200);
    expect(html).toContain('Working it out');
    expect(html).toContain('role="status"');
    expect(html).toContain('href="/roofs/twenty-drains"');
  } else expect(html).toContain('What decides this');
  const json = await shop.get('/roofs/twenty-drains/result.json', { Accept: 'application/json' });
  expect(json.headers.get('Refresh')).toBeNull();
  expect(json.status).toBe(200);
});
