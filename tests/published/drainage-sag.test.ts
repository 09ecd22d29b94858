import {
  joistInertiaIn4,
  joistSagIn,
  lowEndPond,
  lowHalfSlopeInPerFt,
  pondingMagnifier,
  slopeLeftInPerFt,
  slopeToBuildInPerFt,
} from '../../src/core/drainage/sag.ts';
import { type CheckRow, checkRows } from './check-rows.ts';

/** 2x10 at 16 in, 20-ft span, E 1.5e6 psi, 20 psf dead and 20 psf live, 1/4 in/ft. */
const joist = { spanFt: 20, depthIn: 9.25, spacingIn: 16 };
const dead = joistSagIn(joist, 20);
const live = joistSagIn(joist, 20);
const low = (sagIn: number) => slopeLeftInPerFt(0.25, sagIn, 20, 'uniform');
/** Sag of span over a number, in inches, on a span of 20 ft. */
const sagOver = (over: number) => 240 / over;
const article = 'Article on drainage problems of low-slope roofs, builders magazine (inputs)';
const list = "Engineers' discussion of ponding and slope, mailing list, 2000";

const rows: readonly CheckRow[] = [
  ...[
    [240, 0.325],
    [360, 0.258],
    [180, 0.392],
    [120, 0.525],
  ].map(
    ([over, slope]): CheckRow => ({
      id: over === 240 ? '38' : over === 360 ? '39' : `38 (L/${over})`,
      of: `slope to build to keep 1/8 after L/${over}, in/ft`,
      call: () => slopeToBuildInPerFt(0.125, sagOver(over), 20),
      expected: slope,
      tol: 0.001,
      source: `${list}: s = 1/96 + 4 D/L`,
      grade: over >= 240 ? 'found' : 'computed',
    }),
  ),
  {
    id: '38 rise',
    of: 'that slope over 20 ft, in',
    call: () => slopeToBuildInPerFt(0.125, sagOver(240), 20) * 20,
    expected: 6.5,
    tol: 0.01,
    source: list,
    grade: 'found',
  },
  {
    id: '40 fall',
    of: '20-ft beam at 0.019, fall, in',
    call: () => 0.019 * 12 * 20,
    expected: 4.56,
    tol: 0.01,
    source: list,
    grade: 'found',
  },
  {
    id: '40 rise left',
    of: 'rise from the low end to mid-span with 1/2 in of sag, in',
    call: () => lowHalfSlopeInPerFt(0.019 * 12, 0.5, 20) * 10,
    expected: 1.78,
    tol: 0.01,
    source: list,
    grade: 'found',
  },
  {
    id: '40 mean slope',
    of: 'mean slope of that half (prints 0.015)',
    call: () => lowHalfSlopeInPerFt(0.019 * 12, 0.5, 20) / 12,
    expected: 0.0148,
    tol: 0.0005,
    source: list,
    grade: 'found',
  },
  ...(
    [
      [360, 0.143, 0.117, 0.183],
      [240, 0.09, 0.05, 0.15],
      [180, 0.037, -0.017, 0.117],
      [120, -0.07, -0.15, 0.05],
    ] as const
  ).flatMap(([over, uniform, parabola, half]): CheckRow[] => [
    {
      id: `41 (L/${over}, uniform)`,
      of: `slope left of 1/4 at the low support after L/${over}, elastic line, in/ft`,
      call: () => slopeLeftInPerFt(0.25, sagOver(over), 20, 'uniform'),
      expected: uniform,
      tol: 0.001,
      source: 'end rotation 16/5 D/L of a uniformly loaded simple span, beam tables',
      grade: 'computed',
    },
    {
      id: `41 (L/${over}, parabola)`,
      of: `slope left of 1/4 at the low support after L/${over}, parabola, in/ft`,
      call: () => slopeLeftInPerFt(0.25, sagOver(over), 20, 'parabola'),
      expected: parabola,
      tol: 0.001,
      source: 'end slope 4 D/L of a parabola',
      grade: 'computed',
    },
    {
      id: `41 (L/${over}, mean)`,
      of: `mean slope of the low half after L/${over}, in/ft`,
      call: () => lowHalfSlopeInPerFt(0.25, sagOver(over), 20),
      expected: half,
      tol: 0.001,
      source: 'computed from the definition',
      grade: 'computed',
    },
  ]),
  {
    id: '42 length',
    of: 'pond at the low end, L 240 in, s 1/48, D 2 in, parabola, in',
    call: () => lowEndPond(0.25, 2, 20)!.lengthFt * 12,
    expected: 90,
    tol: 0.5,
    source: 'computed from the parabola',
    grade: 'computed',
  },
  {
    id: '42 depth',
    of: 'its greatest depth, in',
    call: () => lowEndPond(0.25, 2, 20)!.depthIn,
    expected: 0.281,
    tol: 0.002,
    source: 'computed from the parabola',
    grade: 'computed',
  },
  {
    id: '42 none',
    of: 'pond where the slope outruns the sag',
    call: () => lowEndPond(0.25, 1.25, 20) === null,
    expected: true,
    tol: 0,
    source: 'computed from the parabola: s L = 4 D',
    grade: 'computed',
  },
  {
    id: '43 inertia',
    of: 'second moment of area of a 2x10, in^4',
    call: () => joistInertiaIn4(1.5, 9.25),
    expected: 98.93,
    tol: 0.005,
    source: 'section tables of sawn lumber',
    grade: 'computed',
  },
  {
    id: '43 dead',
    of: 'sag of the 2x10 under 20 psf, in',
    call: () => dead,
    expected: 0.647,
    tol: 0.001,
    source: article,
    grade: 'computed',
  },
  {
    id: '43 total',
    of: 'dead and live sag of the 2x10, in',
    call: () => dead + live,
    expected: 1.294,
    tol: 0.003,
    source: article,
    grade: 'computed',
  },
  {
    id: '43 creep',
    of: 'low-end slope with twice the dead sag and live, in/ft',
    call: () => low(2 * dead + live),
    expected: -0.061,
    tol: 0.002,
    source: article,
    grade: 'computed',
  },
  {
    id: '43 dead only',
    of: 'low-end slope with dead sag only, in/ft',
    call: () => low(dead),
    expected: 0.146,
    tol: 0.001,
    source: article,
    grade: 'computed',
  },
  {
    id: '43 one and a half',
    of: 'low-end slope with 1.5 times the dead sag and live, in/ft',
    call: () => low(1.5 * dead + live),
    expected: -0.009,
    tol: 0.001,
    source: article,
    grade: 'computed',
  },
  {
    id: '44 magnifier',
    of: 'ponding magnifier of the 2x10',
    call: () => pondingMagnifier(joist),
    expected: 1.153,
    tol: 0.002,
    source: 'Wood handbook page on ponding, US Forest Products Laboratory (formula)',
    grade: 'computed',
  },
  {
    id: '44 at 24 ft',
    of: 'ponding magnifier of the same joist at 24 ft',
    call: () => pondingMagnifier({ ...joist, spanFt: 24 }),
    expected: 1.38,
    tol: 0.005,
    source: 'Wood handbook page on ponding, US Forest Products Laboratory (formula)',
    grade: 'computed',
  },
  {
    id: '44 sag',
    of: 'sag of the 2x10 under 5 psf, in (passes 1/2 in)',
    call: () => joistSagIn(joist, 5),
    expected: 0.162,
    tol: 0.002,
    source: 'Wood handbook page on ponding, US Forest Products Laboratory (5-psf test)',
    grade: 'computed',
  },
];

checkRows('sag and the slope that is left', rows);
