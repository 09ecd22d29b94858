import { readdirSync } from 'node:fs';
import { assessReady, readRoofText } from '../../src/answer.ts';
import type { Assessment } from '../../src/core/report/types.ts';
import { demoNames, demoText } from '../../src/store/demo-roofs.ts';
import { caseText } from '../cases/case-roof.ts';

/** The roofs that the owner's words are read on: every demo, every case, and one small roof changed in many ways. */

export interface OwnerRoof {
  name: string;
  assessment: Assessment;
}

type Parts = Readonly<Record<string, unknown>>;

const small: Parts = {
  version: 1,
  invented: true,
  label: 'Invented small roof',
  outline: [
    [0, 0],
    [20, 0],
    [20, 12],
    [0, 12],
  ],
  edges: [
    { side: 0, kind: 'gutter', mayDrain: 'yes' },
    { side: 1, kind: 'rake', mayDrain: 'no' },
    { side: 2, kind: 'wall', mayDrain: 'no' },
    { side: 3, kind: 'rake', mayDrain: 'no' },
  ],
  existing: { planes: [{ slopeInPerFt: 0.125, fallsToward: { side: 0 } }], readOn: 'covering' },
  covering: { kind: 'sbs-granule', layers: 1, ageYears: 12 },
};

const falls = (slopeInPerFt: number, side: number): Parts => ({
  existing: { planes: [{ slopeInPerFt, fallsToward: { side } }], readOn: 'covering' },
});

const pond = (depthIn: number, hoursAfterRain: number): Parts => ({
  existing: {
    surface: 'level',
    readOn: 'covering',
    seenPonds: [
      {
        outline: [
          [5, 3],
          [12, 3],
          [12, 9],
          [5, 9],
        ],
        depthIn,
        hoursAfterRain,
      },
    ],
  },
});

const doorAt = (heightIn: number, slopeInPerFt: number): Parts => ({
  ...falls(slopeInPerFt, 2),
  edges: [
    { side: 0, kind: 'gutter', mayDrain: 'yes' },
    { side: 1, kind: 'rake', mayDrain: 'no' },
    { side: 2, kind: 'wall', mayDrain: 'no', openings: [{ kind: 'door', fromFt: 4, toFt: 7, heightIn }] },
    { side: 3, kind: 'rake', mayDrain: 'no' },
  ],
});

const walled = (outlets: readonly Parts[]): Parts => ({
  edges: [0, 1, 2, 3].map((side) => ({ side, kind: 'parapet', topIn: 14, mayDrain: 'no' })),
  outlets,
  existing: { surface: 'level', readOn: 'covering' },
});

const drain = (id: string, x: number): Parts => ({ id, kind: 'drain', at: [x, 6], role: 'primary' });
const finding = (kind: string, more: Parts = {}): Parts => ({ kind, at: [8, 5], severity: 'plain', ...more });
const found = (...findings: readonly Parts[]): Parts => ({ ...falls(0.25, 0), findings });

/** What each variation changes. */
const variations: readonly (readonly [name: string, parts: Parts])[] = [
  ...[0.0625, 0.125, 0.25, 2].map((slope) => [`falls ${slope} to the gutter`, falls(slope, 0)] as const),
  ...[0.0625, 0.25].map((slope) => [`falls ${slope} to the wall`, falls(slope, 2)] as const),
  ...[0.5, 2.25].map((depth) => [`pond of ${depth} in`, pond(depth, 60)] as const),
  ['pond the morning after', pond(0.5, 10)],
  ['seen dry', { existing: { surface: 'level', readOn: 'covering', seenDryAfter48h: true } }],
  ...[3, 9, 16].map((height) => [`door at ${height} in`, doorAt(height, 0.0625)] as const),
  ['no way out', walled([])],
  ['two drains', walled([drain('D1', 5), drain('D2', 15)])],
  ...['tpo', 'epdm', 'bur-gravel', 'metal'].map(
    (kind) => [`old ${kind}`, { covering: { kind, layers: 1, ageYears: 8 } }] as const,
  ),
  ['two old layers', { ...falls(0.0625, 2), covering: { kind: 'bur-smooth', layers: 2, ageYears: 30 } }],
  ...['living-ceiling', 'attic', 'outdoors'].map((below) => [`below: ${below}`, { building: { below } }] as const),
  ...['plank', 'steel'].map((kind) => [`deck: ${kind}`, { deck: { kind } }] as const),
  ...['Phoenix, AZ', 'Minneapolis, MN'].map((city) => [`in ${city}`, { place: { city } }] as const),
  ['blister', found(finding('blister'))],
  ['worn, dry, old', found(finding('granule-loss'), finding('dry-insulation', { foundBy: 'core' }))],
  [
    'worn, dry, a hole, a coat asked for',
    {
      existing: {
        planes: [{ slopeInPerFt: 0.5, fallsToward: { side: 0 } }],
        readOn: 'covering',
        seenDryAfter48h: true,
      },
      findings: [finding('granule-loss', { areaSqFt: 160 }), finding('open-lap'), finding('dry-insulation')],
      preferences: { membrane: 'silicone' },
    },
  ],
  [
    'over two old roofs, the covering to stay',
    {
      ...pond(0.5, 60),
      covering: { kind: 'bur-smooth', layers: 2 },
      removedIn: 0,
      preferences: { keepCovering: true },
    },
  ],
  ...['plywood', 'steel'].map(
    (kind) =>
      [
        `stripped: ${kind}`,
        {
          existing: { planes: [{ slopeInPerFt: 0.02, fallsToward: { side: 0 } }], readOn: 'deck' },
          findings: [finding('deck-stripped')],
          deck: { kind },
          covering: {},
        },
      ] as const,
  ),
  ['rot and a leak', found(finding('soft-deck', { severity: 'severe', areaSqFt: 40 }), finding('leak-below'))],
  [
    'mostly wet',
    found(finding('wet-insulation', { foundBy: 'scan', areaSqFt: 120 }), finding('open-lap', { severity: 'severe' })),
  ],
  ...['keepCovering', 'noFoamAbove', 'noSprayFoam'].map(
    (wish) => [`wish: ${wish}`, { place: { city: 'Minneapolis, MN' }, preferences: { [wish]: true } }] as const,
  ),
  ['flat boards wished for', { insulation: { flatIn: 2, targetR: 49 } }],
  ['mended, covering to stay', { ...found(finding('blister')), preferences: { keepCovering: true } }],
  [
    'cold and damp',
    {
      place: { city: 'Minneapolis, MN' },
      building: { below: 'living-ceiling', winterHumidityPct: 55 },
      insulation: { below: { kind: 'batts', thicknessIn: 9 } },
    },
  ],
  [
    'full of damp batts',
    {
      place: { city: 'Minneapolis, MN' },
      ruleSet: { building: 'irc-2018' },
      building: { below: 'living-ceiling' },
      insulation: { below: { kind: 'batts', r: 49, vented: 'no' } },
    },
  ],
  ['rotten eave', found({ kind: 'rotten-eave', side: 0, fromFt: 2, toFt: 8, severity: 'severe' })],
];

function assessed(name: string, text: string): OwnerRoof {
  const reading = readRoofText(text);
  if (!reading.ok)
    throw new Error(`${name}: ${reading.problems.map(({ path, message }) => `${path}: ${message}`).join('; ')}`);
  return { name, assessment: assessReady(reading) };
}

export const smallRoof = (parts: Parts): Assessment =>
  assessed('small roof', JSON.stringify({ ...small, ...parts })).assessment;

const caseNames = readdirSync(new URL('../fixtures/cases/', import.meta.url))
  .filter((file) => file.endsWith('.roof.json'))
  .map((file) => file.replace('.roof.json', ''));

/** Demo roofs and all cases. */
export const givenRoofs = (): OwnerRoof[] => [
  ...demoNames.map((name) => assessed(name, demoText(name))),
  ...caseNames.map((name) => assessed(name, caseText(name))),
];

export const changedRoofs = (): OwnerRoof[] =>
  variations.map(([name, parts]) => assessed(name, JSON.stringify({ ...small, ...parts })));
