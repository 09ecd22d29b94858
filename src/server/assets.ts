import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Hono } from 'hono';
import { formsCss } from '../../views/forms/forms-css.ts';
import { styleSheet } from '../../views/style.ts';

const require = createRequire(import.meta.url);

/** Every file that a page asks for; nothing comes from another host. */
const assets: Readonly<Record<string, { type: string; read: () => string }>> = {
  'htmx.js': {
    type: 'text/javascript; charset=utf-8',
    read: () => readFileSync(require.resolve('htmx.org/dist/htmx.min.js'), 'utf8'),
  },
  'drop.svg': {
    type: 'image/svg+xml',
    read: () =>
      '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 16 16"><path fill="#1f5f96" d="M8 1c3 4 5 6.5 5 9a5 5 0 0 1-10 0c0-2.500 2-5 5-9z"/></svg>',
  },
  'style.css': { type: 'text/css; charset=utf-8', read: () => `${styleSheet()}\n${formsCss}` },
};

export function assetRoutes(app: Hono): void {
  app.get('/favicon.ico', (c) => c.redirect('/assets/drop.svg', 301));
  const texts = new Map<string, string>();
  for (const [name, { type, read }] of Object.entries(assets)) {
    app.get(`/assets/${name}`, (c) => {
      const text = texts.get(name) ?? read();
      texts.set(name, text);
      return c.body(text, 200, { 'Content-Type': type, 'Cache-Control': 'max-age=300' });
    });
  }
}
