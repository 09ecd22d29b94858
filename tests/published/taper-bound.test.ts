import { buildSection } from '../../src/core/geometry/section.ts';
import { coneBoardFt } from '../../src/core/layout/bound.ts';
import { momentsOf } from '../../src/core/layout/thermal.ts';
import type { Point, Ring } from '../../src/core/roof.ts';
import { cellsNear, gridNet, type Neighbours } from '../../src/core/surface/grid-net.ts';
import { leastPathHeights } from '../../src/core/surface/least-path.ts';
import { envelope } from '../../src/core/taper/envelope.ts';
import {
  fourWay,
  pyramid,
  type SlopePattern,
  slopedValley,
  slopePattern,
  twoWayWithCrickets,
} from '../../src/core/taper/pattern.ts';
import type { TaperOutlet } from '../../src/core/taper/sources.ts';
import { type CheckRow, checkRows } from './check-rows.ts';

const arithmetic = { source: 'arithmetic', grade: 'computed' } as const;
const flooding = { source: 'barnes-2014', grade: 'computed' } as const;

const rectangle = (a: number, b: number): Ring => [
  [0, 0],
  [a, 0],
  [a, b],
  [0, b],
];
const starts = (ats: readonly Point[], pattern: SlopePattern): TaperOutlet[] =>
  ats.map((at, i) => ({ id: `D${i + 1}`, kind: 'point', at, levelIn: 0, pattern }));

/** Mean thickness over the outlets of a pattern laid on a rectangle. */
function meanIn(outline: Ring, ats: readonly Point[], pattern: SlopePattern): number {
  const { boardFt, areaSqFt } = momentsOf(envelope(buildSection(outline, [], ats), starts(ats, pattern)));
  return boardFt / areaSqFt;
}

const coneMeanIn = (outline: Ring, ats: readonly Point[], slope: number): number => {
  const section = buildSection(outline, [], ats);
  return coneBoardFt(section, starts(ats, fourWay(slope)), slope).boardFt / section.areaSqFt;
};

/** How many times the boards of the least surface with the same path slope. */
const ratio = (outline: Ring, at: Point, pattern: SlopePattern, pathSlope: number): number =>
  meanIn(outline, [at], pattern) / coneMeanIn(outline, [at], pathSlope);

const planes = (n: number, riseInPerFt: number): SlopePattern =>
  slopePattern(Array.from({ length: n }, (_, i) => ({ bearingDeg: (360 * (i + 0.5)) / n, riseInPerFt })));

const crickets = { fieldInPerFt: 0.25, boardInPerFt: 0.5, widthToLength: 0.5 };
const VALLEY = 0.25 / Math.sqrt(5);

/** Mean way to the centre of a flat unit square over 101 x 101 cells. */
function gridMean(neighbours: Neighbours): number {
  const square = rectangle(1, 1);
  const net = gridNet([square], 1 / 101, neighbours);
  const centre = cellsNear(net, [square], [0.5, 0.5]).filter(({ lengthFt }) => lengthFt < 1e-9);
  const from = centre.map(({ place }) => ({ place, levelIn: 0 }));
  const ways = leastPathHeights(net, new Float64Array(net.points.length), from, 1);
  return ways.reduce((sum, way) => sum + way, 0) / ways.length;
}

/** Priority fill along a line of places 1 ft apart, outlet at the left. */
function along(demandIn: readonly number[]): string {
  const n = demandIn.length;
  const neighbours = demandIn.map((_, i) => [i - 1, i + 1].filter((j) => j >= 0 && j < n));
  const net = {
    starts: Int32Array.from([0, ...neighbours.map((_, i) => neighbours.slice(0, i + 1).flat().length)]),
    list: Int32Array.from(neighbours.flat()),
    lengthFt: new Float64Array(neighbours.flat().length).fill(1),
  };
  return [...leastPathHeights(net, Float64Array.from(demandIn), [{ place: 0, levelIn: demandIn[0] }], 0.25)].join(' ');
}

const rows: readonly CheckRow[] = [
  {
    id: '31',
    of: 'mean of a rectangle with a level perimeter, 5 in high, half sides 20 and 10',
    call: () => meanIn(rectangle(40, 20), [[20, 10]], pyramid(0.25, 0.5, 90)),
    expected: 3.333,
    at: 'level perimeter, 2H/3',
    tol: 0.001,
    ...arithmetic,
  },
  {
    id: '31 (valley)',
    of: 'its valley',
    call: () => pyramid(0.25, 0.5, 90).leastRiseInPerFt,
    expected: 0.2236,
    at: 'H over the half diagonal',
    tol: 0.0001,
    ...arithmetic,
  },
  {
    id: '32',
    of: 'valley sloped 1/8 under faces at 1/4, 40 x 20',
    call: () => meanIn(rectangle(40, 20), [[20, 10]], slopedValley(0.125, 0.25, 90)),
    expected: 2.5,
    at: 'planes add',
    tol: 0.001,
    ...arithmetic,
  },
  {
    id: '36 (cone)',
    of: 'two scuppers at the ends of a 24-ft wall, 24 x 20, least surface at 1/4',
    call: () =>
      coneMeanIn(
        rectangle(24, 20),
        [
          [0, 0],
          [24, 0],
        ],
        0.25,
      ),
    expected: 3.1188,
    at: 'mean distance to the nearer corner',
    tol: 0.001,
    ...arithmetic,
  },
  {
    id: '36 (cricket)',
    of: 'the same with one field and a cricket of 1:2 between the scuppers',
    call: () =>
      meanIn(
        rectangle(24, 20),
        [
          [0, 0],
          [24, 0],
        ],
        twoWayWithCrickets(crickets, 90),
      ),
    expected: 2.6342,
    at: 'one-way mean and half-diamond volume',
    tol: 0.001,
    ...arithmetic,
  },
  ...(
    [
      [4, 0.5],
      [8, 0.4024],
      [16, 0.3875],
    ] as const
  ).map(
    ([neighbours, expected]): CheckRow => ({
      id: `38 (${neighbours})`,
      of: `mean way over a grid with ${neighbours} neighbours, true value .38260`,
      call: () => gridMean(neighbours),
      expected,
      at: 'flat unit square, outlet at its centre, 101 cells a side',
      tol: 0.0005,
      ...flooding,
    }),
  ),
  {
    id: '39',
    of: 'priority fill along a line: demands 0, 0, 2, 0, 0 at 1-ft steps',
    call: () => along([0, 0, 2, 0, 0]),
    expected: '0 0.25 2 2.25 2.5',
    at: 'fill with a least gradient',
    tol: 0,
    ...flooding,
  },
  {
    id: '40',
    of: 'eight equal planes round the drain of a unit square',
    call: () => meanIn(rectangle(1, 1), [[0.5, 0.5]], planes(8, Math.cos(Math.PI / 8))),
    expected: 0.37377,
    at: 'facets',
    tol: 0.0002,
    ...arithmetic,
  },
  {
    id: '40 (16)',
    of: 'sixteen of them',
    call: () => meanIn(rectangle(1, 1), [[0.5, 0.5]], planes(16, Math.cos(Math.PI / 16))),
    expected: 0.38022,
    at: 'facets',
    tol: 0.0002,
    ...arithmetic,
  },
  {
    id: 'ratio (square)',
    of: 'boards of 40 x 40 four-way against the least',
    call: () => ratio(rectangle(40, 40), [20, 20], fourWay(0.25), 0.25 / Math.SQRT2),
    expected: 1.232,
    at: '(1/3) sqrt 2 / .382598',
    tol: 0.0005,
    ...arithmetic,
  },
  {
    id: 'ratio (two squares)',
    of: 'boards of 40 x 20 four-way against the least',
    call: () => ratio(rectangle(40, 20), [20, 10], fourWay(0.25), 0.25 / Math.SQRT2),
    expected: 1.291,
    at: '2.7083 / (.17678 x 11.86467)',
    tol: 0.0005,
    ...arithmetic,
  },
  {
    id: 'ratio (crickets)',
    of: 'boards of 40 x 20 two-way with 1:2 crickets to the corners against the least',
    call: () => ratio(rectangle(40, 20), [20, 10], twoWayWithCrickets(crickets, 90), VALLEY),
    expected: 1.504,
    at: '1.995 / (.1118 x 11.86467)',
    tol: 0.0005,
    ...arithmetic,
  },
  {
    id: 'ratio (eight-way)',
    of: 'eight-way at equal path slope stays within 6 % of the cone',
    call: () => {
      const over = ratio(rectangle(40, 40), [20, 20], planes(8, 0.25), 0.25);
      return over >= 1 && over <= 1.06;
    },
    expected: true,
    at: '.4046 / .3826',
    tol: 0,
    ...arithmetic,
  },
];

checkRows('least boards, closed forms and grids', rows);
