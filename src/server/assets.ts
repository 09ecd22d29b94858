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
  'style.css': { type: 'text/css; charset=utf-8', read: () => `${styleSheet()}\n${formsCss}` },
};

export function assetRoutes(app: Hono): void {
  const texts = new Map<string, string>();
  for (const [name, { type, read }] of Object.entries(assets)) {
    app.get(`/assets/${name}`, (c) => {
      const text = texts.get(name) ?? read();
      texts.set(name, text);
      return c.body(text, 200, { 'Content-Type': type, 'Cache-Control': 'max-age=300' });
    });
  }
}
