import { readFileSync, statSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { assessReady, type ReadyRoof, readRoofText } from '../answer.ts';
import { partJson, resultJson } from '../export/result-json.ts';
import { problemLine } from '../input/problems.ts';
import { roofFileJsonSchema } from '../input/schema.ts';
import { assessText } from './assess-text.ts';
import { rulesText } from './rules-text.ts';
import { surveyText } from './survey-text.ts';

/** Where the command writes; tests give their own. */
export interface Streams {
  out: (text: string) => void;
  err: (text: string) => void;
}

const ANSWERED = 0;
const BAD_INPUT = 2;
const LARGEST_BYTES = 10_000_000;

const usage = `rainpath: plans what replaces a flat roof section that ponds and leaks

  npm run -s rainpath -- assess FILE [--json]       the answer as text, or as one JSON object
  npm run -s rainpath -- survey FILE                where to measure the roof, as text to write on
  npm run -s rainpath -- rules FILE [--json]        one roof under every rule set that is held
  npm run -s rainpath -- papers FILE --out DIR      the pages of the three readers and result.json
  npm run -s rainpath -- schema                     JSON Schema of the roof file
  npm run -s rainpath -- serve [--port 4870]        the same in a browser

FILE is a roof file (*.roof.json), or - for standard input.
Exit codes: 0 answered, 2 the input has to be put right, 70 a fault of the program.
`;

/** Something in the command line or the file that the caller has to put right. */
class BadInput extends Error {}

function textOf(file: string): string {
  try {
    if (file === '-') return readFileSync(0, 'utf8');
    const { size } = statSync(file);
    if (size > LARGEST_BYTES) {
      throw new BadInput(`file: ${file} has ${Math.ceil(size / 1e6)} MB. Write instead: one section, at most 10 MB.`);
    }
    return readFileSync(file, 'utf8');
  } catch (error) {
    if (error instanceof BadInput) throw error;
    const reason = (error as NodeJS.ErrnoException).code === 'ENOENT' ? 'is not there' : 'cannot be read';
    throw new BadInput(`file: ${file} ${reason}. Write instead: the path of a roof file.`);
  }
}

function roofOf(file: string): ReadyRoof {
  const reading = readRoofText(textOf(file));
  if (!reading.ok) throw new BadInput(reading.problems.map(problemLine).join('\n'));
  return reading;
}

function oneFile(command: string, rest: readonly string[]): string {
  if (rest.length === 1) return rest[0];
  throw new BadInput(
    rest.length === 0
      ? `command: ${command} needs a roof file. Write instead: ${command} back-section.roof.json.`
      : `command: ${command} takes one roof file, not ${rest.length}. Write instead: one at a time.`,
  );
}

async function serveOn(portText: string | undefined, out: Streams['out']): Promise<number> {
  const { PortProblem, portOf, serveRoofs } = await import('../server/serve.ts');
  try {
    out(`Rainpath listens on ${await serveRoofs(portOf(portText, '--port'))} (stop with Ctrl-C)\n`);
    return ANSWERED;
  } catch (error) {
    throw error instanceof PortProblem ? new BadInput(error.message) : error;
  }
}

function optionsOf(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        json: { type: 'boolean' },
        out: { type: 'string' },
        port: { type: 'string' },
        help: { type: 'boolean' },
      },
    });
  } catch (error) {
    throw new BadInput(
      `command: ${(error as Error).message.split(/\. |\n/)[0]}. Write instead: one of --json, --out, --port.`,
    );
  }
}

async function answer(args: readonly string[], { out }: Streams): Promise<number> {
  const { values, positionals } = optionsOf(args);
  const [command, ...rest] = positionals;
  if (values.help || command === 'help') {
    out(usage);
    return ANSWERED;
  }
  switch (command) {
    case 'assess': {
      const assessment = assessReady(roofOf(oneFile(command, rest)));
      out(values.json ? resultJson(assessment) : assessText(assessment));
      return ANSWERED;
    }
    case 'survey':
      out(surveyText(roofOf(oneFile(command, rest)).roof));
      return ANSWERED;
    case 'rules': {
      const assessment = assessReady(roofOf(oneFile(command, rest)));
      out(values.json ? partJson(assessment.ruleComparison) : rulesText(assessment));
      return ANSWERED;
    }
    case 'papers': {
      const file = oneFile(command, rest);
      if (values.out === undefined) throw new BadInput('--out: missing. Write instead: papers FILE --out DIR.');
      const { writePapers } = await import('./papers.tsx');
      const ready = roofOf(file);
      out(`${(await writePapers(assessReady(ready), ready.roof, values.out)).join('\n')}\n`);
      return ANSWERED;
    }
    case 'schema':
      out(`${JSON.stringify(roofFileJsonSchema(), null, 2)}\n`);
      return ANSWERED;
    case 'serve':
      return serveOn(values.port, out);
    default:
      throw new BadInput(
        command === undefined
          ? `command: missing. Write instead: assess, survey, rules, papers, schema or serve.\n\n${usage}`
          : `command: "${command}" is none. Write instead: assess, survey, rules, papers, schema or serve.`,
      );
  }
}

/**
 * Runs one command. Bad input is written to `err`, one line per problem with its path first.
 * @returns the exit code: 0 answered, 2 bad input
 * @throws any other error: a defect
 */
export async function run(args: readonly string[], streams: Streams): Promise<number> {
  try {
    return await answer(args, streams);
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    streams.err(`${error.message.trimEnd()}\n`);
    return BAD_INPUT;
  }
}
