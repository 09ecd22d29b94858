import { expect, test } from 'vitest';
import { todaySentence } from '../../src/core/report/page-layouts.ts';
import { ownerPage } from '../../src/core/report/page-owner.ts';
import { assessed, gutterRoof, roofOf } from './takeoff-roofs.ts';

const answerOf = (existing: object, more: Record<string, unknown> = {}) =>
  assessed(roofOf(gutterRoof(24, 18, { existing, ...more })));

test('a surface that nobody measured has no slope and no level place to tell of', () => {
  const answer = answerOf({ readOn: 'covering', buildUpIn: 1.5 });
  expect(answer.existing).toMatchObject({ leastFaceSlopeInPerFt: null, undrainedAreaSqFt: 0, flats: [] });
  expect(answer.findings.map(({ id }) => id)).not.toContain('undrained-flat');
  expect(todaySentence(answer.existing)).toContain('was not measured');
  const page = ownerPage(answer);
  expect(page.today.statements[0].text).toMatch(/cannot say yet/);
  expect(JSON.stringify(page.numbers)).not.toMatch(/432|level/);
  expect(page.numbers).toHaveLength(3);
  expect(page.numbers.find(({ id }) => id === 'slope')?.today.text).toMatch(/^not measured; .* is asked for$/);
  // Measured and level it is told.
  expect(answerOf({ surface: 'level', readOn: 'covering', buildUpIn: 1.5 }).existing.undrainedAreaSqFt).toBeGreaterThan(
    400,
  );
});

test('the small-ceiling exception meets nothing before it is granted, and never where the plan of the house denies it', () => {
  const small = (planFt: readonly [number, number] | null) =>
    answerOf(
      { surface: 'level', readOn: 'deck' },
      {
        place: { city: 'Chicago', state: 'IL', climateZone: '5A' },
        ruleSet: { building: 'irc-2021' },
        building: { heightFt: 10, below: 'living-exposed-deck', ...(planFt === null ? {} : { planFt }) },
        insulation: { baseIn: 3 },
      },
    ).energyRules!;
  const of = (planFt: readonly [number, number] | null) => small(planFt).rows.find(({ id }) => id === 'small-ceiling')!;
  // 432 sq ft of 3,000 are a seventh, of 1,200 more than a third: 20 % is the most.
  expect(of([60, 50]).result).toBe('not-known');
  expect(of([60, 50]).settledBy).toContain('building office');
  expect(of(null).result).toBe('not-known');
  expect(of([40, 30]).result).toBe('not-applicable');
  expect(small([60, 50]).answer).not.toMatch(/is met/);
});
