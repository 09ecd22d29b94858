import { accessSync, constants } from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, join } from 'node:path';
import { serve } from '@hono/node-server';
import { type Browser, chromium, type Page } from 'playwright-core';
import { createApp } from '../../src/server/app.tsx';
import { openStore, type Store } from '../../src/store/store.ts';

/** Path of a Chromium that is installed; null where there is none. */
export function chromiumPath(): string | null {
  const named = process.env.CHROMIUM === undefined ? [] : [process.env.CHROMIUM];
  const folders = (process.env.PATH ?? '').split(delimiter);
  const inPath = folders.flatMap((folder) => ['chromium', 'chromium-browser'].map((name) => join(folder, name)));
  for (const path of [...named, '/usr/bin/chromium', ...inPath]) {
    try {
      accessSync(path, constants.X_OK);
      return path;
    } catch {
      // Not this one.
    }
  }
  return null;
}

export interface Walkers {
  base: string;
  store: Store;
  open: (path: string, options?: { scripts?: boolean; width?: number }) => Promise<Page>;
  close: () => Promise<void>;
}

/** The pages on a free port, and a browser to walk them with. */
export async function walkers(executablePath: string): Promise<Walkers> {
  const store = openStore({ file: ':memory:' });
  const server = await new Promise<ReturnType<typeof serve>>((resolve) => {
    const made = serve({ fetch: createApp({ store }).fetch, port: 0, hostname: '127.0.0.1' }, () => resolve(made));
  });
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  const base = `http://127.0.0.1:${port}`;
  const browser: Browser = await chromium.launch({
    executablePath,
    args: ['--headless=new', '--no-sandbox', '--disable-gpu', '--disable-background-networking', '--disable-sync'],
  });
  return {
    base,
    store,
    open: async (path, { scripts = true, width = 1280 } = {}) => {
      const context = await browser.newContext({
        javaScriptEnabled: scripts,
        viewport: { width, height: 900 },
      });
      context.setDefaultTimeout(20_000);
      const page = await context.newPage();
      page.on('console', (message) => {
        if (message.type() === 'error' && !/422/.test(message.text())) consoleErrors.push(message.text());
      });
      page.on('pageerror', (error) => consoleErrors.push(error.message));
      await page.goto(`${base}${path}`);
      await answered(page);
      return page;
    },
    close: async () => {
      await browser.close();
      server.close();
      store.close();
    },
  };
}

/** Waits until a page that shows how far an answer is has been replaced by the answer. */
export async function answered(page: Page): Promise<void> {
  for (let looks = 0; looks < 300; looks++) {
    // The page may be going on to the answer just now.
    const title = await page.title().catch(() => '');
    if (!/^(Working it out|Loading |$)/.test(title)) return page.waitForLoadState();
    await page.waitForTimeout(200);
  }
  throw new Error('the answer did not come within a minute');
}

/** What any page complained about, a breach of the content policy among it. */
export const consoleErrors: string[] = [];

/** How far the page itself scrolls sideways. */
export const sidewaysPx = (page: Page): Promise<number> =>
  page.evaluate<number>('document.documentElement.scrollWidth - innerWidth');

const axePath = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

interface AxeViolation {
  id: string;
  help: string;
  nodes: { html: string; failureSummary?: string }[];
}

/** Breaches of WCAG 2.0 to 2.2, levels A and AA, that a machine can find on a page. */
export async function violationsOn(page: Page): Promise<string[]> {
  const { readFileSync } = await import('node:fs');
  await page.evaluate(readFileSync(axePath, 'utf8'));
  const violations = await page.evaluate(async () => {
    const axe = (
      globalThis as unknown as { axe: { run: (options: object) => Promise<{ violations: AxeViolation[] }> } }
    ).axe;
    const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
    return (await axe.run({ runOnly: { type: 'tag', values: tags } })).violations;
  });
  return violations.map(({ id, help, nodes }) => `${id}: ${help}: ${nodes[0].html.slice(0, 160)} (${nodes.length})`);
}
