import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { run } from '../../../src/cli/commands.ts';
import { WIDTH } from '../../../src/cli/lines.ts';

const folder = mkdtempSync(join(tmpdir(), 'rainpath-cli-'));
afterAll(() => rmSync(folder, { recursive: true }));

const demo = 'src/demo/back-section.roof.json';

async function ran(...args: string[]) {
  const said = { out: '', err: '' };
  const code = await run(args, { out: (text) => (said.out += text), err: (text) => (said.err += text) });
  return { code, ...said };
}

test('assess: the answer as text within the width of a terminal, every part there', async () => {
  const { code, out, err } = await ran('assess', demo);
  expect([code, err]).toEqual([0, '']);
  const lines = out.split('\n');
  expect(lines.filter((line) => line.length > WIDTH)).toEqual([]);
  expect(lines[0]).toContain('(an invented roof)');
  const heads = lines.filter((line) => /^[A-Z][A-Z ,]+$/.test(line));
  expect(heads).toEqual([
    'THE ROOF TODAY',
    'WHAT TO DO WITH THE OLD ROOF',
    'WHAT WAS FOUND',
    'HEIGHT THAT IS THERE',
    'LAYOUTS',
    'WAYS OUT FOR THE WATER',
    'COVERING',
    'A HOT DAY ON THIS ROOF',
    'DAMP INSIDE THE ROOF',
    'MATERIALS',
    'DAYS OF WORK',
    'FINDINGS',
    'CAUTIONS',
    'ASSUMED, BECAUSE IT WAS NOT GIVEN',
  ]);
  expect(out).toContain('Verdict: ponds.');
  expect(out).not.toMatch(/undefined|NaN|null|\.\.\s/);
});

test('assess --json: one object, the same every time', async () => {
  const first = await ran('assess', demo, '--json');
  const second = await ran('assess', demo, '--json');
  expect(first.code).toBe(0);
  expect(JSON.parse(first.out)).toMatchObject({ resultVersion: 1, section: { areaSqFt: 720 } });
  expect(second.out).toBe(first.out);
});

test('rules: every held code as text within the width of a terminal, or as one JSON object', async () => {
  const { code, out, err } = await ran('rules', demo);
  expect([code, err]).toEqual([0, '']);
  expect(out.split('\n').filter((line) => line.length > WIDTH)).toEqual([]);
  expect(out.split('\n').filter((line) => /^[A-Z][A-Z ,:]+$/.test(line))).toEqual([
    'BUILDING CODES: SLOPE',
    'BUILDING CODES: OVERFLOW',
    'PLUMBING CODES',
  ]);
  expect(out).not.toMatch(/undefined|NaN|null/);
  const json = JSON.parse((await ran('rules', demo, '--json')).out);
  expect(json.buildings.find(({ own }: { own: boolean }) => own)).toMatchObject({ id: 'irc-2021', verdict: 'ponds' });
});

test('papers: a page for each reader that stands alone, and the result', async () => {
  const to = join(folder, 'papers');
  const { code, out } = await ran('papers', demo, '--out', to);
  expect(code).toBe(0);
  const paths = out.trim().split('\n');
  expect(paths.map((path) => path.slice(to.length + 1))).toEqual([
    'answer.html',
    'estimate.html',
    'crew-sheet.html',
    'owner.html',
    'kitchen-table.html',
    'supplier-request.html',
    'rules.html',
    'survey-sheet.html',
    'result.json',
  ]);
  for (const path of paths.slice(0, -1)) {
    const html = readFileSync(path, 'utf8');
    expect(html).toMatch(/^<!DOCTYPE html><html lang="en">/);
    expect(html).not.toMatch(/<script|href="\/|src="/);
  }
  expect(existsSync(join(to, 'result.json'))).toBe(true);
});

test('survey: every mark with a blank to write in, within the width of a terminal', async () => {
  const { code, out, err } = await ran('survey', demo);
  expect([code, err]).toEqual([0, '']);
  const lines = out.split('\n');
  expect(lines.filter((line) => line.length > WIDTH)).toEqual([]);
  const said = Number(/^(\d+) marks to read/m.exec(out)?.[1]);
  expect(said).toBeGreaterThan(30);
  const numbers = lines.flatMap((line) => /^ +(\d+) {2}________ {2}\S/.exec(line)?.[1] ?? []);
  expect(numbers).toEqual(Array.from({ length: said }, (_, i) => String(i + 1)));
  expect(out).toMatch(/H1 {2}________ {2}top of the curb “skylight”/);
});

test('schema: a JSON Schema object', async () => {
  const { code, out } = await ran('schema');
  expect(code).toBe(0);
  expect(JSON.parse(out)).toMatchObject({ type: 'object', additionalProperties: false });
});

test('bad input: exit 2, one line per problem, path first', async () => {
  const { code, out, err } = await ran('assess', 'tests/fixtures/roofs/bad-many-things.roof.json');
  expect([code, out]).toEqual([2, '']);
  const lines = err.trimEnd().split('\n');
  expect(lines.length).toBeGreaterThan(5);
  for (const line of lines) expect(line).toMatch(/^(file|[a-zA-Z]+(\[\d+\])*(\.[a-zA-Z0-9]+(\[\d+\])*)*): \S/);
});

test.each([
  [['assess', 'no-such.roof.json'], 'file: no-such.roof.json is not there'],
  [['assess'], 'command: assess needs a roof file'],
  [['assess', demo, demo], 'command: assess takes one roof file, not 2'],
  [['papers', demo], '--out: missing'],
  [['serve', '--port', 'high'], '--port: "high" is no port'],
  [['asess', demo], 'command: "asess" is none'],
  [['assess', demo, '--jsn'], `command: Unknown option '--jsn'`],
])('%j is answered with exit 2 and what to write instead', async (args, says) => {
  const { code, err } = await ran(...args);
  expect(code).toBe(2);
  expect(err).toContain(says);
  expect(err).toContain('Write instead:');
});

test('a file of more than 10 MB is not read', async () => {
  const path = join(folder, 'huge.roof.json');
  writeFileSync(path, ' '.repeat(10_000_001));
  const { code, err } = await ran('assess', path);
  expect([code, err]).toEqual([2, `file: ${path} has 11 MB. Write instead: one section, at most 10 MB.\n`]);
});

test('an unknown rule set is bad input, with the ones there are', async () => {
  const path = join(folder, 'rules.roof.json');
  writeFileSync(path, readFileSync(demo, 'utf8').replace('irc-2021', 'irc-1999'));
  const { code, err } = await ran('assess', path);
  expect(code).toBe(2);
  expect(err).toMatch(/^ruleSet\.building: "irc-1999" names no rule set: write one of .*irc-2021/);
});
