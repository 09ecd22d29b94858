import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseRoofObject } from '../../../src/input/parse-roof.ts';
import * as choices from '../../../src/input/six-answers/choices.ts';
import { blankAnswers, roofFromAnswers, type SixAnswers } from '../../../src/input/six-answers.ts';

const answers = (given: Partial<SixAnswers>): SixAnswers => ({
  ...blankAnswers(),
  lengthText: '30',
  depthText: "24'",
  ...given,
});

function roofOf(given: Partial<SixAnswers>) {
  const read = roofFromAnswers(answers(given));
  if (read.file === null) throw new Error(JSON.stringify(read.problems));
  const parsed = parseRoofObject(read.file);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return { ...read, roof: parsed.roof };
}

test('the back section in six answers', () => {
  const { roof, understood, supposed } = roofOf({
    lengthText: `30'`,
    depthText: 'about 24 ft',
    leavesNow: 'gutter-side',
    backSideKind: 'shingles-above',
    leftSideKind: 'rake',
    rightSideKind: 'rake',
    rightSideMayOpen: 'no',
    pondWhere: 'middle',
    pondDepthText: '1 1/2"',
    pondLasts: 'two-days',
    lowestKind: 'shingles',
    lowestHeightText: '5 in',
    lowestSide: 'back',
    below: 'living',
    deckSeen: 'yes',
    town: 'Smallville, Vermont',
  });
  expect(roof.outline).toEqual([
    [0, 0],
    [30, 0],
    [30, 24],
    [0, 24],
  ]);
  expect(roof.edges.map(({ side, kind, mayDrain, clearIn }) => [side, kind, mayDrain, clearIn])).toEqual([
    [0, 'gutter', 'yes', null],
    [1, 'rake', 'no', null],
    [2, 'shingles-above', 'unknown', [5, 5]],
    [3, 'rake', 'unknown', null],
  ]);
  expect(roof.existing).toEqual({
    surface: { kind: 'unknown' },
    readOn: 'covering',
    buildUpIn: null,
    seenPonds: [{ outline: null, at: [15, 12], depthIn: 1.5, hoursAfterRain: 48 }],
    seenDryAfter48h: null,
    sag: null,
  });
  expect(roof.building.below).toBe('living-exposed-deck');
  expect(roof.place).toMatchObject({ city: 'Smallville', state: 'VT' });
  expect(supposed).toEqual([]);
  expect(understood.find(({ field }) => field === 'depthText')).toEqual({
    question: 1,
    field: 'depthText',
    typed: 'about 24 ft',
    text: 'about 24′-0″',
  });
});

test('length and depth are enough; everything else may be not known', () => {
  const { roof, supposed } = roofOf({});
  expect(roof).toMatchObject({ edges: [], outlets: [], curbs: [], building: { below: null }, place: { city: null } });
  expect(supposed).toEqual([]);
});

test('length and depth need at least a guess, and the other problems come with them', () => {
  const read = roofFromAnswers(
    answers({ lengthText: 'not known', depthText: '24 6', lowestKind: 'door', lowestHeightText: '3/4' }),
  );
  expect(read.file).toBeNull();
  expect(read.problems.map(({ question, path, code }) => `${question} ${path} ${code}`)).toEqual([
    '1 lengthText missing',
    '1 depthText ask',
    '4 lowestHeightText ask',
  ]);
  expect(read.problems.find(({ path }) => path === 'lengthText')?.instead).toMatch(/about 30 ft/);
});

test('a drain or scupper without a place is drawn, and said to be supposed with the way to find out', () => {
  const drain = roofOf({ leavesNow: 'drain' });
  expect(drain.roof.outlets).toMatchObject([
    { id: 'D1', kind: 'drain', at: [15, 12], role: 'primary', status: 'existing' },
  ]);
  expect(drain.supposed).toMatchObject([{ question: 2, field: 'drainAlongText', findOut: 'a tape from two sides' }]);
  const measured = roofOf({ leavesNow: 'drain', drainAlongText: `10'-6"`, drainBackText: '3 m' });
  expect(measured.roof.outlets[0]).toMatchObject({ at: [10.5, expect.closeTo(9.8425, 4)] });
  expect(measured.supposed).toEqual([]);
  const scupper = roofOf({ leavesNow: 'scupper', scupperSide: 'right', scupperAlongText: '4' });
  expect(scupper.roof.outlets).toMatchObject([{ id: 'S1', kind: 'scupper', side: 1, alongFt: 4 }]);
  expect(scupper.roof.edges).toMatchObject([{ side: 1, kind: 'parapet' }]);
});

test('the lowest thing stands on its side, on a side that can have it, or is asked about', () => {
  const door = roofOf({ lowestKind: 'door', lowestHeightText: '4"', lowestSide: 'left', leftSideKind: 'wall' });
  expect(door.roof.edges[0].openings).toEqual([{ kind: 'door', fromFt: null, toFt: null, heightIn: 4 }]);
  const somewhere = roofOf({ lowestKind: 'siding-bottom', rightSideKind: 'wall', backSideKind: 'shingles-above' });
  expect(somewhere.roof.edges[0]).toMatchObject({ side: 1, openings: [{ kind: 'siding-bottom', heightIn: null }] });
  expect(somewhere.supposed.map(({ field }) => field)).toEqual(['lowestSide']);
  const clash = roofFromAnswers(answers({ lowestKind: 'door', lowestSide: 'back', backSideKind: 'shingles-above' }));
  expect(clash.problems.map(({ path, code }) => `${path} ${code}`)).toEqual(['lowestSide conflict']);
});

test('a curb is drawn clear of the drain until it is measured', () => {
  const { roof, supposed } = roofOf({ lowestKind: 'curb', lowestHeightText: '6', leavesNow: 'drain' });
  expect(roof.curbs).toMatchObject([{ heightIn: 6, kind: 'other' }]);
  expect(supposed.map(({ field }) => field)).toContain('curbSizeText');
  const measured = roofOf({
    lowestKind: 'curb',
    lowestHeightText: '6',
    curbSizeText: `2' x 4'`,
    curbAlongText: '10',
    curbBackText: '12',
  });
  expect(measured.roof.curbs[0].outline).toEqual([
    [9, 10],
    [11, 10],
    [11, 14],
    [9, 14],
  ]);
  expect(measured.supposed).toEqual([]);
});

test('water that was seen counts also where its place is not known; none and a depth together are asked about', () => {
  const { existing } = roofOf({ pondWhere: 'unknown', pondDepthText: '1/2"', pondLasts: 'two-days' }).roof;
  expect(existing.seenPonds).toMatchObject([{ at: null, depthIn: 0.5, hoursAfterRain: 48 }]);
  expect(
    roofOf({ pondWhere: 'unknown', pondDepthText: '1/2"', pondLasts: 'unknown' }).roof.existing.seenPonds,
  ).toHaveLength(1);
  expect(roofOf({ pondWhere: 'unknown', pondDepthText: '', pondLasts: 'gone' }).roof.existing).toMatchObject({
    seenDryAfter48h: true,
    seenPonds: [],
  });
  const both = roofFromAnswers(answers({ pondWhere: 'none', pondDepthText: '1/2"', pondLasts: 'unknown' }));
  expect(both.problems).toMatchObject([{ question: 3, path: 'pondWhere', code: 'conflict' }]);
});

test('ponds: none seen after two days, gone in time, not known', () => {
  expect(roofOf({ pondWhere: 'none' }).roof.existing).toMatchObject({ seenDryAfter48h: true, seenPonds: [] });
  expect(roofOf({ pondWhere: 'low-left', pondLasts: 'gone' }).roof.existing).toMatchObject({
    seenDryAfter48h: true,
    seenPonds: [{ depthIn: null, hoursAfterRain: null }],
  });
  expect(roofOf({}).roof.existing).toMatchObject({ seenDryAfter48h: null, seenPonds: [] });
});

test('living space below without a look from inside counts as an exposed deck, and says so', () => {
  const { roof, supposed } = roofOf({ below: 'living' });
  expect(roof.building.below).toBe('living-exposed-deck');
  expect(supposed).toMatchObject([{ question: 5, field: 'deckSeen', findOut: 'a look at the ceiling from inside' }]);
  expect(roofOf({ below: 'living', deckSeen: 'no' }).roof.building.below).toBe('living-ceiling');
});

test('a word that is no choice is told by its question', () => {
  const read = roofFromAnswers(answers({ pondWhere: 'everywhere' as SixAnswers['pondWhere'] }));
  expect(read.problems).toMatchObject([{ question: 3, path: 'pondWhere', code: 'choice' }]);
});

test('law: whatever is answered, the file is a roof or every problem names its answer', () => {
  const of = (words: object) => fc.constantFrom(...Object.keys(words));
  const text = fc.constantFrom('', 'not known', '4', `2'-6"`, 'about 8 ft', '1/2', 'x', '-3"', '3 m', '24 6');
  const filled = fc.record({
    lengthText: fc.constantFrom('30', `24'-6"`, 'about 30 ft'),
    depthText: fc.constantFrom('24', '7 m'),
    leavesNow: of(choices.leavesNowChoices),
    drainAlongText: text,
    drainBackText: text,
    scupperSide: of(choices.sideChoices),
    scupperAlongText: text,
    lowSideKind: of(choices.sideKindChoices),
    rightSideKind: of(choices.sideKindChoices),
    backSideKind: of(choices.sideKindChoices),
    leftSideKind: of(choices.sideKindChoices),
    backSideMayOpen: of(choices.mayOpenChoices),
    pondWhere: of(choices.pondPlaceChoices),
    pondDepthText: text,
    pondLasts: of(choices.pondLastsChoices),
    lowestKind: of(choices.lowestKindChoices),
    lowestHeightText: text,
    lowestSide: of(choices.sideChoices),
    curbSizeText: fc.constantFrom('', '4 x 4 ft', '36x22', `2' x 3'`),
    below: of(choices.belowChoices),
    deckSeen: of(choices.mayOpenChoices),
    town: fc.constantFrom('', 'Smallville, VT', 'not known'),
  });
  fc.assert(
    fc.property(filled, (given) => {
      const read = roofFromAnswers(answers(given as Partial<SixAnswers>));
      if (read.file === null) {
        expect(read.problems.length).toBeGreaterThan(0);
        for (const problem of read.problems) expect(blankAnswers()).toHaveProperty(problem.path);
        return;
      }
      expect(read.problems).toEqual([]);
      const parsed = parseRoofObject(read.file);
      if (!parsed.ok) expect(parsed.problems).toEqual([]);
    }),
    { numRuns: 3_000 },
  );
});
