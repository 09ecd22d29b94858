import type { Context } from 'hono';
import type { SavedRoof, Store } from '../store/store.ts';
import type { Answers } from './answers.ts';

/** What every route needs. */
export interface Shop {
  store: Store;
  answers: Answers;
}

/** Thrown where an address names nothing; shown as the plain page of a missing thing. */
export class NotThere extends Error {}

/** The roof that the address names. */
export function roofOf({ store }: Shop, c: Context): SavedRoof {
  const roof = store.get(c.req.param('id') ?? '');
  if (roof === null) throw new NotThere('No roof is saved under this address.');
  return roof;
}

/** What a form sent, files left out; line breaks as they are typed, not as they travel. */
export async function postedBy(c: Context): Promise<Record<string, string>> {
  const body = await c.req.parseBody();
  return Object.fromEntries(
    Object.entries(body).flatMap(([name, value]) =>
      typeof value === 'string' ? [[name, value.replaceAll('\r\n', '\n')]] : [],
    ),
  );
}
