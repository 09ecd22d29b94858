import { perimeterFt, signedAreaSqFt } from '../../src/core/geometry/vector.ts';
import { layoutSheets } from '../../src/core/takeoff/sheet-layout.ts';
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
    call: () => wide.layout.fill[0]!.order,
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
  { ...computed, id: '44-fill', of: 'fill boards, 24 x 16', call: () => house.layout.fill[0]!.order, expected: 6 },
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

checkRows('Take-off: taper boards and fill', rows);
checkRows('Take-off: case C55', taken);
