import { expect, test } from 'vitest';
import { signedAreaSqFt } from '../../../src/core/geometry/vector.ts';
import { parseRoofObject, parseRoofText } from '../../../src/input/parse-roof.ts';
import type { InputNote } from '../../../src/input/problems.ts';
import { convert } from '../../../src/units/convert.ts';

const square = [
  [0, 0],
  [30, 0],
  [30, 24],
  [0, 24],
];

function read(more: object) {
  const parsed = parseRoofObject({ version: 1, outline: square, ...more });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return parsed;
}

const codes = (notes: readonly InputNote[]): string[] => notes.map(({ path, code }) => `${path}: ${code}`);

test('an outline alone is a roof: everything else is not known', () => {
  const { roof, notes } = read({});
  expect(roof).toEqual({
    version: 1,
    label: '',
    invented: false,
    place: { city: null, state: null, rain: null, climateZone: null, groundSnowPsf: null, californiaZone: null },
    ruleSet: {
      building: null,
      plumbing: null,
      local: {
        rainInPerHr: null,
        wallShare: null,
        minimumFlashingIn: null,
        birdBathIn: null,
        birdBathSqFt: null,
        overflowRequired: null,
        taperRule: null,
      },
    },
    building: { heightFt: null, below: null, yearBuilt: null, planFt: null, winterHumidityPct: null },
    deck: { kind: null, thicknessIn: null, liveLoadPsf: null, joists: null },
    outline: square,
    edges: [],
    curbs: [],
    pipes: [],
    inflows: [],
    outlets: [],
    existing: {
      surface: { kind: 'unknown' },
      readOn: 'covering',
      buildUpIn: null,
      seenPonds: [],
      seenDryAfter48h: null,
      sag: null,
    },
    covering: { kind: null, layers: null, ageYears: null },
    insulation: { targetR: null, keepExisting: null, below: null, baseIn: null, flatIn: null, flatRPerIn: null },
    adjoining: null,
    prices: { boardFt: null, drain: null, scupper: null, edgeFt: null, parapetFt: null },
    boards: { groups: null, flat: null, strips: null, leastPieceIn: null, sumpFt: null },
    slopeRule: { faceInPerFt: null, valleyInPerFt: null, strict: null },
    removedIn: null,
    wind: { mph: null, edition: null },
    findings: [],
    preferences: {
      noFlame: null,
      residueRemovedOrCovered: null,
      grease: null,
      debris: null,
      footTraffic: null,
      tightBudget: null,
      workTemperatureF: null,
      membrane: null,
      weights: null,
      keepCovering: null,
      noSprayFoam: null,
      noFoamAbove: null,
    },
  });
  expect(codes(notes)).toEqual(['existing.readOn: default']);
});

test('"not known" stands in every optional place, like null', () => {
  const unknown = 'not known';
  const keys = [
    'label',
    'invented',
    'place',
    'ruleSet',
    'building',
    'deck',
    'edges',
    'curbs',
    'pipes',
    'inflows',
    'outlets',
    'existing',
    'covering',
    'insulation',
    'slopeRule',
    'removedIn',
    'wind',
    'findings',
    'preferences',
  ];
  const bare = read({}).roof;
  expect(read(Object.fromEntries(keys.map((key) => [key, unknown]))).roof).toEqual({ ...bare, label: unknown });
  expect(read(Object.fromEntries(keys.map((key) => [key, null]))).roof).toEqual(bare);
  const inside = {
    place: { city: unknown, state: '?', rain: unknown },
    building: { heightFt: unknown, below: unknown, yearBuilt: 'unknown', planFt: unknown },
    deck: { kind: unknown, joists: unknown },
    existing: { surface: unknown, buildUpIn: unknown, seenDryAfter48h: unknown, readOn: unknown },
    preferences: { noFlame: unknown, workTemperatureF: unknown },
  };
  expect(read(inside).roof).toEqual(bare);
});

test('lengths and heights may be text, a bare one in its own unit', () => {
  const { roof, notes } = read({
    outline: [
      [0, 0],
      [`30'`, 0],
      ['360"', '7.3152 m'],
      ['0', `24'-0"`],
    ],
    edges: [{ side: 1, kind: 'parapet', topIn: ['1 ft', '14'], fromFt: `2'-6"`, toFt: 'about 20 ft' }],
    building: { planFt: `52' x 34'` },
    insulation: { targetR: 'R-30' },
    existing: {
      planes: [{ slopeInPerFt: '1:48', fallsToward: 'north-east', through: ['15 ft', 12, '-1/2"'] }],
      readOn: 'deck',
    },
    preferences: { workTemperatureF: '5 C' },
    wind: { mph: '115 mph' },
  });
  expect(roof.outline.map(([x, y]) => [x, Number(y.toFixed(9))])).toEqual(square);
  expect(roof.edges[0]).toMatchObject({ topIn: [12, 14], fromFt: 2.5, toFt: 20, mayDrain: 'unknown' });
  expect(roof.building.planFt).toEqual([52, 34]);
  expect(roof.insulation.targetR).toBe(30);
  expect(roof.existing.surface).toEqual({
    kind: 'planes',
    planes: [
      {
        slopeInPerFt: 0.25,
        fallsToward: { bearingDeg: 45 },
        where: null,
        through: [15, 12, -0.5],
        riseIn: null,
        runFt: null,
      },
    ],
  });
  expect(roof.preferences.workTemperatureF).toBe(41);
  expect(codes(notes)).toEqual(['edges[0].toFt: approximate']);
});

/** Case N03: nine points in millimetres, the last repeating the first. Area by the shoelace formula. */
test('a repeated closing point is dropped (case N03)', () => {
  const millimetres = [
    [7481, 274],
    [10509, 115],
    [10555, 964],
    [7481, 1126],
    [7481, 1866],
    [4356, 1866],
    [4356, -1896],
    [7481, -1896],
    [7481, 274],
  ];
  const { roof, notes } = read({ outline: millimetres.map((corner) => corner.map((value) => `${value} mm`)) });
  expect(roof.outline).toHaveLength(8);
  expect(signedAreaSqFt(roof.outline) * convert(1, 'sqft', 'm^2')).toBeCloseTo(14.354817, 6);
  expect(codes(notes)).toContain('outline[8]: closing-point');
});

test('a clockwise outline keeps the order of the file', () => {
  const { roof, notes } = read({ outline: [...square].reverse() });
  expect(roof.outline).toEqual([...square].reverse());
  expect(codes(notes)).toContain('outline: clockwise');
});

test('town and state', () => {
  expect(read({ place: { city: 'Smallville, vt' } }).roof.place).toMatchObject({ city: 'Smallville', state: 'VT' });
  expect(read({ place: { city: 'Smallville, New York' } }).roof.place).toMatchObject({
    city: 'Smallville',
    state: 'NY',
  });
  expect(read({ place: { city: 'Smallville' } }).roof.place).toMatchObject({ city: 'Smallville', state: null });
  expect(read({ place: { city: 'Upper, Lower', state: 'Vermont' } }).roof.place).toMatchObject({
    city: 'Upper, Lower',
    state: 'VT',
  });
});

test('readings: outside ones are named and left out, rod values stay as they are, equal ones count once', () => {
  const { roof, notes } = read({
    curbs: [
      {
        id: 'skylight',
        kind: 'skylight',
        outline: [
          [8, 8],
          [12, 8],
          [12, 12],
          [8, 12],
        ],
      },
    ],
    existing: {
      readings: [
        [0, 0, 48],
        [0, 0, 48],
        [15, 12, 49.5],
        [40, 12, 49],
        [10, 10, 42],
        [30.04, 24, 48.5],
        [5, 5, 48],
        [5, 5, 48.1],
      ],
      sense: 'rod',
      errorIn: '1/16"',
      readOn: 'covering',
    },
  });
  expect(roof.existing.surface).toEqual({
    kind: 'readings',
    readings: [
      [0, 0, 48],
      [15, 12, 49.5],
      [30.04, 24, 48.5],
      [5, 5, 48.05],
    ],
    sense: 'rod',
    referenceIn: null,
    strings: [],
    errorIn: 0.0625,
  });
  expect(notes.filter(({ path }) => path.startsWith('existing')).map(({ message }) => message)).toEqual([
    'the reading at (40, 12) is outside the outline and is left out',
    'the reading at (10, 10) is on curb "skylight" and is left out',
    'the reading at (0, 0) is given 2 times; once is kept',
    'the readings at (5, 5) (48 in and 48.1 in) agree within the error; their mean is used',
  ]);
});

test('readings below zero are heights', () => {
  const { roof, notes } = read({ existing: { readings: [[1, 1, -0.5]], readOn: 'deck' } });
  expect(roof.existing.surface).toMatchObject({ kind: 'readings', sense: 'height', errorIn: null });
  expect(codes(notes)).toEqual(['existing.sense: default']);
});

test('what is taken without being said is told once for all parts', () => {
  const { roof, notes } = read({
    curbs: [
      {
        outline: [
          [1, 1],
          [3, 1],
          [3, 3],
        ],
      },
      {
        id: 'curb-1',
        kind: 'hatch',
        outline: [
          [5, 1],
          [7, 1],
          [7, 3],
        ],
      },
    ],
    outlets: [
      { kind: 'drain', at: [15, 12], working: false },
      { id: 'D2', kind: 'drain', at: [20, 12], role: 'overflow' },
    ],
    existing: { readOn: 'covering' },
  });
  expect(roof.curbs.map(({ id, kind }) => [id, kind])).toEqual([
    ['curb-2', 'other'],
    ['curb-1', 'hatch'],
  ]);
  expect(roof.outlets.map(({ id, role, status, working }) => [id, role, status, working])).toEqual([
    ['outlet-1', 'primary', 'existing', false],
    ['D2', 'overflow', 'existing', true],
  ]);
  expect(notes.map(({ path, message }) => `${path} ${message}`)).toEqual([
    'curbs[0].id not given: called "curb-2"',
    'outlets[0].id not given: called "outlet-1"',
    'outlets role not given (outlet-1): taken as primary',
    'outlets status not given (outlet-1, D2): taken as there today',
    'outlets working not given (D2): taken as open',
    'curbs kind not given (curb-2): taken as another curb',
  ]);
});

test('a stretch that overshoots its side by a tape error ends with the side', () => {
  const { roof, notes } = read({ edges: [{ side: 0, kind: 'gutter', fromFt: 0, toFt: 30.04 }] });
  expect(roof.edges[0].toFt).toBe(30);
  expect(codes(notes)).toContain('edges[0].toFt: adjusted');
});

test('joists may be known in part, and are not known where nothing is', () => {
  const { roof } = read({ deck: { joists: { spanFt: 12, depthIn: 'not known', spacingIn: 16 } } });
  expect(roof.deck.joists).toEqual({ spanFt: 12, depthIn: null, spacingIn: 16, directionDeg: null });
  expect(read({ deck: { joists: { depthIn: 'not known' } } }).roof.deck.joists).toBeNull();
});

test('curbs may touch a wall, touch each other, or part the section in two', () => {
  const { roof } = read({
    curbs: [
      {
        id: 'a',
        kind: 'other',
        outline: [
          [0, 8],
          [15, 8],
          [15, 12],
          [0, 12],
        ],
      },
      {
        id: 'b',
        kind: 'other',
        outline: [
          [15, 8],
          [30, 8],
          [30, 12],
          [15, 12],
        ],
      },
    ],
  });
  expect(roof.curbs).toHaveLength(2);
});

test('a file that starts with a byte order mark is read', () => {
  expect(parseRoofText(`\uFEFF${JSON.stringify({ version: 1, outline: square })}`).ok).toBe(true);
});
