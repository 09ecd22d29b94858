import type { Hono } from 'hono';
import { resultJson } from '../../export/result-json.ts';
import { roofOf, type Shop } from '../context.ts';
import { answerOf } from './answer-of.ts';

const JSON_TYPE = 'application/json; charset=utf-8';

/** The roof file as it was typed, and the answer as JSON. */
export function fileRoutes(app: Hono, shop: Shop): void {
  app.get('/roofs/:id/roof.json', (c) => {
    const { id, text } = roofOf(shop, c);
    return c.body(text, 200, {
      'Content-Type': JSON_TYPE,
      'Content-Disposition': `attachment; filename="${id}.roof.json"`,
      'Cache-Control': 'no-store',
    });
  });

  app.get('/roofs/:id/result.json', (c) => {
    const { assessment } = answerOf(shop, roofOf(shop, c));
    return c.body(resultJson(assessment), 200, { 'Content-Type': JSON_TYPE, 'Cache-Control': 'no-store' });
  });
}
