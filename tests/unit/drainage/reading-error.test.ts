import { describe, expect, it } from 'vitest';
import { assessText } from '../../../src/cli/assess-text.ts';
import { assess } from '../../../src/core/assess.ts';
import { differenceErrorIn, runToDecideFt, slopeErrorInPerFt } from '../../../src/core/drainage/reading-error.ts';
import { whatDecides } from '../../../src/core/report/page-decides.ts';
import { ruleSetFor } from '../../../src/core/rule-set.ts';
import type { Reading } from '../../../src/core/site/readings.ts';
import { roofOf } from '../../unit/takeoff-roofs.ts';

const grid = (slopeInPerFt: number, stepFt: number, n = 3): Reading[] =>
  Array.from({ length: n * n }, (_, i): Reading => {
    const [x, y] = [(i % n) * stepFt, Math.floor(i / n) * stepFt];
    return { at: [x, y], zIn: slopeInPerFt * y };
  });

/** A gutter roof, 16 x 16 ft, read on an 8 ft grid. */
const answerOf = (slopeInPerFt: number, more: Record<string, unknown> = {}) => {
  const roof = roofOf({
    version: 1,
    invented: true,
    outline: [
      [0, 0],
      [16, 0],
      [16, 16],
      [0, 16],
    ],
    edges: [{ side: 0, kind: 'gutter', mayDrain: 'yes' }],
    existing: {
      readings: grid(slopeInPerFt, 8).map(({ at, zIn }) => [...at, zIn]),
      sense: 'height',
      errorIn: 0.125,
      readOn: 'deck',
      ...more,
    },
    slopeRule: { strict: true },
  });
  const found = ruleSetFor(null, null, roof.ruleSet.local);
  if (!found.ok) throw new Error('no rule set');
  return assess(roof, found.ruleSet);
};

describe('error of readings', () => {
  it('two heights, each to 1/16 in: their difference to 0.088 in (root of the sum of squares)', () => {
    expect(differenceErrorIn(1 / 16)).toBeCloseTo(0.0884, 4);
  });

  it('a plane square to an 8 ft grid has the error of two readings 8 ft apart', () => {
    expect(slopeErrorInPerFt(grid(0.19, 8), [2, 2], 0.125)).toBeCloseTo((0.125 * Math.SQRT2) / 8, 9);
  });

  it('half the grid, twice the error; twice the tool, twice the error', () => {
    const whole = slopeErrorInPerFt(grid(0.19, 8), [2, 2], 0.125)!;
    expect(slopeErrorInPerFt(grid(0.19, 4), [1, 1], 0.125)).toBeCloseTo(2 * whole, 9);
    expect(slopeErrorInPerFt(grid(0.19, 8), [2, 2], 0.25)).toBeCloseTo(2 * whole, 9);
  });

  it('spans no triangle: no error is said', () => {
    expect(slopeErrorInPerFt(grid(0.19, 8).slice(0, 3), [0, 0], 0.125)).toBeNull();
  });

  it('the run that decides a gap gives just that error', () => {
    expect(differenceErrorIn(0.125) / runToDecideFt(0.125, 0.01)).toBeCloseTo(0.01, 12);
  });
});

describe('verdict within the error', () => {
  it('0.24 ± 0.02 against 1/4 in/ft: undecided, and the reading that decides it', () => {
    const { existing } = answerOf(0.24);
    expect(existing.verdict).toBe('undecided');
    expect(existing.why).toContain('0.24 ± 0.02 in/ft');
    expect(existing.decidedBy).toMatch(/at least 18 ft apart/);
  });

  it('well above it meets, well below it does not, whatever the error', () => {
    expect(answerOf(0.3).existing.verdict).toBe('meets-minimum');
    expect(answerOf(0.3).existing.why).toContain('0.30 ± 0.02 in/ft');
    expect(answerOf(0.19, { seenDryAfter48h: true }).existing.verdict).toBe('drains-below-minimum');
  });

  it('the slope is printed with its error wherever it is printed, and what lies inside it is only noted', () => {
    const doubtful = answerOf(0.24);
    const found = doubtful.findings.find(({ id }) => id === 'slope-below-minimum');
    expect(found).toMatchObject({ level: 'note', value: '0.24 ± 0.02 in/ft' });
    expect(found?.message).toContain('inside the error of the readings');
    expect(assessText(doubtful)).toContain('Least slope: planes 0.24 ± 0.02 in/ft');
    expect(whatDecides(doubtful).facts.join(' ')).toContain('falls 0.24 ± 0.02 in/ft');
    const plain = answerOf(0.19).findings.find(({ id }) => id === 'slope-below-minimum');
    expect(plain).toMatchObject({ level: 'fix', value: '0.19 ± 0.02 in/ft' });
    expect(plain?.message).not.toContain('inside the error');
  });

  it('exactly at the limit no reading of the tool decides', () => {
    expect(answerOf(0.25).existing.decidedBy).toContain('No reading of this tool decides it');
  });

  it('a pond as deep as the limit, within the error of its depth, is undecided', () => {
    const dish = (depthIn: number): Record<string, unknown> => ({
      readings: grid(0.3, 8).map(({ at: [x, y], zIn }) => [x, y, x === 8 && y === 8 ? -depthIn : zIn]),
    });
    expect(answerOf(0.3, dish(0.3)).existing).toMatchObject({ verdict: 'undecided' });
    expect(answerOf(0.3, dish(0.3)).existing.why).toContain('0.30 ± 0.18 in');
    expect(answerOf(0.3, dish(0.6)).existing.verdict).toBe('ponds');
  });
});
