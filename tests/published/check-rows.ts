import { describe, expect, it } from 'vitest';
import { type Cited, sources } from '../../reference/sources.ts';

/** One value outside the project that a function of the project is held against. */
export interface CheckRow extends Cited {
  id: string;
  /** What is computed, in words. */
  of: string;
  call: () => number | string | boolean | null;
  expected: number | string | boolean | null;
  /** Absolute; 0 for an exact hit. Half of the last printed digit unless the row says why. */
  tol: number;
  /** A published value that we do not meet: it stays in the list with the reason. */
  doesNotReproduce?: string;
}

const agrees = ({ expected, tol }: CheckRow, got: number | string | boolean | null): boolean =>
  typeof expected === 'number' && typeof got === 'number'
    ? Math.abs(got - expected) <= tol + 1e-12
    : Object.is(got, expected);

/** One test for each row; a row that does not reproduce must really miss, else its reason is out of date. */
export function checkRows(title: string, rows: readonly CheckRow[]): void {
  describe(title, () => {
    it('has distinct ids, and a source and reason on each row', () => {
      expect(new Set(rows.map((row) => row.id)).size).toBe(rows.length);
      for (const row of rows) {
        expect(sources[row.source].title.length).toBeGreaterThan(5);
        expect(row.at.length).toBeGreaterThan(0);
        if (row.doesNotReproduce !== undefined) expect(row.doesNotReproduce.length).toBeGreaterThan(10);
      }
    });
    for (const row of rows) {
      const outcome = row.doesNotReproduce ? `does not reproduce: ${row.doesNotReproduce}` : `is ${row.expected}`;
      it(`${row.id}: ${row.of} ${outcome} [${sources[row.source].title}, ${row.at}; ${row.grade}]`, () => {
        const got = row.call();
        expect(agrees(row, got), `got ${got}, printed ${row.expected} +/- ${row.tol}`).toBe(!row.doesNotReproduce);
      });
    }
  });
}
