import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { answered, chromiumPath, consoleErrors, sidewaysPx, violationsOn, type Walkers, walkers } from './browser.ts';

const executable = chromiumPath();

if (executable === null) {
  test('NO CHROMIUM: the walks in a browser were not made', () => {
    console.warn(
      'NO CHROMIUM FOUND (CHROMIUM, /usr/bin/chromium, chromium in PATH): the walks in a browser were NOT made. Install it and run again.',
    );
    expect(executable).toBeNull();
  });
}

describe.runIf(executable !== null)('walks in a browser', () => {
  let shop: Walkers;
  beforeAll(async () => {
    shop = await walkers(executable!);
  });
  afterAll(async () => {
    await shop.close();
  });

  const headline = (page: Page) => page.locator('.headline').first().textContent();

  /** The estimator types what was measured from the ladder. */
  async function typeSixAnswers(page: Page, label: string): Promise<void> {
    await page.getByLabel('Name of the roof').fill(label);
    await page.getByLabel('Length along the low side').fill(`30'`);
    await page.getByLabel('Depth from the low side to the back').fill(`24'-0"`);
    await page.getByLabel('Water leaves now').selectOption({ label: 'over the low side into a gutter' });
    await page.getByLabel('High side, at the back: what is it?').selectOption({ label: 'shingled slope above' });
    for (const side of ['Left', 'Right']) {
      await page.getByLabel(`${side} side: what is it?`).selectOption({ label: 'rake, with a raised stop' });
    }
    await page.getByLabel('Water stands', { exact: true }).selectOption({ label: 'in the middle' });
    await page.getByLabel('How deep').fill('3/4"');
    await page.getByLabel('It is', { exact: true }).selectOption({ label: 'still there two days after rain' });
    await page.getByLabel('The lowest thing is').selectOption({ label: 'lowest shingles of the slope above' });
    await page.getByLabel('Its height above the roof').fill('7"');
    await page.getByLabel('On which side').selectOption({ label: 'high side, at the back' });
    await page.getByLabel('Below it is').selectOption({ label: 'living space' });
    await page.getByLabel('Is the underside of the deck the ceiling?').selectOption({ label: 'yes' });
    await page.getByLabel('Town and state').fill('Nashville, TN');
  }

  describe.each([true, false])('scripts on: %s', (scripts) => {
    test('estimator: six answers by typing, a slip put right, the answer, a detail changed', async () => {
      const page = await shop.open('/new', { scripts });
      const label = `Typed ${scripts ? 'with' : 'without'} scripts`;
      await typeSixAnswers(page, label);
      await page.getByLabel('Length along the low side').fill('30 cubits');
      await page.getByRole('button', { name: 'Get the answer' }).click();
      await page.getByRole('alert').waitFor();
      // Nothing typed is gone, and the summary leads to the box.
      expect(await page.getByLabel('Town and state').inputValue()).toBe('Nashville, TN');
      expect(await page.getByLabel('Length along the low side').inputValue()).toBe('30 cubits');
      expect(await page.getByRole('alert').getByRole('link').first().getAttribute('href')).toBe('#lengthText');
      await page.getByLabel('Length along the low side').fill(`30'`);
      await page.getByRole('button', { name: 'Show what was understood' }).click();
      await page.getByText('read as 3/4″').waitFor();
      await page.getByRole('button', { name: 'Get the answer' }).click();
      await page.waitForURL(/\/roofs\/typed-/);
      await answered(page);
      const first = await headline(page);
      expect(first).toMatch(/Water|lie level|drains/);
      expect(await page.locator('svg.drawing').count()).toBeGreaterThan(1);

      await page.getByRole('link', { name: 'Change the measurements' }).click();
      await page.getByRole('link', { name: 'Curbs and pipes' }).click();
      await page.locator('summary', { hasText: 'One more curb' }).click();
      await page.locator('[id="curbs[0].outline"]').fill('4 x 4 at 9, 13');
      await page.locator('[id="curbs[0].heightIn"]').fill('6"');
      await page.getByRole('button', { name: 'Save and show the answer' }).click();
      await page.waitForURL(/\/roofs\/typed-[a-z-]+$/);
      await answered(page);
      expect(await page.locator('main').textContent()).toContain('curb');
      const saved = JSON.parse(shop.store.get(new URL(page.url()).pathname.split('/')[2])!.text);
      expect(saved).toMatchObject({ label, curbs: [{ heightIn: '6"' }] });
      await page.context().close();
    });

    test('crew lead: heights typed at the check points, one of them low', async () => {
      const page = await shop.open('/roofs/back-section/crew', { scripts, width: 390 });
      expect(await page.locator('main').textContent()).toContain('Hold point');
      const boxes = page.locator('#as-laid input');
      expect(await boxes.count()).toBeGreaterThan(8);
      await boxes.nth(0).fill('0');
      await boxes.nth(8).fill('none of your business');
      await page.getByRole('button', { name: 'Judge the heights' }).click();
      await page.locator('[id$="-problem"]').first().waitFor();
      expect(await boxes.nth(8).inputValue()).toBe('none of your business');
      await boxes.nth(8).fill('1/4"');
      await page.getByRole('button', { name: 'Judge the heights' }).click();
      const judgement = page.getByRole('region', { name: 'Judgement of the heights as laid' });
      await judgement.waitFor();
      expect(await judgement.textContent()).toMatch(/As laid/);
      await page.context().close();
    });

    test("homeowner: the owner's page speaks plainly and shows both pictures", async () => {
      const page = await shop.open('/roofs/back-section/owner', { scripts, width: 390 });
      const words = await page.locator('main').textContent();
      expect(words).toContain('skylight');
      expect(words).not.toMatch(/envelope|kernel|eikonal|undefined|NaN/);
      expect(await page.locator('svg.drawing').count()).toBeGreaterThanOrEqual(2);
      // The page fits a phone: nothing but the drawings and wide tables scrolls sideways.
      const wide = await sidewaysPx(page);
      expect(wide).toBeLessThanOrEqual(0);
      await page.context().close();
    });
  });

  test.each([true, false])('a roof is taken off the list and put back, scripts on: %s', async (scripts) => {
    const page = await shop.open('/roofs', { scripts });
    await page.getByRole('link', { name: /^Take off Corner/ }).click();
    await page.getByRole('button', { name: 'Take it off the list' }).click();
    await page.getByRole('status').waitFor();
    expect(await page.locator('.roof-list table').textContent()).not.toContain('Corner');
    if (scripts) expect(await violationsOn(page)).toEqual([]);
    await page.getByRole('button', { name: /^Undo/ }).click();
    await page.waitForURL(/\/roofs\/corner-drain$/);
    await page.context().close();
  });

  test('a height that cannot be read: the summary leads to its box', async () => {
    const page = await shop.open('/roofs/back-section/crew', { width: 390 });
    await page.locator('#height-3').fill('a hand or two');
    await page.getByRole('button', { name: 'Judge the heights' }).click();
    const link = page.getByRole('alert').getByRole('link', { name: 'Point 3' });
    expect(await link.getAttribute('href')).toBe('#height-3');
    expect(await violationsOn(page)).toEqual([]);
    expect(await sidewaysPx(page)).toBeLessThanOrEqual(0);
    await page.context().close();
  });

  test('a script only saves loading the page: the form alone is put in place', async () => {
    const page = await shop.open('/roofs/corner-drain/edit/wishes');
    await page.evaluate(() => {
      (globalThis as unknown as { stays: boolean }).stays = true;
    });
    await page.getByLabel('Do people walk on it often?').selectOption('yes');
    await page.getByRole('button', { name: 'Save and check' }).click();
    await page.getByRole('status').waitFor();
    expect(await page.evaluate(() => (globalThis as unknown as { stays?: boolean }).stays)).toBe(true);
    expect(await page.getByLabel('Do people walk on it often?').inputValue()).toBe('yes');
    await page.context().close();
  });

  test.each([true, false])(
    'findings, scripts %s: Enter saves, what is wrong is in view, a photo is kept',
    async (scripts) => {
      const page = await shop.open('/roofs/back-section/edit/findings', { scripts, width: 390 });
      const size = page.getByLabel('Size that tells most (inches)').first();
      await size.fill('big');
      await size.press('Enter');
      const summary = page.getByRole('alert');
      await summary.waitFor();
      expect(page.url()).toMatch(/\/edit\/findings$/);
      if (scripts) expect((await summary.boundingBox())!.y).toBeLessThan(900);
      await page
        .getByRole('button', { name: /^Save, then add/ })
        .first()
        .click();
      await summary.waitFor();
      await size.fill('');
      await page
        .getByRole('button', { name: /^Save, then add/ })
        .first()
        .click();
      await page.waitForURL(/\/findings\/1\/photos$/);
      const buffer = await page.screenshot({ type: 'jpeg' });
      await page.getByLabel('One more photo').setInputFiles({ name: 'roof.jpg', mimeType: 'image/jpeg', buffer });
      await page.getByRole('button', { name: 'Keep this photo' }).click();
      await page.getByRole('status').waitFor();
      if (scripts) expect(await violationsOn(page)).toEqual([]);
      await page
        .getByRole('button', { name: /^Throw this photo away/ })
        .first()
        .click();
      await page.getByText('No photo is kept yet.').waitFor();
      await page.context().close();
    },
  );

  test.each([
    '/roofs',
    '/new',
    '/import',
    '/roofs/back-section',
    '/roofs/back-section/estimate',
    '/roofs/back-section/crew',
    '/roofs/back-section/owner',
    '/roofs/back-section/kitchen-table',
    '/roofs/back-section/supplier',
    '/roofs/back-section/rules',
    '/roofs/twenty-drains/rules',
    '/roofs/back-section/delete',
    '/roofs/corner-drain',
    '/roofs/corner-drain/edit/plan',
    '/roofs/corner-drain/edit/heights',
    '/roofs/corner-drain/edit/today',
    '/roofs/back-section/edit/findings',
    '/roofs/corner-drain/edit/text',
  ])('%s has no breach of WCAG A and AA, wide or narrow', async (path) => {
    const page = await shop.open(path);
    for (const width of [1280, 390]) {
      await page.setViewportSize({ width, height: 900 });
      expect([width, await violationsOn(page)]).toEqual([width, []]);
      const overflow = await sidewaysPx(page);
      expect([path, width, overflow <= 0]).toEqual([path, width, true]);
    }
    await page.context().close();
  });

  test('no page complained', () => {
    expect(consoleErrors).toEqual([]);
  });
});
