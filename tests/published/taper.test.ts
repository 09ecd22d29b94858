import { creaseSlopeInPerFt, type Plane } from '../../src/core/geometry/plane.ts';
import { buildSection } from '../../src/core/geometry/section.ts';
import { bandOf } from '../../src/core/layout/bands.ts';
import { coneBoardFt } from '../../src/core/layout/bound.ts';
import { groundGroup, tradeCatalogue } from '../../src/core/layout/catalogue.ts';
import { labelR, meanU, momentsOf } from '../../src/core/layout/thermal.ts';
import type { Point, Ring } from '../../src/core/roof.ts';
import { envelope } from '../../src/core/taper/envelope.ts';
import { fourWay } from '../../src/core/taper/pattern.ts';
import type { TaperOutlet } from '../../src/core/taper/sources.ts';
import { distanceTo } from '../shapes.ts';
import { type CheckRow, checkRows } from './check-rows.ts';

const arithmetic = { source: 'arithmetic', grade: 'computed', tol: 1e-9 } as const;
const practice = { source: 'practice', grade: 'practice', tol: 1e-9 } as const;

const group = (slope: number) =>
  groundGroup(tradeCatalogue, slope) ??
  (() => {
    throw new Error(`no boards at ${slope}`);
  })();
const band = (slope: number, k: number): string => {
  const b = bandOf(group(slope), k);
  return [b.boardLowIn, b.boardHighIn, b.fillIn, b.lowIn, b.highIn].join(' ');
};
const rectangle = (a: number, b: number): Ring => [
  [0, 0],
  [a, 0],
  [a, b],
  [0, b],
];

function fourWayMean(outline: Ring, at: Point): { mean: number; high: number } {
  const section = buildSection(outline, [], [at]);
  const { boardFt, areaSqFt, greatestIn } = momentsOf(
    envelope(section, [{ id: 'D', kind: 'point', at, levelIn: 0, pattern: fourWay(0.25) }]),
  );
  return { mean: boardFt / areaSqFt, high: greatestIn };
}

/** Mean distance to an outlet round the corners of an outline, ft. */
function meanDistance(outline: Ring, at: Point): number {
  const section = buildSection(outline, [], [at]);
  const start: TaperOutlet = { id: 'D', kind: 'point', at, levelIn: 0, pattern: fourWay(1) };
  return coneBoardFt(section, [start], 1).boardFt / section.areaSqFt;
}

const plane = (gx: number, gy: number): Plane => ({ atOriginIn: 0, gx, gy });
/** Mean U of a one-way wedge by the same integral over its two triangles. */
const oneWay = (r1: number, r2: number): number => (meanU(r1, r1, r2) + meanU(r1, r2, r2)) / 2;
const FILMS = 0.78;
const notch: Ring = [
  [0, 0],
  [20, 0],
  [20, 10],
  [10, 10],
  [10, 20],
  [0, 20],
];

const rows: readonly CheckRow[] = [
  {
    id: '1',
    of: 'fifth board at 1/4: board, fill, thickness',
    call: () => band(0.25, 4),
    expected: '0.5 1.5 4 4.5 5.5',
    at: 'repeat rule',
    ...arithmetic,
  },
  {
    id: '2',
    of: 'sixth board at 1/8',
    call: () => band(0.125, 5),
    expected: '1 1.5 2 3 3.5',
    at: 'repeat rule',
    ...arithmetic,
  },
  {
    id: '3',
    of: 'third board at 1/2',
    call: () => band(0.5, 2),
    expected: '0.5 2.5 4 4.5 6.5',
    at: 'repeat rule',
    ...arithmetic,
  },
  {
    id: '4a',
    of: 'rise and fill step at 3/16',
    call: () => `${group(0.1875).slopeInPerFt * 4} ${group(0.1875).fillStepIn}`,
    expected: '0.75 3',
    at: 'repeat rule',
    ...arithmetic,
  },
  {
    id: '4b',
    of: 'rise and fill step at 3/8',
    call: () => `${group(0.375).slopeInPerFt * 4} ${group(0.375).fillStepIn}`,
    expected: '1.5 3',
    at: 'repeat rule',
    ...arithmetic,
  },
  ...(
    [
      [1, 5.6],
      [2, 11.4],
      [3, 17.4],
      [4, 23.6],
    ] as const
  ).map(
    ([t, r]): CheckRow => ({
      id: `5 (${t} in)`,
      of: `label R of ${t} in`,
      call: () => labelR(t),
      expected: r,
      at: 'ASTM C1289-13 programme values',
      ...practice,
      tol: 0.05,
    }),
  ),
  {
    id: '7',
    of: 'one-way U, R 10 to 30',
    call: () => oneWay(10 + FILMS, 30 + FILMS),
    expected: 0.053,
    tol: 0.001,
    source: 'state-energy-taper',
    at: 'Table (1)',
    grade: 'found',
  },
  {
    id: '8',
    of: 'one-way U, R 15 to 60',
    call: () => oneWay(15 + FILMS, 60 + FILMS),
    expected: 0.03,
    tol: 0.0005,
    source: 'state-energy-taper',
    at: 'Table (1)',
    grade: 'found',
  },
  {
    id: '9',
    of: 'one-way U, R 20 to 40',
    call: () => oneWay(20 + FILMS, 40 + FILMS),
    expected: 0.034,
    tol: 0.0005,
    source: 'state-energy-taper',
    at: 'Table (1)',
    grade: 'found',
  },
  {
    id: '10',
    of: 'centre-drain triangle U, R 10 to 40',
    call: () => meanU(10 + FILMS, 40 + FILMS, 40 + FILMS),
    expected: 0.035,
    tol: 0.0005,
    source: 'state-energy-taper',
    at: 'Table (2)',
    grade: 'found',
  },
  {
    id: '11',
    of: 'centre-drain triangle U, R 5 to 20',
    call: () => meanU(5 + FILMS, 20 + FILMS, 20 + FILMS),
    expected: 0.068,
    tol: 0.0005,
    source: 'state-energy-taper',
    at: 'Table (2)',
    grade: 'found',
  },
  {
    id: '13',
    of: 'one-way efficiency at a ratio of 10',
    call: () => 1 / oneWay(1, 10) / 5.5,
    expected: 0.7107,
    tol: 0.0002,
    source: 'ashrae-trans-117',
    at: 'about 70 % at a ratio of 10',
    grade: 'found',
  },
  {
    id: '17',
    of: 'equal thickness does not divide by zero',
    call: () => oneWay(20.78, 20.78),
    expected: 0.04812,
    at: 'limit of the closed forms',
    ...arithmetic,
    tol: 1e-5,
  },
  {
    id: '18',
    of: 'valley of two planes at 1/4 at right angles',
    call: () => creaseSlopeInPerFt(plane(0.25, 0), plane(0, 0.25)),
    expected: 0.17678,
    at: 'line of two planes',
    ...arithmetic,
    tol: 1e-5,
  },
  {
    id: '19',
    of: 'valley of 1/4 and 1/8 at right angles',
    call: () => creaseSlopeInPerFt(plane(0.25, 0), plane(0, 0.125)),
    expected: 0.1118,
    at: 'line of two planes',
    ...arithmetic,
    tol: 1e-5,
  },
  {
    id: '29',
    of: 'mean of 20 x 20 four-way',
    call: () => fourWayMean(rectangle(20, 20), [10, 10]).mean,
    expected: 1.6667,
    at: 'square pyramid',
    ...arithmetic,
    tol: 0.001,
  },
  {
    id: '29 (high)',
    of: 'high point of it',
    call: () => fourWayMean(rectangle(20, 20), [10, 10]).high,
    expected: 2.5,
    at: 'square pyramid',
    ...arithmetic,
    tol: 0.001,
  },
  {
    id: '30a',
    of: 'mean of 30 x 20 four-way',
    call: () => fourWayMean(rectangle(30, 20), [15, 10]).mean,
    expected: 2.1528,
    at: 'rectangular bay',
    ...arithmetic,
    tol: 0.001,
  },
  {
    id: '30b',
    of: 'mean of 40 x 20 four-way',
    call: () => fourWayMean(rectangle(40, 20), [20, 10]).mean,
    expected: 2.7083,
    at: 'rectangular bay',
    ...arithmetic,
    tol: 0.001,
  },
  {
    id: '30c',
    of: 'high point of 40 x 20',
    call: () => fourWayMean(rectangle(40, 20), [20, 10]).high,
    expected: 5,
    at: 'rectangular bay',
    ...arithmetic,
    tol: 0.001,
  },
  {
    id: '33a',
    of: 'cone of 20 x 20 at 1/4',
    call: () => meanDistance(rectangle(20, 20), [10, 10]) / 4,
    expected: 1.913,
    tol: 0.0005,
    source: 'square-point-picking',
    at: 'centre of a square, 0.382598 a',
    grade: 'found',
  },
  {
    id: '33b',
    of: 'cone of 40 x 20 at 1/4',
    call: () => meanDistance(rectangle(40, 20), [20, 10]) / 4,
    expected: 2.9662,
    at: 'closed form',
    ...arithmetic,
    tol: 0.0005,
  },
  {
    id: '34a',
    of: 'mean distance from the corner of a unit square',
    call: () => meanDistance(rectangle(1, 1), [0, 0]),
    expected: 0.765196,
    tol: 2e-5,
    source: 'square-point-picking',
    at: 'corner of a square; extrapolated from two many-sided cones',
    grade: 'found',
  },
  {
    id: '34b',
    of: 'mean distance from the middle of its side',
    call: () => meanDistance(rectangle(1, 1), [0.5, 0]),
    expected: 0.593233,
    tol: 2e-5,
    source: 'square-point-picking',
    at: 'edge of a square; extrapolated from two many-sided cones',
    grade: 'found',
  },
  {
    id: '35',
    of: 'edge-middle outlet on the 30-ft side of 30 x 20',
    call: () => meanDistance(rectangle(30, 20), [15, 0]),
    expected: 13.4739,
    at: 'closed form',
    ...arithmetic,
    tol: 0.0005,
  },
  {
    id: '37a',
    of: 'L-shape, mean way round the inside corner',
    call: () => meanDistance(notch, [0, 20]),
    expected: 15.11,
    at: 'geodesic distance',
    ...arithmetic,
    tol: 0.01,
  },
  {
    id: '37b',
    of: 'its way to (20, 10)',
    call: () => distanceTo(notch, [0, 20], [20, 10]),
    expected: 24.142,
    at: '10 sqrt 2 + 10',
    ...arithmetic,
    tol: 0.02,
  },
];

checkRows('tapered insulation, published and computed values', rows);
