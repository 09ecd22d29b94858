import { readFileSync } from 'node:fs';
import { assess } from '../../src/core/assess.ts';
import type { Assessment, BoardPiece, EdgeReport, Layout, Point, Ring } from '../../src/core/report/types.ts';
import { ruleSetFor } from '../../src/core/rule-set.ts';
import { parseRoofText } from '../../src/input/parse-roof.ts';

/**
 * A section of 30 x 24 ft made by hand, so that every figure a drawing must show is known beforehand: a pit 10 x 8 ft
 * and 1 in deep in the middle (80 sq ft of water), and one layout that falls 1/4 in per ft to the gutter.
 */

const practice = { id: 'practice', text: 'Common practice, no source', grade: 'practice' } as const;
const memory = { id: 'memory', text: 'From memory, verify, section 1', grade: 'memory' } as const;

const outline: Ring = [
  [0, 0],
  [30, 0],
  [30, 24],
  [0, 24],
];
const pit: Ring = [
  [10, 8],
  [20, 8],
  [20, 16],
  [10, 16],
];
const bottom: Point = [15, 12];

export const pitDepthIn = 1;
export const pitSqFt = 80;

const names: readonly [string, string, EdgeReport['mayDrain']][] = [
  ['gutter', 'gutter side', 'yes'],
  ['rake', 'rake', 'unknown'],
  ['shingles-above', 'shingles above', 'no'],
  ['wall', 'wall', 'no'],
];

const edges: EdgeReport[] = names.map(([kind, words, mayDrain], side) => ({
  id: `side-${side}`,
  side,
  from: outline[side],
  to: outline[(side + 1) % 4],
  kind,
  what: words,
  label: `${words}, ${side % 2 === 0 ? '30′-0″' : '24′-0″'}`,
  lengthFt: side % 2 === 0 ? 30 : 24,
  mayDrain,
}));

/** The pit as four triangles, the level ground about it as eight. */
const surface = pit.flatMap((a, i) => {
  const b = pit[(i + 1) % 4];
  const [p, q] = [outline[i], outline[(i + 1) % 4]];
  return [
    { a, b, c: bottom, z: [0, 0, -pitDepthIn] as const },
    { a: p, b: q, c: b, z: [0, 0, 0] as const },
    { a: p, b, c: a, z: [0, 0, 0] as const },
  ];
});

/** Rows of 4 ft, boards of 4 ft, the last column 2 ft wide: 48 pieces over the whole section. */
function pieces(): BoardPiece[] {
  return Array.from({ length: 6 }, (_, row) =>
    Array.from({ length: 8 }, (__, column): BoardPiece => {
      const [x0, x1, y0, y1] = [4 * column, Math.min(4 * column + 4, 30), 4 * row, 4 * row + 4];
      const [lowIn, fillIn] = [0.5 + (row % 2), 2 * Math.floor(row / 2)];
      return {
        outline: [
          [x0, y0],
          [x1, y0],
          [x1, y1],
          [x0, y1],
        ],
        kind: 'board',
        layer: 0,
        lowIn,
        highIn: lowIn + 1,
        fillIn,
        fromIn: lowIn,
        toIn: lowIn + 1,
        stackIn: fillIn + lowIn + 1,
        coveredSqFt: 0,
        sliver: false,
        mark: `${lowIn}-${lowIn + 1}${fillIn === 0 ? '' : ` +${fillIn}`}`,
        whole: x1 - x0 === 4,
        labelAt: [(x0 + x1) / 2, (y0 + y1) / 2],
      };
    }),
  ).flat();
}

const gutterOutlet = {
  id: 'side-0',
  label: 'gutter side, 30′-0″',
  kind: 'edge',
  role: 'primary',
  status: 'existing',
  at: [0, 0],
  to: [30, 0],
  drainsSqFt: 720,
  addedSqFt: 0,
  flowGpm: 24,
  capacityGpm: 60,
  adequate: true,
  needs: '5-in K gutter',
  basis: 'by hand',
  source: memory,
} as const;

const layout: Layout = {
  id: 'to-the-gutter',
  title: 'Water leaves at the gutter side, boards at 1/4 in per ft',
  why: 'Nothing new at the edges.',
  strict: false,
  slopeInPerFt: 0.25,
  leastFaceSlopeInPerFt: 0.25,
  leastValleySlopeInPerFt: null,
  inServiceSlopeInPerFt: null,
  inServiceNote: 'Slope in service not known: joist span.',
  valleyGrade: 'good',
  outlets: [gutterOutlet],
  areas: [{ outlet: 'side-0', outline, holes: [], areaSqFt: 720 }],
  newOutlets: 0,
  meanThicknessIn: 3.5,
  leastThicknessIn: 0.5,
  greatestThicknessIn: 6.5,
  volumeBoardFt: 2520,
  addedPsf: 1.1,
  bound: null,
  thinnestR: 5.4,
  averageR: 22,
  effectiveR: 17,
  baseForTargetIn: 2,
  baseForTargetFits: false,
  facets: [
    {
      outlet: 'side-0',
      outline,
      holes: [],
      plane: { atOriginIn: 0.5, gx: 0, gy: 0.25 },
      slopeInPerFt: 0.25,
      areaSqFt: 720,
      labelAt: [15, 12],
    },
  ],
  creases: [],
  arrows: [],
  pieces: pieces(),
  boards: [
    {
      layer: 0,
      lowIn: 0.5,
      highIn: 1.5,
      slopeInPerFt: 0.25,
      runFt: 4,
      widthFt: 4,
      fillLayersIn: [2],
      net: 7.5,
      boards: 8,
      cut: 1,
      order: 9,
      wasteShare: 0.0625,
      reusable: 0,
      slivers: 0,
      sliverSqFt: 0,
      mark: '0.5-1.5 +2',
    },
  ],
  fill: [{ thicknessIn: 2, areaSqFt: 480, lengthFt: 8, widthFt: 4, boards: 15, order: 15 }],
  boardWork: { strips: [], rips: [], unmade: [], net: 45, taken: 48, wasteShare: 0.0625, reusable: 3, staggerFt: 2 },
  checkPoints: [
    { id: '1', at: [0, 0], where: 'on the gutter side, 0′-0″ along', heightIn: 0, thicknessIn: 1 },
    { id: '2', at: [15, 12], where: '12′-0″ in from the gutter side', heightIn: 3, thicknessIn: 4 },
  ],
  nailers: [{ edge: 'rake, 24′-0″', from: [30, 0], to: [30, 24], lengthFt: 24, startIn: 1, endIn: 7 }],
  cornerHeights: outline.map((at) => ({ at, heightIn: 0.5 + 0.25 * at[1], thicknessIn: 1 + 0.25 * at[1] })),
  ponds: [],
  flats: [],
  levellingBoardFt: 40,
  overflow: { required: false, note: 'Not required: an open edge.', inletIn: null, source: memory },
  budgets: [
    { id: 'door', where: 'door on the wall', usedIn: 5, leftIn: 2.25 },
    { id: 'curb-light', where: 'curb of the skylight', usedIn: 5, leftIn: -1.5 },
  ],
  rejected: null,
};

const rejected: Layout = {
  ...layout,
  id: 'too-high',
  title: 'Steeper boards',
  budgets: [{ id: 'door', where: 'door on the wall', usedIn: 8, leftIn: -0.75 }],
  rejected: {
    where: 'door on the wall',
    neededIn: 8,
    availableIn: 7.25,
    why: 'the new roof needs 8″ at the door, which has 7 1/4″',
    relax: 'Raise the door by 3/4″.',
  },
};

const budget = { to: null, heightIn: 15.25, clearIn: 8, rAvailable: 30, source: practice } as const;

export const byHand: Assessment = {
  resultVersion: 1,
  label: 'Hand-made section <"&>',
  invented: true,
  place: 'Nowhere',
  headline: 'Water stands 1″ deep over 80 sq ft. A taper drains it.',
  ruleSet: {
    building: { id: 'irc-2021', title: 'IRC 2021' },
    plumbing: { id: 'ipc-2021', title: 'IPC 2021' },
    slopeRule: { faceInPerFt: 0.25, valleyInPerFt: 0.125, strict: false },
    local: [],
  },
  rain: {
    primaryInPerHr: 3.2,
    primaryBasis: '100 years, 60 minutes',
    overflowInPerHr: 6.4,
    overflowBasis: 'twice the hourly rate',
    source: memory,
  },
  section: { areaSqFt: 720, perimeterFt: 108, squares: 7.2 },
  plan: { outline, edges, curbs: [], pipes: [], inflows: [], findings: [], seenPonds: [] },
  existing: {
    verdict: 'ponds',
    why: 'A low spot in the middle has no way out.',
    decidedBy: null,
    leastFaceSlopeInPerFt: 0,
    leastValleySlopeInPerFt: null,
    ponds: [
      {
        outline: pit,
        holes: [],
        areaSqFt: pitSqFt,
        greatestDepthIn: pitDepthIn,
        deepestAt: bottom,
        volumeGal: 16.6,
        weightLb: 138.7,
        greatestLoadPsf: 5.2,
        birdBath: false,
        where: '12′-0″ in from the gutter side',
      },
    ],
    flats: [{ areaSqFt: 640, lengthFt: null, outline, line: null }],
    undrainedAreaSqFt: 0,
    outlets: [gutterOutlet],
    areas: [],
    surface,
    arrows: [],
    loads: [],
    levelling: null,
  },
  budgets: [
    {
      ...budget,
      id: 'door',
      where: 'door on the wall',
      kind: 'door',
      at: [0, 14],
      to: [0, 11],
      hardness: 'stop',
      availableIn: 7.25,
      boardsIn: 6.75,
    },
    {
      ...budget,
      id: 'curb-light',
      where: 'curb of the skylight',
      kind: 'curb',
      at: [22, 18],
      hardness: 'raise',
      availableIn: 3.5,
      boardsIn: 3,
    },
    {
      ...budget,
      id: 'unknown',
      where: 'window on the wall',
      kind: 'window',
      at: [0, 20],
      hardness: 'stop',
      heightIn: null,
      availableIn: null,
      boardsIn: null,
      rAvailable: null,
    },
  ],
  layouts: [layout, rejected],
  planned: { work: 'tear-off', ground: 'the bare deck', stripped: false, assumed: true, note: null },
  search: { tried: 120, budget: 3000, complete: true, fitting: 80, barred: [], rejected: [], relaxation: null },
  chosenLayout: 'to-the-gutter',
  relax: null,
  membranes: [
    {
      id: 'a',
      name: 'White sheet',
      score: 7.3,
      veto: null,
      reasons: [{ criterion: 'standing water', weight: 0.4, score: 8, text: 'It stands water well.' }],
      flips: ['Black sheet would take over if cost weighed twice as much.'],
      plain: 'A white sheet, welded at its laps.',
    },
    {
      id: 'b',
      name: 'Torched sheet',
      score: null,
      veto: { why: 'open flame on a wooden deck', source: practice },
      reasons: [],
      flips: [],
      plain: 'Not on this roof.',
    },
  ],
  chosenMembrane: 'a',
  whyNotTheSame: 'The old sheet was torched, and the deck is wood.',
  materials: [
    {
      id: 'board-0',
      group: 'Boards',
      item: 'Tapered board 0.5-1.5',
      quantity: 7.5,
      unit: 'boards',
      orderQuantity: 9,
      orderUnit: 'boards',
      basis: 'by hand',
      source: null,
    },
    {
      id: 'cover',
      group: 'Boards',
      item: 'Cover board 1/2 in',
      quantity: 22.5,
      unit: 'boards',
      orderQuantity: 24,
      orderUnit: 'boards',
      basis: 'area over 32 sq ft',
      source: practice,
    },
  ],
  cautions: [
    {
      id: 'fall',
      severity: 4,
      topic: 'fall protection',
      when: 'during',
      because: 'Nobody has chosen a system yet.',
      text: 'No fall protection is chosen. Do not start before it is.',
      source: practice,
    },
    {
      id: 'dust',
      severity: 2,
      topic: 'health',
      when: 'during',
      because: 'Not known: what is cut.',
      text: 'Wear a mask where dust flies.',
      source: memory,
    },
  ],
  deferral: 'This is a planning aid. Local codes and the competent person govern.',
  findings: [
    {
      id: 'one-way-out',
      level: 'stop',
      where: 'the section',
      message: 'Only one way out.',
      value: null,
      limit: null,
      source: practice,
    },
    {
      id: 'soft',
      level: 'fix',
      where: 'the eave',
      message: 'Soft wood at the eave.',
      value: null,
      limit: null,
      source: null,
    },
  ],
  assumed: [
    { path: 'removedIn', value: '1.5 in', because: 'everything above the deck is torn off', findOut: 'cut a core' },
  ],
  workings: [
    {
      id: 'flow',
      what: 'Flow to the gutter',
      formula: 'Q = 0.0104 x area x rain',
      inputs: { areaSqFt: 720, inPerHr: 3.2 },
      value: 23.96,
      unit: 'gpm',
      source: memory,
    },
  ],
};

export const handLayout: Layout = layout;
export const handRejected: Layout = rejected;

/** The answer for one of the demo roofs. */
export function demo(name: 'back-section' | 'corner-drain' | 'twenty-drains'): Assessment {
  const parsed = parseRoofText(readFileSync(new URL(`../../src/demo/${name}.roof.json`, import.meta.url), 'utf8'));
  if (!parsed.ok) throw new Error(`${name}: ${parsed.problems[0].message}`);
  const { building, plumbing, local } = parsed.roof.ruleSet;
  const rules = ruleSetFor(building, plumbing, local);
  if (!rules.ok) throw new Error(rules.problems[0].message);
  return assess(parsed.roof, rules.ruleSet);
}
