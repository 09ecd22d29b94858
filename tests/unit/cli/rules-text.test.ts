import { expect, test } from 'vitest';
import { buildingRules, plumbingRules } from '../../../reference/rule-sets.ts';
import { rulesText } from '../../../src/cli/rules-text.ts';
import { caseRoof } from '../../cases/case-roof.ts';

const { answer } = caseRoof('c42');

test('every code has a line in its table; those of the job carry the mark', () => {
  const text = rulesText(answer);
  for (const { title } of [...buildingRules, ...plumbingRules]) expect(text).toContain(title.split(' (')[0]);
  expect(text.match(/^ {2}\* {2}/gm)).toHaveLength(3);
  expect(text).toMatch(/^ {2}\* {2}IBC 2021 +1\/4 in\/ft/m);
});

test('the sentences give the slope, how many codes take it, and the section stands beside each', () => {
  const text = rulesText(answer);
  expect(text).toContain('Its flattest plane falls 0.2 in/ft: none of 8 would take that for a new roof.');
  expect(text).toContain('0.05 in/ft short');
  expect(text.replaceAll(/\s+/g, ' ')).toContain('International Building Code, 2021, 1507.12.1');
});

test('no line is wider than a terminal, save where a table cannot break', () => {
  const wide = rulesText(answer)
    .split('\n')
    .filter((line) => line.length > 120);
  expect(wide).toEqual([]);
});
