import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { DeckPlane, Edge, Outlet, Roof } from '../../../src/core/roof.ts';
import {
  belowKinds,
  coveringKinds,
  curbKinds,
  deckKinds,
  edgeKinds,
  findingKinds,
  foundByKinds,
  openingKinds,
  outletRoles,
  pipeKinds,
  senses,
  severities,
  statuses,
  strainers,
  ventKinds,
} from '../../../src/input/choices.ts';
import { parseRoofText } from '../../../src/input/parse-roof.ts';
import { printRoofFile } from '../../../src/input/print-roof.ts';

/** Sixteenths and odd decimals alike: the file must bring back the very same numbers. */
const size = (most: number) =>
  fc.oneof(
    fc.integer({ min: 0, max: most * 16 }).map((n) => n / 16),
    fc.double({ min: 0.001, max: most, noNaN: true }),
  );
const or = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: null });
const word = <T extends string>(words: Readonly<Record<T, string>>) => fc.constantFrom(...(Object.keys(words) as T[]));
const yesNo = fc.boolean();
const name = fc.constantFrom('Back section', 'a', 'Roof "B", north', "24'-6\" x 30'", 'ünïcode ½', 'x\\y');

const LENGTH_FT = 40;
const DEPTH_FT = 30;
const side = fc.constantFrom(0, 1, 2, 3);
const within = (least: number, most: number) => size(1).map((share) => least + (most - least) * share);
const place = fc.tuple(within(0, LENGTH_FT), within(0, DEPTH_FT));
const ends = fc.tuple(size(60), size(60));
const stretch = or(within(0, DEPTH_FT - 1)).chain((fromFt) =>
  fc.record({ fromFt: fc.constant(fromFt), toFt: or(within((fromFt ?? 0) + 0.5, DEPTH_FT)) }),
);

const opening = stretch.chain((part) =>
  fc.record({
    kind: word(openingKinds),
    fromFt: fc.constant(part.fromFt),
    toFt: fc.constant(part.toFt),
    heightIn: or(size(40)),
  }),
);

const gutter = fc.record({
  profile: or(fc.constantFrom('k' as const, 'half-round' as const, 'box' as const)),
  sizeIn: or(size(10)),
  slopeInPerFt: or(size(1)),
  downspouts: or(fc.array(within(0, DEPTH_FT), { maxLength: 3 })),
  downspoutSizeIn: or(fc.tuple(size(6), size(6))),
});

const edge = (at: number): fc.Arbitrary<Edge> =>
  stretch.chain((part) =>
    fc.record({
      side: fc.constant(at),
      fromFt: fc.constant(part.fromFt),
      toFt: fc.constant(part.toFt),
      kind: word(edgeKinds),
      mayDrain: fc.constantFrom('yes' as const, 'no' as const, 'unknown' as const),
      topIn: or(ends),
      clearIn: or(ends),
      gutter: or(gutter),
      pitchIn12: or(size(20)),
      shedsSqFt: or(size(4000)),
      wallHeightFt: or(size(40)),
      openings: fc.array(opening, { maxLength: 2 }),
    }),
  );

const common = {
  role: word(outletRoles),
  status: word(statuses),
  inletIn: or(size(10)),
  working: yesNo,
};
const outlet = (id: string): fc.Arbitrary<Outlet> =>
  fc.oneof(
    fc.record({
      id: fc.constant(id),
      kind: fc.constant('drain' as const),
      ...common,
      at: fc.tuple(within(0, 9), within(0, DEPTH_FT)),
      ...{
        sizeIn: or(fc.integer({ min: 3, max: 12 })),
        insertBoreIn: or(fc.double({ min: 0.5, max: 2.5, noNaN: true })),
      },
      strainer: or(word(strainers)),
      strainerFreeSqIn: or(fc.double({ min: 0.5, max: 500, noNaN: true })),
      leaderRoute: fc.constantFrom('yes' as const, 'no' as const, 'unknown' as const),
    }),
    fc.record({
      id: fc.constant(id),
      kind: fc.constant('scupper' as const),
      ...common,
      side,
      alongFt: within(3, DEPTH_FT - 3),
      widthIn: or(size(24)),
      heightIn: or(size(12)),
    }),
  );

/** Curbs in a column of their own, so that no drain stands in one and none overlap. */
const curb = (at: number) =>
  fc.record({
    id: fc.constant(`curb ${at}`),
    kind: word(curbKinds),
    outline: fc.tuple(within(1, 4), within(1, 4)).map(([w, d]): [number, number][] => {
      const [x, y] = [12 + 6 * at, 10];
      return [
        [x, y],
        [x + w, y],
        [x + w, y + d],
        [x, y + d],
      ];
    }),
    heightIn: or(size(40)),
  });

const reading = fc
  .tuple(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 0, max: 9 }), size(60))
  .map(([x, y, value]): [number, number, number] => [x / 2, y / 1, value]);

const plane = fc
  .record({
    slopeInPerFt: size(3),
    fallsToward: fc.oneof(
      side.map((s) => ({ side: s })),
      size(360).map((bearingDeg) => ({ bearingDeg })),
    ),
    where: fc.constant(null),
    through: or(fc.tuple(within(0, LENGTH_FT), within(0, DEPTH_FT), size(10))),
    rise: fc.oneof(
      fc.constant({ riseIn: null, runFt: null }),
      fc.record({ riseIn: size(12), runFt: size(30).filter((ft) => ft > 0) }),
    ),
  })
  .map(({ rise, ...rest }) => ({ ...rest, ...rise }));

const strip = (from: number, to: number): [number, number][] => [
  [from, 0],
  [to, 0],
  [to, DEPTH_FT],
  [from, DEPTH_FT],
];

/** Planes make one surface: one over all, or two parts of it side by side. */
const planes = fc.oneof(
  plane.map((one): DeckPlane[] => [one]),
  plane.map((one): DeckPlane[] =>
    [strip(0, 10), strip(10, LENGTH_FT)].map((where) => ({ ...one, where, through: one.through ?? [10, 0, 0] })),
  ),
);

const spots = fc.uniqueArray(reading, { minLength: 1, maxLength: 12, selector: ([x, y]) => `${x} ${y}` });

const spotReadings = fc
  .record({
    kind: fc.constant('readings' as const),
    readings: spots,
    sense: word(senses),
    referenceIn: or(size(40)),
    strings: fc.constant([]),
    errorIn: or(size(1)),
  })
  .map((one) => ({ ...one, referenceIn: one.sense === 'water-level' ? one.referenceIn : null }));

/** Strings north of the curbs, each on a line of its own. */
const string = (at: number) =>
  fc.record({
    from: fc.constant([1, 25 + at] as [number, number]),
    to: fc.constant([39, 25 + at] as [number, number]),
    fromIn: size(12),
    toIn: size(12),
    sagIn: or(size(1)),
    readings: fc.uniqueArray(fc.tuple(within(0, 38), size(10)), {
      minLength: 1,
      maxLength: 5,
      selector: ([ft]) => Math.round(ft),
    }),
  });

const stringReadings = fc.record({
  kind: fc.constant('readings' as const),
  readings: fc.constant([]),
  sense: fc.constant('height' as const),
  referenceIn: fc.constant(null),
  strings: fc.tuple(string(0), string(1)),
  errorIn: or(size(1)),
});

const surface: fc.Arbitrary<Roof['existing']['surface']> = fc.oneof(
  fc.constant({ kind: 'level' as const }),
  fc.constant({ kind: 'unknown' as const }),
  fc.record({ kind: fc.constant('planes' as const), planes }),
  spotReadings,
  stringReadings,
);

const sag = fc.oneof(
  fc.record({ depthIn: size(8), spanOver: fc.constant(null), spanFt: or(size(40)), directionDeg: or(size(360)) }),
  fc.record({
    depthIn: fc.constant(null),
    spanOver: fc.integer({ min: 60, max: 720 }),
    spanFt: or(size(40)),
    directionDeg: or(size(360)),
  }),
);

const existing = fc
  .record({
    surface,
    sag: or(sag),
    readOn: fc.constantFrom('covering' as const, 'deck' as const),
    buildUpIn: or(size(20)),
    seenPonds: fc.array(
      fc.record({
        outline: or(
          fc.constant([
            [1, 1],
            [5, 1],
            [5, 5],
          ] as [number, number][]),
        ),
        at: or(place),
        depthIn: or(size(6)),
        hoursAfterRain: or(size(100)),
      }),
      { maxLength: 2 },
    ),
    seenDryAfter48h: or(yesNo),
  })
  .map((one) => (one.surface.kind === 'readings' ? { ...one, sag: null } : one));

const nowhere = { at: null, outline: null, side: null, fromFt: null, toFt: null };
const somewhere = fc.oneof(
  fc.constant(nowhere),
  place.map((at) => ({ ...nowhere, at })),
  fc.tuple(side, stretch).map(([on, part]) => ({ ...nowhere, ...part, side: on })),
);

const finding = fc
  .tuple(
    somewhere,
    fc.record({
      kind: word(findingKinds),
      areaSqFt: or(size(40)),
      sizeIn: or(size(10)),
      foundBy: or(word(foundByKinds)),
      severity: or(word(severities)),
      note: or(name),
      photos: fc.array(fc.constantFrom('3f09a1', 'b2'), { maxLength: 2 }),
    }),
  )
  .map(([where, what]) => ({ ...where, ...what }));

const roof: fc.Arbitrary<Roof> = fc.record({
  version: fc.constant(1 as const),
  label: fc.oneof(fc.constant(''), name),
  invented: yesNo,
  place: fc.record({
    city: or(fc.constantFrom('Smallville', 'Upper, Lower', 'Town, VT')),
    state: or(fc.constantFrom('VT', 'AZ')),
    rain: or(fc.record({ inPerHr: size(10), durationMin: or(size(60)), returnYears: or(size(100)) })),
    climateZone: or(fc.constantFrom('3B', '6A')),
    groundSnowPsf: or(size(100)),
    californiaZone: or(fc.constantFrom(1, 12)),
  }),
  ruleSet: fc.record({
    building: or(fc.constant('irc-2021')),
    plumbing: or(fc.constant('ipc-2021')),
    local: fc.record({
      rainInPerHr: or(size(10)),
      wallShare: or(fc.double({ min: 0, max: 1, noNaN: true }).map((v) => v + 0)),
      minimumFlashingIn: or(size(20)),
      birdBathIn: or(size(1)),
      birdBathSqFt: or(size(100)),
      overflowRequired: or(yesNo),
      taperRule: or(fc.constantFrom('one-inch', 'average-u')),
    }),
  }),
  building: fc.record({
    heightFt: or(size(100)),
    below: or(word(belowKinds)),
    yearBuilt: or(fc.integer({ min: 1700, max: 2100 })),
    planFt: or(fc.tuple(size(100), size(100))),
    winterHumidityPct: or(fc.constantFrom(30, 45)),
  }),
  deck: fc.record({
    kind: or(word(deckKinds)),
    thicknessIn: or(size(6)),
    liveLoadPsf: or(size(100)),
    joists: or(
      fc
        .record({ spanFt: or(size(30)), depthIn: or(size(14)), spacingIn: or(size(32)), directionDeg: or(size(360)) })
        .filter((joists) => Object.values(joists).some((known) => known !== null)),
    ),
  }),
  outline: fc.constant([
    [0, 0],
    [LENGTH_FT, 0],
    [LENGTH_FT, DEPTH_FT],
    [0, DEPTH_FT],
  ] as [number, number][]),
  edges: fc.subarray([0, 1, 2, 3]).chain((sides) => fc.tuple(...sides.map(edge))),
  curbs: fc.subarray([0, 1, 2]).chain((ids) => fc.tuple(...ids.map(curb))),
  pipes: fc.array(fc.record({ at: place, diameterIn: or(size(12)), kind: word(pipeKinds), topIn: or(size(40)) }), {
    maxLength: 2,
  }),
  inflows: fc.array(
    fc.record({ at: place, kind: fc.constantFrom('downspout' as const, 'valley' as const), fromSqFt: size(900) }),
    { maxLength: 2 },
  ),
  outlets: fc.subarray(['D1', 'S1', 'O1']).chain((ids) => fc.tuple(...ids.map(outlet))),
  existing,
  covering: fc.record({
    kind: or(word(coveringKinds)),
    layers: or(fc.integer({ min: 1, max: 5 })),
    ageYears: or(size(60)),
  }),
  insulation: fc.record({
    targetR: or(size(60)),
    keepExisting: or(yesNo),
    below: or(
      fc.record({
        kind: word({ batts: '', 'open-cell': '', 'closed-cell': '' }),
        thicknessIn: or(size(12)),
        r: or(size(60)),
        vented: fc.constantFrom('yes' as const, 'no' as const, 'unknown' as const),
      }),
    ),
    baseIn: or(size(10)),
    flatIn: or(size(10)),
    flatRPerIn: or(fc.constantFrom(5, 5.7)),
  }),
  adjoining: or(
    fc.record({
      atticSqFt: size(2000),
      ceilingRetarder: fc.constantFrom('yes' as const, 'no' as const, 'unknown' as const),
      vents: fc.array(
        fc.record({
          kind: word(ventKinds),
          count: or(fc.constantFrom(1, 24)),
          netFreeSqIn: or(fc.constantFrom(9, 50)),
          high: or(yesNo),
        }),
        { maxLength: 2 },
      ),
    }),
  ),
  prices: fc.constantFrom(
    { boardFt: null, drain: null, scupper: null, edgeFt: null, parapetFt: null },
    { boardFt: 2.4, drain: null, scupper: 900, edgeFt: 0, parapetFt: 65.5 },
  ),
  boards: fc.record({
    groups: or(
      fc.constant([
        { slopeInPerFt: 0.25, runFt: 4, widthFt: 4, lowEdgesIn: [0.5, 1.5, 2.5], fillStepIn: 3 },
        { slopeInPerFt: 0.125, runFt: 8, widthFt: 4, lowEdgesIn: [0.5, 1.5], fillStepIn: 2 },
      ]),
    ),
    flat: or(
      fc.array(
        fc.record({ thicknessIn: fc.constantFrom(0.5, 1.25, 2), lengthFt: fc.constant(8), widthFt: fc.constant(4) }),
        { minLength: 1 },
      ),
    ),
    strips: or(fc.constantFrom([{ highIn: 0.5, runIn: 12 }], [{ highIn: 1, runIn: 24 }])),
    leastPieceIn: or(size(8)),
    sumpFt: or(fc.constantFrom(0, 4, 8)),
  }),
  slopeRule: fc.record({ faceInPerFt: or(size(1)), valleyInPerFt: or(size(1)), strict: or(yesNo) }),
  removedIn: or(size(12)),
  wind: fc.record({ mph: or(size(200)), edition: or(fc.constant('asce-7-16')) }),
  findings: fc.array(finding, { maxLength: 2 }),
  preferences: fc.record({
    noFlame: or(yesNo),
    residueRemovedOrCovered: or(yesNo),
    grease: or(yesNo),
    debris: or(yesNo),
    footTraffic: or(yesNo),
    tightBudget: or(yesNo),
    workTemperatureF: or(size(120)),
    membrane: or(fc.constant('epdm-black')),
    weights: or(fc.record({ heat: fc.integer({ min: 0, max: 60 }), cost: fc.integer({ min: 0, max: 40 }) })),
    keepCovering: or(yesNo),
    noSprayFoam: or(yesNo),
    noFoamAbove: or(yesNo),
  }),
});

test('law: a printed roof reads back as the same roof, and prints the same again', () => {
  fc.assert(
    fc.property(roof, (given) => {
      const text = printRoofFile(given);
      const parsed = parseRoofText(text);
      expect(parsed.ok ? parsed.roof : parsed.problems).toEqual(given);
      if (parsed.ok) expect(printRoofFile(parsed.roof)).toBe(text);
    }),
    { numRuns: 400 },
  );
});

test('what is not known is left out, and short groups stand on one line', () => {
  const parsed = parseRoofText(
    '{"version":1,"label":"Shed","outline":[[0,0],[12,0],[12,8],[0,8]],"deck":{"kind":"plank"}}',
  );
  expect(parsed.ok && printRoofFile(parsed.roof)).toBe(`{
  "version": 1,
  "label": "Shed",
  "deck": { "kind": "plank" },
  "outline": [[0, 0], [12, 0], [12, 8], [0, 8]],
  "existing": { "readOn": "covering" }
}
`);
});
