import { leastFlashing } from '../../reference/flashing.ts';
import { coverBoard, filmsR } from '../../reference/insulation.ts';
import { codeCricketHeightIn, needsCricket } from '../../src/core/drainage/code-cricket.ts';
import { slopeLeftInPerFt, slopeLossInPerFt } from '../../src/core/drainage/sag.ts';
import { checkSlope } from '../../src/core/drainage/stated-slope.ts';
import { oneInchReachFt, twoEqualLayersIn } from '../../src/core/layout/energy.ts';
import { stepReachFt, stepSlopeInPerFt } from '../../src/core/layout/joint-step.ts';
import { buriedIn, runToLimit } from '../../src/core/layout/run-to-limit.ts';
import { averageU, effectiveR, meanU, perInch } from '../../src/core/layout/thermal.ts';
import type { Patch } from '../../src/core/surface/patch.ts';
import { type CheckRow, checkRows } from './check-rows.ts';

const arithmetic = { source: 'arithmetic', grade: 'computed', tol: 1e-9 } as const;
const practice = { source: 'practice', grade: 'practice', tol: 1e-9 } as const;
const FILMS = filmsR.value;

/** One-way taper 20 ft long at 1/4 in/ft. */
const wedge = (lowIn: number): Patch[] => [
  {
    ring: [
      [0, 0],
      [20, 0],
      [20, 10],
      [0, 10],
    ],
    plane: { atOriginIn: lowIn, gx: 0.25, gy: 0 },
    outlet: 'A',
  },
];
/** The worked figures count boards and films alone: the cover board's R is taken off. */
const wedgeU = (lowIn: number): number => averageU(wedge(lowIn), perInch(5.7))(-coverBoard.r);

/** Low edge at which something falls to 0.032, by halving. */
function lowEdge(uOf: (lowIn: number) => number): number {
  let [lo, hi] = [0, 10];
  for (let i = 0; i < 60; i++) {
    const mid = (lo + hi) / 2;
    if (uOf(mid) > 0.032) lo = mid;
    else hi = mid;
  }
  return hi;
}

/** Span over which a uniform sag of span over `over` leaves nothing of 1/4. */
const slopeAfter = (over: number): number => slopeLeftInPerFt(0.25, 240 / over, 20, 'uniform');

const rows: readonly CheckRow[] = [
  ...(
    [
      [15, 1.4],
      [20, 1.8],
      [25, 2.2],
      [30, 2.6],
      [35, 3.1],
      [40, 3.5],
    ] as const
  ).map(
    ([r, each]): CheckRow => ({
      id: `6 (R-${r})`,
      of: `two equal layers for R-${r}, in`,
      call: () => twoEqualLayersIn(r),
      expected: each,
      at: 'programme values of two-layer roofs',
      ...practice,
    }),
  ),
  ...(
    [
      [15, 0.0634],
      [20, 0.0481],
      [25, 0.0388],
      [30, 0.0325],
      [35, 0.0279],
    ] as const
  ).map(
    ([r, u]): CheckRow => ({
      id: `12 (R-${r})`,
      of: `U of an even R-${r}`,
      call: () => meanU(r + FILMS, r + FILMS, r + FILMS),
      expected: u,
      tol: 0.0001,
      source: 'state-energy-taper',
      at: 'tables, even thickness',
      grade: 'computed',
    }),
  ),
  {
    id: '13 (drain at the centre)',
    of: 'efficiency of a four-way bay at a ratio of 10',
    call: () => 1 / meanU(1, 10, 10) / 7,
    expected: 0.8639,
    at: 'triangle thin at its apex',
    ...arithmetic,
    tol: 0.0002,
  },
  {
    id: '13 (to the perimeter)',
    of: 'efficiency of a four-way that drains outward',
    call: () => 1 / meanU(10, 1, 1) / 4,
    expected: 0.7219,
    at: 'triangle thick at its apex',
    ...arithmetic,
    tol: 0.0002,
  },
  {
    id: '14 (U)',
    of: 'U of 20 ft at 1/4 from 1/2 in, R-5.7 per in',
    call: () => wedgeU(0.5),
    expected: 0.07651,
    at: 'logarithmic mean',
    ...arithmetic,
    tol: 5e-6,
  },
  {
    id: '14 (R)',
    of: 'its effective R, not the 17.10 of the mean thickness',
    call: () => effectiveR(wedgeU(0.5)),
    expected: 12.29,
    at: 'logarithmic mean',
    ...arithmetic,
    tol: 0.01,
  },
  {
    id: '15',
    of: 'low edge for U 0.032 on 20 ft at 1/4, in',
    call: () => lowEdge(wedgeU),
    expected: 3.22,
    at: 'logarithmic mean',
    ...arithmetic,
    tol: 0.01,
  },
  {
    id: '15 (averaging)',
    of: 'the low edge that averaging would find, in',
    call: () => lowEdge((low) => 1 / (5.7 * (low + 2.5) + FILMS)),
    expected: 2.85,
    at: 'mean thickness',
    ...arithmetic,
    tol: 0.01,
  },
  ...(
    [
      [0.25, 4],
      [0.5, 2],
      [0.125, 8],
    ] as const
  ).map(
    ([slope, ft]): CheckRow => ({
      id: `16 (${slope})`,
      of: `where the taper has risen 1 in at ${slope} in/ft, ft`,
      call: () => oneInchReachFt(slope),
      expected: ft,
      tol: 1e-12,
      source: 'iecc-502-taper',
      at: 'consequence of the 1-in exception',
      grade: 'found',
    }),
  ),
  {
    id: '27a',
    of: 'cricket height, chimney 36 in wide on 4 in 12',
    call: () => codeCricketHeightIn(36, 4),
    expected: 6,
    tol: 1e-12,
    source: 'cricket-pages',
    at: 'IRC R1003.20',
    grade: 'memory',
  },
  {
    id: '27b',
    of: 'cricket height, chimney 48 in wide on 8 in 12',
    call: () => codeCricketHeightIn(48, 8),
    expected: 16,
    tol: 1e-12,
    source: 'cricket-pages',
    at: 'IRC R1003.20',
    grade: 'memory',
  },
  {
    id: '28',
    of: 'cricket asked for at 30 in and at 30.1 in',
    call: () => `${needsCricket(30)} ${needsCricket(30.1)}`,
    expected: 'false true',
    tol: 0,
    source: 'cricket-pages',
    at: 'more than 30 in',
    grade: 'found',
  },
  {
    id: '41 (loss)',
    of: 'slope lost at the low end by a sag of L/240, in/ft',
    call: () => slopeLossInPerFt(240 / 240, 20, 'uniform'),
    expected: 0.16,
    at: 'end rotation of a simple span',
    ...arithmetic,
    tol: 0.0005,
  },
  {
    id: '41 (left)',
    of: 'what it leaves of 1/4',
    call: () => slopeAfter(240),
    expected: 0.09,
    at: 'end rotation of a simple span',
    ...arithmetic,
    tol: 0.0005,
  },
  {
    id: '41 (nothing)',
    of: 'slope left at L/153.6',
    call: () => slopeAfter(153.6),
    expected: 0,
    at: 'end rotation of a simple span',
    ...arithmetic,
    tol: 1e-12,
  },
  {
    id: '50 (slope)',
    of: 'change of slope by two boards 1/8 in apart over 4 ft',
    call: () => stepSlopeInPerFt(0.125, 4),
    expected: 1 / 32,
    at: 'step over run',
    ...arithmetic,
  },
  {
    id: '50 (reach)',
    of: 'reach of a 1/8 step that faces uphill on 1/8, ft',
    call: () => stepReachFt(0.125, 0.125),
    expected: 1,
    at: 'step over slope',
    ...arithmetic,
  },
  {
    id: '51 (rise)',
    of: 'rise that a sill 10 in up leaves over a start of 1/2 in',
    call: () => runToLimit(10 - leastFlashing.heightIn - coverBoard.thicknessIn, 0.5, 0.25).riseIn,
    expected: 1,
    at: 'sill less flashing, cover and start',
    ...arithmetic,
  },
  {
    id: '51 (run)',
    of: 'run of a 1/4 taper under it, ft',
    call: () => runToLimit(10 - leastFlashing.heightIn - coverBoard.thicknessIn, 0.5, 0.25).runFt,
    expected: 4,
    at: 'rise over slope',
    ...arithmetic,
  },
  {
    id: '52 (level)',
    of: 'shingles at 4 in 12 buried by 5 in, level, in',
    call: () => buriedIn(5, 4).levelIn,
    expected: 15,
    at: 'build-up over pitch',
    ...arithmetic,
    tol: 0.01,
  },
  {
    id: '52 (along)',
    of: 'the same along the slope, in',
    call: () => buriedIn(5, 4).alongIn,
    expected: 15.81,
    at: 'build-up over pitch',
    ...arithmetic,
    tol: 0.01,
  },
  {
    id: '53',
    of: '24 ft "at 1/4" with a rise of 3 in: rise expected, slope measured, agrees',
    call: () => Object.values(checkSlope(0.25, 3, 24)).join(' '),
    expected: '6 0.125 false',
    at: 'rise over run',
    ...practice,
  },
];

checkRows('heat, heights and checks of a taper', rows);
