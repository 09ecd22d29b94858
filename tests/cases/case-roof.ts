import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/core/assess.ts';
import { rainFor } from '../../src/core/outlets/rain.ts';
import { existingReport } from '../../src/core/report/existing.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import type { Roof } from '../../src/core/roof.ts';
import { type RuleSet, ruleSetFor } from '../../src/core/rule-set.ts';
import { type Site, siteOf } from '../../src/core/site/site.ts';
import { parseRoofText } from '../../src/input/parse-roof.ts';

export interface CaseRoof {
  roof: Roof;
  ruleSet: RuleSet;
  site: Site;
  answer: Assessment;
  /** Seconds that the whole answer took. */
  seconds: number;
}

export function rulesOf(roof: Roof): RuleSet {
  const { building, plumbing, local } = roof.ruleSet;
  const found = ruleSetFor(building, plumbing, local);
  if (!found.ok) throw new Error(found.problems.map(({ message }) => message).join('\n'));
  return found.ruleSet;
}

export const caseText = (id: string): string =>
  readFileSync(new URL(`../fixtures/cases/${id}.roof.json`, import.meta.url), 'utf8');

/** A roof file of the case collection, or a text made from one, with its whole answer. */
export function caseRoof(id: string, text: string = caseText(id)): CaseRoof {
  const parsed = parseRoofText(text);
  if (!parsed.ok) throw new Error(parsed.problems.map(({ path, message }) => `${path}: ${message}`).join('\n'));
  const { roof } = parsed;
  const ruleSet = rulesOf(roof);
  const start = performance.now();
  const answer = assess(roof, ruleSet);
  return { roof, ruleSet, site: siteOf(roof), answer, seconds: (performance.now() - start) / 1000 };
}

/** The judged old surface behind an answer. */
export const existingOf = ({ site, ruleSet, roof }: CaseRoof) =>
  existingReport(site, ruleSet, rainFor(roof.place, ruleSet));

/** F = figure from the account, C = computed, P = common practice, M = from memory: as the collection marks them. */
type Basis = 'F' | 'C' | 'P' | 'M';

export interface CaseRow {
  key: string;
  got: () => number | boolean | null | undefined;
  value?: number | boolean;
  tol?: number;
  min?: number;
  max?: number;
  basis: Basis;
  /** A value that the tool does not give: it stays in the list with the reason, and must really differ. */
  doesNotReproduce?: string;
}

function meets({ value, tol, min, max }: CaseRow, got: number | boolean | null | undefined): boolean {
  if (typeof got === 'number' && min !== undefined && max !== undefined) return got >= min - 1e-9 && got <= max + 1e-9;
  if (typeof got === 'number' && typeof value === 'number') return Math.abs(got - value) <= (tol ?? 0) + 1e-9;
  return got === value;
}

/** One test for each check value of a case. */
export function caseRows(title: string, rows: readonly CaseRow[]): void {
  describe(title, () => {
    it.each(rows.map((row) => [row.key, row] as const))('%s', (_, row) => {
      const got = row.got();
      const wanted = row.value ?? `${row.min} to ${row.max}`;
      expect(meets(row, got), `got ${got}, wanted ${wanted} +/- ${row.tol ?? 0} (${row.basis})`).toBe(
        row.doesNotReproduce === undefined,
      );
    });
  });
}

/** Ids of everything that somebody must act on. */
export const findingIds = ({ answer }: CaseRoof): string[] => answer.findings.map(({ id }) => id);

/** The sentence of a finding; an error where it is not said. */
export function said({ answer }: CaseRoof, id: string): string {
  const found = answer.findings.find((finding) => finding.id === id);
  if (found === undefined) throw new Error(`${id} is not said; said: ${answer.findings.map((f) => f.id).join(', ')}`);
  return found.message;
}

/** Everything that the answer tells a person, in one text. */
export const everythingSaid = ({ answer }: CaseRoof): string =>
  [
    answer.headline,
    answer.existing.why,
    answer.existing.decidedBy ?? '',
    answer.whyNotTheSame,
    ...answer.findings.map(({ message }) => message),
    ...answer.layouts.map(({ title, why }) => `${title}. ${why}`),
  ].join('\n');
