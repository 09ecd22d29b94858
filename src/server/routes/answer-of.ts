import type { Context } from 'hono';
import type { SavedRoof } from '../../store/store.ts';
import type { Answer } from '../answers.ts';
import { NotThere, type Shop, StillWorking } from '../context.ts';

/** Who waits longer than this is told how far the work is. */
const PATIENCE_MS = 1000;

/** The file that was kept can no longer be read. */
export const unreadable = () =>
  new NotThere('The roof file that was kept here can no longer be read. Edit it as text.');

/** The answer for a saved roof's last readable file, however long it takes. */
export function answerOf({ answers }: Shop, { text }: SavedRoof): Answer {
  const answer = answers.of(text);
  if ('ok' in answer) throw unreadable();
  return answer;
}

/** A browser that loads a whole page; a script's request, a file and a drawing wait for their answer. */
const loadsPage = (c: Context): boolean =>
  c.req.header('HX-Request') !== 'true' && (c.req.header('Accept') ?? '').includes('text/html');

/**
 * The answer for a page of a saved roof.
 * @throws StillWorking where a person would wait long; that is shown as a page which looks again by itself
 */
export function answerForPage(shop: Shop, c: Context, roof: SavedRoof): Answer {
  if (!loadsPage(c)) return answerOf(shop, roof);
  const answer = shop.answers.within(roof.text, PATIENCE_MS);
  if ('ok' in answer) throw unreadable();
  if ('progress' in answer) throw new StillWorking(answer.progress);
  return answer;
}
