import { buildSection } from '../../src/core/geometry/section.ts';
import { perimeterFt, signedAreaSqFt } from '../../src/core/geometry/vector.ts';
import { startsForTiling } from '../../src/core/layout/boards.ts';
import { catalogueOf, tradeCatalogue } from '../../src/core/layout/catalogue.ts';
import { layerParts } from '../../src/core/layout/layers.ts';
import { momentsOf } from '../../src/core/layout/thermal.ts';
import { tile } from '../../src/core/layout/tiling.ts';
import type { Layout, Point, Ring } from '../../src/core/report/types.ts';
import { layoutSheets } from '../../src/core/takeoff/sheet-layout.ts';
import { envelope } from '../../src/core/taper/envelope.ts';
import { cricketSlopes, fourWay, twoWayWithCrickets } from '../../src/core/taper/pattern.ts';
import type { TaperOutlet } from '../../src/core/taper/sources.ts';
import { gutterRoof, layoutOf, listOf, roofOf } from '../unit/takeoff-roofs.ts';
import { type CheckRow, checkRows } from './check-rows.ts';

// One-way taper of 1/4 in per ft off a gutter, low edge 0.5 in, two-board group on 2 in of fill, 4 x 4 ft boards.

const take = (widthFt: number, depthFt: number) => {
  const roof = roofOf(gutterRoof(widthFt, depthFt));
  const layout = layoutOf(roof);
  return { layout, list: listOf(roof, 'tpo', undefined, layout) };
};
const wide = take(30, 20);
const house = take(24, 16);
const computed = { source: 'arithmetic', at: 'worked one-way take-off', grade: 'computed', tol: 0 } as const;

type Taken = ReturnType<typeof take>;
const net = ({ layout }: Taken, lowIn: number): number =>
  layout.boards.filter((board) => board.lowIn === lowIn).reduce((sum, board) => sum + board.net, 0);
const order = ({ list }: Taken, id: string): number => list.lines.find((line) => line.id === id)!.orderQuantity;

const rows: CheckRow[] = [
  {
    ...computed,
    id: '43-bf',
    of: 'board ft, 30 x 20',
    call: () => wide.layout.volumeBoardFt,
    expected: 1800,
    tol: 1e-6,
  },
  {
    ...computed,
    id: '43-shared',
    of: 'taper boards with half boards shared, 30 x 20',
    call: () => Math.ceil(net(wide, 0.5) - 1e-9) + Math.ceil(net(wide, 1.5) - 1e-9),
    expected: 38,
  },
  {
    ...computed,
    id: '43-pieces',
    of: 'taper pieces, each from its own board',
    call: () => wide.layout.pieces.length,
    expected: 40,
  },
  {
    ...computed,
    id: '43-fill',
    of: 'fill boards 4 x 8 without allowance',
    call: () => wide.layout.fill[0]!.boards,
    expected: 15,
  },
  {
    ...computed,
    id: '43-fill-order',
    of: 'fill boards to order',
    call: () => order(wide, 'fill-2'),
    expected: 15,
    doesNotReproduce: 'we order 5 % more for cuts: 16',
  },
  {
    ...computed,
    id: '44-bf',
    of: 'board ft, 24 x 16',
    call: () => house.layout.volumeBoardFt,
    expected: 960,
    tol: 1e-6,
  },
  { ...computed, id: '44-low', of: 'boards 0.5-1.5, 24 x 16', call: () => net(house, 0.5), expected: 12, tol: 1e-9 },
  { ...computed, id: '44-high', of: 'boards 1.5-2.5, 24 x 16', call: () => net(house, 1.5), expected: 12, tol: 1e-9 },
  { ...computed, id: '44-fill', of: 'fill boards, 24 x 16', call: () => house.layout.fill[0]!.boards, expected: 6 },
  {
    ...computed,
    id: '44-spares',
    of: 'boards 0.5-1.5 to order',
    call: () => order(house, 'board-0.5-1.5'),
    expected: 12,
    doesNotReproduce: 'we order one spare per ten on every row: 14',
  },
];

// C55: taking over a 16 x 29 ft TPO roof in 10 ft sheets with 3 in laps, no turn-downs counted.
const outline = [
  [0, 0],
  [29, 0],
  [29, 16],
  [0, 16],
] as const;
const plan = layoutSheets(
  { covered: [{ outer: outline, holes: [] }], curbs: [], uphill: [0, 1] },
  { widthFt: 10, rollFt: 100, sideLapFt: 0.25, endLapFt: 0.25 },
);
const c55 = { source: 'arithmetic', at: 'case C55', grade: 'computed', tol: 0.1 } as const;
const taken: CheckRow[] = [
  { ...c55, id: 'area', of: 'sq ft', call: () => signedAreaSqFt(outline), expected: 464 },
  { ...c55, id: 'strips', of: 'strips', call: () => plan.runsFt.length, expected: 2, tol: 0 },
  { ...c55, id: 'seam', of: 'field seam ft', call: () => plan.seamFt, expected: 29 },
  { ...c55, id: 'perimeter', of: 'perimeter ft', call: () => perimeterFt(outline), expected: 90 },
];

// Half-diamonds of cricket boards on a field of 1/4 in per ft, between two scuppers on a wall (or two corners of a curb):
// the second layer of boards alone. Source of the expected values: closed forms of the triangle, checked by integration.

function halfDiamond(lengthFt: number, depthFt: number) {
  const outline: Ring = [
    [0, 0],
    [lengthFt, 0],
    [lengthFt, 2 * depthFt],
    [0, 2 * depthFt],
  ];
  const ends: readonly Point[] = [outline[0], outline[1]];
  const shape = { fieldInPerFt: 0.25, boardInPerFt: 0.5, widthToLength: (2 * depthFt) / lengthFt };
  const starts = ends.map(
    (at, i): TaperOutlet => ({
      id: `S${i}`,
      kind: 'point',
      at,
      levelIn: 0.5,
      pattern: twoWayWithCrickets(shape, 90),
    }),
  );
  const patches = envelope(buildSection(outline, [], ends), starts);
  const where = startsForTiling(starts);
  const cricket = layerParts(patches, where.layersAt).filter(({ layer }) => layer === 1);
  const tiling = tile({ patches, catalogue: tradeCatalogue, baseIn: 0, ...where });
  return { shape, cricket: momentsOf(cricket), tiling };
}
const diamond = halfDiamond(24, 6);
const wider = halfDiamond(30, 8);
const curb = halfDiamond(6, 3);
const triangle = { source: 'arithmetic', at: 'half-diamond cricket', grade: 'computed', tol: 0.001 } as const;
const marksOf = ({ tiling }: typeof diamond): string =>
  tiling.boards
    .filter(({ layer }) => layer === 1)
    .map(({ mark }) => mark)
    .join(', ');
const upperSqFt = ({ tiling }: typeof diamond): number =>
  tiling.pieces.filter(({ layer }) => layer === 1).reduce((sum, { outline }) => sum + signedAreaSqFt(outline), 0);

const cricketRows: CheckRow[] = [
  { ...triangle, id: '24-V', of: 'bf, D 24 Wh 6', call: () => diamond.cricket.boardFt, expected: 64.399 },
  { ...triangle, id: '24-h', of: 'peak in, D 24 Wh 6', call: () => diamond.cricket.greatestIn, expected: 2.6833 },
  { ...triangle, id: '24-A', of: 'sq ft of cricket boards', call: () => upperSqFt(diamond), expected: 72 },
  { ...triangle, id: '24-rows', of: 'two 4-ft rows', call: () => marksOf(diamond), expected: '0-2, 0-2 +2' },
  { ...triangle, id: '24-v', of: 'valley', call: () => cricketSlopes(diamond.shape).valleyInPerFt, expected: 0.1118 },
  { ...triangle, id: '25-V', of: 'bf, D 30 Wh 8', call: () => wider.cricket.boardFt, expected: 141.18, tol: 0.01 },
  { ...triangle, id: '25-h', of: 'peak in', call: () => wider.cricket.greatestIn, expected: 3.5294, tol: 0.01 },
  { ...triangle, id: '25-v', of: 'valley', call: () => cricketSlopes(wider.shape).valleyInPerFt, expected: 0.11765 },
  { ...triangle, id: '26-V', of: 'bf behind a 6-ft curb', call: () => curb.cricket.boardFt, expected: 3.182 },
  { ...triangle, id: '26-h', of: 'peak in', call: () => curb.cricket.greatestIn, expected: 1.0607 },
  { ...triangle, id: '26-v', of: 'valley', call: () => cricketSlopes(curb.shape).valleyInPerFt, expected: 0.17678 },
];

// A bay of 2 N by 2 N boards with the drain in its middle: mitres from new boards.

function bay(n: number): Layout['boardWork'] & { order: number; cut: number } {
  const side = 8 * n;
  const at: Point = [side / 2, side / 2];
  const outline: Ring = [
    [0, 0],
    [side, 0],
    [side, side],
    [0, side],
  ];
  const starts: TaperOutlet[] = [{ id: 'D', kind: 'point', at, levelIn: 0.5, pattern: fourWay(0.25) }];
  const patches = envelope(buildSection(outline, [], [at]), starts);
  const { boards, work } = tile({ patches, catalogue: tradeCatalogue, baseIn: 0, ...startsForTiling(starts) });
  const total = (of: (line: (typeof boards)[number]) => number): number =>
    boards.reduce((sum, line) => sum + of(line), 0);
  return { ...work, order: total(({ order }) => order), cut: total(({ cut }) => cut) };
}
const mitre = { source: 'arithmetic', at: 'mitre count of a four-way bay', grade: 'computed', tol: 1e-9 } as const;
const bays = { 3: bay(3), 5: bay(5) };
const mitres: CheckRow[] = (
  [
    [3, 36, 24, 48],
    [5, 100, 40, 120],
  ] as const
).flatMap(([n, net, cut, taken]): CheckRow[] => [
  { ...mitre, id: `45-net-${n}`, of: `boards of area, N = ${n}`, call: () => bays[n].net, expected: net, tol: 1e-6 },
  { ...mitre, id: `45-cut-${n}`, of: `boards cut, N = ${n}`, call: () => bays[n].cut, expected: cut },
  { ...mitre, id: `45-buy-${n}`, of: `boards taken, N = ${n}`, call: () => bays[n].taken, expected: taken },
  {
    ...mitre,
    id: `45-waste-${n}`,
    of: `waste over net, N = ${n}`,
    call: () => taken / bays[n].net - 1,
    expected: 1 / n,
  },
  {
    ...mitre,
    id: `45-reuse-${n}`,
    of: `valley pieces keep the high edge: none pairs, N = ${n}`,
    call: () => bays[n].reusable,
    expected: 0,
  },
  {
    ...mitre,
    id: `45-order-${n}`,
    of: `boards to order, N = ${n}`,
    call: () => bays[n].order,
    expected: taken,
    doesNotReproduce: 'we order one spare per ten of every row',
  },
]);

// Cut boards that start at nothing: a supplier's list of its own.
const cutBoards = catalogueOf({
  boards: {
    groups: [{ slopeInPerFt: 0.25, runFt: 4, widthFt: 4, lowEdgesIn: [0, 1], fillStepIn: 2 }],
    flat: null,
    strips: null,
    leastPieceIn: null,
    sumpFt: null,
  },
});
function wedgeOf(sideFt: number) {
  const outline: Ring = [
    [0, 0],
    [sideFt, 0],
    [sideFt, sideFt],
    [0, sideFt],
  ];
  const [from, to] = outline;
  const starts: TaperOutlet[] = [{ id: 'side-0', kind: 'edge', from, to, levelIn: 0, pattern: fourWay(0.25) }];
  const patches = envelope(buildSection(outline, [], []), starts);
  const tiling = tile({ patches, catalogue: cutBoards, baseIn: 0, ...startsForTiling(starts) });
  return { ...momentsOf(patches), ...tiling };
}
const wedge = wedgeOf(40);
const magazine = { source: 'arithmetic', at: 'one-way 40 x 40 ft at 1/4, low edge 0', grade: 'computed' } as const;
const wedges: CheckRow[] = [
  {
    ...magazine,
    id: '54-bf',
    of: 'board ft net',
    call: () => wedge.boardFt,
    expected: 8000,
    tol: 1e-6,
  },
  {
    ...magazine,
    id: '54-rise',
    of: 'rise over 40 ft',
    call: () => wedge.greatestIn,
    expected: 10,
    tol: 1e-6,
  },
  {
    ...magazine,
    id: '54-boards',
    of: 'board ft of the pieces and the fill under them',
    call: () =>
      wedge.pieces.reduce((sum, { fillIn, lowIn, highIn, outline }) => {
        return sum + signedAreaSqFt(outline) * (fillIn + (lowIn + highIn) / 2);
      }, 0),
    expected: 8000,
    tol: 1e-6,
  },
  {
    ...magazine,
    id: '54-waste',
    of: 'waste of taper boards, share of net',
    call: () => wedge.work.taken / wedge.work.net - 1,
    expected: 0.05,
    tol: 1e-6,
    doesNotReproduce: 'whole boards cover 40 x 40 ft without a cut: no waste, spares apart',
  },
];

checkRows('Take-off: crickets as a layer of boards', cricketRows);
checkRows('Take-off: mitres of a four-way bay', mitres);
checkRows('Take-off: a one-way wedge', wedges);
checkRows('Take-off: taper boards and fill', rows);
checkRows('Take-off: case C55', taken);
