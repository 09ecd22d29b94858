import { expect, test } from 'vitest';
import { findingKinds } from '../../../reference/findings.ts';
import { readFindingKind } from '../../../src/input/finding-kind.ts';
import { InputLog } from '../../../src/input/problems.ts';

function read(written: string) {
  const log = new InputLog();
  const kind = readFindingKind(written, 'findings[0].kind', log);
  return { kind, instead: log.problems[0]?.instead ?? null, notes: log.notes.length };
}

test.each([
  ['rotten-eave', 'rotten-eave', 0],
  ['Rotten Eave', 'rotten-eave', 0],
  ['stained ceiling', 'leak-below', 1],
  ['satellite dish', 'bolted-through', 1],
])('%s is taken as %s', (written, kind, notes) => {
  expect(read(written)).toEqual({ kind, instead: null, notes });
});

test.each([
  ['rottn eave', 'rotten-eave'],
  ['blisters', 'blister'],
  ['alligatering', 'alligatoring'],
  ['wet insulaton', 'wet-insulation'],
])('%s is no kind: %s is offered first', (written, near) => {
  const { kind, instead } = read(written);
  expect(kind).toBeNull();
  expect(instead).toMatch(new RegExp(`^"${near}"; the kinds are ponding, `));
});

test('what is like nothing gets the list and "other"', () => {
  expect(read('martians').instead).toContain('"other" with a note');
});

test('no other word stands for two kinds', () => {
  const words = findingKinds.flatMap(({ kind, also }) => [kind.replaceAll('-', ' '), ...also]);
  expect(new Set(words).size).toBe(words.length);
});
