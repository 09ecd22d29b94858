import { run } from './commands.ts';

const DEFECT = 70;

// Whoever reads may stop reading (`| head`): that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
});

try {
  process.exitCode = await run(process.argv.slice(2), {
    out: (text) => process.stdout.write(text),
    err: (text) => process.stderr.write(text),
  });
} catch (error) {
  // A defect of the program, never of the input: one line, no trace.
  const said = error instanceof Error ? error.message : String(error);
  process.stderr.write(`rainpath: this is a fault of the program, not of your file: ${said.split('\n')[0]}\n`);
  process.exitCode = DEFECT;
}
