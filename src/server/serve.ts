import { join } from 'node:path';
import { serve } from '@hono/node-server';
import { openStore } from '../store/store.ts';
import { createApp } from './app.tsx';

const USUAL_PORT = 4870;
const TRIES = 20;

/** A port that cannot be had: what was asked for, and what to write instead. */
export class PortProblem extends Error {}

/**
 * The port that a setting names; null where it names none.
 * @throws PortProblem when the text is no port
 */
export function portOf(text: string | undefined, setting: string): number | null {
  if (text === undefined || text === '') return null;
  const port = Number(text);
  if (Number.isInteger(port) && port >= 0 && port <= 65_535) return port;
  throw new PortProblem(`${setting}: "${text}" is no port. Write instead: a whole number from 0 to 65535.`);
}

const isTaken = (error: unknown): boolean => (error as NodeJS.ErrnoException).code === 'EADDRINUSE';

function listen(fetch: ReturnType<typeof createApp>['fetch'], port: number, hostname: string): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = serve({ fetch, port, hostname }, ({ port: taken }) => resolve(taken));
    server.once('error', reject);
  });
}

/** The port asked for, or the first free one from the usual port on. */
async function listenSomewhere(fetch: ReturnType<typeof createApp>['fetch'], asked: number | null, host: string) {
  if (asked !== null) {
    return listen(fetch, asked, host).catch((error: unknown) => {
      if (!isTaken(error)) throw error;
      throw new PortProblem(`port: ${asked} is taken. Write instead: another one, or none for the next that is free.`);
    });
  }
  for (let port = USUAL_PORT; ; port++) {
    try {
      return await listen(fetch, port, host);
    } catch (error) {
      if (!isTaken(error) || port >= USUAL_PORT + TRIES) throw error;
    }
  }
}

/**
 * Serves the saved roofs: `RAINPATH_DATA` names the folder (./data where it is not set), `HOST` the address to listen
 * on (this machine alone where it is not set).
 * @param port null takes a free one
 * @returns the address to open
 * @throws PortProblem when the port is taken; the system's error when the database cannot be opened
 */
export async function serveRoofs(port: number | null): Promise<string> {
  const store = openStore({ file: join(process.env.RAINPATH_DATA ?? 'data', 'roofs.sqlite') });
  const host = process.env.HOST ?? '127.0.0.1';
  const taken = await listenSomewhere(createApp({ store }).fetch, port, host);
  return `http://${host === '127.0.0.1' ? 'localhost' : host}:${taken}/`;
}
