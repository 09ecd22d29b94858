import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parseRoofObject, parseRoofText } from '../../../src/input/parse-roof.ts';
import { type InputProblem, problemLine } from '../../../src/input/problems.ts';

/** Words that only the libraries use; a person must never see them. */
const libraryWords = /invalid|expected|received|undefined|zod|Unrecognized|Too (?:small|big)|\[object/i;

function problemsOf(value: unknown): readonly InputProblem[] {
  const parsed = typeof value === 'string' ? parseRoofText(value) : parseRoofObject(value);
  if (parsed.ok) throw new Error('accepted');
  for (const problem of parsed.problems) {
    expect(problemLine(problem)).not.toMatch(libraryWords);
    expect(problem.instead ?? problem.proposals).toBeTruthy();
  }
  return parsed.problems;
}

const fixture = (name: string): string => readFileSync(`tests/fixtures/roofs/bad-${name}.roof.json`, 'utf8');
const told = (problems: readonly InputProblem[]): string[] => problems.map(({ path, code }) => `${path}: ${code}`);

const square = [
  [0, 0],
  [30, 0],
  [30, 24],
  [0, 24],
];
const roof = (more: object) => ({ version: 1, outline: square, ...more });

test('a crossed outline names the sides that cross and where', () => {
  const problems = problemsOf(fixture('crossed-outline'));
  expect(told(problems)).toEqual(['outline: crossed']);
  expect(problems[0].message).toBe(
    'side 0 from (0, 0) to (30, 24) crosses side 2 from (30, 0) to (0, 24) at (15, 12).',
  );
});

test('a curb outside or partly outside is told with its corner; one that touches a wall is not', () => {
  const problems = problemsOf(fixture('curb-outside'));
  expect(told(problems)).toEqual(['curbs[0].outline: outside', 'curbs[1].outline: outside']);
  expect(problems[0].message).toBe('curb "away" lies outside the outline, at (40, 8).');
  expect(problems[1].message).toBe('curb "half" reaches 8 sq ft outside the outline, at (32, 8).');
});

test('a drain in a curb or outside the outline; at the foot of a curb it may stand', () => {
  const problems = problemsOf(fixture('drain-in-curb'));
  expect(told(problems)).toEqual(['outlets[0].at: in-curb', 'outlets[1].at: outside']);
});

test('a side without length, a repeated corner', () => {
  expect(told(problemsOf(fixture('zero-length-side')))).toEqual(['outline[2]: zero-length']);
  expect(told(problemsOf(fixture('repeated-corner')))).toEqual(['outline[5]: repeated-corner']);
});

test('a walk that does not close says the gap, its direction and which leg would close it', () => {
  const [problem] = problemsOf(fixture('walk-open'));
  expect(problem).toMatchObject({ path: 'outline.walk', code: 'does-not-close', got: '24 in' });
  expect(problem.message).toMatch(/24 in E of its start.*1 part in 53/);
  expect(problem.proposals?.map(({ value }) => value)).toEqual([28, 30]);
});

test('all problems of a file come at once, whatever stands beside them', () => {
  expect(told(problemsOf(fixture('many-things'))).sort()).toEqual(
    [
      'colour: unknown-key',
      'place.rain: ask',
      'edges[0].kind: choice',
      'edges[0].topIn: ask',
      'edges[1].topIn: measure',
      'edges[1].heigthIn: unknown-key',
      'edges[3]: overlap',
      'edges[4].toFt: order',
      'edges[4].openings[0].toFt: beyond-side',
      'edges[5].side: no-such-side',
      'outlets[0].alongFt: beyond-side',
      'outlets[1].at[1]: measure',
      'existing.readings: ask',
    ].sort(),
  );
});

test('a mistyped word or key is answered with the one that was meant', () => {
  const problems = problemsOf(fixture('many-things'));
  expect(problems.find(({ path }) => path === 'edges[0].kind')?.instead).toMatch(/^"gutter"/);
  expect(problems.find(({ path }) => path === 'edges[0].topIn')?.proposals).toEqual([
    { value: 1.5, unit: 'in', text: '1 1/2″' },
  ]);
});

const shapes: readonly (readonly [name: string, outline: unknown, codes: readonly string[]])[] = [
  [
    'two corners',
    [
      [0, 0],
      [1, 1],
    ],
    ['outline: too-few-corners'],
  ],
  ['no corners', [], ['outline: too-few-corners']],
  [
    'on one line',
    [
      [0, 0],
      [10, 0],
      [20, 0],
    ],
    ['outline: zero-area'],
  ],
  [
    'a sliver',
    [
      [0, 0],
      [10, 0],
      [10, 0.0001],
    ],
    ['outline: zero-area'],
  ],
  [
    'a spike',
    [
      [0, 0],
      [10, 0],
      [10, 10],
      [10, 5],
      [0, 5],
    ],
    ['outline: crossed', 'outline: crossed'],
  ],
  [
    'touching itself',
    [
      [0, 0],
      [20, 0],
      [20, 20],
      [10, 0],
      [0, 20],
    ],
    ['outline: crossed', 'outline: crossed'],
  ],
  [
    'millimetres in a feet box',
    [
      [0, 0],
      [9000, 0],
      [9000, 7000],
      [0, 7000],
    ],
    ['outline[1]: range'],
  ],
  [
    'not a number',
    [
      [0, 0],
      [Number.NaN, 0],
      [30, 24],
    ],
    ['outline[1][0]: measure'],
  ],
  [
    'infinite',
    [
      [0, 0],
      [30, Infinity],
      [30, 24],
    ],
    ['outline[1][1]: measure'],
  ],
  [
    'absurd',
    [
      [0, 0],
      [1e9, 0],
      [30, 24],
    ],
    ['outline[1][0]: measure'],
  ],
  [
    'a corner of three',
    [
      [0, 0],
      [30, 0, 1],
      [30, 24],
    ],
    ['outline[1]: type'],
  ],
  [
    'a corner not known',
    [
      [0, 0],
      ['not known', 0],
      [30, 24],
    ],
    ['outline[1][0]: missing'],
  ],
  ['text', 'a square', ['outline: type']],
  ['nothing', undefined, ['outline: missing']],
];

test.each(shapes)('outline: %s', (_, outline, codes) => {
  expect(told(problemsOf({ version: 1, outline }))).toEqual(codes);
});

const parts: readonly (readonly [name: string, more: object, codes: readonly string[]])[] = [
  ['version 2', { version: 2 }, ['version: choice']],
  [
    'curbs overlap',
    {
      curbs: [
        {
          id: 'a',
          outline: [
            [1, 1],
            [5, 1],
            [5, 5],
            [1, 5],
          ],
        },
        {
          id: 'b',
          outline: [
            [4, 4],
            [8, 4],
            [8, 8],
            [4, 8],
          ],
        },
      ],
    },
    ['curbs[1].outline: overlap'],
  ],
  ['a curb over the whole section', { curbs: [{ id: 'a', outline: square }] }, ['curbs: zero-area']],
  [
    'a crossed curb',
    {
      curbs: [
        {
          id: 'a',
          outline: [
            [1, 1],
            [5, 5],
            [5, 1],
            [1, 5],
          ],
        },
      ],
    },
    ['curbs[0].outline: crossed'],
  ],
  [
    'a curb too high to be one',
    {
      curbs: [
        {
          id: 'a',
          outline: [
            [1, 1],
            [5, 1],
            [5, 5],
          ],
          heightIn: 601,
        },
      ],
    },
    ['curbs[0].heightIn: measure'],
  ],
  [
    'one id for a curb and a drain',
    {
      curbs: [
        {
          id: 'x',
          outline: [
            [1, 1],
            [5, 1],
            [5, 5],
          ],
        },
      ],
      outlets: [{ id: 'x', kind: 'drain', at: [9, 9] }],
    },
    ['outlets[0].id: duplicate-id'],
  ],
  ['an id kept for edges', { outlets: [{ id: 'side-0', kind: 'drain', at: [9, 9] }] }, ['outlets[0].id: duplicate-id']],
  ['a pipe outside', { pipes: [{ at: [-1, 5], kind: 'flue' }] }, ['pipes[0].at: outside']],
  [
    'an inflow without its area',
    { inflows: [{ at: [1, 5], kind: 'downspout', fromSqFt: 'not known' }] },
    ['inflows[0].fromSqFt: missing'],
  ],
  [
    'a plane towards no side',
    { existing: { planes: [{ slopeInPerFt: 0.125, fallsToward: { side: 4 } }] } },
    ['existing.planes[0].fallsToward.side: no-such-side'],
  ],
  [
    'a slope that may be two things',
    { existing: { planes: [{ slopeInPerFt: '1:4', fallsToward: 'NE' }] } },
    ['existing.planes[0].slopeInPerFt: ask'],
  ],
  [
    'a surface said twice',
    { existing: { surface: 'level', readings: [[1, 1, -1]], readOn: 'deck' } },
    ['existing: conflict'],
  ],
  ['readings that count nobody knows which way', { existing: { readings: [[1, 1, 1]] } }, ['existing.sense: ask']],
  [
    'readings at one spot that disagree',
    {
      existing: {
        sense: 'rod',
        readings: [
          [1, 1, 1],
          [1, 1, 2],
        ],
        errorIn: 0.25,
      },
    },
    ['existing.readings: ask'],
  ],
  ['a finding on no side', { findings: [{ kind: 'rotten-eave', side: 9 }] }, ['findings[0].side: no-such-side']],
  ['a finding of no kind', { findings: [{ kind: 'martians', at: [1, 1] }] }, ['findings[0].kind: choice']],
  ['a finding at two places', { findings: [{ kind: 'split', at: [1, 1], side: 0 }] }, ['findings[0]: conflict']],
  ['a finding off the roof', { findings: [{ kind: 'split', at: [1, -9] }] }, ['findings[0].at: outside']],
  [
    'a finding beyond its side',
    { findings: [{ kind: 'rotten-eave', side: 0, toFt: 31 }] },
    ['findings[0].toFt: beyond-side'],
  ],
  ['a stretch along no side', { findings: [{ kind: 'split', fromFt: 2 }] }, ['findings[0].side: missing']],
  ['a photo that is an address', { findings: [{ kind: 'split', photos: ['../x'] }] }, ['findings[0].photos[0]: type']],
  [
    'more than twenty photos',
    { findings: [{ kind: 'split', photos: Array(21).fill('a1') }] },
    ['findings[0].photos: type'],
  ],
  ['no layer at all', { covering: { layers: 0 } }, ['covering.layers: range']],
  ['a covering of 400 years', { covering: { ageYears: 400 } }, ['covering.ageYears: measure']],
  ['a bare rain', { place: { rain: '110 mm/h' } }, ['place.rain: ask']],
  ['a negative side', { edges: [{ side: -1, kind: 'wall' }] }, ['edges[0].side: range']],
  ['three end heights', { edges: [{ side: 0, kind: 'wall', topIn: [1, 2, 3] }] }, ['edges[0].topIn: type']],
  ['a list for a group', { deck: [] }, ['deck: type']],
  ['a group for a list', { edges: {} }, ['edges: type']],
  [
    'a downspout beyond its side',
    { edges: [{ side: 0, kind: 'gutter', gutter: { downspouts: [31] } }] },
    ['edges[0].gutter.downspouts[0]: beyond-side'],
  ],
];

test.each(parts)('%s', (_, more, codes) => {
  expect(told(problemsOf(roof(more)))).toEqual(codes);
});

const texts: readonly (readonly [text: string, where: RegExp])[] = [
  ['', /line 1, column 1: the file is empty/],
  ['{"version":1,\n "outline": [[0,0],[NaN,1]]}', /line 2, column 21: NaN is not a number.*"not known"/],
  ['{"version":1,}', /column 14: a comma stands before }/],
  ['{version:1}', /column 2: the key version needs quotes/],
  ["{'version':1}", /column 2: a key in double quotes/],
  ['{"version":1 "outline":[]}', /column 14: a comma or "}" is missing/],
  ['{"version":1', /the file ends too early.*"}"/],
  ['{"outline":[[0,0],]}', /column 19: a value is missing/],
  [`{"toFt":5'6"}`, /column 9: it does not read as a number/],
  ['{"toFt":"5\'-6""}', /column 15: a comma or "}"/],
  ['{"a":"open\n"}', /column 6: text that does not end/],
  ['{"a":yes}', /yes needs quotes/],
  ['// a remark\n{}', /column 1: a comment/],
  ['{} {}', /column 4: there is more text/],
  ['{"a":"\\q"}', /it is not JSON/],
  [`${'['.repeat(100)}`, /nested too deep/],
];

test.each(texts)('broken JSON %j tells its place', (text, where) => {
  const problems = problemsOf(text);
  expect(problems).toHaveLength(1);
  expect(problemLine(problems[0])).toMatch(where);
});

test('a key given twice is told, and the rest of the file is still read', () => {
  expect(
    told(problemsOf('{"version":1,"outline":[[0,0],[9,0],[9,9]],"edges":[],\n"edges":[{"side":5,"kind":"wall"}]}')),
  ).toEqual(['edges: duplicate-key', 'edges[0].side: no-such-side']);
});

test('text over 10 MB is refused before it is parsed', () => {
  const started = performance.now();
  const [problem] = problemsOf(`{"label":"${'x'.repeat(10_000_000)}"}`);
  expect(problem).toMatchObject({ path: 'file', code: 'too-large' });
  expect(performance.now() - started).toBeLessThan(500);
});

const circle = (corners: number) =>
  Array.from({ length: corners }, (_, i) => {
    const angle = (2 * Math.PI * i) / corners;
    return [100 * Math.cos(angle), 100 * Math.sin(angle)];
  });

test('5,000 corners are read, 5,001 are refused with a sentence', () => {
  expect(parseRoofObject({ version: 1, outline: circle(5_000) }).ok).toBe(true);
  const [problem] = problemsOf({ version: 1, outline: circle(5_001) });
  expect(problem).toMatchObject({ path: 'outline', code: 'too-many-corners' });
  expect(problem.message).toMatch(/5,001 corners/);
});

test('an outline that crosses itself everywhere is refused at once, with the first few places', () => {
  const star = Array.from({ length: 2_001 }, (_, i) => {
    const angle = (2 * Math.PI * i * 1_000) / 2_001;
    return [100 * Math.cos(angle), 100 * Math.sin(angle)];
  });
  const started = performance.now();
  expect(problemsOf({ version: 1, outline: star })).toHaveLength(5);
  expect(performance.now() - started).toBeLessThan(2_000);
});

test('nothing that is passed in makes it throw', () => {
  const cyclic: Record<string, unknown> = { version: 1 };
  cyclic.outline = cyclic;
  for (const value of [
    null,
    undefined,
    5,
    'x',
    [],
    cyclic,
    { outline: () => 1 },
    { version: 1n, outline: [[1n, 2n]] },
  ]) {
    expect(parseRoofObject(value).ok).toBe(false);
  }
  expect(told(problemsOf('{"version":1,"outline":[[0,0],[9,0],[9,9]],"__proto__":{"x":1}}'))).toEqual([
    '__proto__: unknown-key',
  ]);
});

test('an outlet that stands above its surroundings is no fault of the file', () => {
  expect(parseRoofObject(roof({ outlets: [{ id: 'D1', kind: 'drain', at: [15, 12], inletIn: 3 }] })).ok).toBe(true);
});

test('a photo’s name, their number and the layers are told in words of their own', () => {
  const says = (more: object): string => problemLine(problemsOf(roof(more))[0]);
  expect(says({ findings: [{ kind: 'split', photos: ['../x'] }] })).toMatch(
    /"\.\.\/x" does not fit.*the name of a photo that is kept/,
  );
  expect(says({ findings: [{ kind: 'split', photos: Array(21).fill('a1') }] })).toMatch(/at most 20 photos/);
  expect(says({ covering: { layers: 0 } })).toMatch(/the coverings that lie there, counted.*at least 1/);
  expect(says({ findings: [{ kind: 'split', at: [1, 1], side: 0 }] })).toMatch(/given 2 times: "at", "side"/);
});
