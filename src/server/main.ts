import { PortProblem, portOf, serveRoofs } from './serve.ts';

try {
  console.log(`Rainpath listens on ${await serveRoofs(portOf(process.env.PORT, 'PORT'))} (stop with Ctrl-C)`);
} catch (error) {
  if (!(error instanceof PortProblem)) throw error;
  console.error(error.message);
  process.exitCode = 2;
}
