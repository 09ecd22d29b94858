import { describe, expect, test } from 'vitest';
import { heightIn } from '../../../src/core/geometry/plane.ts';
import { assume } from '../../../src/core/site/assumptions.ts';
import { type Reading, readingsOf } from '../../../src/core/site/readings.ts';
import { parseRoofObject } from '../../../src/input/parse-roof.ts';

/** A plane that falls 0.19 in/ft one way and rises 0.07 in/ft the other, read by each instrument. */
const plane = { atOriginIn: 3.3, gx: 0.07, gy: -0.19 };
const spots: [number, number][] = [
  [0, 0],
  [10, 0],
  [20, 4],
  [3, 12],
  [17.5, 15],
  [20, 16],
];
const heightAt = (p: readonly [number, number]): number => heightIn(plane, p);

const file = (existing: object, more: object = {}) => ({
  version: 1,
  outline: [
    [0, 0],
    [20, 0],
    [20, 16],
    [0, 16],
  ],
  existing: { readOn: 'covering', ...existing },
  ...more,
});

function roofOf(existing: object, more: object = {}) {
  const parsed = parseRoofObject(file(existing, more));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return parsed.roof;
}

const problemsOf = (existing: object, more: object = {}): string[] => {
  const parsed = parseRoofObject(file(existing, more));
  return parsed.ok ? [] : parsed.problems.map(({ path, code, message }) => `${path}: ${code}: ${message}`);
};

/** Heights against the first spot: what does not depend on where an instrument has its zero. */
const shapeOf = (readings: readonly Reading[]): number[] => readings.map(({ zIn }) => zIn - readings[0].zIn);
const truth = spots.map((p) => heightAt(p) - heightAt(spots[0]));

/** A string from one corner to another, set at heights of its own, that hangs half an inch. */
const string = (from: [number, number], to: [number, number], fromIn: number, toIn: number, sagIn: number) => {
  const lengthFt = Math.hypot(to[0] - from[0], to[1] - from[1]);
  return {
    ...{ from, to, fromIn, toIn, sagIn },
    readings: [0, 0.2, 0.5, 0.9, 1].map((t) => {
      const at: [number, number] = [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t];
      const stringIn = fromIn + (toIn - fromIn) * t - 4 * sagIn * t * (1 - t);
      return [t * lengthFt, stringIn - heightAt(at)];
    }),
  };
};

describe('one plane has the same heights whichever instrument reads it', () => {
  test('laser and rod: the rod stands on the roof under the beam', () => {
    const beamIn = 61.25;
    const roof = roofOf({ readings: spots.map((p) => [...p, beamIn - heightAt(p)]), sense: 'rod' });
    expect(shapeOf(readingsOf(roof))).toEqual(truth.map((z) => expect.closeTo(z, 9)));
  });

  test('water level: the mark on the moved tube against the reference tube', () => {
    const waterIn = 40.5;
    const marks = spots.map((p) => waterIn - heightAt(p));
    const differences = roofOf({ readings: spots.map((p, i) => [...p, marks[i] - marks[0]]), sense: 'water-level' });
    const absolute = roofOf({
      readings: spots.map((p, i) => [...p, marks[i]]),
      sense: 'water-level',
      referenceIn: marks[0],
    });
    expect(readingsOf(differences).map(({ zIn }) => zIn)).toEqual(truth.map((z) => expect.closeTo(z, 9)));
    expect(readingsOf(absolute).map(({ zIn }) => zIn)).toEqual(truth.map((z) => expect.closeTo(z, 9)));
  });

  test('strings: the gap under them, sloped and sagging as they were set', () => {
    const roof = roofOf({ strings: [string([0, 0], [20, 16], 12, 9.5, 0.5), string([0, 16], [20, 0], 8, 8, 0.25)] });
    const read = readingsOf(roof);
    // The two strings cross in the middle: nine spots, the middle once.
    expect(read).toHaveLength(9);
    for (const { at, zIn } of read) expect(zIn).toBeCloseTo(heightAt(at), 9);
  });

  test('a string that hangs and is taken as straight makes its middle look high by the sag', () => {
    const set = string([0, 8], [20, 8], 10, 10, 0.5);
    const [, , middle] = readingsOf(roofOf({ strings: [{ ...set, sagIn: null }] }));
    expect(middle.zIn - heightAt(middle.at)).toBeCloseTo(0.5, 9);
  });
});

describe('what is taken when it is not said', () => {
  const spotReadings = spots.map((p) => [...p, heightAt(p)]);

  test.each([
    ['laser', { readings: spotReadings, sense: 'height' }, 1 / 16],
    ['string', { strings: [string([0, 0], [20, 16], 12, 9, 0)] }, 1 / 8],
    ['water level', { readings: spotReadings, sense: 'water-level' }, 1 / 8],
    [
      'the coarser of two',
      { readings: spotReadings, sense: 'height', strings: [string([0, 9], [20, 9], 9, 9, 0)] },
      1 / 8,
    ],
  ])('the error of a %s is assumed and listed with its grade', (_, existing, errorIn) => {
    const { given, assumed } = assume(roofOf(existing));
    expect(given.readingErrorIn).toBe(errorIn);
    const row = assumed.find(({ path }) => path === 'existing.errorIn');
    expect(row?.because).toMatch(/common practice, no source/i);
  });

  test('a given error is used and not listed', () => {
    const { given, assumed } = assume(roofOf({ readings: spotReadings, sense: 'height', errorIn: '1/4"' }));
    expect(given.readingErrorIn).toBe(0.25);
    expect(assumed.map(({ path }) => path)).not.toContain('existing.errorIn');
  });

  test('a string without heights is level, one without a sag is straight: both are listed', () => {
    const roof = roofOf({ strings: [{ from: [0, 8], to: [20, 8], readings: [[5, 2]] }] });
    expect(readingsOf(roof)).toEqual([{ at: [5, 8], zIn: -2 }]);
    const paths = assume(roof).assumed.map(({ path }) => path);
    expect(paths).toEqual(expect.arrayContaining(['existing.strings[0].fromIn', 'existing.strings[0].sagIn']));
  });
});

describe('readings that cannot be used are named', () => {
  test.each([
    ['an end is missing', { strings: [{ from: [0, 8], readings: [[5, 2]] }] }, 'existing.strings[0].to: missing'],
    [
      'a height at one end only',
      { strings: [{ from: [0, 8], to: [20, 8], fromIn: 4, readings: [[5, 2]] }] },
      'existing.strings[0].toIn: missing',
    ],
    [
      'beyond the end of the string',
      { strings: [{ from: [0, 8], to: [20, 8], readings: [[25, 2]] }] },
      'existing.strings[0].readings[0]: outside',
    ],
    [
      'both ends at one place',
      { strings: [{ from: [4, 8], to: [4, 8], readings: [[0, 2]] }] },
      'existing.strings[0].to: zero-length',
    ],
    [
      'two level strings of unknown height',
      { strings: [0, 1].map((i) => ({ from: [0, 4 + i], to: [20, 4 + i], readings: [[5, 2]] })) },
      'existing.strings[1].fromIn: ask',
    ],
    [
      'a string beside rod readings',
      { strings: [string([0, 9], [20, 9], 9, 9, 0)], readings: [[1, 1, 50]], sense: 'rod' },
      'existing.strings: conflict',
    ],
    [
      'a string and a level that disagree at one spot',
      {
        strings: [{ from: [0, 8], to: [20, 8], fromIn: 4, toIn: 4, readings: [[5, 2]] }],
        readings: [[5, 8, 1]],
        sense: 'height',
      },
      'existing.strings[0].readings[0]: ask',
    ],
    [
      'a reference without a water level',
      { readings: [[1, 1, 5]], sense: 'rod', referenceIn: 3 },
      'existing.referenceIn: conflict',
    ],
  ])('%s', (_, existing, starts) => {
    expect(problemsOf(existing).some((line) => line.startsWith(starts))).toBe(true);
  });

  test('a string and a level that agree within their error are one reading', () => {
    const roof = roofOf({
      strings: [{ from: [0, 8], to: [20, 8], fromIn: 4, toIn: 4, readings: [[5, 2]] }],
      readings: [[5, 8, 1.9]],
      sense: 'height',
    });
    expect(readingsOf(roof)).toEqual([{ at: [5, 8], zIn: expect.closeTo(1.95, 12) }]);
  });

  test('a reading under a string that runs over a curb or off the section is left out with a note', () => {
    const curb = {
      id: 'hatch',
      outline: [
        [8, 6],
        [12, 6],
        [12, 10],
        [8, 10],
      ],
    };
    const parsed = parseRoofObject(
      file(
        {
          strings: [
            {
              from: [-4, 8],
              to: [20, 8],
              readings: [
                [2, 1],
                [14, 1],
                [6, 1],
              ],
            },
          ],
        },
        { curbs: [curb] },
      ),
    );
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
    expect(readingsOf(parsed.roof).map(({ at }) => at)).toEqual([[2, 8]]);
    expect(parsed.notes.filter(({ code }) => code === 'left-out').map(({ path }) => path)).toEqual([
      'existing.strings[0].readings[0]',
      'existing.strings[0].readings[1]',
    ]);
  });
});
