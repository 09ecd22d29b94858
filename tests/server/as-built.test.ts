import { expect, test } from 'vitest';
import { assessReady, readRoofText } from '../../src/answer.ts';
import { demoText } from '../../src/store/demo-roofs.ts';
import { boxValue, testShop } from './shop.ts';

function chosenLayout() {
  const ready = readRoofText(demoText('back-section'));
  if (!ready.ok) throw new Error('the demo roof cannot be read');
  const { layouts, chosenLayout } = assessReady(ready);
  return layouts.find(({ id }) => id === chosenLayout)!;
}

const { checkPoints } = chosenLayout();
const design = Object.fromEntries(checkPoints.map(({ id, heightIn }) => [`height-${id}`, String(heightIn)]));
const path = '/roofs/back-section/as-built';

test('heights as designed drain; the form comes back with them, also on a later visit', async () => {
  const shop = testShop();
  const response = await shop.post(path, design);
  const html = await response.text();
  expect(response.status).toBe(200);
  expect(html).toContain('As laid it drains');
  const [first] = checkPoints;
  expect(boxValue(html, `height-${first.id}`)).toBe(String(first.heightIn));
  expect(await (await shop.get('/roofs/back-section/crew')).text()).toContain('As laid it drains');
});

test('a point laid 3 in low ponds: stop, with the board to lift', async () => {
  const shop = testShop();
  const inside = checkPoints.find(({ at: [x, y] }) => x > 5 && x < 25 && y > 5 && y < 20)!;
  const low = String(inside.heightIn - 3);
  const html = await (await shop.post(path, { ...design, [`height-${inside.id}`]: low })).text();
  expect(html).toContain('As laid, water would stand');
  expect(html).toContain(`Point ${inside.id}`);
  expect(html).toContain('3″ low');
});

test('a bare fraction is inches, as the page says', async () => {
  const shop = testShop();
  const response = await shop.post(path, { ...design, [`height-${checkPoints[0].id}`]: '1/8' });
  expect(response.status).toBe(200);
});

test('a height that cannot be read: 422, nothing lost, nothing judged', async () => {
  const shop = testShop();
  const response = await shop.post(path, { ...design, 'height-2': 'two-ish' });
  const html = await response.text();
  expect(response.status).toBe(422);
  expect(boxValue(html, 'height-2')).toBe('two-ish');
  expect(html).toContain('id="height-2-problem"');
  // The summary names the point and leads to its box.
  const summary = /<section class="problem-summary" role="alert".*?<\/section>/s.exec(html)?.[0];
  expect(summary).toContain('One thing has to be put right');
  expect(summary).toContain('<a href="#height-2">Point 2</a>');
  expect(html).not.toContain('As laid it drains');
  expect(shop.store.readingsOf('back-section', chosenLayout().id)?.typed['height-2']).toBe('two-ish');
});
