import { createApp } from '../../src/server/app.tsx';
import { openStore, type Store } from '../../src/store/store.ts';

export interface TestShop {
  store: Store;
  /** Lines that defects left behind. */
  log: string[];
  get: (path: string, headers?: Record<string, string>) => Promise<Response>;
  /** Sends a form as a browser on the same page does. */
  post: (path: string, form: Record<string, string>, headers?: Record<string, string>) => Promise<Response>;
  send: (path: string, init: RequestInit) => Promise<Response>;
}

export const ORIGIN = 'http://localhost';

/** The pages over a new database in memory. */
export function testShop(): TestShop {
  const store = openStore({ file: ':memory:', now: () => '2026-01-02T03:04:05.000Z' });
  const log: string[] = [];
  const app = createApp({ store, log: (line) => log.push(line) });
  const send = async (path: string, init: RequestInit) => app.request(`${ORIGIN}${path}`, init);
  return {
    store,
    log,
    send,
    get: (path, headers = {}) => send(path, { headers }),
    post: (path, form, headers = {}) =>
      send(path, { method: 'POST', body: new URLSearchParams(form), headers: { Origin: ORIGIN, ...headers } }),
  };
}

/** Text of an element's value attribute or text area, as a browser would have it in the box. */
export function boxValue(html: string, id: string): string | null {
  const plain = (text: string) =>
    text
      .replaceAll('&quot;', '"')
      .replaceAll('&#39;', "'")
      .replaceAll('&lt;', '<')
      .replaceAll('&gt;', '>')
      .replaceAll('&amp;', '&');
  const quoted = id.replace(/[.[\]]/g, '\\$&');
  const input = new RegExp(`<input[^>]*id="${quoted}"[^>]*value="([^"]*)"`).exec(html)?.[1];
  const area = new RegExp(`<textarea[^>]*id="${quoted}"[^>]*>\\n?([^<]*)</textarea>`).exec(html)?.[1];
  const chosen = new RegExp(`<select[^>]*id="${quoted}"[^>]*>.*?<option value="([^"]*)" selected`).exec(html)?.[1];
  const found = input ?? area ?? chosen;
  return found === undefined ? null : plain(found);
}
