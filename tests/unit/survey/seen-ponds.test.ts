import { describe, expect, test } from 'vitest';
import { assess } from '../../../src/core/assess.ts';
import { ruleSetFor } from '../../../src/core/rule-set.ts';
import { surveyOf } from '../../../src/core/survey/survey.ts';
import { roofOf } from '../takeoff-roofs.ts';

type Corners = [number, number][];

const rectangle = (x: number, y: number, w: number, d: number): Corners => [
  [x, y],
  [x + w, y],
  [x + w, y + d],
  [x, y + d],
];

const roof = (existing: object, more: object = {}) =>
  roofOf({
    version: 1,
    invented: true,
    outline: rectangle(0, 0, 30, 24),
    edges: [{ side: 0, kind: 'gutter', mayDrain: 'yes' }],
    existing: { readOn: 'deck', ...existing },
    ...more,
  });

function answerOf(existing: object, more: object = {}) {
  const given = roof(existing, more);
  const found = ruleSetFor(null, null, given.ruleSet.local);
  if (!found.ok) throw new Error('no rule set');
  return assess(given, found.ruleSet);
}

/** A cubic inch of a US gallon: 231 to the gallon, by its definition. */
const gallons = (cubicFtTwelfths: number): number => (cubicFtTwelfths * 144) / 231;

describe('a pond of which only outline and depth are known', () => {
  const seen = { outline: rectangle(10, 6, 10, 6), at: [14, 9], depthIn: 0.75, hoursAfterRain: 48 };

  test('area, volume and load of a bowl: a third of area times depth, and 5.2 psf to the inch', () => {
    const { existing } = answerOf({ seenPonds: [seen] });
    expect(existing.ponds).toHaveLength(1);
    const [pond] = existing.ponds;
    expect(pond.areaSqFt).toBeCloseTo(60, 6);
    expect(pond.volumeGal).toBeCloseTo(gallons((60 * 0.75) / 3), 6);
    expect(pond.weightLb).toBeCloseTo(((60 * 0.75) / 3) * 5.2, 6);
    expect(pond.greatestLoadPsf).toBeCloseTo(0.75 * 5.2, 6);
    expect(pond.deepestAt).toEqual([14, 9]);
    expect(existing.verdict).toBe('ponds');
  });

  test('what was taken is listed with the mark of the survey that would settle it', () => {
    const { assumed } = answerOf({ seenPonds: [seen] });
    const row = assumed.find(({ path }) => path === 'existing.seenPonds[0]');
    const mark = surveyOf(roof({ seenPonds: [seen] })).marks.find(({ kind }) => kind === 'pond')!;
    expect(row?.findOut).toContain(`mark ${mark.id} of the survey sheet`);
    expect(row?.because).toContain('not decided');
  });

  test('seen too soon after rain the roof stays undecided, and says why; the pond is reported all the same', () => {
    const { existing } = answerOf({ seenPonds: [{ ...seen, hoursAfterRain: 10 }] });
    expect(existing.verdict).toBe('undecided');
    expect(existing.why).toContain('10 h after rain');
    expect(existing.ponds[0].areaSqFt).toBeCloseTo(60, 6);
  });

  test('deepest at a wall: the spot lies on the shore and counts', () => {
    const { existing } = answerOf({ seenPonds: [{ ...seen, outline: rectangle(10, 18, 8, 6), at: [14, 24] }] });
    expect(existing.ponds[0].deepestAt).toEqual([14, 24]);
    expect(existing.ponds[0].volumeGal).toBeCloseTo(gallons((48 * 0.75) / 3), 6);
  });

  test('what reaches past the edge or over a curb is no roof and holds no water', () => {
    const beyond = answerOf({ seenPonds: [{ outline: rectangle(26, 4, 8, 5), depthIn: 1 }] }).existing.ponds[0];
    expect(beyond.areaSqFt).toBeCloseTo(20, 6);
    const curb = { id: 'hatch', outline: rectangle(14, 8, 3, 3), heightIn: 8 };
    const round = answerOf({ seenPonds: [{ outline: rectangle(10, 6, 10, 6), depthIn: 1 }] }, { curbs: [curb] });
    expect(round.existing.ponds[0].areaSqFt).toBeCloseTo(51, 6);
    expect(round.existing.ponds[0].holes).toHaveLength(1);
  });

  test('an L-shaped outline has its deepest spot inside, wherever its middle lies', () => {
    const L: Corners = [
      [4, 4],
      [24, 4],
      [24, 6],
      [6, 6],
      [6, 20],
      [4, 20],
    ];
    const [pond] = answerOf({ seenPonds: [{ outline: L, depthIn: 0.5 }] }).existing.ponds;
    const [x, y] = pond.deepestAt;
    expect((y > 4 && y < 6 && x > 4 && x < 24) || (x > 4 && x < 6 && y > 4 && y < 20)).toBe(true);
    expect(pond.areaSqFt).toBeCloseTo(68, 6);
    expect(pond.volumeGal).toBeLessThanOrEqual(gallons((68 * 0.5) / 3) + 1e-9);
    expect(pond.volumeGal).toBeGreaterThan(0);
  });

  test('once the surface is read the readings answer, and an outline without a depth makes no pond', () => {
    const readings = rectangle(0, 0, 30, 24).map(([x, y]) => [x, y, y / 4]);
    expect(answerOf({ seenPonds: [seen], readings, sense: 'height' }).existing.ponds).toEqual([]);
    expect(answerOf({ seenPonds: [{ outline: seen.outline }] }).existing.ponds).toEqual([]);
  });
});
