import { serveRoofs } from './serve.ts';

const { PORT } = process.env;

console.log(`Rainpath listens on ${await serveRoofs(PORT ? Number(PORT) : null)} (stop with Ctrl-C)`);
