import type { Context } from 'hono';
import type { SearchProgress } from '../core/report/types.ts';
import type { SavedRoof, Store } from '../store/store.ts';
import type { Answers } from './answers.ts';

/** What every route needs. */
export interface Shop {
  store: Store;
  answers: Answers;
}

/** Thrown where an address names nothing; shown as the plain page of a missing thing. */
export class NotThere extends Error {}

/** Thrown where an answer takes longer than a person waits in silence; shown as how far it is. */
export class StillWorking extends Error {
  readonly progress: SearchProgress;

  constructor(progress: SearchProgress) {
    super('the answer is not finished');
    this.progress = progress;
  }
}

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
