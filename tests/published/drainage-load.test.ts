import { waterLoadPerInch } from '../../reference/deflection.ts';
import { dryingDepthIn, panInPerDay } from '../../src/core/drainage/drying.ts';
import { depthForLoadIn, rainLoadPsf, waterWeightLb } from '../../src/core/drainage/rain-load.ts';
import { drainHeadIn, printedCurve } from '../../src/core/outlets/drain-head.ts';
import { scupperHeadIn } from '../../src/core/outlets/scupper.ts';
import { type CheckRow, checkRows } from './check-rows.ts';

const fourInch = printedCurve(4)!.curve;

const rows: readonly CheckRow[] = [
  {
    id: '4',
    of: 'head of 65 gpm over a 4-in drain, in',
    call: () => drainHeadIn(fourInch, 65),
    expected: 0.81,
    tol: 0.02,
    source: 'ASCE 7-05 commentary C8, example 1 (prints 0.8)',
    grade: 'memory',
  },
  {
    id: '5',
    of: 'load of 2 in and 0.8 in of head, psf',
    call: () => rainLoadPsf(2, 0.8),
    expected: 14.56,
    tol: 0.05,
    source: 'ASCE 7-05 commentary C8, example 1 (prints 14.6)',
    grade: 'memory',
  },
  {
    id: '9',
    of: 'load of 2 in and 3 in of head, psf',
    call: () => rainLoadPsf(2, 3),
    expected: 26,
    tol: 0.05,
    source: 'ASCE 7 example 2, worked in lecture notes (1.2 kN/m2)',
    grade: 'found',
  },
  ...[
    [6, 26.5],
    [8, 23.3],
    [12, 20],
  ].map(
    ([widthIn, psf]): CheckRow => ({
      id: `28 (${widthIn} in)`,
      of: `load of 2 in and 87.9 gpm over a ${widthIn}-in scupper, psf`,
      call: () => rainLoadPsf(2, scupperHeadIn({ widthIn, heightIn: null }, 87.9)!),
      expected: psf,
      tol: 0.1,
      source: 'IBC 1611.1 with the Francis formula',
      grade: 'computed',
    }),
  ),
  {
    id: '30 (20 psf)',
    of: '20 psf as depth of water, in',
    call: () => depthForLoadIn(20),
    expected: 3.85,
    tol: 0.01,
    source: 'IBC 1611.1',
    grade: 'computed',
  },
  {
    id: '30 (30 psf)',
    of: '30 psf as depth of water, in',
    call: () => depthForLoadIn(30),
    expected: 5.77,
    tol: 0.01,
    source: 'Florida Building Code 1514.4.2 (30 psf)',
    grade: 'computed',
  },
  {
    id: '31 factor',
    of: 'load of an inch of water against 62.4 / 12, psf',
    call: () => waterLoadPerInch.psf,
    expected: 62.4 / 12,
    tol: 1e-12,
    source: 'Training text on roof drainage, Florida',
    grade: 'found',
  },
  {
    id: '31 weight',
    of: 'weight of 1 in on 1,000 sq ft, lb',
    call: () => waterWeightLb(1000, 1),
    expected: 5200,
    tol: 1e-9,
    source: 'Training text on roof drainage, Florida',
    grade: 'found',
  },
  {
    id: '47',
    of: 'depth that dries in 48 h at 13 in in June, in',
    call: () => dryingDepthIn(panInPerDay(13)),
    expected: 0.61,
    tol: 0.01,
    source: 'Pan evaporation of southeastern Arizona; coefficient 0.7 from memory',
    grade: 'memory',
  },
  {
    id: 'drying, winter',
    of: 'depth that dries in 48 h at 4 in in January, in',
    call: () => dryingDepthIn(panInPerDay(4, 31)),
    expected: 0.18,
    tol: 0.01,
    source: 'Pan evaporation of southeastern Arizona; coefficient 0.7 from memory',
    grade: 'memory',
  },
  {
    id: 'insurer, 6 in',
    of: 'load of 6 in of water, psf (computed 31.2)',
    call: () => rainLoadPsf(6, 0),
    expected: 32,
    tol: 0.5,
    source: "Insurer's data sheet on roof loads, second hand (about 32 psf)",
    grade: 'found',
    doesNotReproduce: 'the sheet rounds up: 6 in of fresh water are 31.2 psf',
  },
  {
    id: 'C26 mean load',
    of: '4 in of rain on a roof whose outlets are shut, psf',
    call: () => rainLoadPsf(4, 0),
    expected: 20.8,
    tol: 0.1,
    source: 'case C26',
    grade: 'computed',
  },
  {
    id: 'C26 weight',
    of: '4 in of rain on 10,000 sq ft, lb',
    call: () => waterWeightLb(10_000, 4),
    expected: 208_000,
    tol: 500,
    source: 'case C26',
    grade: 'computed',
  },
];

checkRows('rain load, heads and drying', rows);
